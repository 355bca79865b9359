/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "report/markup.h"
#include "pens.h"

/* The list of marks as SVG. It needs no library: lines are paths, words are text that can be copied. */

static void add_style(const lw_mark *mark, lw_text *out) {
  const lw_pen_style *pen = lw_pen_style_of(mark->pen);
  int grey = (int)(lw_fill_grey(mark->fill) * 255.0 + 0.5);
  bool filled = mark->kind == LW_MARK_AREA && mark->fill != LW_FILL_NONE;
  if (filled)
    lw_text_addf(out, " fill=\"#%02x%02x%02x\"", grey, grey, grey);
  else
    lw_text_add(out, " fill=\"none\"");
  if (mark->pen == LW_PEN_NONE) return;
  lw_text_addf(out, " stroke=\"#000\" stroke-width=\"%.2f\"", pen->width_mm);
  for (int i = 0; i < pen->dash_count; i++)
    lw_text_addf(out, "%s%.1f", i == 0 ? " stroke-dasharray=\"" : " ", pen->dash_mm[i]);
  if (pen->dash_count > 0) lw_text_add(out, "\"");
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
  lw_markup_add(out, drawing->words.data + mark->words);
  lw_text_add(out, "</text>\n");
}

lw_status lw_drawing_svg(const lw_drawing *drawing, lw_text *out) {
  lw_text_addf(out,
               "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.2fmm\" height=\"%.2fmm\" "
               "viewBox=\"0 0 %.2f %.2f\" role=\"img\" aria-labelledby=\"title description\" "
               "font-family=\"sans-serif\" stroke-linejoin=\"round\">\n<title id=\"title\">",
               drawing->width_mm, drawing->height_mm, drawing->width_mm, drawing->height_mm);
  lw_markup_add(out, drawing->title.data ? drawing->title.data : "");
  lw_text_add(out, "</title>\n<desc id=\"description\">");
  lw_markup_add(out, drawing->description.data ? drawing->description.data : "");
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
