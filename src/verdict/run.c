/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/result.h>

#include "parts.h"
#include "trial.h"

/* The first fault, as one sentence. */
static lw_status contradicted(const lw_faults *faults, lw_error *error) {
  const lw_fault *fault = &faults->fault[0];
  if (faults->count <= 0)
    return lw_error_set(error, LW_FAULTS, LW_REASON_NONE, "the case contradicts itself");
  return lw_error_set(error, LW_FAULTS, LW_REASON_NONE, "%s: %s: stood \"%s\"; %s",
                      lw_fault_slug_name(fault->slug), fault->item, fault->stood, fault->wanted);
}

static lw_status settle(const lw_tables *tables, lw_case *c, lw_error *error) {
  lw_faults faults = {.count = 0};
  return lw_case_settle(tables, c, &faults) == LW_OK ? LW_OK : contradicted(&faults, error);
}

/* trusted: a settled case is as settling left it, as within the library it is. */
static lw_status build(const lw_case *c, const lw_tables *tables, bool trusted, lw_result *result,
                       lw_error *error) {
  if (&result->given != c) result->given = *c;
  lw_status status = trusted && c->settled ? LW_OK : settle(tables, &result->given, error);
  if (status != LW_OK) return status;
  result->tables = tables;
  lw_wall_build(&result->given, tables, &result->wall);
  result->formats.count = 0;
  result->remedies_sought = false;
  result->remedy_count = 0;
  result->asking_count = 0;
  return LW_OK;
}

lw_status lw_run_working(const lw_case *c, const lw_tables *tables, lw_result *result, lw_error *error,
                         const lw_working *working) {
  lw_status status = build(c, tables, false, result, error);
  if (status != LW_OK) return status;
  lw_situations_run(&result->wall, tables, &result->situations, working);
  lw_building_run(&result->given, &result->wall, tables, &result->building);
  lw_narrow_run(&result->given, &result->wall, &result->situations, &result->narrow);
  lw_fence_find(&result->given, tables, &result->wall, &result->fence);
  lw_storm_find(&result->wall, &result->storm);
  result->seepage = (lw_rain_seepage){0};
  result->water_limits = (lw_water_limits){0};
  lw_trench_find(&result->wall, tables, &result->trench);
  lw_influence_find(&result->given, tables, &result->wall, &result->influence);
  lw_verdict_reach(&result->given, tables, &result->wall, &result->situations, &result->verdict);
  lw_verdict_building(&result->building, &result->verdict);
  return LW_OK;
}

lw_status lw_run(const lw_case *c, const lw_tables *tables, lw_result *result, lw_error *error) {
  return lw_run_working(c, tables, result, error, NULL);
}

static lw_status run_governing(const lw_case *c, const lw_tables *tables, lw_result *result, lw_error *error,
                               bool all_reasons) {
  lw_status status = build(c, tables, true, result, error);
  if (status != LW_OK) return status;
  result->wall.governing_only = true;
  lw_situations_run(&result->wall, tables, &result->situations, NULL);
  result->wall.governing_only = !all_reasons;
  lw_verdict_reach(&result->given, tables, &result->wall, &result->situations, &result->verdict);
  return LW_OK;
}

lw_status lw_run_governing(const lw_case *c, const lw_tables *tables, lw_result *result, lw_error *error) {
  return run_governing(c, tables, result, error, false);
}

lw_status lw_run_verdict(const lw_case *c, const lw_tables *tables, lw_result *result, lw_error *error) {
  return run_governing(c, tables, result, error, true);
}

void lw_water_find(lw_result *result, lw_result *scratch) {
  result->water_limits = (lw_water_limits){0};
  lw_rain_seepage_find(&result->wall, &result->seepage);
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    if (s->name != LW_SITUATION_OUTLET_BLOCKED || !result->wall.section.known) continue;
    lw_water_limits_find(&result->wall, result->tables, s, &scratch->situations.situation[0],
                         &result->water_limits);
  }
}
