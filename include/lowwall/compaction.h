/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_COMPACTION_H
#define LOWWALL_COMPACTION_H

#include <lowwall/pressure.h>

#ifdef __cplusplus
extern "C" {
#endif

/* What compaction plant presses into the soil behind a wall, while it is built. Depths count downwards from
 * the level that was compacted last. */

/* A push on an upright stretch of wall, level, and its height of action above the foot of the stretch. */
typedef struct lw_lateral { double thrust_kn_per_m, height_m; } lw_lateral;

/* Plant running right up to the wall, as a line load along it. */
typedef struct lw_compaction {
  double line_load_kn_per_m;      /* p: (weight + dynamic force)/length along the wall; 0 or more */
  double unit_weight_kn_per_m3;   /* γ of the fill */
  double friction_rad;            /* φ of the fill */
  lw_earth_state state;           /* active: a wall that can yield, Ka; at rest: one that cannot, K0 */
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

/** The pressure at a depth, kPa. */
double lw_compaction_kpa(const lw_compaction_diagram *diagram, double depth_m);

/** The push on a wall from the compacted level down to height_m below it. */
lw_lateral lw_compaction_thrust(const lw_compaction_diagram *diagram, double height_m,
                                const lw_working *working);

/* Plant that keeps a distance: its foot is a short line load along the wall. */
typedef struct lw_foot {
  double line_load_kn_per_m;   /* p */
  double length_m;             /* along the wall; INFINITY: a line without end */
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
lw_lateral lw_foot_thrust(const lw_foot *foot, double distance_m, double height_m,
                          const lw_working *working);

#ifdef __cplusplus
}
#endif
#endif
