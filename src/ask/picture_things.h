/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_PICTURE_THINGS_H
#define LOWWALL_ASK_PICTURE_THINGS_H

#include "picture_marks.h"

/* People, plants, water, hands, signs; ends with NULL. */
extern const lw_picture_word lw_picture_of_things[];

#endif
