/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SLIP_OUTDONE_H
#define LOWWALL_SLIP_OUTDONE_H

#include <lowwall/ground.h>

/** Whether a circle that does not come below a factor in one cross-section does not in another either.
 *  in    graver   the one: alike, but no ground is stronger and no water lower
 *        milder   the other
 *        factor   1   over 0
 *  gives false as well where it is not known */
bool lw_slip_graver(const lw_slip_ground *graver, const lw_slip_ground *milder, double factor);

/* Cross-sections of one wall that were searched, and what no circle has less than in each. */
enum { LW_SLIP_SEARCHED_MAX = 6 };
typedef struct lw_slip_searched {
  int count;
  struct {
    lw_slip_ground ground;
    double at_least;
  } of[LW_SLIP_SEARCHED_MAX];
} lw_slip_searched;

/* A full list keeps what it has. */
void lw_slip_remember(lw_slip_searched *all, const lw_slip_ground *ground, double at_least);
/* Whether one of them shows that no circle of this one comes below a factor. */
bool lw_slip_outdone(const lw_slip_searched *all, const lw_slip_ground *ground, double factor);

#endif
