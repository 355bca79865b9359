/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_KEY_H
#define LOWWALL_CHECKS_KEY_H

#include "balance/weigh.h"

/* Whether a wall's keys have a strength to be checked against. */
bool lw_check_key_given(const lw_wall *wall);

/* What a key holds of a contact: nothing where nothing presses on it. */
double lw_key_strength(const lw_strengths *design, const lw_contact *contact);

lw_check lw_check_key(const lw_check_context *context, const lw_free_body *body, const lw_working *working);

#endif
