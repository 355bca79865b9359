/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_PARTS_H
#define LOWWALL_ORDER_PARTS_H

#include <math.h>

#include <lowwall/order.h>

/* One millimetre over a whole row is taken up in its joints. */
#define LW_TAKEN_UP 0.001

enum { LW_CHOICE_MAX = 48, LW_FREE_CHOICES = 6, LW_PLACE_MAX = 12 };

typedef struct lw_laying {
  const lw_plan *plan;
  lw_order *order;
  const lw_tables *tables;
  lw_corner_unit asked;
  double corner_unit_m;
  double overlap_share, cut_share, mitre_share, kerf_m;
  bool half_cut; /* half units are cut from whole ones */
  int stretch_count;
  lw_stretch stretch[LW_STRETCH_MAX];
} lw_laying;

/* The run at a place of a stretch, and where it lies in a course: on its own face from u_from to u_to in
 * units of laying, on the lowest face from base_from to base_to from the beginning of the stretch. */
typedef struct lw_span {
  int run;
  double u_from, u_to, base_from, base_to;
} lw_span;

int lw_plan_at(const lw_plan *plan, int run); /* of a closed plan, wrapped around */
void lw_plan_add_steps(const lw_case *c, lw_plan *plan);
double lw_plan_module(const lw_plan *plan, int run, int course); /* wider on a convex curve */
double lw_plan_depth(const lw_plan *plan, int course);
/* Whether the face crosses itself, and which runs do, from 0. */
bool lw_plan_crosses(const lw_plan *plan, int *first, int *second);
/* How much the free ends of a run have stepped back in a course, both together. */
double lw_plan_end_back(const lw_plan *plan, int run, int course);

/* The half turn's tangent at the beginning or the end of a run; 0 at an open end. */
double lw_plan_tangent(const lw_plan *plan, int run, bool after);

/* The face of the lowest course between two places of the plan, and what it loses for each metre that it is
 * moved towards the soil: corners and curves make it shorter there. */
typedef struct lw_face {
  double length_m, loses;
} lw_face;
lw_face lw_face_between(const lw_plan *plan, double from_m, double to_m);
static inline double lw_face_at(const lw_face *face, double offset_m) {
  return face->length_m - offset_m * face->loses;
}
/* Area between two such offsets. */
static inline double lw_face_strip(const lw_face *face, double from_m, double to_m) {
  return face->length_m * (to_m - from_m) - face->loses * (to_m * to_m - from_m * from_m) / 2.0;
}

/* A corner that is no right angle is cut on the mitre: something of a block must be left beside the cut. */
lw_status lw_corners_hold(const lw_laying *laying, const lw_case *c, lw_faults *faults);
void lw_stretches_build(lw_laying *laying);
int lw_stretch_spans(const lw_laying *laying, const lw_stretch *stretch, int course,
                     lw_span span[LW_RUN_MAX]);
/* The same, of an order that is made. */
int lw_order_spans(const lw_order *order, const lw_stretch *stretch, int course, lw_span span[LW_RUN_MAX]);
double lw_stretch_base_of(const lw_span *span, int count, double u_m);
double lw_stretch_lay_of(const lw_span *span, int count, double base_m);

/* A row of a course, its ends and end pieces, no units yet. The whole stretch, steps left aside. */
lw_laid lw_row_whole(const lw_laying *laying, const lw_stretch *stretch, int course);
lw_status lw_rows_build(lw_laying *laying);
double lw_rows_face(const lw_laying *laying, int course);

/* The ways to fill a row; at least one. */
int lw_row_choices(const lw_laying *laying, const lw_laid *row, lw_laid choice[LW_CHOICE_MAX]);
void lw_bond_choose(lw_laying *laying);
void lw_phases_choose(lw_laying *laying);

void lw_order_count(lw_laying *laying);
void lw_order_runs(lw_laying *laying);
void lw_order_caps(lw_laying *laying, const lw_result *result);
void lw_order_cutting(lw_laying *laying, const lw_result *result);
void lw_order_lines(lw_laying *laying, const lw_result *result);
void lw_order_notes(lw_laying *laying, const lw_result *result);
void lw_order_pegs(lw_laying *laying, const lw_result *result);
void lw_order_pipe(lw_laying *laying, const lw_result *result);
void lw_order_work(lw_laying *laying, const lw_result *result);

void lw_order_note_add(lw_order *order, const char *slug, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 3, 4)))
#endif
    ;
void lw_order_cut_add(lw_order *order, const lw_cut *cut);
/* The value of a row of tables/ordering.csv; otherwise when it is gone. */
double lw_ordering_value(const lw_tables *tables, const char *slug, double otherwise);

#endif
