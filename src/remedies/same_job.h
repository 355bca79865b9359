/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_SAME_JOB_H
#define LOWWALL_REMEDIES_SAME_JOB_H

#include <lowwall/result.h>

/* Front to back of the wall as it is, or 0 when that is not known. */
double lw_change_depth_now(const lw_case *c);
/* How much ground or soil it holds up. */
double lw_change_held(const lw_result *result);
/* Whether so much of it, or blocks so deep, are still those of the wall asked for. */
bool lw_change_keeps_held(const lw_result *now, double held_then_m);
bool lw_change_keeps_depth(const lw_result *now, double depth_then_m);
/* What the wall as changed is to who asked for the wall as it is. */
lw_remedy_kind lw_change_kind(const lw_result *now, const lw_result *then);

#endif
