/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_ELEVATION_H
#define LOWWALL_REPORT_DRAW_ELEVATION_H

#include <lowwall/order.h>

#include "order/pieces.h"
#include "drawing.h"
#include "sketch.h"

/* The wall unrolled: x along the stretches, one after another, y up from the lowest base. */
enum { LW_STRIP_MAX = 24 };

typedef struct lw_face_strip {
  double from_m, to_m;
} lw_face_strip;

typedef struct lw_elevation {
  lw_sketch s;
  const lw_order *order;
  double begins_m[LW_STRETCH_MAX]; /* each stretch, on the development; the one with run 1 first */
  double length_m;
  double pad_m, bedding_m, cap_m, ground_m;
  double top_m, bottom_m;
  bool both_ends; /* base or ground lie otherwise at the end than at the beginning: each has its heights */
  double levels_mm, apart_mm; /* of paper beside an end for its heights, and from chain to chain */
  int strip_count;
  lw_face_strip strip[LW_STRIP_MAX];
  lw_piece *piece;                                            /* room for one row */
  bool cap_cut;                                               /* a cap that is sawn was drawn */
  bool untold_run[LW_RUN_MAX], untold_corner[LW_RUN_MAX + 1]; /* what found no room for its words */
  bool seen[LW_PIECE_HEAD + 1]; /* which kinds were drawn: the legend names those */
} lw_elevation;

typedef enum lw_face_end { LW_AT_BEGINNING, LW_AT_END } lw_face_end;

/* The ground in front where it is given, for all of a wall by its fall; else where the base is lowest.
 * gives false: nobody said */
bool lw_elevation_ground(const lw_elevation *e, double at_m, int raised, double *level_m);
bool lw_elevation_ends_differ(const lw_elevation *e);
/* The heights of one end, beside it. */
void lw_elevation_levels(lw_elevation *e, lw_face_end end);
/* Room for them, beside either end. */
void lw_elevation_levels_room(lw_elevation *e);
/* Where a stretch ends on the development. */
static inline double lw_elevation_end(const lw_elevation *e, int stretch) {
  return e->begins_m[stretch] + e->order->stretch[stretch].length_m;
}
/* How the wall turns where a run begins. */
static inline double lw_elevation_turn_before(const lw_plan *plan, int run) {
  if (run > 0) return plan->run[run - 1].turn_rad;
  return plan->closed ? plan->run[plan->run_count - 1].turn_rad : 0.0;
}
/* One strip; the sketch's origin says where it stands. */
void lw_elevation_strip(lw_elevation *e, const lw_face_strip *strip);
/* Corners and lengths of a stretch's runs: their lines, or their words. */
void lw_elevation_runs(lw_elevation *e, const lw_face_strip *strip, int stretch, bool words);
void lw_elevation_steps(lw_elevation *e, const lw_face_strip *strip, int stretch);
/* Of runs and corners, what found no room. gives y below */
double lw_elevation_untold(lw_elevation *e, double y_mm);
/* What a cut piece is called, "a" to "zz"; false: it is not in the list of cuts. */
bool lw_elevation_cut_name(const lw_elevation *e, const lw_piece *piece, int course, char name[4]);
void lw_elevation_letter(int cut, char name[4]);
/* Cut pieces of the face have one; halves are shown as such, and caps are too low. */
bool lw_elevation_is_lettered(const lw_cut *cut);
void lw_elevation_corners(const lw_box *box, lw_xy_mm corner[4]);
/* How a kind of piece is drawn. */
void lw_elevation_piece(lw_drawing *paper, lw_piece_kind kind, const lw_box *box);
/* gives y below */
double lw_elevation_legend(lw_elevation *e, double y_mm);

#endif
