/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Plan and elevation of plans by chance: open and closed, corners of every angle to either side, curves,
 * steps, falls, pipes: at any width the words are read, and each length and turn is told. */
#include "../order/support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "on_paper.h"

enum { PLANS = 100 / RANDOM_SHARE };
static const double WIDTHS_MM[] = {80.0, 100.0, 180.0};
static char items[1600];

static void add(const char *format, ...) __attribute__((format(printf, 1, 2)));
static void add(const char *format, ...) {
  size_t length = strlen(items);
  va_list arguments;
  va_start(arguments, format);
  vsnprintf(items + length, sizeof items - length, format, arguments);
  va_end(arguments);
}

static int pick(int count) {
  return (int)order_random(0.0, count - 1e-9);
}

/* Several runs, of which some are short and some curved. */
static void open_plan(void) {
  static const double LONGEST_M[] = {3.0, 9.0, 30.0};
  int runs = 1 + pick(6);
  double longest = LONGEST_M[pick(3)];
  for (int i = 1; i <= runs; i++) {
    bool curve = pick(6) == 0;
    add("run %d length=%.2f m;", i, order_random(0.6, longest));
    if (curve) add("run %d radius=%.1f m;", i, (pick(2) ? 1.0 : -1.0) * order_random(3.0, 12.0));
    if (i < runs)
      add("turn %d angle=%.0f deg;", i, pick(2) ? order_random(-100.0, 120.0) : pick(2) ? 90.0 : -90.0);
  }
  if (pick(3) == 0)
    add("ground fall=%.0f mm;", order_random(-500.0, 500.0));
  else if (pick(3) == 0)
    add("step 1 distance=0.8 m;step 1 courses=%d;", pick(2) ? 1 : -1);
}

static void rectangle(void) {
  double a = order_random(0.8, 8.0), b = order_random(0.8, 4.0);
  for (int i = 1; i <= 4; i++) add("run %d length=%.2f m;%s", i, i % 2 ? a : b, "");
  for (int i = 1; i <= 3; i++) add("turn %d angle=90 deg;", i);
  if (pick(2)) add("site behind=bed;");
}

static void regular(void) {
  int sides = 3 + pick(6);
  double side = order_random(0.8, 4.0);
  for (int i = 1; i <= sides; i++) {
    add("run %d length=%.2f m;", i, side);
    add("turn %d angle=%.3f deg;", i, 360.0 / sides);
  }
  add("plan ends=closed;");
}

static const lw_order *by_chance(int number) {
  items[0] = '\0';
  if (number % 4 == 3)
    rectangle();
  else if (number % 8 == 1)
    regular();
  else
    open_plan();
  add("course count=%d;wall embedment=%.0f mm;", 1 + pick(12), pick(2) ? 0.0 : order_random(0.0, 150.0));
  if (pick(2)) add("block depth=100 mm;");
  if (pick(3) == 0) add("setback=%.0f mm;", order_random(5.0, 25.0));
  if (pick(2)) add("stone width=250 mm;stone filter=cloth;drain outlets=%d;", 1 + pick(3));
  if (pick(3) == 0) add("pad thickness=150 mm;pad width=700 mm;bedding thickness=30 mm;");
  if (pick(3) == 0) add("cap height=50 mm;cap depth=240 mm;cap length=500 mm;");
  if (pick(4) == 0)
    add("title=Agardenwallwithanamethathasnoblankinitandthatgoesonandonbeyondanyline and more;");
  if (number / 2 % 2) add("units=us;");
  add("method slip=not;"); /* no drawing shows it, and it takes most of the time */
  return order_try(items);
}

/* Feet and inches to the nearest eighth, worked out by hand: 2'-7 1/2". */
static void feet_and_inches(double length_m, char *out, size_t size) {
  long eighths = lround(length_m / 0.0254 * 8.0), feet = eighths / 96, inches = eighths / 8 % 12;
  long part = eighths % 8, of = 8;
  char fraction[48] = "", before[32] = "";
  for (; part % 2 == 0 && part > 0; part /= 2) of /= 2;
  if (part > 0) snprintf(fraction, sizeof fraction, " %ld/%ld", part, of);
  if (feet > 0) snprintf(before, sizeof before, "%ld'-", feet);
  snprintf(out, size, "%s%ld%s\"", before, inches, fraction);
}

/* Every run's length stands on the drawing or below it. */
static void expect_lengths(const lw_drawing *d, const lw_order *o) {
  for (int i = 0; i < o->plan.run_count; i++) {
    char words[128];
    snprintf(words, sizeof words, "%.0f", o->plan.run[i].length_m * 1000.0);
    if (order_result()->units == LW_UNITS_US) feet_and_inches(o->plan.run[i].length_m, words, sizeof words);
    cr_expect(on_paper_says(d, words), "%s is not told: %s", words, items);
  }
}

static void expect_turns(const lw_drawing *d, const lw_order *o) {
  for (int i = 0; i + 1 < o->plan.run_count; i++) {
    char words[40];
    double turn = round(o->plan.run[i].turn_rad * 180.0 / 3.14159265358979323846);
    snprintf(words, sizeof words, "%.0f deg", turn);
    cr_expect(fabs(turn) < 0.5 || on_paper_says(d, words), "%s is not told: %s", words, items);
  }
}

static double length_of(const lw_xy_mm *line) {
  return hypot(line[1].x_mm - line[0].x_mm, line[1].y_mm - line[0].y_mm);
}

/* Which side of a line a spot lies on. */
static double side_of(const lw_xy_mm *line, lw_xy_mm spot) {
  return (line[1].x_mm - line[0].x_mm) * (spot.y_mm - line[0].y_mm) -
         (line[1].y_mm - line[0].y_mm) * (spot.x_mm - line[0].x_mm);
}

static bool cross(const lw_xy_mm *a, const lw_xy_mm *b) {
  return side_of(a, b[0]) * side_of(a, b[1]) < 0.0 && side_of(b, a[0]) * side_of(b, a[1]) < 0.0;
}

/* The line of a length, or a piece of it, stands behind its slashes; what leads to it is shorter. */
static bool is_length(const lw_drawing *d, size_t at, bool after_one) {
  static const double LEADS_MM = 5.9, SLASH_MM = 4.0;
  const lw_mark *mark = &d->mark[at], *before = mark - 1;
  if (at == 0 || mark->kind != LW_MARK_LINE || mark->pen != LW_PEN_FINE || mark->count != 2) return false;
  bool slash = before->kind == LW_MARK_LINE && before->pen == LW_PEN_SEEN && before->count == 2 &&
               length_of(&d->spot[before->first]) < SLASH_MM;
  return (slash || after_one) && length_of(&d->spot[mark->first]) > LEADS_MM;
}

static void expect_lengths_apart(const lw_drawing *d) {
  enum { MOST = 100 };
  const lw_xy_mm *line[MOST];
  int count = 0;
  bool after_one = false;
  for (size_t i = 0; i < d->mark_count; i++) {
    after_one = is_length(d, i, after_one);
    if (!after_one || count == MOST) continue;
    line[count++] = &d->spot[d->mark[i].first];
    for (int k = 0; k + 1 < count; k++)
      cr_expect_not(cross(line[k], line[count - 1]), "two lines of lengths cross: %s", items);
  }
}

Test(drawn_plans, at_any_width_all_is_told_and_read) {
  int drawn = 0;
  for (int i = 0; i < PLANS; i++) {
    const lw_order *o = by_chance(i);
    double width = WIDTHS_MM[i % 3];
    if (!o) continue;
    for (int view = 0; view < 2; view++) {
      lw_drawing d = {0};
      lw_status status = view == 0 ? lw_draw_plan(order_result(), o, width, &d, NULL)
                                   : lw_draw_elevation(order_result(), o, width, &d, NULL);
      if (status == LW_OK) {
        expect_on_paper(&d, items);
        expect_lengths(&d, o);
        expect_turns(&d, o);
        if (view == 0) expect_lengths_apart(&d);
        if (order_result()->units == LW_UNITS_US) expect_no_metric(&d, items);
        drawn++;
      }
      lw_drawing_free(&d);
    }
  }
  cr_expect_lt(PLANS, drawn, "%d", drawn);
}
