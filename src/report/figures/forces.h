/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_FORCES_H
#define LOWWALL_REPORT_FIGURES_FORCES_H

#include "put.h"

void lw_figures_of_forces(const lw_figures *figures, const lw_free_body *body);
/* One of them with its arms and moments; its prefix is that of the figures. */
void lw_figures_of_force(const lw_figures *figures, const lw_free_body *body, int index);
/* What the number of a force in a free body is called, "course-2", "water-2"; joint: the free body is of
 * what stands
 * above it; 0: of the whole wall. */
void lw_force_name(const lw_result *result, const lw_free_body *body, int joint, int index, char *out,
                   size_t size);

#endif
