/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_WORDS_H
#define LOWWALL_ASK_WORDS_H

#include <lowwall/base.h>

/* Words of the questions name a measure both ways, "nearer than 3 m (10 ft)"; said to who measures in one, it
 * is that one alone.
 *  out   the words, cut to size
 *  gives out */
const char *lw_ask_said(lw_units units, const char *words, char *out, size_t size);

#endif
