/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place.h"

#include <math.h>

#include "report/draw/sketch.h"

/* One block on the last page, where the flow has come to. */

static const double GUTTER_MM = 6.0, LEADING = LW_LINE_MM / LW_BODY_MM, LABEL_EMS = 7.2;

double lw_block_width(const lw_block_flow *f) {
  return (f->paper.x_mm - 2.0 * LW_BLOCK_MARGIN_MM - GUTTER_MM * (LW_BLOCK_COLUMNS_MAX - 1)) /
         LW_BLOCK_COLUMNS_MAX;
}

static double left_of(const lw_block_flow *f) {
  return LW_BLOCK_MARGIN_MM + f->at_column * (lw_block_width(f) + GUTTER_MM);
}

static lw_drawing *page_of(const lw_block_flow *f) {
  return &f->pages->page[f->pages->count - 1];
}

static void begin_cell(const lw_block_flow *f, lw_role role) {
  lw_drawing_begin_cell(page_of(f), role, f->table, f->row);
}

static void put(lw_block_flow *f, double indent_mm, double size_mm, bool bold, const char *words) {
  lw_xy_mm at = {left_of(f) + indent_mm, f->y_mm};
  f->y_mm = lw_sketch_wrap(page_of(f), at, lw_block_width(f) - indent_mm, size_mm, bold, words);
}

static void rule(const lw_block_flow *f, double from_mm, double to_mm) {
  double y = f->y_mm + 0.4;
  lw_xy_mm spots[] = {{from_mm, y}, {to_mm, y}};
  lw_drawing_line(page_of(f), LW_PEN_FINE, spots, 2);
}

/* Across both columns, at the head of the first page. */
static void across(lw_block_flow *f, lw_role role, double size_mm, const char *words) {
  static const double AIR_MM = 1.5;
  lw_drawing_begin(page_of(f), role);
  f->y_mm = lw_sketch_wrap(page_of(f), (lw_xy_mm){LW_BLOCK_MARGIN_MM, f->y_mm},
                           f->paper.x_mm - 2.0 * LW_BLOCK_MARGIN_MM, size_mm, true, words) +
            AIR_MM;
}

static void heading(lw_block_flow *f, const char *words) {
  static const double LARGER = 1.12, AIR_MM = 1.2;
  lw_drawing_begin(page_of(f), LW_ROLE_HEADING);
  if (f->y_mm > f->top_mm + 0.1) f->y_mm += AIR_MM;
  put(f, 0.0, LARGER * f->size_mm, true, words);
  rule(f, left_of(f), left_of(f) + lw_block_width(f));
  f->y_mm += 0.6;
}

static void words_alone(lw_block_flow *f, const char *words, bool strong) {
  lw_drawing_begin(page_of(f), LW_ROLE_PARAGRAPH);
  put(f, 0.0, f->size_mm, strong, words);
}

static const double BOLD = 1.15, LABEL_GAP_MM = 1.6, ITEM_EMS = 12.5, HALVES_MM = 3.0, SLIDE_EMS = 1.0;

static double label_width(const lw_block_flow *f, const lw_block *block) {
  return lw_drawing_text_width(block->label, f->size_mm) * BOLD + LABEL_GAP_MM;
}

/* Short items of the sheet stand two in a row, each in its half of the column. */
static double half_width(const lw_block_flow *f) {
  return (lw_block_width(f) - HALVES_MM) / 2.0;
}

/* Where the words of an item have to begin to end within its half: no great way before their column. */
static double half_words_at(const lw_block_flow *f, const lw_block *block) {
  static const double SLACK_MM = 0.1; /* words as wide as their room would be broken by rounding */
  return half_width(f) - SLACK_MM - lw_drawing_text_width(block->words, f->size_mm);
}

static bool is_short(const lw_block_flow *f, const lw_block *block) {
  double at = half_words_at(f, block);
  return block->kind == LW_BLOCK_ITEM && at >= label_width(f, block) &&
         at >= (ITEM_EMS - SLIDE_EMS) * f->size_mm;
}

static double words_at(const lw_block_flow *f, const lw_block *block) {
  double column = (block->kind == LW_BLOCK_ITEM ? ITEM_EMS : LABEL_EMS) * f->size_mm;
  if (is_short(f, block)) column = fmin(column, half_words_at(f, block));
  return fmax(column, label_width(f, block));
}

/* Into the right half of the row where its left one has one before, else into the left; gives how far in. */
static double begin_half(lw_block_flow *f, bool is_half) {
  bool beside = is_half && f->beside_mm >= 0.0;
  if (beside) f->y_mm = f->beside_mm;
  f->beside_mm = is_half && !beside ? f->y_mm : -1.0;
  return beside ? half_width(f) + HALVES_MM : 0.0;
}

/* The label in the margin of the column, the words beside it. */
static void fact(lw_block_flow *f, const lw_block *block) {
  double below = f->y_mm, in = begin_half(f, is_short(f, block));
  lw_xy_mm at = {left_of(f) + in, f->y_mm + (LEADING - 0.28) * f->size_mm};
  begin_cell(f, LW_ROLE_HEAD_CELL);
  lw_drawing_words(page_of(f), at, LW_ANCHOR_START, f->size_mm, "%s", block->label);
  lw_drawing_bold(page_of(f));
  begin_cell(f, LW_ROLE_CELL);
  put(f, in + words_at(f, block), f->size_mm, false, block->words);
  if (in > 0.0) f->y_mm = fmax(f->y_mm, below);
}

static void cell(const lw_block_flow *f, lw_role role, double at, lw_anchor anchor, const char *words) {
  double y = f->y_mm - 0.28 * f->size_mm;
  begin_cell(f, role);
  lw_drawing_words(page_of(f), (lw_xy_mm){left_of(f) + at * lw_block_width(f), y}, anchor, f->size_mm, "%s",
                   words);
}

static void check(lw_block_flow *f, const lw_block *block) {
  static const double HAS = 0.52, NEEDS = 0.64, OUTCOME = 0.67;
  lw_role role = block->kind == LW_BLOCK_COLUMNS ? LW_ROLE_HEAD_CELL : LW_ROLE_CELL;
  f->y_mm += LEADING * f->size_mm;
  cell(f, LW_ROLE_HEAD_CELL, 0.0, LW_ANCHOR_START, block->label);
  cell(f, role, HAS, LW_ANCHOR_END, block->has);
  cell(f, role, NEEDS, LW_ANCHOR_END, block->needs);
  cell(f, role, OUTCOME, LW_ANCHOR_START, block->words);
  if (block->strong) lw_drawing_bold(page_of(f));
}

static void line(lw_block_flow *f, const lw_block *block) {
  /* As far apart as ruled paper has them. */
  static const double HIGH_MM = 6.6, BELOW_MM = 0.7, GAP_MM = 2.0;
  double label = lw_drawing_text_width(block->label, f->size_mm);
  bool half = block->kind == LW_BLOCK_HALF_LINE;
  double left = left_of(f) + begin_half(f, half), wide = half ? half_width(f) : lw_block_width(f);
  f->y_mm += HIGH_MM;
  begin_cell(f, LW_ROLE_HEAD_CELL);
  lw_drawing_words(page_of(f), (lw_xy_mm){left, f->y_mm}, LW_ANCHOR_START, f->size_mm, "%s", block->label);
  begin_cell(f, LW_ROLE_CELL);
  rule(f, left + (half ? label + GAP_MM : fmax(LABEL_EMS * f->size_mm, label + GAP_MM)), left + wide);
  f->y_mm += BELOW_MM;
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

static void section(lw_block_flow *f) {
  if (f->undrawn.text[0]) {
    words_alone(f, f->undrawn.text, true);
    return;
  }
  lw_drawing_begin(page_of(f), LW_ROLE_FIGURE);
  paste(&f->section, (lw_xy_mm){left_of(f), f->y_mm}, page_of(f));
  f->y_mm += f->section.height_mm;
}

void lw_block_place(lw_block_flow *f, const lw_block *block) {
  static const double WHO_MM = 4.2, HEADLINE_MM = 3.2;
  if (block->kind != LW_BLOCK_ITEM && block->kind != LW_BLOCK_HALF_LINE) f->beside_mm = -1.0;
  switch (block->kind) {
  case LW_BLOCK_WHO: across(f, LW_ROLE_TITLE, WHO_MM, block->words); break;
  case LW_BLOCK_HEADLINE: across(f, LW_ROLE_PARAGRAPH, HEADLINE_MM, block->words); break;
  case LW_BLOCK_HEADING: heading(f, block->words); break;
  case LW_BLOCK_FACT:
  case LW_BLOCK_ITEM: fact(f, block); break;
  case LW_BLOCK_WORDS: words_alone(f, block->words, block->strong); break;
  case LW_BLOCK_COLUMNS:
  case LW_BLOCK_CHECK: check(f, block); break;
  case LW_BLOCK_SECTION: section(f); break;
  case LW_BLOCK_LINE:
  case LW_BLOCK_HALF_LINE: line(f, block); break;
  }
}
