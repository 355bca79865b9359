/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/working.h"
#include "seismic.h"

#include <math.h>

#include "base/bound.h"
#include "profile_record.h"

/* The working of an earthquake's push. */

static const char PSI_ALIKE[] = "atan(kh/(1 - kv))";
static const char PSI_WET[] = "atan(kh gm/((1 - kv) gb))";
static const char ACTIVE[] =
    "cos^2(phi-t-psi) / (cos psi cos^2 t cos(d+t+psi) [1 + sqrt(sin(phi+d) sin(phi-b-psi) "
    "/ (cos(d+t+psi) cos(t-b)))]^2)";
static const char PASSIVE[] =
    "cos^2(phi+t-psi) / (cos psi cos^2 t cos(d-t+psi) [1 - sqrt(sin(phi+d) sin(phi+b-psi) "
    "/ (cos(d-t+psi) cos(t-b)))]^2)";
static const char SOURCE[] = "[MONONOBE-OKABE formula]";

static double degrees(double rad) {
  return rad * LW_DEG_PER_RAD;
}

static void tell_turn(const lw_plane *plane, int layer, bool wet, const lw_working *working) {
  double weight = lw_layer_weight(plane, layer, wet), moved = lw_layer_moved(plane, layer, wet);
  const lw_bound bound[] = {{"kh", plane->seismic.horizontal, ""},
                            {"kv", plane->seismic.vertical, ""},
                            {"gm", moved, "kN/m3"},
                            {"gb", weight, "kN/m3"}};
  const lw_step step = {"psi", fabs(weight - moved) < 1e-12 ? PSI_ALIKE : PSI_WET,
                        NULL,  degrees(lw_layer_turned(plane, layer, wet)),
                        "deg", SOURCE};
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
}

static void tell_layer(lw_earth_state state, const lw_plane *plane, int i, bool wet,
                       const lw_working *working) {
  double theta = plane->along_ground ? 0.0 : plane->batter_rad;
  double delta = plane->along_ground ? plane->slope_rad : plane->wall_friction_rad, k = 0.0;
  double turn = lw_layer_turned(plane, i, wet), kv = plane->seismic.vertical;
  lw_wall_angles angles = {plane->layer[i].friction_rad, delta, theta, plane->slope_rad};
  const lw_bound bound[] = {{"phi", degrees(angles.friction_rad), "deg"},
                            {"psi", degrees(turn), "deg"},
                            {"d", degrees(delta), "deg"},
                            {"t", degrees(theta), "deg"},
                            {"b", degrees(plane->slope_rad), "deg"}};
  if (lw_mononobe_okabe_coefficient(state, &angles, turn, &k, NULL) != LW_OK) return;
  tell_turn(plane, i, wet, working);
  const lw_step step = {"KE", state == LW_PASSIVE ? PASSIVE : ACTIVE, NULL, k, "", SOURCE};
  lw_working_bound(working, &step, bound, sizeof bound / sizeof *bound);
  const lw_bound light[] = {{"kv", kv, ""}, {"KE", k, ""}};
  if (fabs(kv) > 0.0)
    lw_working_bound(working, &(lw_step){"K", "(1 - kv) KE", NULL, (1.0 - kv) * k, "", ""}, light, 2);
}

/* Where a layer lies above the water and where below it. */
void lw_seismic_tell_layers(lw_earth_state state, const lw_plane *plane, const lw_working *working) {
  for (int i = 0; i < plane->layer_count; i++) {
    double top = i > 0 ? fmax(plane->layer[i - 1].bottom_m, 0.0) : 0.0;
    double bottom = fmin(plane->layer[i].bottom_m, plane->height_m);
    if (!lw_layer_is_met(plane, i)) continue;
    lw_layer_heading(plane, i, working);
    if (top < plane->water_depth_m) tell_layer(state, plane, i, false, working);
    if (bottom <= plane->water_depth_m) continue;
    lw_working_heading(working, "below water");
    tell_layer(state, plane, i, true, working);
  }
}

void lw_seismic_tell(const lw_plane *plane, const lw_seismic_part *part, const lw_still *before,
                     const lw_thrust *thrust, const lw_working *working) {
  double added = thrust->seismic_kn_per_m;
  bool all = added > part->increment_kn_per_m;
  const lw_bound bound[] = {{"PE", part->moving_kn_per_m, "kN/m"},
                            {"P0", part->still_kn_per_m, "kN/m"},
                            {"dP", added, "kN/m"},
                            {"P", before->thrust_kn_per_m, "kN/m"},
                            {"h", before->height_m, "m"},
                            {"f", plane->seismic.height_share, ""},
                            {"H", plane->height_m, "m"},
                            {"hE", thrust->seismic_height_m, "m"},
                            {"Pt", thrust->total_kn_per_m, "kN/m"}};
  size_t count = sizeof bound / sizeof *bound;
  if (part->moving_kn_per_m > 0.0 || part->still_kn_per_m > 0.0)
    lw_working_bound(working, &(lw_step){"dP", all ? "max(PE - P0, -P)" : "PE - P0", NULL, added, "kN/m", ""},
                     bound, count);
  lw_working_bound(working,
                   &(lw_step){"hE", added > 0.0 ? "f H" : "h", NULL, thrust->seismic_height_m, "m", ""},
                   bound, count);
  lw_working_bound(working, &(lw_step){"Pt", "P + dP", NULL, thrust->total_kn_per_m, "kN/m", ""}, bound,
                   count);
  if (added > 0.0 && thrust->total_kn_per_m > 0.0)
    lw_working_bound(working, &(lw_step){"ht", "(P h + dP hE)/Pt", NULL, thrust->height_of_action_m, "m", ""},
                     bound, count);
}
