/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cap_pieces.h"

#include <math.h>

#include <lowwall/order.h>

#include "laying.h"

/* The caps of a run one by one, as they are seen from the front. */

typedef struct listing {
  const lw_cap_row *caps;
  lw_piece *piece;
  int count;
  double laid_m; /* modules so far */
} listing;

/* Where the joint after a length of laying stands on the lowest face; the ends are those of the line. */
static double on_base(const lw_cap_row *c, double laid_m) {
  double at = c->zero_m + laid_m * c->base_per_laid;
  return fmin(fmax(at, c->base_from_m), c->base_to_m);
}

static void put(listing *l, double module_m) {
  if (!(module_m > 0.0) || l->count >= LW_PIECE_MAX) return;
  bool whole = fabs(module_m - l->caps->module_m) <= LW_TAKEN_UP;
  lw_piece *p = &l->piece[l->count];
  *p = (lw_piece){.kind = whole ? LW_PIECE_WHOLE : LW_PIECE_CUT, .length_m = module_m - l->caps->gap_m};
  p->from_m = l->count == 0 ? l->caps->base_from_m : on_base(l->caps, l->laid_m);
  l->laid_m += module_m;
  p->to_m = on_base(l->caps, l->laid_m);
  l->count++;
}

int lw_order_cap_pieces(const lw_order *order, int run, lw_piece *piece) {
  const lw_cap_row *c = &order->run[run].caps;
  listing l = {.caps = c, .piece = piece};
  if (!c->known) return 0;
  put(&l, c->first_m);
  for (int i = 0; i < c->before; i++) put(&l, c->module_m);
  for (int i = 0; i < 2; i++) put(&l, c->closer_m[i]);
  for (int i = 0; i < c->after; i++) put(&l, c->module_m);
  put(&l, c->last_m);
  if (l.count == 0) return 0;
  piece[l.count - 1].to_m = c->base_to_m;
  if (c->mitred[0]) piece[0].kind = LW_PIECE_MITRED;
  if (c->mitred[1]) piece[l.count - 1].kind = LW_PIECE_MITRED;
  return l.count;
}
