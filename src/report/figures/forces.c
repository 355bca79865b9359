/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "forces.h"

#include <math.h>
#include <string.h>

#include "report/force_words.h"

/* The moment table, a force at a time. A kind that comes twice is numbered from its second on. */

static const double NOTHING = 1e-12;

/* The courses above a joint count from the joint; people count them from the ground. */
static void slug_of(const lw_result *result, const lw_force *force, int joint, char *out, size_t size) {
  lw_force named = *force;
  if (force->kind == LW_FORCE_PART && force->index >= 0) named.index += joint;
  lw_force_slug(result, &named, out, size);
}

void lw_force_name(const lw_result *result, const lw_free_body *body, int joint, int index, char *out,
                   size_t size) {
  char slug[32], other[32];
  int before = 0;
  slug_of(result, &body->forces.force[index], joint, slug, sizeof slug);
  for (int i = 0; i < index; i++) {
    slug_of(result, &body->forces.force[i], joint, other, sizeof other);
    before += strcmp(other, slug) == 0 ? 1 : 0;
  }
  if (before > 0)
    lw_print(out, size, "%s-%d", slug, before + 1);
  else
    lw_print(out, size, "%s", slug);
}

static void put_weight(const lw_figures *b, const lw_force *f) {
  if (f->area_m2 <= 0.0) return;
  lw_figures_put(b, &(lw_figure_word){"area_m2", "area", "m2", ""}, f->area_m2);
  lw_figures_put(b, &(lw_figure_word){"unit_weight_kn_per_m3", "unit weight", "kN/m3", ""},
                 f->unit_weight_kn_per_m3);
}

static void put_upright(const lw_figures *b, const lw_force *f, double front_m) {
  if (fabs(f->vertical_kn_per_m) < NOTHING) return;
  lw_figures_put(b, &(lw_figure_word){"vertical_kn_per_m", "presses down", "kN/m", ""}, f->vertical_kn_per_m);
  lw_figures_put(b, &(lw_figure_word){"arm_m", "arm behind the front edge", "m", ""}, f->x_m - front_m);
  lw_figures_put(
      b, &(lw_figure_word){"moment_of_vertical_knm_per_m", "moment, positive holds back", "kN m/m", ""},
      f->vertical_kn_per_m * (f->x_m - front_m));
}

static void put_level(const lw_figures *b, const lw_force *f, double foot_m) {
  if (fabs(f->horizontal_kn_per_m) < NOTHING) return;
  lw_figures_put(b, &(lw_figure_word){"horizontal_kn_per_m", "pushes to the front", "kN/m", ""},
                 f->horizontal_kn_per_m);
  lw_figures_put(b, &(lw_figure_word){"lever_m", "height above the underside", "m", ""}, f->y_m - foot_m);
  lw_figures_put(
      b, &(lw_figure_word){"moment_of_horizontal_knm_per_m", "moment, positive holds back", "kN m/m", ""},
      -f->horizontal_kn_per_m * (f->y_m - foot_m));
}

void lw_figures_of_force(const lw_figures *figures, const lw_free_body *body, int index) {
  const lw_force *f = &body->forces.force[index];
  put_upright(figures, f, body->contact.front_m);
  put_level(figures, f, lw_free_body_foot(figures->result, body));
}

void lw_figures_of_forces(const lw_figures *figures, const lw_free_body *body) {
  if (body->status != LW_OK) return;
  for (int i = 0; i < body->forces.count; i++) {
    char part[48];
    lw_force_name(figures->result, body, 0, i, part, sizeof part);
    lw_figures b = lw_figures_below(figures, part);
    put_weight(&b, &body->forces.force[i]);
    lw_figures_of_force(&b, body, i);
  }
}
