/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/tell.h"
#include "base/working.h"
#include "formula.h"
#include "pressure_parts.h"

/* Beside the thrust of `lowwall pressure`: compaction plant, and a bed between two faces that stand close. */

static void find_plant(lw_earth_state state, const lw_plane *plane, lw_pressure_beside *beside,
                       const lw_working *working) {
  lw_compaction compaction = {.line_load_kn_per_m = beside->plant_kn_per_m,
                              .unit_weight_kn_per_m3 = plane->layer[0].unit_weight_kn_per_m3,
                              .friction_rad = plane->layer[0].friction_rad,
                              .state = state};
  lw_working_heading(working, "Compaction plant that touches the wall, while it is built");
  beside->plant_status = lw_compaction_solve(&compaction, &beside->diagram, NULL, working);
  if (beside->plant_status != LW_OK) return;
  beside->push = lw_compaction_thrust(&beside->diagram, plane->height_m, working);
  double weight = beside->diagram.unit_weight_kn_per_m3;
  beside->earth_kn_per_m = 0.5 * beside->diagram.coefficient * weight * plane->height_m * plane->height_m;
}

static void find_narrow(const lw_plane *plane, lw_pressure_beside *beside, const lw_working *working) {
  lw_narrow *n = &beside->narrow;
  double friction = plane->layer[0].friction_rad;
  *n = (lw_narrow){.shown = true,
                   .bed_width_m = beside->bed_width_m,
                   .height_m = plane->height_m,
                   .friction_rad = friction,
                   .wall_friction_rad = fmin(fmax(beside->wall_friction_rad, 0.0), friction),
                   .unit_weight_kn_per_m3 = plane->layer[0].unit_weight_kn_per_m3};
  lw_working_heading(working, "Narrow bed, the published values one by one; never counted");
  lw_narrow_solve(n, working);
}

void lw_pressure_beside_find(lw_earth_state state, const lw_plane *plane, lw_pressure_beside *beside,
                             const lw_working *working) {
  beside->height_m = plane->height_m;
  if (beside->plant_given) find_plant(state, plane, beside, working);
  if (beside->bed_width_m > 0.0) find_narrow(plane, beside, working);
}

static void plant_json(const lw_pressure_beside *b, json_t *out) {
  const char *reason = b->plant_status == LW_OK ? NULL : lw_reason_slug(LW_REASON_ANGLE_OUT_OF_RANGE);
  json_t *plant = lw_json_object(out, "compaction");
  lw_json_set_text(plant, "source", "[INGOLD-1979 29(3)]");
  lw_formula_set(plant, "coefficient", b->diagram.coefficient, reason);
  lw_formula_set(plant, "zc_m", b->diagram.zc_m, reason);
  lw_formula_set(plant, "hc_m", b->diagram.hc_m, reason);
  lw_formula_set(plant, "greatest_kpa", b->diagram.greatest_kpa, reason);
  lw_formula_set(plant, "push_kn_per_m", b->push.thrust_kn_per_m, reason);
  lw_formula_set(plant, "push_height_m", b->push.height_m, reason);
  lw_formula_set(plant, "earth_kn_per_m", b->earth_kn_per_m, reason);
}

static void add_value(json_t *list, lw_narrow_method method, const lw_narrow_value *v) {
  const char *reason = v->known ? NULL : lw_reason_slug(v->reason);
  json_t *value = lw_json_entry(list);
  lw_json_set_text(value, "slug", lw_narrow_slug(method));
  lw_json_set_text(value, "title", lw_narrow_title(method));
  lw_json_set_text(value, "source", lw_narrow_source(method));
  lw_formula_set(value, "coefficient", v->coefficient, reason);
  lw_formula_set(value, "foot_kpa", v->foot_kpa, reason);
  lw_formula_set(value, "push_kn_per_m", v->push.thrust_kn_per_m, reason);
  lw_formula_set(value, "push_height_m", v->push.height_m, reason);
  lw_formula_set(value, "share", v->share, reason);
  lw_formula_set(value, "height_share", v->height_share, reason);
}

static void narrow_json(const lw_narrow *n, json_t *out) {
  json_t *narrow = lw_json_object(out, "narrow");
  lw_formula_set(narrow, "bed_width_m", n->bed_width_m, NULL);
  lw_formula_set(narrow, "wedge_width_m", n->wedge_width_m, NULL);
  lw_formula_set(narrow, "raised_height_m", LW_NARROW_RAISED * n->height_m, NULL);
  json_t *values = lw_json_list(narrow, "values");
  for (int i = 0; i < LW_NARROW_COUNT; i++) add_value(values, (lw_narrow_method)i, &n->value[i]);
}

void lw_pressure_beside_json(const lw_pressure_beside *beside, json_t *out) {
  if (beside->plant_given) plant_json(beside, out);
  if (beside->narrow.shown) narrow_json(&beside->narrow, out);
}

static void add_plant(const lw_pressure_beside *b, lw_units units, lw_text *text) {
  const lw_compaction_diagram *d = &b->diagram;
  lw_text_add(text, "\nCompaction plant that touches, while it is built: an upper value   "
                    "[INGOLD-1979 29(3)]\n");
  lw_text_addf(text, "  greatest         %10.4f %s, from %.4f to %s down\n",
               lw_tell_in(units, "kPa", d->greatest_kpa), lw_tell_unit(units, "kPa").text,
               lw_tell_in(units, "m", d->zc_m), lw_tell_amount(units, "m", d->hc_m, 4).text);
  lw_text_addf(text, "  thrust           %10.4f %s at %s above the foot; of earth alone %s\n",
               lw_tell_in(units, "kN/m", b->push.thrust_kn_per_m), lw_tell_unit(units, "kN/m").text,
               lw_tell_amount(units, "m", b->push.height_m, 4).text,
               lw_tell_amount(units, "kN/m", b->earth_kn_per_m, 4).text);
  lw_text_addf(text, "  It is not added: a wall that gives way by %s sheds it [LR946 abstract].\n",
               units == LW_UNITS_US ? "a fiftieth of an inch" : "half a millimetre");
}

static void add_narrow(const lw_narrow *n, lw_units units, lw_text *text) {
  lw_text_addf(text, "\nNarrow bed %s wide; the wedge wants %s. Published values, never counted\n",
               lw_tell_amount(units, "m", n->bed_width_m, 3).text,
               lw_tell_amount(units, "m", n->wedge_width_m, 3).text);
  lw_text_add(text,
              units == LW_UNITS_US
                  ? "                         K    foot psf  thrust lb/ft   share of wide   at, of H\n"
                  : "                         K    foot kPa   thrust kN/m   share of wide   at, of H\n");
  for (int i = 0; i < LW_NARROW_COUNT; i++) {
    const lw_narrow_value *v = &n->value[i];
    if (v->known)
      lw_text_addf(text, "  %-18s %7.4f %9.3f %13.3f %15.3f %10.3f\n", lw_narrow_slug((lw_narrow_method)i),
                   v->coefficient, lw_tell_in(units, "kPa", v->foot_kpa),
                   lw_tell_in(units, "kN/m", v->push.thrust_kn_per_m), v->share, v->height_share);
    else
      lw_text_addf(text, "  %-18s none: %s\n", lw_narrow_slug((lw_narrow_method)i),
                   lw_reason_sentence(v->reason));
  }
  lw_text_addf(text,
               "  Arching can bring the push up to 0.42 H, %s, where it turns %.2f times as much as "
               "at a\n  third [HANDY1985 abstract].\n",
               lw_tell_amount(units, "m", LW_NARROW_RAISED * n->height_m, 3).text, 3.0 * LW_NARROW_RAISED);
}

void lw_pressure_beside_text(const lw_pressure_beside *beside, lw_units units, lw_text *text) {
  if (beside->plant_given && beside->plant_status == LW_OK) add_plant(beside, units, text);
  if (beside->narrow.shown) add_narrow(&beside->narrow, units, text);
}
