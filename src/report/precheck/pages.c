/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "list.h"
#include "place.h"
#include "report/draw/pdf_parts.h"
#include "report/draw/sketch.h"

/* The blocks on paper: who must see it across the whole width, the rest in two columns that flow over as many
 * pages as it takes, two if letters of a size that can be read allow it. */

static const double FOOT_MM = 5.0; /* of the page, for its own line and air above it */

static double bottom(const lw_block_flow *f) {
  return f->paper.y_mm - LW_BLOCK_MARGIN_MM - FOOT_MM;
}

static void add_page(lw_block_flow *f) {
  lw_drawing_pages *pages = f->pages;
  lw_drawing *more = realloc(pages->page, (size_t)(pages->count + 1) * sizeof *more);
  f->failed = f->failed || !more;
  if (!more) return;
  pages->page = more;
  pages->page[pages->count++] = (lw_drawing){.width_mm = f->paper.x_mm, .height_mm = f->paper.y_mm};
  f->top_mm = f->y_mm = LW_BLOCK_MARGIN_MM;
  f->beside_mm = -1.0;
  f->at_column = 0;
}

static bool has_room(const lw_block_flow *f, double high_mm) {
  return f->y_mm + high_mm <= bottom(f);
}

static void next_column(lw_block_flow *f) {
  f->y_mm = f->top_mm;
  f->beside_mm = -1.0;
  if (++f->at_column == LW_BLOCK_COLUMNS_MAX) add_page(f);
}

/* Room for so much in this column, or at the head of the next one. A drawing that waits goes there first. */
static void make_room(lw_block_flow *f, double high_mm) {
  while (!f->failed && !has_room(f, high_mm) && f->y_mm > f->top_mm + 0.1) {
    next_column(f);
    const lw_block *waits = f->waits;
    if (!waits || f->failed || !has_room(f, f->section.height_mm)) continue;
    f->waits = NULL;
    lw_block_place(f, waits);
  }
}

/* Of some blocks in one column, by placing them on a sheet that is thrown away. */
static double height_of(const lw_block_flow *f, const lw_block *block, size_t count) {
  static const double FROM_MM = 20.0; /* not at the head of a column: a heading there has less air */
  lw_drawing sheet = {0};
  lw_drawing_pages pages = {1, &sheet};
  lw_block_flow trial = *f;
  trial.pages = &pages;
  trial.top_mm = 0.0;
  trial.beside_mm = f->beside_mm < 0.0 ? -1.0 : FROM_MM - (f->y_mm - f->beside_mm);
  trial.y_mm = FROM_MM;
  for (size_t i = 0; i < count; i++) lw_block_place(&trial, &block[i]);
  lw_drawing_free(&sheet);
  return trial.y_mm - FROM_MM;
}

/* The whole group where a column can hold it; else what stands first of it with what follows. */
static double height_of_group(const lw_block_flow *f, const lw_block_list *list, size_t at) {
  size_t count = lw_block_list_last(list, at) - at + 1;
  double high = height_of(f, &list->block[at], count), column = bottom(f) - LW_BLOCK_MARGIN_MM;
  return high <= column || count == 1 ? high : height_of(f, &list->block[at], 2);
}

static bool is_across(const lw_block *block) {
  return block->kind == LW_BLOCK_WHO || block->kind == LW_BLOCK_HEADLINE;
}

/* A drawing for which this column has no room waits for the next one, and what follows fills this one. */
static bool must_wait(const lw_block_flow *f, const lw_block *block) {
  return block->kind == LW_BLOCK_SECTION && !has_room(f, height_of(f, block, 1));
}

static void place_next(lw_block_flow *f, const lw_block_list *list, size_t i) {
  const lw_block *block = &list->block[i];
  f->table += i == 0 || !lw_block_list_same_table(block, &list->block[i - 1]) ? 1 : 0;
  f->row++;
  if (must_wait(f, block)) {
    f->waits = block;
    return;
  }
  if (!is_across(block)) make_room(f, height_of_group(f, list, i));
  if (!f->failed) lw_block_place(f, block);
  if (is_across(block)) f->top_mm = f->y_mm;
}

static void place_all(lw_block_flow *f, const lw_block_list *list) {
  add_page(f);
  f->table = f->row = 0;
  f->waits = NULL;
  for (size_t i = 0; i < list->count && !f->failed; i++) place_next(f, list, i);
}

static void foot(const lw_block_flow *f, const char *hash) {
  const char *title = f->result->given.about.title.text;
  for (int i = 0; i < f->pages->count; i++) {
    lw_drawing *page = &f->pages->page[i];
    lw_xy_mm at = {LW_BLOCK_MARGIN_MM, f->paper.y_mm - LW_BLOCK_MARGIN_MM};
    lw_drawing_begin(page, LW_ROLE_PARAGRAPH);
    lw_drawing_words(page, at, LW_ANCHOR_START, LW_BLOCK_LEAST_MM,
                     "lowwall %s pre-check, page %d of %d. %.8s%s", LW_VERSION, i + 1, f->pages->count, hash,
                     lw_pdf_has_parts() ? ". Its sheet is attached: lowwall precheck --verify FILE.pdf" : "");
    lw_text_addf(&page->title, "Pre-check of a wall%s%s", title[0] ? ": " : "", title);
    lw_text_add(&page->description, f->result->verdict.headline);
    if (f->section.description.data) lw_text_add(&page->figure, f->section.description.data);
    page->failed = page->failed || page->title.failed || page->description.failed || page->figure.failed;
  }
}

void lw_drawing_pages_free(lw_drawing_pages *pages) {
  for (int i = 0; i < pages->count; i++) lw_drawing_free(&pages->page[i]);
  free(pages->page);
  *pages = (lw_drawing_pages){0};
}

static bool has_failed(const lw_block_flow *f) {
  bool failed = f->failed;
  for (int i = 0; i < f->pages->count; i++) failed = failed || f->pages->page[i].failed;
  return failed;
}

/* In the largest letters with which two pages hold it, else in the least, on more. */
static lw_status fit(lw_block_flow *f, const lw_block_list *list) {
  static const double SIZES_MM[] = {2.8, 2.7, 2.6, LW_BLOCK_LEAST_MM};
  enum { SIZES = sizeof SIZES_MM / sizeof *SIZES_MM, AIM = 2 };
  for (int i = 0; i < SIZES; i++) {
    lw_drawing_pages_free(f->pages);
    f->size_mm = SIZES_MM[i];
    place_all(f, list);
    if (has_failed(f)) return LW_NO_MEMORY;
    if (f->pages->count <= AIM) break;
  }
  return LW_OK;
}

lw_status lw_precheck_pages(const lw_result *result, const char *hash, lw_paper paper,
                            lw_drawing_pages *pages, lw_error *error) {
  static const lw_xy_mm PAPERS[] = {[LW_PAPER_A4] = {210.0, 297.0}, [LW_PAPER_LETTER] = {215.9, 279.4}};
  lw_block_flow f = {.pages = pages, .result = result, .paper = PAPERS[paper]};
  lw_block_list list = {0};
  lw_status status = lw_draw_section_below(result, lw_block_width(&f), &f.section, &f.undrawn);
  if (status != LW_NO_MEMORY) status = lw_block_list_make(result, hash, &list);
  if (status == LW_OK) status = fit(&f, &list);
  if (status == LW_OK) foot(&f, hash);
  if (status == LW_OK && has_failed(&f)) status = LW_NO_MEMORY;
  lw_block_list_free(&list);
  lw_drawing_free(&f.section);
  if (status != LW_OK) lw_drawing_pages_free(pages);
  return status == LW_OK ? LW_OK : lw_error_set(error, status, LW_REASON_NONE, "no memory left");
}
