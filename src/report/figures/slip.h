/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_SLIP_H
#define LOWWALL_REPORT_FIGURES_SLIP_H

#include "put.h"

/* The worst circle in a few slices, for a student to go through. */
enum { LW_SLIP_SHOWN = 8 };

typedef struct lw_slip_view {
  lw_slip slip;
  lw_slip_slices list;
  double seismic;         /* kh */
  double light_kn_per_m3; /* of the ground in front where its weight helps; 0: as everywhere */
} lw_slip_view;

/* The circle sliced afresh; false where there is none. */
bool lw_slip_shown(const lw_result *result, const lw_situation *situation, lw_slip_view *view);

void lw_figures_of_slip(const lw_figures *figures, const lw_situation *situation);
void lw_figures_of_slices(const lw_figures *figures, const lw_situation *situation);
void lw_figures_of_slice(const lw_figures *figures, const lw_slip_view *view, int slice);
void lw_figures_of_tier(const lw_figures *figures);

const char *lw_tier_band_slug(lw_tier_band band);
const char *lw_slip_method_slug(lw_slip_method method);

#endif
