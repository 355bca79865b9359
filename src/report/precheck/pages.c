/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "blocks.h"
#include "report/draw/sketch.h"

/* The blocks on paper: who must sign across the whole width, the rest in two columns that flow over two
 * pages, in the largest letters with which all of it fits. */

enum { COLUMNS = 2 };
static const double MARGIN_MM = 11.0, GUTTER_MM = 6.0, FOOT_MM = 8.0, LEADING = 1.28;

typedef struct flow {
  lw_drawing *page;
  const lw_result *result;
  lw_drawing section;               /* as wide as a column, drawn once */
  lw_error undrawn;                 /* or why it could not be */
  double size_mm;                   /* of the letters */
  lw_xy_mm paper;                   /* its width and height */
  double top_mm[LW_PRECHECK_PAGES]; /* where the columns of a page begin */
  int at_page, at_column;
  double y_mm;
  bool full; /* something did not fit any more */
} flow;

static double column_width(const flow *f) {
  return (f->paper.x_mm - 2.0 * MARGIN_MM - GUTTER_MM * (COLUMNS - 1)) / COLUMNS;
}

static double column_left(const flow *f) {
  return MARGIN_MM + f->at_column * (column_width(f) + GUTTER_MM);
}

static double bottom(const flow *f) {
  return f->paper.y_mm - MARGIN_MM - FOOT_MM;
}

static lw_drawing *page_of(flow *f) {
  return &f->page[f->at_page];
}

/* Room for so much in this column, or the next one, or the next page. */
static bool make_room(flow *f, double high_mm) {
  if (f->full) return false;
  if (f->y_mm + high_mm <= bottom(f)) return true;
  if (++f->at_column == COLUMNS) {
    f->at_column = 0;
    f->at_page++;
  }
  f->full = f->at_page == LW_PRECHECK_PAGES;
  if (f->full) return false;
  f->y_mm = f->top_mm[f->at_page];
  if (f->y_mm + high_mm <= bottom(f)) return true;
  f->full = true;
  return false;
}

static double height_of(const char *words, double width_mm, double size_mm, bool bold) {
  lw_drawing trial = {0};
  double high = lw_sketch_wrap(&trial, (lw_xy_mm){0.0, 0.0}, width_mm, size_mm, bold, words);
  lw_drawing_free(&trial);
  return high;
}

static void put(flow *f, double indent_mm, double size_mm, bool bold, const char *words) {
  lw_xy_mm at = {column_left(f) + indent_mm, f->y_mm};
  f->y_mm = lw_sketch_wrap(page_of(f), at, column_width(f) - indent_mm, size_mm, bold, words);
}

static void heading(flow *f, const char *words) {
  double size = 1.12 * f->size_mm, width = column_width(f);
  /* Never alone at the foot of a column. */
  if (!make_room(f, 1.2 + height_of(words, width, size, true) + 2.0 * LEADING * f->size_mm)) return;
  if (f->y_mm > f->top_mm[f->at_page] + 0.1) f->y_mm += 1.2;
  put(f, 0.0, size, true, words);
  lw_xy_mm rule[] = {{column_left(f), f->y_mm + 0.4}, {column_left(f) + width, f->y_mm + 0.4}};
  lw_drawing_line(page_of(f), LW_PEN_FINE, rule, 2);
  f->y_mm += 0.6;
}

/* The label in the margin of the column, the words beside it. */
static void fact(flow *f, const lw_block *block) {
  double label = lw_drawing_text_width(block->label, f->size_mm) * 1.15;
  double column = block->kind == LW_BLOCK_ITEM ? 12.5 * f->size_mm : 18.0;
  double indent = fmax(column, label + 1.6);
  if (!make_room(f, height_of(block->words, column_width(f) - indent, f->size_mm, false))) return;
  lw_xy_mm at = {column_left(f), f->y_mm + (LEADING - 0.28) * f->size_mm};
  lw_drawing_words(page_of(f), at, LW_ANCHOR_START, f->size_mm, "%s", block->label);
  lw_drawing_bold(page_of(f));
  put(f, indent, f->size_mm, false, block->words);
}

static void check(flow *f, const lw_block *block) {
  static const double HAS = 0.50, NEEDS = 0.62, OUTCOME = 0.65;
  double width = column_width(f), left;
  if (!make_room(f, LEADING * f->size_mm)) return;
  left = column_left(f);
  f->y_mm += LEADING * f->size_mm;
  double y = f->y_mm - 0.28 * f->size_mm;
  lw_drawing_words(page_of(f), (lw_xy_mm){left, y}, LW_ANCHOR_START, f->size_mm, "%s", block->label);
  lw_drawing_words(page_of(f), (lw_xy_mm){left + HAS * width, y}, LW_ANCHOR_END, f->size_mm, "%s",
                   block->has);
  lw_drawing_words(page_of(f), (lw_xy_mm){left + NEEDS * width, y}, LW_ANCHOR_END, f->size_mm, "%s",
                   block->needs);
  lw_drawing_words(page_of(f), (lw_xy_mm){left + OUTCOME * width, y}, LW_ANCHOR_START, f->size_mm, "%s",
                   block->words);
  if (block->strong) lw_drawing_bold(page_of(f));
}

static void line(flow *f, const lw_block *block) {
  static const double HIGH_MM = 7.5;
  if (!make_room(f, HIGH_MM + 1.4)) return;
  f->y_mm += HIGH_MM;
  double label = lw_drawing_text_width(block->label, f->size_mm), left = column_left(f);
  lw_drawing_words(page_of(f), (lw_xy_mm){left, f->y_mm}, LW_ANCHOR_START, f->size_mm, "%s", block->label);
  lw_xy_mm rule[] = {{left + fmax(18.0, label + 2.0), f->y_mm + 0.4},
                     {left + column_width(f), f->y_mm + 0.4}};
  lw_drawing_line(page_of(f), LW_PEN_FINE, rule, 2);
  f->y_mm += 1.4;
}

/* The marks of one drawing on another, moved. */
static void paste(const lw_drawing *from, lw_xy_mm by, lw_drawing *to) {
  lw_xy_mm moved[LW_OUTLINE_MAX + LW_PROFILE_MAX];
  for (size_t i = 0; i < from->mark_count; i++) {
    const lw_mark *mark = &from->mark[i];
    const lw_xy_mm *spot = &from->spot[mark->first];
    size_t room = sizeof moved / sizeof *moved, count = mark->count < room ? mark->count : room;
    for (size_t k = 0; k < count; k++) moved[k] = (lw_xy_mm){spot[k].x_mm + by.x_mm, spot[k].y_mm + by.y_mm};
    if (mark->kind == LW_MARK_LINE) lw_drawing_line(to, mark->pen, moved, count);
    if (mark->kind == LW_MARK_AREA) lw_drawing_area(to, mark->pen, mark->fill, moved, count);
    if (mark->kind != LW_MARK_WORDS) continue;
    lw_drawing_words(to, moved[0], mark->anchor, mark->size_mm, "%s", from->words.data + mark->words);
    if (mark->bold) lw_drawing_bold(to);
  }
}

static void section(flow *f) {
  if (f->undrawn.text[0]) {
    if (make_room(f, height_of(f->undrawn.text, column_width(f), f->size_mm, true)))
      put(f, 0.0, f->size_mm, true, f->undrawn.text);
  } else if (make_room(f, f->section.height_mm)) {
    paste(&f->section, (lw_xy_mm){column_left(f), f->y_mm}, page_of(f));
    f->y_mm += f->section.height_mm;
  }
}

static void take(void *context, const lw_block *block) {
  static const lw_role ROLES[] = {
      [LW_BLOCK_WHO] = LW_ROLE_TITLE,          [LW_BLOCK_HEADING] = LW_ROLE_HEADING,
      [LW_BLOCK_HEADLINE] = LW_ROLE_PARAGRAPH, [LW_BLOCK_FACT] = LW_ROLE_PARAGRAPH,
      [LW_BLOCK_WORDS] = LW_ROLE_PARAGRAPH,    [LW_BLOCK_ITEM] = LW_ROLE_PARAGRAPH,
      [LW_BLOCK_COLUMNS] = LW_ROLE_PARAGRAPH,  [LW_BLOCK_CHECK] = LW_ROLE_PARAGRAPH,
      [LW_BLOCK_SECTION] = LW_ROLE_FIGURE,     [LW_BLOCK_LINE] = LW_ROLE_PARAGRAPH};
  flow *f = context;
  /* A block may go on to the next page. */
  for (int i = f->at_page; i < LW_PRECHECK_PAGES; i++) lw_drawing_begin(&f->page[i], ROLES[block->kind]);
  switch (block->kind) {
  case LW_BLOCK_WHO:
    f->y_mm = lw_sketch_wrap(f->page, (lw_xy_mm){MARGIN_MM, MARGIN_MM}, f->paper.x_mm - 2.0 * MARGIN_MM, 3.6,
                             true, block->words) +
              1.5;
    f->top_mm[0] = f->y_mm;
    break;
  case LW_BLOCK_HEADLINE:
    f->y_mm = lw_sketch_wrap(f->page, (lw_xy_mm){MARGIN_MM, f->y_mm}, f->paper.x_mm - 2.0 * MARGIN_MM, 2.8,
                             true, block->words) +
              1.5;
    f->top_mm[0] = f->y_mm;
    break;
  case LW_BLOCK_HEADING: heading(f, block->words); break;
  case LW_BLOCK_FACT:
  case LW_BLOCK_ITEM: fact(f, block); break;
  case LW_BLOCK_WORDS:
    if (make_room(f, height_of(block->words, column_width(f), f->size_mm, block->strong)))
      put(f, 0.0, f->size_mm, block->strong, block->words);
    break;
  case LW_BLOCK_COLUMNS:
  case LW_BLOCK_CHECK: check(f, block); break;
  case LW_BLOCK_SECTION: section(f); break;
  case LW_BLOCK_LINE: line(f, block); break;
  }
}

static void foot(flow *f, int count, const char *hash) {
  for (int i = 0; i < count; i++) {
    lw_xy_mm at = {MARGIN_MM, f->paper.y_mm - MARGIN_MM};
    lw_drawing_begin(&f->page[i], LW_ROLE_PARAGRAPH);
    lw_drawing_words(&f->page[i], at, LW_ANCHOR_START, 2.2, "lowwall %s pre-check, page %d of %d. %.8s",
                     LW_VERSION, i + 1, count, hash);
    f->page[i].width_mm = f->paper.x_mm;
    f->page[i].height_mm = f->paper.y_mm;
    lw_text_addf(&f->page[i].title, "Pre-check of a wall%s%s, page %d",
                 f->result->given.about.title.text[0] ? ": " : "", f->result->given.about.title.text, i + 1);
    lw_text_add(&f->page[i].description, f->result->verdict.headline);
  }
}

static bool try_size(flow *f, const char *hash) {
  for (int i = 0; i < LW_PRECHECK_PAGES; i++) f->top_mm[i] = MARGIN_MM;
  f->at_page = f->at_column = 0;
  f->full = false;
  lw_precheck_each(f->result, hash, take, f);
  return !f->full;
}

/* In the largest letters with which all fits. */
static lw_status fit(flow *f, const char *hash, int *count, lw_error *error) {
  static const double SIZES_MM[] = {2.6, 2.5, 2.4, 2.3, 2.2, 2.1, 2.0, 1.9, 1.8, 1.7, 1.6, 1.5, 1.45};
  for (size_t i = 0; i < sizeof SIZES_MM / sizeof *SIZES_MM; i++) {
    f->size_mm = SIZES_MM[i];
    bool fits = try_size(f, hash);
    *count = f->at_page + 1;
    if (fits) foot(f, *count, hash);
    bool failed = f->page[0].failed || f->page[1].failed;
    if (fits && !failed) return LW_OK;
    for (int k = 0; k < LW_PRECHECK_PAGES; k++) lw_drawing_free(&f->page[k]);
    if (failed) return lw_error_set(error, LW_NO_MEMORY, LW_REASON_NONE, "no memory left");
  }
  return lw_error_set(error, LW_TOO_MANY, LW_REASON_NONE,
                      "there is more to say of this wall than two pages hold");
}

lw_status lw_precheck_pages(const lw_result *result, const char *hash, lw_paper paper,
                            lw_drawing page[LW_PRECHECK_PAGES], int *count, lw_error *error) {
  static const lw_xy_mm PAPERS[] = {[LW_PAPER_A4] = {210.0, 297.0}, [LW_PAPER_LETTER] = {215.9, 279.4}};
  flow f = {.page = page, .result = result, .paper = PAPERS[paper]};
  lw_status status = lw_draw_section_below(result, column_width(&f), &f.section, &f.undrawn);
  if (status == LW_NO_MEMORY) lw_error_set(error, status, LW_REASON_NONE, "no memory left");
  if (status != LW_NO_MEMORY) status = fit(&f, hash, count, error);
  lw_drawing_free(&f.section);
  return status;
}
