/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_CHANGES_H
#define LOWWALL_VERDICT_CHANGES_H

#include "trial.h"

/* Changes that a builder can buy or do. Each false when this wall has nothing to change so. */
bool lw_change_deeper(const lw_trial *trial, double depth_m,
                      lw_case *c); /* blocks, or the base of a section */
bool lw_change_lower(const lw_trial *trial, double less_m,
                     lw_case *c); /* a whole number of courses, or less */
bool lw_change_outlets(const lw_trial *trial, double stone_m,
                       lw_case *c); /* two outlets in stone this wide */
bool lw_change_stone(const lw_trial *trial, double stone_m,
                     lw_case *c); /* crushed rock as wide as the wedge */
bool lw_change_setback(const lw_trial *trial, double setback_m, lw_case *c);
bool lw_change_load(const lw_trial *trial, double clear_m,
                    lw_case *c); /* every load behind at least so far */

/* The row of the stone that fills the wedge; NULL when the tables have none. */
const lw_soil_row *lw_change_stone_row(const lw_tables *tables);
/* Front to back of the wall as it is, or 0 when that is not known. */
double lw_change_depth_now(const lw_case *c);

#endif
