/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sketch.h"

#include <math.h>
#include <stdarg.h>
#include <string.h>

#include "base/angles.h"
#include "base/print.h"

/* Places on the paper, and words that keep out of each other's way. */

static const double CIRCLE_MM = 2.0;

lw_xy_mm lw_sketch_at(const lw_sketch *sketch, double x_m, double y_m) {
  return (lw_xy_mm){sketch->origin.x_mm + x_m * sketch->mm_per_m,
                    sketch->origin.y_mm - y_m * sketch->mm_per_m};
}

double lw_sketch_ground_behind(const lw_sketch *sketch, double x_m) {
  const lw_site *site = &sketch->result->wall.site;
  const lw_back_plane *back = &sketch->situation->base.back;
  double along = fmin(fmax(x_m - back->ground_x_m, 0.0), site->slope_run_m);
  return back->ground_y_m + along * tan(site->slope_rad);
}

double lw_sketch_ground_front(const lw_sketch *sketch, double x_m) {
  const lw_wall *wall = &sketch->result->wall;
  return wall->section.embedment_m + fmin(x_m, 0.0) * tan(wall->site.front_slope_rad);
}

static bool meet(const lw_box *a, const lw_box *b) {
  static const double AIR_MM = 0.4;
  return a->left_mm < b->right_mm + AIR_MM && b->left_mm < a->right_mm + AIR_MM &&
         a->top_mm < b->bottom_mm + AIR_MM && b->top_mm < a->bottom_mm + AIR_MM;
}

bool lw_sketch_is_free(const lw_sketch *sketch, const lw_box *box) {
  for (int i = 0; i < sketch->label_count; i++)
    if (meet(box, &sketch->label[i])) return false;
  return true;
}

void lw_sketch_take(lw_sketch *sketch, lw_box box) {
  if (sketch->label_count < LW_LABELS_MAX) sketch->label[sketch->label_count++] = box;
}

static lw_box circle_box(lw_xy_mm at) {
  return (lw_box){at.x_mm - CIRCLE_MM, at.y_mm - CIRCLE_MM, at.x_mm + CIRCLE_MM, at.y_mm + CIRCLE_MM};
}

/* Out from the spot in rings, until a place is found that nothing stands on. */
static lw_xy_mm free_place(const lw_sketch *sketch, lw_xy_mm at) {
  enum { RINGS = 8, WAYS = 12 };
  static const double TURN = 0.52359877559829887; /* a twelfth */
  for (int ring = 0; ring < RINGS; ring++) {
    for (int way = 0; way < (ring ? WAYS : 1); way++) {
      double out = 2.4 * ring;
      lw_xy_mm spot = {at.x_mm + out * cos(TURN * way + 0.8), at.y_mm - out * sin(TURN * way + 0.8)};
      lw_box box = circle_box(spot);
      if (lw_sketch_is_free(sketch, &box)) return spot;
    }
  }
  return at;
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

static void put_note(lw_sketch *s, lw_xy_mm to, bool aside, const char *format, va_list arguments) {
  if (s->note_count == LW_NOTES_MAX) return;
  lw_note *note = &s->note[s->note_count++];
  lw_print_list(note->words, sizeof note->words, format, arguments);
  note->at = aside ? place_aside(s, to) : free_place(s, to);
  note->to = to;
  note->aside = aside;
  lw_sketch_take(s, circle_box(note->at));
}

void lw_sketch_note(lw_sketch *sketch, double x_m, double y_m, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  put_note(sketch, lw_sketch_at(sketch, x_m, y_m), false, format, arguments);
  va_end(arguments);
}

void lw_sketch_note_aside(lw_sketch *sketch, double x_m, double y_m, const char *format, ...) {
  va_list arguments;
  va_start(arguments, format);
  put_note(sketch, lw_sketch_at(sketch, x_m, y_m), true, format, arguments);
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

/* Over all that is drawn, so that no line crosses a number. */
static void draw_numbers(lw_sketch *sketch) {
  sort_aside(sketch);
  for (int i = 0; i < sketch->note_count; i++) {
    const lw_note *note = &sketch->note[i];
    lw_xy_mm leader[] = {note->to, note->at};
    if (hypot(note->to.x_mm - note->at.x_mm, note->to.y_mm - note->at.y_mm) < 0.1) continue;
    lw_drawing_line(sketch->paper, LW_PEN_FINE, leader, 2);
    dot(sketch->paper, note->to);
  }
  for (int i = 0; i < sketch->note_count; i++) {
    const lw_note *note = &sketch->note[i];
    circle(sketch->paper, note->at);
    lw_drawing_words(sketch->paper, (lw_xy_mm){note->at.x_mm, note->at.y_mm + 0.35 * LW_SMALL_MM},
                     LW_ANCHOR_MIDDLE, LW_SMALL_MM, "%d", i + 1);
  }
}

lw_box lw_sketch_words_box(const char *words, lw_xy_mm at, lw_anchor anchor) {
  double width = lw_drawing_text_width(words, LW_SMALL_MM);
  double back = anchor == LW_ANCHOR_START ? 0.0 : anchor == LW_ANCHOR_MIDDLE ? 0.5 : 1.0;
  double left = at.x_mm - back * width;
  return (lw_box){left, at.y_mm - 0.8 * LW_SMALL_MM, left + width, at.y_mm + 0.22 * LW_SMALL_MM};
}

void lw_sketch_put(lw_sketch *sketch, const char *words, lw_xy_mm at, lw_anchor anchor) {
  static const double AIR_MM = 0.3;
  lw_box box = lw_sketch_words_box(words, at, anchor);
  lw_sketch_take(sketch, box);
  lw_xy_mm under[] = {{box.left_mm - AIR_MM, box.top_mm - AIR_MM},
                      {box.right_mm + AIR_MM, box.top_mm - AIR_MM},
                      {box.right_mm + AIR_MM, box.bottom_mm + AIR_MM},
                      {box.left_mm - AIR_MM, box.bottom_mm + AIR_MM}};
  lw_drawing_area(sketch->paper, LW_PEN_NONE, LW_FILL_PAPER, under, 4);
  lw_drawing_words(sketch->paper, at, anchor, LW_SMALL_MM, "%s", words);
}

void lw_sketch_label(lw_sketch *sketch, lw_xy_mm at, lw_anchor anchor, const char *format, ...) {
  enum { STEPS = 40 };
  static const double STEP_MM = 0.6;
  char words[160];
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(words, sizeof words, format, arguments);
  va_end(arguments);
  lw_xy_mm to = at;
  for (int step = 0; step < STEPS; step++) {
    to.y_mm = at.y_mm + step * STEP_MM;
    lw_box box = lw_sketch_words_box(words, to, anchor);
    if (lw_sketch_is_free(sketch, &box)) break;
  }
  lw_sketch_put(sketch, words, to, anchor);
}

/* The longest beginning of words, ended at a blank, that fits a width; all of a word that alone does not. */
static size_t fits(const char *words, double width_mm, double size_mm) {
  char line[256];
  size_t best = 0;
  for (size_t i = 0;; i++) {
    if (words[i] != ' ' && words[i] != '\0') continue;
    lw_print(line, sizeof line, "%.*s", (int)i, words);
    if (best > 0 && lw_drawing_text_width(line, size_mm) > width_mm) return best;
    best = i;
    if (words[i] == '\0') return best;
  }
}

double lw_sketch_wrap(lw_drawing *paper, lw_xy_mm at, double width_mm, double size_mm, bool bold,
                      const char *words) {
  double line_mm = size_mm * LW_LINE_MM / LW_BODY_MM;
  while (*words != '\0') {
    size_t length = fits(words, bold ? width_mm / 1.15 : width_mm, size_mm);
    at.y_mm += line_mm;
    lw_drawing_words(paper, (lw_xy_mm){at.x_mm, at.y_mm - 0.28 * size_mm}, LW_ANCHOR_START, size_mm, "%.*s",
                     (int)length, words);
    if (bold) lw_drawing_bold(paper);
    words += length;
    while (*words == ' ') words++;
  }
  return at.y_mm;
}

double lw_sketch_legend(lw_sketch *sketch, lw_xy_mm at, double width_mm) {
  static const double NUMBER_MM = 5.5, BASE_LINE_MM = LW_SMALL_MM * (LW_LINE_MM / LW_BODY_MM - 0.28);
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
