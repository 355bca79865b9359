/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BEARING_H
#define LOWWALL_BEARING_H

#include <lowwall/site.h>

#ifdef __cplusplus
extern "C" {
#endif

/* A strip footing under an eccentric, inclined load. */
typedef struct lw_strip {
  double width_m, eccentricity_m;      /* e from the middle; its sign does not matter */
  double depth_m;                      /* of the footing below the ground in front */
  double overburden_kpa;               /* effective, at its level */
  double friction_rad, cohesion_kpa;
  double unit_weight_kn_per_m3;        /* effective, below the footing */
  double vertical_kn_per_m, horizontal_kn_per_m;
  lw_n_gamma n_gamma;                  /* own: the method's own */
  lw_own_or_none depth_factors, inclination_factors;
} lw_strip;

typedef struct lw_bearing {
  double nc, nq, n_gamma;
  double dc, dq, d_gamma;              /* depth factors, 1 when none */
  double ic, iq, i_gamma;              /* inclination factors, 1 when none */
  double effective_width_m;            /* B - 2e */
  double ultimate_kpa;                 /* gross, on the effective width */
  double net_kpa;                      /* ultimate less the overburden */
} lw_bearing;

typedef lw_status (*lw_bearing_function)(const lw_strip *, lw_bearing *, lw_error *, const lw_working *);

typedef struct lw_bearing_routine {
  const char *slug;      /* terzaghi · meyerhof · hansen · vesic · en1997 */
  const char *title;
  const char *source;
  lw_bearing_function ultimate;
} lw_bearing_routine;

/** The routine of a method, NULL for presumptive values, which are no theory. */
const lw_bearing_routine *lw_bearing_routine_of(lw_bearing_method method);

lw_status lw_bearing_terzaghi(const lw_strip *strip, lw_bearing *bearing, lw_error *error, const lw_working *working);
lw_status lw_bearing_meyerhof(const lw_strip *strip, lw_bearing *bearing, lw_error *error, const lw_working *working);
lw_status lw_bearing_hansen(const lw_strip *strip, lw_bearing *bearing, lw_error *error, const lw_working *working);
lw_status lw_bearing_vesic(const lw_strip *strip, lw_bearing *bearing, lw_error *error, const lw_working *working);
lw_status lw_bearing_en1997(const lw_strip *strip, lw_bearing *bearing, lw_error *error, const lw_working *working);

#ifdef __cplusplus
}
#endif
#endif
