/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "parts.h"

/* The fence at the back of a bed, and the wind on a fence. */

static double known(lw_number number) {
  return number.known ? number.value : NAN;
}

static void bed(const lw_figures *f, const lw_fence *fence) {
  const lw_figure_row list[] = {
      {"soil_height_m", "soil against the fence, above the lower ground", "m", fence->bed.height_m},
      {"at_rest_coefficient", "coefficient at rest", "", fence->bed.coefficient},
      {"yielding_coefficient", "coefficient if the boards may lean", "", fence->yielding_coefficient},
      {"unit_weight_kn_per_m3", "unit weight of the soil", "kN/m3", fence->bed.unit_weight_kn_per_m3},
      {"saturated_unit_weight_kn_per_m3", "unit weight in water", "kN/m3",
       fence->bed.saturated_unit_weight_kn_per_m3},
      {"surcharge_kpa", "load on the bed", "kPa", fence->bed.surcharge_kpa},
      {"blocked_water_m", "water with the outlet blocked, below the soil", "m", fence->blocked_water_m},
      {"hole_m", "depth of the post hole", "m", fence->bed.hole_m},
      {"built_for_kpa", "wind the fence was built for", "kPa", fence->built_for.pressure_kpa},
      {"built_for_height_m", "height of the fence", "m", fence->built_for.height_m},
      {"lasting_share", "strength kept under a load that stays", "", fence->lasting}};
  LW_FIGURES_PUT(f, list);
}

static void measure(const lw_figures *figures, const lw_fence *fence, lw_fence_measure m) {
  lw_figures f = lw_figures_below(figures, lw_fence_measure_slug(m));
  const char *unit = lw_fence_measure_unit(m), *end = lw_figures_key_unit(unit);
  char wind_tail[32], soil[32], blocked[32], yielding[32];
  lw_print(wind_tail, sizeof wind_tail, "wind_%s", end);
  lw_print(soil, sizeof soil, "soil_%s", end);
  lw_print(blocked, sizeof blocked, "blocked_%s", end);
  lw_print(yielding, sizeof yielding, "yielding_%s", end);
  bool timber = m != LW_FENCE_HOLE;
  const lw_figure_row list[] = {
      {wind_tail, "of the wind", unit, fence->wind.of[m]},
      {soil, "of the soil at rest", unit, fence->soil[LW_FENCE_DRY].of[m]},
      {blocked, "of the soil with the outlet blocked", unit, fence->soil[LW_FENCE_BLOCKED].of[m]},
      {yielding, "of the soil if the boards may lean", unit, fence->soil[LW_FENCE_YIELDING].of[m]},
      {"ratio", "soil over wind", "", fence->ratio[LW_FENCE_DRY][m]},
      {"blocked_ratio", "the same, outlet blocked", "", fence->ratio[LW_FENCE_BLOCKED][m]},
      {"yielding_ratio", "the same, if the boards may lean", "", fence->ratio[LW_FENCE_YIELDING][m]},
      {"lasting_ratio", "soil over what is kept for good", "",
       timber ? fence->lasting_ratio[LW_FENCE_DRY][m] : NAN},
      {"blocked_lasting_ratio", "the same, outlet blocked", "",
       timber ? fence->lasting_ratio[LW_FENCE_BLOCKED][m] : NAN},
      {"equal_m", "soil that comes to the wind", "m", known(fence->equal_m[LW_FENCE_DRY][m])},
      {"blocked_equal_m", "the same, outlet blocked", "m", known(fence->equal_m[LW_FENCE_BLOCKED][m])},
      {"yielding_equal_m", "the same, if the boards may lean", "m",
       known(fence->equal_m[LW_FENCE_YIELDING][m])},
      {"lasting_equal_m", "soil that comes to what is kept for good", "m",
       timber ? known(fence->lasting_equal_m[LW_FENCE_DRY][m]) : NAN},
      {"blocked_lasting_equal_m", "the same, outlet blocked", "m",
       timber ? known(fence->lasting_equal_m[LW_FENCE_BLOCKED][m]) : NAN}};
  LW_FIGURES_PUT(&f, list);
}

static void post_load(const lw_figures *figures, const lw_fence_post *post, lw_fence_load at) {
  char part[32];
  const lw_fence_post_load *load = &post->load[at];
  lw_print(part, sizeof part, "%s_post", lw_fence_load_slug(at));
  lw_figures f = lw_figures_below(figures, part);
  const lw_figure_row list[] = {
      {"push_kn", "push on one post", "kN", load->push_kn},
      {"arm_m", "its height above the ground", "m", load->arm_m},
      {"moment_knm", "moment at the ground", "kN m", load->moment_knm},
      {"broms_kn", "push that tips the post in the ground", "kN", load->broms_kn},
      {"has", "that over the push", "", load->has},
      {"broms_depth_m", "hole that would be needed by it", "m", known(load->broms_depth_m)},
      {"code_kn", "push that a code allows", "kN", load->code_kn},
      {"code_depth_m", "hole that the code asks", "m", known(load->code_depth_m)},
      {"moment_has", "what the post resists over the moment", "", known(load->moment_has)}};
  LW_FIGURES_PUT(&f, list);
}

static void post(const lw_figures *figures, const lw_fence_post *p) {
  lw_figures f = lw_figures_below(figures, "post");
  const lw_figure_row list[] = {
      {"spacing_m", "spacing of the posts", "m", p->spacing_m},
      {"width_m", "width of the hole's concrete or of the post", "m", p->hole.width_m},
      {"needs", "what the ground must have over the push", "", p->needs},
      {"soil_factor", "factor on the soil's moment", "", p->soil_factor},
      {"lateral_kn_per_m3", "lateral pressure a code lets clay bear, a metre of depth", "kN/m3",
       p->hole.lateral_kpa_per_m},
      {"gust_knm", "what the post resists under a gust", "kN m", known(p->gust_knm)},
      {"lasting_knm", "what it keeps for good", "kN m", known(p->lasting_knm)}};
  LW_FIGURES_PUT(&f, list);
  for (int i = 0; i < LW_FENCE_LOAD_COUNT; i++) post_load(figures, p, (lw_fence_load)i);
}

static void boards(const lw_figures *figures, const lw_fence_boards *b) {
  lw_figures f = lw_figures_below(figures, "boards");
  const lw_figure_row list[] = {
      {"thickness_m", "thickness of the boards", "m", b->thickness_m},
      {"span_m", "their span", "m", b->span_m},
      {"stress_kpa", "bending stress in the lowest board", "kPa", b->stress_kpa},
      {"blocked_stress_kpa", "the same, outlet blocked", "kPa", b->blocked_stress_kpa},
      {"allowed_kpa", "stress that softwood keeps for good", "kPa", b->allowed_kpa},
      {"has", "allowed over stress", "", b->has},
      {"blocked_has", "the same, outlet blocked", "", b->blocked_has}};
  LW_FIGURES_PUT(&f, list);
}

static void wind(const lw_figures *figures, const lw_fence_wind *w) {
  lw_figures f = lw_figures_below(figures, "wind");
  const lw_figure_row list[] = {
      {"height_m", "height of the fence", "m", w->height_m},
      {"pressure_kpa", "wind on it", "kPa", w->pressure_kpa},
      {"end_factor", "factor of a run's end in that", "", w->end_factor},
      {"force_kn_per_m", "push of the wind", "kN/m", w->force_kn_per_m},
      {"foot_moment_knm_per_m", "moment at the fence's foot", "kN m/m", w->foot_moment_knm_per_m},
      {"toe_moment_knm_per_m", "moment about the wall's toe", "kN m/m",
       w->on_wall ? w->toe_moment_knm_per_m : NAN},
      {"wall_moment_knm_per_m", "moment of the wall's own weight", "kN m/m",
       w->on_wall ? known(w->wall_moment_knm_per_m) : NAN},
      {"distance_m", "clear distance behind the wall", "m", w->on_wall ? NAN : w->distance_m},
      {"below_m", "ground that the posts push, below the soil there", "m", w->on_wall ? NAN : w->below_m},
      {"stone_off_m", "distance from which the posts stand clear of the stone", "m", w->stone_off_m},
      {"keep_off_m", "distance to keep", "m", w->keep_off_m},
      {"clear_m", "distance from which the wedge does not take the push", "m", known(w->clear_m)}};
  LW_FIGURES_PUT(&f, list);
}

void lw_figures_of_fence(const lw_figures *figures) {
  const lw_fence *fence = &figures->result->fence;
  lw_figures f = lw_figures_below(figures, "fence");
  if (fence->on.present) wind(&f, &fence->on);
  if (!fence->back || fence->status != LW_OK) return;
  bed(&f, fence);
  for (int m = 0; m < LW_FENCE_MEASURE_COUNT; m++) measure(&f, fence, (lw_fence_measure)m);
  post(&f, &fence->post);
  boards(&f, &fence->boards);
}
