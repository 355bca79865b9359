/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_PICTURE_WALLS_H
#define LOWWALL_ASK_PICTURE_WALLS_H

#include "picture_marks.h"

/* Ground, walls, what lies behind and below; ends with NULL. */
extern const lw_picture_word lw_picture_of_walls[];

#endif
