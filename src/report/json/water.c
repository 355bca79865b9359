/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"

/* Water behind the wall, and digging in front of the toe. */

static void add_storm(json_t *water, const lw_storm *s) {
  json_t *object = lw_json_object(water, "storm");
  bool given = s->rain_m > 0.0;
  lw_json_set_flag(object, "given", given);
  if (!given) return;
  lw_json_set_double(object, "rain_m", s->rain_m);
  lw_json_set_double(object, "porosity", s->porosity);
  lw_json_set_double(object, "rise_m", s->rise_m);
  lw_json_set_double(object, "from_depth_m", s->from_depth_m);
  lw_json_set_double(object, "water_depth_m", s->water_depth_m);
  lw_json_set_flag(object, "spills", s->spills);
}

static void add_limit(json_t *list, const lw_water_limit *l) {
  char at[24];
  const lw_check check = {.kind = l->kind, .at = l->at, .joint = l->joint};
  json_t *entry = lw_json_entry(list);
  lw_check_print_at(&check, at, sizeof at);
  lw_json_set_text(entry, "check", lw_check_slug(l->kind));
  lw_json_set_text(entry, "at", at);
  lw_json_set_text(entry, "state", lw_water_state_slug(l->state));
  lw_json_set_text(entry, "sentence", lw_water_state_sentence(l->state));
  bool all = lw_json_set_real(entry, "depth_m", l->depth_m);
  all = lw_json_set_real(entry, "ratio", l->ratio) && all;
  lw_json_set_flag(entry, "jumps", l->jumps);
  bool said = l->reason != LW_REASON_NONE;
  if (!all) lw_json_set_text(entry, "reason", lw_reason_slug(said ? l->reason : LW_REASON_NO_DEMAND));
}

static void add_seepage(json_t *water, const lw_rain_seepage *of) {
  json_t *object = lw_json_object(water, "seepage");
  bool shown = of->looked_at && of->status == LW_OK;
  lw_json_set_flag(object, "looked_at", of->looked_at);
  lw_json_set_flag(object, "shown", shown);
  if (of->looked_at && !shown) {
    lw_json_set_text(object, "reason", lw_reason_slug(of->reason));
    lw_json_set_text(object, "reason_text", lw_reason_sentence(of->reason));
  }
  if (!shown) return;
  lw_json_set_double(object, "dry_kn_per_m", of->push.dry_kn_per_m);
  lw_json_set_double(object, "seeping_kn_per_m", of->push.seeping_kn_per_m);
  lw_json_set_double(object, "blocked_kn_per_m", of->push.blocked_kn_per_m);
  lw_json_set_double(object, "dry_k", of->push.dry_k);
  lw_json_set_double(object, "seeping_k", of->push.seeping_k);
  lw_json_set_double(object, "blocked_k", of->push.blocked_k);
  lw_json_set_double(object, "plane_angle_deg", of->push.plane_angle_rad * LW_DEG_PER_RAD);
  lw_json_set_double(object, "pore_force_kn_per_m", of->push.pore_force_kn_per_m);
}

void lw_json_water(json_t *root, const lw_result *result) {
  json_t *water = lw_json_object(root, "water");
  add_storm(water, &result->storm);
  json_t *limits = lw_json_list(water, "limits");
  for (int i = 0; i < result->water_limits.count; i++) add_limit(limits, &result->water_limits.limit[i]);
  add_seepage(water, &result->seepage);
}

void lw_json_trench(json_t *root, const lw_result *result) {
  const lw_trench *t = &result->trench;
  json_t *digging = lw_json_object(root, "digging"), *object = lw_json_object(digging, "trench");
  bool given = t->depth_m > 0.0;
  lw_json_set_flag(object, "given", given);
  if (given) {
    lw_json_set_double(object, "depth_m", t->depth_m);
    lw_json_set_double(object, "distance_m", t->distance_m);
    lw_json_set_double(object, "floor_m", t->floor_m);
    lw_json_set_flag(object, "undermines", t->undermines);
  }
  if (t->thrust_times.known) {
    lw_json_set_real(object, "thrust_times", t->thrust_times);
    lw_json_set_real(object, "moment_times", t->moment_times);
  }
  json_t *keep_out = lw_json_object(digging, "keep_out");
  lw_json_set_double(keep_out, "depth_m", t->keep_out_depth_m);
  lw_json_set_double(keep_out, "distance_m", t->keep_out_distance_m);
}
