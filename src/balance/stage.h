/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_STAGE_H
#define LOWWALL_BALANCE_STAGE_H

#include "push.h"

/* One contact in one load case: forces gathered, contact balanced. working may be NULL. */

/* Whether the push is known, nothing gathered yet. */
void lw_stage_start(const lw_push *push, lw_stage *stage);
/* Balanced: a stage with a value that is no number is faulty and has no answer. */
void lw_stage_end(lw_stage *stage);
/* A wall that is dug away under its front edge rests on nothing that is known. */
void lw_stage_undermine(const lw_load_case *load_case, lw_stage *stage);
void lw_stage_base(const lw_wall *wall, const lw_load_case *load_case, const lw_push *push, lw_stage *stage,
                   const lw_working *working);
void lw_stage_above(const lw_wall *wall, const lw_load_case *load_case, const lw_section *above,
                    const lw_push *push, lw_stage *stage, const lw_working *working);
/* The push itself, in a stage that somebody looks at: checks need only what is gathered and balanced. */
void lw_stage_show(const lw_push *push, lw_stage *stage);

#endif
