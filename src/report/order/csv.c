/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/text.h"
#include "report.h"

/* The order lines and the cuts, or the pegs, as CSV; the headline stands in the first row of each wall. */

static void quoted(lw_text *out, const char *words) {
  lw_text_add(out, lw_cell_runs(words) ? "\"'" : "\"");
  for (; *words != '\0'; words++)
    lw_text_add_bytes(out, *words == '"' ? "\"\"" : words, *words == '"' ? 2 : 1);
  lw_text_add(out, "\"");
}

static void start_row(const lw_result *result, lw_text *out) {
  quoted(out, result->given.about.mark.text);
  lw_text_add(out, ",");
}

static void line(const lw_order_line *l, lw_units units, lw_text *out) {
  lw_text_addf(out, "%s,", lw_order_line_slug(l->kind));
  char name[LW_LINE_NAME], note[LW_LINE_NOTE];
  quoted(out, lw_order_line_name(l, units, name));
  lw_text_addf(out, ",%.3f,", l->net);
  if (l->allowance_known)
    lw_text_addf(out, "%.3f,%s", l->allowance, l->pieces ? "pieces" : "share");
  else
    lw_text_add(out, ",");
  lw_text_addf(out, ",%.3f,%s,", l->order, lw_line_unit_slug(lw_order_line_unit(l->kind)));
  if (l->mass_kg > 0.0) lw_text_addf(out, "%.0f", l->mass_kg);
  lw_text_add(out, ",");
  quoted(out, lw_order_line_note(l, units, note));
  lw_text_add(out, "\n");
}

/* Pieces that are cut from what the lines order: a net count and no order of their own. */
static void cut(const lw_cut *c, bool several, lw_text *out) {
  lw_text_addf(out, "cut,\"%s%s\",%d,,,,pieces,,", lw_cut_slug(c->kind), c->base_unit ? ", base unit" : "",
               c->count);
  lw_text_addf(out, "\"long edge %.0f mm, short edge %.0f mm, saw %.1f deg", c->long_m * 1000.0,
               c->short_m * 1000.0, c->saw_deg);
  if (c->saw_other_deg > 0.0) lw_text_addf(out, " and %.1f deg", c->saw_other_deg);
  if (several && c->cap_depth_m > 0.0) lw_text_addf(out, ", %.0f mm deep", c->cap_depth_m * 1000.0);
  lw_text_addf(out, ", waste %.0f/%.0f mm\"\n", c->waste_long_m * 1000.0, c->waste_short_m * 1000.0);
}

static void notes(const lw_result *result, const lw_order *order, lw_order_page page, lw_text *out) {
  char words[LW_ORDER_SENTENCE];
  for (int i = 0; i < order->note_count; i++) {
    start_row(result, out);
    lw_text_add(out, page == LW_PAGE_ORDER ? "note,,,,,,,," : "note,,,,,,,");
    quoted(out, lw_order_note_words(order, &order->note[i], words));
    lw_text_add(out, "\n");
  }
}

static void lines(const lw_result *result, const lw_order *order, lw_text *out) {
  start_row(result, out);
  lw_text_add(out, "headline,");
  quoted(out, result->verdict.headline);
  lw_text_add(out, ",,,,,,,\n");
  for (int i = 0; i < order->line_count; i++) {
    start_row(result, out);
    line(&order->line[i], order->units, out);
  }
  for (int i = 0; i < order->cut_count; i++) {
    start_row(result, out);
    cut(&order->cut[i], order->cap_sort_count > 1, out);
  }
  notes(result, order, LW_PAGE_ORDER, out);
}

static void check_rows(const lw_result *result, const lw_setting_out *p, lw_text *out) {
  char name[LW_SPOT_NAME];
  for (int i = 0; i < p->check_count; i++) {
    start_row(result, out);
    lw_text_addf(out, "check,,,,,%.3f,%.0f,\"%s\"\n", p->check[i].distance_m,
                 p->check[i].tolerance_m * 1000.0, lw_peg_check_name(&p->check[i], name));
  }
  for (int i = 0; i < p->square_count; i++) {
    double unit = p->square[i].unit_m;
    start_row(result, out);
    lw_text_addf(out, "square,,,,,,,\"B%d: %.2f, %.2f, %.2f m\"\n", p->square[i].corner, 3.0 * unit,
                 4.0 * unit, 5.0 * unit);
  }
}

static void level_rows(const lw_result *result, const lw_setting_out *p, lw_text *out) {
  char name[LW_SPOT_NAME];
  for (int i = 0; i < p->level_count; i++) {
    start_row(result, out);
    lw_text_addf(out, "level,,,%.3f,,,,\"%s\"\n", lw_order_level(p->level[i].level_m),
                 lw_level_name(&p->level[i], name));
  }
  for (int i = 0; i < p->invert_count; i++) {
    start_row(result, out);
    lw_text_addf(out, "pipe,,,%.3f,%.3f,,,\"%s\"\n", lw_order_level(p->invert[i].level_m),
                 p->invert[i].along_m, lw_invert_name(&p->invert[i], name));
  }
  for (int i = 0; i < p->station_count; i++) {
    const lw_station *s = &p->station[i];
    start_row(result, out);
    lw_text_addf(out, "reading,,,,%.3f,,%.0f,\"%.0f mm as drawn; the tolerance is the alarm\"\n", s->along_m,
                 s->lean_alarm_m * 1000.0, s->reading_m * 1000.0);
  }
}

static void setting_out(const lw_result *result, const lw_order *order, lw_text *out) {
  const lw_setting_out *p = &order->setting_out;
  char name[LW_SPOT_NAME];
  start_row(result, out);
  lw_text_add(out, "headline,,,,,,,");
  quoted(out, result->verdict.headline);
  lw_text_add(out, "\n");
  for (int i = 0; i < p->peg_count; i++) {
    start_row(result, out);
    lw_text_addf(out, "%s,%.3f,%.3f,%.3f,,,,\n", lw_peg_name(&p->peg[i], name),
                 lw_order_level(p->peg[i].at.x_m), lw_order_level(p->peg[i].at.y_m), p->peg[i].level_m);
  }
  check_rows(result, p, out);
  level_rows(result, p, out);
  notes(result, order, LW_PAGE_PEGS, out);
}

void lw_report_order_csv_header(lw_order_page page, lw_text *out) {
  lw_text_add(out, page == LW_PAGE_ORDER
                       ? "mark,line,name,net,allowance,allowance in,order,unit,mass kg,note\n"
                       : "mark,peg,x m,y m,level m,along m,distance m,tolerance mm,note\n");
}

lw_status lw_report_order_csv(const lw_result *result, const lw_order *order, lw_order_page page,
                              lw_text *out) {
  if (page == LW_PAGE_ORDER)
    lines(result, order, out);
  else
    setting_out(result, order, out);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}
