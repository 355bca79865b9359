/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_PLAN_VIEW_H
#define LOWWALL_REPORT_DRAW_PLAN_VIEW_H

#include <math.h>

#include <lowwall/order.h>

#include "sketch.h"

/* The wall from above, X of the pegs to the right and Y up. */
#define LW_NO_TURN_RAD 0.002 /* a tenth of a degree: the wall runs on */
#define LW_LENGTH_MM 6.0     /* of paper from the face to the line of its length */
enum { LW_ARC_SPOTS = 24, LW_FACE_SPOTS = LW_RUN_MAX * (LW_ARC_SPOTS + 1) + 1 };

typedef struct lw_plan_view {
  lw_sketch s;
  const lw_order *order;
  double depth_m, top_m; /* the wall's depth at its base, and how far its top face stands back */
  /* What found no place on the drawing: length and radius of a run, the turn at its end, a name of a peg. */
  bool untold_run[LW_RUN_MAX], untold_radius[LW_RUN_MAX], untold_turn[LW_RUN_MAX];
  bool untold_peg[LW_PEG_MAX];
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
/* Lines of the lengths. */
void lw_plan_draw_lengths(lw_plan_view *view);
/* All words, after all lines. */
void lw_plan_draw_words(lw_plan_view *view);
/* Pegs of the top line only where they can be told from those of the base line. */
bool lw_plan_peg_is_shown(const lw_plan_view *view, const lw_peg *peg);
lw_xy_mm lw_plan_moved(lw_xy_mm from, lw_spot way, double by_mm);
/* "run 1: 5370", its length in full. */
void lw_plan_run_words(const lw_plan_view *view, int run, char *words, size_t size);
/* Whether the wall turns at a run's end. */
bool lw_plan_turns(const lw_plan *plan, int run);
/* What found no place on the drawing. gives y below */
double lw_plan_untold(lw_plan_view *view, double y_mm);
/* gives y below */
double lw_plan_legend(lw_plan_view *view, double y_mm);

#endif
