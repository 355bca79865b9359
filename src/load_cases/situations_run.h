/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_SITUATIONS_RUN_H
#define LOWWALL_LOAD_CASES_SITUATIONS_RUN_H

#include "standards/factor_set.h"
#include "situation_plan.h"

/* A situation to be run: nothing of it but its plan. */
void lw_situation_start(const lw_situation_plan *plan, lw_situation *situation);

/* Run the situations of a list, which are started, under every set of factors of a family. What asks for
 * nothing is run only where nothing else is there. */
void lw_situations_follow(const lw_wall *wall, const lw_factor_set_family *family, lw_detail detail,
                          lw_situations *situations);

/* One place alone in one situation that is started, for a search: its checks and nothing else. */
void lw_situation_at(const lw_wall *wall, const lw_factor_set_family *family, const lw_check *where,
                     lw_situation *situation);

#endif
