/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_run.h"

#include <math.h>

#include "formula.h"
#include "pressure/methods.h"
#include "pressure_side.h"
#include "report/difference.h"

/* The answer of `lowwall pressure` in words and in keys. */

bool lw_pressure_must_agree(const lw_pressure_run *run) {
  return run->wedge_known && !run->curved && lw_plane_is_plain(&run->plane);
}

static const char *nothing_pushes(const lw_pressure_run *run) {
  return run->thrust.total_kn_per_m > 0.0 ? NULL : lw_reason_slug(LW_REASON_NO_DEMAND);
}

static void set_wedge(json_t *out, const lw_pressure_run *run) {
  const char *reason = run->wedge_known ? NULL : lw_reason_slug(run->wedge_error.reason);
  lw_formula_set(out, "wedge_thrust_kn_per_m", run->wedge.thrust_kn_per_m, reason);
  lw_formula_set(out, "wedge_plane_deg", run->wedge.plane_angle_rad * LW_DEG_PER_RAD, reason);
  lw_formula_set(out, "wedge_weight_kn_per_m", run->wedge.weight_kn_per_m, reason);
  lw_formula_set(out, "wedge_reach_m", run->wedge.reach_m, reason);
  lw_formula_set(out, "wedge_height_of_action_m", run->wedge.height_of_action_m, reason);
  lw_json_set_flag(out, "wedge_must_agree", lw_pressure_must_agree(run));
  lw_json_set_flag(out, "faulty", run->faulty);
  if (run->faulty) lw_json_set_text(out, "faulty_reason", lw_reason_slug(LW_REASON_WEDGE_DISAGREES));
}

static void set_profile(json_t *out, const lw_thrust *thrust) {
  json_t *list = lw_json_list(out, "profile");
  for (int i = 0; i < thrust->profile_count; i++) {
    json_t *point = lw_json_entry(list);
    lw_formula_set(point, "depth_m", thrust->profile[i].depth_m, NULL);
    lw_formula_set(point, "soil_kpa", thrust->profile[i].soil_kpa, NULL);
    lw_formula_set(point, "surcharge_kpa", thrust->profile[i].surcharge_kpa, NULL);
    lw_formula_set(point, "water_kpa", thrust->profile[i].water_kpa, NULL);
  }
}

static void set_thrust(json_t *out, const lw_pressure_run *run) {
  const lw_thrust *t = &run->thrust;
  lw_formula_set(out, "coefficient", t->coefficient, isnan(t->coefficient) ? "no-coefficient" : NULL);
  lw_formula_set(out, "thrust_kn_per_m", t->total_kn_per_m, NULL);
  lw_formula_set(out, "thrust_angle_deg", t->angle_rad * LW_DEG_PER_RAD, NULL);
  lw_formula_set(out, "thrust_horizontal_kn_per_m", t->horizontal_kn_per_m, NULL);
  lw_formula_set(out, "thrust_vertical_kn_per_m", t->vertical_kn_per_m, NULL);
  lw_formula_set(out, "height_of_action_m", t->height_of_action_m, nothing_pushes(run));
  lw_formula_set(out, "water_kn_per_m", t->water_kn_per_m, NULL);
  lw_formula_set(out, "water_height_m", t->water_height_m,
                 t->water_kn_per_m > 0.0 ? NULL : lw_reason_slug(LW_REASON_NO_DEMAND));
  lw_formula_set(out, "crack_depth_m", t->crack_depth_m, NULL);
  lw_json_set_flag(out, "passive_unsafe", t->passive_unsafe);
  lw_pressure_spiral_json(&run->plane, t, out);
  lw_pressure_seismic_json(&run->plane, t, out);
  lw_json_set_flag(out, "moist_weight_below_water", run->moist_below_water);
}

static void add_profile(const lw_thrust *t, lw_text *text) {
  if (t->profile_count == 0) return;
  lw_text_add(text, "\nPressure, along the thrust, per metre of vertical depth\n"
                    "  depth m   soil kPa   of it load kPa   water kPa\n");
  for (int i = 0; i < t->profile_count; i++)
    lw_text_addf(text, "  %7.3f   %8.3f   %14.3f   %9.3f\n", t->profile[i].depth_m, t->profile[i].soil_kpa,
                 t->profile[i].surcharge_kpa, t->profile[i].water_kpa);
}

static bool is_layered(const lw_plane *plane) {
  return plane->layer_count > 1 || plane->load_count > 0;
}

static void add_loads(const lw_pressure_run *run, lw_text *text) {
  if (run->plane.load_count == 0) return;
  lw_text_add(text, run->method == LW_PRESSURE_WEDGE
                        ? "  The loads at a distance are in it.\n"
                        : "  The loads at a distance are not in it: they stand beside all methods below.\n");
}

static void add_wedge(const lw_pressure_run *run, lw_text *text) {
  if (!run->wedge_known) {
    lw_text_addf(text, "  wedge            none: %s\n", lw_reason_sentence(run->wedge_error.reason));
    return;
  }
  double gap = run->wedge.thrust_kn_per_m - run->thrust.total_kn_per_m;
  if (fabs(gap) < 1e-6 * fmax(run->thrust.total_kn_per_m, 1e-3)) gap = 0.0; /* rounding is no difference */
  lw_text_addf(text, "  wedge            %10.4f kN/m, difference %.3g kN/m; plane at %.2f deg, %.3f m back\n",
               run->wedge.thrust_kn_per_m, gap, run->wedge.plane_angle_rad * LW_DEG_PER_RAD,
               run->wedge.reach_m);
  if (run->curved)
    lw_text_add(text, "  The wedge fails along a plane, which resists more than soil does behind a rough\n"
                      "  wall.\n");
  else if (run->faulty)
    lw_text_addf(text, "  FAULTY: %s.\n", lw_reason_sentence(LW_REASON_WEDGE_DISAGREES));
  else if (is_layered(&run->plane))
    lw_text_addf(text, "  They need not agree: %s.\n", lw_difference_words(lw_plane_difference(&run->plane)));
  else if (!lw_plane_is_plain(&run->plane))
    lw_text_add(text, "  They need not agree: cohesion, water or ground at the friction angle is in play,\n"
                      "  and formula and wedge take these in differently. Use the less favourable.\n");
}

const char *lw_pressure_run_source(const lw_pressure_run *run) {
  bool own = run->routine != lw_pressure_routine_of(run->method);
  return own ? run->routine->source : lw_pressure_source(run->method, run->plane.slope_rad);
}

static void add_summary(const lw_pressure_run *run, lw_text *text) {
  const lw_pressure_routine *routine = run->routine;
  const lw_thrust *t = &run->thrust;
  lw_text_addf(text, "%s, %s   %s\n", routine->title, run->state_word, lw_pressure_run_source(run));
  if (!isnan(t->coefficient)) lw_text_addf(text, "  coefficient      %10.4f\n", t->coefficient);
  lw_text_addf(text, "  thrust           %10.4f kN/m at %.2f deg to the horizontal\n", t->total_kn_per_m,
               t->angle_rad * LW_DEG_PER_RAD);
  lw_text_addf(text, "    horizontal     %10.4f kN/m\n", t->horizontal_kn_per_m);
  lw_text_addf(text, "    vertical       %10.4f kN/m (positive: down on the wall)\n", t->vertical_kn_per_m);
  if (nothing_pushes(run) == NULL)
    lw_text_addf(text, "  height of action %10.4f m above the foot\n", t->height_of_action_m);
  lw_pressure_seismic_text(&run->plane, t, text);
  if (t->crack_depth_m > 0.0) lw_text_addf(text, "  crack            %10.4f m deep\n", t->crack_depth_m);
  if (t->water_kn_per_m > 0.0)
    lw_text_addf(text, "  water            %10.4f kN/m at %.4f m above the foot, level\n", t->water_kn_per_m,
                 t->water_height_m);
  add_wedge(run, text);
  if (run->rankine_known)
    lw_text_addf(text, "  Rankine          %10.4f kN/m at %.2f deg, upright plane as high; K %.4f\n",
                 run->rankine.total_kn_per_m, run->rankine.angle_rad * LW_DEG_PER_RAD,
                 run->rankine.coefficient);
  lw_pressure_spiral_text(&run->plane, t, text);
  add_loads(run, text);
  if (run->moist_below_water)
    lw_text_add(text, "  No saturated unit weight is given: the unit weight is used below the water too.\n");
}

void lw_pressure_run_json(const lw_pressure_run *run, json_t *out) {
  set_thrust(out, run);
  set_wedge(out, run);
  if (run->rankine_known) {
    lw_formula_set(out, "rankine_thrust_kn_per_m", run->rankine.total_kn_per_m, NULL);
    lw_formula_set(out, "rankine_angle_deg", run->rankine.angle_rad * LW_DEG_PER_RAD, NULL);
    lw_formula_set(out, "rankine_coefficient", run->rankine.coefficient, NULL);
  }
  lw_pressure_beside_json(&run->beside, out);
  set_profile(out, &run->thrust);
  lw_pressure_side_json(&run->diagram, out);
}

void lw_pressure_run_text(const lw_pressure_run *run, lw_text *text) {
  add_summary(run, text);
  add_profile(&run->thrust, text);
  if (is_layered(&run->plane)) {
    lw_text_add(text, "\nThe plane and what it meets\n");
    lw_pressure_ground_text(&run->diagram, text);
  }
  lw_pressure_side_text(&run->diagram, text);
  lw_pressure_depths_text(&run->diagram, text);
  lw_pressure_beside_text(&run->beside, text);
}
