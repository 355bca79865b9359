/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report.h"

/* The pegs, the levels, the order of work and what to read after hand-over, as a page. */

double lw_order_level(double level_m) {
  return level_m > -0.0005 && level_m < 0.0005 ? 0.0 : level_m;
}

static void setting_out(const lw_page *page, const lw_order *order) {
  const lw_setting_out *p = &order->setting_out;
  char name[LW_SPOT_NAME];
  lw_page_heading(page,
                  order->plan.solid
                      ? "Pegs: X along run 1, Y towards the soil, level above the wall's underside"
                      : "Pegs: X along run 1, Y towards the soil, level above the lowest course's underside");
  for (int i = 0; i < p->peg_count; i++)
    lw_page_rowf(page, LW_TONE_PLAIN, "  %-4s %9.3f %9.3f %8.3f m", lw_peg_name(&p->peg[i], name),
                 lw_order_level(p->peg[i].at.x_m), lw_order_level(p->peg[i].at.y_m), p->peg[i].level_m);
  lw_page_say(page, "  ", "B: base line. T: top line. C: centre of a curve. S: step of the base.");
  if (!(p->base_offset_m > 0.0)) return;
  bool stepped = order->plan.step_count > 0;
  lw_page_sayf(page, "  ", "%s base line (B) stands %.0f mm in front of the top line (T)%s.",
               stepped ? "Where the base is lowest the" : "The", p->base_offset_m * 1000.0,
               stepped ? "; B and S pegs above a step have stepped back with the courses" : "");
}

static void checks(const lw_page *page, const lw_setting_out *p) {
  char name[LW_SPOT_NAME];
  if (p->check_count + p->square_count == 0) return;
  lw_page_heading(page, "Check the pegs");
  for (int i = 0; i < p->check_count; i++) {
    const lw_peg_check *c = &p->check[i];
    (void)lw_peg_check_name(c, name);
    if (c->angle_deg > 0.0)
      lw_page_sayf(page, "  ", "%s: %.3f m, within %.0f mm, which is %.2f deg at the corner.", name,
                   c->distance_m, c->tolerance_m * 1000.0, c->angle_deg);
    else
      lw_page_sayf(page, "  ", "%s: %.3f m, within %.0f mm.", name, c->distance_m, c->tolerance_m * 1000.0);
  }
  for (int i = 0; i < p->square_count; i++)
    lw_page_sayf(page, "  ", "Corner B%d: %.2f and %.2f m along the runs, %.2f m across, make it square.",
                 p->square[i].corner, 3.0 * p->square[i].unit_m, 4.0 * p->square[i].unit_m,
                 5.0 * p->square[i].unit_m);
}

static void pipe(const lw_page *page, const lw_setting_out *p) {
  if (!p->pipe_known) return;
  char name[LW_SPOT_NAME];
  lw_page_heading(page, "Drain pipe, its inside bottom");
  for (int i = 0; i < p->invert_count; i++)
    lw_page_linef(page, LW_TONE_PLAIN, "  %8.3f m  %s, %.2f m along the wall",
                  lw_order_level(p->invert[i].level_m), lw_invert_name(&p->invert[i], name),
                  p->invert[i].along_m);
  char comes_out[160];
  if (p->pipe_below_front_m > 0.0005)
    lw_print(
        comes_out, sizeof comes_out,
        "The lowest outlet is %.0f mm below the lowest ground in front: it must come out where the ground, "
        "or what takes the water, lies lower still",
        p->pipe_below_front_m * 1000.0);
  else
    lw_print(comes_out, sizeof comes_out, "Each outlet comes out %.0f mm above the ground in front of it",
             lw_order_level(-p->pipe_below_front_m) * 1000.0);
  lw_page_sayf(page, "  ", "The longest way to daylight is %.2f m, falling at least 1 in %.0f. %s.",
               p->pipe_length_m, 1.0 / p->pipe_fall, comes_out);
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
    lw_page_sayf(page, "  ",
                 "%.2f m along the wall: %.0f mm as drawn; alarm when it has come out by %.0f mm.",
                 s->along_m, s->reading_m * 1000.0, s->lean_alarm_m * 1000.0);
  }
  lw_page_sayf(page, "  ",
               "Alarm too: a joint that has stepped by %.0f mm, an outlet that is dry while the soil is wet, "
               "muddy water from an outlet.",
               p->joint_alarm_m * 1000.0);
}

void lw_order_setting_out_text(const lw_page *page, const lw_result *result, const lw_order *order) {
  char name[LW_SPOT_NAME];
  const lw_setting_out *p = &order->setting_out;
  setting_out(page, order);
  checks(page, p);
  lw_page_heading(page, "Levels");
  for (int i = 0; i < p->level_count; i++)
    lw_page_rowf(page, LW_TONE_PLAIN, "  %8.3f m  %s", lw_order_level(p->level[i].level_m),
                 lw_level_name(&p->level[i], name));
  pipe(page, p);
  work(page, result, order);
  hand_over(page, p);
}
