/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_BEARING_COMMON_H
#define LOWWALL_CHECKS_BEARING_COMMON_H

#include <lowwall/bearing.h>

/* How the working writes a set of three factors. */
typedef struct bearing_wording {
  const char *c, *q, *gamma;
} bearing_wording;

/* What makes one author's theory; the rest is common. A function that is NULL leaves its factors at 1. */
typedef struct bearing_author {
  const lw_bearing_routine *routine;
  lw_n_gamma n_gamma; /* own: capacity fills it */
  void (*capacity)(double friction_rad, lw_bearing *bearing);
  void (*depth)(const lw_strip *strip, lw_bearing *bearing);
  void (*inclination)(const lw_strip *strip, lw_bearing *bearing);
  bearing_wording capacity_wording, depth_wording, inclination_wording;
  const char *inclination_source;
} bearing_author;

/* Ultimate pressure of a strip by an author. */
lw_status lw_bearing_by(const bearing_author *author, const lw_strip *strip, lw_bearing *bearing,
                        lw_error *error, const lw_working *working);

/* Below this angle a soil counts as frictionless, and the formulas take their limits there. */
bool lw_bearing_is_frictionless(double friction_rad);

/* Nc and Nq of Prandtl and Reissner, which all but Terzaghi share. */
void lw_bearing_prandtl(double friction_rad, lw_bearing *bearing);

/* A share of the load that is left, raised to a power; 0 where nothing is left: such a load slides. */
double lw_bearing_share_left(const lw_strip *strip, double horizontal_share, double power);

/* Factors that several authors share. */
void lw_bearing_meyerhof_inclination(const lw_strip *strip, lw_bearing *bearing);
void lw_bearing_power_inclination(const lw_strip *strip, lw_bearing *bearing);
double lw_bearing_depth_ratio(const lw_strip *strip);

#define LW_MEYERHOF_INCLINATION_WORDING                                                                      \
  { "(1 - angle/90)^2", "(1 - angle/90)^2", "(1 - angle/phi)^2" }
#define LW_PRANDTL_NC "(Nq - 1) cot phi"
#define LW_PRANDTL_NQ "exp(pi tan phi) tan^2(45 + phi/2)"

extern const lw_bearing_routine lw_bearing_routine_terzaghi, lw_bearing_routine_meyerhof,
    lw_bearing_routine_hansen, lw_bearing_routine_vesic, lw_bearing_routine_en1997;

#endif
