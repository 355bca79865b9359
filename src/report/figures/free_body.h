/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_FREE_BODY_H
#define LOWWALL_REPORT_FIGURES_FREE_BODY_H

#include "put.h"

void lw_figures_of_free_body(const lw_figures *figures, const lw_free_body *body);
/* Its plane and its thrust alone. */
void lw_figures_of_push(const lw_figures *figures, const lw_free_body *body);
void lw_figures_of_profile(const lw_figures *figures, const lw_free_body *body);
void lw_figures_of_joint(const lw_figures *figures, const lw_joint *joint);
void lw_figures_of_bearing(const lw_figures *figures, const lw_borne *borne);

#endif
