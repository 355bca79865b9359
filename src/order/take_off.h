/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_TAKE_OFF_H
#define LOWWALL_ORDER_TAKE_OFF_H

#include "laying.h"
#include "plan_area.h"

/* A part of the plan between two steps of its base. Offsets are behind the face of the lowest course: its
 * own lowest course has stepped back already. */
typedef struct lw_base_part {
  lw_face face;
  int raised;                     /* courses that its base lies above the lowest place */
  int free_ends;                  /* ends of an open plan in it */
  double offset_m, depth_m;       /* of its lowest course */
  double pad_front_m, pad_rear_m; /* of the pad, from the face of that course */
  double dig_rear_m;              /* behind the drainage stone, or behind the pad where that is wider */
  double ground_m;                /* ground in front above the underside of that course, on the mean */
} lw_base_part;

/* A level piece of the wall's rear: a course, or a slice of a solid wall. */
typedef struct lw_rear {
  double low_m, high_m, rear_m; /* behind the face of the lowest course at its foot */
} lw_rear;

enum {
  LW_BASE_PART_MAX = LW_COURSE_MAX + 1,
  LW_SOLID_SLICES = 64,
  LW_REAR_MAX = LW_COURSE_MAX + LW_SOLID_SLICES
};

/* What the lines of an order are taken off from. */
typedef struct lw_take_off {
  const lw_laying *laying;
  const lw_case_order *o;
  const lw_tables *tables;
  double stone_m, pad_m, bedding_m, high_m;
  double step_under_m; /* how far the lower pad runs under the upper one */
  int rear_count;
  lw_rear rear[LW_REAR_MAX]; /* from the bottom up; a course has the place of its number */
  int part_count;
  lw_base_part part[LW_BASE_PART_MAX];
} lw_take_off;

/* What the whole of an order is taken off from; no line yet. */
lw_take_off lw_take_off_begin(const lw_laying *laying);
/* A new line, what is ordered worked out from its net; NULL: no allowance. */
lw_order_line *lw_line_put(const lw_take_off *t, const lw_order_line *line, const lw_quantity *allowance);
/* Area of a strip of a part from its own face on, its free ends lengthened by what the pad goes beyond. */
double lw_part_strip(const lw_base_part *part, double from_m, double to_m);
/* Step between this part and the next in courses; 0 after the last. */
int lw_part_rise(const lw_take_off *t, int part);
/* Trips of a barrow that is full by volume or by mass, whichever takes more. */
int lw_barrows(const lw_take_off *t, double loose_m3, double mass_kg);

/* Whole ones that a number of pieces comes to. */
static inline double lw_pieces_up(double pieces) {
  return ceil(pieces - 1e-9);
}

#endif
