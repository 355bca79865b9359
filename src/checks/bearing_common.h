/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_BEARING_COMMON_H
#define LOWWALL_CHECKS_BEARING_COMMON_H

#include <lowwall/ground.h>

typedef struct bearing_author bearing_author;

/* What is found on the way, and is no answer. */
typedef struct bearing_way {
  double depth_ratio, load_angle_rad, kp_gamma, nq_prandtl;
} bearing_way;

/* A strip that is being worked out: each factor is written to the working by the function that finds it. */
typedef struct bearing_work {
  const bearing_author *author;
  const lw_strip *strip;
  lw_bearing *found;
  bearing_way *way;
  const lw_working *working; /* NULL: nobody reads it */
} bearing_work;

/* What makes one author's theory; the rest is common. A function that is NULL leaves its factors at 1. */
struct bearing_author {
  const lw_bearing_routine *routine;
  lw_n_gamma n_gamma; /* own: capacity fills it */
  void (*capacity)(const bearing_work *work);
  void (*depth)(const bearing_work *work);
  void (*inclination)(const bearing_work *work);
  const char *inclination_source;
};

/* Ultimate pressure of a strip by an author. */
lw_status lw_bearing_by(const bearing_author *author, const lw_strip *strip, lw_bearing *bearing,
                        lw_error *error, const lw_working *working);

/* Write one factor; its formula's numbers are put in by their symbols. */
void lw_bearing_write(const bearing_work *work, const char *symbol, const char *formula, double value);
void lw_bearing_write_from(const bearing_work *work, const char *symbol, const char *formula, double value,
                           const char *source);
void lw_bearing_write_inclination(const bearing_work *work, const char *symbol, const char *formula,
                                  double value);

/* Nc and Nq of Prandtl and Reissner, which all but Terzaghi share. */
void lw_bearing_prandtl(const bearing_work *work);

/* Hansen's k, which Vesic shares: how much of the depth counts. */
double lw_bearing_depth_ratio(const bearing_work *work);

/* A share of the load that is left, raised to a power; 0 where nothing is left: such a load slides. */
typedef struct bearing_share {
  const char *symbol, *formula;
  double of_horizontal, power;
} bearing_share;
double lw_bearing_share_left(const bearing_work *work, const bearing_share *share);

/* A cohesion factor that never counts below 0. */
double lw_bearing_cohesion_left(const bearing_work *work, const char *formula, double value);

/* On frictionless ground: the share that H leaves of what cohesion holds on the effective width, or 0. */
double lw_bearing_left_by_cohesion(const bearing_work *work);

/* Inclination factors that several authors share. */
void lw_bearing_meyerhof_inclination(const bearing_work *work);
void lw_bearing_power_inclination(const bearing_work *work);

extern const lw_bearing_routine lw_bearing_routine_terzaghi, lw_bearing_routine_meyerhof,
    lw_bearing_routine_hansen, lw_bearing_routine_vesic, lw_bearing_routine_en1997;

#endif
