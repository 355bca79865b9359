/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* Which whole ones are sawn for the cut pieces, and what is left of each: once with every piece from a new
 * one (two halves from one), once with what is left cut again, the longest pieces first. */

typedef struct sawing {
  const lw_order *order;
  lw_stock stock;
  double whole_m, kerf_m;
  bool again;
  lw_blank *blank; /* where the plan of the sawing goes */
  int count, first;
  int sawn;
} sawing;

static lw_stock stock_of(const lw_cut *cut) {
  bool cap = cut->kind == LW_CUT_CAP || cut->kind == LW_CUT_CAP_MITRED || cut->kind == LW_CUT_CAP_WEDGE;
  if (cap) return LW_STOCK_CAP;
  return cut->base_unit ? LW_STOCK_BASE_BLOCK : LW_STOCK_BLOCK;
}

static bool same(double a, double b) {
  return fabs(a - b) <= LW_TAKEN_UP;
}

static bool alike(const lw_blank *a, const lw_blank *b) {
  if (a->stock != b->stock || a->pieces != b->pieces || !same(a->rest_m, b->rest_m) ||
      !same(a->far_m, b->far_m))
    return false;
  for (int i = 0; i < a->pieces; i++)
    if (!same(a->piece_m[i], b->piece_m[i])) return false;
  return true;
}

/* When the list is full the count of whole ones still is right. */
static void keep(sawing *s, const lw_blank *blank) {
  for (int i = s->first; i < s->count; i++) {
    if (!alike(&s->blank[i], blank)) continue;
    s->blank[i].count++;
    return;
  }
  if (s->count >= LW_BLANK_MAX) return;
  s->blank[s->count] = *blank;
  s->blank[s->count++].count = 1;
}

/* One mitred end, and the other square. */
static bool is_mitred(const lw_cut *cut) {
  return cut->saw_deg > 0.0 && cut->saw_other_deg <= 0.0;
}

/* What a mitred piece leaves ends in the same mitre: turned round, the next one has it already. */
static bool nests(const lw_blank *blank, const lw_cut *cut) {
  return blank->mitre_deg > 0.0 && is_mitred(cut) && fabs(blank->mitre_deg - cut->saw_deg) < 1e-6;
}

/* What is over when a piece is taken from a blank; below 0: it does not fit. Two halves come from one with
 * the saw in the middle: each is short by half its width. */
static double over(const sawing *s, const lw_blank *blank, const lw_cut *cut) {
  double give = cut->kind == LW_CUT_HALF ? s->kerf_m : 0.0;
  return (nests(blank, cut) ? blank->far_m : blank->rest_m) + give - cut->long_m;
}

static bool may_share(const sawing *s, const lw_blank *blank, const lw_cut *cut) {
  bool halves = cut->kind == LW_CUT_HALF && blank->pieces == 1 && same(blank->piece_m[0], cut->long_m);
  return blank->count > 0 && (s->again || halves) && blank->pieces < LW_SAWN_MAX &&
         over(s, blank, cut) >= -LW_TAKEN_UP;
}

/* The saw takes its width; on a mitre more of the edge. */
static double sawn_off(const sawing *s, double rest_m, double saw_deg) {
  return fmax(rest_m - s->kerf_m / cos(saw_deg / LW_DEG_PER_RAD), 0.0);
}

static void take(const sawing *s, const lw_cut *cut, lw_blank *blank) {
  double from_m = nests(blank, cut) ? blank->far_m : blank->rest_m;
  bool mitre = is_mitred(cut) && !nests(blank, cut);
  blank->piece_m[blank->pieces] = cut->long_m;
  blank->short_m[blank->pieces++] = cut->short_m;
  blank->rest_m = sawn_off(s, from_m - cut->long_m, 0.0);
  blank->far_m = mitre ? sawn_off(s, from_m - cut->short_m, cut->saw_deg) : blank->rest_m;
  blank->mitre_deg = mitre ? cut->saw_deg : 0.0;
}

static void saw(sawing *s, const lw_cut *cut) {
  lw_blank taken = {.stock = s->stock, .rest_m = s->whole_m, .far_m = s->whole_m};
  int best = -1;
  for (int i = s->first; i < s->count; i++)
    if (may_share(s, &s->blank[i], cut) &&
        (best < 0 || over(s, &s->blank[i], cut) < over(s, &s->blank[best], cut)))
      best = i;
  if (best >= 0) {
    taken = s->blank[best];
    s->blank[best].count--;
  } else {
    s->sawn++;
  }
  take(s, cut, &taken);
  keep(s, &taken);
}

static int next_shorter(const sawing *s, const bool *done) {
  int best = -1;
  for (int i = 0; i < s->order->cut_count; i++) {
    const lw_cut *cut = &s->order->cut[i];
    if (done[i] || stock_of(cut) != s->stock) continue;
    if (best < 0 || cut->long_m > s->order->cut[best].long_m) best = i;
  }
  return best;
}

static void drop_empty(sawing *s) {
  int kept = s->first;
  for (int i = s->first; i < s->count; i++)
    if (s->blank[i].count > 0) s->blank[kept++] = s->blank[i];
  s->count = kept;
}

static void saw_all(sawing *s) {
  bool done[LW_CUT_MAX] = {false};
  for (int i; (i = next_shorter(s, done)) >= 0;) {
    done[i] = true;
    for (int n = 0; n < s->order->cut[i].count; n++) saw(s, &s->order->cut[i]);
  }
  drop_empty(s);
}

/* What falls off a whole one when it is sawn for one piece only: beyond the saw at its short edge. */
static void mark_waste(lw_order *order, const double whole_m[3], double kerf_m) {
  for (int i = 0; i < order->cut_count; i++) {
    lw_cut *cut = &order->cut[i];
    double whole = whole_m[stock_of(cut)];
    if (cut->kind == LW_CUT_HALF) continue; /* the other half is one too */
    cut->waste_long_m = fmax(0.0, whole - cut->short_m - kerf_m);
    cut->waste_short_m = fmax(0.0, whole - cut->long_m - kerf_m);
  }
}

void lw_order_cutting(lw_laying *laying, const lw_result *result) {
  const lw_case_order *o = &result->given.order;
  lw_order *order = laying->order;
  const double whole_m[3] = {laying->plan->unit_m, laying->plan->unit_m, o->cap_length.si};
  lw_blank spare[LW_BLANK_MAX];
  bool asked = o->offcuts.value == LW_YES;
  mark_waste(order, whole_m, o->saw_kerf.si);
  for (int stock = 0; stock < 3; stock++)
    for (int again = 0; again < 2; again++) {
      bool shown = (again == 1) == asked;
      sawing s = {.order = order,
                  .stock = (lw_stock)stock,
                  .whole_m = whole_m[stock],
                  .kerf_m = o->saw_kerf.si,
                  .again = again == 1,
                  .blank = shown ? order->blank : spare};
      s.first = s.count = shown ? order->blank_count : 0;
      saw_all(&s);
      if (shown) order->blank_count = s.count;
      (again ? order->sawn_again : order->sawn)[stock] = s.sawn;
    }
}
