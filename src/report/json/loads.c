/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"
#include "report/text/loads.h"

/* Loads behind the wall against the line of influence. */

static void add_load(json_t *list, const lw_result *result, const lw_influence_load *load) {
  json_t *entry = lw_json_entry(list);
  lw_json_set_count(entry, "number", load->number);
  lw_json_set_text(entry, "name", result->given.load[load->number - 1].name.text);
  lw_json_set_text(entry, "kind", lw_load_kind_word(load->kind));
  lw_json_set_double(entry, "distance_m", load->distance_m);
  lw_json_set_double(entry, "below_m", load->below_m);
  lw_json_set_double(entry, "line_m", load->line_m);
  lw_json_set_double(entry, "move_m", load->move_m);
  lw_json_set_flag(entry, "heavy", load->heavy);
  lw_json_set_flag(entry, "inside", load->inside);
}

void lw_json_influence(json_t *root, const lw_result *result) {
  json_t *object = lw_json_object(root, "influence");
  lw_json_set_double(object, "angle_deg", result->influence.angle_rad * LW_DEG_PER_RAD);
  json_t *list = lw_json_list(object, "loads");
  for (int i = 0; i < result->influence.count; i++) add_load(list, result, &result->influence.load[i]);
}
