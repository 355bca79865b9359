/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The arrow of the soil's push on a drawn section: its direction, where it acts, and what is in it. */
#include "../checks/random_wall.h"
#include "../sheet/support.h"

#include <lowwall/report.h>

#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

/* Where a level metre of the section lies on the paper: lengths in mm stand on it as the scale says. */
static double scale_of(const lw_drawing *drawing) {
  for (size_t i = 0; i < drawing->mark_count; i++) {
    const lw_mark *mark = &drawing->mark[i];
    const char *at = mark->kind == LW_MARK_WORDS ? strstr(drawing->words.data + mark->words, "1:") : NULL;
    if (at && strstr(drawing->words.data + mark->words, "Section,"))
      return 1000.0 / (double)strtol(at + 2, NULL, 10);
  }
  return 0.0;
}

/* The line that the push acts on: fine, from the foot to the top of the plane, right before the arrow. */
static size_t arrow_after_its_line(const lw_drawing *drawing, const lw_back_plane *back, double mm_per_m) {
  double up = (back->top_y_m - back->foot_y_m) * mm_per_m, over = (back->top_x_m - back->foot_x_m) * mm_per_m;
  for (size_t i = 0; i + 1 < drawing->mark_count; i++) {
    const lw_mark *line = &drawing->mark[i], *arrow = &drawing->mark[i + 1];
    if (line->kind != LW_MARK_LINE || line->pen != LW_PEN_FINE || line->count != 2) continue;
    if (arrow->kind != LW_MARK_LINE || arrow->pen != LW_PEN_FORCE) continue;
    const lw_xy_mm *a = drawing->spot + line->first;
    if (fabs(a[0].y_mm - a[1].y_mm - up) < 1e-6 && fabs(a[1].x_mm - a[0].x_mm - over) < 1e-6) return i;
  }
  return drawing->mark_count;
}

/* The sum of what soil and loads on it push, from the free body. */
typedef struct sum {
  double level, down, moment, ground;
} sum;

static sum sum_of(const lw_free_body *base) {
  sum s = {0};
  for (int i = 0; i < base->forces.count; i++) {
    const lw_force *f = &base->forces.force[i];
    if (f->kind == LW_FORCE_LEVEL_THRUST) s.ground += f->horizontal_kn_per_m;
    if (f->kind != LW_FORCE_THRUST && f->kind != LW_FORCE_SURCHARGE_THRUST &&
        f->kind != LW_FORCE_LOADS_THRUST && f->kind != LW_FORCE_SEISMIC_THRUST)
      continue;
    s.level += f->horizontal_kn_per_m;
    s.down += f->vertical_kn_per_m;
    s.moment += f->horizontal_kn_per_m * (f->y_m - base->back.foot_y_m) -
                f->vertical_kn_per_m * (f->x_m - base->back.foot_x_m);
  }
  return s;
}

/* The arrow has the direction of the sum, and its line the same moment about the foot. */
static void expect_arrow(const lw_drawing *drawing, const lw_free_body *base, const char *name) {
  sum s = sum_of(base);
  double mm_per_m = scale_of(drawing), all = hypot(s.level, s.down);
  if (all < 1e-9) return;
  size_t at = arrow_after_its_line(drawing, &base->back, mm_per_m);
  cr_assert(at < drawing->mark_count, "no arrow: %s", name);
  const lw_xy_mm *foot = drawing->spot + drawing->mark[at].first,
                 *shaft = drawing->spot + drawing->mark[at + 1].first;
  double right = shaft[0].x_mm - shaft[1].x_mm, up = shaft[1].y_mm - shaft[0].y_mm, length = hypot(right, up);
  cr_expect(fabs(right / length - s.level / all) < 1e-9 && fabs(up / length - s.down / all) < 1e-9,
            "%g, %g for %g, %g: %s", right, up, s.level, s.down, name);
  double x = (shaft[0].x_mm - foot[0].x_mm) / mm_per_m, y = (foot[0].y_mm - shaft[0].y_mm) / mm_per_m;
  cr_expect(fabs(s.level * y - s.down * x - s.moment) < 1e-6 * all, "%g m, %g m: %s", x, y, name);
  if (fabs(s.ground) < 1e-9 && base->elastic.push_kn_per_m < 1e-12 && base->thrust.vertical_kn_per_m > 0.0)
    cr_expect(fabs(atan2(up, right) - base->thrust.angle_rad) < 1e-9, "%s", name);
}

/* Loads at a distance and an earthquake push in the arrow; no pressure over the height is drawn of them. */
static void expect_picture(const lw_drawing *drawing, const lw_free_body *base, const char *name,
                           int *without) {
  double besides = 0.0;
  for (int i = 0; i < base->forces.count; i++) {
    const lw_force *f = &base->forces.force[i];
    bool soil = f->kind == LW_FORCE_LOADS_THRUST || f->kind == LW_FORCE_SEISMIC_THRUST;
    if (soil) besides += fmax(f->horizontal_kn_per_m, 0.0);
  }
  if (!strstr(drawing->description.data, "pressure of the soil behind over its height")) return;
  bool told = strstr(drawing->description.data, "; without what") != NULL;
  cr_expect_eq(told, besides > 1e-9, "%g: %s", besides, name);
  *without += told;
}

Test(drawing, the_push_of_the_soil_is_drawn_as_it_acts) {
  static char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  dice d = {311};
  int drawn = 0, without = 0;
  lw_result *result = malloc(sizeof *result);
  cr_assert_not_null(result);
  for (int i = 0; i < 120 / RANDOM_SHARE; i++) {
    random_wall wall = {0};
    random_wall_make(&d, &wall);
    random_wall_add(&wall, "method slip=not");
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
    const lw_verdict *v = &result->verdict;
    const lw_free_body *base = &result->situations.situation[v->governed ? v->governing_situation : 0].base;
    lw_drawing drawing = {0};
    lw_error error = {0};
    if (lw_draw_section(result, 180.0, &drawing, &error) == LW_OK && base->status == LW_OK) {
      drawn++;
      expect_arrow(&drawing, base, random_wall_name(&wall, name, sizeof name));
      expect_picture(&drawing, base, name, &without);
    }
    lw_drawing_free(&drawing);
  }
  cr_expect_lt(40 / RANDOM_SHARE, drawn, "%d", drawn);
  cr_expect_lt(4 / RANDOM_SHARE, without, "%d", without);
  free(result);
}

/* The wind on a fence goes through the ground: it is told beside the arrow and is not in it. */
Test(drawing, the_wind_on_a_fence_is_not_in_the_push_of_the_soil) {
  lw_case c =
      CASE("course count=4", "block height=200 mm", "block depth=600 mm", "wall embedment=150 mm",
           "site behind=ground", "ground slope=0 deg", "soil 1 name=clean sand", "wall joints=open",
           "footing soil name=clean sand", "fence height=1.8 m", "fence place=behind", "fence distance=0.3 m",
           "wind pressure=1.2 kPa", "stone filter=cloth", "method slip=not", "load 1 kind=none");
  lw_result *result = malloc(sizeof *result);
  cr_assert_not_null(result);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  result->verdict.governed = true;
  result->verdict.governing_check = 0;
  int told = 0;
  for (int i = 0; i < result->situations.count; i++) {
    lw_drawing drawing = {0};
    lw_error error = {0};
    result->verdict.governing_situation = i;
    const lw_free_body *base = &result->situations.situation[i].base;
    if (base->status == LW_OK && sum_of(base).ground > 1e-6 &&
        lw_draw_section(result, 180.0, &drawing, &error) == LW_OK) {
      expect_arrow(&drawing, base, "fence");
      cr_expect_not_null(strstr(drawing.description.data, "that posts push through the ground"), "%s",
                         drawing.description.data);
      told++;
    }
    lw_drawing_free(&drawing);
  }
  cr_expect_lt(0, told);
  free(result);
}
