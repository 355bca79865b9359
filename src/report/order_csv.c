/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/order.h>

#include "parts.h"

/* The order lines, or the pegs, as CSV; the headline stands in the first row. */

static void quoted(lw_text *out, const char *words) {
  lw_text_add(out, "\"");
  for (; *words != '\0'; words++)
    lw_text_add_bytes(out, *words == '"' ? "\"\"" : words, *words == '"' ? 2 : 1);
  lw_text_add(out, "\"");
}

static void headline(const lw_result *result, lw_text *out, const char *commas) {
  quoted(out, result->verdict.headline);
  lw_text_addf(out, "%s\n", commas);
}

static void lines(const lw_result *result, const lw_order *order, lw_text *out) {
  lw_text_add(out, "line,name,net,allowance,order,unit,mass kg,note\nheadline,");
  headline(result, out, ",,,,,,");
  for (int i = 0; i < order->line_count; i++) {
    const lw_order_line *l = &order->line[i];
    lw_text_addf(out, "%s,", l->slug);
    quoted(out, l->name);
    lw_text_addf(out, ",%.3f,", l->net);
    if (l->allowance_known) lw_text_addf(out, "%.3f", l->allowance);
    lw_text_addf(out, ",%.3f,%s,", l->order, l->unit);
    if (l->mass_kg > 0.0) lw_text_addf(out, "%.0f", l->mass_kg);
    lw_text_add(out, ",");
    quoted(out, l->note);
    lw_text_add(out, "\n");
  }
}

static void pegs(const lw_result *result, const lw_pegs *p, lw_text *out) {
  lw_text_add(out, "peg,x m,y m,level m,note\nheadline,,,,");
  headline(result, out, "");
  for (int i = 0; i < p->peg_count; i++)
    lw_text_addf(out, "%s,%.3f,%.3f,%.3f,\n", p->peg[i].name, p->peg[i].at.x_m, p->peg[i].at.y_m,
                 p->peg[i].level_m);
  for (int i = 0; i < p->level_count; i++)
    lw_text_addf(out, "level,,,%.3f,\"%s\"\n", p->level[i].level_m, p->level[i].name);
}

lw_status lw_report_order_csv(const lw_result *result, const lw_order *order, lw_order_page page,
                              lw_text *out) {
  if (page == LW_PAGE_ORDER)
    lines(result, order, out);
  else
    pegs(result, &order->pegs, out);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}
