/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_PARTS_H
#define LOWWALL_REPORT_FIGURES_PARTS_H

#include "put.h"

/* The parts of a result as figures, in their order. */

void lw_figures_of_wall(const lw_figures *figures);
void lw_figures_of_site(const lw_figures *figures);
void lw_figures_of_influence(const lw_figures *figures);
void lw_figures_of_situations(const lw_figures *figures);
void lw_figures_of_construction(const lw_figures *figures);
void lw_figures_of_narrow(const lw_figures *figures);
void lw_figures_of_water(const lw_figures *figures);
void lw_figures_of_trench(const lw_figures *figures);
void lw_figures_of_factor_sets(const lw_figures *figures);
void lw_figures_of_fence(const lw_figures *figures);
void lw_figures_of_advice(const lw_figures *figures);

#endif
