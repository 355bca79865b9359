/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_ELASTIC_AT_RECORD_H
#define LOWWALL_PRESSURE_ELASTIC_AT_RECORD_H

#include <lowwall/lateral.h>

/* Record as a symbol the level pressure of one load at a depth below the plane's top; nothing where it is not
 * felt. */
void lw_elastic_at_record(const lw_plane *plane, int load, lw_load_pressure by, double depth_m,
                          const char *symbol, const lw_working *working);

#endif
