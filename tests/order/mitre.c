/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "order/mitre.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>

static const double DEGREE = 3.14159265358979323846 / 180.0;

/* Common practice, recomputed: a 90 degree mitre is 45. */
Test(order, mitres_have_the_figures_of_the_trade) {
  const struct {
    double angle, first, second, a, b, extra_first, extra_second;
  } rows[] = {{90, 300, 300, 45, 45, 300, 300},
              {90, 300, 200, 56.31, 33.69, 200, 300},
              {120, 300, 300, 60, 60, 173.2, 173.2},
              {135, 300, 250, 79.88, 55.12, 53.5, 174.3},
              {60, 300, 300, 30, 30, 519.6, 519.6}};
  for (int i = 0; i < 5; i++) {
    lw_mitre m = {0};
    cr_assert(lw_order_mitre(rows[i].angle * DEGREE, rows[i].first, rows[i].second, &m) == LW_OK);
    cr_expect(epsilon_eq(dbl, m.angle_rad[0] / DEGREE, rows[i].a, 0.006), "%d", i);
    cr_expect(epsilon_eq(dbl, m.angle_rad[1] / DEGREE, rows[i].b, 0.006), "%d", i);
    cr_expect(epsilon_eq(dbl, m.extra_m[0], rows[i].extra_first, 0.06), "%d", i);
    cr_expect(epsilon_eq(dbl, m.extra_m[1], rows[i].extra_second, 0.06), "%d", i);
  }
}

/* 20 angles and widths: the cut runs from the meeting of the outer edges to that of the inner ones. Run 1
 * lies along X with its outer edge on it, run 2 leaves the origin at the angle; their inner edges meet
 * where both are one width away. */
Test(order, mitres_agree_with_plane_geometry) {
  int mitred = 0;
  for (int i = 0; i < 20; i++) {
    double angle = (40.0 + 6.0 * i) * DEGREE, first = 0.2 + 0.01 * (i % 7), second = 0.2 + 0.013 * (i % 5);
    double y = first, x = (second + first * cos(angle)) / sin(angle);
    double along_second = x * cos(angle) + y * sin(angle);
    lw_mitre m = {0};
    bool meets = x > 0.0 && along_second > 0.0;
    bool answered = lw_order_mitre(angle, first, second, &m) == LW_OK;
    cr_expect(answered == meets, "%d", i);
    if (!meets) continue;
    mitred++;
    cr_expect(epsilon_eq(dbl, m.angle_rad[0], atan2(y, x), 1e-12), "%d", i);
    cr_expect(epsilon_eq(dbl, m.extra_m[0], x, 1e-12), "%d", i);
    cr_expect(epsilon_eq(dbl, m.extra_m[1], along_second, 1e-12), "%d", i);
    cr_expect(epsilon_eq(dbl, m.cut_m, hypot(x, y), 1e-12), "%d", i);
  }
  cr_expect(le(int, 15, mitred));
}

Test(order, a_mitre_that_cannot_be_is_a_butt_joint) {
  lw_mitre m = {.cut_m = 7.0};
  cr_expect(lw_order_mitre(170 * DEGREE, 0.3, 0.1, &m) == LW_NO_SOLUTION);
  cr_expect(lw_order_mitre(0.0, 0.3, 0.3, &m) == LW_NO_SOLUTION);
  cr_expect(epsilon_eq(dbl, m.cut_m, 7.0, 1e-12));
}

/* Recomputed figures of the trade: taper 300/240 at 200 mm, and rectangular blocks with open joints. */
Test(order, curves_have_their_least_radius) {
  const struct {
    double face, tail, gap;
    bool convex;
    double radius, within;
  } rows[] = {{0.3, 0.24, 0.0, true, 1.0, 1e-9},
              {0.3, 0.3, 0.005, true, 12.2, 1e-9},
              {0.3, 0.3, 0.010, true, 6.2, 1e-9},
              {0.3, 0.3, 0.015, false, 4.0, 1e-9}};
  for (int i = 0; i < 4; i++) {
    double radius = 0.0;
    cr_assert(lw_order_least_radius(rows[i].face, rows[i].tail, 0.2, rows[i].gap, rows[i].convex, &radius) ==
              LW_OK);
    cr_expect(epsilon_eq(dbl, radius, rows[i].radius, rows[i].within), "%d", i);
  }
  double radius = 7.0;
  cr_expect(lw_order_least_radius(0.3, 0.3, 0.2, 0.0, true, &radius) == LW_NO_SOLUTION);
  cr_expect(epsilon_eq(dbl, radius, 7.0, 1e-12));
}
