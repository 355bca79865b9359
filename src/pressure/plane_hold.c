/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <stddef.h>

#include "profile.h"
#include "base/angles.h"

/* What a formula may be asked: a plane that a caller's slip of the pen made would be walked down for ever, or
 * past the end of a list, or answered by no number. */

void lw_plane_init(lw_plane *plane) {
  *plane = (lw_plane){.slope_run_m = INFINITY,
                      .water_depth_m = INFINITY,
                      .water_unit_weight_kn_per_m3 = 9.81,
                      .layer_count = 1,
                      .layer = {{.bottom_m = INFINITY}}};
}

/* No wall, load or soil comes near it; its powers are still numbers. */
static const double FAR_TOO_MUCH = 1e9;

static bool from_to(double value, double low, double high) {
  return value >= low && value <= high; /* NAN is neither */
}

static bool is_number(double value) {
  return from_to(value, -FAR_TOO_MUCH, FAR_TOO_MUCH);
}

static bool is_amount(double value) {
  return from_to(value, 0.0, FAR_TOO_MUCH);
}

static bool is_angle(double rad) {
  return rad > -LW_HALF_PI && rad < LW_HALF_PI;
}

static bool is_depth(double depth_m) {
  return depth_m > -FAR_TOO_MUCH; /* INFINITY: not there */
}

static const char *wrong_layer(const lw_layer *layer, double top_m) {
  if (!(layer->bottom_m >= top_m)) return "a layer must not end above the layer above it";
  if (!is_amount(layer->cohesion_kpa)) return "cohesion must be 0 or more";
  if (!(is_amount(layer->unit_weight_kn_per_m3) && layer->unit_weight_kn_per_m3 > 0.0))
    return "soil weighs something";
  if (!is_amount(layer->saturated_unit_weight_kn_per_m3)) return "a saturated unit weight must be 0 or more";
  return is_amount(layer->overconsolidation) ? NULL : "overconsolidation must be 0 or more";
}

static const char *wrong_layers(const lw_plane *plane) {
  const char *wrong = NULL;
  double top = -INFINITY;
  for (int i = 0; i < plane->layer_count && wrong == NULL; i++) {
    wrong = wrong_layer(&plane->layer[i], top);
    top = plane->layer[i].bottom_m;
  }
  return wrong != NULL || top >= plane->height_m ? wrong : "the last layer must reach below the plane";
}

static const char *wrong_loads(const lw_plane *plane) {
  for (int i = 0; i < plane->load_count; i++) {
    const lw_plane_load *load = &plane->load[i];
    bool placed = is_number(load->near_m) && load->far_m >= load->near_m && is_number(load->below_m);
    if (!placed || !is_number(load->pressure_kpa) || !is_number(load->force_kn_per_m) ||
        !is_number(load->push_kn_per_m))
      return "a load must be a number, its near edge no further than its far edge";
  }
  return NULL;
}

static const char *wrong_number(const lw_plane *plane) {
  const lw_seismic *seismic = &plane->seismic;
  if (plane->layer_count < 1 || plane->layer_count > LW_SOIL_MAX) return "there is room for 1 to 6 layers";
  if (plane->load_count < 0 || plane->load_count > LW_SITE_LOAD_MAX) return "there is no room for all loads";
  if (!(is_amount(plane->height_m) && plane->height_m > 0.0)) return "the height must be above 0";
  if (!is_number(plane->surcharge_kpa)) return "the surcharge must be a number";
  if (!is_amount(plane->coefficient)) return "a coefficient that is given must be 0 or more";
  if (!is_depth(plane->water_depth_m) || !is_amount(plane->water_unit_weight_kn_per_m3))
    return "the water must have a depth and a weight";
  if (isnan(plane->slope_run_m)) return "the slope must have a run";
  if (!from_to(seismic->horizontal, 0.0, 1.0) || !from_to(seismic->vertical, -1.0, 0.99))
    return "the earthquake's coefficients must be below 1";
  const char *wrong = wrong_layers(plane);
  return wrong != NULL ? wrong : wrong_loads(plane);
}

static bool angles_fit(const lw_plane *plane) {
  bool fit = is_angle(plane->batter_rad) && is_angle(plane->wall_friction_rad) && is_angle(plane->slope_rad);
  for (int i = 0; i < plane->layer_count && fit; i++)
    fit = is_angle(plane->layer[i].friction_rad) && plane->layer[i].friction_rad >= 0.0;
  return fit;
}

lw_status lw_plane_hold(const lw_plane *plane, lw_error *error) {
  const char *wrong = wrong_number(plane);
  if (wrong != NULL) return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_OUT_OF_RANGE, "%s", wrong);
  if (angles_fit(plane)) return LW_OK;
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE,
                      "friction must be from 0 to less than 90 deg, every other angle within 90 deg");
}
