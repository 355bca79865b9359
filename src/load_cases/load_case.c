/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "load_case.h"

#include <math.h>

#include "balance/ground.h"
#include "soil/site.h"
#include "standards/factors.h"
#include "person.h"
#include "trench.h"
#include "wind.h"

lw_load_case lw_load_case_begin(const lw_situation *situation, const lw_factor_set *factor_set) {
  return (lw_load_case){.situation = situation->name,
                        .kind = situation->kind,
                        .set = factor_set->any,
                        .ground = {.water_depth_m = situation->water_depth_m, .seeping = situation->seeping},
                        .actions = {.people_down_kn_per_m = situation->people_down_kn_per_m,
                                    .people_out_kn_per_m = situation->people_out_kn_per_m,
                                    .cap_load = true}};
}

void lw_load_case_ground(const lw_wall *wall, const lw_factor_set *factor_set, lw_load_case *load_case,
                         const lw_working *working) {
  lw_ground *ground = &load_case->ground;
  double water = ground->water_depth_m;
  bool seeping = ground->seeping;
  lw_seismic seismic = ground->seismic;
  lw_ground_own(wall, ground);
  ground->water_depth_m = water;
  ground->seeping = seeping;
  ground->led_away = load_case->situation == LW_SITUATION_SOAKED && !isfinite(wall->site.water_depth_m);
  ground->seismic = seismic;
  if (load_case->situation == LW_SITUATION_WIND) lw_wind_blow(wall, ground);
  if (load_case->situation == LW_SITUATION_PERSON_AT_EDGE) lw_person_stand(wall, ground);
  if (load_case->situation == LW_SITUATION_TRENCH) lw_trench_open(wall, ground);
  lw_factor_set_weaken(factor_set, load_case->kind, wall, ground, working);
}

void lw_load_case_mobilized(const lw_wall *wall, const lw_factor_set *factor_set, lw_load_case *load_case,
                            const lw_working *working) {
  lw_load_case_ground(wall, factor_set, load_case, working);
  lw_factor_set_mobilize(factor_set, load_case->kind, wall, &load_case->ground, working);
}

int lw_load_case_ways(const lw_wall *wall, const lw_situation *situation, lw_seismic way[LW_WAYS]) {
  double kh = wall->seismic_horizontal, up = wall->seismic_vertical, share = wall->method.seismic_height;
  bool wet = situation->water_depth_m < wall->section.height_m + wall->site.pad.thickness_m;
  int count = 0;
  way[count++] = (lw_seismic){0};
  if (situation->name != LW_SITUATION_EARTHQUAKE) return count;
  way[0] = (lw_seismic){kh, up, share, true};
  if (up > 0.0) way[count++] = (lw_seismic){kh, -up, share, true};
  for (int i = 0, dry = count; wet && i < dry; i++) {
    way[count] = way[i];
    way[count++].pervious = false;
  }
  return count;
}

static void act(const lw_wall *wall, const lw_factor_set *factor_set, const lw_load_case_name *name,
                lw_load_case *load_case) {
  lw_factors factors[LW_LEANINGS];
  (void)lw_factor_set_on_actions(factor_set, load_case, wall, factors);
  load_case->actions.factors = factors[name->leaning];
  load_case->actions.cap_load = name->cap_load;
  if (!name->people_down) load_case->actions.people_down_kn_per_m = 0.0;
}

void lw_load_case_of(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                     const lw_check *check, lw_load_case *load_case) {
  lw_factor_set factor_set;
  lw_seismic way[LW_WAYS];
  lw_factor_set_read_of(tables, check->made_in.set, &factor_set);
  factor_set.on_every_wedge = check->made_in.divided_by;
  (void)lw_load_case_ways(wall, situation, way);
  *load_case = lw_load_case_begin(situation, &factor_set);
  load_case->ground.seismic = way[check->made_in.way];
  if (check->at == LW_AT_GROUND) {
    lw_load_case_ground(wall, &factor_set, load_case, NULL);
    return;
  }
  lw_load_case_mobilized(wall, &factor_set, load_case, NULL);
  act(wall, &factor_set, &check->made_in, load_case);
}
