/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LATERAL_H
#define LOWWALL_LATERAL_H

#include <lowwall/pressure.h>

LW_PUBLIC_BEGIN

/* Level pushes that are no wedge of soil: of loads of limited width, of compaction, of soil between two faces
 * that stand close, and of rain that seeps to a drain. */

/* Level pressure that loads of limited width send through the soil to a plane beside them: by the theory of
 * elasticity, and by the curves measured on stiff walls. Depths count downwards from the level at which the
 * load stands, distances from the plane into the soil. Nothing is felt above the load's own level. */

/* In a half-space the soil itself stands where the wall would be, and gives way like soil. A face that cannot
 * yield doubles the pressure: it acts as if the load stood on its other side as well. */
typedef enum lw_elastic_face { LW_ELASTIC_HALF_SPACE, LW_ELASTIC_DOUBLED } lw_elastic_face;

/* A strip that runs along the wall; far may be INFINITY, near may lie in front of the plane. */
typedef struct lw_elastic_strip {
  double pressure_kpa, near_m, far_m;
} lw_elastic_strip;

/* Where a point load stands: behind the plane, and along the wall from the place in question. */
typedef struct lw_elastic_place {
  double distance_m, along_m;
} lw_elastic_place;

/** Pressure of a line load along the wall: 2Q/π x²z/(x² + z²)², doubled where the face cannot yield.
 *  in    force_kn_per_m   Q   any
 *        distance_m       x, behind the plane   m   any; 0: straight above, where nothing is level
 *        depth_m          z, below the load's level   m   any; above it the pressure is 0
 *        face             half-space or doubled
 *  gives the pressure in kPa
 *  note  1 In plane strain the value does not depend on the soil's stiffness or its Poisson's ratio.
 *  from  [BOUSSINESQ1885 line by integration]; tested by tests/handbook/loads.csv */
double lw_elastic_line_kpa(double force_kn_per_m, double distance_m, double depth_m, lw_elastic_face face);

/** Pressure of a strip load: q/π (B - sin B cos 2A), B the angle it is seen under, A that of its middle.
 *  in    strip     q, and its two edges, near < far
 *        depth_m   z, below the load's level   m   any; above it the pressure is 0
 *        face      half-space or doubled
 *  gives the pressure in kPa
 *  note  1 From the plane to the end of the world it is q/2, doubled q: elastic soil that cannot change its
 *          volume, which is more than soil at failure sends.
 *  from  [BOUSSINESQ1885 strip by integration]; tested by tests/handbook/loads.csv */
double lw_elastic_strip_kpa(const lw_elastic_strip *strip, double depth_m, lw_elastic_face face);

/** Pressure of a point load: 3Q/2π x²z/R⁵, R its distance, for soil that does not change its volume.
 *  in    force_kn   Q   any
 *        place      x behind the plane, y along it
 *        depth_m    z, below the load's level   m   any; above it the pressure is 0
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
 *  in    force_kn_per_m, depth_m   as above
 *        distance_m   x, behind the plane   m   0 or more
 *        height_m     H, of the wall below the load's level   m   > 0
 *  gives the pressure in kPa
 *  note  1 Beyond m = 0.4 it is the doubled elastic value. Below, measurements are higher near the top.
 *  from  [TERZAGHI1954 line load]; tested by tests/handbook/loads.csv */
double lw_elastic_curve_line_kpa(double force_kn_per_m, double distance_m, double depth_m, double height_m);

/** The curves for a point load: 1.77 Q/H² m²n²/(m² + n²)³ beyond m = 0.4, 0.28 Q/H² n²/(0.16 + n²)³ up to
 *  there, and beside the load times cos²(1.1 α), α the angle along the wall.
 *  in    force_kn, place, depth_m   as above; the load 0 or more behind the plane
 *        height_m   H   m   > 0
 *  gives the pressure in kPa, 0 where 1.1 α reaches a right angle
 *  from  [TERZAGHI1954 point load]; [CALTRANS-TS 5-1.04]; tested by tests/handbook/loads.csv */
double lw_elastic_curve_point_kpa(double force_kn, const lw_elastic_place *place, double depth_m,
                                  double height_m);

/* A level push per metre run, and its height above the foot. */
typedef struct lw_elastic_push {
  double push_kn_per_m, height_m;
} lw_elastic_push;

/** A strip's push over an upright plane in closed form: 2q/π H (T2 - T1) doubled, T = atan(x/H).
 *  in    strip      edges at or behind the plane
 *        height_m   H, from the load's level to the foot   m   any; 0 or less: no push
 *        face       half-space or doubled
 *  gives the push and its height above the foot
 *  from  [JARQUIO1981 closed form]; tested by tests/handbook/loads.csv and the integral */
lw_elastic_push lw_elastic_strip_push(const lw_elastic_strip *strip, double height_m, lw_elastic_face face);

/** A line load's push over an upright plane in closed form: 2Q/π H²/(x² + H²) doubled.
 *  in    force_kn_per_m   Q   any
 *        distance_m       x   m   0 or more
 *        height_m, face   as above
 *  gives the push and its height above the foot
 *  from  [BOUSSINESQ1885 line by integration]; tested by the integral */
lw_elastic_push lw_elastic_line_push(double force_kn_per_m, double distance_m, double height_m,
                                     lw_elastic_face face);

/* What the loads of a plane send to it. */
typedef struct lw_elastic {
  double push_kn_per_m, height_m;         /* all of them, level, above the plane's foot */
  lw_elastic_push load[LW_SITE_LOAD_MAX]; /* each, in the plane's order */
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

/** Level pressure of one load of a plane at a depth: what lw_elastic_push_on integrates.
 *  in    plane     its loads, slope and batter
 *        load      index   0 or more, below its load_count
 *        by        half-space, doubled or curves
 *        depth_m   below the plane's top   m   any; above the load's own level the pressure is 0
 *  gives kPa
 *  from  [BOUSSINESQ1885 line, strip and point]; [TERZAGHI1954 curves]; tested by the closed forms */
double lw_elastic_kpa_on(const lw_plane *plane, int load, lw_load_pressure by, double depth_m);

/* What compaction plant presses into the soil behind a wall, while it is built. Depths count downwards from
 * the level that was compacted last. */

/* A push on an upright stretch of wall, level, and its height of action above the foot of the stretch. */
typedef struct lw_lateral {
  double thrust_kn_per_m, height_m;
} lw_lateral;

/* Plant running right up to the wall, as a line load along it. */
typedef struct lw_compaction {
  double line_load_kn_per_m;    /* p: (weight + dynamic force)/length along the wall; 0 or more */
  double unit_weight_kn_per_m3; /* γ of the fill */
  double friction_rad;          /* φ of the fill */
  lw_earth_state state;         /* active: a wall that can yield, Ka; at rest: one that cannot, K0 */
} lw_compaction;

/* The diagram: a straight line from nothing to greatest_kpa at zc, that as far as hc, K γ z below. */
typedef struct lw_compaction_diagram {
  double coefficient;
  double unit_weight_kn_per_m3;
  double zc_m, hc_m, greatest_kpa;
} lw_compaction_diagram;

/** The pressure that compaction leaves behind.
 *  in    compaction   γ > 0, 0 < φ < π/2, active or at rest
 *  out   diagram      unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range
 *  note  1 zc = K √(2p/(π γ)), hc = (1/K) √(2p/(π γ)), σ = √(2 p γ/π).
 *        2 An upper value: a line load without end, touching the wall, and a wall that does not give way. It
 *          is what a course meets while it is built, not a thrust for ever: see docs/theory.md.
 *  from  [INGOLD-1979 29(3)]; tested by tests/handbook/earth_pressure.csv */
lw_status lw_compaction_solve(const lw_compaction *compaction, lw_compaction_diagram *diagram,
                              lw_error *error, const lw_working *working);

/** The pressure at a depth.
 *  in    depth_m   below the compacted level   m   0 or more
 *  gives kPa */
double lw_compaction_kpa(const lw_compaction_diagram *diagram, double depth_m);

/** The push on a wall from the compacted level down.
 *  in    height_m   so far   m   any; 0 or less: no push */
lw_lateral lw_compaction_thrust(const lw_compaction_diagram *diagram, double height_m,
                                const lw_working *working);

/* Plant that keeps a distance: its foot is a short line load along the wall. */
typedef struct lw_foot {
  double line_load_kn_per_m; /* p */
  double length_m;           /* along the wall; INFINITY: a line without end */
} lw_foot;

/** The push of plant at a distance on a stretch of wall that does not give way, opposite the middle of its
 *  foot: the doubled elastic stress of the line, integrated over the stretch.
 *  in    foot         p ≥ 0, length > 0
 *        distance_m   of the line from the face, > 0
 *        height_m     of the stretch, from the ground down, > 0
 *  gives the push of the plant alone: the earth's own comes on top
 *  note  1 Poisson's ratio 1/2, for which the stress does not depend on the stiffness of the soil.
 *        2 Without end: P = (2p/π) h²/(x² + h²), as the line load of the textbooks.
 *  from  [BOUSSINESQ1885 point load, integrated]; tested by the line load and by numerical integration */
lw_lateral lw_foot_thrust(const lw_foot *foot, double distance_m, double height_m, const lw_working *working);

/* Soil between two upright faces that stand close: it partly hangs on both. Published values, for a student
 * to compare: lowwall never counts them in a wall's favour. */

typedef struct lw_slot {
  double width_m;               /* B, clear between the faces; > 0 */
  double unit_weight_kn_per_m3; /* γ */
  double wall_friction_rad;     /* δ, on both faces; 0 or more */
  double surcharge_kpa;         /* q */
} lw_slot;

/** The level pressure on a face at a depth, by slices: K σv, σv = γB/(2K tan δ) [1 - exp(-2K z tan δ/B)]
 *  + q exp(-2K z tan δ/B).
 *  in    slot          as above
 *        coefficient   K, 0 < K
 *        depth_m       z, 0 or more
 *  gives kPa
 *  note  1 With smooth faces, and between faces far apart, it is K (γ z + q): nothing hangs.
 *  from  [JANSSEN1895 slices]; tested by tests/handbook/earth_pressure.csv */
double lw_slot_kpa(const lw_slot *slot, double coefficient, double depth_m);

/** The push on a face and its height above the foot, by integration of lw_slot_kpa.
 *  in    slot, coefficient   as above, wall friction below π/2
 *        height_m   m   > 0
 *  out   lateral    unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason out-of-range, or no-wedge where the integral does not
 *        complete */
lw_status lw_slot_thrust(const lw_slot *slot, double coefficient, double height_m, lw_lateral *lateral,
                         lw_error *error, const lw_working *working);

/** The ratio of level to upright stress beside a rough face that yields:
 *  K = [(s+1) - √((s+1)² - (1-s)(4 tan²δ - s + 1))]/(4 tan²δ - s + 1), s = sin²φ.
 *  in    friction_rad, wall_friction_rad   0 < φ < π/2, 0 ≤ δ ≤ φ
 *  out   k                                 unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range
 *  note  1 δ = 0 gives Ka, δ = φ gives (1 - s)/(1 + s).
 *  from  [FRYDMAN1987 stress at a rough face]; tested by its two limits */
lw_status lw_frydman_keissar_coefficient(double friction_rad, double wall_friction_rad, double *k,
                                         lw_error *error, const lw_working *working);

/** Handy's coefficient of an arch between rough faces: Kw = 1.06 (cos²T + Ka sin²T), T = 45° + φ/2.
 *  in    friction_rad   0 < φ < π/2
 *  out   k              unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range
 *  from  [HANDY1985 the arch in soil arching] */
lw_status lw_handy_coefficient(double friction_rad, double *k, lw_error *error, const lw_working *working);

/* Steady rain that seeps through the soil to a working drain on an upright back: the push lies between that
 * of drained soil and that of soil full of standing water. */

/* Level pushes on one plane, soil, load and water together; each coefficient is the push over the moist
 * weight and load above the plane's foot, gamma H^2/2 + q H. */
typedef struct lw_seepage {
  double dry_kn_per_m, seeping_kn_per_m, blocked_kn_per_m;
  double dry_k, seeping_k, blocked_k;
  double plane_angle_rad;     /* of the critical plane while it seeps, from the horizontal */
  double pore_force_kn_per_m; /* of the seeping water on that plane */
} lw_seepage;

/** Dry, seeping and blocked push on an upright plane, by Coulomb's wedge on saturated soil with the pore
 *  force on its plane.
 *  in    plane     upright, one soil without cohesion, level ground, uniform load only
 *  out   seepage   unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason no-seepage-form where the plane is another, or that of the
 *        coefficient
 *  note  1 P = (W sin(a - φ) + U sin φ)/cos(a - φ - δ), greatest over the angle a; its level part is taken.
 *        2 Blocked: water up to the ground, whatever plane->water_depth_m says; dry: none.
 *        3 The drain is taken as perfect over its whole height, and the rain as keeping the ground full.
 *  from  [GRAY1958 vertical drain], [BARROS2006 pore pressure], derived here; tested by
 *        tests/pressure/seepage.c */
lw_status lw_seepage_thrust(const lw_plane *plane, lw_seepage *seepage, lw_error *error,
                            const lw_working *working);

LW_PUBLIC_END

#endif
