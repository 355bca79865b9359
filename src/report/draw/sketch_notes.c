/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdarg.h>

#include "base/angles.h"
#include "base/print.h"
#include "sketch.h"

/* Numbers in circles, and what they mean below. They look for their places when all lines are drawn, and keep
 * off the lines of other things. */

static const double CIRCLE_MM = 2.0;
static const double FAR_COST = 0.25; /* of a ring farther off; a line that a leader crosses is 1 */

static lw_box circle_box(lw_xy_mm at) {
  return (lw_box){at.x_mm - CIRCLE_MM, at.y_mm - CIRCLE_MM, at.x_mm + CIRCLE_MM, at.y_mm + CIRCLE_MM};
}

static bool on_page(const lw_sketch *s, const lw_box *box) {
  static const double AIR_MM = 0.3;
  return box->left_mm > AIR_MM && box->right_mm < s->width_mm - AIR_MM;
}

/* What speaks against a place: lines of other things under the number, words under its leader, lines that the
 * leader crosses, and how far off it is. */
static double cost_of(const lw_sketch *s, lw_xy_mm to, lw_xy_mm spot, int ring) {
  static const double UNDER = 4.0, WORDS = 1000.0, CROSSED = 1.0;
  lw_box box = circle_box(spot);
  double cost = UNDER * lw_drawing_crossings(s->paper, &box, &to) + FAR_COST * ring;
  if (ring == 0) return cost;
  return cost + CROSSED * lw_drawing_crossed_by(s->paper, to, spot) +
         (lw_sketch_may_lead(s, to, spot) ? 0.0 : WORDS);
}

/* Out from the spot in rings, to the place that least speaks against. */
static lw_xy_mm free_place(const lw_sketch *s, lw_xy_mm to) {
  enum { RINGS = 8, WAYS = 12 };
  static const double TURN = 0.52359877559829887, RING_MM = 2.4, FIRST_MM = 1.2; /* a twelfth */
  lw_xy_mm best = to;
  double least = INFINITY;
  for (int ring = 0; ring < RINGS && FAR_COST * ring < least; ring++)
    for (int way = 0; way < (ring ? WAYS : 1); way++) {
      double out = ring > 0 ? FIRST_MM + RING_MM * ring : 0.0;
      lw_xy_mm spot = {to.x_mm + out * cos(TURN * way + 0.8), to.y_mm - out * sin(TURN * way + 0.8)};
      lw_box box = circle_box(spot);
      if (!on_page(s, &box) || !lw_sketch_is_free(s, &box)) continue;
      double cost = cost_of(s, to, spot, ring);
      if (cost >= least) continue;
      least = cost;
      best = spot;
    }
  return best;
}

static void circle(lw_drawing *paper, lw_xy_mm at) {
  enum { SIDES = 24 };
  lw_xy_mm round[SIDES];
  for (int i = 0; i < SIDES; i++) {
    double turn = 2.0 * LW_PI * i / SIDES;
    round[i] = (lw_xy_mm){at.x_mm + CIRCLE_MM * cos(turn), at.y_mm + CIRCLE_MM * sin(turn)};
  }
  lw_drawing_area(paper, LW_PEN_FINE, LW_FILL_PAPER, round, SIDES);
}

/* In the air in front of the wall, as near the spot's own height as there is room between ground and top. */
static lw_xy_mm place_aside(const lw_sketch *s, lw_xy_mm at) {
  enum { STEPS = 60 };
  static const double AIR_MM = 1.2, STEP_MM = 1.1;
  const lw_section *section = &s->result->wall.section;
  double front = section->embedment_m > 0.0 ? 0.0 : section->part[0].front_m;
  for (int i = 0; i < section->part_count; i++) front = fmin(front, section->part[i].front_m);
  double x = lw_sketch_at(s, front, 0.0).x_mm - CIRCLE_MM - AIR_MM;
  double low = lw_sketch_at(s, 0.0, lw_sketch_ground_front(s, front)).y_mm - CIRCLE_MM - 0.5;
  double high = lw_sketch_at(s, 0.0, section->height_m).y_mm - CIRCLE_MM;
  for (int step = 0; step < 2 * STEPS; step++) {
    double y = at.y_mm + (step % 2 ? -1.0 : 1.0) * ((step + 1) / 2) * STEP_MM;
    lw_xy_mm spot = {x, fmax(high, fmin(low, y))};
    lw_box box = circle_box(spot);
    if (lw_sketch_is_free(s, &box)) return spot;
  }
  return free_place(s, at);
}

static void add_note(lw_sketch *s, lw_xy_mm to, bool aside, const char *format, va_list arguments) {
  if (s->note_count == LW_NOTES_MAX) return;
  lw_note *note = &s->note[s->note_count++];
  lw_print_list(note->words, sizeof note->words, format, arguments);
  note->to = to;
  note->aside = aside;
}

void lw_sketch_note(lw_sketch *sketch, double x_m, double y_m, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  add_note(sketch, lw_sketch_at(sketch, x_m, y_m), false, format, arguments);
  va_end(arguments);
}

void lw_sketch_note_aside(lw_sketch *sketch, double x_m, double y_m, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  add_note(sketch, lw_sketch_at(sketch, x_m, y_m), true, format, arguments);
  va_end(arguments);
}

/* The end of a leader, so that it is seen where it points. */
static void dot(lw_drawing *paper, lw_xy_mm at) {
  enum { SIDES = 8 };
  static const double DOT_MM = 0.35;
  lw_xy_mm round[SIDES];
  for (int i = 0; i < SIDES; i++) {
    double turn = 6.283185307179586 * i / SIDES;
    round[i] = (lw_xy_mm){at.x_mm + DOT_MM * cos(turn), at.y_mm + DOT_MM * sin(turn)};
  }
  lw_drawing_area(paper, LW_PEN_NONE, LW_FILL_INK, round, SIDES);
}

/* Numbers in the air in front stand in the order of what they are about, so that no leaders cross. */
static void sort_aside(lw_sketch *s) {
  for (int i = 0; i < s->note_count; i++)
    for (int k = i + 1; k < s->note_count; k++) {
      lw_note *a = &s->note[i], *b = &s->note[k];
      bool crossed = (a->to.y_mm - b->to.y_mm) * (a->at.y_mm - b->at.y_mm) < 0.0;
      if (!a->aside || !b->aside || !crossed || fabs(a->at.x_mm - b->at.x_mm) > 0.1) continue;
      lw_xy_mm at = a->at;
      a->at = b->at;
      b->at = at;
    }
}

static void lead(lw_sketch *s, const lw_note *note) {
  lw_xy_mm leader[] = {note->to, note->at};
  if (hypot(note->to.x_mm - note->at.x_mm, note->to.y_mm - note->at.y_mm) < 0.1) return;
  lw_drawing_line(s->paper, LW_PEN_FINE, leader, 2);
  dot(s->paper, note->to);
}

/* Those in the air in front first, as only there they are told apart from the wall. */
static void place(lw_sketch *s, bool aside) {
  for (int i = 0; i < s->note_count; i++) {
    lw_note *note = &s->note[i];
    if (note->aside != aside) continue;
    note->at = aside ? place_aside(s, note->to) : free_place(s, note->to);
    lw_sketch_take(s, circle_box(note->at));
    if (!aside) lead(s, note);
  }
  if (!aside) return;
  sort_aside(s);
  for (int i = 0; i < s->note_count; i++)
    if (s->note[i].aside) lead(s, &s->note[i]);
}

/* Numbers over all that is drawn, so that no line crosses them. */
static void draw_numbers(lw_sketch *sketch) {
  place(sketch, true);
  place(sketch, false);
  for (int i = 0; i < sketch->note_count; i++) {
    const lw_note *note = &sketch->note[i];
    circle(sketch->paper, note->at);
    lw_drawing_words(sketch->paper, (lw_xy_mm){note->at.x_mm, note->at.y_mm + 0.35 * LW_SMALL_MM},
                     LW_ANCHOR_MIDDLE, LW_SMALL_MM, "%d", i + 1);
  }
}

double lw_sketch_legend(lw_sketch *sketch, lw_xy_mm at, double width_mm) {
  static const double NUMBER_MM = 5.5, BASE_LINE_MM = LW_SMALL_MM * (LW_LINE_MM / LW_BODY_MM - 0.28);
  lw_sketch_take(sketch, (lw_box){0.0, at.y_mm, sketch->width_mm, INFINITY});
  lw_sketch_put_labels(sketch);
  draw_numbers(sketch);
  for (int i = 0; i < sketch->note_count; i++) {
    lw_drawing_words(sketch->paper, (lw_xy_mm){at.x_mm, at.y_mm + BASE_LINE_MM}, LW_ANCHOR_START, LW_SMALL_MM,
                     "%d", i + 1);
    lw_drawing_bold(sketch->paper);
    at.y_mm = lw_sketch_wrap(sketch->paper, (lw_xy_mm){at.x_mm + NUMBER_MM, at.y_mm}, width_mm - NUMBER_MM,
                             LW_SMALL_MM, false, sketch->note[i].words);
  }
  return at.y_mm;
}
