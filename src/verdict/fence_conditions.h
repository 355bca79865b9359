/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_FENCE_CONDITIONS_H
#define LOWWALL_VERDICT_FENCE_CONDITIONS_H

#include "finding.h"

/* The conditions that a fence meets: it closes the bed; it loads the wall, on it or from the stone behind it;
 * it stands on posts of its own, nearer than it should. */
lw_so lw_fence_closes_bed(const lw_facts *facts, lw_finding *found);
lw_so lw_fence_leans(const lw_facts *facts, lw_finding *found);
lw_so lw_fence_stands_near(const lw_facts *facts, lw_finding *found);

#endif
