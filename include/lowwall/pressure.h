/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_H
#define LOWWALL_PRESSURE_H

#include <lowwall/wall.h>

LW_PUBLIC_BEGIN

/* Earth pressure on a plane: by formulas, by trial wedges, along curves, in an earthquake. Signs:
 * θ (batter) is the angle of the back from the vertical, positive when soil lies on it; δ (wall friction)
 * turns an active thrust downwards on the wall and a passive one upwards; β is the ground's slope, positive
 * rising away from the wall. */

typedef enum lw_earth_state { LW_ACTIVE, LW_PASSIVE, LW_AT_REST } lw_earth_state;

/* One homogeneous soil against a plane. */
typedef struct lw_wall_angles {
  double friction_rad, wall_friction_rad, batter_rad, slope_rad;
} lw_wall_angles;

typedef struct lw_layer {
  double bottom_m; /* below the plane's top, below 0 where ground rises; the last: INFINITY */
  double friction_rad, cohesion_kpa;
  double unit_weight_kn_per_m3, saturated_unit_weight_kn_per_m3;
  double overconsolidation; /* the greatest stress there ever was over today's; 0 counts as 1 */
} lw_layer;

/* A load of limited width on the ground or below it: pressure between near and far, or a line load with
 * near == far; a point load is a line load of its whole force on one metre. A push is level, positive towards
 * the wall, and whole as soon as a body of soil holds the near edge. */
typedef struct lw_plane_load {
  double near_m, far_m, pressure_kpa, force_kn_per_m;
  double below_m; /* of the ground's level at its near edge; 0: on the ground */
  bool point;
  double push_kn_per_m;
} lw_plane_load;

/* A plane that soil pushes on, and what it meets from its top down. */
typedef struct lw_plane {
  double height_m; /* vertical */
  double batter_rad;
  double wall_friction_rad;      /* direction of the thrust: δ from the normal */
  double slope_rad, slope_run_m; /* from the plane's top; level beyond the run (INFINITY: never) */
  double surcharge_kpa;          /* per horizontal area */
  double water_depth_m;          /* below the plane's top; INFINITY: none. Level. */
  double water_unit_weight_kn_per_m3;
  lw_crack crack;
  lw_overconsolidation overconsolidation; /* how it raises the pressure at rest */
  bool along_ground;  /* Rankine: the thrust lies along the ground, wall_friction_rad that angle */
  double coefficient; /* as given, for every layer and the whole thrust; 0: none is */
  lw_seismic seismic; /* all 0: no earthquake */
  int layer_count, load_count;
  lw_layer layer[LW_SOIL_MAX]; /* what lies past a count means nothing, here and below */
  lw_plane_load load[LW_SITE_LOAD_MAX];
} lw_plane;

/** A plane to fill in: upright and smooth, level ground without end, no load, no water, one layer without end
 *  that still wants its friction and weight. In a plane of zeros water would stand up to its top, on a ground
 *  that bends at once, and its layer would end there. */
void lw_plane_init(lw_plane *plane);

enum { LW_PROFILE_MAX = 6 * (LW_SOIL_MAX + 1) };

/* Pressure of the soil (with its surcharge) and of the water at a depth. Points come in pairs, top and bottom
 * of a stretch: two at one depth where the pressure jumps. In a crack only water pushes. */
typedef struct lw_profile_point {
  double depth_m, soil_kpa, surcharge_kpa, water_kpa;
} lw_profile_point;

/* A thrust per metre run. Soil pressure is along the thrust's own direction, per metre of vertical depth. */
typedef struct lw_thrust {
  double total_kn_per_m; /* soil and surcharge, without water */
  double angle_rad;      /* to the horizontal, positive: it presses the wall down */
  double horizontal_kn_per_m, vertical_kn_per_m;
  double height_of_action_m;                     /* above the plane's foot */
  double surcharge_kn_per_m, surcharge_height_m; /* what of it the uniform load adds */
  double seismic_kn_per_m, seismic_height_m;     /* what an earthquake adds; below 0 when passive */
  double seismic_coefficient; /* Mononobe and Okabe's, lowest layer, static part included; else 0 */
  double seismic_turn_rad;    /* the angle ψ there */
  double water_kn_per_m, water_height_m; /* horizontal, on the plane's height */
  double coefficient;                    /* of the lowest layer */
  double crack_depth_m;                  /* 0: none */
  bool passive_unsafe;                   /* Coulomb's plane-wedge passive value with δ > φ/3 */
  int profile_count;
  lw_profile_point profile[LW_PROFILE_MAX];
} lw_thrust;

typedef struct lw_trial_wedge {
  double thrust_kn_per_m;    /* along the same direction as the formula's; without water */
  double plane_angle_rad;    /* of the failure plane, from the horizontal */
  double weight_kn_per_m;    /* of the critical wedge, with the loads on it */
  double reach_m;            /* where it, or the crack at its end, meets the ground behind the top */
  double crack_depth_m;      /* of that crack below the ground; 0: none */
  double height_of_action_m; /* line through the wedge's centroid parallel to the failure plane */
} lw_trial_wedge;

/** Rankine's coefficient: thrust along the ground on a vertical plane, K γ H²/2.
 *  in    state          active or passive
 *        friction_rad   angle of shearing resistance, φ   rad   0 ≤ φ < π/2
 *        slope_rad      of the ground, β                  rad   |β| ≤ φ
 *  out   k              of the whole thrust, not of its horizontal part; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range or steeper-than-friction
 *  note  1 The passive value falls as the ground rises: do not use it on a slope.
 *  from  [RANKINE1857 level and sloping ground]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_rankine_coefficient(lw_earth_state state, double friction_rad, double slope_rad, double *k,
                                 lw_error *error);

/** Rankine's active stresses on a battered back: coefficient and direction, which is a result.
 *  in    friction_rad    φ   rad   0 < φ < π/2
 *        slope_rad       β   rad   |β| ≤ φ
 *        batter_rad      θ   rad   |θ| < π/2
 *  out   k               K γ H²/2 for the whole thrust; unchanged on failure
 *        obliquity_rad   of the thrust from the normal of the back, downwards; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range or steeper-than-friction
 *  note  1 It holds only where the obliquity does not exceed the friction that the back can offer.
 *  from  [CHU1991 stresses]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_rankine_battered(double friction_rad, double slope_rad, double batter_rad, double *k,
                              double *obliquity_rad, lw_error *error);

/** Coulomb's coefficient: plane wedge with friction on a back of any batter, K γ H²/2 for the whole thrust.
 *  in    state    active or passive
 *        angles   φ (0 ≤ φ < π/2), δ, θ and β, with the signs at the head of this file
 *  out   k        unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason steeper-than-friction (active β > φ, passive β < -φ),
 *        angle-out-of-range, or no-wedge where no plane resists
 *  note  1 δ + θ may be below 0 on an overhanging back: the thrust then lifts.
 *        2 The passive value is unsafe where δ > φ/3: real soil fails along a curve.
 *  from  [COULOMB1776 general form]; tested by tests/handbook/earth_pressure.csv and trial wedges */
lw_status lw_coulomb_coefficient(lw_earth_state state, const lw_wall_angles *angles, double *k,
                                 lw_error *error);

/** Coefficient at rest, along the ground: (1 - sin φ)(1 + sin β).
 *  in    friction_rad   φ   rad   0 ≤ φ < π/2
 *        slope_rad      β   rad   |β| ≤ φ
 *  out   k              unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range or steeper-than-friction
 *  note  1 For soil that was never loaded more heavily than now: see lw_at_rest_overconsolidated.
 *  from  [JAKY1944 coefficient]; [EN1997-1 9.5.2]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_at_rest_coefficient(double friction_rad, double slope_rad, double *k, lw_error *error);

/** The same of ground once loaded more heavily: times OCR^sin φ or OCR^0.5, at most Rankine's level Kp.
 *  in    rule           which of the two
 *        friction_rad   φ     rad   0 ≤ φ < π/2
 *        slope_rad      β     rad   |β| ≤ φ
 *        ratio          OCR   1     1 or more
 *  out   k              unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range (a ratio below 1 as well) or
 *        steeper-than-friction
 *  note  1 The power sin φ asks for more than 0.5 from φ = 30° on.
 *  from  [MAYNE-KULHAWY1982 unloading]; [EN1997-1 9.5.2]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_at_rest_overconsolidated(lw_overconsolidation rule, double friction_rad, double slope_rad,
                                      double ratio, double *k, lw_error *error);

/** Rankine's pressure at a point of a vertical plane, along the ground, in soil with or without cohesion.
 *  in    layer          friction and cohesion of the soil at the point
 *        slope_rad      of the ground, |slope| ≤ φ
 *        stress_kpa     weight of soil and load above the point, per horizontal area: γ z + q, 0 or more
 *  out   pressure_kpa   per metre of vertical depth; below 0 it is tension, which soil cannot keep up
 *                       (lw_rankine_thrust drops it as a crack); unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION, as lw_rankine_coefficient; with the reason out-of-range where stress or
 *        cohesion is below 0
 *  note  1 Under sloping ground the coefficient depends on c/(γ z), so the diagram is curved.
 *  from  [MG1997 eq.18]; tested by [MG1997 table] */
lw_status lw_rankine_pressure(lw_earth_state state, const lw_layer *layer, double slope_rad,
                              double stress_kpa, double *pressure_kpa, lw_error *error);

/** Thrust on a plane by a closed formula, as profile and as sum.
 *  in    state     active or passive; at rest knows only itself
 *        plane     height > 0, 1 to LW_SOIL_MAX layers
 *  out   thrust    unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason of the coefficient, for any of the layers
 *  note  1 Each layer has its own K, on the effective vertical stress: buoyant weight below the water, which
 *          pushes by itself. So has its cohesion: K σ - 2c√K, also for Coulomb (no adhesion on the back).
 *        2 Where that is below 0 the soil is cracked and does not push. A wet crack is full up to the ground.
 *        3 Rankine and at rest: the thrust lies along the ground. Cohesion on a slope: lw_rankine_pressure.
 *        4 Ground slopes on for ever here, whatever slope_run_m says, and loads of limited width do not push:
 *          the wedge takes them in.
 *  from  [RANKINE1857 level and sloping ground]; [COULOMB1776 general form]; [JAKY1944 coefficient];
 *        tested by tests/handbook/earth_pressure.csv */
lw_status lw_rankine_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working);
lw_status lw_coulomb_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working);
lw_status lw_at_rest_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working);

/** The greatest active (least passive) thrust of all plane wedges through the plane's foot, by equilibrium;
 *  layers, cohesion, broken ground, water (buoyant below it) and loads of limited width included.
 *  in    state     active or passive
 *        plane     height > 0, 1 to LW_SOIL_MAX layers
 *  out   wedge     unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason no-wedge-at-rest, steeper-than-friction, no-seismic-wedge or
 *        no-wedge
 *  note  1 It knows nothing of the closed formulas; where lw_plane_is_plain, they agree to 1e-6.
 *        2 Friction along the plane is that of the layers, weighted by the columns of soil and uniform load
 *          that stand on each stretch.
 *        3 Active soil with cohesion cracks, from the ground down, where its last column would only pull. On
 *          a smooth upright wall that is Rankine's crack. A layer without cohesion keeps no crack open.
 *        4 Layers are level. Ground that rises above the plane's top is of the soil that has its level there,
 *          the first as far as it goes, and above the water.
 *        5 An earthquake moves the body and the loads on it: level, towards the wall when active and away
 *          from it when passive; below water with its saturated weight, or its moist weight where pervious.
 *        6 The part of the thrust that a load's push makes acts where a line through the load, parallel to
 *          the failure plane, meets the back.
 *  from  [COULOMB1776 trial wedge]; tested by tests/handbook/earth_pressure.csv and the closed formulas */
lw_status lw_trial_wedge_thrust(lw_earth_state state, const lw_plane *plane, lw_trial_wedge *wedge,
                                lw_error *error, const lw_working *working);

/** The wedge as a method of its own: thrust, direction and height of action as a lw_thrust, without profile.
 *  in    state, plane   as lw_trial_wedge_thrust
 *  out   thrust         unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION, as lw_trial_wedge_thrust
 *  note  1 It acts where a line through the wedge's centroid, parallel to the failure plane, meets the back:
 *          a usual rule, not a result.
 *        2 Water in a crack pushes on the wall, as it does with Rankine.
 *  from  [COULOMB1776 trial wedge]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_trial_wedge_as_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust,
                                   lw_error *error, const lw_working *working);

typedef struct lw_pressure_routine {
  const char *slug; /* rankine · coulomb · wedge · at rest */
  const char *title;
  const char *source;
  lw_status (*thrust)(lw_earth_state, const lw_plane *, lw_thrust *, lw_error *, const lw_working *);
} lw_pressure_routine;

/** The routine of a method; the list in the order of lw_pressure_method. */
const lw_pressure_routine *lw_pressure_routine_of(lw_pressure_method method);

/** Where a method's formula is from: at rest another one for a slope than for level ground.
 *  in    slope_rad   of the ground   rad   any */
const char *lw_pressure_source(lw_pressure_method method, double slope_rad);

/** True when formula and wedge must agree: one cohesionless soil, straight ground well below its friction
 *  angle, uniform load, no water surface within the height or below ground that rises from it, no uniform
 *  load on wet ground in an earthquake. */
bool lw_plane_is_plain(const lw_plane *plane);

/* Why formula and wedge may differ on a plane. */
typedef enum lw_difference {
  LW_DIFFER_NOT, /* they must agree */
  LW_DIFFER_COHESION,
  LW_DIFFER_LAYERS,
  LW_DIFFER_LOADS,
  LW_DIFFER_WET_SLOPE,   /* ground that rises from water within the height */
  LW_DIFFER_BROKEN,      /* a slope that ends */
  LW_DIFFER_WATER,       /* within the height */
  LW_DIFFER_SHAKEN_LOAD, /* on wet ground in an earthquake */
  LW_DIFFER_STEEP,       /* nearly the friction angle */
  LW_DIFFER_CURVE        /* the formula's surface is a curve, on a plane where others must agree */
} lw_difference;

/* The plane that a section offers to a site, and where it stands. */
typedef struct lw_back_plane {
  double lean;                   /* tan θ of the plane */
  double foot_x_m, foot_y_m;     /* of the plane's foot, in the section's axes */
  double top_x_m, top_y_m;       /* where it meets the ground */
  double ground_x_m, ground_y_m; /* where the ground behind starts at the wall */
  bool overhangs;                /* θ < 0: Rankine's downward part does not reach the wall */
  lw_plane plane;
} lw_back_plane;

/* Passive resistance, and active thrust, where soil fails along a curve, as it does on a rough wall. δ
 * turns the passive thrust upwards on the wall. Coefficients are of the whole inclined thrust, K γ H²/2. */

/** Coefficient by a logarithmic spiral through the foot: moments about its pole, least (active: greatest)
 *  over its two angles and over plane wedges, with the thrust at a third of the height.
 *  in    state    active or passive
 *        angles   φ (0 ≤ φ < π/2), δ, θ and β
 *  out   k        unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reasons of lw_coulomb_coefficient, or no-wedge
 *  note  1 An upper bound, up to 2 % above better ones for δ ≤ φ/2 and 3 to 10 % at δ = φ: keep a margin.
 *        2 Never above the plane wedge; equal to it with δ = θ = β = 0.
 *  from  [TERZAGHI-1943 spiral]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_log_spiral_coefficient(lw_earth_state state, const lw_wall_angles *angles, double *k,
                                    lw_error *error, const lw_working *working);

/* Closed form of EN 1997-1 annex C.2: coefficients of pressure normal to the back. */
typedef struct lw_annex_c {
  double kg, kq, kc; /* of weight (γ times the depth along the back), of a vertical load, of cohesion */
  double kn;         /* of a load normal to the ground */
  double k;          /* kg as the whole inclined thrust on vertical height */
  double ground_rad, wall_rad, fan_rad; /* the annex's mt, mw and ν */
} lw_annex_c;

/** The numerical procedure of EN 1997-1 annex C.2.
 *  in    state    active or passive
 *        angles   φ (0 < φ < π/2), |δ| ≤ φ, |β| ≤ φ, θ
 *  out   annex    unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range or steeper-than-friction
 *  note  1 Fields of stress that the soil can bear: passive on the low side, and so the cautious one.
 *        2 For an upright wall and level ground the passive one is lw_lancellotta_coefficient.
 *        3 Active on an upright wall it is never below Coulomb's. On one that soil lies on it may be,
 *          by up to 0.3 %, where the fan's angle is negative: set the plane wedge beside it.
 *  from  [EN1997-1 annex C.2]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_annex_c_coefficients(lw_earth_state state, const lw_wall_angles *angles, lw_annex_c *annex,
                                  lw_error *error, const lw_working *working);

/** Lancellotta's passive coefficient, normal part, upright wall and level ground.
 *  in    friction_rad        φ   rad   0 < φ < π/2
 *        wall_friction_rad   δ   rad   0 ≤ δ ≤ φ
 *  out   k                   of the part normal to the wall; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range
 *  from  [LANCELLOTTA2002 closed form]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_lancellotta_coefficient(double friction_rad, double wall_friction_rad, double *k,
                                     lw_error *error);

/** The fit of UFC 3-220-20 to log-spiral values, upright wall and level ground.
 *  in    friction_rad, wall_friction_rad   as lw_lancellotta_coefficient
 *  out   k   of the whole inclined thrust; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range
 *  from  [UFC-3-220-20 eq.4-12]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_ufc_passive_coefficient(double friction_rad, double wall_friction_rad, double *k,
                                     lw_error *error);

/** Thrust on a plane by one of these, as lw_coulomb_thrust; cohesion adds 2c√K (annex C: its own Kc).
 *  in    state    active or passive
 *        plane    without an earthquake: curved surfaces in one are not computed here
 *  out   thrust   unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason of the coefficient, for any of the layers; no-wedge in an
 *        earthquake
 *  from  [TERZAGHI-1943 spiral]; [EN1997-1 annex C.2] */
lw_status lw_log_spiral_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust,
                               lw_error *error, const lw_working *working);
lw_status lw_annex_c_thrust(lw_earth_state state, const lw_plane *plane, lw_thrust *thrust, lw_error *error,
                            const lw_working *working);

/** The routine of `method passive by`; NULL for the method's own.
 *  in    by
 *  gives its descriptor */
const lw_pressure_routine *lw_passive_routine_of(lw_passive_by by);

/** The routine of the active thrust: that of the method, or beside Coulomb the one of `method active by`.
 *  in    method, by
 *  gives its descriptor */
const lw_pressure_routine *lw_active_routine_of(lw_pressure_method method, lw_active_by by);

/* Earth pressure in an earthquake, as a steady push. ψ is the angle by which the earthquake turns the weight
 * of the soil, tan ψ = kh/(1 - kv) for dry soil. */

/** Mononobe and Okabe's coefficient: Coulomb's wedge in a weight turned by ψ; thrust K (1 - kv) γ H²/2.
 *  in    state      active or passive
 *        angles     φ (0 ≤ φ < π/2), δ, θ and β
 *        turn_rad   ψ   rad   0 ≤ ψ < π/2
 *  out   k          of the whole thrust, with the static part in it; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason no-seismic-wedge (active φ - β < ψ, passive φ + β < ψ) or
 *        those of lw_coulomb_coefficient
 *  note  1 With ψ = 0 it is lw_coulomb_coefficient, to the last bit.
 *        2 Plane wedges: the passive value is unsafe with a rough wall; use δ = 0, as EN 1998-5 does.
 *        3 EN 1998-5 drops the root where β + ψ > φ and goes on; here there is no answer then.
 *  from  [MONONOBE-OKABE formula]; tested by tests/handbook/earth_pressure.csv and the
 *        trial wedges */
lw_status lw_mononobe_okabe_coefficient(lw_earth_state state, const lw_wall_angles *angles, double turn_rad,
                                        double *k, lw_error *error);

/** Push or suction of open water, level, on an upright face in an earthquake: 7/12 kh γw h², at 0.4 h.
 *  in    horizontal                    kh   1   any: with its sign the push has it
 *        water_unit_weight_kn_per_m3   γw   0 or more
 *        depth_m                       h, of the water   m   0 or more
 *  gives kN/m
 *  note  On the soil side it adds to the water's push; in front it takes away from what holds.
 *  from  [WESTERGAARD1933 parabola]; [EN1998-5 annex E] */
double lw_westergaard_kn_per_m(double horizontal, double water_unit_weight_kn_per_m3, double depth_m);

/** Seed and Whitman's estimate of what an earthquake adds to the active coefficient: 0.75 kh.
 *  in    horizontal   kh   1   any
 *  note  For φ about 35°, δ about φ/2, an upright back, level ground and kh < 0.4: a check of the order.
 *  from  [SEED-WHITMAN1970 estimate]; tested by tests/handbook/earth_pressure.csv */
double lw_seed_whitman_increment(double horizontal);

LW_PUBLIC_END

#endif
