/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_STAGE_H
#define LOWWALL_REPORT_FIGURES_STAGE_H

#include "put.h"

void lw_figures_of_stage(const lw_figures *figures, const lw_stage *stage);
/* Its plane and its thrust alone. */
void lw_figures_of_push(const lw_figures *figures, const lw_stage *stage);
void lw_figures_of_profile(const lw_figures *figures, const lw_stage *stage);
void lw_figures_of_joint(const lw_figures *figures, const lw_joint *joint);
void lw_figures_of_bearing(const lw_figures *figures, const lw_borne *borne);

#endif
