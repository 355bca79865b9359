/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_FORCES_H
#define LOWWALL_CHECKS_FORCES_H

#include <lowwall/checks.h>

/* The list of forces on a contact. A force comes in through one of two doors, and takes its factor there. */

/* The partial factor that a kind of force takes from its source. */
double lw_factor_of(const lw_factors *factors, lw_force_kind kind);
/* 1 without any */
double lw_forces_factor(const lw_forces *forces, lw_force_kind kind);

void lw_forces_put(lw_forces *forces, int index, lw_force force);
void lw_forces_add(lw_forces *forces, lw_force force);

#endif
