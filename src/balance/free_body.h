/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_FREE_BODY_H
#define LOWWALL_BALANCE_FREE_BODY_H

#include "push.h"

/* One contact in one load case: forces gathered, contact balanced. working may be NULL. */

/* Whether the push is known, nothing gathered yet. */
void lw_free_body_start(const lw_push *push, lw_free_body *body);
/* Balanced: a free body with a value that is no number is faulty and has no answer. */
void lw_free_body_end(lw_free_body *body);
/* A wall that is dug away under its front edge rests on nothing that is known. */
void lw_free_body_undermine(const lw_load_case *load_case, lw_free_body *body);
void lw_free_body_base(const lw_wall *wall, const lw_load_case *load_case, const lw_push *push,
                       lw_free_body *body, const lw_working *working);
void lw_free_body_above(const lw_wall *wall, const lw_load_case *load_case, const lw_section *above,
                        const lw_push *push, lw_free_body *body, const lw_working *working);
/* The push itself, in a free body that somebody looks at: checks need only what is gathered and balanced. */
void lw_free_body_show(const lw_push *push, lw_free_body *body);

#endif
