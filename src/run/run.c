/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/result.h>

#include "load_cases/situations.h"
#include "load_cases/storm.h"
#include "load_cases/trench.h"
#include "studies/construction.h"
#include "studies/fence_find.h"
#include "studies/fence_wind.h"
#include "studies/influence.h"
#include "studies/narrow.h"
#include "studies/rain_seepage.h"
#include "studies/water_limits.h"
#include "told.h"
#include "verdict/parts.h"
#include "verdict/verdict.h"
#include "wall/wall.h"

/* The first fault, as one sentence. */
static lw_status contradicted(const lw_faults *faults, lw_error *error) {
  const lw_fault *fault = &faults->fault[0];
  if (faults->count <= 0)
    return lw_error_set(error, LW_FAULTS, LW_REASON_NONE, "the case contradicts itself");
  return lw_error_set(error, LW_FAULTS, LW_REASON_NONE, "%s: %s: stood \"%s\"; %s",
                      lw_fault_slug_name(fault->slug), fault->item, fault->stood, fault->wanted);
}

static lw_status complete(const lw_tables *tables, lw_case *c, lw_error *error) {
  lw_faults faults = {.count = 0};
  return lw_case_complete(tables, c, &faults) == LW_OK ? LW_OK : contradicted(&faults, error);
}

/* A row of a schedule was completed with all its faults told; it is not looked at twice. */
static lw_status build(const lw_case *c, const lw_tables *tables, lw_detail detail, lw_result *result,
                       lw_error *error) {
  if (&result->given != c) result->given = *c;
  bool trusted = detail == LW_DETAIL_VERDICT && c->complete;
  lw_status status = trusted ? LW_OK : complete(tables, &result->given, error);
  if (status != LW_OK) return status;
  result->tables = tables;
  result->detail = detail;
  lw_wall_build(&result->given, tables, &result->wall);
  result->factor_sets.count = 0;
  result->remedies_sought = false;
  result->remedy_count = 0;
  result->asking_count = 0;
  return LW_OK;
}

/* What the verdict is reached from beside the checks. */
static void weigh(lw_result *result) {
  lw_fence_weigh(&result->wall, result->tables, &result->fence);
  lw_trench_find(&result->wall, result->tables, &result->trench);
  lw_influence_find(&result->wall, result->tables, &result->influence);
}

/* What reports say besides; none of it changes an answer. */
static void study(lw_result *result) {
  lw_fence_study(&result->wall, result->tables, &result->fence);
  lw_fence_clear(&result->situations, &result->fence.on);
  lw_construction_run(&result->wall, result->tables, &result->construction);
  lw_narrow_run(&result->wall, &result->situations, &result->narrow);
  lw_storm_find(&result->wall, &result->storm);
  result->seepage = (lw_rain_seepage){0};
  result->water_limits = (lw_water_limits){0};
}

lw_status lw_run(const lw_case *c, const lw_tables *tables, lw_detail detail, lw_result *result,
                 lw_error *error) {
  lw_status status = build(c, tables, detail, result, error);
  if (status != LW_OK) return status;
  lw_situations_run(&result->wall, tables, detail, &result->situations);
  weigh(result);
  lw_verdict_reach(result, detail);
  if (detail < LW_DETAIL_EVERYTHING) return LW_OK;
  study(result);
  lw_verdict_construction(&result->construction, &result->verdict);
  if (detail >= LW_DETAIL_WORKING) lw_run_tell(result, result->working);
  return LW_OK;
}

void lw_water_find(lw_result *result, lw_result *scratch) {
  result->water_limits = (lw_water_limits){0};
  lw_rain_seepage_find(&result->wall, &result->seepage, NULL);
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    if (s->name != LW_SITUATION_OUTLET_BLOCKED || !result->wall.section.known) continue;
    lw_water_limits_find(&result->wall, result->tables, s, &scratch->situations.situation[0],
                         &result->water_limits);
  }
}
