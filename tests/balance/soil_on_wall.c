/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "../sheet/support.h"
#include "balance/ground.h"
#include "balance/push.h"
#include "balance/soil_on_wall.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "wall/courses.h"
#include "wall/wall.h"

/* Soil that stands on the wall lies in front of the plane that is printed, below the ground and above the
 * wall: counted here by many thin columns, whatever cuts it. */

enum { WALLS = 400 / RANDOM_SHARE, COLUMNS = 6000 };

/* The wall's own upper surface at x; far below where there is none. */
static double surface_at(const lw_section *section, double x_m) {
  double best = -1e9;
  for (int i = 0; i < section->outline_count; i++) {
    const lw_corner *p = &section->outline[i], *q = &section->outline[(i + 1) % section->outline_count];
    if ((p->x_m - x_m) * (q->x_m - x_m) >= 0.0) continue;
    best = fmax(best, p->y_m + (q->y_m - p->y_m) * (x_m - p->x_m) / (q->x_m - p->x_m));
  }
  return best;
}

/* The printed plane: from its foot to its top, and on. */
static double plane_at(const lw_back_plane *back, double x_m) {
  double run = back->foot_x_m - back->top_x_m;
  if (fabs(run) < 1e-12) return x_m < back->foot_x_m ? 1e9 : -1e9;
  return back->foot_y_m + (back->top_y_m - back->foot_y_m) * (back->foot_x_m - x_m) / run;
}

static double ground_at(const lw_site *site, const lw_back_plane *back, double x_m) {
  double along = fmin(fmax(x_m - back->ground_x_m, 0.0), site->slope_run_m);
  return back->ground_y_m + along * tan(site->slope_rad);
}

static double area_by_columns(const lw_wall *wall, const lw_section *section, const lw_back_plane *back) {
  double from = fmin(back->ground_x_m, back->top_x_m), sum = 0.0;
  double to = fmin(fmax(back->top_x_m, back->foot_x_m), section->rear_m), width = (to - from) / COLUMNS;
  for (int i = 0; i < COLUMNS && to > from; i++) {
    double x = from + (i + 0.5) * width, top = ground_at(&wall->site, back, x);
    /* A plane that overhangs lies below what stands on the wall. */
    if (back->lean > 1e-12) top = fmin(top, plane_at(back, x));
    sum += width * fmax(top - surface_at(section, x), 0.0);
  }
  return sum;
}

static double counted(const lw_wall *wall, const lw_section *section, const lw_back_plane *back) {
  lw_forces forces = {.count = 0};
  double sum = 0.0;
  lw_ground ground;
  lw_ground_own(wall, &ground);
  lw_soil_on_wall(wall, &ground, section, back, &forces);
  for (int i = 0; i < forces.count; i++) sum += forces.force[i].area_m2;
  return sum;
}

static void expect_area(const lw_wall *wall, const lw_section *section, double extra_m, const char *name) {
  lw_push push;
  lw_ground ground;
  lw_stack stack = {section, extra_m};
  lw_ground_own(wall, &ground);
  lw_push_find(wall, &ground, &stack, NULL, &push, NULL);
  if (push.status != LW_OK) return;
  double area = counted(wall, section, &push.back), columns = area_by_columns(wall, section, &push.back);
  cr_expect_lt(fabs(area - columns), 1e-3 * columns + 1e-5, "%.6g, by columns %.6g: %s", area, columns, name);
}

Test(soil_on_wall, is_cut_by_the_printed_plane) {
  dice d = {20263};
  lw_wall *wall = calloc(1, sizeof *wall);
  cr_assert_not_null(wall);
  for (int i = 0; i < WALLS; i++) {
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    random_wall items;
    random_wall_make(&d, &items);
    random_wall_name(&items, name, sizeof name);
    lw_case c = random_wall_case(&items);
    if (i % 2) c.ground.soil_below_top.si = dice_between(&d, 0.0, 0.9) * c.wall.height.si;
    lw_wall_build(&c, sheet_test_tables(), wall);
    if (!wall->section.known || wall->method.soil_on_heel == LW_NOT_COUNTED) continue;
    expect_area(wall, &wall->section, 0.0, name);
    expect_area(wall, &wall->section, wall->site.pad.thickness_m, name);
    for (int joint = 1; joint < wall->section.course_count; joint++) {
      lw_section above;
      lw_section_above(&wall->section, joint, &above);
      expect_area(wall, &above, 0.0, name);
    }
  }
  free(wall);
}

/* Where the line of a back meets ground that rises from a ledge in front of it, the plane begins there. */
Test(soil_on_wall, a_plane_ends_at_the_ground) {
  static const char *const slopes[] = {"ground slope=0 deg", "ground slope=10 deg", "ground slope=25 deg"};
  for (size_t i = 0; i < sizeof slopes / sizeof *slopes; i++) {
    lw_result *r = RUN("course count=4", "block height=0.2 m", "block depth=0.3 m", "base course count=1",
                       "base course depth=0.7 m", "wall embedment=0 m", "soil below top=0.25 m", slopes[i],
                       "soil 1 friction angle=33 deg", "method slip=not");
    const lw_back_plane *back = &checks_test_situation(r, LW_SITUATION_DRAINED)->base.back;
    const lw_site *site = &r->wall.site;
    cr_expect_lt(fabs(back->top_y_m - ground_at(site, back, back->top_x_m)), 1e-12, "%s", slopes[i]);
    free(r);
  }
}

/* A slope that ends on the heel pushes on the plane at its end as level ground does. */
Test(soil_on_wall, a_slope_that_ends_in_front_of_the_plane_is_level_there) {
  static const char *const methods[] = {"method pressure=rankine", "method pressure=at rest"};
  for (size_t i = 0; i < sizeof methods / sizeof *methods; i++) {
    lw_result *rises = RUN("wall height=1.5 m", "wall embedment=0 m", "base width=1.6 m", "top width=0.3 m",
                           "face batter=0 deg", "slab thickness=0.3 m", "heel length=1.0 m",
                           "soil below top=0.3 m", "ground slope=20 deg", "ground slope run=0.6 m",
                           "soil 1 friction angle=33 deg", methods[i], "method slip=not");
    double rise = 0.6 * tan(20.0 / LW_DEG_PER_RAD);
    char below[40];
    snprintf(below, sizeof below, "soil below top=%.15f m", 0.3 - rise);
    lw_result *level =
        RUN("wall height=1.5 m", "wall embedment=0 m", "base width=1.6 m", "top width=0.3 m",
            "face batter=0 deg", "slab thickness=0.3 m", "heel length=1.0 m", below, "ground slope=0 deg",
            "soil 1 friction angle=33 deg", methods[i], "method slip=not");
    const lw_thrust *a = &checks_test_situation(rises, LW_SITUATION_DRAINED)->base.thrust;
    const lw_thrust *b = &checks_test_situation(level, LW_SITUATION_DRAINED)->base.thrust;
    cr_expect(checks_test_near(a->total_kn_per_m, b->total_kn_per_m, 1e-9), "%s: %.9g and %.9g", methods[i],
              a->total_kn_per_m, b->total_kn_per_m);
    cr_expect_lt(fabs(a->angle_rad), 1e-12);
    free(rises);
    free(level);
  }
}

static double soil_on_wall_by(const char *method, const char *setback) {
  lw_result *r = RUN("course count=4", "block height=0.2 m", "block depth=0.4 m", "wall embedment=0 m",
                     "cap height=0.1 m", "cap depth=0.25 m", "cap overhang=0 m", setback, method,
                     "soil below top=0 m", "ground slope=0 deg", "soil 1 friction angle=33 deg",
                     "soil 1 unit weight=18 kN/m3", "load 1 kind=none", "method slip=not");
  const lw_free_body *base = &checks_test_situation(r, LW_SITUATION_DRAINED)->base;
  double sum = checks_test_vertical(base, LW_FORCE_SOIL_ON_WALL);
  free(r);
  return sum;
}

/* Soil behind a cap that is shallower than the blocks stands on them, whatever formula pushes: 0.15 m x 0.1 m
 * x 18 kN/m3. */
Test(soil_on_wall, on_the_ledge_under_a_short_cap_by_either_formula) {
  static const char *const setbacks[] = {"setback=0 m", "setback=0.02 m", "setback=0.09 m"};
  static const char *const methods[] = {"method pressure=rankine", "method pressure=coulomb",
                                        "method pressure=wedge"};
  for (size_t i = 0; i < 3; i++)
    for (size_t k = 0; k < 3; k++)
      cr_expect_lt(fabs(soil_on_wall_by(methods[k], setbacks[i]) - 0.15 * 0.1 * 18.0), 1e-9, "%s, %s: %g",
                   methods[k], setbacks[i], soil_on_wall_by(methods[k], setbacks[i]));
}

/* A load presses where the ground above the heel is open to it: not under the course that hangs over it. Soil
 * up to 0.5 m, the course there ends at 0.46 m, the one above it at 0.49 m, the base at 0.9 m. */
Test(soil_on_wall, a_load_presses_on_open_ground_only) {
  lw_result *r = RUN("course count=4", "block height=0.2 m", "block depth=0.4 m", "wall embedment=0 m",
                     "base course count=1", "base course depth=0.9 m", "setback=0.03 m",
                     "soil below top=0.3 m", "ground slope=0 deg", "soil 1 friction angle=33 deg",
                     "load 1 kind=uniform", "load 1 pressure=5 kPa", "method surcharge on heel=presses",
                     "method pressure=rankine", "method slip=not");
  const lw_free_body *base = &checks_test_situation(r, LW_SITUATION_DRAINED)->base;
  double load = checks_test_vertical(base, LW_FORCE_SURCHARGE_ON_WALL);
  cr_expect_lt(fabs(load - 5.0 * (0.9 - 0.49)), 1e-9, "%g", load);
  free(r);
}
