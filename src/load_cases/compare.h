/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_COMPARE_H
#define LOWWALL_LOAD_CASES_COMPARE_H

#include <lowwall/checks.h>

/* Rankine and Coulomb, each beside trial wedges on its own plane, with the situation's water and the
 * earthquake that is shown: fills situation->compared. */
void lw_compare_methods(const lw_wall *wall, lw_situation *situation);

#endif
