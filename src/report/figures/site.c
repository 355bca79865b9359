/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "parts.h"
#include "report/faces.h"
#include "report/fluid.h"
#include "report/paired.h"

/* The site as it was computed with, in the units of people. */

static void soil(const lw_figures *figures, const char *part, const lw_soil *s) {
  lw_figures b = lw_figures_below(figures, part);
  const lw_figure_row list[] = {
      {"friction_deg", "angle of friction", "deg", s->friction_rad * LW_DEG_PER_RAD},
      {"cohesion_kpa", "cohesion", "kPa", s->cohesion_kpa},
      {"unit_weight_kn_per_m3", "unit weight where it pushes", "kN/m3", s->unit_weight_kn_per_m3},
      {"light_unit_weight_kn_per_m3", "unit weight where it helps", "kN/m3", s->light_unit_weight_kn_per_m3},
      {"saturated_unit_weight_kn_per_m3", "unit weight in water", "kN/m3",
       s->saturated_unit_weight_kn_per_m3},
      {"bottom_m", "bottom of the layer below the top of the wall", "m", s->bottom_m}};
  LW_FIGURES_PUT(&b, list);
}

static void ground(const lw_figures *b, const lw_site *s) {
  const lw_figure_row list[] = {
      {"slope_deg", "slope of the ground behind", "deg", s->slope_rad * LW_DEG_PER_RAD},
      {"slope_run_m", "length of that slope, level beyond", "m", s->slope_run_m},
      {"soil_below_top_m", "soil at the wall below its top", "m", s->soil_below_top_m},
      {"front_slope_deg", "fall of the ground in front", "deg", s->front_slope_rad * LW_DEG_PER_RAD},
      {"stone_width_m", "width of the drainage stone", "m", s->stone_width_m},
      {"surcharge_kpa", "uniform load behind", "kPa", s->surcharge_kpa},
      {"water_unit_weight_kn_per_m3", "unit weight of water", "kN/m3", s->water_unit_weight_kn_per_m3},
      {"front_water_depth_m", "water in front below the top of the wall", "m", s->front_water_depth_m},
      {"permeability_m_per_s", "least permeability of the soils behind", "m/s",
       s->permeability_m_per_s > 0.0 ? s->permeability_m_per_s : NAN},
      {"ways_found", "ways out for water, counted one by one", "", (double)s->ways_found},
      {"ways_out", "those that count: without a filter, one", "", (double)s->ways_out}};
  LW_FIGURES_PUT(b, list);
}

/* The two faces, and what stands behind each. */
static void base_faces(const lw_figures *b) {
  lw_faces f;
  lw_faces_find(b->result, &f);
  const char *of_bed = f.bed_row ? f.bed_row->from.source : "",
             *of_ground = f.ground_row ? f.ground_row->critical_from.source : "",
             *of_clay = f.clay_row ? f.clay_row->undrained_from.source : "";
  lw_figures_put(b, &(lw_figure_word){"bed_friction", "friction of the wall on its bed", "", of_bed}, f.bed);
  lw_figures_put(b, &(lw_figure_word){"pad_friction", "friction of the pad on the ground", "", of_ground},
                 f.ground);
  if (f.undrained_kpa > 0.0)
    lw_figures_put(b, &(lw_figure_word){"undrained_kpa", "undrained strength under the wall", "kPa", of_clay},
                   f.undrained_kpa);
}

static void paired(const lw_figures *b, const lw_paired *p) {
  const lw_soil_row *row = lw_paired_row(b->result);
  if (!row) return;
  lw_figures_put(b,
                 &(lw_figure_word){"paired_cohesion_kpa",
                                   "cohesion of the clay that counts in slips and bearing", "kPa",
                                   row->paired_from.source},
                 p->cohesion_kpa);
  const lw_figure_row list[] = {
      {"paired_from_m", "below the ground in front, from which it counts", "m", p->depth_m},
      {"paired_likely_kpa", "what counts there by likely values", "kPa", p->likely_kpa},
      {"paired_likely_shallow_kpa", "what counts above there by likely values", "kPa",
       p->likely_shallow_kpa}};
  LW_FIGURES_PUT(b, list);
}

static void under(const lw_figures *b, const lw_wall *w) {
  const lw_site *s = &w->site;
  const lw_figure_row list[] = {
      {"wall_friction_deg", "friction of soil on the wall", "deg", w->wall_friction_rad * LW_DEG_PER_RAD},
      {"base_friction", "friction under the base, the weaker interface", "", s->base_friction},
      {"base_adhesion_kpa", "adhesion under the base", "kPa", s->base_adhesion_kpa}};
  LW_FIGURES_PUT(b, list);
  base_faces(b);
  paired(b, &s->paired);
  lw_figures_put_number(
      b, &(lw_figure_word){"allowable_bearing_kpa", "bearing value of the ground", "kPa", ""},
      (lw_number){s->allowable_bearing_kpa, s->allowable_bearing_kpa > 0.0}, LW_REASON_NO_BEARING_VALUE);
}

static void fluid(const lw_figures *b, const lw_result *result) {
  lw_fluid f = lw_fluid_of(result);
  const lw_figure_row list[] = {{"fluid_kn_per_m3", "the soil's push as a fluid's, as built", "kN/m3",
                                 f.known ? f.weight_kn_per_m3 : NAN},
                                {"code_fluid_kn_per_m3", "the fluid that a code has for this soil", "kN/m3",
                                 f.row ? f.row->code_fluid_kn_per_m3 : NAN},
                                {"fluid_of_code", "ours over the code's", "", f.row ? f.share : NAN}};
  LW_FIGURES_PUT(b, list);
}

static void pad(const lw_figures *figures, const lw_pad *p) {
  lw_figures b = lw_figures_below(figures, "pad");
  if (p->thickness_m <= 0.0) return;
  const lw_figure_row list[] = {
      {"thickness_m", "thickness of the pad", "m", p->thickness_m},
      {"spread", "spread of the load in it, level to upright", "", p->spread},
      {"unit_weight_kn_per_m3", "unit weight of its stone", "kN/m3", p->unit_weight_kn_per_m3},
      {"width_m", "width of the pad", "m", p->width_m > 0.0 ? p->width_m : NAN},
      {"allowable_kpa", "bearing value of its stone", "kPa",
       p->allowable_kpa > 0.0 ? p->allowable_kpa : NAN}};
  LW_FIGURES_PUT(&b, list);
}

static void load(const lw_figures *figures, int number, const lw_site_load *l) {
  char part[24];
  lw_print(part, sizeof part, "load-%d", number);
  lw_figures b = lw_figures_below(figures, part);
  bool point = l->kind == LW_LOAD_POINT;
  if (l->kind == LW_LOAD_STRIP) {
    lw_figures_put(&b, &(lw_figure_word){"pressure_kpa", "pressure of the load", "kPa", ""}, l->pressure_kpa);
  } else {
    lw_figures_put(&b,
                   &(lw_figure_word){point ? "force_kn" : "force_kn_per_m", "force of the load",
                                     point ? "kN" : "kN/m", ""},
                   l->force);
  }
  if (l->push > 0.0)
    lw_figures_put(&b, &(lw_figure_word){"push_kn_per_m", "outward at the cap", "kN/m", ""}, l->push);
  if (l->kind == LW_LOAD_CAP) return;
  if (l->below_m > 0.0)
    lw_figures_put(&b, &(lw_figure_word){"below_m", "below the ground", "m", ""}, l->below_m);
  lw_figures_put(&b, &(lw_figure_word){"near_m", "near edge behind the top", "m", ""}, l->near_m);
  lw_figures_put(&b, &(lw_figure_word){"far_m", "far edge behind the top", "m", ""}, l->far_m);
}

void lw_figures_of_site(const lw_figures *figures) {
  const lw_wall *w = &figures->result->wall;
  lw_figures b = lw_figures_below(figures, "site");
  for (int i = 0; i < w->site.soil_count; i++) {
    char part[24];
    lw_print(part, sizeof part, "soil-%d", i + 1);
    soil(&b, part, &w->site.soil[i]);
  }
  soil(&b, "footing", &w->site.footing);
  ground(&b, &w->site);
  under(&b, w);
  fluid(&b, figures->result);
  pad(&b, &w->site.pad);
  for (int i = 0; i < w->site.load_count; i++) load(&b, i + 1, &w->site.load[i]);
}
