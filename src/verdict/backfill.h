/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_BACKFILL_H
#define LOWWALL_VERDICT_BACKFILL_H

#include "facts.h"

/* The item that is left out and could still clear a soil that is refused behind; NULL: it is refused for
 * sure, or not at all. */
const char *lw_backfill_left_out(const lw_facts *facts);
/* Why a soil behind is refused, and what to do about it. */
void lw_backfill_tell(const lw_facts *facts, char *out, size_t size);

#endif
