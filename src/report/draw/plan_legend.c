/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/print.h"
#include "report/order/words.h"
#include "plan_view.h"

/* What the plan's lines mean, the distances that check it, and the pegs with their places and levels. */

static double say(lw_plan_view *v, double y_mm, const char *words) {
  return lw_sketch_wrap(v->s.paper, (lw_xy_mm){LW_MARGIN_MM, y_mm}, v->s.width_mm - 2.0 * LW_MARGIN_MM,
                        LW_SMALL_MM, false, words);
}

static double lines(lw_plan_view *v, double y_mm) {
  const lw_setting_out *p = &v->order->setting_out;
  char words[240];
  lw_print(words, sizeof words,
           "Heavy line: face %s. Tint: the wall, %s deep. Dots: soil. Black squares: pegs of the base line "
           "(B).%s",
           v->order->plan.solid ? "at its foot" : "of the lowest course",
           lw_sketch_mm(&v->s, v->depth_m).text,
           v->order->plan.step_count > 0 ? " Crosses S: steps of the base." : "");
  y_mm = say(v, y_mm, words);
  if (p->base_offset_m > 0.0) {
    lw_print(words, sizeof words,
             "Top line (T): %s behind the base line, towards the soil; dashed where that can be drawn.%s",
             lw_sketch_mm(&v->s, p->base_offset_m).text,
             v->order->plan.step_count > 0
                 ? " Above a step of the base its pegs have stepped back with the courses."
                 : "");
    y_mm = say(v, y_mm, words);
  }
  y_mm = lw_plan_bed_legend(v, y_mm);
  return lw_plan_pipe_legend(v, y_mm) + 1.0;
}

bool lw_plan_check_pegs(const lw_setting_out *setting_out, int check, int peg[2]) {
  peg[0] = setting_out->check[check].from - 1;
  peg[1] = setting_out->check[check].to - 1;
  return peg[1] >= 0 && peg[0] < setting_out->peg_count && peg[1] < setting_out->peg_count;
}

bool lw_plan_check_told(const lw_setting_out *setting_out, int check) {
  int mine[2], other[2];
  if (!lw_plan_check_pegs(setting_out, check, mine)) return false;
  for (int i = 0; i < check; i++) {
    if (!lw_plan_check_pegs(setting_out, i, other)) continue;
    if (mine[0] + mine[1] == other[0] + other[1] && (mine[0] == other[0] || mine[0] == other[1])) return true;
  }
  return false;
}

static double distances(lw_plan_view *v, double y_mm) {
  const lw_setting_out *p = &v->order->setting_out;
  char words[200], name[LW_SPOT_NAME];
  for (int i = 0; i < p->check_count; i++) {
    if (lw_plan_check_told(p, i)) continue;
    lw_print(words, sizeof words, "%s%s: %s, within %s.", i == 0 ? "Chain lines check corners. " : "",
             lw_peg_check_name(&p->check[i], name), lw_sketch_m(&v->s, p->check[i].distance_m, 3).text,
             lw_sketch_mm(&v->s, p->check[i].tolerance_m).text);
    y_mm = say(v, y_mm, words);
  }
  return y_mm;
}

/* In feet the sides are whole inches, that the tape shows them: a unit of a quarter foot or a multiple. */
static double triangle_unit(const lw_plan_view *v, double unit_m) {
  static const double STEP_M = 3.0 * LW_INCH_M;
  double steps = floor(unit_m / STEP_M + 1e-9);
  return v->s.result->units == LW_UNITS_US && steps > 0.0 ? steps * STEP_M : unit_m;
}

/* Corners of one triangle in one sentence. */
static double squares(lw_plan_view *v, double y_mm) {
  const lw_setting_out *p = &v->order->setting_out;
  for (int i = 0; i < p->square_count;) {
    lw_text words = {0};
    double given = p->square[i].unit_m, unit = triangle_unit(v, given);
    lw_text_add(&words, "Square at");
    for (; i < p->square_count && fabs(p->square[i].unit_m - given) < 1e-9; i++)
      lw_text_addf(&words, " B%d", p->square[i].corner);
    lw_text_addf(&words, ": %s along one side and %s along the other are then %s apart.",
                 lw_sketch_m(&v->s, 3.0 * unit, 2).text, lw_sketch_m(&v->s, 4.0 * unit, 2).text,
                 lw_sketch_m(&v->s, 5.0 * unit, 2).text);
    if (words.failed)
      v->s.paper->failed = true;
    else
      y_mm = say(v, y_mm, words.data);
    lw_text_free(&words);
  }
  return y_mm + 1.0;
}

static void cell(const lw_sketch *s, double right_mm, double y_mm, double value_m) {
  lw_amount us = lw_sketch_dimension(s, value_m), metric;
  lw_print(metric.text, sizeof metric.text, "%.3f", lw_plan_level(value_m));
  lw_drawing_words(s->paper, (lw_xy_mm){right_mm, y_mm}, LW_ANCHOR_END, LW_SMALL_MM, "%s",
                   s->result->units == LW_UNITS_US ? us.text : metric.text);
}

/* As many columns of the table as the paper is wide. */
static double table(lw_plan_view *v, double y_mm) {
  static const double NAME_MM = 4.5, ROW_MM = 3.1, APART_MM = 5.5;
  static const char *const HEADS[] = {"X", "Y", "level"};
  const lw_setting_out *p = &v->order->setting_out;
  char name[LW_SPOT_NAME];
  bool us = v->s.result->units == LW_UNITS_US;
  const double NUMBER_MM = us ? 16.5 : 11.0, COLUMN_MM = NAME_MM + 3.0 * NUMBER_MM + APART_MM;
  int columns = (int)fmax(1.0, floor((v->s.width_mm - 2.0 * LW_MARGIN_MM) / COLUMN_MM));
  int rows = (p->peg_count + columns - 1) / columns;
  y_mm = say(v, y_mm,
             us ? "Pegs in feet and inches: X along run 1, Y towards the soil, level above the lowest base."
                : "Pegs in metres: X along run 1, Y towards the soil, level above the lowest base.");
  for (int i = 0; i < p->peg_count; i++) {
    double left = LW_MARGIN_MM + (i / rows) * COLUMN_MM, y = y_mm + (i % rows + 2) * ROW_MM;
    for (int k = 0; k < 3 && i % rows == 0; k++)
      lw_drawing_words(v->s.paper, (lw_xy_mm){left + NAME_MM + (k + 1) * NUMBER_MM, y - ROW_MM},
                       LW_ANCHOR_END, LW_SMALL_MM, "%s", HEADS[k]);
    lw_drawing_words(v->s.paper, (lw_xy_mm){left, y}, LW_ANCHOR_START, LW_SMALL_MM, "%s",
                     lw_peg_name(&p->peg[i], name));
    lw_drawing_bold(v->s.paper);
    cell(&v->s, left + NAME_MM + NUMBER_MM, y, p->peg[i].at.x_m);
    cell(&v->s, left + NAME_MM + 2.0 * NUMBER_MM, y, p->peg[i].at.y_m);
    cell(&v->s, left + NAME_MM + 3.0 * NUMBER_MM, y, p->peg[i].level_m);
  }
  return y_mm + (rows + 2) * ROW_MM;
}

double lw_plan_legend(lw_plan_view *view, double y_mm) {
  y_mm = lw_plan_untold(view, y_mm);
  y_mm = lines(view, y_mm);
  y_mm = distances(view, y_mm);
  y_mm = squares(view, y_mm);
  return table(view, y_mm);
}
