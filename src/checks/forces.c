/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "stage.h"

#include <assert.h>

void lw_forces_add(lw_forces *forces, lw_force force) {
  assert(forces->count < LW_FORCE_MAX);
  forces->force[forces->count++] = force;
}
