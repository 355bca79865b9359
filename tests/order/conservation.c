/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

/* Units and joints cover the face exactly, course by course, over many plans made by chance. */

typedef struct chance {
  char items[2048];
  int runs, courses;
  bool cut;
  double length[LW_RUN_MAX], turn_deg[LW_RUN_MAX];
  double unit, depth, gap, setback;
} chance;

static void say(chance *p, const char *format, int number, double value) {
  size_t used = strlen(p->items);
  char item[96];
  if (number > 0)
    snprintf(item, sizeof item, format, number, value);
  else
    snprintf(item, sizeof item, format, value);
  snprintf(p->items + used, sizeof p->items - used, "%s%s", used > 0 ? ";" : "", item);
}

static double whole_mm(double low, double high) {
  return round(order_random(low, high));
}

static double any_turn(void) {
  double which = order_random(0, 10);
  if (which < 4) return 90;
  if (which < 7) return -90;
  return which < 8 ? 0 : round(order_random(-70, 70));
}

static chance by_chance(void) {
  chance p = {.runs = (int)order_random(1, 6), .courses = (int)order_random(1, 7)};
  p.unit = whole_mm(250, 500);
  p.depth = whole_mm(120, 240);
  p.gap = order_random(0, 1) < 0.5 ? 0 : whole_mm(1, 10);
  p.setback = order_random(0, 1) < 0.5 ? 0 : whole_mm(1, 25);
  say(&p, "course count=%.0f", 0, p.courses);
  say(&p, "block length=%.0f mm", 0, p.unit);
  say(&p, "block depth=%.0f mm", 0, p.depth);
  say(&p, "joint gap=%.0f mm", 0, p.gap);
  say(&p, "setback=%.0f mm", 0, p.setback);
  for (int i = 0; i < p.runs; i++) {
    p.length[i] = whole_mm(1200, 7000);
    say(&p, "run %d length=%.0f mm", i + 1, p.length[i]);
    p.turn_deg[i] = i + 1 < p.runs ? any_turn() : 0;
    if (i + 1 < p.runs) say(&p, "turn %d angle=%.0f deg", i + 1, p.turn_deg[i]);
  }
  p.cut = order_random(0, 3) > 2;
  if (p.cut) strncat(p.items, ";corner unit=cut", sizeof p.items - strlen(p.items) - 1);
  return p;
}

/* The length of the face of a course by its own plane geometry: each corner moves along both faces. */
static double face_mm(const chance *p, int course) {
  double length = 0;
  for (int i = 0; i < p->runs; i++) length += p->length[i];
  for (int i = 0; i + 1 < p->runs; i++)
    length -= 2 * course * p->setback * tan(p->turn_deg[i] / 2 * 3.14159265358979323846 / 180);
  return length;
}

/* All pieces with the gap after each, from the counts and the list of cuts. */
static double modules_mm(const lw_order *order, const chance *p) {
  order_pieces all = order_all(order);
  double sum = (p->unit + p->gap) * (all.whole + all.half / 2.0);
  for (int i = 0; i < order->cut_count; i++)
    if (order->cut[i].kind == LW_CUT_CLOSER)
      sum += order->cut[i].count * (order->cut[i].long_m * 1000 + p->gap);
  return sum;
}

static double rows_mm(const lw_order *order, double *mitred_mm, int *rows) {
  double sum = 0;
  *mitred_mm = 0;
  *rows = order->row_count;
  for (int i = 0; i < order->row_count; i++) {
    const lw_laid *row = &order->row[i];
    sum += row->module_sum_m * 1000;
    if (row->start == LW_ROW_MITRED) *mitred_mm += row->first_m * 1000;
    if (row->end == LW_ROW_MITRED) *mitred_mm += row->last_m * 1000;
  }
  return sum;
}

Test(order, units_cover_the_face_exactly) {
  int made = 0;
  for (int i = 0; i < 300 / RANDOM_SHARE; i++) {
    chance p = by_chance();
    const lw_order *order = order_try(p.items);
    if (order == NULL) continue;
    made++;
    for (int course = 0; course < p.courses; course++) {
      const lw_course_count *c = &order->course[course];
      cr_expect(epsilon_eq(dbl, c->face_m * 1000, face_mm(&p, course), 1e-6), "%s", p.items);
      cr_expect(epsilon_eq(dbl, c->covered_m, c->face_m, 1e-9), "%s, course %d", p.items, course + 1);
    }
    int rows;
    double mitred, sum = rows_mm(order, &mitred, &rows);
    /* A cut joins others that are within 1 mm of it; a row takes up less than 1 mm in its joints. */
    double most = rows * 1.0 + order_all(order).closer * 1.0;
    cr_expect(lt(dbl, fabs(modules_mm(order, &p) + mitred - sum), most + 1e-6), "%s", p.items);
  }
  cr_expect(lt(int, 250 / RANDOM_SHARE, made)); /* the others cross themselves */
}

Test(order, no_row_leaves_a_gap_and_no_cut_is_a_sliver) {
  int made = 0;
  for (int i = 0; i < 300 / RANDOM_SHARE; i++) {
    chance p = by_chance();
    const lw_order *order = order_try(p.items);
    if (order == NULL) continue;
    made++;
    double module = order->plan.module_m;
    for (int k = 0; k < order->row_count; k++) {
      const lw_laid *row = &order->row[k];
      double pieces = row->first_m + row->last_m + (row->before + row->after) * module + row->slack_m;
      for (int n = 0; n < row->closer_count; n++) {
        pieces += row->closer_m[n];
        cr_expect(le(dbl, row->closer_m[n], module + 0.001), "%s", p.items);
        cr_expect(le(dbl, module / 3 - 0.0011, row->closer_m[n]), "%s: %f", p.items, row->closer_m[n]);
      }
      cr_expect(epsilon_eq(dbl, pieces, row->module_sum_m, 1e-9), "%s", p.items);
      cr_expect(le(dbl, fabs(row->slack_m), 0.001 + 2e-9), "%s", p.items);
    }
  }
  cr_expect(lt(int, 250 / RANDOM_SHARE, made));
}

/* With a step anywhere, each course covers the length that stands on its own base and nothing more. */
Test(order, steps_cover_what_stands_clear) {
  for (int i = 0; i < 200 / RANDOM_SHARE; i++) {
    char items[256];
    double length = whole_mm(4000, 9000), first = whole_mm(700, 1900), second = whole_mm(2500, 3300);
    int up = order_random(0, 1) < 0.5 ? 1 : -1, back = order_random(0, 1) < 0.5 ? up : -up;
    snprintf(items, sizeof items,
             "run 1 length=%.0f mm;course count=5;step 1 distance=%.0f mm;step 1 courses=%d;"
             "step 2 distance=%.0f mm;step 2 courses=%d",
             length, first, up, second, back);
    const lw_order *order = order_of(items);
    int level[3] = {0, up, up + back},
        least = up < 0 || up + back < 0 ? (up + back < up ? up + back : up) : 0;
    double part[3] = {first, second - first, length - second};
    for (int course = 0; course < 5; course++) {
      double stands = 0;
      for (int n = 0; n < 3; n++) stands += level[n] - least <= course ? part[n] : 0;
      cr_expect(epsilon_eq(dbl, order->course[course].covered_m * 1000, stands, 1e-6), "%s, course %d", items,
                course + 1);
    }
  }
}

/* A plain straight wall of any length, blocks of any length: every course reaches a quarter of a block, no
 * piece is under a third of one, and no course takes more than four cuts. */
Test(order, a_plain_wall_is_always_bonded) {
  for (int i = 0; i < 300 / RANDOM_SHARE; i++) {
    char items[160];
    double unit = whole_mm(200, 600), length = whole_mm(3.0 * unit, 9000);
    snprintf(items, sizeof items, "run 1 length=%.0f mm;course count=5;block length=%.0f mm", length, unit);
    const lw_order *order = order_of(items);
    cr_expect(eq(int, order->overlap_fails_at, 0), "%s: %.0f mm", items,
              order->overlap_fails_at ? order->course[order->overlap_fails_at - 1].overlap_m * 1000 : 0);
    for (int k = 0; k < order->cut_count; k++)
      cr_expect(le(dbl, unit / 3000 - 0.0011, order->cut[k].long_m), "%s: %f", items, order->cut[k].long_m);
    for (int k = 0; k < 5; k++)
      cr_expect(le(int, order->course[k].closer + order->course[k].half, 4), "%s", items);
  }
}

/* 7.69 m of blocks of 400 mm, the trade's way: 345 mm, 18 whole ones and 145 mm, turned in alternate courses,
 * by hand half a block of overlap. */
Test(order, a_plain_wall_turned_in_alternate_courses) {
  const lw_order *order = order_of("run 1 length=7.69 m;course count=4");
  for (int k = 0; k < 4; k++) {
    cr_expect(eq(int, order->course[k].whole, 18));
    cr_expect(eq(int, order->course[k].closer, 2));
    if (k > 0) cr_expect(epsilon_eq(dbl, order->course[k].overlap_m, 0.2, 1e-9));
  }
}
