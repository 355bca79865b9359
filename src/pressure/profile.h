/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_PROFILE_H
#define LOWWALL_PRESSURE_PROFILE_H

#include <lowwall/pressure.h>

/* How the vertical stress of each layer becomes pressure: p = k σ − cut. A layer with a curved law (cohesion
 * under sloping ground) gives p itself, and k and cut only serve for its surcharge. */
typedef struct lw_law {
  double k[LW_SOIL_MAX];
  double cut_kpa[LW_SOIL_MAX]; /* taken off for cohesion; negative where it adds (passive) */
  bool wet_differs;            /* below water k_wet stands for k: an earthquake turns the weight further */
  double k_wet[LW_SOIL_MAX];
  double surcharge_factor; /* of a load per horizontal area on this plane */
  double (*curved)(const lw_layer *layer, double slope_rad, double stress_kpa);
  const char *symbol; /* of the sum alone, in the working; NULL: P, with its height and parts */
  /* Where the diagram is written to; NULL: nowhere. A curved law writes its pressure at one stress. */
  const lw_working *working;
  void (*tell_curved)(const char *symbol, const lw_layer *layer, double slope_rad, double stress_kpa,
                      const lw_working *working);
} lw_law;

/* Integrate the law down the plane: profile, thrust in a direction, its height, its surcharge part, water,
 * crack. Coefficient is that of the lowest layer met. Of a plane that lw_plane_hold holds. */
void lw_profile_integrate(const lw_plane *plane, const lw_law *law, double angle_rad, lw_thrust *thrust);

/* True when all that weighs on a failure plane keeps its share whatever the plane's angle, so that the
 * critical angle depends on nothing but angles: plain planes, and level ground with water at any depth, which
 * cuts a similar figure off the wedge. */
bool lw_plane_is_one_figure(const lw_plane *plane);

/* Whether a formula may be asked about the plane: its numbers are numbers, its layers in order and the last
 * as deep as the plane, its counts within their lists, its soil weighs something, its angles are angles.
 * gives LW_OK · LW_NO_SOLUTION with the reason out-of-range or angle-out-of-range */
lw_status lw_plane_hold(const lw_plane *plane, lw_error *error);

/* Index of the layer at a depth, the lower one on a boundary. */
int lw_layer_at(const lw_plane *plane, double depth_m);

/* Unit weight of a layer: moist, or buoyant below the water. */
double lw_layer_weight(const lw_plane *plane, int layer, bool wet);

/* Unit weight that an earthquake moves: below water the saturated one, or the moist one where the water moves
 * by itself. */
double lw_layer_moved(const lw_plane *plane, int layer, bool wet);

/* The angle ψ by which an earthquake turns the weight of a layer. */
double lw_layer_turned(const lw_plane *plane, int layer, bool wet);

/* Water behind the plane, and in the crack of thrust->crack_depth_m if cracks may fill: its force, height,
 * and its pressure in the profile. */
void lw_thrust_add_water(const lw_plane *plane, lw_thrust *thrust);

/* Resolve thrust->total along thrust->angle. */
void lw_thrust_resolve(lw_thrust *thrust);

#endif
