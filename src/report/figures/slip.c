/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slip.h"

#include <math.h>

const char *lw_tier_band_slug(lw_tier_band band) {
  static const char *const words[] = {[LW_TIER_NONE] = "none",
                                      [LW_TIER_ALONE] = "alone",
                                      [LW_TIER_TOGETHER] = "together",
                                      [LW_TIER_ONE_WALL] = "one-wall"};
  return words[band];
}

const char *lw_slip_method_slug(lw_slip_method method) {
  static const char *const words[] = {
      [LW_SLIP_BISHOP] = "bishop", [LW_SLIP_ORDINARY] = "ordinary", [LW_SLIP_NOT] = "not"};
  return words[method];
}

void lw_figures_of_slip(const lw_figures *figures, const lw_situation *situation) {
  const lw_slip *slip = &situation->slip;
  if (!situation->slip_known || slip->status != LW_OK) return;
  const lw_slip_circle *c = &slip->circle;
  const struct {
    lw_figure_word word;
    double value;
  } all[] = {{{"centre_x_m", "centre of the worst circle, behind the toe", "m", ""}, c->centre_x_m},
             {{"centre_y_m", "centre of the worst circle, above the base", "m", ""}, c->centre_y_m},
             {{"radius_m", "radius of the worst circle", "m", ""}, c->radius_m},
             {{"exit_x_m", "where it comes out, behind the toe", "m", ""}, c->exit_x_m},
             {{"exit_y_m", "where it comes out, above the base", "m", ""}, c->exit_y_m},
             {{"entry_x_m", "where it goes in, behind the toe", "m", ""}, c->entry_x_m},
             {{"entry_y_m", "where it goes in, above the base", "m", ""}, c->entry_y_m},
             {{"ordinary", "factor by ordinary slices", "", "[FELLENIUS1936 circle]"}, slip->ordinary},
             {{"driving_kn_per_m", "what drives along the circle", "kN/m", ""}, slip->driving_kn_per_m},
             {{"slices", "slices of the search", "", ""}, slip->slice_count},
             {{"circles", "circles tried", "", ""}, slip->circles}};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++) lw_figures_put(figures, &all[i].word, all[i].value);
  lw_figures_put_number(
      figures,
      &(lw_figure_word){"bishop", "factor by Bishop's simplified method", "", "[BISHOP1955 simplified]"},
      (lw_number){slip->bishop, slip->bishop > 0.0}, LW_REASON_NO_CIRCLE);
  if (situation->slip_bare_has.known)
    lw_figures_put(
        figures, &(lw_figure_word){"without_pair_has", "what a slip has without the clay's cohesion", "", ""},
        situation->slip_bare_has.value);
  if (situation->slip_bare_needs.known)
    lw_figures_put(figures, &(lw_figure_word){"without_pair_needs", "what it needs then", "", ""},
                   situation->slip_bare_needs.value);
}

void lw_figures_of_slice(const lw_figures *figures, const lw_slip_view *view, int number) {
  const lw_slip_slice *slice = &view->list.slice[number];
  const lw_slip_forces *force = &view->force[number];
  const struct {
    lw_figure_word word;
    double value;
  } all[] = {
      {{"x_m", "middle of the slice, behind the toe", "m", ""}, slice->x_m},
      {{"width_m", "width of the slice", "m", ""}, slice->width_m},
      {{"weight_kn_per_m", "weight of the slice", "kN/m", ""}, slice->weight_kn_per_m},
      {{"angle_deg", "slope of its base", "deg", ""}, asin(slice->sine) * LW_DEG_PER_RAD},
      {{"length_m", "length of its base", "m", ""}, slice->length_m},
      {{"pore_kpa", "pore pressure at its base", "kPa", ""}, slice->pore_kpa},
      {{"cohesion_kpa", "cohesion at its base", "kPa", ""}, slice->cohesion_kpa},
      {{"friction_deg", "friction at its base", "deg", ""}, atan(slice->tan_friction) * LW_DEG_PER_RAD},
      {{"driving_kn_per_m", "what drives it", "kN/m", ""}, force->driving_kn_per_m},
      {{"shaken_kn_per_m", "what an earthquake adds to that", "kN/m", ""}, force->shaken_kn_per_m},
      {{"holding_kn_per_m", "what holds it, by ordinary slices", "kN/m", ""}, force->ordinary_kn_per_m}};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++) lw_figures_put(figures, &all[i].word, all[i].value);
}

void lw_figures_of_slices(const lw_figures *figures, const lw_situation *situation) {
  lw_slip_view view;
  const lw_slip *slip = &view.slip;
  if (!lw_again_slip(figures->result, situation, &view)) return;
  lw_figures_put(figures, &(lw_figure_word){"shown_ordinary", "factor of the slices shown, ordinary", "", ""},
                 slip->ordinary);
  lw_figures_put_number(figures,
                        &(lw_figure_word){"shown_bishop", "factor of the slices shown, Bishop", "", ""},
                        (lw_number){slip->bishop, slip->bishop > 0.0}, LW_REASON_NO_CIRCLE);
  for (int i = 0; i < view.list.count; i++) {
    char part[24];
    lw_print(part, sizeof part, "slice-%d", i + 1);
    lw_figures b = lw_figures_below(figures, part);
    lw_figures_of_slice(&b, &view, i);
  }
}

void lw_figures_of_tier(const lw_figures *figures) {
  const lw_tier *tier = &figures->result->wall.tier;
  lw_figures b = lw_figures_below(figures, "tier");
  if (tier->band == LW_TIER_NONE) return;
  lw_figures_put(&b, &(lw_figure_word){"distance_m", "clear distance of the other wall", "m", ""},
                 tier->distance_m);
  lw_figures_put(&b, &(lw_figure_word){"height_m", "height of the other wall", "m", ""}, tier->height_m);
  lw_figures_put(&b, &(lw_figure_word){"lower_m", "height of the lower wall", "m", ""}, tier->lower_m);
  if (tier->pressure_kpa > 0.0)
    lw_figures_put(&b, &(lw_figure_word){"pressure_kpa", "of the upper wall and its soil", "kPa", ""},
                   tier->pressure_kpa);
}
