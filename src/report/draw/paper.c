/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/report.h>

/* The list of marks as PDF and PNG, by cairo and pango where the build found them. */

#ifdef LW_HAVE_CAIRO

#include <cairo-pdf.h>
#include <cairo.h>
#include <pango/pangocairo.h>

#include "base/print.h"
#include "pdf_parts.h"
#include "pens.h"

static const double POINTS_PER_MM = 72.0 / 25.4;

static void set_pen(cairo_t *cr, lw_pen pen) {
  const lw_pen_style *style = lw_pen_style_of(pen);
  cairo_set_line_width(cr, style->width_mm);
  cairo_set_line_join(cr, CAIRO_LINE_JOIN_ROUND);
  cairo_set_dash(cr, style->dash_mm, style->dash_count, 0.0);
}

static void trace(cairo_t *cr, const lw_drawing *drawing, const lw_mark *mark) {
  for (size_t i = 0; i < mark->count; i++)
    cairo_line_to(cr, drawing->spot[mark->first + i].x_mm, drawing->spot[mark->first + i].y_mm);
  if (mark->kind == LW_MARK_AREA) {
    cairo_close_path(cr);
    if (mark->fill != LW_FILL_NONE) {
      double grey = lw_fill_grey(mark->fill);
      cairo_set_source_rgb(cr, grey, grey, grey);
      cairo_fill_preserve(cr);
    }
  }
  cairo_set_source_rgb(cr, 0.0, 0.0, 0.0);
  set_pen(cr, mark->pen);
  if (mark->pen != LW_PEN_NONE) cairo_stroke(cr);
  cairo_new_path(cr);
}

/* A line that goes on ends in a blank, or whoever listens hears its last word and the next one as one. */
static void set_words(PangoLayout *layout, const char *words, bool goes_on) {
  char line[300];
  lw_print(line, sizeof line, "%s%s", words, goes_on ? " " : "");
  pango_layout_set_text(layout, line, -1);
  /* Two letters drawn as one are read out as none by some. */
  PangoAttrList *list = pango_attr_list_new();
  pango_attr_list_insert(list, pango_attr_font_features_new("liga=0,clig=0"));
  pango_layout_set_attributes(layout, list);
  pango_attr_list_unref(list);
}

static void print_words(cairo_t *cr, const lw_drawing *drawing, const lw_mark *mark, bool goes_on) {
  lw_xy_mm at = drawing->spot[mark->first];
  PangoLayout *layout = pango_cairo_create_layout(cr);
  /* Letters stand where their own widths put them, not on the dots of a screen: words copied stay words. */
  PangoContext *context = pango_layout_get_context(layout);
  cairo_font_options_t *options = cairo_font_options_create();
  cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options(context, options);
  pango_context_set_round_glyph_positions(context, FALSE);
  pango_layout_context_changed(layout);
  cairo_font_options_destroy(options);
  PangoFontDescription *font = pango_font_description_from_string("sans-serif");
  pango_font_description_set_absolute_size(font, mark->size_mm * PANGO_SCALE);
  if (mark->bold) pango_font_description_set_weight(font, PANGO_WEIGHT_BOLD);
  pango_layout_set_font_description(layout, font);
  int wide = 0, high = 0;
  set_words(layout, drawing->words.data + mark->words, false); /* a blank at the end moves none of it */
  pango_layout_get_size(layout, &wide, &high);
  if (goes_on) set_words(layout, drawing->words.data + mark->words, true);
  double width = (double)wide / PANGO_SCALE;
  double back = mark->anchor == LW_ANCHOR_START ? 0.0 : mark->anchor == LW_ANCHOR_MIDDLE ? 0.5 : 1.0;
  double base = (double)pango_layout_get_baseline(layout) / PANGO_SCALE;
  cairo_move_to(cr, at.x_mm - back * width, at.y_mm - base);
  cairo_set_source_rgb(cr, 0.0, 0.0, 0.0);
  pango_cairo_show_layout(cr, layout);
  cairo_new_path(cr);
  pango_font_description_free(font);
  g_object_unref(layout);
}

/* A reader for the blind goes by the tags. What is open: a table and its row may go on over pages. */
typedef struct tags {
  cairo_t *cr; /* NULL: a picture has none */
  int table, row;
} tags;

static const char *tag_of(const lw_mark *mark) {
  static const char *const TAGS[] = {
      [LW_ROLE_FIGURE] = "Figure", [LW_ROLE_TITLE] = "H1",     [LW_ROLE_HEADING] = "H2",
      [LW_ROLE_PARAGRAPH] = "P",   [LW_ROLE_HEAD_CELL] = "TH", [LW_ROLE_CELL] = "TD"};
  return TAGS[mark->role];
}

/* Close what the next mark is no part of, then open what it is part of; 0, 0 closes all. */
static void go_to_row(tags *t, int table, int row) {
  if (t->row > 0 && (t->table != table || t->row != row)) cairo_tag_end(t->cr, "TR");
  if (t->table > 0 && t->table != table) cairo_tag_end(t->cr, "Table");
  if (table > 0 && t->table != table) cairo_tag_begin(t->cr, "Table", NULL);
  if (row > 0 && (t->table != table || t->row != row)) cairo_tag_begin(t->cr, "TR", NULL);
  t->table = table;
  t->row = row;
}

/* Whether more words follow under the same tag. */
static bool goes_on(const lw_drawing *drawing, size_t at) {
  const lw_mark *mark = &drawing->mark[at];
  for (size_t i = at + 1; i < drawing->mark_count && drawing->mark[i].group == mark->group; i++)
    if (drawing->mark[i].kind == LW_MARK_WORDS) return true;
  return false;
}

static void draw(tags *t, cairo_t *cr, const lw_drawing *drawing) {
  for (size_t i = 0; i < drawing->mark_count; i++) {
    const lw_mark *mark = &drawing->mark[i];
    bool first = i == 0 || mark[-1].group != mark->group;
    bool last = i + 1 == drawing->mark_count || mark[1].group != mark->group;
    if (t->cr && first) {
      go_to_row(t, mark->table, mark->row);
      cairo_tag_begin(cr, tag_of(mark), NULL);
    }
    if (mark->kind == LW_MARK_WORDS)
      print_words(cr, drawing, mark, t->cr && goes_on(drawing, i));
    else
      trace(cr, drawing, mark);
    if (t->cr && last) cairo_tag_end(cr, tag_of(mark));
  }
}

static cairo_status_t take(void *out, const unsigned char *bytes, unsigned int count) {
  lw_text_add_bytes(out, (const char *)bytes, count);
  return ((lw_text *)out)->failed ? CAIRO_STATUS_WRITE_ERROR : CAIRO_STATUS_SUCCESS;
}

static lw_status ended(cairo_t *cr, cairo_surface_t *surface, const lw_text *out) {
  bool well = cairo_status(cr) == CAIRO_STATUS_SUCCESS;
  cairo_destroy(cr);
  cairo_surface_finish(surface);
  well = well && cairo_surface_status(surface) == CAIRO_STATUS_SUCCESS && !out->failed;
  cairo_surface_destroy(surface);
  return well ? LW_OK : LW_NO_MEMORY;
}

bool lw_drawing_has_paper(void) {
  return true;
}

lw_status lw_drawing_pdf(const lw_drawing *page, int count, lw_text *out, lw_error *error) {
  cairo_surface_t *surface = cairo_pdf_surface_create_for_stream(take, out, page[0].width_mm * POINTS_PER_MM,
                                                                 page[0].height_mm * POINTS_PER_MM);
  cairo_t *cr = cairo_create(surface);
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE,
                                 page[0].title.data ? page[0].title.data : "");
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_SUBJECT,
                                 page[0].description.data ? page[0].description.data : "");
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATOR, "lowwall " LW_VERSION);
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE, "2000-01-01T00:00:00Z");
  tags t = {.cr = cr};
  for (int i = 0; i < count; i++) {
    cairo_pdf_surface_set_size(surface, page[i].width_mm * POINTS_PER_MM, page[i].height_mm * POINTS_PER_MM);
    if (i == 0) cairo_tag_begin(cr, "Document", NULL); /* a size that is set after it takes it away */
    cairo_save(cr);
    cairo_scale(cr, POINTS_PER_MM, POINTS_PER_MM);
    draw(&t, cr, &page[i]);
    cairo_restore(cr);
    cairo_show_page(cr);
  }
  go_to_row(&t, 0, 0);
  cairo_tag_end(cr, "Document");
  lw_status status = ended(cr, surface, out);
  const lw_text *alt = page[0].figure.length > 0 ? &page[0].figure : &page[0].description;
  if (status == LW_OK) status = lw_pdf_dress(out, alt->data ? alt->data : "");
  if (status == LW_OK && !out->failed) return LW_OK;
  return lw_error_set(error, LW_NO_MEMORY, LW_REASON_NONE, "the PDF could not be made");
}

lw_status lw_drawing_png(const lw_drawing *drawing, double dots_per_mm, lw_text *out, lw_error *error) {
  cairo_surface_t *surface =
      cairo_image_surface_create(CAIRO_FORMAT_RGB24, (int)(drawing->width_mm * dots_per_mm + 0.5),
                                 (int)(drawing->height_mm * dots_per_mm + 0.5));
  cairo_t *cr = cairo_create(surface);
  cairo_set_source_rgb(cr, 1.0, 1.0, 1.0);
  cairo_paint(cr);
  cairo_scale(cr, dots_per_mm, dots_per_mm);
  draw(&(tags){.cr = NULL}, cr, drawing);
  cairo_surface_flush(surface);
  bool written = cairo_surface_write_to_png_stream(surface, take, out) == CAIRO_STATUS_SUCCESS;
  lw_status status = ended(cr, surface, out);
  if (status == LW_OK && written) return LW_OK;
  return lw_error_set(error, LW_NO_MEMORY, LW_REASON_NONE, "the picture could not be made");
}

#else

static lw_status without(lw_error *error) {
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NONE,
                      "this lowwall was built without cairo and pango, and gives SVG and HTML only; install "
                      "libcairo2-dev and libpango1.0-dev and build it again");
}

bool lw_drawing_has_paper(void) {
  return false;
}

lw_status lw_drawing_pdf(const lw_drawing *page, int count, lw_text *out, lw_error *error) {
  (void)page;
  (void)count;
  (void)out;
  return without(error);
}

lw_status lw_drawing_png(const lw_drawing *drawing, double dots_per_mm, lw_text *out, lw_error *error) {
  (void)drawing;
  (void)dots_per_mm;
  (void)out;
  return without(error);
}

#endif
