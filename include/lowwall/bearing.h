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
  double n_gamma_value;                /* only where it is given, 0 or more */
  lw_own_or_none depth_factors, inclination_factors;
} lw_strip;

typedef struct lw_bearing {
  double nc, nq, n_gamma;
  double dc, dq, d_gamma;              /* depth factors, 1 when none */
  double ic, iq, i_gamma;              /* inclination factors, 1 when none, 0 where it slides */
  bool slides;                         /* H > V tan φ + B' c: the ground slides before it bears */
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

/** The routine of a method.
 *  in    method
 *  gives its descriptor; NULL for presumptive values, which are no theory */
const lw_bearing_routine *lw_bearing_routine_of(lw_bearing_method method);

/** Ultimate bearing pressure of a strip footing by one author,
 *  qu = c Nc dc ic + q Nq dq iq + γ B' Nγ dγ iγ / 2 on the effective width B' = B - 2|e|.
 *  in    strip     width > 2|e|, 0 ≤ friction ≤ 50°; the signs of e and of the horizontal load do not matter
 *  out   bearing   factors, gross and net pressure; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range (also when a value is not finite),
 *        outside-base or no-weight (a horizontal load without a vertical one)
 *  note  1 No shape factors: B against a wall's length is nothing. No factors for sloping ground or base.
 *        2 Depth factors take the full width B, not B'. They rely on the soil above the footing; leave
 *          them out where it may be dug away.
 *        3 Where H exceeds V tan φ + B' c the footing slides before it bears: inclination factors are 0
 *          then, and with them qu. A cohesion term never counts below 0.
 *        4 Frictionless soil (φ below 1e-6 rad) takes each author's own undrained form.
 *        5 With n_gamma not `own` only Nγ is another author's, or the number that is given.
 *        6 terzaghi: Nγ from a table of passive coefficients, 5° apart, interpolated in the logarithm; no
 *          depth factors. The theory knows vertical loads only: for others Meyerhof's factors stand in.
 *        7 meyerhof: between 0° and 10° his depth factor for q and γ is kept at 1.
 *        8 en1997: drained and undrained form of annex D, no partial factors, no depth factors.
 *  from  [TERZAGHI-1943 chapter 8]; [MEYERHOF-1963 general equation]; [HANSEN-1970 general equation];
 *        [VESIC-1973 general equation]; [EN1997-1 annex D]; tested by [BCF-WEB tables] */
lw_status lw_bearing_terzaghi(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                              const lw_working *working);
lw_status lw_bearing_meyerhof(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                              const lw_working *working);
lw_status lw_bearing_hansen(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                            const lw_working *working);
lw_status lw_bearing_vesic(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                           const lw_working *working);
lw_status lw_bearing_en1997(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                            const lw_working *working);

#ifdef __cplusplus
}
#endif
#endif
