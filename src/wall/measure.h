/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_MEASURE_H
#define LOWWALL_WALL_MEASURE_H

#include <lowwall/wall.h>

/* Crest, rear and back of a section whose outline is there. */
void lw_section_measure(lw_section *section);

/** x of the rearmost point of the section at or above y, the cap left out. */
double lw_section_rear(const lw_section *section, double y_m);

#endif
