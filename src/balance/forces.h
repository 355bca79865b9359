/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BALANCE_FORCES_H
#define LOWWALL_BALANCE_FORCES_H

#include <lowwall/checks.h>

#include <assert.h>

/* The list of forces on a contact. A force comes in through one of two doors, and takes its factor there. */

/* The partial factor that a kind of force takes from its source. */
double lw_factor_of(const lw_factors *factors, lw_force_kind kind);
/* 1 without any */
double lw_forces_factor(const lw_forces *forces, lw_force_kind kind);

/* Here, so that a force is made where it lies: handed over by value a bed's row is some percent dearer. */
static inline void lw_forces_put(lw_forces *forces, int index, lw_force force) {
  assert(index >= 0 && index < LW_FORCE_MAX);
  force.factor = lw_forces_factor(forces, force.kind);
  force.horizontal_kn_per_m *= force.factor;
  force.vertical_kn_per_m *= force.factor;
  forces->force[index] = force;
}

static inline void lw_forces_add(lw_forces *forces, lw_force force) {
  lw_forces_put(forces, forces->count++, force);
}

#endif
