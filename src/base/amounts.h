/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_AMOUNTS_H
#define LOWWALL_BASE_AMOUNTS_H

#include <lowwall/base.h>

/** A sentence of ours that names round measures, said to a reader who measures otherwise: "nearer than 3 m"
 *  is "nearer than 9 ft 10 in". Metric readers get it as it stands, as do figures in [brackets] of a source.
 *  A measure that has its US one behind it, "3 mm (1/8 in)", becomes that.
 *  out   the sentence, cut to size
 *  gives out */
const char *lw_amounts_told(lw_units units, const char *sentence, char *out, size_t size);

#endif
