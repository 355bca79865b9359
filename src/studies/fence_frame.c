/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fence_frame.h"

#include "tables/known.h"
#include "fence_parts.h"

#include <math.h>

#include "base/bound.h"
#include "fence_post.h"

/* The posts and boards of a fence that closes a bed. */

static void fill_hole(const lw_tables *tables, const lw_wall *wall, lw_fence_hole *hole) {
  const lw_site *site = &wall->site;
  *hole = (lw_fence_hole){.depth_m = wall->back_fence.post_depth_m,
                          .width_m = wall->back_fence.post_width_m,
                          .friction_rad = site->footing.friction_rad,
                          .unit_weight_kn_per_m3 = site->footing.light_unit_weight_kn_per_m3,
                          .lateral_kpa_per_m = lw_known_value(tables, LW_FENCE_OF_LATERAL_BEARING)};
}

static void fill_strength(const lw_tables *tables, const lw_back_fence *back, lw_fence_post *post) {
  lw_number gust = back->post_moment_knm;
  if (back->post_side_m.known)
    gust = (lw_number){
        lw_fence_post_moment(lw_known_value(tables, LW_FENCE_OF_TIMBER_STRENGTH), back->post_side_m.value) *
            lw_known_value(tables, LW_FENCE_OF_TIMBER_GUST) /
            lw_known_value(tables, LW_FENCE_OF_TIMBER_MATERIAL),
        true};
  if (!gust.known) return;
  post->gust_knm = gust;
  post->lasting_knm = (lw_number){gust.value * back->lasting, true};
}

static lw_number depth_by_broms(const lw_fence_post *post, const lw_fence_post_load *load) {
  lw_number depth = {0.0, false};
  depth.known =
      lw_fence_broms_depth(&post->hole, load->push_kn, load->arm_m, post->needs, &depth.value) == LW_OK;
  return depth;
}

static lw_number depth_by_code(const lw_fence_post *post, const lw_fence_post_load *load) {
  lw_number depth = {0.0, false};
  depth.known = lw_fence_code_depth_of(&post->hole, load->push_kn, load->arm_m, &depth.value) == LW_OK;
  return depth;
}

static void put_load(const lw_fence_post *post, double push_kn, double moment_knm, lw_fence_post_load *load) {
  load->push_kn = push_kn;
  load->moment_knm = moment_knm;
  load->arm_m = moment_knm / push_kn;
  load->broms_kn = lw_fence_broms(&post->hole, load->arm_m, NULL);
  load->code_kn = lw_fence_code_push(&post->hole, load->arm_m, NULL);
  load->has = load->broms_kn / push_kn;
  load->broms_depth_m = depth_by_broms(post, load);
  load->code_depth_m = depth_by_code(post, load);
}

/* Wood is as strong as under the shortest of the loads that act together. */
static void put_moment(lw_number resists, double moment_knm, lw_number *has) {
  if (resists.known && moment_knm > 0.0) *has = (lw_number){resists.value / moment_knm, true};
}

void lw_fence_find_post(const lw_tables *tables, const lw_wall *wall, lw_fence *fence) {
  lw_fence_post *post = &fence->post;
  post->spacing_m = wall->back_fence.post_spacing_m;
  post->needs = lw_known_value(tables, LW_FENCE_OF_GROUND_FACTOR);
  post->soil_factor = lw_known_value(tables, LW_FENCE_OF_SOIL_FACTOR);
  fill_hole(tables, wall, &post->hole);
  fill_strength(tables, &wall->back_fence, post);
  double s = post->spacing_m;
  const double *dry = fence->soil[LW_FENCE_DRY].of, *wet = fence->soil[LW_FENCE_BLOCKED].of;
  const double *wind = fence->wind.of;
  lw_fence_post_load *load = post->load;
  put_load(post, s * dry[LW_FENCE_SHEAR], s * dry[LW_FENCE_GROUND], &load[LW_FENCE_SOIL]);
  put_load(post, s * wet[LW_FENCE_SHEAR], s * wet[LW_FENCE_GROUND], &load[LW_FENCE_WET_SOIL]);
  put_load(post, s * wind[LW_FENCE_SHEAR], s * wind[LW_FENCE_GROUND], &load[LW_FENCE_WIND]);
  put_load(post, s * (dry[LW_FENCE_SHEAR] + wind[LW_FENCE_SHEAR]),
           s * (dry[LW_FENCE_GROUND] + wind[LW_FENCE_GROUND]), &load[LW_FENCE_SOIL_AND_WIND]);
  double soil = post->soil_factor * load[LW_FENCE_SOIL].moment_knm;
  double wet_soil = post->soil_factor * load[LW_FENCE_WET_SOIL].moment_knm;
  double gust = load[LW_FENCE_WIND].moment_knm;
  put_moment(post->lasting_knm, soil, &load[LW_FENCE_SOIL].moment_has);
  put_moment(post->lasting_knm, wet_soil, &load[LW_FENCE_WET_SOIL].moment_has);
  put_moment(post->gust_knm, gust, &load[LW_FENCE_WIND].moment_has);
  put_moment(post->gust_knm, soil + gust, &load[LW_FENCE_SOIL_AND_WIND].moment_has);
}

void lw_fence_write_post(const lw_fence *fence, const lw_working *working) {
  const lw_fence_post *post = &fence->post;
  lw_fence_post_load again = {0};
  const double *soil = fence->soil[LW_FENCE_DRY].of;
  double s = post->spacing_m;
  put_load(post, s * soil[LW_FENCE_SHEAR], s * soil[LW_FENCE_GROUND], &again);
  const lw_bound bound[] = {{"ds", s, "m"},
                            {"Vs", soil[LW_FENCE_SHEAR], "kN/m"},
                            {"Mg", soil[LW_FENCE_GROUND], "kN m/m"},
                            {"Qp", again.push_kn, "kN"}};
  lw_working_bound(working, &(lw_step){"Qp", "ds Vs", NULL, again.push_kn, "kN", "statics"}, bound, 4);
  lw_working_bound(working, &(lw_step){"es", "ds Mg/Qp", NULL, again.arm_m, "m", "statics"}, bound, 4);
  (void)lw_fence_broms(&post->hole, again.arm_m, working);
  (void)lw_fence_code_push(&post->hole, again.arm_m, working);
}

void lw_fence_find_boards(const lw_tables *tables, const lw_back_fence *back, lw_fence *fence) {
  lw_fence_boards *boards = &fence->boards;
  boards->thickness_m = back->board_thickness_m;
  boards->span_m = back->board_span_m;
  boards->stress_kpa = lw_fence_board_stress(fence->soil[LW_FENCE_DRY].of[LW_FENCE_BOARD], boards->span_m,
                                             boards->thickness_m, NULL);
  boards->blocked_stress_kpa = lw_fence_board_stress(fence->soil[LW_FENCE_BLOCKED].of[LW_FENCE_BOARD],
                                                     boards->span_m, boards->thickness_m, NULL);
  double strength = lw_known_value(tables, LW_FENCE_OF_TIMBER_STRENGTH),
         gust = lw_known_value(tables, LW_FENCE_OF_TIMBER_GUST);
  boards->allowed_kpa = strength * gust * fence->lasting /
                        lw_known_value(tables, LW_FENCE_OF_TIMBER_MATERIAL) /
                        lw_known_value(tables, LW_FENCE_OF_SOIL_FACTOR);
  boards->has = boards->allowed_kpa / boards->stress_kpa;
  boards->blocked_has = boards->allowed_kpa / boards->blocked_stress_kpa;
}
