/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/amount.h"
#include "report.h"

const char *lw_fit_slug(const lw_fit *fit) {
  switch (fit->kind) {
  case LW_FIT_LAID: return lw_grade_slug(fit->grade);
  case LW_FIT_HEIGHT: return "does-not-fit";
  case LW_FIT_NO_PLAN: return "no-plan";
  case LW_FIT_FAULT: break;
  }
  return "fault";
}

static void say_fault(const lw_fault *fault, char out[LW_FIT_WHY]) {
  lw_print(out, LW_FIT_WHY, "%s%s%s; wanted: %s", fault->item, fault->item[0] != '\0' ? ": " : "",
           lw_fault_slug_sentence(fault->slug), fault->wanted);
}

static void say_height(const lw_fit *fit, lw_units units, char out[LW_FIT_WHY]) {
  const lw_amount above = lw_exactly(units, LW_KIND_LENGTH, fit->above_m, "mm"),
                  below = lw_exactly(units, LW_KIND_LENGTH, fit->below_m, "mm");
  int more = (int)((fit->above_m - fit->below_m) / fit->block->height_m + 0.5) + fit->courses_below;
  if (fit->courses_below > 0)
    lw_print(out, LW_FIT_WHY,
             "whole courses do not make the height of the sheet; the nearest above the ground in front are "
             "%s with %d and %s with %d",
             below.text, fit->courses_below, above.text, more);
  else
    lw_print(out, LW_FIT_WHY,
             "whole courses do not make the height of the sheet; the nearest above the ground in front is "
             "%s",
             above.text);
}

const char *lw_fit_why(const lw_fit_list *list, const lw_fit *fit, char out[LW_FIT_WHY]) {
  lw_faults faults = {.count = 0};
  out[0] = '\0';
  switch (fit->kind) {
  case LW_FIT_LAID: break;
  case LW_FIT_HEIGHT: say_height(fit, list->units, out); break;
  case LW_FIT_NO_PLAN:
    lw_report_plan_fault(list->items, &fit->plan, &faults);
    say_fault(&faults.fault[0], out);
    break;
  case LW_FIT_FAULT: say_fault(&fit->fault, out); break;
  }
  return out;
}

void lw_fit_typed(const lw_fit *fit, lw_text *out) {
  for (int i = 0; i < fit->items.count; i++)
    lw_text_addf(out, "%s'%s'", i > 0 ? " " : "", fit->items.item[i]);
}
