/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fence_post.h"

#include <lowwall/studies.h>

#include <math.h>

#include "base/bound.h"
#include "base/solve.h"

/* A post in the ground, and timber in bending. */

static const double DEEPEST_M = 20.0, CLOSE_M = 1e-9;

/* The code's own figures, for a post that nothing holds at the ground. */
static const double CODE_PUSH = 2.34, CODE_ARM = 4.36;

double lw_fence_broms(const lw_fence_hole *hole, double arm_m, const lw_working *working) {
  double depth = hole->depth_m, sine = sin(hole->friction_rad), kp = (1.0 + sine) / (1.0 - sine);
  if (depth <= 0.0) return 0.0;
  double push =
      0.5 * hole->unit_weight_kn_per_m3 * hole->width_m * depth * depth * depth * kp / (arm_m + depth);
  if (working == NULL) return push;
  const lw_bound bound[] = {{"gamma", hole->unit_weight_kn_per_m3, "kN/m3"},
                            {"bp", hole->width_m, "m"},
                            {"Lp", depth, "m"},
                            {"phi", hole->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"Kp", kp, ""},
                            {"es", arm_m, "m"}};
  const lw_step resists = {"Kp", "(1 + sin phi)/(1 - sin phi)", NULL, kp, "", "[RANKINE1857 level ground]"};
  const lw_step overturns = {"Hu", "0.5 gamma bp Lp^3 Kp/(es + Lp)",     NULL, push,
                             "kN", "[BROMS1964 short free-headed piles]"};
  lw_working_bound(working, &resists, bound, sizeof bound / sizeof bound[0]);
  lw_working_bound(working, &overturns, bound, sizeof bound / sizeof bound[0]);
  return push;
}

double lw_fence_code_depth(double push_kn, double arm_m, double width_m, double allowed_kpa) {
  double a = CODE_PUSH * push_kn / (allowed_kpa * width_m);
  return a > 0.0 ? 0.5 * a * (1.0 + sqrt(1.0 + CODE_ARM * arm_m / a)) : 0.0;
}

/* From d = A/2 (1 + sqrt(1 + 4.36 h/A)): A = d²/(d + 1.09 h). */
double lw_fence_code_push(const lw_fence_hole *hole, double arm_m, const lw_working *working) {
  double depth = hole->depth_m, allowed = hole->lateral_kpa_per_m * depth / 3.0;
  if (depth <= 0.0) return 0.0;
  double a = depth * depth / (depth + 0.25 * CODE_ARM * arm_m),
         push = a * allowed * hole->width_m / CODE_PUSH;
  const lw_bound bound[] = {{"Sm", hole->lateral_kpa_per_m, "kPa/m"},
                            {"Lp", depth, "m"},
                            {"bp", hole->width_m, "m"},
                            {"es", arm_m, "m"}};
  const lw_step step = {"Ha", "Sm Lp/3 bp Lp^2/(2.34 (Lp + 1.09 es))", NULL, push, "kN", "[IBC 1807.3.2.1]"};
  lw_working_bound(working, &step, bound, sizeof bound / sizeof bound[0]);
  return push;
}

typedef struct need {
  const lw_fence_hole *hole;
  double (*holds)(const lw_fence_hole *, double, const lw_working *);
  double push_kn, arm_m;
} need;

static double spare_at(double depth_m, const void *context) {
  const need *of = context;
  lw_fence_hole hole = *of->hole;
  hole.depth_m = depth_m;
  return of->holds(&hole, of->arm_m, NULL) - of->push_kn;
}

static lw_status find_depth(const need *of, double *depth) {
  if (of->push_kn <= 0.0) {
    *depth = 0.0;
    return LW_OK;
  }
  return lw_solve_root(spare_at, of, 0.0, DEEPEST_M, CLOSE_M, depth);
}

lw_status lw_fence_broms_depth(const lw_fence_hole *hole, double push_kn, double arm_m, double factor,
                               double *depth) {
  need of = {hole, lw_fence_broms, factor * push_kn, arm_m};
  return find_depth(&of, depth);
}

lw_status lw_fence_code_depth_of(const lw_fence_hole *hole, double push_kn, double arm_m, double *depth) {
  need of = {hole, lw_fence_code_push, push_kn, arm_m};
  return find_depth(&of, depth);
}

double lw_fence_board_stress(double pressure_kpa, double span_m, double thickness_m,
                             const lw_working *working) {
  double stress = 6.0 / 8.0 * pressure_kpa * span_m * span_m / (thickness_m * thickness_m);
  const lw_bound bound[] = {{"pf", pressure_kpa, "kPa"}, {"db", span_m, "m"}, {"tb", thickness_m, "m"}};
  const lw_step step = {"sb", "(pf db^2/8)/(tb^2/6)", NULL, stress, "kPa", "statics"};
  lw_working_bound(working, &step, bound, sizeof bound / sizeof bound[0]);
  return stress;
}

double lw_fence_post_moment(double strength_kpa, double side_m) {
  return strength_kpa * side_m * side_m * side_m / 6.0;
}
