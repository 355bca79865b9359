/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ELASTIC_H
#define LOWWALL_ELASTIC_H

#include <lowwall/pressure.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Level pressure that loads of limited width send through the soil to a plane beside them: by the theory of
 * elasticity, and by the curves measured on stiff walls. Depths count downwards from the level at which the
 * load stands, distances from the plane into the soil. Nothing is felt above the load's own level. */

/* In a half-space the soil itself stands where the wall would be, and gives way like soil. A face that cannot
 * yield doubles the pressure: it acts as if the load stood on its other side as well. */
typedef enum lw_elastic_face { LW_ELASTIC_HALF_SPACE, LW_ELASTIC_DOUBLED } lw_elastic_face;

/* A strip that runs along the wall; far may be INFINITY, near may lie in front of the plane. */
typedef struct lw_elastic_strip { double pressure_kpa, near_m, far_m; } lw_elastic_strip;

/* Where a point load stands: behind the plane, and along the wall from the place in question. */
typedef struct lw_elastic_place { double distance_m, along_m; } lw_elastic_place;

/** Pressure of a line load along the wall: 2Q/π x²z/(x² + z²)², doubled where the face cannot yield.
 *  in    force_kn_per_m   Q
 *        distance_m       x, behind the plane; 0: straight above, where nothing is level   m
 *        depth_m          z, below the load's level; above it the pressure is 0           m
 *        face             half-space or doubled
 *  gives the pressure in kPa
 *  note  1 In plane strain the value does not depend on the soil's stiffness or its Poisson's ratio.
 *  from  [BOUSSINESQ1885 line by integration]; tested by tests/handbook/loads.csv */
double lw_elastic_line_kpa(double force_kn_per_m, double distance_m, double depth_m, lw_elastic_face face);

/** Pressure of a strip load: q/π (B - sin B cos 2A), B the angle it is seen under, A that of its middle.
 *  in    strip     q, and its two edges, near < far
 *        depth_m   z, below the load's level   m
 *        face      half-space or doubled
 *  gives the pressure in kPa
 *  note  1 From the plane to the end of the world it is q/2, doubled q: elastic soil that cannot change its
 *          volume, which is more than soil at failure sends.
 *  from  [BOUSSINESQ1885 strip by integration]; tested by tests/handbook/loads.csv */
double lw_elastic_strip_kpa(const lw_elastic_strip *strip, double depth_m, lw_elastic_face face);

/** Pressure of a point load: 3Q/2π x²z/R⁵, R its distance, for soil that does not change its volume.
 *  in    force_kn   Q
 *        place      x behind the plane, y along it
 *        depth_m    z, below the load's level   m
 *        face       half-space or doubled
 *  gives the pressure in kPa
 *  note  1 With a lesser Poisson's ratio it is less. Summed along the wall it is the line load.
 *  from  [BOUSSINESQ1885 point load]; tested by its limits */
double lw_elastic_point_kpa(double force_kn, const lw_elastic_place *place, double depth_m,
                            lw_elastic_face face);

/** The same, averaged over the metre of wall in front of the load: what a metre run of wall feels.
 *  in    force_kn, distance_m, depth_m, face   as above
 *  gives the mean pressure in kPa
 *  from  [BOUSSINESQ1885 point load] integrated; tested against lw_elastic_point_kpa */
double lw_elastic_point_mean_kpa(double force_kn, double distance_m, double depth_m, lw_elastic_face face);

/** The curves for a line load on a stiff wall of a height: with m = x/H, n = z/H
 *  1.28 Q/H m²n/(m² + n²)² beyond m = 0.4, and 0.203 Q/H n/(0.16 + n²)² up to there.
 *  in    force_kn_per_m, distance_m, depth_m   as above
 *        height_m                              H, of the wall below the load's level   m   > 0
 *  gives the pressure in kPa
 *  note  1 Beyond m = 0.4 it is the doubled elastic value. Below, measurements are higher near the top.
 *  from  [TERZAGHI1954 line load]; tested by tests/handbook/loads.csv */
double lw_elastic_curve_line_kpa(double force_kn_per_m, double distance_m, double depth_m, double height_m);

/** The curves for a point load: 1.77 Q/H² m²n²/(m² + n²)³ beyond m = 0.4, 0.28 Q/H² n²/(0.16 + n²)³ up to
 *  there, and beside the load times cos²(1.1 α), α the angle along the wall.
 *  in    force_kn, place, depth_m, height_m   as above; height > 0
 *  gives the pressure in kPa, 0 where 1.1 α reaches a right angle
 *  from  [TERZAGHI1954 point load]; [CALTRANS-TS 5-1.04]; tested by tests/handbook/loads.csv */
double lw_elastic_curve_point_kpa(double force_kn, const lw_elastic_place *place, double depth_m,
                                  double height_m);

/* A level push per metre run, and its height above the foot. */
typedef struct lw_elastic_push { double push_kn_per_m, height_m; } lw_elastic_push;

/** A strip's push over an upright plane in closed form: 2q/π H (T2 - T1) doubled, T = atan(x/H).
 *  in    strip      edges at or behind the plane
 *        height_m   H, from the load's level to the foot   m
 *        face       half-space or doubled
 *  gives the push and its height above the foot
 *  from  [JARQUIO1981 closed form]; tested by tests/handbook/loads.csv and the integral */
lw_elastic_push lw_elastic_strip_push(const lw_elastic_strip *strip, double height_m, lw_elastic_face face);

/** A line load's push over an upright plane in closed form: 2Q/π H²/(x² + H²) doubled.
 *  in    force_kn_per_m, distance_m, height_m, face   as above
 *  gives the push and its height above the foot
 *  from  [BOUSSINESQ1885 line by integration]; tested by the integral */
lw_elastic_push lw_elastic_line_push(double force_kn_per_m, double distance_m, double height_m,
                                     lw_elastic_face face);

/* What the loads of a plane send to it. */
typedef struct lw_elastic {
  double push_kn_per_m, height_m;     /* all of them, level, above the plane's foot */
  lw_elastic_push load[LW_SITE_LOAD_MAX];  /* each, in the plane's order */
} lw_elastic;

/** Level push of all loads of limited width on a plane: pressure integrated from each load's own level down.
 *  in    plane   its loads; on sloping ground each stands at the height of the ground below its near edge
 *        by      half-space, doubled or curves
 *  gives the push of each, their sum and its height above the foot
 *  note  1 On a leaning plane the level pressure is taken at the plane's own points; what the load adds there
 *          in shear is left out.
 *        2 A load nearer than a millimetre counts as a millimetre away: its push then sits at its level.
 *        3 The curves know no strip: it is taken as elastic and doubled, as their manuals do.
 *  from  [BOUSSINESQ1885 line, strip and point]; [TERZAGHI1954 curves]; tested by the closed forms */
lw_elastic lw_elastic_push_on(const lw_plane *plane, lw_load_pressure by);

/** As long as its level push is along a thrust of that direction.
 *  in    angle_rad   of the thrust, from the horizontal   rad   any; at a right angle it is held to 1e-9
 *  gives kN/m */
double lw_elastic_along(const lw_elastic *elastic, double angle_rad);

/** Record the push of each load and their sum. */
void lw_elastic_record(const lw_plane *plane, lw_load_pressure by, const lw_elastic *push,
                       const lw_working *working);

#ifdef __cplusplus
}
#endif
#endif
