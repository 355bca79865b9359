/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/print.h"
#include "report/order/words.h"
#include "plan_view.h"

/* What found no place on the plan, told below it by the numbers of runs and pegs. */

void lw_plan_run_words(const lw_plan_view *v, int run, char *words, size_t size) {
  lw_print(words, size, "run %d: %s", run + 1,
           lw_sketch_dimension(&v->s, v->order->plan.run[run].length_m).text);
}

static int corner_after(const lw_plan *plan, int run) {
  return plan->closed && run + 1 == plan->run_count ? 1 : run + 2;
}

static void runs(const lw_plan_view *v, lw_text *out) {
  const lw_plan *plan = &v->order->plan;
  for (int i = 0; i < plan->run_count; i++) {
    char words[40];
    if (!v->untold_run[i] && !v->untold_radius[i]) continue;
    lw_plan_run_words(v, i, words, sizeof words);
    lw_text_addf(out, "%s%s", out->length > 0 ? ", " : "", words);
    if (v->untold_radius[i])
      lw_text_addf(out, " (R %s)", lw_sketch_dimension(&v->s, fabs(plan->run[i].radius_m)).text);
  }
}

/* Corners with the same turn in one go. */
static void turns(const lw_plan_view *v, lw_text *out) {
  const lw_plan *plan = &v->order->plan;
  bool told[LW_RUN_MAX] = {false};
  for (int i = 0; i < plan->run_count; i++) {
    bool first = true;
    if (!v->untold_turn[i] || told[i]) continue;
    double degrees = round(plan->run[i].turn_rad * LW_DEG_PER_RAD);
    lw_text_addf(out, "%sturn of %.0f deg at", out->length > 0 ? "; " : "", degrees);
    for (int k = i; k < plan->run_count; k++) {
      if (!v->untold_turn[k] || fabs(round(plan->run[k].turn_rad * LW_DEG_PER_RAD) - degrees) > 0.5) continue;
      lw_text_addf(out, "%s B%d", first ? "" : ",", corner_after(plan, k));
      told[k] = true;
      first = false;
    }
  }
}

static void pegs(const lw_plan_view *v, lw_text *out) {
  const lw_setting_out *p = &v->order->setting_out;
  char name[LW_SPOT_NAME];
  bool first = true;
  for (int i = 0; i < p->peg_count; i++) {
    if (!v->untold_peg[i]) continue;
    lw_text_addf(out, "%s %s",
                 !first            ? ","
                 : out->length > 0 ? "; names of pegs"
                                   : "names of pegs",
                 lw_peg_name(&p->peg[i], name));
    first = false;
  }
}

double lw_plan_untold(lw_plan_view *v, double y_mm) {
  lw_text what = {0}, words = {0};
  runs(v, &what);
  turns(v, &what);
  pegs(v, &what);
  if (what.length > 0) lw_text_addf(&words, "Without room on the drawing: %s.", what.data);
  if (what.failed || words.failed)
    v->s.paper->failed = true;
  else if (words.length > 0)
    y_mm = lw_sketch_wrap(v->s.paper, (lw_xy_mm){LW_MARGIN_MM, y_mm}, v->s.width_mm - 2.0 * LW_MARGIN_MM,
                          LW_SMALL_MM, false, words.data);
  lw_text_free(&what);
  lw_text_free(&words);
  return y_mm;
}
