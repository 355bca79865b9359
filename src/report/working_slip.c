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

static const char HEADS[] = "  %2s %7s %6s %7s %7s %6s %7s %6s %5s %7s %7s";
static const char HEADS_SHAKEN[] = "  %2s %6s %5s %7s %6s %5s %6s %5s %4s %7s %7s %7s";

static void heads(const lw_page *page) {
  lw_page_say(page, "  ",
              "D = W sin a, T = c l + (W cos a - u l) tan phi, sin a = (x - xc)/R; few slices here.");
  lw_page_linef(page, LW_TONE_PLAIN, HEADS, "", "x", "b", "W", "a", "l", "u", "c", "phi", "D", "T");
  lw_page_linef(page, LW_TONE_PLAIN, HEADS, "", "m", "m", "kN/m", "deg", "m", "kPa", "kPa", "deg", "kN/m",
                "kN/m");
}

/* What an earthquake adds has a column of its own. */
static void heads_shaken(const lw_page *page, double seismic) {
  lw_page_sayf(page, "  ",
               "D = W sin a, E = kh W (yc - yw)/R with yw the level of W and kh = %.4f, T = c l + (W cos a - "
               "kh W sin a - u l) tan phi, sin a = (x - xc)/R; few slices here.",
               seismic);
  lw_page_linef(page, LW_TONE_PLAIN, HEADS_SHAKEN, "", "x", "b", "W", "a", "l", "u", "c", "phi", "D", "T",
                "E");
  lw_page_linef(page, LW_TONE_PLAIN, HEADS_SHAKEN, "", "m", "m", "kN/m", "deg", "m", "kPa", "kPa", "deg",
                "kN/m", "kN/m", "kN/m");
}

static void slice(const lw_page *page, const lw_slip_view *view, int number) {
  const lw_slip_slice *s = &view->list.slice[number];
  double angle = asin(s->sine) * LW_DEG_PER_RAD, friction = atan(s->tan_friction) * LW_DEG_PER_RAD;
  if (view->seismic > 0.0)
    lw_page_linef(page, LW_TONE_PLAIN,
                  "  %2d %6.2f %5.2f %7.3f %6.2f %5.2f %6.2f %5.2f %4.1f %7.3f %7.3f %7.3f", number + 1,
                  s->x_m, s->width_m, s->weight_kn_per_m, angle, s->length_m, s->pore_kpa, s->cohesion_kpa,
                  friction, lw_slice_driving(s), lw_slice_holding(view, s), lw_slice_shaken(view, s));
  else
    lw_page_linef(page, LW_TONE_PLAIN, "  %2d %7.3f %6.3f %7.3f %7.2f %6.3f %7.3f %6.2f %5.1f %7.3f %7.3f",
                  number + 1, s->x_m, s->width_m, s->weight_kn_per_m, angle, s->length_m, s->pore_kpa,
                  s->cohesion_kpa, friction, lw_slice_driving(s), lw_slice_holding(view, s));
}

static void ordinary(const lw_page *page, const lw_slip_view *view) {
  double holding = 0.0, driving = 0.0, shaken = 0.0;
  for (int i = 0; i < view->list.count; i++) {
    const lw_slip_slice *s = &view->list.slice[i];
    holding += lw_slice_holding(view, s);
    driving += lw_slice_driving(s);
    shaken += lw_slice_shaken(view, s);
  }
  if (view->seismic > 0.0)
    lw_page_sayf(page, "  ",
                 "Ordinary: sum of T / (sum of D + sum of E) = %.4f / (%.4f + %.4f) = %.4f [FELLENIUS1936 "
                 "circle]",
                 holding, driving, shaken, view->slip.ordinary);
  else
    lw_page_sayf(page, "  ", "Ordinary: sum of T / sum of D = %.4f / %.4f = %.4f [FELLENIUS1936 circle]",
                 holding, driving, view->slip.ordinary);
}

static void sums(const lw_page *page, const lw_slip_view *view, const lw_slip *slip) {
  ordinary(page, view);
  if (view->slip.bishop > 0.0)
    lw_page_sayf(page, "  ",
                 "Bishop: sum of [c b + (W - u b) tan phi]/m / %s = %.4f, m = cos a + sin a tan phi/F, "
                 "F put in until it stays [BISHOP1955 simplified]",
                 view->seismic > 0.0 ? "(sum of D + sum of E)" : "sum of D", view->slip.bishop);
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
    lw_page_sayf(page, "  ", "Strengths, loads and weights%s are those to design with under the set %s.",
                 s->slip_light ? ", favourable as a whole," : "", s->slip_set->format);
    if (fabs(check->has.value / found - 1.0) > 1e-9)
      lw_page_sayf(page, "  ", "has = %.4f x %.4f = %.4f, the set's factor on what holds", found,
                   check->has.value / found, check->has.value);
  }
}

void lw_working_slip(const lw_page *page, const lw_result *result, const lw_situation *s) {
  lw_slip_view view;
  if (!lw_slip_shown(result, s, &view)) return;
  lw_page_blank(page);
  lw_page_say(page, " ", "Slip of wall and ground along a circle");
  circle(page, &s->slip);
  if (view.light_kn_per_m3 > 0.0)
    lw_page_sayf(
        page, "  ",
        "In front of the wall the ground weighs its light end, %.1f kN/m3 moist, in each slice where that "
        "holds more than it drives.",
        view.light_kn_per_m3);
  if (view.seismic > 0.0)
    heads_shaken(page, view.seismic);
  else
    heads(page);
  for (int i = 0; i < view.list.count; i++) slice(page, &view, i);
  sums(page, &view, &s->slip);
  by_set(page, result, s);
}
