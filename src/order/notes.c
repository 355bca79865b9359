/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "notes.h"

#include <math.h>

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
  lw_order_note_add(
      order, "corner-stagger",
      "Blocks of %.0f x %.0f mm turned at a corner overlap by %.0f mm there, whatever the lengths "
      "of the runs; %.0f mm is a quarter of a unit. Half bond comes by itself where a block is "
      "twice as long as deep.",
      plan->unit_m * 1000.0, plan->depth_m * 1000.0, stagger * 1000.0, order->overlap_needs_m * 1000.0);
}

/* Other corners are bonded: their blocks run through in turn. */
static void note_mitres(const lw_laying *laying) {
  lw_order *order = laying->order;
  int mitred = 0;
  for (int i = 0; i < order->corner_count; i++) mitred += order->corner[i].made == LW_MADE_CUT ? 1 : 0;
  if (mitred == 0 || laying->plan->courses < 2) return;
  lw_order_note_add(
      order, "corner-mitre",
      "%d of the corners %s cut on the mitre: a joint runs straight up there through every course, and no "
      "block ties the two runs together. Nothing here checks such a corner; one at 90 degrees, or a curve, "
      "is "
      "bonded.",
      mitred, mitred == 1 ? "is" : "are");
}

static void note_overlap(const lw_laying *laying) {
  lw_order *order = laying->order;
  if (order->overlap_fails_at == 0) return;
  const lw_course_count *n = &order->course[order->overlap_fails_at - 1];
  lw_order_note_add(
      order, "overlap-short",
      "Course %d, run %d, %.2f m from its beginning: joints overlap by %.0f mm only, %.0f mm is a "
      "quarter of a unit%s.",
      order->overlap_fails_at, n->overlap_run, n->overlap_at_m, n->overlap_m * 1000.0,
      order->overlap_needs_m * 1000.0,
      laying->plan->setback_m > 0.0 ? "; the setback moves the bond from course to course" : "");
}

/* Along a level top the ground that rises in front may come to it. */
static void note_ground(const lw_laying *laying, const lw_case *c) {
  const lw_plan *plan = laying->plan;
  double cap = c->cap_height.origin != LW_ABSENT ? c->cap_height.si : 0.0;
  double top = plan->courses * plan->course_m + cap, low = c->wall_embedment.si;
  double over = low + fabs(plan->fall_m) - top;
  if (!plan->falls || over < -LW_TAKEN_UP) return;
  lw_order_note_add(
      laying->order, "ground-over-top",
      "The ground in front comes up to the level top of the wall %.2f m from where it is low, and stands "
      "%.0f mm "
      "over it at the other end: beyond that place there is no face. End the wall there, or measure the fall "
      "again.",
      plan->length_m * (top - low) / fabs(plan->fall_m), fmax(over, 0.0) * 1000.0);
}

static double narrowest_cap(const lw_order *order) {
  double least = INFINITY;
  for (int i = 0; i < order->cap_sort_count; i++) least = fmin(least, order->cap_sort[i].depth_m);
  return least;
}

void lw_order_notes(const lw_laying *laying, const lw_result *result) {
  const lw_case *c = &result->given;
  lw_order *order = laying->order;
  order->lift_mass_kg = lw_known_value(laying->tables, LW_THRESHOLD_LIFT_MASS);
  double heaviest = fmax(order->unit_mass_kg, fmax(order->base_unit_mass_kg, order->cap_mass_kg));
  if (heaviest > order->lift_mass_kg)
    lw_order_note_add(
        order, "heavy-unit",
        "A unit weighs up to %.0f kg, over the %.0f kg that one person should not lift again and "
        "again: two people or a lifter.",
        heaviest, order->lift_mass_kg);
  note_corners(laying);
  note_mitres(laying);
  note_overlap(laying);
  note_ground(laying, c);
  double covered = narrowest_cap(order) - order->cap_overhang_m;
  if (order->has_cap && covered < laying->plan->depth_m - 0.0005)
    lw_order_note_add(order, "cap-narrow",
                      "The cap covers %.0f mm of the %.0f mm of the blocks: water and dirt get in behind it.",
                      covered * 1000.0, laying->plan->depth_m * 1000.0);
  if (c->pad_thickness.origin != LW_GIVEN || !(c->pad_thickness.si > 0.0))
    lw_order_note_add(order, "no-pad",
                      "No pad is on the sheet, so none is ordered. Common practice, no "
                      "source: at least %.0f mm of compacted stone under up to three courses.",
                      lw_known_value(laying->tables, LW_ORDERING_PAD_LOW_WALL) * 1000.0);
  if (c->stone_width.origin != LW_GIVEN || !(c->stone_width.si > 0.0))
    lw_order_note_add(order, "no-stone",
                      "No drainage stone is on the sheet (`stone width`), so none is ordered.");
}
