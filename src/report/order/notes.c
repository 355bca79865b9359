/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "words.h"

#include <math.h>

#include "base/amount.h"
#include "base/print.h"

/* What to mind about an order, in sentences. */

typedef void (*sentence)(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]);

static void nearly_closed(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  lw_print(out, LW_ORDER_SENTENCE,
           "The runs end %s from where they began, and are taken as a wall with two ends: measure "
           "again if it is to close.",
           lw_millimetres(order->units, n->length_m).text);
}

static void corner_turned(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  lw_print(out, LW_ORDER_SENTENCE,
           "The corner after run %d is laid with turned blocks: a mitre through blocks %s deep takes %s of "
           "their %s, and no sound piece is left.",
           n->number, lw_millimetres(order->units, n->depth_m).text,
           lw_millimetres(order->units, n->length_m).text,
           lw_millimetres(order->units, order->plan.unit_m).text);
}

static void corner_stagger(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  const lw_apart overlap = lw_millimetres_apart(order->units, n->length_m, order->overlap_needs_m);
  lw_print(
      out, LW_ORDER_SENTENCE,
      "Blocks of %s x %s turned at a corner overlap by %s there, whatever the lengths of the runs; %s is "
      "a quarter of a unit. Half bond comes by itself where a block is "
      "twice as long as deep.",
      lw_millimetres_again(order->units, order->plan.unit_m).text,
      lw_millimetres(order->units, order->plan.depth_m).text, overlap.one.text, overlap.other.text);
}

static void corner_mitre(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  (void)order;
  lw_print(
      out, LW_ORDER_SENTENCE,
      "%d of the corners %s cut on the mitre: a joint runs straight up there through every course, and no "
      "block ties the two runs together. Nothing here checks such a corner; one at 90 degrees, or a curve, "
      "is bonded.",
      n->number, n->number == 1 ? "is" : "are");
}

static void overlap_short(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  const lw_course_count *c = &order->course[n->number - 1];
  const lw_apart overlap = lw_millimetres_apart(order->units, c->overlap_m, order->overlap_needs_m);
  lw_print(
      out, LW_ORDER_SENTENCE,
      "Course %d, run %d, %s from its beginning: joints overlap by %s only, %s is a quarter of a unit%s.",
      n->number, c->overlap_run, lw_metres(order->units, c->overlap_at_m, 2).text, overlap.one.text,
      overlap.other.text,
      order->plan.setback_m > 0.0 ? "; the setback moves the bond from course to course" : "");
}

static void short_run(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  (void)order;
  lw_print(out, LW_ORDER_SENTENCE,
           "Run %d is so short that a course of it has cut pieces only, at its corners as well: make "
           "it longer or shorter, or lay it out by hand.",
           n->number);
}

static void step_sliver(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  lw_print(out, LW_ORDER_SENTENCE,
           "Course %d: beside step S%d, %s along the wall, a piece of %s has room, under a third of "
           "a block. Move the step, to half a block from the end, corner or step beside it or more.",
           n->number, n->step, lw_metres(order->units, n->at_m, 2).text,
           lw_millimetres(order->units, n->length_m).text);
}

static void curve_too_sharp(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  const lw_order_run *r = &order->run[n->number - 1];
  bool convex = order->plan.run[n->number - 1].radius_m > 0.0;
  const lw_apart gap = lw_millimetres_apart(order->units, r->curve_gap_m, order->plan.curve_gap_m);
  lw_print(out, LW_ORDER_SENTENCE,
           "Run %d: at %s of radius the blocks gape by %s at the %s, and %s is allowed: a wider curve, "
           "tapered blocks, or every block cut.",
           n->number, lw_metres(order->units, r->radius_m, 2).text, gap.one.text, convex ? "face" : "rear",
           gap.other.text);
}

static void cap_butt_joint(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  static const char *const cut[] = {
      [LW_BUTT_SQUARE] = "square", [LW_BUTT_REAR] = "to their rear edge", [LW_BUTT_END] = "to their end"};
  const lw_order_corner *c = order->corner;
  while (c->run != n->number - 1) c++;
  lw_print(out, LW_ORDER_SENTENCE,
           "The caps at the end of run %d: a butt joint, because %s. The caps of run %d run through, "
           "the next cap is cut %s against them.",
           n->number, lw_butt_words(c->butt), n->number, cut[c->butt_cut]);
}

static void cap_joint_near(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  const lw_order_run *r = &order->run[n->number - 1];
  const lw_apart joint = lw_millimetres_apart(order->units, r->cap_joint_m, order->cap_joint_needs_m);
  lw_print(out, LW_ORDER_SENTENCE,
           "Run %d: a joint of the caps stands %s from one of the blocks below, %s from the run's beginning; "
           "%s is wanted, and none of the ways tried has it.",
           n->number, joint.one.text, lw_metres(order->units, r->cap_joint_at_m, 2).text, joint.other.text);
}

static void cap_narrow(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  const lw_apart covers = lw_millimetres_apart(order->units, n->length_m, order->plan.depth_m);
  lw_print(out, LW_ORDER_SENTENCE,
           "The cap covers %s of the %s of the blocks: water and dirt get in behind it.", covers.one.text,
           covers.other.text);
}

static void heavy_unit(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  const lw_apart mass = lw_amounts_apart(order->units, LW_KIND_MASS, n->mass_kg, order->lift_mass_kg, 0);
  lw_print(out, LW_ORDER_SENTENCE,
           "A unit weighs up to %s, over the %s that one person should not lift again and again: two people "
           "or a lifter.",
           mass.one.text, mass.other.text);
}

static void ground_over_top(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  lw_print(out, LW_ORDER_SENTENCE,
           "The ground in front comes up to the level top of the wall %s from where it is low, and stands "
           "%s over it at the other end: beyond that place there is no face. End the wall there, or measure "
           "the fall again.",
           lw_metres(order->units, n->at_m, 2).text, lw_millimetres(order->units, n->length_m).text);
}

static void no_pad(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  const char *under = order->plan.solid ? "a wall without courses, as under more than %d of blocks"
                      : n->low_wall     ? "a wall of up to %d courses"
                                        : "a wall of more than %d courses";
  char wall[80];
  lw_print(wall, sizeof wall, under, n->number);
  lw_print(out, LW_ORDER_SENTENCE,
           "No pad is on the sheet, so none is ordered. Common practice, no source: at least %s of "
           "compacted stone under %s.",
           lw_millimetres(order->units, n->length_m).text, wall);
}

/* Sizes by weight finer, as a sieve gives them. */
static void graded_filter(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  (void)order;
  lw_print(
      out, LW_ORDER_SENTENCE,
      "The filter is graded (`stone filter`): no cloth, and its sand and gravel are not counted. From soil "
      "to stone, the 15 %% size of each coarser layer is at most %g times the 85 %% size of the finer one "
      "and at least %g times its 15 %% size: ask for the sieve curves.",
      n->at_most, n->at_least);
}

static void no_filter(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  (void)order, (void)n;
  lw_print(
      out, LW_ORDER_SENTENCE,
      "Nothing is to keep the soil out of the stone (`stone filter` none), so no cloth is ordered: fines "
      "close the stone, and the check counts all ways out as one.");
}

static void filter_not_told(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  (void)order, (void)n;
  lw_print(out, LW_ORDER_SENTENCE,
           "The sheet does not say what keeps the soil out of the stone (`stone filter`), so no cloth is "
           "ordered and no check counts one. What will it be: cloth, graded sand and gravel, or none?");
}

static void no_stone(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  (void)order, (void)n;
  lw_print(out, LW_ORDER_SENTENCE, "No drainage stone is on the sheet (`stone width`), so none is ordered.");
}

static void no_outlet(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  (void)order, (void)n;
  lw_print(out, LW_ORDER_SENTENCE,
           "The sheet names no drain outlet, so no pipe is ordered: where does the water come out?");
}

static void no_soil(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  (void)order, (void)n;
  lw_print(out, LW_ORDER_SENTENCE,
           "Soil behind the wall is counted for a closed bed only: measure what is filled.");
}

static void stone_past_centre(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  (void)order;
  lw_print(out, LW_ORDER_SENTENCE,
           "Run %d: the drainage stone reaches past the centre of the curve: measure there by hand "
           "the stone and its filter, the pipe and the dig.",
           n->number);
}

static void pipe_high(const lw_order *order, const lw_order_note *n, char out[LW_ORDER_SENTENCE]) {
  lw_print(out, LW_ORDER_SENTENCE,
           "At its high point the drain pipe lies %s below the soil behind: more outlets, nearer "
           "each other, let it begin lower.",
           lw_millimetres(order->units, n->length_m).text);
}

const char *lw_order_note_name(const lw_order_note *note, char out[LW_NOTE_SLUG]) {
  const char *slug = lw_order_note_slug(note->kind);
  lw_print(out, LW_NOTE_SLUG, note->kind == LW_NOTE_SHORT_RUN ? "%s-%d" : "%s", slug, note->number);
  return out;
}

const char *lw_order_note_words(const lw_order *order, const lw_order_note *note,
                                char out[LW_ORDER_SENTENCE]) {
  static const sentence SENTENCES[LW_NOTE_COUNT] = {
      [LW_NOTE_NEARLY_CLOSED] = nearly_closed,
      [LW_NOTE_CORNER_TURNED] = corner_turned,
      [LW_NOTE_CORNER_STAGGER] = corner_stagger,
      [LW_NOTE_CORNER_MITRE] = corner_mitre,
      [LW_NOTE_OVERLAP_SHORT] = overlap_short,
      [LW_NOTE_SHORT_RUN] = short_run,
      [LW_NOTE_STEP_SLIVER] = step_sliver,
      [LW_NOTE_CURVE_TOO_SHARP] = curve_too_sharp,
      [LW_NOTE_CAP_BUTT_JOINT] = cap_butt_joint,
      [LW_NOTE_CAP_JOINT_NEAR] = cap_joint_near,
      [LW_NOTE_CAP_NARROW] = cap_narrow,
      [LW_NOTE_HEAVY_UNIT] = heavy_unit,
      [LW_NOTE_GROUND_OVER_TOP] = ground_over_top,
      [LW_NOTE_NO_PAD] = no_pad,
      [LW_NOTE_GRADED_FILTER] = graded_filter,
      [LW_NOTE_NO_FILTER] = no_filter,
      [LW_NOTE_FILTER_NOT_TOLD] = filter_not_told,
      [LW_NOTE_NO_STONE] = no_stone,
      [LW_NOTE_NO_OUTLET] = no_outlet,
      [LW_NOTE_NO_SOIL] = no_soil,
      [LW_NOTE_STONE_PAST_CENTRE] = stone_past_centre,
      [LW_NOTE_PIPE_HIGH] = pipe_high,
  };
  SENTENCES[note->kind](order, note, out);
  return out;
}
