/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sketch.h"

#include <math.h>
#include <stdarg.h>

#include "base/print.h"

/* Words that look for a place of their own, and what stands at the top of each view. */

static bool put(lw_sketch *s, const char *words, lw_xy_mm at, lw_anchor anchor) {
  static const double AIR_MM = 0.3;
  lw_box b = lw_sketch_words_box(words, at, anchor);
  bool on_page = b.left_mm >= AIR_MM && b.right_mm <= s->width_mm - AIR_MM && b.top_mm >= AIR_MM;
  if (!on_page || s->label_count == LW_LABELS_MAX || !lw_sketch_is_free(s, &b)) return false;
  if (lw_drawing_crossings(s->paper, &b, NULL) > 0) return false;
  lw_sketch_put(s, words, at, anchor);
  return true;
}

bool lw_sketch_place(lw_sketch *sketch, lw_xy_mm at, lw_anchor anchor, lw_move move, const char *format,
                     ...) {
  char words[160];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(words, sizeof words, format, arguments);
  va_end(arguments);
  for (int i = 0; i <= move.times; i++, at.y_mm += move.by_mm)
    if (put(sketch, words, at, anchor)) return true;
  return false;
}

/* Words stand this far above their base line, on the middle. */
static const double MIDDLE_MM = 0.3 * LW_SMALL_MM, TURN = 0.39269908169872415; /* a sixteenth */

bool lw_sketch_around(lw_sketch *sketch, lw_xy_mm at, int rings, const char *format, ...) {
  enum { WAYS = 16 };
  static const double RING_MM = 1.8;
  char words[160];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(words, sizeof words, format, arguments);
  va_end(arguments);
  at.y_mm += MIDDLE_MM;
  for (int ring = 0; ring <= rings; ring++)
    for (int way = 0; way < (ring ? WAYS : 1); way++) {
      lw_xy_mm spot = {at.x_mm + 1.6 * ring * RING_MM * cos(way * TURN),
                       at.y_mm + ring * RING_MM * sin(way * TURN)};
      if (put(sketch, words, spot, LW_ANCHOR_MIDDLE)) return true;
    }
  return false;
}

static bool holds(const lw_box *box, lw_xy_mm spot) {
  return spot.x_mm > box->left_mm && spot.x_mm < box->right_mm && spot.y_mm > box->top_mm &&
         spot.y_mm < box->bottom_mm;
}

bool lw_sketch_may_lead(const lw_sketch *s, lw_xy_mm from, lw_xy_mm to) {
  for (int i = 0; i < s->label_count; i++)
    if (lw_box_is_met(&s->label[i], from, to) && !holds(&s->label[i], from)) return false;
  return true;
}

bool lw_sketch_lead(lw_sketch *sketch, lw_xy_mm to, const char *words) {
  enum { RINGS = 8, WAYS = 16 };
  static const double RING_MM = 2.4, AIR_MM = 0.4;
  double half = 0.5 * lw_drawing_text_width(words, LW_SMALL_MM) + AIR_MM, high = 0.5 * LW_SMALL_MM + AIR_MM;
  for (int ring = 2; ring < RINGS; ring++)
    for (int way = 0; way < WAYS; way++) {
      double x = cos(way * TURN), y = sin(way * TURN), out = ring * RING_MM;
      double edge = out - fmin(half / fmax(fabs(x), 1e-9), high / fmax(fabs(y), 1e-9));
      lw_xy_mm line[] = {to, {to.x_mm + edge * x, to.y_mm + edge * y}};
      lw_xy_mm at = {to.x_mm + out * x, to.y_mm + out * y + MIDDLE_MM};
      if (edge <= 0.0 || !lw_sketch_may_lead(sketch, line[0], line[1]) ||
          !put(sketch, words, at, LW_ANCHOR_MIDDLE))
        continue;
      lw_drawing_line(sketch->paper, LW_PEN_FINE, line, 2);
      return true;
    }
  return false;
}

double lw_sketch_replaced(lw_sketch *sketch, double y_mm) {
  const char *replaced = sketch->result->tables->replaced;
  double wide = sketch->width_mm - 2.0 * LW_MARGIN_MM;
  char words[LW_REPLACED_MAX + 40];
  if (!replaced[0]) return y_mm;
  lw_print(words, sizeof words, "Made with replaced tables: %s.", replaced);
  return lw_sketch_wrap(sketch->paper, (lw_xy_mm){LW_MARGIN_MM, y_mm + 1.0}, wide, LW_SMALL_MM, true, words);
}

double lw_sketch_head(lw_sketch *sketch, const char *words) {
  const lw_result *r = sketch->result;
  double wide = sketch->width_mm - 2.0 * LW_MARGIN_MM;
  char all[400];
  double y = lw_sketch_wrap(sketch->paper, (lw_xy_mm){LW_MARGIN_MM, LW_MARGIN_MM - 1.0}, wide, LW_BODY_MM,
                            true, r->verdict.headline);
  y = lw_sketch_replaced(sketch, y);
  lw_print(all, sizeof all, "%s%s%s", r->given.about.title.text, r->given.about.title.text[0] ? ". " : "",
           words);
  y = lw_sketch_wrap(sketch->paper, (lw_xy_mm){LW_MARGIN_MM, y + 1.0}, wide, LW_SMALL_MM, false, all);
  lw_sketch_take(sketch, (lw_box){0.0, 0.0, sketch->width_mm, y});
  return y;
}

/* The shortest of the lengths in use that can be measured; 0 where none fits the room. */
static double bar_m(const lw_sketch *s, double room_mm) {
  static const double METRES[] = {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0};
  static const double FEET[] = {0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0};
  static const double LEAST_MM = 18.0;
  enum { COUNT = sizeof METRES / sizeof *METRES };
  bool us = s->result->units == LW_UNITS_US;
  int i = 0;
  while (i + 1 < COUNT && (us ? FEET[i] * LW_FOOT_M : METRES[i]) * s->mm_per_m < LEAST_MM) i++;
  double length = us ? FEET[i] * LW_FOOT_M : METRES[i];
  return length * s->mm_per_m > room_mm - 16.0 ? 0.0 : length;
}

double lw_sketch_bar(lw_sketch *sketch, lw_xy_mm at, double room_mm) {
  static const double HIGH_MM = 1.4;
  double length = bar_m(sketch, room_mm), long_mm = length * sketch->mm_per_m;
  if (length <= 0.0) return at.y_mm;
  for (int half = 0; half < 2; half++) {
    double left = at.x_mm + 0.5 * half * long_mm, right = left + 0.5 * long_mm, low = at.y_mm + HIGH_MM;
    lw_xy_mm box[] = {{left, at.y_mm}, {right, at.y_mm}, {right, low}, {left, low}};
    lw_drawing_area(sketch->paper, LW_PEN_FINE, half ? LW_FILL_PAPER : LW_FILL_INK, box, 4);
  }
  lw_drawing_words(sketch->paper, (lw_xy_mm){at.x_mm + long_mm + 1.5, at.y_mm + HIGH_MM + 0.2},
                   LW_ANCHOR_START, LW_SMALL_MM, "%s", lw_sketch_m(sketch, length, 1).text);
  return at.y_mm + LW_LINE_MM + 1.0;
}
