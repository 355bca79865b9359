/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <math.h>

lw_plane pressure_plane(double friction_deg) {
  lw_plane plane = {.height_m = 2.385,
                    .slope_run_m = INFINITY,
                    .layer_count = 1,
                    .water_depth_m = INFINITY,
                    .water_unit_weight_kn_per_m3 = 9.81};
  plane.layer[0] = (lw_layer){.bottom_m = INFINITY,
                              .friction_rad = RAD(friction_deg),
                              .unit_weight_kn_per_m3 = 18.3,
                              .saturated_unit_weight_kn_per_m3 = 20.7};
  return plane;
}

static void hear_heading(void *context, const char *title) {
  heard *h = context;
  h->headings++;
  h->incomplete += title == NULL || title[0] == '\0';
}

static void hear_step(void *context, const lw_step *step) {
  heard *h = context;
  h->steps++;
  h->incomplete += step->symbol == NULL || step->formula == NULL || step->inserted == NULL ||
                   step->unit == NULL || step->source == NULL || !isfinite(step->value);
}

lw_working pressure_listener(heard *h) {
  return (lw_working){.context = h, .heading = hear_heading, .step = hear_step};
}
