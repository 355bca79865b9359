/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* Whether Bishop's factor of a circle lies above a number, without the factor.
 *
 * With h(F) = Σ [c b + max(W - u b, 0) tan φ]/(cos α + sin α tan φ/F) and D = Σ W sin α the factor is
 * where h(F)/F = D. Each part of h(F)/F falls as F grows, as long as cos α + sin α tan φ/F > 0; so there is
 * one such place, and h(X) > X D says that it lies above X. Loads that may be absent and weight that may be
 * spared make several lists of slices of one circle, of which lw_slip_worse takes some: all of them lie above
 * X where the least that each slice can give adds up to more than nothing, with the loads and without. */

/* The factor is found to 1e-8. */
static const double MORE = 1.0 + 1e-6;

/* What a slice gives to h(X) - X D. */
typedef struct part {
  double held, over_m, factor; /* c b, 1/m_alpha, X */
} part;

static double given(const lw_slip_slice *s, const part *p, double weight) {
  double carried = lw_larger(weight - s->pore_kpa * s->width_m, 0.0);
  return (p->held + carried * s->tan_friction) * p->over_m - p->factor * weight * s->sine;
}

/* At any weight that may be spared: the least lies at an end, or where nothing is carried any more. */
static double least_given(const lw_slip_slice *s, const part *p, double weight) {
  double light = weight - s->spare_kn_per_m;
  if (s->spare_kn_per_m <= 0.0 || s->tan_friction * p->over_m <= p->factor * s->sine)
    return given(s, p, weight);
  if (s->sine <= 0.0) return given(s, p, light);
  return given(s, p, lw_larger(light, lw_smaller(s->pore_kpa * s->width_m, weight)));
}

bool lw_slip_above(const lw_slip_slices *list, double factor) {
  double x = factor * MORE, over = 1.0 / x, with = 0.0, without = 0.0;
  for (int i = 0; i < list->count; i++) {
    const lw_slip_slice *s = &list->slice[i];
    double m_alpha = s->cosine + s->sine * s->tan_friction * over;
    if (!(m_alpha > 0.0)) return false;
    part p = {s->cohesion_kpa * s->width_m, 1.0 / m_alpha, x};
    double loaded = least_given(s, &p, s->weight_kn_per_m);
    with += loaded;
    without += s->load_kn_per_m > 0.0 ? least_given(s, &p, s->weight_kn_per_m - s->load_kn_per_m) : loaded;
  }
  return with > 0.0 && without > 0.0;
}
