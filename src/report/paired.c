/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "paired.h"

#include "base/amount.h"
#include "sheet/values.h"

const lw_soil_row *lw_paired_row(const lw_result *result) {
  bool counts = result->wall.site.paired.cohesion_kpa > 0.0;
  return counts ? lw_footing_row(&result->given, result->tables) : NULL;
}

/* What a slip has with none of it. */
typedef struct bare_slip {
  const lw_situation *situation;
  double share; /* of what it needs then; where nothing is asked, of 1 */
} bare_slip;

static bool worse(const bare_slip *a, const bare_slip *b) {
  if (a->situation->decides != b->situation->decides) return a->situation->decides;
  return a->share < b->share;
}

/* Those that decide first, the worst of them at the head. */
static int sort_slips(const lw_situations *all, bare_slip list[LW_SITUATION_COUNT]) {
  int count = 0;
  for (int i = 0; i < all->count; i++) {
    const lw_situation *s = &all->situation[i];
    if (!s->slip_bare_has.known) continue;
    double needs = s->slip_bare_needs.known ? s->slip_bare_needs.value : 1.0;
    bare_slip now = {s, s->slip_bare_has.value / needs};
    int at = count++;
    for (; at > 0 && worse(&now, &list[at - 1]); at--) list[at] = list[at - 1];
    list[at] = now;
  }
  return count;
}

static void say_slip(const lw_situation *s, lw_text *out) {
  lw_text_addf(out, "%.2f ", s->slip_bare_has.value);
  if (s->slip_bare_needs.known) lw_text_addf(out, "of %.2f ", s->slip_bare_needs.value);
  lw_text_addf(out, "%s%s%s", lw_situation_short(s->name), s->slip_bare ? " (less margin than with it)" : "",
               s->decides ? "" : " (does not decide)");
}

static void say_slips(const lw_result *result, lw_text *out) {
  bare_slip list[LW_SITUATION_COUNT];
  int count = sort_slips(&result->situations, list);
  if (count == 0) return;
  bool asked = list[0].situation->slip_bare_needs.known;
  lw_text_addf(out, " Without any of it a slip has%s: ", asked ? ", of what it needs then" : "");
  for (int i = 0; i < count; i++) {
    if (i > 0) lw_text_add(out, ", ");
    say_slip(list[i].situation, out);
  }
  lw_text_add(out, ".");
}

void lw_paired_say(const lw_result *result, lw_text *out) {
  const lw_soil_row *row = lw_paired_row(result);
  const lw_paired *paired = &result->wall.site.paired;
  const lw_units units = result->units;
  if (!row) return;
  lw_text_addf(
      out,
      "%s of the %s of cohesion that goes with its low angle %s counts in slips and in bearing by theory, "
      "from %s below the ground in front; by likely values all of it does, and %s above there. Nothing else "
      "takes it; `footing soil cohesion=0` leaves it out.",
      lw_amount_of(units, LW_KIND_PRESSURE, paired->cohesion_kpa, 1).text,
      lw_amount_of(units, LW_KIND_PRESSURE, paired->likely_kpa, 0).text, row->paired_from.source,
      lw_metres(units, paired->depth_m, 1).text,
      lw_amount_of(units, LW_KIND_PRESSURE, paired->likely_shallow_kpa, 1).text);
  say_slips(result, out);
}
