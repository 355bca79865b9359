/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_SLIP_H
#define LOWWALL_REPORT_FIGURES_SLIP_H

#include "put.h"
#include "run/again.h"

void lw_figures_of_slip(const lw_figures *figures, const lw_situation *situation);
void lw_figures_of_slices(const lw_figures *figures, const lw_situation *situation);
void lw_figures_of_slice(const lw_figures *figures, const lw_slip_view *view, int slice);
void lw_figures_of_tier(const lw_figures *figures);

const char *lw_tier_band_slug(lw_tier_band band);
const char *lw_slip_method_slug(lw_slip_method method);

#endif
