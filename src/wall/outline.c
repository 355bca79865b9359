/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "outline.h"

#include <math.h>

#include "polygon.h"

void lw_outline_add(lw_section *section, double x_m, double y_m) {
  int n = section->outline_count;
  if (n > 0) {
    const lw_corner *last = &section->outline[n - 1];
    if (fabs(last->x_m - x_m) < 1e-12 && fabs(last->y_m - y_m) < 1e-12) return;
  }
  section->outline[section->outline_count++] = (lw_corner){x_m, y_m};
}

/* A cap bears only where it stands on the wall: what hangs over holds no ground. */
static void box_of(const lw_section *section, int i, double *front_m, double *rear_m) {
  const lw_part *part = &section->part[i];
  *front_m = part->front_m;
  *rear_m = part->rear_m;
  if (part->kind == LW_PART_CAP && i > 0) {
    *front_m = fmax(*front_m, section->part[i - 1].front_m);
    *rear_m = fmin(*rear_m, section->part[i - 1].rear_m);
  }
}

void lw_outline_of_courses(lw_section *section) {
  double front, rear;
  section->outline_count = 0;
  box_of(section, 0, &front, &rear);
  lw_outline_add(section, front, section->part[0].bottom_m);
  for (int i = 0; i < section->part_count; i++) {
    box_of(section, i, &front, &rear);
    lw_outline_add(section, rear, section->part[i].bottom_m);
    lw_outline_add(section, rear, section->part[i].top_m);
  }
  for (int i = section->part_count - 1; i >= 0; i--) {
    box_of(section, i, &front, &rear);
    lw_outline_add(section, front, section->part[i].top_m);
    if (i > 0) lw_outline_add(section, front, section->part[i].bottom_m);
  }
}

lw_part lw_part_box(lw_part_kind kind, int number, lw_corner low, lw_corner high,
                    double unit_weight_kn_per_m3) {
  double area = (high.x_m - low.x_m) * (high.y_m - low.y_m);
  return (lw_part){
      .kind = kind,
      .number = number,
      .area_m2 = area,
      .x_m = 0.5 * (low.x_m + high.x_m),
      .y_m = 0.5 * (low.y_m + high.y_m),
      .unit_weight_kn_per_m3 = unit_weight_kn_per_m3,
      .weight_kn_per_m = area * unit_weight_kn_per_m3,
      .front_m = low.x_m,
      .rear_m = high.x_m,
      .bottom_m = low.y_m,
      .top_m = high.y_m,
  };
}

lw_part lw_part_polygon(lw_part_kind kind, const lw_corner *corner, int count, double unit_weight_kn_per_m3) {
  lw_part part = {.kind = kind,
                  .unit_weight_kn_per_m3 = unit_weight_kn_per_m3,
                  .front_m = corner[0].x_m,
                  .rear_m = corner[0].x_m,
                  .bottom_m = corner[0].y_m,
                  .top_m = corner[0].y_m};
  lw_corner centroid;
  lw_polygon_area(corner, count, &part.area_m2, &centroid);
  part.x_m = centroid.x_m;
  part.y_m = centroid.y_m;
  part.weight_kn_per_m = part.area_m2 * unit_weight_kn_per_m3;
  for (int i = 1; i < count; i++) {
    part.front_m = fmin(part.front_m, corner[i].x_m);
    part.rear_m = fmax(part.rear_m, corner[i].x_m);
    part.bottom_m = fmin(part.bottom_m, corner[i].y_m);
    part.top_m = fmax(part.top_m, corner[i].y_m);
  }
  return part;
}
