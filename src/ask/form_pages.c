/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "report/draw/sketch.h"
#include "form.h"

/* The form on paper: two columns that flow over two pages, what is left of them is the sketch. The page
 * behind them has a column of what an officer asks, and one of the tests by hand. */

enum { COLUMNS = 2 };
static const double MARGIN_MM = 11.0, GUTTER_MM = 7.0, FOOT_MM = 6.0, LEAST_SKETCH_MM = 60.0;

/* Each once with its boxes and lines, and once with the steps of its test. */
enum { QUESTIONS_MOST = 2 * LW_QUESTION_ROWS };

typedef struct flow {
  lw_drawing *page;
  int questions; /* met so far */
  double high_mm[QUESTIONS_MOST];
  lw_xy_mm paper; /* its width and height */
  double size_mm, y_mm, top_mm[LW_FORM_PAGES];
  int at_page, at_column;
  int pages; /* that the part in hand may fill */
  bool full;
} flow;

static double width_of(const flow *f) {
  return (f->paper.x_mm - 2.0 * MARGIN_MM - GUTTER_MM) / COLUMNS;
}

static double left_of(const flow *f) {
  return MARGIN_MM + f->at_column * (width_of(f) + GUTTER_MM);
}

static double bottom_of(const flow *f) {
  return f->paper.y_mm - MARGIN_MM - FOOT_MM;
}

static lw_drawing *page_of(flow *f) {
  return &f->page[f->at_page];
}

/* Room for so much in this column or the next; false when the pages are full. */
static bool make_room(flow *f, double high_mm) {
  if (f->full || f->y_mm + high_mm <= bottom_of(f)) return !f->full;
  f->at_column++;
  if (f->at_column == COLUMNS) {
    f->at_column = 0;
    f->at_page++;
  }
  f->full = f->at_page >= f->pages;
  if (!f->full) f->y_mm = f->top_mm[f->at_page];
  return !f->full;
}

static double height_of(const char *words, double width_mm, double size_mm, bool bold) {
  lw_drawing trial = {0};
  double high = lw_sketch_wrap(&trial, (lw_xy_mm){0.0, 0.0}, width_mm, size_mm, bold, words);
  lw_drawing_free(&trial);
  return high;
}

static void put(flow *f, double indent_mm, bool bold, const char *words) {
  const lw_xy_mm at = {left_of(f) + indent_mm, f->y_mm};
  f->y_mm = lw_sketch_wrap(page_of(f), at, width_of(f) - indent_mm, f->size_mm, bold, words);
}

static const double BOX_INDENT_MM = 5.0, BOX_GAP_MM = 0.3, QUESTION_GAP_MM = 1.0;
static const double RULE_MM = 32.0, UNITS_MM = 13.0, LINE_HIGH_MM = 5.0;

static double words_of_line(const flow *f) {
  return width_of(f) - RULE_MM - UNITS_MM - 2.0;
}

static void question_words(const lw_form_line *line, char *out, size_t size) {
  lw_print(out, size, "%s  %s%s%s%s", line->label, line->words, line->of[0] ? " (" : "", line->of,
           line->of[0] ? ")" : "");
}

/* What a line takes of a column. */
static double high_of(const flow *f, const lw_form_line *line) {
  char words[2 * LW_NOTE_MAX];
  switch (line->kind) {
  case LW_FORM_QUESTION:
    question_words(line, words, sizeof words);
    return QUESTION_GAP_MM + height_of(words, width_of(f), f->size_mm, true);
  case LW_FORM_STEP:
  case LW_FORM_BOX:
    return BOX_GAP_MM + height_of(line->words, width_of(f) - BOX_INDENT_MM, f->size_mm, false);
  case LW_FORM_LINE: return fmax(LINE_HIGH_MM, height_of(line->words, words_of_line(f), f->size_mm, false));
  case LW_FORM_TITLE:
  case LW_FORM_WORDS:
  case LW_FORM_PART:
  case LW_FORM_SKETCH: break;
  }
  return 0.0;
}

/* Before anything is put: how high each question is with all that belongs to it. */
static void measure(void *context, const lw_form_line *line) {
  flow *f = context;
  if (line->kind == LW_FORM_QUESTION) f->high_mm[f->questions++] = 0.0;
  if (f->questions > 0) f->high_mm[f->questions - 1] += high_of(f, line);
}

/* A question stays with its boxes and lines. */
static void question(flow *f, const lw_form_line *line) {
  char words[2 * LW_NOTE_MAX];
  question_words(line, words, sizeof words);
  if (!make_room(f, f->high_mm[f->questions++])) return;
  if (f->y_mm > f->top_mm[f->at_page] + 0.1) f->y_mm += QUESTION_GAP_MM;
  put(f, 0.0, true, words);
}

static void box(flow *f, const lw_form_line *line) {
  static const double SIDE_MM = 2.6;
  if (!make_room(f, high_of(f, line))) return;
  f->y_mm += BOX_GAP_MM;
  double x = left_of(f) + 1.0, y = f->y_mm + 0.5;
  const lw_xy_mm square[] = {{x, y}, {x + SIDE_MM, y}, {x + SIDE_MM, y + SIDE_MM}, {x, y + SIDE_MM}};
  lw_drawing_area(page_of(f), LW_PEN_SEEN, LW_FILL_NONE, square, 4);
  put(f, BOX_INDENT_MM, false, line->words);
}

static void step(flow *f, const lw_form_line *line) {
  if (!make_room(f, high_of(f, line))) return;
  f->y_mm += BOX_GAP_MM;
  const lw_xy_mm number = {left_of(f) + 1.0, f->y_mm};
  lw_sketch_wrap(page_of(f), number, BOX_INDENT_MM, f->size_mm, false, line->label);
  put(f, BOX_INDENT_MM, false, line->words);
}

/* The words at the left, below them at the right a line to write on, and its units. */
static void write_line(flow *f, const lw_form_line *line) {
  double high = high_of(f, line);
  if (!make_room(f, high)) return;
  double from = left_of(f) + width_of(f) - RULE_MM - UNITS_MM, top = f->y_mm;
  const lw_xy_mm at = {left_of(f) + 2.0, top};
  if (line->words[0]) lw_sketch_wrap(page_of(f), at, words_of_line(f), f->size_mm, false, line->words);
  f->y_mm = top + high;
  const lw_xy_mm rule[] = {{line->words[0] ? from : left_of(f) + 2.0, f->y_mm}, {from + RULE_MM, f->y_mm}};
  lw_drawing_line(page_of(f), LW_PEN_FINE, rule, 2);
  lw_drawing_words(page_of(f), (lw_xy_mm){from + RULE_MM + 1.5, f->y_mm - 0.4}, LW_ANCHOR_START, f->size_mm,
                   "%s", line->label);
}

/* All that is left of the column, with a dot every 5 mm. */
static void sketch(flow *f, const lw_form_line *line) {
  static const double GRID_MM = 5.0, DOT_MM = 0.3;
  double head = height_of(line->words, width_of(f), f->size_mm, true);
  if (!make_room(f, head + LEAST_SKETCH_MM)) return;
  f->y_mm += 1.0;
  put(f, 0.0, true, line->words);
  double left = left_of(f), right = left + width_of(f), top = f->y_mm + 1.0, low = bottom_of(f);
  const lw_xy_mm frame[] = {{left, top}, {right, top}, {right, low}, {left, low}};
  lw_drawing_area(page_of(f), LW_PEN_FINE, LW_FILL_NONE, frame, 4);
  for (double y = top + GRID_MM; y < low - 1.0; y += GRID_MM)
    for (double x = left + GRID_MM; x < right - 1.0; x += GRID_MM) {
      const lw_xy_mm dot[] = {{x, y}, {x + DOT_MM, y}};
      lw_drawing_line(page_of(f), LW_PEN_FINE, dot, 2);
    }
}

/* The rest of the pages before stays as it is. */
static void part(flow *f, const lw_form_line *line) {
  f->at_column = f->pages == LW_FORM_PAGES ? f->at_column + 1 : 0;
  f->full = f->at_column == COLUMNS;
  if (f->full) return;
  f->at_page = LW_FORM_PAGES - 1;
  f->pages = LW_FORM_PAGES;
  const lw_xy_mm at = {left_of(f), MARGIN_MM};
  f->top_mm[f->at_page] = f->y_mm = lw_sketch_wrap(page_of(f), at, width_of(f), 3.4, true, line->words) + 1.5;
}

static void title(flow *f, const lw_form_line *line) {
  const lw_xy_mm at = {MARGIN_MM, MARGIN_MM};
  f->y_mm = lw_sketch_wrap(f->page, at, f->paper.x_mm - 2.0 * MARGIN_MM, 4.2, true, line->words) + 1.0;
}

static void lead(flow *f, const lw_form_line *line) {
  const lw_xy_mm at = {MARGIN_MM, f->y_mm};
  f->y_mm =
      lw_sketch_wrap(f->page, at, f->paper.x_mm - 2.0 * MARGIN_MM, f->size_mm, false, line->words) + 2.0;
  f->top_mm[0] = f->y_mm;
}

static void take(void *context, const lw_form_line *line) {
  static const lw_role ROLES[] = {[LW_FORM_TITLE] = LW_ROLE_TITLE,      [LW_FORM_WORDS] = LW_ROLE_PARAGRAPH,
                                  [LW_FORM_QUESTION] = LW_ROLE_HEADING, [LW_FORM_BOX] = LW_ROLE_PARAGRAPH,
                                  [LW_FORM_LINE] = LW_ROLE_PARAGRAPH,   [LW_FORM_SKETCH] = LW_ROLE_FIGURE,
                                  [LW_FORM_PART] = LW_ROLE_HEADING,     [LW_FORM_STEP] = LW_ROLE_PARAGRAPH};
  static void (*const draw[])(flow *, const lw_form_line *) = {
      [LW_FORM_TITLE] = title, [LW_FORM_WORDS] = lead,      [LW_FORM_QUESTION] = question,
      [LW_FORM_BOX] = box,     [LW_FORM_LINE] = write_line, [LW_FORM_SKETCH] = sketch,
      [LW_FORM_PART] = part,   [LW_FORM_STEP] = step};
  flow *f = context;
  if (f->full) return;
  for (int i = f->at_page; i < LW_FORM_PAGES; i++) lw_drawing_begin(&f->page[i], ROLES[line->kind]);
  draw[line->kind](f, line);
}

static void end_pages(flow *f) {
  for (int i = 0; i < f->pages; i++) {
    lw_drawing *page = &f->page[i];
    page->width_mm = f->paper.x_mm;
    page->height_mm = f->paper.y_mm;
    lw_drawing_begin(page, LW_ROLE_PARAGRAPH);
    lw_drawing_words(page, (lw_xy_mm){MARGIN_MM, f->paper.y_mm - MARGIN_MM}, LW_ANCHOR_START, 2.5,
                     "lowwall %s questions, page %d of %d. It certifies nothing, and replaces no engineer.",
                     LW_VERSION, i + 1, f->pages);
    lw_text_addf(&page->title, "Questions about a wall, page %d", i + 1);
    lw_text_add(&page->description, "Questions with boxes to tick and lines to write on");
  }
}

static void free_pages(lw_drawing page[LW_FORM_PAGES]) {
  for (int i = 0; i < LW_FORM_PAGES; i++) lw_drawing_free(&page[i]);
}

static bool any_failed(const lw_drawing page[LW_FORM_PAGES]) {
  bool failed = false;
  for (int i = 0; i < LW_FORM_PAGES; i++) failed = failed || page[i].failed;
  return failed;
}

/* In the largest letters with which all fits; none smaller than 7 pt. */
lw_status lw_questions_form_pages(const lw_tables *tables, lw_paper paper, lw_form_units units,
                                  lw_drawing page[LW_FORM_PAGES], int *count, lw_error *error) {
  static const lw_xy_mm PAPERS[] = {[LW_PAPER_A4] = {210.0, 297.0}, [LW_PAPER_LETTER] = {215.9, 279.4}};
  static const double SIZES_MM[] = {3.0, 2.9, 2.8, 2.7, 2.6, 2.5, 2.47};
  for (size_t i = 0; i < sizeof SIZES_MM / sizeof *SIZES_MM; i++) {
    flow f = {.page = page, .paper = PAPERS[paper], .size_mm = SIZES_MM[i], .pages = LW_FORM_PAGES - 1};
    for (int k = 0; k < LW_FORM_PAGES; k++) f.top_mm[k] = MARGIN_MM;
    lw_form_each(tables, units, measure, &f);
    f.questions = 0;
    lw_form_each(tables, units, take, &f);
    if (!f.full) end_pages(&f);
    bool failed = any_failed(page);
    if (!f.full && !failed) {
      *count = f.pages;
      return LW_OK;
    }
    free_pages(page);
    if (failed) return lw_error_set(error, LW_NO_MEMORY, LW_REASON_NONE, "no memory left");
  }
  return lw_error_set(error, LW_TOO_MANY, LW_REASON_NONE, "the questions are more than their pages hold");
}
