/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hostile.h"

#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

static bool finite(const double *out) {
  for (int i = 0; i < HOSTILE_OUTPUTS; i++)
    if (!isfinite(out[i])) return false;
  return true;
}

/* gives whether it had an answer */
static bool answers(const hostile_formula *f, lw_earth_state state, int which, double value) {
  double in[HOSTILE_INPUTS], out[HOSTILE_OUTPUTS] = {0};
  memcpy(in, f->in, sizeof in);
  if (which >= 0) in[which] = value;
  if (f->call(state, in, out) != LW_OK) return false;
  cr_expect(finite(out), "%s, state %d, input %d = %g: an answer that is not finite", f->name, state, which,
            value);
  return true;
}

void hostile_ask(const hostile_formula *f, lw_earth_state state) {
  const double wild[] = {INFINITY, -INFINITY, 1e300, -1e300, 1e-300, 0.0, -1.0, 30.0, acos(0.0), -acos(0.0)};
  cr_expect(answers(f, state, -1, 0.0), "%s, state %d: the formula itself", f->name, state);
  for (int i = 0; i < f->inputs; i++) {
    cr_expect(!answers(f, state, i, NAN), "%s, state %d, input %d: no number", f->name, state, i);
    for (size_t k = 0; k < sizeof wild / sizeof *wild; k++) answers(f, state, i, wild[k]);
  }
  if (f->friction >= 0) {
    const double upright = acos(0.0);
    cr_expect(!answers(f, state, f->friction, upright), "%s, state %d: 90 degrees", f->name, state);
    cr_expect(!answers(f, state, f->friction, 30.0), "%s, state %d: degrees", f->name, state);
    cr_expect(!answers(f, state, f->friction, -0.1), "%s, state %d: below 0", f->name, state);
  }
  if (f->weight < 0) return;
  cr_expect(!answers(f, state, f->weight, 0.0), "%s, state %d: weightless", f->name, state);
  cr_expect(!answers(f, state, f->weight, -18.0), "%s, state %d: it flies", f->name, state);
}
