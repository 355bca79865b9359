/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_PICTURE_H
#define LOWWALL_ASK_PICTURE_H

#include <stdbool.h>

/* Whether all words of a picture are known and have their numbers. */
bool lw_picture_reads(const char *list);

#endif
