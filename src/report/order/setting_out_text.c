/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "report.h"

/* The pegs, the levels, the order of work and what to read after hand-over, as a page. */

double lw_order_level(double level_m) {
  return level_m > -0.0005 && level_m < 0.0005 ? 0.0 : level_m;
}

/* Metric coordinates have their unit once; in feet and inches each has its own. */
static void peg(const lw_page *page, const lw_peg *peg) {
  char name[LW_SPOT_NAME];
  double x_m = lw_order_level(peg->at.x_m), y_m = lw_order_level(peg->at.y_m);
  if (page->units == LW_UNITS_US)
    lw_page_rowf(page, LW_TONE_PLAIN, "  |%-4s |%15s   |%15s   |%15s", lw_peg_name(peg, name),
                 lw_metres(page->units, x_m, 3).text, lw_metres(page->units, y_m, 3).text,
                 lw_metres(page->units, peg->level_m, 3).text);
  else
    lw_page_rowf(page, LW_TONE_PLAIN, "  |%-4s |%9.3f |%9.3f |%8.3f m", lw_peg_name(peg, name), x_m, y_m,
                 peg->level_m);
}

/* A level, as wide as the column of them. */
static lw_amount level_of(const lw_page *page, double level_m) {
  lw_amount wide;
  lw_print(wide.text, sizeof wide.text, page->units == LW_UNITS_US ? "%15s" : "%10s",
           lw_metres(page->units, lw_order_level(level_m), 3).text);
  return wide;
}

static void setting_out(const lw_page *page, const lw_order *order) {
  const lw_setting_out *p = &order->setting_out;
  lw_page_heading(page,
                  order->plan.solid
                      ? "Pegs: X along run 1, Y towards the soil, level above the wall's underside"
                      : "Pegs: X along run 1, Y towards the soil, level above the lowest course's underside");
  for (int i = 0; i < p->peg_count; i++) peg(page, &p->peg[i]);
  lw_page_say(page, "  ", "B: base line. T: top line. C: centre of a curve. S: step of the base.");
  if (!(p->base_offset_m > 0.0)) return;
  bool stepped = order->plan.step_count > 0;
  lw_page_sayf(page, "  ", "%s base line (B) stands %s forward of the top line (T)%s.",
               stepped ? "Where the base is lowest the" : "The",
               lw_millimetres(page->units, p->base_offset_m).text,
               stepped ? "; B and S pegs above a step have stepped back with the courses" : "");
}

/* Three, four and five of a length; in feet of one without a fraction, no longer than that. */
static void square(const lw_page *page, const lw_right_angle *square) {
  double unit_m = square->unit_m;
  if (page->units == LW_UNITS_US) {
    double step_m = unit_m < LW_FOOT_M ? LW_INCH_M : LW_FOOT_M;
    unit_m = fmax(floor(unit_m / step_m + 1e-9), 1.0) * step_m;
  }
  lw_page_sayf(page, "  ", "Corner B%d: %s and %s along the runs, %s across, make it square.", square->corner,
               lw_amount_again(page->units, LW_KIND_LENGTH, 3.0 * unit_m, 2).text,
               lw_metres(page->units, 4.0 * unit_m, 2).text, lw_metres(page->units, 5.0 * unit_m, 2).text);
}

static void checks(const lw_page *page, const lw_setting_out *p) {
  char name[LW_SPOT_NAME];
  if (p->check_count + p->square_count == 0) return;
  lw_page_heading(page, "Check the pegs");
  for (int i = 0; i < p->check_count; i++) {
    const lw_peg_check *c = &p->check[i];
    (void)lw_peg_check_name(c, name);
    if (c->angle_deg > 0.0)
      lw_page_sayf(page, "  ", "%s: %s, within %s, which is %.2f deg at the corner.", name,
                   lw_metres(page->units, c->distance_m, 3).text,
                   lw_millimetres(page->units, c->tolerance_m).text, c->angle_deg);
    else
      lw_page_sayf(page, "  ", "%s: %s, within %s.", name, lw_metres(page->units, c->distance_m, 3).text,
                   lw_millimetres(page->units, c->tolerance_m).text);
  }
  for (int i = 0; i < p->square_count; i++) square(page, &p->square[i]);
}

static void pipe(const lw_page *page, const lw_setting_out *p) {
  if (!p->pipe_known) return;
  char name[LW_SPOT_NAME];
  lw_page_heading(page, "Drain pipe, its inside bottom");
  for (int i = 0; i < p->invert_count; i++)
    lw_page_linef(page, LW_TONE_PLAIN, "  %s  %s, %s along the wall",
                  level_of(page, p->invert[i].level_m).text, lw_invert_name(&p->invert[i], name),
                  lw_metres(page->units, p->invert[i].along_m, 2).text);
  char comes_out[160];
  if (p->pipe_below_front_m > 0.0005)
    lw_print(comes_out, sizeof comes_out,
             "The lowest outlet is %s below the lowest ground in front: it must come out where the ground, "
             "or what takes the water, lies lower still",
             lw_millimetres(page->units, p->pipe_below_front_m).text);
  else
    lw_print(comes_out, sizeof comes_out, "Each outlet comes out %s above the ground in front of it",
             lw_millimetres(page->units, lw_order_level(-p->pipe_below_front_m)).text);
  lw_page_sayf(page, "  ", "The longest way to daylight is %s, falling at least 1 in %.0f. %s.",
               lw_metres(page->units, p->pipe_length_m, 2).text, 1.0 / p->pipe_fall, comes_out);
}

static void work(const lw_page *page, const lw_result *result, const lw_order *order) {
  const char *plant = result->construction.plant.name;
  char words[LW_ORDER_SENTENCE];
  lw_page_heading(page, "Order of work (common practice); # is a point to stop and look");
  for (int i = 0; i < order->work_count; i++)
    lw_page_say(page, order->work[i].hold ? "  # " : "  - ",
                lw_work_words(order, &order->work[i], plant, words));
}

static void hand_over(const lw_page *page, const lw_setting_out *p) {
  lw_page_heading(page, "After hand-over");
  lw_page_say(page, "  ",
              "Plumb from the top of the face to its base, behind it positive; write down what it is.");
  for (int i = 0; i < p->station_count; i++) {
    const lw_station *s = &p->station[i];
    lw_page_sayf(page, "  ", "%s along the wall: %s as drawn; alarm when it has come out by %s.",
                 lw_metres(page->units, s->along_m, 2).text, lw_millimetres(page->units, s->reading_m).text,
                 lw_millimetres(page->units, s->lean_alarm_m).text);
  }
  lw_page_sayf(page, "  ",
               "Alarm too: a joint that has stepped by %s, an outlet that is dry while the soil is wet, "
               "muddy water from an outlet.",
               lw_millimetres(page->units, p->joint_alarm_m).text);
}

void lw_order_setting_out_text(const lw_page *page, const lw_result *result, const lw_order *order) {
  char name[LW_SPOT_NAME];
  const lw_setting_out *p = &order->setting_out;
  setting_out(page, order);
  checks(page, p);
  lw_page_heading(page, "Levels");
  for (int i = 0; i < p->level_count; i++)
    lw_page_rowf(page, LW_TONE_PLAIN, "  |%s  |%s", level_of(page, p->level[i].level_m).text,
                 lw_level_name(&p->level[i], name));
  pipe(page, p);
  work(page, result, order);
  hand_over(page, p);
}
