/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_run.h"

#include <math.h>

#include "base/tell.h"
#include "formula.h"
#include "pressure/methods.h"
#include "pressure_side.h"
#include "report/difference.h"
#include "report/page.h"

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

static double push(lw_units units, double kn_per_m) {
  return lw_tell_in(units, "kN/m", kn_per_m);
}

static void add_profile(const lw_thrust *t, lw_units units, lw_text *text) {
  if (t->profile_count == 0) return;
  bool us = units == LW_UNITS_US;
  lw_text_add(text, us ? "\nPressure, along the thrust, per foot of vertical depth\n"
                         " depth ft   soil psf   of it load psf   water psf\n"
                       : "\nPressure, along the thrust, per metre of vertical depth\n"
                         "  depth m   soil kPa   of it load kPa   water kPa\n");
  for (int i = 0; i < t->profile_count; i++)
    lw_text_addf(text, us ? "  %7.3f   %8.1f   %14.1f   %9.1f\n" : "  %7.3f   %8.3f   %14.3f   %9.3f\n",
                 lw_tell_in(units, "m", t->profile[i].depth_m),
                 lw_tell_in(units, "kPa", t->profile[i].soil_kpa),
                 lw_tell_in(units, "kPa", t->profile[i].surcharge_kpa),
                 lw_tell_in(units, "kPa", t->profile[i].water_kpa));
}

static bool is_layered(const lw_plane *plane) {
  return plane->layer_count > 1 || plane->load_count > 0;
}

static void add_loads(const lw_pressure_run *run, lw_text *text) {
  if (run->plane.load_count == 0) return;
  lw_text_add(text, run->method == LW_PRESSURE_WEDGE
                        ? "  The loads at a distance are in it.\n"
                        : "  The loads at a distance are not in the thrust: they stand beside all methods "
                          "below.\n");
}

/* Why formula and wedge are not the same. */
static void add_difference(const lw_pressure_run *run, lw_text *text) {
  const lw_page page = {.out = text, .style = {.columns = 80}};
  if (run->curved)
    lw_page_say(&page, "  ",
                "The wedge fails along a plane, which resists more than soil does behind a rough wall.");
  else if (run->faulty)
    lw_page_sayf(&page, "  ", "FAULTY: %s.", lw_reason_sentence(LW_REASON_WEDGE_DISAGREES));
  else if (is_layered(&run->plane))
    lw_page_sayf(&page, "  ", "They need not agree: %s.",
                 lw_difference_words(lw_plane_difference(&run->plane)));
  else if (!lw_plane_is_plain(&run->plane))
    lw_page_say(
        &page, "  ",
        "They need not agree: cohesion, water or ground at the friction angle is in play, and formula "
        "and wedge take these in differently. Use the less favourable.");
}

static void add_wedge(const lw_pressure_run *run, lw_units units, lw_text *text) {
  if (!run->wedge_known) {
    lw_text_addf(text, "  wedge            none: %s\n", lw_reason_sentence(run->wedge_error.reason));
    return;
  }
  lw_tell_name unit = lw_tell_unit(units, "kN/m");
  double degrees = run->wedge.plane_angle_rad * LW_DEG_PER_RAD;
  lw_amount back = lw_tell_amount(units, "m", run->wedge.reach_m, 3);
  if (run->method == LW_PRESSURE_WEDGE) {
    lw_text_addf(text, "  its plane        %10.2f deg, %s back\n", degrees, back.text);
    return;
  }
  double gap = run->wedge.thrust_kn_per_m - run->thrust.total_kn_per_m;
  if (fabs(gap) < 1e-6 * fmax(run->thrust.total_kn_per_m, 1e-3)) gap = 0.0; /* rounding is no difference */
  lw_text_addf(text, "  %-16s %10.4f %s, difference %.3g %s; plane at %.2f deg, %s back\n",
               run->plane.load_count > 0 ? "wedge with loads" : "wedge",
               push(units, run->wedge.thrust_kn_per_m), unit.text, push(units, gap), unit.text, degrees,
               back.text);
  add_difference(run, text);
}

const char *lw_pressure_run_source(const lw_pressure_run *run) {
  bool own = run->routine != lw_pressure_routine_of(run->method);
  return own ? run->routine->source : lw_pressure_source(run->method, run->plane.slope_rad);
}

static void add_summary(const lw_pressure_run *run, lw_units units, lw_text *text) {
  lw_tell_name unit = lw_tell_unit(units, "kN/m"), metre = lw_tell_unit(units, "m");
  const lw_pressure_routine *routine = run->routine;
  const lw_thrust *t = &run->thrust;
  lw_text_addf(text, "%s, %s   %s\n", routine->title, run->state_word, lw_pressure_run_source(run));
  if (!isnan(t->coefficient)) lw_text_addf(text, "  coefficient      %10.4f\n", t->coefficient);
  lw_text_addf(text, "  thrust           %10.4f %s at %.2f deg to the horizontal\n",
               push(units, t->total_kn_per_m), unit.text, t->angle_rad * LW_DEG_PER_RAD);
  lw_text_addf(text, "    horizontal     %10.4f %s\n", push(units, t->horizontal_kn_per_m), unit.text);
  lw_text_addf(text, "    vertical       %10.4f %s (positive: down on the wall)\n",
               push(units, t->vertical_kn_per_m), unit.text);
  if (nothing_pushes(run) == NULL)
    lw_text_addf(text, "  height of action %10.4f %s above the foot\n",
                 lw_tell_in(units, "m", t->height_of_action_m), metre.text);
  lw_pressure_seismic_text(&run->plane, t, units, text);
  if (t->crack_depth_m > 0.0)
    lw_text_addf(text, "  crack            %10.4f %s deep\n", lw_tell_in(units, "m", t->crack_depth_m),
                 metre.text);
  if (t->water_kn_per_m > 0.0)
    lw_text_addf(text, "  water            %10.4f %s at %s above the foot, level\n",
                 push(units, t->water_kn_per_m), unit.text,
                 lw_tell_amount(units, "m", t->water_height_m, 4).text);
  add_wedge(run, units, text);
  if (run->rankine_known)
    lw_text_addf(text, "  Rankine          %10.4f %s at %.2f deg, upright plane as high; K %.4f\n",
                 push(units, run->rankine.total_kn_per_m), unit.text, run->rankine.angle_rad * LW_DEG_PER_RAD,
                 run->rankine.coefficient);
  lw_pressure_spiral_text(&run->plane, t, units, text);
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

void lw_pressure_run_text(const lw_pressure_run *run, lw_units units, lw_text *text) {
  add_summary(run, units, text);
  add_profile(&run->thrust, units, text);
  if (is_layered(&run->plane)) {
    lw_text_add(text, "\nThe plane and what it meets\n");
    lw_pressure_ground_text(&run->diagram, units, text);
  }
  lw_pressure_side_text(&run->diagram, units, text);
  lw_pressure_depths_text(&run->diagram, units, text);
  lw_pressure_beside_text(&run->beside, units, text);
}
