/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cutting.h"

#include <math.h>

#include "laying.h"

/* Which whole ones are sawn for the cut pieces, and what is left of each: once with every piece from a new
 * one (two halves from one), once with what is left cut again, the longest pieces first. */

typedef struct sawing {
  const lw_order *order;
  lw_stock stock;
  double cap_depth_m; /* of the sort of caps that is sawn; 0: blocks */
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

static bool is_of(const sawing *s, const lw_cut *cut) {
  return stock_of(cut) == s->stock && lw_laid_same(cut->cap_depth_m, s->cap_depth_m);
}

static bool alike(const lw_blank *a, const lw_blank *b) {
  if (a->stock != b->stock || !lw_laid_same(a->cap_depth_m, b->cap_depth_m) || a->pieces != b->pieces ||
      !lw_laid_same(a->rest_m, b->rest_m) || !lw_laid_same(a->far_m, b->far_m))
    return false;
  for (int i = 0; i < a->pieces; i++)
    if (!lw_laid_same(a->piece_m[i], b->piece_m[i])) return false;
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

/* What is over when a piece is taken from a blank; below 0: it does not fit. */
static double over(const lw_blank *blank, const lw_cut *cut) {
  return (nests(blank, cut) ? blank->far_m : blank->rest_m) - cut->long_m;
}

static bool may_share(const sawing *s, const lw_blank *blank, const lw_cut *cut) {
  bool halves =
      cut->kind == LW_CUT_HALF && blank->pieces == 1 && lw_laid_same(blank->piece_m[0], cut->long_m);
  return blank->count > 0 && (s->again || halves) && blank->pieces < LW_SAWN_MAX &&
         over(blank, cut) >= -LW_TAKEN_UP;
}

/* The saw takes its width; on a mitre more of the edge. */
static double sawn_off(double kerf_m, double rest_m, double saw_deg) {
  return fmax(rest_m - kerf_m / cos(saw_deg / LW_DEG_PER_RAD), 0.0);
}

static void take(double kerf_m, const lw_cut *cut, lw_blank *blank) {
  double from_m = nests(blank, cut) ? blank->far_m : blank->rest_m;
  bool mitre = is_mitred(cut) && !nests(blank, cut);
  blank->piece_m[blank->pieces] = cut->long_m;
  blank->short_m[blank->pieces++] = cut->short_m;
  blank->rest_m = sawn_off(kerf_m, from_m - cut->long_m, mitre ? cut->saw_deg : 0.0);
  blank->far_m = mitre ? sawn_off(kerf_m, from_m - cut->short_m, cut->saw_deg) : blank->rest_m;
  blank->mitre_deg = mitre ? cut->saw_deg : 0.0;
}

static void saw(sawing *s, const lw_cut *cut) {
  lw_blank taken = {.stock = s->stock, .rest_m = s->whole_m, .far_m = s->whole_m};
  taken.cap_depth_m = s->cap_depth_m;
  int best = -1;
  for (int i = s->first; i < s->count; i++)
    if (may_share(s, &s->blank[i], cut) && (best < 0 || over(&s->blank[i], cut) < over(&s->blank[best], cut)))
      best = i;
  if (best >= 0) {
    taken = s->blank[best];
    s->blank[best].count--;
  } else {
    s->sawn++;
  }
  take(s->kerf_m, cut, &taken);
  keep(s, &taken);
}

static int next_shorter(const sawing *s, const bool *done) {
  int best = -1;
  for (int i = 0; i < s->order->cut_count; i++) {
    const lw_cut *cut = &s->order->cut[i];
    if (done[i] || !is_of(s, cut)) continue;
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

/* What falls off a whole one when it is sawn for one piece only: what is left of that one. */
static void mark_waste(lw_order *order, const double whole_m[3], double kerf_m) {
  for (int i = 0; i < order->cut_count; i++) {
    lw_cut *cut = &order->cut[i];
    double whole = whole_m[stock_of(cut)];
    if (cut->kind == LW_CUT_HALF) continue; /* the other half is one too */
    lw_blank blank = {.rest_m = whole, .far_m = whole};
    take(kerf_m, cut, &blank);
    cut->waste_long_m = blank.far_m;
    cut->waste_short_m = blank.rest_m;
  }
}

/* One stock, or one sort of caps, both ways; what is shown goes into the order. */
static void saw_stock(lw_order *order, const sawing *what, bool asked, int sawn[2]) {
  lw_blank spare[LW_BLANK_MAX];
  for (int again = 0; again < 2; again++) {
    bool shown = (again == 1) == asked;
    sawing s = *what;
    s.again = again == 1;
    s.blank = shown ? order->blank : spare;
    s.first = s.count = shown ? order->blank_count : 0;
    saw_all(&s);
    if (shown) order->blank_count = s.count;
    sawn[again] = s.sawn;
  }
}

void lw_order_cutting(const lw_laying *laying) {
  const lw_case_order *o = laying->items;
  lw_order *order = laying->order;
  const double whole_m[3] = {laying->plan->unit_m, laying->plan->unit_m, o->cap_length.si};
  bool asked = o->offcuts.value == LW_YES;
  mark_waste(order, whole_m, o->saw_kerf.si);
  for (int stock = 0; stock < LW_STOCK_CAP; stock++) {
    sawing what = {.order = order, .stock = (lw_stock)stock, .whole_m = whole_m[stock]};
    int sawn[2];
    what.kerf_m = o->saw_kerf.si;
    saw_stock(order, &what, asked, sawn);
    order->sawn[stock] = sawn[0];
    order->sawn_again[stock] = sawn[1];
  }
  for (int i = 0; i < order->cap_sort_count; i++) {
    lw_cap_sort *sort = &order->cap_sort[i];
    sawing what = {.order = order, .stock = LW_STOCK_CAP, .whole_m = whole_m[LW_STOCK_CAP]};
    int sawn[2];
    what.kerf_m = o->saw_kerf.si;
    what.cap_depth_m = sort->depth_m;
    saw_stock(order, &what, asked, sawn);
    order->sawn[LW_STOCK_CAP] += sort->sawn = sawn[0];
    order->sawn_again[LW_STOCK_CAP] += sort->sawn_again = sawn[1];
  }
}
