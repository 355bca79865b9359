/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_LAYING_H
#define LOWWALL_ORDER_LAYING_H

#include <math.h>

#include <lowwall/order.h>

/* One millimetre over a whole row is taken up in its joints. */
#define LW_TAKEN_UP 0.001

/* What the stages of an order share: the plan, what sheet and tables ask of the blocks, the wall as it was
 * checked, and the order that each stage fills its part of. Only what makes one reads a case: the rest takes
 * this, and of the sheet the items of the order and of the courses. */
typedef struct lw_laying {
  const lw_plan *plan;
  lw_order *order;
  const lw_tables *tables;
  const lw_case_order *items;
  const lw_case_courses *courses;
  const lw_site *site;
  const lw_section *section;
  double unit_weight_kn_per_m3; /* of a solid wall */
  double embedment_m, soil_m;   /* ground in front and soil behind, above the base; soil as it is asked */
  double cap_m;                 /* 0: none */
  double pad_m, pad_wide_m, stone_m, bedding_m; /* 0: none is given; the bed under blocks only on a pad */
  double outlets, outlet_level_m;
  bool filter_told; /* what keeps the soil out of the stone; untold, no check counts any */
  lw_stone_filter filter;
  lw_number soil_below_top_m; /* as given */
  bool bed;                   /* what is behind, not ground */
  double mean_share;          /* of the wall's run that a tapering block takes up */
  double influence_m;         /* heavy things keep so far behind */
  lw_number plant_m;          /* and plant so far, where that is known */
  lw_corner_unit asked;
  double corner_unit_m;
  double overlap_share, cut_share, cut_most_share, mitre_share, kerf_m;
  bool half_cut; /* half units are cut from whole ones */
} lw_laying;

static inline bool lw_laid_same(double a_m, double b_m) {
  return fabs(a_m - b_m) <= LW_TAKEN_UP;
}

static inline bool lw_laid_half(const lw_plan *plan, double module_m) {
  return lw_laid_same(module_m, plan->module_m / 2.0);
}

static inline bool lw_laying_has_cloth(const lw_laying *laying) {
  return laying->filter_told && laying->filter == LW_STONE_FILTER_CLOTH;
}

#endif
