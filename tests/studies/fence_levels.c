/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <lowwall/lowwall.h>
#include <math.h>
#include <stdio.h>

#include "../verdict/help.h"
#include "../checks/random_wall.h"

/* Levels at a fence, counted here from the ground in front up: of soil and water against it, of its top. */

enum { BEDS = 200 };

typedef struct levels {
  double top, soil, overflow, far_ground, fence_soil; /* above the ground in front */
  double slope, run, distance, fence;
  bool given;
} levels;

static levels levels_by(dice *d) {
  levels l = {.top = 0.1 * (3 + dice_pick(d, 9)), .given = dice_pick(d, 2)};
  l.soil = l.top - dice_between(d, 0.0, 0.1);
  l.overflow = l.top - dice_between(d, 0.0, 0.2);
  l.far_ground = dice_between(d, -0.1, 0.1);
  l.slope = dice_pick(d, 2) ? dice_between(d, 0.0, 15.0) * acos(-1.0) / 180.0 : 0.0;
  l.run = dice_between(d, 0.1, 2.0);
  l.fence_soil = l.given ? l.far_ground + dice_between(d, 0.1, 1.0) : l.soil + l.run * tan(l.slope);
  l.distance = dice_between(d, 0.0, 2.0);
  l.fence = dice_between(d, 0.3, 2.0);
  return l;
}

static const lw_result *run_of(const levels *l, const char *more) {
  static lw_result result;
  static char text[1024];
  lw_case c;
  int used = snprintf(
      text, sizeof text,
      "block height=100 mm;course count=%.0f;wall embedment=0 m;soil below top=%.9f m;overflow below "
      "top=%.9f m;level difference=%.9f m;ground slope=%.9f deg;ground slope run=%.9f m;%s",
      l->top * 10.0, l->top - l->soil, l->top - l->overflow, l->far_ground, l->slope * 180.0 / acos(-1.0),
      l->run, more);
  if (l->given)
    snprintf(text + used, sizeof text - (size_t)used, ";fence soil height=%.9f m",
             l->fence_soil - l->far_ground);
  verdict_case(text, &c);
  cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, &result, NULL), LW_OK, "%s", text);
  return &result;
}

/* K (γ h + (γsat − γw − γ) w) + γw w, integrated: h of soil, of it w under water. */
static double push_of(const lw_fence_bed *bed, double h, double w) {
  double wet = bed->saturated_unit_weight_kn_per_m3 - bed->water_unit_weight_kn_per_m3;
  double soil = bed->coefficient * bed->unit_weight_kn_per_m3;
  double dry = h - w, at = soil * dry;
  return soil * dry * dry / 2.0 + at * w + bed->coefficient * wet * w * w / 2.0 +
         bed->water_unit_weight_kn_per_m3 * w * w / 2.0;
}

Test(checks, blocked_water_at_a_fence_is_level) {
  dice d = {.state = 905};
  for (int i = 0; i < BEDS; i++) {
    levels l = levels_by(&d);
    const lw_fence *fence = &run_of(&l, "site back=fence;load 1 kind=none")->fence;
    double h = l.fence_soil - l.far_ground, water = fmin(fmin(l.overflow, l.soil), l.fence_soil);
    if (h <= 0.0) continue;
    cr_assert(fence->back && fence->status == LW_OK);
    cr_expect_float_eq(fence->bed.height_m, h, 1e-9);
    double wanted = push_of(&fence->bed, h, fmax(water - l.far_ground, 0.0));
    cr_expect_float_eq(fence->soil[LW_FENCE_BLOCKED].of[LW_FENCE_SHEAR], wanted, 1e-7,
                       "%.9g, by levels %.9g: soil %.3f, at the fence %.3f%s, overflow %.3f, beyond %.3f",
                       fence->soil[LW_FENCE_BLOCKED].of[LW_FENCE_SHEAR], wanted, l.soil, l.fence_soil,
                       l.given ? " as given" : "", l.overflow, l.far_ground);
  }
}

Test(checks, a_fence_is_as_high_as_its_ground_makes_it) {
  dice d = {.state = 2225};
  int near = 0;
  for (int i = 0; i < BEDS; i++) {
    levels l = levels_by(&d);
    bool on_wall = dice_pick(&d, 3) == 0, said = dice_pick(&d, 3) != 0;
    char more[160];
    int used = snprintf(more, sizeof more, "fence height=%.9f m;fence place=%s", l.fence,
                        on_wall ? "on the wall" : "behind");
    if (!on_wall && said)
      snprintf(more + used, sizeof more - (size_t)used, ";fence distance=%.9f m", l.distance);
    const lw_verdict *v = &run_of(&l, more)->verdict;
    double behind = said ? l.distance : l.top, foot = l.soil + fmin(behind, l.run) * tan(l.slope);
    bool counts = on_wall || !said || l.distance < l.top;
    double wanted = counts ? fmax((on_wall ? l.top : foot) + l.fence, l.top) : l.top;
    cr_expect_float_eq(v->height_m[LW_HEIGHT_FENCE], wanted, 1e-7, "%.6f, by levels %.6f: %s",
                       v->height_m[LW_HEIGHT_FENCE], wanted, more);
    near += counts && !on_wall && l.slope > 0.0;
  }
  cr_expect(near > BEDS / 8, "%d fences near on rising ground", near);
}
