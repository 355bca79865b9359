/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_PUSH_RECORD_H
#define LOWWALL_BALANCE_PUSH_RECORD_H

#include "push.h"

/* Record how the thrust of moist soil grows to that of seeping soil, both along it, and where their sum
 * acts. */
void lw_push_record_rain(const lw_push *push, double seeping_kn_per_m, double moist_kn_per_m,
                         const lw_working *working);

#endif
