/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slip_dense.h"

#include <math.h>

enum { SLICES_MAX = 512 };

/* One upright column: what it weighs, what it could weigh less, and what its base meets. */
typedef struct column {
  double x, width, base, weight, load, spare, pore, friction, cohesion, sine, cosine;
} column;

static double arc(const lw_slip_circle *c, double x) {
  return c->centre_y_m -
         sqrt(fmax(c->radius_m * c->radius_m - (x - c->centre_x_m) * (x - c->centre_x_m), 0.0));
}

static double surface(const lw_slip_ground *g, double x) {
  if (x < g->corner[0].x_m) return g->corner[0].y_m;
  for (int i = 0; i + 1 < g->corner_count; i++) {
    lw_corner p = g->corner[i], q = g->corner[i + 1];
    if (x >= p.x_m && x < q.x_m) return p.y_m + (q.y_m - p.y_m) * (x - p.x_m) / (q.x_m - p.x_m);
  }
  return g->corner[g->corner_count - 1].y_m;
}

/* Lowest and highest point of the wall above x; false where there is none. */
static bool wall_at(const lw_slip_ground *g, double x, double *low, double *high) {
  *low = INFINITY;
  *high = -INFINITY;
  for (int i = 0; i < g->body_count; i++) {
    lw_corner p = g->body[i], q = g->body[(i + 1) % g->body_count];
    if ((x < p.x_m) == (x < q.x_m)) continue;
    double y = p.y_m + (q.y_m - p.y_m) * (x - p.x_m) / (q.x_m - p.x_m);
    *low = fmin(*low, y);
    *high = fmax(*high, y);
  }
  return *high > *low;
}

static double water_at(const lw_slip_ground *g, double x, double soil, bool wall) {
  const lw_slip_water *w = &g->water;
  double level = x < w->front_x_m ? w->front_y_m : w->rear_y_m;
  if (x >= w->front_x_m && x < w->rear_x_m && isfinite(w->front_y_m) && isfinite(w->rear_y_m))
    level = w->front_y_m + (w->rear_y_m - w->front_y_m) * (x - w->front_x_m) / (w->rear_x_m - w->front_x_m);
  else if (x >= w->front_x_m && x < w->rear_x_m)
    level = fmax(w->front_y_m, w->rear_y_m);
  return wall ? level : fmin(level, soil);
}

static const lw_slip_soil *soil_at(const lw_slip_ground *g, double x, double y) {
  for (int i = 0; x > g->layer_x_m && i < g->soil_count; i++)
    if (y > g->soil[i].bottom_y_m) return &g->soil[i];
  return &g->below;
}

/* Soil from low to high, layer by layer, moist above the water and saturated below it. */
static double weight_of(const lw_slip_ground *g, double x, double low, double high, double water) {
  double cut[LW_SOIL_MAX + 4], sum = 0.0;
  int count = 0;
  if (high <= low) return 0.0;
  cut[count++] = high;
  cut[count++] = low;
  cut[count++] = fmin(fmax(water, low), high);
  cut[count++] = fmin(fmax(x > g->raised_x_m ? g->raised_y_m : low, low), high);
  for (int i = 0; i < g->soil_count && x > g->layer_x_m; i++)
    cut[count++] = fmin(fmax(g->soil[i].bottom_y_m, low), high);
  for (int i = 0; i < count; i++) {
    double below = low;
    for (int k = 0; k < count; k++)
      if (cut[k] < cut[i] && cut[k] > below) below = cut[k];
    double middle = 0.5 * (cut[i] + below);
    const lw_slip_soil *soil = soil_at(g, x, middle);
    double moist = soil->unit_weight_kn_per_m3, wet = soil->saturated_unit_weight_kn_per_m3;
    bool first = true;
    for (int k = 0; k < i; k++) first = first && !(fabs(cut[k] - cut[i]) <= 0.0);
    if (!first) continue;
    if (x > g->raised_x_m && middle > g->raised_y_m) {
      moist = fmax(moist, g->raised_kn_per_m3);
      wet = fmax(wet, moist);
    }
    sum += (cut[i] - below) * (middle < water ? wet : moist);
  }
  return sum;
}

/* A footing in the ground loads the part of a column whose base lies below it; a line load is 10 mm wide. */
static double load_on(const lw_slip_ground *g, const lw_slip_circle *c, double from, double to) {
  double sum = 0.0;
  for (int i = 0; i < g->load_count; i++) {
    const lw_slip_load *l = &g->load[i];
    bool line = l->force_kn_per_m > 0.0;
    double a = l->from_x_m - (line ? 0.005 : 0.0), b = l->to_x_m + (line ? 0.005 : 0.0);
    double level = l->below_m > 0.0 ? surface(g, l->from_x_m) - l->below_m : INFINITY;
    double low = fmax(a, from), high = fmin(b, to),
           pressure = line ? l->force_kn_per_m / 0.01 : l->pressure_kpa;
    for (int k = 0; k < 8 && high > low; k++) {
      double x = low + (k + 0.5) / 8.0 * (high - low);
      if (arc(c, line ? l->from_x_m : x) <= level) sum += pressure * (high - low) / 8.0;
    }
  }
  return sum;
}

static void fill(const lw_slip_ground *g, const lw_slip_circle *c, double from, double to, column *at) {
  double x = 0.5 * (from + to), low, high, soil = surface(g, x), width = to - from;
  bool wall = wall_at(g, x, &low, &high);
  *at = (column){.x = x, .width = width, .base = arc(c, x)};
  double water = water_at(g, x, soil, wall), rise = arc(c, to) - arc(c, from), slant = hypot(width, rise);
  at->sine = (x - c->centre_x_m) / c->radius_m;
  at->cosine = width / slant;
  at->weight = wall ? weight_of(g, x, at->base, low, water) + (high - low) * g->body_kn_per_m3 +
                          weight_of(g, x, high, soil, water)
                    : weight_of(g, x, at->base, soil, water);
  at->weight *= width;
  if (at->sine > 0.0) at->load = load_on(g, c, from, to);
  if (!wall && x < g->layer_x_m) at->spare = g->below.spare_kn_per_m3 * (soil - at->base) * width;
  at->pore = fmax(water - at->base, 0.0) * g->water.unit_weight_kn_per_m3;
  const lw_slip_soil *in = soil_at(g, x, at->base);
  at->friction = tan(in->friction_rad);
  at->cohesion = in->cohesion_kpa;
}

/* The classical iteration; loads times `loaded`, and less ground in front where `spared` at the factor
 * before. */
static double bishop(const column *all, int count, double loaded, double spared) {
  double factor = 1.0;
  for (int round = 0; round < 200; round++) {
    double holds = 0.0, drives = 0.0, least = 1.0;
    for (int i = 0; i < count; i++) {
      const column *s = &all[i];
      double m = s->cosine + s->sine * s->friction / factor;
      double weight = s->weight + loaded * s->load;
      if (spared > 0.0 && s->friction / (s->cosine + s->sine * s->friction / spared) > spared * s->sine)
        weight -= s->spare;
      least = fmin(least, m);
      drives += weight * s->sine;
      holds += (s->cohesion * s->width + fmax(weight - s->pore * s->width, 0.0) * s->friction) / m;
    }
    if (drives <= 1e-9 || least < 0.2) return INFINITY;
    double next = holds / drives;
    if (fabs(next - factor) < 1e-6 * factor) return next;
    factor = next;
  }
  return INFINITY;
}

static bool above(const lw_slip_circle *c, lw_corner at) {
  return at.x_m >= c->exit_x_m - 1e-7 && at.x_m <= c->entry_x_m + 1e-7 && arc(c, at.x_m) <= at.y_m + 1e-7;
}

/* Each corner of wall and pad lies above the circle, and so does the surface, but for the step the wall
 * holds. */
static bool cuts(const lw_slip_ground *g, const lw_slip_circle *c) {
  if (c->centre_y_m < c->entry_y_m - 1e-7) return true;
  if (c->centre_x_m > c->exit_x_m && c->centre_y_m - c->radius_m < g->floor_y_m - 1e-7) return true;
  for (int i = 0; i < g->body_count; i++)
    if (!above(c, g->body[i])) return true;
  lw_corner pad[] = {{g->pad_front_m, g->pad_y_m}, {g->pad_rear_m, g->pad_y_m}};
  for (int i = 0; i < 2 && g->body_count > 0; i++)
    if (!above(c, pad[i])) return true;
  for (int i = 0; i < g->corner_count; i++) {
    double low, high, x = g->corner[i].x_m;
    bool crest = i + 1 < g->corner_count && x >= g->corner[i + 1].x_m && g->body_count > 0 && x > 0.0 &&
                 (wall_at(g, x - 1e-6, &low, &high) || wall_at(g, x + 1e-6, &low, &high));
    if (x > c->exit_x_m && x < c->entry_x_m && !crest && arc(c, x) > g->corner[i].y_m + 1e-7) return true;
  }
  return false;
}

double dense_factor(const lw_slip_ground *g, const lw_slip_circle *c, int slices) {
  column all[SLICES_MAX] = {0};
  double width = (c->entry_x_m - c->exit_x_m) / slices, factor;
  bool loaded = false, spare = false;
  if (slices < 1 || slices > SLICES_MAX || cuts(g, c)) return INFINITY;
  for (int i = 0; i < slices; i++) {
    fill(g, c, c->exit_x_m + i * width, c->exit_x_m + (i + 1) * width, &all[i]);
    loaded = loaded || all[i].load > 0.0;
    spare = spare || all[i].spare > 0.0;
  }
  factor = bishop(all, slices, 1.0, 0.0);
  if (isfinite(factor) && loaded) factor = fmin(factor, bishop(all, slices, 0.0, 0.0));
  for (int round = 0; spare && isfinite(factor) && round < 3; round++) {
    factor = fmin(factor, bishop(all, slices, 1.0, factor));
    if (loaded) factor = fmin(factor, bishop(all, slices, 0.0, factor));
  }
  return factor;
}

/* A trial: distances of exit and entry from the near ends of the box, and how deep the arc hangs between the
 * least that clears everything and the most that does not overhang. */
typedef struct trial {
  double ahead, behind, depth, factor;
} trial;

static void hang(const lw_slip_circle *ends, double sag, lw_slip_circle *c) {
  double dx = ends->entry_x_m - ends->exit_x_m, dy = ends->entry_y_m - ends->exit_y_m;
  double half = 0.5 * hypot(dx, dy), up = (half * half - sag * sag) / (2.0 * sag);
  *c = *ends;
  c->radius_m = up + sag;
  c->centre_x_m = 0.5 * (ends->exit_x_m + ends->entry_x_m) - up * dy / (2.0 * half);
  c->centre_y_m = 0.5 * (ends->exit_y_m + ends->entry_y_m) + up * dx / (2.0 * half);
}

/* From which depth on between two ends nothing is cut; INFINITY: from none. */
static double ends_of(const lw_slip_ground *g, const trial *t, lw_slip_circle *ends, double *most) {
  lw_slip_circle c;
  *ends =
      (lw_slip_circle){.exit_x_m = g->box.exit_to_m - t->ahead, .entry_x_m = g->box.entry_from_m + t->behind};
  ends->exit_y_m = surface(g, ends->exit_x_m);
  ends->entry_y_m = surface(g, ends->entry_x_m);
  double dx = ends->entry_x_m - ends->exit_x_m, dy = ends->entry_y_m - ends->exit_y_m,
         half = 0.5 * hypot(dx, dy);
  double upright = half * fmax(dy, 0.0) / dx, low = 1e-6 * half;
  *most = hypot(half, upright) - upright;
  double high = *most * (1.0 - 1e-9);
  hang(ends, high, &c);
  if (cuts(g, &c)) return INFINITY;
  for (int i = 0; i < 22; i++) {
    double sag = 0.5 * (low + high);
    hang(ends, sag, &c);
    if (cuts(g, &c))
      low = sag;
    else
      high = sag;
  }
  return high;
}

static void look(const lw_slip_ground *g, trial *t, int depths, double from, double to, int slices) {
  lw_slip_circle ends, c;
  double most, least = ends_of(g, t, &ends, &most);
  t->factor = INFINITY;
  for (int i = 0; i < depths && isfinite(least); i++) {
    double depth = from + (to - from) * i / fmax(depths - 1.0, 1.0);
    hang(&ends, least + (most - least) * depth * 0.999, &c);
    double factor = dense_factor(g, &c, slices);
    if (factor < t->factor) t->depth = depth, t->factor = factor;
  }
}

static trial finer(const lw_slip_ground *g, trial at, double step, double depth_step) {
  trial best = at;
  for (int i = -1; i <= 1; i++)
    for (int k = -1; k <= 1; k++) {
      trial t = {.ahead = fmax(at.ahead, 1e-3) * pow(step, i),
                 .behind = fmax(at.behind, 1e-3) * pow(step, k)};
      t.ahead = fmin(t.ahead, g->box.exit_to_m - g->box.exit_from_m);
      t.behind = fmin(t.behind, g->box.entry_to_m - g->box.entry_from_m);
      look(g, &t, 5, fmax(at.depth - depth_step, 0.0), fmin(at.depth + depth_step, 1.0), 60);
      if (t.factor < best.factor) best = t;
    }
  return best;
}

double dense_least(const lw_slip_ground *g, double step) {
  double ahead_most = g->box.exit_to_m - g->box.exit_from_m,
         behind_most = g->box.entry_to_m - g->box.entry_from_m;
  trial best = {.factor = INFINITY};
  for (double ahead = 0.0; ahead <= ahead_most; ahead = fmax(0.02, ahead * step))
    for (double behind = 0.0; behind <= behind_most; behind = fmax(0.02, behind * step)) {
      trial t = {.ahead = ahead, .behind = behind};
      look(g, &t, 9, 0.0, 1.0, 30);
      if (t.factor < best.factor) best = t;
    }
  if (!isfinite(best.factor)) return INFINITY;
  look(g, &best, 1, best.depth, best.depth, 60);
  for (double share = step, depth = 0.12; share > 1.02; share = sqrt(share), depth *= 0.6)
    best = finer(g, best, share, depth);
  double found = best.factor;
  look(g, &best, 1, best.depth, best.depth, SLICES_MAX);
  return isfinite(best.factor) ? best.factor : found;
}
