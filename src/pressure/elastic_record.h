/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PRESSURE_ELASTIC_RECORD_H
#define LOWWALL_PRESSURE_ELASTIC_RECORD_H

#include <lowwall/lateral.h>

/** Record the push of each load and their sum. */
void lw_elastic_record(const lw_plane *plane, lw_load_pressure by, const lw_elastic *push,
                       const lw_working *working);

#endif
