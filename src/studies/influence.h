/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_INFLUENCE_H
#define LOWWALL_STUDIES_INFLUENCE_H

#include <lowwall/studies.h>

/** Every load behind the wall that the sheet gives, held against the line of influence.
 *  in    wall        as lw_wall_build made it
 *        tables      for the garden load and the vehicle's
 *  out   influence   without the load that is only assumed, and without loads on the cap
 *  note  1 The line starts at the rear of the base, not of the pad; the ground's slope is followed.
 *        2 With the width of the wall not known it starts below the rear of the top.
 *  from  [LOWWALL conditions] for the angle, item `method influence line` */
void lw_influence_find(const lw_wall *wall, const lw_tables *tables, lw_influence *influence);

#endif
