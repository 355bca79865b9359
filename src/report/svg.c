/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/drawing.h>

/* The list of marks as SVG. It needs no library: lines are paths, words are text that can be read and copied.
 * Black on white, so that a copier and a fax keep it. */

typedef struct pen_style {
  double width_mm;
  const char *dashes;
} pen_style;

static const pen_style PENS[LW_PEN_COUNT] = {
    [LW_PEN_CUT] = {0.50, NULL},          [LW_PEN_SEEN] = {0.30, NULL},
    [LW_PEN_FINE] = {0.15, NULL},         [LW_PEN_DASHED] = {0.30, "2.4 1.2"},
    [LW_PEN_CHAIN] = {0.22, "5 1 0.8 1"}, [LW_PEN_DOTTED] = {0.40, "0.5 1.1"},
    [LW_PEN_FORCE] = {0.60, NULL},        [LW_PEN_NONE] = {0.0, NULL},
};

static void add_escaped(lw_text *out, const char *string) {
  for (const char *c = string; *c != '\0'; c++) {
    switch (*c) {
    case '&': lw_text_add(out, "&amp;"); break;
    case '<': lw_text_add(out, "&lt;"); break;
    case '>': lw_text_add(out, "&gt;"); break;
    case '"': lw_text_add(out, "&quot;"); break;
    default: lw_text_add_bytes(out, c, 1);
    }
  }
}

static void add_style(const lw_mark *mark, lw_text *out) {
  static const char *const FILLS[] = {"none", "#fff", "#e4e4e4", "#000"};
  const pen_style *pen = &PENS[mark->pen];
  lw_text_addf(out, " fill=\"%s\"", mark->kind == LW_MARK_AREA ? FILLS[mark->fill] : "none");
  if (mark->pen == LW_PEN_NONE) return;
  lw_text_addf(out, " stroke=\"#000\" stroke-width=\"%.2f\"", pen->width_mm);
  if (pen->dashes) lw_text_addf(out, " stroke-dasharray=\"%s\"", pen->dashes);
}

static void add_path(const lw_drawing *drawing, const lw_mark *mark, lw_text *out) {
  lw_text_add(out, "<path d=\"");
  for (size_t i = 0; i < mark->count; i++) {
    const lw_xy_mm *spot = &drawing->spot[mark->first + i];
    lw_text_addf(out, "%c%.2f %.2f", i == 0 ? 'M' : 'L', spot->x_mm, spot->y_mm);
  }
  lw_text_add(out, mark->kind == LW_MARK_AREA ? "Z\"" : "\"");
  add_style(mark, out);
  lw_text_add(out, "/>\n");
}

static void add_words(const lw_drawing *drawing, const lw_mark *mark, lw_text *out) {
  static const char *const ANCHORS[] = {"start", "middle", "end"};
  lw_xy_mm at = drawing->spot[mark->first];
  lw_text_addf(out, "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" text-anchor=\"%s\"%s>", at.x_mm, at.y_mm,
               mark->size_mm, ANCHORS[mark->anchor], mark->bold ? " font-weight=\"bold\"" : "");
  add_escaped(out, drawing->words.data + mark->words);
  lw_text_add(out, "</text>\n");
}

lw_status lw_drawing_svg(const lw_drawing *drawing, lw_text *out) {
  lw_text_addf(out,
               "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.2fmm\" height=\"%.2fmm\" "
               "viewBox=\"0 0 %.2f %.2f\" role=\"img\" aria-labelledby=\"title description\" "
               "font-family=\"sans-serif\" stroke-linejoin=\"round\">\n<title id=\"title\">",
               drawing->width_mm, drawing->height_mm, drawing->width_mm, drawing->height_mm);
  add_escaped(out, drawing->title.data ? drawing->title.data : "");
  lw_text_add(out, "</title>\n<desc id=\"description\">");
  add_escaped(out, drawing->description.data ? drawing->description.data : "");
  lw_text_add(out, "</desc>\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
  for (size_t i = 0; i < drawing->mark_count; i++) {
    const lw_mark *mark = &drawing->mark[i];
    if (mark->kind == LW_MARK_WORDS)
      add_words(drawing, mark, out);
    else
      add_path(drawing, mark, out);
  }
  lw_text_add(out, "</svg>\n");
  return drawing->failed || out->failed ? LW_NO_MEMORY : LW_OK;
}
