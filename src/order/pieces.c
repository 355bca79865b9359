/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pieces.h"

#include <math.h>

#include <lowwall/order.h>

#include "laying.h"
#include "plan.h"
#include "spans.h"

/* What is seen of each row from the front. */

typedef struct view {
  const lw_order *order;
  const lw_stretch *stretch;
  const lw_laid *row;
  lw_span span[LW_RUN_MAX];
  int spans, count;
  lw_piece *piece;
} view;

static void put(view *v, lw_piece_kind kind, double from_m, double to_m, double length_m) {
  if (v->count < LW_PIECE_MAX && to_m - from_m > 1e-9)
    v->piece[v->count++] = (lw_piece){kind, from_m, to_m, length_m};
}

/* From u to u on the row's own face; what a corner hides is left out, what runs round a ring comes again. */
static void see(view *v, lw_piece_kind kind, double from_u, double to_u, double length_m) {
  double end = v->span[v->spans - 1].u_to, length = v->stretch->length_m;
  double from = lw_spans_base(v->span, v->spans, v->stretch->ring ? from_u : fmax(from_u, 0.0));
  double to = lw_spans_base(v->span, v->spans, v->stretch->ring ? to_u : fmin(to_u, end));
  if (!v->stretch->ring) {
    put(v, kind, from, to, length_m);
    return;
  }
  bool again = from >= length - 1e-9;
  put(v, kind, again ? from - length : from, again ? to - length : fmin(to, length), length_m);
  if (!again) put(v, kind, 0.0, to - length, length_m);
}

static lw_piece_kind square(const lw_plan *plan, double module_m) {
  if (lw_laid_same(module_m, plan->module_m)) return LW_PIECE_WHOLE;
  return lw_laid_half(plan, module_m) ? LW_PIECE_HALF : LW_PIECE_CUT;
}

static lw_piece_kind end_kind(const view *v, bool at_end) {
  int corner = at_end ? v->stretch->corner_after : v->stretch->corner_before;
  lw_row_end end = at_end ? v->row->end : v->row->start;
  if (corner >= 0 && end == LW_ROW_MITRED) return LW_PIECE_MITRED;
  if (corner >= 0 && end == LW_ROW_THROUGH && v->order->corner[corner].made == LW_MADE_HANDED)
    return LW_PIECE_HANDED;
  return square(&v->order->plan, at_end ? v->row->last_m : v->row->first_m);
}

/* At a corner turned outwards the row that stops leaves the end of the other run's block to be seen. */
static bool head_seen(const view *v, int corner, lw_row_end end) {
  return corner >= 0 && end == LW_ROW_STOPPED && v->order->corner[corner].turn_rad > 0.0;
}

/* gives where the next piece begins */
static double lay(view *v, lw_piece_kind kind, double at_u, double module_m) {
  double length = module_m - v->order->plan.gap_m;
  see(v, kind, at_u, at_u + length, length);
  return at_u + module_m;
}

int lw_order_pieces(const lw_order *order, int row, lw_piece *piece) {
  const lw_laid *r = &order->row[row];
  const lw_plan *plan = &order->plan;
  view v = {.order = order, .stretch = &order->stretch[r->stretch], .row = r, .piece = piece};
  v.spans = lw_spans_of(order, v.stretch, r->course, v.span);
  double depth = lw_plan_depth(plan, r->course), u = r->from_m;
  if (head_seen(&v, v.stretch->corner_before, r->start)) see(&v, LW_PIECE_HEAD, 0.0, depth, depth);
  if (r->first_m > 0.0) u = lay(&v, end_kind(&v, false), u, r->first_m);
  for (int i = 0; i < r->before; i++) u = lay(&v, LW_PIECE_WHOLE, u, plan->module_m);
  for (int i = 0; i < r->closer_count; i++) u = lay(&v, square(plan, r->closer_m[i]), u, r->closer_m[i]);
  for (int i = 0; i < r->after; i++) u = lay(&v, LW_PIECE_WHOLE, u, plan->module_m);
  if (r->last_m > 0.0) lay(&v, end_kind(&v, true), u, r->last_m);
  double end = v.span[v.spans - 1].u_to;
  if (head_seen(&v, v.stretch->corner_after, r->end)) see(&v, LW_PIECE_HEAD, end - depth, end, depth);
  return v.count;
}
