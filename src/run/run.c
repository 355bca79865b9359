/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/result.h>

#include "load_cases/storm.h"
#include "looks.h"
#include "once.h"
#include "studies/construction.h"
#include "studies/fence_find.h"
#include "studies/fence_wind.h"
#include "studies/narrow.h"
#include "studies/rain_seepage.h"
#include "studies/water_limits.h"
#include "told.h"
#include "verdict/parts.h"
#include "verdict/verdict.h"

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
  lw_status status = lw_run_begin(c, tables, detail, result, error);
  if (status != LW_OK) return status;
  /* First, for it takes the place that the rest then has. */
  if (detail >= LW_DETAIL_EVERYTHING) lw_looks_before(result);
  lw_run_checks(result, detail);
  lw_verdict_reach(result, detail);
  if (detail < LW_DETAIL_EVERYTHING) return LW_OK;
  study(result);
  lw_verdict_construction(&result->construction, result->units, &result->verdict);
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
