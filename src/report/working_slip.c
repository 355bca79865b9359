/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slip.h"

#include <math.h>

#include "working.h"

/* The worst circle of a situation, slice by slice: the sums of ordinary slices can be followed by hand. */

static void circle(const lw_page *page, const lw_slip *slip) {
  const lw_slip_circle *c = &slip->circle;
  lw_page_sayf(page, "  ",
               "The worst of %d circles: centre x = %.3f m, y = %.3f m, R = %.3f m; out of the ground at x = "
               "%.3f m, into it at x = %.3f m.",
               slip->circles, c->centre_x_m, c->centre_y_m, c->radius_m, c->exit_x_m, c->entry_x_m);
}

static void slice(const lw_page *page, int number, const lw_slip_slice *s) {
  lw_page_linef(page, LW_TONE_PLAIN, "  %2d%8.3f%7.3f%8.3f%8.2f%7.3f%8.3f%7.2f%6.1f%8.3f%8.3f", number,
                s->x_m, s->width_m, s->weight_kn_per_m, asin(s->sine) * LW_DEG_PER_RAD, s->length_m,
                s->pore_kpa, s->cohesion_kpa, atan(s->tan_friction) * LW_DEG_PER_RAD, lw_slice_driving(s),
                lw_slice_holding(s));
}

static void sums(const lw_page *page, const lw_slip *shown, const lw_slip *slip, const lw_slip_slices *list) {
  double holding = 0.0;
  for (int i = 0; i < list->count; i++) holding += lw_slice_holding(&list->slice[i]);
  lw_page_sayf(page, "  ", "Ordinary: sum of T / sum of D = %.4f / %.4f = %.4f [FELLENIUS1936 circle]",
               holding, shown->driving_kn_per_m, shown->ordinary);
  if (shown->bishop > 0.0)
    lw_page_sayf(page, "  ",
                 "Bishop: sum of [c b + (W - u b) tan phi]/m / sum of D = %.4f, m = cos a + sin a tan phi/F, "
                 "F put in until it stays [BISHOP1955 simplified]",
                 shown->bishop);
  lw_page_sayf(page, "  ", "With the %d slices of the search: ordinary %.4f%s", slip->slice_count,
               slip->ordinary, slip->bishop > 0.0 ? "" : ".");
  if (slip->bishop > 0.0) lw_page_sayf(page, "    ", "and Bishop %.4f.", slip->bishop);
}

/* What the set of factors makes of the circle's own factor. */
static void by_set(const lw_page *page, const lw_result *result, const lw_situation *s) {
  double found = lw_slip_factor(&s->slip, result->wall.method.slip);
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *check = &s->check[i];
    if (check->kind != LW_CHECK_SLIP || !check->has.known || !check->factored || !s->slip_set) continue;
    lw_page_sayf(page, "  ",
                 "Strengths, loads and weights%s are those to design with under the set %s.",
                 s->slip_light ? ", favourable as a whole," : "", s->slip_set->format);
    if (fabs(check->has.value / found - 1.0) > 1e-9)
      lw_page_sayf(page, "  ", "has = %.4f x %.4f = %.4f, the set's factor on what holds", found,
                   check->has.value / found, check->has.value);
  }
}

void lw_working_slip(const lw_page *page, const lw_result *result, const lw_situation *s) {
  lw_slip shown;
  lw_slip_slices list;
  if (!lw_slip_shown(result, s, &shown, &list)) return;
  lw_page_blank(page);
  lw_page_say(page, " ", "Slip of wall and ground along a circle");
  circle(page, &s->slip);
  lw_page_say(page, "  ",
              "D = W sin a, T = c l + (W cos a - u l) tan phi, sin a = (x - xc)/R; few slices here.");
  lw_page_linef(page, LW_TONE_PLAIN, "  %2s%8s%7s%8s%8s%7s%8s%7s%6s%8s%8s", "", "x", "b", "W", "a", "l", "u",
                "c", "phi", "D", "T");
  lw_page_linef(page, LW_TONE_PLAIN, "  %2s%8s%7s%8s%8s%7s%8s%7s%6s%8s%8s", "", "m", "m", "kN/m", "deg", "m",
                "kPa", "kPa", "deg", "kN/m", "kN/m");
  for (int i = 0; i < list.count; i++) slice(page, i + 1, &list.slice[i]);
  sums(page, &shown, &s->slip, &list);
  by_set(page, result, s);
}
