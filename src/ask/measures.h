/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_MEASURES_H
#define LOWWALL_ASK_MEASURES_H

#include "put.h"

/* Measures with ";" between onto the sheet; false after noting what is wrong. */
bool lw_put_measures(const lw_put *put, const char *answer);

#endif
