/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/text.h"
#include "report.h"

static void quoted(lw_text *out, const char *words) {
  lw_text_add(out, lw_cell_runs(words) ? ",\"'" : ",\"");
  for (; *words != '\0'; words++)
    lw_text_add_bytes(out, *words == '"' ? "\"\"" : words, *words == '"' ? 2 : 1);
  lw_text_add(out, "\"");
}

static void figures(const lw_fit *fit, lw_text *out) {
  if (fit->kind != LW_FIT_LAID) {
    lw_text_add(out, ",,,,,,,,,,");
    return;
  }
  lw_text_addf(out, ",%.2f,%d,%d,%.1f,%.0f,%d,%.6g,%.6g,%s,", fit->cost, fit->whole, fit->other,
               fit->unit_mass_kg, fit->mass_kg, fit->courses, fit->setback_m * 1000.0,
               fit->embedment_m * 1000.0, lw_who_slug(fit->who));
  if (fit->ratio.known) lw_text_addf(out, "%.3f", fit->ratio.value);
}

static void row(const lw_fit_list *list, const lw_fit *fit, int number, lw_text *out) {
  char why[LW_FIT_WHY];
  lw_text typed = {0};
  lw_text_addf(out, "%d,%d", number, fit->block->row);
  quoted(out, fit->block->name);
  lw_text_addf(out, ",%s", lw_fit_slug(fit));
  figures(fit, out);
  quoted(out, fit->governs);
  quoted(out, fit->kind == LW_FIT_LAID ? fit->headline : lw_fit_why(list, fit, why));
  lw_fit_typed(fit, &typed);
  quoted(out, typed.data != NULL ? typed.data : "");
  out->failed = out->failed || typed.failed;
  lw_text_free(&typed);
  lw_text_add(out, "\n");
}

lw_status lw_report_fit_csv(const lw_fit_list *list, lw_text *out) {
  lw_text_add(out, "place,row,name,result");
  char cost[64];
  lw_print(cost, sizeof cost, list->yard->currency[0] != '\0' ? "cost %s" : "cost%s", list->yard->currency);
  quoted(out, cost);
  lw_text_add(out,
              ",blocks,other units,block mass kg,mass kg,courses,setback mm,embedment mm,who,ratio,governs,"
              "words,typed\n");
  for (int i = 0; i < list->yard->count; i++) row(list, &list->fit[i], i + 1, out);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}
