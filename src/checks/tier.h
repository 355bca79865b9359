/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_TIER_H
#define LOWWALL_CHECKS_TIER_H

#include "situation.h"

/* The other wall, and what it puts on this one's ground: it becomes a load of the site. */
void lw_tier_build(const lw_case *c, const lw_tables *tables, lw_wall *wall);

/* Whether there is ground to slip on, and a bed on a slope. */
void lw_slip_cause_build(const lw_case *c, const lw_tables *tables, lw_wall *wall);

/* The cross-section of a wall whose site has its water and factored strengths. */
void lw_slip_ground_build(const lw_wall *now, lw_slip_ground *ground);

/* Slip of wall and ground, and of a bed down its slope, in the situations that change the water. */
void lw_slips_check(const lw_wall *wall, const lw_format_family *family, lw_situations *situations);

#endif
