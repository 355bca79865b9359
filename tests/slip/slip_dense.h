/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_SLIP_SLIP_DENSE_H
#define LOWWALL_TESTS_SLIP_SLIP_DENSE_H

#include <lowwall/ground.h>

/* A second program for slips, from docs/theory.md alone: it shares no line with src/slip/. Slow
 * and plain: a cross-section is asked for its columns, never cut into strips beforehand. */

/* Bishop's factor of one circle by about so many slices; INFINITY where it has none, or cuts the wall. */
double dense_factor(const lw_slip_ground *ground, const lw_slip_circle *circle, int slices);

/* The least over a grid of exits, entries and depths, each step so many times the one before, then
 * over finer ones about the best; all circles within the ground's box. */
double dense_least(const lw_slip_ground *ground, double step);

#endif
