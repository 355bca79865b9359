/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_CONSTRUCTION_H
#define LOWWALL_REPORT_FIGURES_CONSTRUCTION_H

#include "put.h"

void lw_figures_of_plant(const lw_figures *figures, const lw_plant *plant);
void lw_figures_of_construction_itself(const lw_figures *figures, const lw_construction *construction);
void lw_figures_of_construction_course(const lw_figures *figures, const lw_construction_course *course);
void lw_figures_of_narrow_itself(const lw_figures *figures, const lw_narrow *narrow);
void lw_figures_of_narrow_value(const lw_figures *figures, const lw_narrow_value *value);

#endif
