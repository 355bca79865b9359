/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_PLAN_VIEW_H
#define LOWWALL_REPORT_DRAW_PLAN_VIEW_H

#include <math.h>

#include <lowwall/order.h>

#include "sketch.h"

/* The wall from above, X of the pegs to the right and Y up. */
#define LW_NO_TURN_RAD 0.002 /* a tenth of a degree: the wall runs on */
enum { LW_ARC_SPOTS = 24, LW_FACE_SPOTS = LW_RUN_MAX * (LW_ARC_SPOTS + 1) + 1 };

typedef struct lw_plan_view {
  lw_sketch s;
  const lw_order *order;
  double depth_m, top_m; /* the wall's depth at its base, and how far its top face stands back */
} lw_plan_view;

static inline bool lw_plan_is_curved(const lw_plan_run *run) {
  return fabs(run->radius_m) > 0.0;
}
/* No minus before nothing. */
static inline double lw_plan_level(double value_m) {
  return fabs(value_m) < 0.0005 ? 0.0 : value_m;
}
/* A face at an offset towards the soil, beginning to end. gives how many spots, at most LW_FACE_SPOTS */
int lw_plan_face(const lw_order *order, double offset_m, lw_spot *spot);
/* Where run `run` is at a share of its length, and the way out of the ground there, of length 1. */
lw_spot lw_plan_on_run(const lw_order *order, int run, double share, lw_spot *outward);

/* The two pegs of a distance that checks a corner; false: no pegs of that name. */
bool lw_plan_check_pegs(const lw_setting_out *setting_out, int check, int peg[2]);
/* Whether an earlier check has the same two pegs. */
bool lw_plan_check_told(const lw_setting_out *setting_out, int check);

/* A place along the face of the lowest course, its run and the share of it. */
int lw_plan_run_at(const lw_order *order, double along_m, double *share);
/* Away from the wall at a corner, or away from it and its end; of length 1. */
lw_spot lw_plan_away(const lw_order *order, int corner);

/* Pipe and outlets, and what the legend says of them. gives y below */
void lw_plan_draw_pipe(lw_plan_view *view);
/* What soil the drainage stone of a bed's sides leaves between them. gives y below */
double lw_plan_bed_legend(lw_plan_view *view, double y_mm);
double lw_plan_pipe_legend(lw_plan_view *view, double y_mm);

void lw_plan_draw_wall(lw_plan_view *view);
void lw_plan_draw_pegs(lw_plan_view *view);
void lw_plan_draw_lengths(lw_plan_view *view);
/* gives y below */
double lw_plan_legend(lw_plan_view *view, double y_mm);

#endif
