/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "seams.h"

#include <math.h>

#include "laying.h"
#include "spans.h"

static void put(lw_seams *joints, double at_m) {
  if (joints->count < LW_ROW_UNITS + 8) joints->at_m[joints->count++] = at_m;
}

/* Modules in their order along the row; the end of each is a joint, the last one's is the row's end. */
static int modules_of(const lw_laid *row, double module_m, double module[LW_ROW_UNITS + 8]) {
  int count = 0;
  if (row->first_m > 0.0) module[count++] = row->first_m;
  for (int i = 0; i < row->before && count < LW_ROW_UNITS; i++) module[count++] = module_m;
  for (int i = 0; i < row->closer_count; i++) module[count++] = row->closer_m[i];
  for (int i = 0; i < row->after && count < LW_ROW_UNITS; i++) module[count++] = module_m;
  if (row->last_m > 0.0) module[count++] = row->last_m;
  return count;
}

/* At a corner turned outwards the head of the other run's unit stands beside a row that stops there. */
static bool head_beside(const lw_laying *laying, int corner, lw_row_end end) {
  return end == LW_ROW_STOPPED && laying->order->corner[corner].turn_rad > 0.0;
}

/* A ring has no beginning: joints past its length come round to the front. */
static void wrap(lw_seams *joints, double length_m) {
  int past = 0;
  while (past < joints->count && joints->at_m[joints->count - 1 - past] >= length_m - 1e-9) past++;
  for (int i = 0; i < past; i++) {
    double last = joints->at_m[joints->count - 1] - length_m;
    for (int k = joints->count - 1; k > 0; k--) joints->at_m[k] = joints->at_m[k - 1];
    joints->at_m[0] = last;
  }
}

void lw_seams_of(const lw_laying *laying, const lw_laid *row, lw_seams *joints) {
  const lw_stretch *s = &laying->order->stretch[row->stretch];
  lw_span span[LW_RUN_MAX];
  double module[LW_ROW_UNITS + 8];
  int spans = lw_spans_of(laying->order, s, row->course, span);
  int count = modules_of(row, laying->plan->module_m, module);
  bool ring = row->start == LW_ROW_RING;
  double u = row->from_m, base = lw_spans_base(span, spans, u);
  joints->count = 0;
  joints->from_m = base;
  joints->to_m = lw_spans_base(span, spans, row->to_m);
  if (ring || head_beside(laying, s->corner_before, row->start)) put(joints, base);
  for (int i = 0; i + 1 < count; i++) {
    u += module[i];
    put(joints, lw_spans_base(span, spans, u));
  }
  if (head_beside(laying, s->corner_after, row->end)) put(joints, joints->to_m);
  if (!ring) return;
  wrap(joints, s->length_m);
  joints->from_m = 0.0;
  joints->to_m = s->length_m;
}

/* The distance of a joint from the nearest of the lower row, which begins at *near. */
static double nearest(const lw_seams *lower, double at_m, int *near) {
  while (*near + 1 < lower->count && fabs(lower->at_m[*near + 1] - at_m) <= fabs(lower->at_m[*near] - at_m))
    (*near)++;
  return fabs(lower->at_m[*near] - at_m);
}

bool lw_seams_overlap(const lw_seams *lower, const lw_seams *upper, double *least_m, double *at_m) {
  int near = 0;
  bool found = false;
  if (lower->count == 0) return false;
  for (int i = 0; i < upper->count; i++) {
    double at = upper->at_m[i];
    if (at < lower->from_m || at > lower->to_m) continue;
    double distance = nearest(lower, at, &near);
    if (found && distance >= *least_m) continue;
    found = true;
    *least_m = distance;
    *at_m = at;
  }
  return found;
}

double lw_seams_lack(const lw_seams *lower, const lw_seams *upper, double needs_m) {
  int near = 0;
  double lack = 0.0;
  if (lower->count == 0) return 0.0;
  for (int i = 0; i < upper->count; i++) {
    double at = upper->at_m[i];
    if (at < lower->from_m || at > lower->to_m) continue;
    double short_m = fmax(0.0, needs_m - nearest(lower, at, &near));
    lack += short_m * short_m / needs_m; /* one joint over another is worse than two half so near */
  }
  return lack;
}
