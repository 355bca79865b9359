/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>

#include "forces.h"
#include "slip.h"
#include "free_body.h"

static void compared(const lw_figures *figures, const lw_situation *situation) {
  const lw_compared *both = situation->compared;
  for (int i = 0; i < LW_COMPARED; i++) {
    lw_figures b = lw_figures_below(figures, both[i].slug);
    lw_figures_put_number(&b,
                          &(lw_figure_word){"coefficient", "coefficient, lowest soil", "", both[i].source},
                          (lw_number){both[i].coefficient, both[i].known}, both[i].reason);
    lw_figures_put_number(
        &b, &(lw_figure_word){"formula_kn_per_m", "thrust by the formula", "kN/m", both[i].source},
        (lw_number){both[i].formula_kn_per_m, both[i].known}, both[i].reason);
    if (both[i].loads_kn_per_m > 0.0)
      lw_figures_put(&b, &(lw_figure_word){"loads_push_kn_per_m", "push of loads at a distance", "kN/m", ""},
                     both[i].loads_kn_per_m);
    lw_figures_put_number(&b,
                          &(lw_figure_word){"wedge_thrust_kn_per_m", "thrust by trial wedges", "kN/m", ""},
                          (lw_number){both[i].wedge_kn_per_m, both[i].wedge_known}, LW_REASON_NO_WEDGE);
  }
}

static void of_joints(const lw_figures *figures, const lw_situation *s) {
  bool cap = figures->result->wall.section.has_cap;
  for (int i = 0; i < s->joint_count; i++) {
    char part[24];
    if (cap && i == s->joint_count - 1)
      lw_print(part, sizeof part, "cap");
    else
      lw_print(part, sizeof part, "joint-%d", i + 1);
    lw_figures b = lw_figures_below(figures, part);
    lw_figures_of_joint(&b, &s->joint[i]);
  }
}

/* The partial factors in the forces of the free bodies that follow. */
static void of_factors(const lw_figures *figures, const lw_situation *s) {
  const lw_factors *f = &s->load_case.actions.factors;
  const char *source = s->load_case.set ? s->load_case.set->from.source : "";
  const struct {
    const char *tail, *label;
    double value;
  } rows[] = {{"wall_weight", "factor on the weight of the wall", f->wall_weight},
              {"soil_weight", "factor on the weight of soil on the wall", f->soil_weight},
              {"earth_pressure", "factor on the push of the soil", f->earth_pressure},
              {"water", "factor on water behind and uplift", f->water},
              {"front_water", "factor on water in front", f->front_water},
              {"variable", "factor on the push of loads behind", f->variable},
              {"variable_on_wall", "factor on people and loads on the cap", f->variable_on_wall},
              {"surcharge_on_wall", "factor on the load standing on the wall", f->surcharge_on_wall}};
  lw_figures b = lw_figures_below(figures, "factors");
  if (!f->factored) return;
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
    lw_figures_put(&b, &(lw_figure_word){rows[i].tail, rows[i].label, "", source}, rows[i].value);
}

static void of_check(const lw_figures *figures, const lw_check *check) {
  char at[24], part[48], demand[32], resistance[32];
  lw_check_print_at(check, at, sizeof at);
  lw_print(part, sizeof part, "%s.%s", at, lw_check_slug(check->kind));
  lw_print(demand, sizeof demand, "demand_%s", lw_figures_key_unit(check->unit));
  lw_print(resistance, sizeof resistance, "resistance_%s", lw_figures_key_unit(check->unit));
  lw_figures b = lw_figures_below(figures, part);
  const char *source = check->by ? check->by->from.source : "";
  const struct {
    lw_figure_word word;
    lw_number value;
  } all[] = {{{demand, "demand", check->unit, ""}, check->demand},
             {{resistance, "resistance", check->unit, ""}, check->resistance},
             {{"has", "resistance over demand", "", ""}, check->has},
             {{"needs", "what is asked", "", source}, check->needs},
             {{"ratio", "has over needs", "", ""}, check->ratio}};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++) {
    lw_figures_put_number(&b, &all[i].word, all[i].value, check->reason);
  }
}

static void of_situation(const lw_figures *figures, const lw_situation *s) {
  lw_figures base = lw_figures_below(figures, "base"), pad = lw_figures_below(figures, "pad");
  lw_figures_put_number(figures, &(lw_figure_word){"water_depth_m", "water behind, below the top", "m", ""},
                        (lw_number){s->water_depth_m, isfinite(s->water_depth_m)}, LW_REASON_NO_DEMAND);
  if (s->name == LW_SITUATION_EARTHQUAKE) {
    lw_figures_put(figures, &(lw_figure_word){"seismic_horizontal", "share of weight that pushes", "", ""},
                   s->load_case.ground.seismic.horizontal);
    lw_figures_put(figures, &(lw_figure_word){"seismic_vertical", "share of weight taken off", "", ""},
                   s->load_case.ground.seismic.vertical);
  }
  of_factors(figures, s);
  if (figures->result->wall.section.known && !figures->result->wall.site.backfill_refused)
    compared(figures, s);
  lw_figures_of_free_body(&base, &s->base);
  lw_figures_of_profile(&base, &s->base);
  lw_figures_of_forces(&base, &s->base);
  lw_figures_of_bearing(&base, &s->base_bears);
  lw_figures_of_free_body(&pad, &s->pad);
  lw_figures_of_profile(&pad, &s->pad);
  lw_figures_of_forces(&pad, &s->pad);
  lw_figures_of_bearing(&pad, &s->pad_bears);
  of_joints(figures, s);
  lw_figures slip = lw_figures_below(figures, "slip");
  lw_figures_of_slip(&slip, s);
  lw_figures_of_slices(&slip, s);
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    of_check(figures, &check);
  }
}

void lw_figures_of_situations(const lw_figures *figures) {
  const lw_situations *all = &figures->result->situations;
  for (int i = 0; i < all->count; i++) {
    lw_figures below = lw_figures_below(figures, lw_situation_slug(all->situation[i].name));
    of_situation(&below, &all->situation[i]);
  }
}
