/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REMEDIES_ASKING_H
#define LOWWALL_REMEDIES_ASKING_H

#include <lowwall/result.h>

/* The unknown answers whose favourable value would change the verdict, the one that changes it most first. */
void lw_asking_find(lw_result *result, lw_result *scratch);

#endif
