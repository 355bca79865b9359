/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sketch.h"

#include <limits.h>
#include <math.h>
#include <stdarg.h>
#include <string.h>

#include "base/print.h"

/* Places on the paper, and words that keep out of each other's way. */

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

void lw_sketch_label(lw_sketch *s, lw_xy_mm at, lw_anchor anchor, const char *format, ...) {
  va_list arguments;
  if (s->wait_count == LW_WAITING_MAX) return;
  lw_waiting *w = &s->wait[s->wait_count++];
  *w = (lw_waiting){.at = at, .anchor = anchor};
  va_start(arguments, format);
  lw_print_list(w->words, sizeof w->words, format, arguments);
  va_end(arguments);
}

/* As far down as it takes; where all is taken, as far as lines allow. */
static lw_xy_mm free_below(const lw_sketch *s, const lw_waiting *w) {
  enum { STEPS = 40 };
  static const double STEP_MM = 0.6;
  lw_xy_mm to = w->at, best = w->at;
  int least = INT_MAX;
  for (int step = 0; step < STEPS && least > 0; step++, to.y_mm += STEP_MM) {
    lw_box box = lw_sketch_words_box(w->words, to, w->anchor);
    int crossed = lw_drawing_crossings(s->paper, &box, NULL);
    if (!lw_sketch_is_free(s, &box) || crossed >= least) continue;
    least = crossed;
    best = to;
  }
  return best;
}

void lw_sketch_put_labels(lw_sketch *s) {
  for (int i = 0; i < s->wait_count; i++)
    lw_sketch_put(s, s->wait[i].words, free_below(s, &s->wait[i]), s->wait[i].anchor);
  s->wait_count = 0;
}

/* As many letters as fit a width, one at least: of a word that is longer than a line. */
static size_t letters(const char *words, size_t length, double width_mm, double size_mm) {
  char line[256];
  size_t best = 0;
  for (size_t i = 1; i <= length; i++) {
    if (((unsigned char)words[i] & 0xc0) == 0x80) continue; /* within a letter */
    lw_print(line, sizeof line, "%.*s", (int)i, words);
    if (best > 0 && lw_drawing_text_width(line, size_mm) > width_mm) break;
    best = i;
  }
  return best;
}

/* Whether a unit stands behind a blank: it stays with its figure, and the inches with their feet. */
static bool goes_with(const char *words, size_t blank) {
  if (blank < 1 || words[blank] == '\0') return false;
  const char *next = words + blank + 1;
  bool figure = words[blank - 1] >= '0' && words[blank - 1] <= '9';
  bool feet = blank > 3 && strncmp(words + blank - 3, " ft", 3) == 0 && *next >= '0' && *next <= '9';
  return feet || (figure && lw_unit_written(next) > 0);
}

/* The longest beginning of words, ended at a blank, that fits a width. */
static size_t fits(const char *words, double width_mm, double size_mm) {
  char line[256];
  size_t best = 0;
  for (size_t i = 0;; i++) {
    if ((words[i] != ' ' && words[i] != '\0') || goes_with(words, i)) continue;
    lw_print(line, sizeof line, "%.*s", (int)i, words);
    bool wide = lw_drawing_text_width(line, size_mm) > width_mm;
    if (wide) return best > 0 ? best : letters(words, i, width_mm, size_mm);
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
