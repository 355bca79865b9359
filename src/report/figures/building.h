/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_BUILDING_H
#define LOWWALL_REPORT_FIGURES_BUILDING_H

#include "put.h"

void lw_figures_of_plant(const lw_figures *figures, const lw_plant *plant);
void lw_figures_of_building_itself(const lw_figures *figures, const lw_building *building);
void lw_figures_of_building_course(const lw_figures *figures, const lw_building_course *course);
void lw_figures_of_narrow_itself(const lw_figures *figures, const lw_narrow *narrow);
void lw_figures_of_narrow_value(const lw_figures *figures, const lw_narrow_value *value);

#endif
