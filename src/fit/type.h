/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_FIT_TYPE_H
#define LOWWALL_FIT_TYPE_H

#include "fit.h"

/* The items that put a block into the wall in place of the sheet's own, what goes with that one forgotten.
 * false: there is no room for so many */
bool lw_fit_type(const lw_fit_wall *wall, const lw_yard_block *block, lw_typed *typed);

#endif
