/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation.h"

#include <stddef.h>
#include <string.h>

/* The wall as it stands in a situation, and one joint of it in full. */

void lw_situation_change(const lw_wall *wall, const lw_format *format, const lw_situation *situation,
                         lw_wall *now, const lw_working *working) {
  memcpy(now, wall, offsetof(lw_wall, section) + offsetof(lw_section, part));
  now->site.water_depth_m = situation->water_depth_m;
  now->site.seismic = situation->seismic;
  if (situation->name == LW_SITUATION_WIND) lw_wind_blow(now);
  if (situation->name == LW_SITUATION_TRENCH) lw_trench_open(now);
  lw_format_apply(format, situation->kind, now, working);
}

void lw_situation_wall(const lw_wall *wall, const lw_format *format, const lw_situation *situation,
                       lw_wall *now, const lw_working *working) {
  lw_section_copy(&wall->section, &now->section);
  lw_situation_change(wall, format, situation, now, working);
}

void lw_situation_joint(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                        int joint, lw_stage *stage) {
  lw_format format;
  lw_wall now;
  lw_section above;
  lw_push push;
  lw_actions actions = {.people_down_kn_per_m = situation->people_down_kn_per_m,
                        .people_out_kn_per_m = situation->people_out_kn_per_m,
                        .cap_load = true,
                        .factors = situation->factors};
  lw_format_read_of(tables, situation->set, &format);
  lw_situation_wall(wall, &format, situation, &now, NULL);
  lw_format_mobilize(&format, situation->kind, &now, NULL);
  lw_section_above(&now.section, joint, &above);
  lw_push_find(&now, &above, 0.0, NULL, &push, NULL);
  lw_stage_above(&now, &above, &push, &actions, stage);
  lw_stage_show(&push, stage);
}
