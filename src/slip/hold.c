/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "parts.h"

/* What a caller may ask about: the search itself asks about nothing else, and is not held up by it. */

static const double FAR_TOO_MUCH = 1e9;

void lw_slip_ground_init(lw_slip_ground *ground) {
  *ground = (lw_slip_ground){
      .layer_x_m = INFINITY,
      .raised_x_m = INFINITY,
      .water = {.front_y_m = -INFINITY, .rear_y_m = -INFINITY, .unit_weight_kn_per_m3 = 9.81},
      .floor_y_m = -INFINITY};
}

static bool is_number(double value) {
  return fabs(value) <= FAR_TOO_MUCH; /* NAN is not */
}

static bool is_level(double y_m) {
  return y_m <= FAR_TOO_MUCH; /* -INFINITY: not there */
}

static bool is_soil(const lw_slip_soil *soil) {
  return soil->friction_rad >= 0.0 && soil->friction_rad < acos(0.0) && is_number(soil->cohesion_kpa) &&
         is_number(soil->unit_weight_kn_per_m3) && is_number(soil->saturated_unit_weight_kn_per_m3) &&
         is_number(soil->spare_kn_per_m3);
}

static bool is_water(const lw_slip_water *water) {
  return is_level(water->front_y_m) && is_level(water->rear_y_m) && is_number(water->unit_weight_kn_per_m3) &&
         !isnan(water->front_x_m) && !isnan(water->rear_x_m);
}

static bool has_room(int count, int least, int most) {
  return count >= least && count <= most;
}

static bool fits(const lw_slip_ground *ground) {
  return has_room(ground->corner_count, 2, LW_SLIP_GROUND_MAX) &&
         has_room(ground->soil_count, 0, LW_SOIL_MAX) && has_room(ground->load_count, 0, LW_SLIP_LOAD_MAX) &&
         has_room(ground->body_count, 0, LW_OUTLINE_MAX);
}

bool lw_slip_ground_holds(const lw_slip_ground *ground) {
  bool well = fits(ground) && is_soil(&ground->below) && is_water(&ground->water) &&
              ground->seismic_horizontal >= 0.0 && ground->seismic_horizontal < 1.0 &&
              is_level(ground->floor_y_m) && ground->pore_ratio >= 0.0 && ground->pore_ratio <= 1.0 &&
              is_number(ground->paired_kpa) && is_number(ground->paired_depth_m) &&
              ground->paired_depth_m >= 0.0 && is_number(ground->shallow_kpa);
  for (int i = 0; well && i < ground->corner_count; i++)
    well = is_number(ground->corner[i].x_m) && is_number(ground->corner[i].y_m) &&
           (i == 0 || ground->corner[i].x_m >= ground->corner[i - 1].x_m);
  for (int i = 0; well && i < ground->soil_count; i++)
    well = is_soil(&ground->soil[i]) && is_level(ground->soil[i].bottom_y_m);
  return well;
}

static bool is_slice(const lw_slip_slice *s) {
  const double numbers[] = {s->width_m,  s->length_m,     s->weight_kn_per_m,
                            s->pore_kpa, s->tan_friction, s->cohesion_kpa};
  for (size_t i = 0; i < sizeof numbers / sizeof *numbers; i++)
    if (!is_number(numbers[i])) return false;
  return fabs(s->sine) <= 1.0 && s->cosine >= 0.0 && s->cosine <= 1.0 && s->tan_friction >= 0.0;
}

bool lw_slip_slices_hold(const lw_slip_slices *list) {
  bool well = has_room(list->count, 1, LW_SLIP_SLICE_MAX);
  for (int i = 0; well && i < list->count; i++) well = is_slice(&list->slice[i]);
  return well;
}
