/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "formula.h"
#include "pressure_side.h"
#include "report/diagram_words.h"

/* All methods side by side and the pressure against depth, as keys. */

static void set_layers(const lw_plane *plane, json_t *out) {
  json_t *list = lw_json_list(out, "layers");
  for (int i = 0; i < plane->layer_count; i++) {
    const lw_layer *layer = &plane->layer[i];
    json_t *entry = lw_json_entry(list);
    bool last = isinf(layer->bottom_m);
    lw_formula_set(entry, "bottom_m", layer->bottom_m, last ? "goes-on" : NULL);
    lw_formula_set(entry, "friction_angle_deg", layer->friction_rad * LW_DEG_PER_RAD, NULL);
    lw_formula_set(entry, "cohesion_kpa", layer->cohesion_kpa, NULL);
    lw_formula_set(entry, "unit_weight_kn_per_m3", layer->unit_weight_kn_per_m3, NULL);
    lw_formula_set(entry, "saturated_unit_weight_kn_per_m3", layer->saturated_unit_weight_kn_per_m3, NULL);
    lw_formula_set(entry, "overconsolidation", fmax(layer->overconsolidation, 1.0), NULL);
  }
}

static void set_loads(const lw_diagram *d, json_t *out) {
  static const struct {
    const char *key, *height;
    lw_load_pressure by;
  } THEORY[] = {{"half_space_kn_per_m", "half_space_height_m", LW_LOAD_PRESSURE_HALF_SPACE},
                {"doubled_kn_per_m", "doubled_height_m", LW_LOAD_PRESSURE_DOUBLED},
                {"curves_kn_per_m", "curves_height_m", LW_LOAD_PRESSURE_CURVES}};
  const lw_plane *back = &d->asked.back;
  json_t *list = lw_json_list(out, "loads");
  for (int i = 0; i < back->load_count; i++) {
    const lw_plane_load *load = &back->load[i];
    json_t *entry = lw_json_entry(list);
    bool strip = load->pressure_kpa > 0.0;
    lw_json_set_count(entry, "number", d->asked.load_number[i]);
    lw_json_set_text(entry, "kind", strip ? "strip" : load->point ? "point" : "line");
    lw_formula_set(entry, "near_m", load->near_m, NULL);
    lw_formula_set(entry, "far_m", load->far_m, NULL);
    lw_formula_set(entry, "pressure_kpa", load->pressure_kpa, NULL);
    lw_formula_set(entry, load->point ? "force_kn" : "force_kn_per_m", load->force_kn_per_m, NULL);
    lw_formula_set(entry, "below_ground_m", load->below_m, NULL);
    for (int k = 0; k < 3; k++) {
      lw_elastic by = lw_elastic_push_on(back, THEORY[k].by);
      lw_formula_set(entry, THEORY[k].key, by.load[i].push_kn_per_m, NULL);
      lw_formula_set(entry, THEORY[k].height, by.load[i].height_m, NULL);
    }
  }
}

static void set_number(json_t *out, const char *key, lw_number value, const char *reason) {
  lw_formula_set(out, key, value.value, value.known ? NULL : reason);
}

static void set_way(const lw_diagram *d, lw_way way, json_t *out) {
  const lw_diagram_way *w = &d->way[way];
  const lw_thrust *t = &w->thrust;
  const char *reason = w->known ? NULL : lw_reason_slug(w->error.reason);
  lw_text notes = {0};
  lw_json_set_text(out, "slug", lw_way_slug(way));
  lw_json_set_text(out, "title", w->routine->title);
  lw_json_set_text(out, "state", lw_state_title(w->state));
  lw_json_set_text(out, "source", w->routine->source);
  lw_json_set_text(out, "plane", w->upright ? "upright" : "back");
  set_number(out, "coefficient", w->mean_k, reason != NULL ? reason : "no-coefficient");
  json_t *layers = lw_json_list(out, "layers");
  for (int i = 0; i < d->asked.back.layer_count; i++)
    set_number(lw_json_entry(layers), "coefficient", w->layer_k[i],
               reason != NULL ? reason : "no-coefficient");
  lw_formula_set(out, "thrust_kn_per_m", t->total_kn_per_m, reason);
  lw_formula_set(out, "thrust_angle_deg", t->angle_rad * LW_DEG_PER_RAD, reason);
  lw_formula_set(out, "height_of_action_m", t->height_of_action_m, reason);
  lw_formula_set(out, "uniform_kn_per_m", t->surcharge_kn_per_m, reason);
  lw_formula_set(out, "seismic_thrust_kn_per_m", t->seismic_kn_per_m, reason);
  lw_formula_set(out, "water_kn_per_m", t->water_kn_per_m, reason);
  lw_formula_set(out, "crack_depth_m", t->crack_depth_m, reason);
  lw_formula_set(out, "loads_kn_per_m", w->loads.push_kn_per_m, reason);
  lw_formula_set(out, "loads_height_m", w->loads.height_m, reason);
  lw_formula_set(out, "level_kn_per_m", w->level_kn_per_m, reason);
  lw_formula_set(out, "level_height_m", w->level_height_m, reason);
  set_number(out, "against_coulomb", lw_way_against_coulomb(d, way), reason != NULL ? reason : "no-demand");
  lw_json_set_flag(out, "passive_unsafe", t->passive_unsafe);
  lw_way_notes(d, way, LW_UNITS_METRIC, &notes);
  lw_json_set_text(out, "note", notes.data);
  lw_text_free(&notes);
}

static void set_published(const lw_diagram *d, json_t *out) {
  json_t *list = lw_json_list(out, "published_passive");
  for (int i = 0; i < d->asked.back.layer_count; i++) {
    json_t *entry = lw_json_entry(list);
    set_number(entry, "ufc_coefficient", d->ufc_kp[i], "no-coefficient");
    set_number(entry, "lancellotta_coefficient", d->lancellotta_kp[i], "no-coefficient");
  }
}

static void set_depth(const lw_diagram *d, const lw_diagram_depth *row, json_t *out) {
  bool on_back = row->depth_m > -1e-9;
  lw_formula_set(out, "depth_m", row->depth_m, NULL);
  lw_json_set_count(out, "soil", row->layer + 1);
  set_number(out, "stress_kpa", (lw_number){row->stress_kpa, on_back}, "above-the-back");
  set_number(out, "water_kpa", (lw_number){row->pore_kpa, on_back}, "above-the-back");
  set_number(out, "effective_kpa", (lw_number){row->effective_kpa, on_back}, "above-the-back");
  json_t *ways = lw_json_list(out, "methods");
  for (int i = 0; i < LW_WAY_COUNT; i++) {
    json_t *entry = lw_json_entry(ways);
    bool wedge = i == LW_WAY_WEDGE || i == LW_WAY_PASSIVE_WEDGE;
    const char *none = d->way[i].known ? "not-here" : lw_reason_slug(d->way[i].error.reason);
    lw_json_set_text(entry, "slug", lw_way_slug((lw_way)i));
    if (wedge) {
      set_number(entry, "down_to_here_kn_per_m", row->down_to_kn_per_m[i], none);
      continue;
    }
    set_number(entry, "level_kpa", row->soil_kpa[i], none);
    set_number(entry, "uniform_kpa", row->uniform_kpa[i], none);
  }
  json_t *loads = lw_json_list(out, "loads");
  for (int i = 0; i < d->asked.back.load_count; i++)
    set_number(lw_json_entry(loads), "level_kpa", (lw_number){row->load_kpa[i], on_back}, "above-the-back");
}

void lw_pressure_side_json(const lw_diagram *diagram, json_t *out) {
  set_layers(&diagram->asked.back, out);
  set_loads(diagram, out);
  lw_json_set_text(out, "loads_by", lw_load_theory_title(diagram->loads_by));
  json_t *ways = lw_json_list(out, "methods");
  for (int i = 0; i < LW_WAY_COUNT; i++) set_way(diagram, (lw_way)i, lw_json_entry(ways));
  set_published(diagram, out);
  json_t *rows = lw_json_list(out, "depths");
  for (int i = 0; i < diagram->depth_count; i++) set_depth(diagram, &diagram->depth[i], lw_json_entry(rows));
}
