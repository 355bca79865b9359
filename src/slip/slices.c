/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "parts.h"

/* What lies above a circle, slice by slice. */

static const double SAME_M = 1e-9;

typedef struct column {
  double weight, moment; /* kN per m2 of plan, and that times its level */
  bool shaken;           /* only an earthquake asks for the moment */
} column;

typedef struct span {
  double low, high, water;
} span;

static void weigh(const span *s, double moist, double saturated, column *sum) {
  if (s->high <= s->low) return;
  double level = lw_smaller(lw_larger(s->water, s->low), s->high);
  double dry = moist * (s->high - level), wet = saturated * (level - s->low);
  sum->weight += dry + wet;
  if (sum->shaken) sum->moment += 0.5 * (dry * (s->high + level) + wet * (level + s->low));
}

/* Soil between two levels of one strip, layer by layer from the top. */
static void weigh_soil(const lw_slip_strips *strips, const lw_slip_strip *at, const span *whole,
                       column *sum) {
  const lw_slip_ground *ground = strips->ground;
  double high = whole->high;
  for (int i = 0; at->layered && i < ground->soil_count && high > whole->low; i++) {
    const lw_slip_soil *soil = &ground->soil[i];
    double low = lw_larger(soil->bottom_y_m, whole->low), moist = soil->unit_weight_kn_per_m3;
    if (at->raised && high > ground->raised_y_m) {
      double step = lw_larger(low, ground->raised_y_m), heavy = lw_larger(moist, ground->raised_kn_per_m3);
      weigh(&(span){step, high, whole->water}, heavy, lw_larger(heavy, soil->saturated_unit_weight_kn_per_m3),
            sum);
      high = step;
    }
    weigh(&(span){low, high, whole->water}, moist, soil->saturated_unit_weight_kn_per_m3, sum);
    high = lw_smaller(high, low);
  }
  weigh(&(span){whole->low, high, whole->water}, ground->below.unit_weight_kn_per_m3,
        ground->below.saturated_unit_weight_kn_per_m3, sum);
}

static double along(const lw_slip_line *line, double share) {
  return line->start + share * (line->end - line->start);
}

static column weigh_column(const lw_slip_strips *strips, const lw_slip_strip *at, double share,
                           double base_m) {
  column sum = {.shaken = strips->ground->seismic_horizontal > 0.0};
  double soil = along(&at->soil, share), water = isfinite(at->water.start) ? along(&at->water, share) : -1e30;
  if (!at->has_body) {
    weigh_soil(strips, at, &(span){base_m, soil, water}, &sum);
    return sum;
  }
  double bottom = along(&at->bottom, share), top = along(&at->top, share);
  double weight = strips->ground->body_kn_per_m3;
  /* What a wall overhangs is filled behind it, whatever the ground's line does under it. */
  weigh_soil(strips, at, &(span){base_m, bottom, water}, &sum);
  weigh(&(span){bottom, top, -1e30}, weight, weight, &sum);
  weigh_soil(strips, at, &(span){top, lw_larger(soil, top), water}, &sum);
  return sum;
}

/* Strength where the base of a slice lies. */
static void strength(const lw_slip_strips *strips, const lw_slip_strip *at, double share,
                     lw_slip_slice *slice) {
  const lw_slip_ground *ground = strips->ground;
  bool paired = ground->paired_kpa > 0.0, deep = paired && slice->base_y_m <= along(&at->paired, share);
  double besides = !paired ? 0.0 : deep ? ground->paired_kpa : ground->shallow_kpa;
  slice->tan_friction = strips->tan_below;
  slice->cohesion_kpa = ground->below.cohesion_kpa + besides;
  for (int i = 0; at->layered && i < ground->soil_count; i++) {
    if (slice->base_y_m <= ground->soil[i].bottom_y_m) continue;
    slice->tan_friction = strips->tan_friction[i];
    slice->cohesion_kpa = ground->soil[i].cohesion_kpa;
    return;
  }
}

/* Length of the arc over a chord, by its square: the series is good to 1e-7 for slices, and needs no arc
 * sine. */
static double arc_of(double chord_m2, double over_radius) {
  double zz = 0.25 * chord_m2 * over_radius * over_radius;
  return sqrt(chord_m2) * (1.0 + zz * (1.0 / 6.0 + zz * (3.0 / 40.0 + zz * (15.0 / 336.0))));
}

static double circle_y(const lw_slip_circle *circle, double x_m) {
  double dx = x_m - circle->centre_x_m, rest = circle->radius_m * circle->radius_m - dx * dx;
  return circle->centre_y_m - sqrt(lw_larger(rest, 0.0));
}

/* On a slice: line loads, and what stands in the ground, if the circle passes below it. */
static column loads_on(const lw_slip_strips *strips, const lw_slip_slice *slice, double from_m,
                       double top_m) {
  const lw_slip_ground *ground = strips->ground;
  column sum = {.weight = 0.0};
  for (int i = 0; i < ground->load_count; i++) {
    const lw_slip_load *load = &ground->load[i];
    double level = lw_smaller(strips->load_y_m[i], top_m), force = 0.0;
    bool line = load->to_x_m - load->from_x_m <= SAME_M;
    if (slice->base_y_m > strips->load_y_m[i]) continue;
    if (line && load->from_x_m >= from_m && load->from_x_m < from_m + slice->width_m)
      force = load->force_kn_per_m;
    else if (load->below_m > 0.0 && load->from_x_m < slice->x_m && slice->x_m < load->to_x_m)
      force = load->pressure_kpa * slice->width_m;
    sum.weight += force;
    sum.moment += force * level;
  }
  return sum;
}

static void slice_of(const lw_slip_strips *strips, const lw_slip_strip *at, const lw_slip_circle *circle,
                     double over_radius, const double edge[4], lw_slip_slice *slice) {
  double from = edge[0], to = edge[1], width = to - from, middle = 0.5 * (from + to);
  double share = (middle - at->from_x_m) * at->over_width;
  double fall = edge[3] - edge[2];
  slice->x_m = middle;
  slice->width_m = width;
  slice->base_y_m = circle_y(circle, middle);
  slice->length_m = arc_of(width * width + fall * fall, over_radius);
  slice->sine = (middle - circle->centre_x_m) * over_radius;
  slice->cosine = lw_smaller(width / slice->length_m, 1.0);
  column sum = weigh_column(strips, at, share, slice->base_y_m);
  double top = along(&at->soil, share);
  column load = {.weight = 0.0};
  slice->spare_kn_per_m = at->spare_kn_per_m3 * lw_larger(top - slice->base_y_m, 0.0) * width;
  if (strips->by_slice) load = loads_on(strips, slice, from, top);
  load.weight += at->pressure_kpa * width;
  load.moment += at->pressure_kpa * width * top;
  if (slice->sine <= 0.0) load = (column){.weight = 0.0};
  slice->load_kn_per_m = load.weight;
  slice->weight_kn_per_m = sum.weight * width + load.weight;
  slice->load_y_m = top;
  slice->weight_y_m = slice->base_y_m;
  if (sum.shaken && load.weight > 0.0) slice->load_y_m = load.moment / load.weight;
  if (sum.shaken && slice->weight_kn_per_m > 0.0)
    slice->weight_y_m = (sum.moment * width + load.moment) / slice->weight_kn_per_m;
  double water = isfinite(at->water.start) ? along(&at->water, share) - slice->base_y_m : 0.0;
  slice->pore_kpa = lw_larger(lw_larger(water, 0.0) * strips->ground->water.unit_weight_kn_per_m3,
                              strips->ground->pore_ratio * sum.weight);
  strength(strips, at, share, slice);
}

/* Where the circle passes from one layer into the next, from the front, or below what stands in the ground: a
 * slice has one strength, and carries of a footing what is above it. */
typedef struct crossings {
  int count;
  double x_m[2 * (LW_SOIL_MAX + LW_SLIP_LOAD_MAX) + 1];
} crossings;

/* Where a slip crosses a level, as far as that reaches. */
typedef struct level {
  double y_m, from_x_m, to_x_m;
} level;

static void cross(crossings *all, double x_m) {
  int i = all->count++;
  for (; i > 0 && all->x_m[i - 1] > x_m; i--) all->x_m[i] = all->x_m[i - 1];
  all->x_m[i] = x_m;
}

static void cross_at(const lw_slip_circle *circle, const level *at, crossings *all) {
  double up = circle->centre_y_m - at->y_m, rest = circle->radius_m * circle->radius_m - up * up;
  if (!(up > 0.0) || rest <= 0.0) return;
  double low = circle->centre_x_m - sqrt(rest), high = circle->centre_x_m + sqrt(rest);
  if (low > at->from_x_m && low < at->to_x_m) cross(all, low);
  if (high > at->from_x_m && high < at->to_x_m) cross(all, high);
}

static void crossings_of(const lw_slip_strips *strips, const lw_slip_circle *circle, crossings *all) {
  const lw_slip_ground *ground = strips->ground;
  all->count = 0;
  for (int i = 0; i < ground->soil_count; i++)
    cross_at(circle, &(level){ground->soil[i].bottom_y_m, ground->layer_x_m, INFINITY}, all);
  for (int i = 0; i < ground->load_count; i++) {
    const lw_slip_load *load = &ground->load[i];
    if (load->below_m > 0.0)
      cross_at(circle, &(level){strips->load_y_m[i], load->from_x_m, load->to_x_m}, all);
  }
  cross(all, INFINITY);
}

/* Slices no wider than the widest between two places of a strip. */
static bool slice_between(const lw_slip_strips *strips, const lw_slip_strip *at, const lw_slip_circle *circle,
                          const double range[3], lw_slip_slices *list) {
  double from = range[0], to = range[1], widest = range[2];
  int parts = (int)ceil((to - from) / widest - 1e-6);
  parts = parts < 1 ? 1 : parts;
  if (list->count + parts > LW_SLIP_SLICE_MAX) return false;
  double width = (to - from) / parts, over_radius = 1.0 / circle->radius_m;
  double edge[4] = {from, from, 0.0, circle_y(circle, from)};
  for (int k = 1; k <= parts; k++) {
    edge[0] = edge[1];
    edge[2] = edge[3];
    edge[1] = from + k * width;
    edge[3] = circle_y(circle, edge[1]);
    slice_of(strips, at, circle, over_radius, edge, &list->slice[list->count++]);
  }
  return true;
}

bool lw_slip_slice_up(const lw_slip_strips *strips, const lw_slip_circle *circle, int slices,
                      lw_slip_slices *list) {
  double widest = (circle->entry_x_m - circle->exit_x_m) / slices;
  int i = 0;
  crossings all;
  crossings_of(strips, circle, &all);
  list->count = 0;
  while (i < strips->count && strips->strip[i].to_x_m <= circle->exit_x_m + SAME_M) i++;
  for (; i < strips->count && strips->strip[i].from_x_m < circle->entry_x_m - SAME_M; i++) {
    const lw_slip_strip *at = &strips->strip[i];
    double from = lw_larger(at->from_x_m, circle->exit_x_m), to = lw_smaller(at->to_x_m, circle->entry_x_m);
    for (int c = 0; from < to - SAME_M; c++) {
      double end = at->layered || strips->by_slice ? lw_smaller(all.x_m[c], to) : to;
      if (end <= from + SAME_M) continue;
      if (!slice_between(strips, at, circle, (double[3]){from, end, widest}, list)) return false;
      from = end;
    }
  }
  return list->count > 0;
}
