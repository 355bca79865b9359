/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "soil_on_wall.h"

#include <math.h>

#include "base/extremes.h"
#include "wall/polygon.h"
#include "forces.h"

/* Soil that stands on heel, steps or a battered back, in front of the plane that the thrust acts on. It is
 * taken column by column between the corners of the outline, each column cut at layers and water. */

enum { CORNERS = 12 };

typedef struct piece {
  lw_corner corner[CORNERS];
  int count;
} piece;

/* Sums of two groups: below and above the level where the ground meets the wall, as the books list them. */
typedef struct tally {
  double area, weight, moved, mx, my;
} tally;

static void weigh(const piece *column, double low_m, double high_m, double unit_weight, double moved,
                  tally *sum) {
  if (high_m <= low_m) return;
  piece above, band;
  above.count = lw_polygon_cut(column->corner, column->count, low_m, true, above.corner);
  band.count = lw_polygon_cut(above.corner, above.count, high_m, false, band.corner);
  if (band.count < 3) return;
  double area;
  lw_corner at;
  lw_polygon_area(band.corner, band.count, &area, &at);
  double weight = area * unit_weight;
  sum->area += area;
  sum->weight += weight;
  sum->moved += area * moved;
  sum->mx += weight * at.x_m;
  sum->my += weight * at.y_m;
}

typedef struct in_hand {
  const lw_site *site;
  const lw_ground *ground;
  const lw_section *section;
  const lw_back_plane *back;
} in_hand;

/* One column of soil, layer by layer, dry above the water and buoyant below it. */
static void weigh_column(const in_hand *at, const piece *column, tally sum[2]) {
  const lw_site *site = at->site;
  double height_m = at->section->height_m, ground_y_m = at->back->ground_y_m;
  double water = height_m - at->ground->water_depth_m, high = INFINITY;
  for (int i = 0; i < site->soil_count; i++) {
    const lw_soil *soil = &site->soil[i];
    double low = i == site->soil_count - 1 ? -INFINITY : height_m - soil->bottom_m;
    double wet = soil->saturated_unit_weight_kn_per_m3 - site->water_unit_weight_kn_per_m3;
    double dry_moved = soil->unit_weight_kn_per_m3;
    double wet_moved = at->ground->seismic.pervious ? dry_moved : soil->saturated_unit_weight_kn_per_m3;
    for (int above = 0; above < 2; above++) {
      double from = above ? lw_larger(low, ground_y_m) : low,
             to = above ? high : lw_smaller(high, ground_y_m);
      weigh(column, lw_larger(from, water), to, soil->light_unit_weight_kn_per_m3, dry_moved, &sum[above]);
      weigh(column, from, lw_smaller(to, water), wet, wet_moved, &sum[above]);
    }
    high = low;
  }
}

/* Level of the wall's own upper surface at two ends of a span that holds no corner. */
static bool surface_of(const lw_section *section, double xa, double xb, double *ya, double *yb) {
  double middle = 0.5 * (xa + xb), best = -INFINITY;
  for (int i = 0; i < section->outline_count; i++) {
    const lw_corner *p = &section->outline[i], *q = &section->outline[(i + 1) % section->outline_count];
    double run = q->x_m - p->x_m;
    if ((p->x_m - middle) * (q->x_m - middle) >= 0.0) continue;
    double slope = (q->y_m - p->y_m) / run, y = p->y_m + slope * (middle - p->x_m);
    if (y <= best) continue;
    best = y;
    *ya = p->y_m + slope * (xa - p->x_m);
    *yb = p->y_m + slope * (xb - p->x_m);
  }
  return isfinite(best);
}

/* What the soil reaches up to at x: the ground, or the battered plane where that is lower. A plane that
 * overhangs lies below what stands on the wall. */
static double top_of(const lw_site *site, const lw_back_plane *back, double x_m) {
  double along = lw_smaller(lw_larger(x_m - back->ground_x_m, 0.0), site->slope_run_m);
  double ground = back->ground_y_m + along * tan(site->slope_rad);
  if (back->lean < 1e-12) return ground;
  return lw_smaller(ground, back->foot_y_m + (back->foot_x_m - x_m) / back->lean);
}

static void add_column(const in_hand *at, double xa, double xb, tally sum[2]) {
  double ya = 0.0, yb = 0.0;
  if (!surface_of(at->section, xa, xb, &ya, &yb)) return;
  double ta = top_of(at->site, at->back, xa), tb = top_of(at->site, at->back, xb), da = ta - ya, db = tb - yb;
  if (da <= 1e-12 && db <= 1e-12) return;
  /* Where the plane dips into the blocks the column ends. */
  if (da * db < 0.0) {
    double t = da / (da - db), x = xa + t * (xb - xa), y = ya + t * (yb - ya);
    if (da < 0.0)
      xa = x, ya = ta = y;
    else
      xb = x, yb = tb = y;
  }
  piece column = {.corner = {{xa, ya}, {xb, yb}, {xb, tb}, {xa, ta}}, .count = 4};
  weigh_column(at, &column, sum);
}

/* The next place, going back from the wall, where surface, ground or plane may bend. */
static double next_bend(const lw_site *site, const lw_section *section, const lw_back_plane *back, double x_m,
                        double end_m) {
  double next = end_m, bend = back->ground_x_m + site->slope_run_m;
  for (int i = 0; i < section->outline_count; i++) {
    double at = section->outline[i].x_m;
    if (at > x_m + 1e-12) next = lw_smaller(next, at);
  }
  if (bend > x_m + 1e-12) next = lw_smaller(next, bend);
  if (back->top_x_m > x_m + 1e-12) next = lw_smaller(next, back->top_x_m);
  return next;
}

void lw_soil_on_wall(const lw_wall *wall, const lw_ground *ground, const lw_section *section,
                     const lw_back_plane *back, lw_forces *forces) {
  double end = lw_larger(back->top_x_m, back->foot_x_m), start = lw_smaller(back->ground_x_m, back->top_x_m);
  double rear = section->rear_m;
  end = lw_smaller(end, rear);
  if (end - start < 1e-9 || wall->method.soil_on_heel == LW_NOT_COUNTED) return;
  tally sum[2] = {{0.0, 0.0, 0.0, 0.0, 0.0}, {0.0, 0.0, 0.0, 0.0, 0.0}};
  in_hand at = {&wall->site, ground, section, back};
  for (double x = start; x < end - 1e-12;) {
    double to = next_bend(&wall->site, section, back, x, end);
    add_column(&at, x, to, sum);
    x = to;
  }
  for (int above = 0; above < 2; above++) {
    if (sum[above].weight <= 1e-12) continue;
    lw_forces_add(forces, (lw_force){.kind = LW_FORCE_SOIL_ON_WALL,
                                     .index = above,
                                     .area_m2 = sum[above].area,
                                     .unit_weight_kn_per_m3 = sum[above].weight / sum[above].area,
                                     .moved_kn_per_m = sum[above].moved,
                                     .vertical_kn_per_m = sum[above].weight,
                                     .x_m = sum[above].mx / sum[above].weight,
                                     .y_m = sum[above].my / sum[above].weight});
  }
}
