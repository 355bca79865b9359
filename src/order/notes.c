/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "notes.h"

#include <math.h>

#include "tables/known.h"
#include "laying.h"
#include "note.h"

/* What to mind about an order: joints too near each other, units too heavy, what the sheet leaves out. */

static void note_corners(const lw_laying *laying) {
  lw_order *order = laying->order;
  const lw_plan *plan = laying->plan;
  bool turned = false;
  for (int i = 0; i < order->corner_count; i++) turned = turned || order->corner[i].made == LW_MADE_TURNED;
  double stagger = fabs(remainder(plan->unit_m - plan->depth_m, plan->module_m));
  if (!turned || plan->courses < 2 || stagger >= order->overlap_needs_m - LW_TAKEN_UP) return;
  lw_order_note_add(order, &(lw_order_note){.kind = LW_NOTE_CORNER_STAGGER, .length_m = stagger});
}

/* Other corners are bonded: their blocks run through in turn. */
static void note_mitres(const lw_laying *laying) {
  lw_order *order = laying->order;
  int mitred = 0;
  for (int i = 0; i < order->corner_count; i++) mitred += order->corner[i].made == LW_MADE_CUT ? 1 : 0;
  if (mitred == 0 || laying->plan->courses < 2) return;
  lw_order_note_add(order, &(lw_order_note){.kind = LW_NOTE_CORNER_MITRE, .number = mitred});
}

/* Along a level top the ground that rises in front may come to it. */
static void note_ground(const lw_laying *laying) {
  const lw_plan *plan = laying->plan;
  double top = plan->courses * plan->course_m + laying->cap_m, low = laying->embedment_m;
  double over = low + fabs(plan->fall_m) - top;
  if (!plan->falls || over < -LW_TAKEN_UP) return;
  lw_order_note_add(laying->order, &(lw_order_note){.kind = LW_NOTE_GROUND_OVER_TOP,
                                                    .at_m = plan->length_m * (top - low) / fabs(plan->fall_m),
                                                    .length_m = fmax(over, 0.0)});
}

static double narrowest_cap(const lw_order *order) {
  double least = INFINITY;
  for (int i = 0; i < order->cap_sort_count; i++) least = fmin(least, order->cap_sort[i].depth_m);
  return least;
}

/* The usual pad goes by courses. A wall without any is taken for a high one: more stone does no harm. */
static void note_no_pad(const lw_laying *laying) {
  double low_courses = lw_known_value(laying->tables, LW_ORDERING_LOW_WALL_COURSES);
  bool low = !laying->plan->solid && laying->plan->courses < low_courses + 0.5;
  lw_known_row pad = low ? LW_ORDERING_PAD_LOW_WALL : LW_ORDERING_PAD_HIGH_WALL;
  lw_order_note_add(laying->order, &(lw_order_note){.kind = LW_NOTE_NO_PAD,
                                                    .number = (int)floor(low_courses + 0.5),
                                                    .low_wall = low,
                                                    .length_m = lw_known_value(laying->tables, pad)});
}

/* What keeps the soil out of the stone: only cloth is ordered, and what a check does not count is told. */
static void note_filter(const lw_laying *laying) {
  static const lw_order_note_kind kinds[] = {
      [LW_STONE_FILTER_GRADED] = LW_NOTE_GRADED_FILTER, [LW_STONE_FILTER_NONE] = LW_NOTE_NO_FILTER};
  if (lw_laying_has_cloth(laying)) return;
  lw_order_note note = {.kind = laying->filter_told ? kinds[laying->filter] : LW_NOTE_FILTER_NOT_TOLD};
  if (note.kind == LW_NOTE_GRADED_FILTER) {
    note.at_most = lw_known_value(laying->tables, LW_ORDERING_FILTER_RETAINS);
    note.at_least = lw_known_value(laying->tables, LW_ORDERING_FILTER_DRAINS);
  }
  lw_order_note_add(laying->order, &note);
}

void lw_order_notes(const lw_laying *laying) {
  lw_order *order = laying->order;
  order->lift_mass_kg = lw_known_value(laying->tables, LW_THRESHOLD_LIFT_MASS);
  double heaviest = fmax(order->unit_mass_kg, fmax(order->base_unit_mass_kg, order->cap_mass_kg));
  if (heaviest > order->lift_mass_kg)
    lw_order_note_add(order, &(lw_order_note){.kind = LW_NOTE_HEAVY_UNIT, .mass_kg = heaviest});
  note_corners(laying);
  note_mitres(laying);
  if (order->overlap_fails_at > 0)
    lw_order_note_add(order,
                      &(lw_order_note){.kind = LW_NOTE_OVERLAP_SHORT, .number = order->overlap_fails_at});
  note_ground(laying);
  double covered = narrowest_cap(order) - order->cap_overhang_m;
  if (order->has_cap && covered < laying->plan->depth_m - 0.0005)
    lw_order_note_add(order, &(lw_order_note){.kind = LW_NOTE_CAP_NARROW, .length_m = covered});
  if (!(laying->pad_m > 0.0)) note_no_pad(laying);
  if (laying->stone_m > 0.0)
    note_filter(laying);
  else
    lw_order_note_add(order, &(lw_order_note){.kind = LW_NOTE_NO_STONE});
}
