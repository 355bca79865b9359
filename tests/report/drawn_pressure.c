/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Pressure against depth as it is drawn: it fits its page, no words stand on others, and the area under each
 * line is its thrust. */
#include "../checks/random_wall.h"
#include "../sheet/support.h"

#include <lowwall/report.h>

#include <criterion/criterion.h>

#include <math.h>
#include <string.h>

#include "../pressure/random_plane.h"
#include "../pressure/support.h"
#include "on_paper.h"

enum { WALLS = 60 / RANDOM_SHARE, LINES_MAX = 32 };

static lw_result result;
static lw_diagram diagram;
static char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];

/* The planes behind a wall by chance, and what stands on them. gives false where there are none */
static bool make(dice *d, int number) {
  random_wall wall = {0};
  lw_diagram_asked asked;
  lw_error error = {0};
  random_wall_make(d, &wall);
  random_wall_add(&wall, "method slip=not");
  lw_case c = random_wall_case(&wall);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &result, NULL), LW_OK, "wall %d",
               number);
  random_wall_name(&wall, name, sizeof name);
  lw_status status = lw_diagram_planes(&result.wall, &asked, &error);
  cr_expect(status == LW_OK || !result.wall.section.known || error.reason == LW_REASON_NO_DEMAND, "%s", name);
  if (status != LW_OK) return false;
  lw_diagram_find(&asked, &diagram, NULL);
  return true;
}

/* The same figures as the wall's own report has beside each other. */
static void expect_as_compared(void) {
  static const lw_way WAYS[] = {LW_WAY_RANKINE, LW_WAY_COULOMB};
  const lw_situation *s = &result.situations.situation[0];
  for (int i = 0; i < 2; i++) {
    const lw_diagram_way *w = &diagram.way[WAYS[i]];
    const lw_compared *c = &s->compared[i];
    if (s->name != LW_SITUATION_DRAINED || s->seeping) continue;
    cr_expect_eq(w->known, c->known, "%s: %s", name, lw_way_slug(WAYS[i]));
    if (!w->known || !c->known) continue;
    cr_expect_lt(fabs(w->thrust.total_kn_per_m - c->formula_kn_per_m), 1e-9 * (1.0 + c->formula_kn_per_m),
                 "%s", name);
    cr_expect_lt(fabs(w->loads.push_kn_per_m - c->loads_kn_per_m), 1e-9 * (1.0 + c->loads_kn_per_m), "%s",
                 name);
  }
}

/* The lines with more than two spots, as they were drawn. */
static int lines_of(const lw_drawing *drawing, const lw_mark *line[LINES_MAX]) {
  int count = 0;
  for (size_t i = 0; i < drawing->mark_count && count < LINES_MAX; i++)
    if (drawing->mark[i].kind == LW_MARK_LINE && drawing->mark[i].count > 4)
      line[count++] = &drawing->mark[i];
  return count;
}

/* Between a line and its axis, in mm2. */
static double area_of(const lw_drawing *drawing, const lw_mark *line) {
  const lw_xy_mm *spot = drawing->spot + line->first;
  double area = 0.0;
  for (size_t i = 0; i + 1 < line->count; i++)
    area += 0.5 * (spot[i].x_mm + spot[i + 1].x_mm - 2.0 * spot[0].x_mm) * (spot[i + 1].y_mm - spot[i].y_mm);
  return area;
}

/* The first of the page are those of what yields, in the order of the page, the wedge in front. */
static void expect_areas(const lw_drawing *drawing) {
  static const lw_way ORDER[] = {LW_WAY_WEDGE,      LW_WAY_RANKINE, LW_WAY_COULOMB,
                                 LW_WAY_LOG_SPIRAL, LW_WAY_ANNEX_C, LW_WAY_AT_REST};
  const lw_mark *line[LINES_MAX];
  int count = lines_of(drawing, line);
  for (int i = 0; i < 6; i++)
    if (!diagram.way[ORDER[i]].known) return;
  cr_assert_leq(6, count, "%s", name);
  double scale = diagram.way[LW_WAY_AT_REST].thrust.horizontal_kn_per_m / area_of(drawing, line[5]);
  for (int i = 0; i < 5; i++) {
    const lw_thrust *t = &diagram.way[ORDER[i]].thrust;
    bool curved =
        ORDER[i] == LW_WAY_RANKINE && diagram.asked.upright.slope_rad > 0.0 && t->crack_depth_m > 0.0;
    double drawn = scale * area_of(drawing, line[i]), level = t->horizontal_kn_per_m;
    if (curved) continue;
    double within = ORDER[i] == LW_WAY_WEDGE ? 1e-7 : 1e-9; /* the searched one */
    cr_expect_lt(fabs(drawn - level), within * fmax(fabs(level), 1.0), "%s: %s %.12g, drawn %.12g", name,
                 lw_way_slug(ORDER[i]), level, drawn);
  }
}

/* Ground steeper than one of its layers: no formula has an answer, and loads and water push all the same. */
Test(drawn_pressure, what_comes_on_top_is_said_without_a_method) {
  dice d = {41};
  for (int i = 0; i < 8; i++) {
    lw_plane plane = pressure_random_plane(&d);
    plane.slope_rad = plane.layer[0].friction_rad + RAD(1.0);
    plane.slope_run_m = 2.0;
    plane.water_depth_m = plane.height_m * dice_between(&d, 0.1, 0.9);
    plane.load_count = 1;
    plane.load[0] = (lw_plane_load){.near_m = 0.5, .far_m = 0.5, .force_kn_per_m = 4.0};
    lw_diagram_asked asked = lw_diagram_ask(&plane);
    lw_diagram_find(&asked, &diagram, NULL);
    cr_assert(!diagram.way[LW_WAY_COULOMB].known);
    const lw_pressure_page page = {&diagram, "", "", LW_UNITS_METRIC};
    double deep = plane.height_m - plane.water_depth_m;
    char water[60], load[60];
    lw_print(water, sizeof water, "water: %.2f kN/m", 0.5 * 9.81 * deep * deep);
    lw_print(load, sizeof load, "load 1, elastic half-space: %.2f kN/m",
             lw_elastic_push_on(&plane, LW_LOAD_PRESSURE_HALF_SPACE).push_kn_per_m);
    lw_drawing drawing = {0};
    lw_text svg = {0};
    cr_assert_eq(lw_draw_pressure(&page, 180.0, &drawing, NULL), LW_OK);
    cr_assert_eq(lw_drawing_svg(&drawing, &svg), LW_OK);
    cr_expect_not_null(strstr(svg.data, water), "plane %d: %s", i, water);
    cr_expect_not_null(strstr(svg.data, load), "plane %d: %s", i, load);
    lw_text_free(&svg);
    lw_drawing_free(&drawing);
  }
}

Test(drawn_pressure, fits_its_page_and_shows_each_thrust) {
  static const double WIDTHS_MM[] = {95.0, 180.0};
  dice d = {20261128};
  int drawn = 0;
  for (int i = 0; i < WALLS; i++) {
    if (!make(&d, i)) continue;
    expect_as_compared();
    for (int w = 0; w < 2; w++) {
      const lw_units units = (lw_units)((i + w) % 2);
      const lw_pressure_page page = {&diagram, units == LW_UNITS_US ? "" : result.verdict.headline,
                                     "A bed of the school kitchen garden", units};
      lw_drawing drawing = {0};
      lw_error error = {0};
      cr_assert_eq(lw_draw_pressure(&page, WIDTHS_MM[w], &drawing, &error), LW_OK, "%s: %s", error.text,
                   name);
      expect_on_paper(&drawing, name);
      if (page.units == LW_UNITS_US) expect_no_metric(&drawing, name);
      expect_areas(&drawing);
      lw_drawing_free(&drawing);
      drawn++;
    }
  }
  cr_expect_lt(WALLS, drawn);
}
