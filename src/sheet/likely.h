/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_LIKELY_H
#define LOWWALL_SHEET_LIKELY_H

#include "items.h"

/* Likely values: a short list beside the quantities of a case, for most sheets give none. */

/* Behind the name of an item it means the item's likely value. */
#define LW_LIKELY_SUFFIX " likely"

/** How much of a name is left without the suffix, in whatever capitals and blanks.
 *  gives length where there is none */
size_t lw_likely_stem(const char *name, size_t length);

/** Whether the checks read this quantity, so that a likely value of it can change what is likely. The others
 *  are of the plan and the order, of what is worked out beside, and of who must sign. */
bool lw_likely_is_read(const lw_item *item);

/** "soil 1 friction angle likely" and "soil_1_friction_angle_likely_deg". */
void lw_likely_print_name(const lw_item *item, int number, char *out, size_t size);
void lw_likely_print_key(const lw_item *item, int number, char *out, size_t size);

/** Put the likely values where the given ones stand. */
void lw_likely_put(lw_case *c);

#endif
