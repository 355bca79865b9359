/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "load_cases.h"

#include "standards/factors.h"

bool lw_load_cases_push_alike(const lw_factor_set *factor_set, const lw_situation *a, const lw_situation *b) {
  bool same_water = a->water_depth_m <= b->water_depth_m && a->water_depth_m >= b->water_depth_m &&
                    a->seeping == b->seeping;
  bool shaken = a->name == LW_SITUATION_EARTHQUAKE || b->name == LW_SITUATION_EARTHQUAKE;
  bool windy = a->name == LW_SITUATION_WIND || b->name == LW_SITUATION_WIND;
  bool stood_on = a->name == LW_SITUATION_PERSON_AT_EDGE || b->name == LW_SITUATION_PERSON_AT_EDGE;
  return same_water && !shaken && !windy && !stood_on &&
         lw_factor_set_same_ground(factor_set, a->kind, b->kind);
}

/* Every way of an earthquake, the one that is shown last. */
static void add_ways(const lw_wall *wall, const lw_factor_set *factor_set, const lw_situation *situation,
                     lw_load_cases *cases) {
  lw_seismic way[LW_WAYS];
  for (int w = lw_load_case_ways(wall, situation, way) - 1; w >= 0; w--) {
    lw_listed_case *one = &cases->at[cases->count++];
    one->way = (signed char)w;
    one->same_push = false;
    one->load_case = lw_load_case_begin(situation, factor_set);
    one->load_case.ground.seismic = way[w];
    lw_load_case_mobilized(wall, factor_set, &one->load_case, NULL);
  }
}

void lw_load_cases_list(const lw_wall *wall, const lw_factor_set *factor_set, const lw_situation *situation,
                        int count, bool deciding, lw_load_cases *cases) {
  bool done[LW_SITUATION_COUNT] = {false};
  cases->count = 0;
  for (int i = 0; i < count; i++) done[i] = deciding && !situation[i].decides;
  for (int i = 0; i < count; i++) {
    for (int k = i; k < count && !done[i]; k++) {
      if (done[k] || (k > i && !lw_load_cases_push_alike(factor_set, &situation[i], &situation[k]))) continue;
      int first = cases->count;
      add_ways(wall, factor_set, &situation[k], cases);
      cases->at[first].same_push = k > i;
      for (int at = first; at < cases->count; at++) cases->at[at].situation = k;
      if (k > i) done[k] = true;
    }
    done[i] = true;
  }
}
