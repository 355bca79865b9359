/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_PERSON_H
#define LOWWALL_WALL_PERSON_H

#include <lowwall/wall.h>

/* Nobody where the load behind is another than that of a bed which is only planted. */
void lw_wall_person_build(const lw_case *c, const lw_tables *tables, lw_wall_person *person);

#endif
