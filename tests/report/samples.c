/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The samples of the elevation's legend differ by their lines alone, as a copier without greys shows them. */
#include "../order/support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>

#include "on_paper.h"
#include "report/draw/drawing.h"

enum { SAMPLES_MAX = 16 };
static const double LEFT_MM = 4.0, WIDE_MM = 8.0;

/* What is drawn in a box: nothing of it depends on a fill. */
typedef struct inside {
  int lines;
  double longest_mm, steepest;
} inside;

static bool is_box(const lw_mark *m) {
  return m->kind == LW_MARK_AREA && m->pen == LW_PEN_SEEN && m->fill == LW_FILL_NONE && m->count == 4;
}

static lw_box box_of(const lw_drawing *d, const lw_mark *m) {
  lw_box b = {INFINITY, INFINITY, -INFINITY, -INFINITY};
  for (size_t i = 0; i < m->count; i++) {
    const lw_xy_mm *s = &d->spot[m->first + i];
    b = (lw_box){fmin(b.left_mm, s->x_mm), fmin(b.top_mm, s->y_mm), fmax(b.right_mm, s->x_mm),
                 fmax(b.bottom_mm, s->y_mm)};
  }
  return b;
}

static bool within(const lw_box *b, const lw_xy_mm *s) {
  return s->x_mm > b->left_mm - 0.01 && s->x_mm < b->right_mm + 0.01 && s->y_mm > b->top_mm - 0.01 &&
         s->y_mm < b->bottom_mm + 0.01;
}

static inside look(const lw_drawing *d, const lw_box *b) {
  inside all = {0};
  for (size_t i = 0; i < d->mark_count; i++) {
    const lw_mark *m = &d->mark[i];
    const lw_xy_mm *s = &d->spot[m->first];
    if (m->kind != LW_MARK_LINE || m->pen != LW_PEN_FINE || !within(b, &s[0]) || !within(b, &s[1])) continue;
    double x = s[1].x_mm - s[0].x_mm, y = s[1].y_mm - s[0].y_mm;
    all.lines++;
    all.longest_mm = fmax(all.longest_mm, hypot(x, y));
    all.steepest = fmax(all.steepest, fabs(atan2(y, x)));
  }
  return all;
}

static bool alike(const inside *a, const inside *b) {
  return a->lines == b->lines && fabs(a->longest_mm - b->longest_mm) < 0.2 &&
         fabs(a->steepest - b->steepest) < 0.05;
}

static const char WALL[] = "run 1 length=7 m;turn 1 angle=60 deg;run 2 length=4.2 m;pad thickness=150 mm;"
                           "pad width=500 mm;bedding thickness=30 mm";

Test(samples, of_the_legend_differ_without_their_grey) {
  inside seen[SAMPLES_MAX];
  lw_drawing d = {0};
  int count = 0;
  const lw_order *o = order_of(WALL);
  cr_assert_eq(lw_draw_elevation(order_result(), o, 180.0, &d, NULL), LW_OK);
  for (size_t i = 0; i < d.mark_count && count < SAMPLES_MAX; i++) {
    if (!is_box(&d.mark[i])) continue;
    lw_box b = box_of(&d, &d.mark[i]);
    if (fabs(b.left_mm - LEFT_MM) > 0.01 || fabs(b.right_mm - b.left_mm - WIDE_MM) > 0.01) continue;
    inside mine = look(&d, &b);
    if (mine.lines == 0) continue; /* a whole block is blank paper */
    for (int k = 0; k < count; k++) cr_expect_not(alike(&mine, &seen[k]), "samples %d and %d", k, count);
    seen[count++] = mine;
  }
  cr_expect_eq(count, 4, "half, cut, bedding and pad, not %d", count);
  lw_drawing_free(&d);
}

/* At every scale: nothing that is grey is only grey. */
Test(samples, what_is_grey_has_lines_too) {
  const lw_order *o = order_of(WALL);
  for (double width = 90.0; width < 400.0; width += 45.0) {
    lw_drawing d = {0};
    int grey = 0;
    cr_assert_eq(lw_draw_elevation(order_result(), o, width, &d, NULL), LW_OK);
    for (size_t i = 0; i < d.mark_count; i++) {
      if (d.mark[i].kind != LW_MARK_AREA || d.mark[i].fill != LW_FILL_TINT) continue;
      lw_box b = box_of(&d, &d.mark[i]);
      cr_expect(lt(int, 0, look(&d, &b).lines), "%.0f mm wide", width);
      grey++;
    }
    cr_expect(lt(int, 0, grey));
    lw_drawing_free(&d);
  }
}

static int dotted(const lw_drawing *d, double high_mm) {
  int count = 0;
  for (size_t i = 0; i < d->mark_count; i++) {
    if (!is_box(&d->mark[i])) continue;
    lw_box b = box_of(d, &d->mark[i]);
    inside mine = look(d, &b);
    bool dots = mine.lines > 0 && mine.longest_mm < 0.5;
    count += dots && fabs(b.bottom_mm - b.top_mm - high_mm) < 0.01 ? 1 : 0;
  }
  return count;
}

/* However thin the bedding is on paper: 30 mm at 1:5 to 1:100. */
Test(samples, the_thinnest_bedding_has_dots) {
  static const int SCALES[] = {5, 10, 15, 20, 25, 30, 40, 50, 75, 100};
  const lw_order *o = order_of(WALL);
  for (double width = 90.0; width < 400.0; width += 45.0) {
    lw_drawing d = {0};
    int found = 0;
    cr_assert_eq(lw_draw_elevation(order_result(), o, width, &d, NULL), LW_OK);
    for (size_t i = 0; i < sizeof SCALES / sizeof *SCALES; i++) found += dotted(&d, 30.0 / SCALES[i]);
    cr_expect(lt(int, 1, found), "%.0f mm wide", width);
    lw_drawing_free(&d);
  }
}
