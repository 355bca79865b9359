/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_MEASURE_H
#define LOWWALL_WALL_MEASURE_H

#include <lowwall/section.h>

/* Crest, rear and back of a section whose outline is there. */
void lw_section_measure(lw_section *section);

#endif
