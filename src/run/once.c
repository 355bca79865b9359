/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "once.h"

#include "load_cases/least.h"
#include "load_cases/situations.h"
#include "load_cases/trench.h"
#include "studies/fence_find.h"
#include "studies/influence.h"
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
lw_status lw_run_begin(const lw_case *c, const lw_tables *tables, lw_detail detail, lw_result *result,
                       lw_error *error) {
  if (&result->given != c) result->given = *c;
  bool trusted = detail == LW_DETAIL_VERDICT && c->complete;
  lw_status status = trusted ? LW_OK : complete(tables, &result->given, error);
  if (status != LW_OK) return status;
  result->tables = tables;
  result->detail = detail;
  result->units = lw_case_units(&result->given);
  lw_wall_build(&result->given, tables, &result->wall);
  result->looks.looked = result->looks.bare = false;
  result->looks.cautious = (lw_least){.has = {0}};
  result->factor_sets.count = 0;
  result->remedies_sought = false;
  result->remedy_count = 0;
  result->asking_count = 0;
  result->cost_count = 0;
  return LW_OK;
}

/* A wall that holds needs no sum of what it has, and most rows of a schedule are such. */
static void note_least(lw_result *result) {
  if (result->looks.looked && result->looks.bare) return;
  if (result->looks.looked || result->situations.stands != LW_HOLDS)
    result->looks.cautious = lw_situations_least(&result->situations);
}

void lw_run_checks(lw_result *result, lw_detail detail) {
  lw_situations_run(&result->wall, result->tables, detail, &result->situations);
  note_least(result);
  lw_fence_weigh(&result->wall, result->tables, &result->fence);
  lw_trench_find(&result->wall, result->tables, &result->trench);
  lw_influence_find(&result->wall, result->tables, &result->influence);
}
