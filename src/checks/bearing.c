/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing.h"

#include <math.h>

#include "base/bound.h"
#include "base/extremes.h"
#include "base/tell.h"
#include "base/working.h"
#include "soil/site.h"
#include "standards/factors.h"

/* Bearing of the ground under the base or the pad: an allowable value, or a theory of the strip footing. */

/* Under blocks that taper the footing is as wide as their area a metre; its effective width is theirs. */
static double off_middle(const lw_contact *contact) {
  bool whole = contact->area_m2 >= contact->width_m;
  return whole ? fabs(contact->eccentricity_m) : 0.5 * (contact->area_m2 - contact->effective_width_m);
}

/* Weight of the ground beside a footing and of the ground that its failure moves. */
typedef struct weights {
  double beside_kpa, below_kn_per_m3;
} weights;

/* Beside and below the footing, by how high the water stands: over its level, or dw below it. */
static void write_weights(const lw_site *site, const weights *found, const double of[4],
                          const lw_working *working) {
  double depth = of[0], wet = of[1], over = of[2], moist = site->footing.light_unit_weight_kn_per_m3;
  double saturated = site->footing.saturated_unit_weight_kn_per_m3;
  double buoyant = lw_smaller(saturated - site->water_unit_weight_kn_per_m3, moist);
  const lw_bound bound[] = {{"gm", moist, "kN/m3"},
                            {"gsat", saturated, "kN/m3"},
                            {"gw", site->water_unit_weight_kn_per_m3, "kN/m3"},
                            {"gb", buoyant, "kN/m3"},
                            {"Df", depth, "m"},
                            {"hb", wet, "m"},
                            {"dw", -over, "m"},
                            {"B", of[3], "m"}};
  const char *below = over >= 0.0 ? "gb" : -over >= of[3] ? "gm" : "gb + (gm - gb) dw/B";
  const lw_step steps[] = {
      {"gb", "min(gsat - gw, gm)", NULL, buoyant, "kN/m3", ""},
      {"q'", wet > 0.0 ? "gm (Df - hb) + gb hb" : "gm Df", NULL, found->beside_kpa, "kPa", ""},
      {"gamma", below, NULL, found->below_kn_per_m3, "kN/m3", "[DAS-PFE modification for the water table]"}};
  bool water = wet > 0.0 || -over < of[3];
  for (int i = water ? 0 : 1; i < 3; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

/* Water that stands behind the wall will stand under it too: all of it is buoyant. Else the water in front
 * counts, whole from the base up, and less and less down to a base width below it. */
static weights weights_of(const lw_site *site, double depth_m, double over_m, double width_m,
                          const lw_working *working) {
  const lw_soil *soil = &site->footing;
  double moist = soil->light_unit_weight_kn_per_m3;
  double buoyant =
      lw_smaller(soil->saturated_unit_weight_kn_per_m3 - site->water_unit_weight_kn_per_m3, moist);
  double wet = lw_smaller(lw_larger(over_m, 0.0), depth_m);
  double dry_below = over_m >= 0.0 ? 0.0 : -over_m >= width_m ? 1.0 : -over_m / width_m;
  weights found = {moist * (depth_m - wet) + buoyant * wet, buoyant + dry_below * (moist - buoyant)};
  const double of[4] = {depth_m, wet, over_m, width_m};
  if (working != NULL) write_weights(site, &found, of, working);
  return found;
}

lw_strip lw_bearing_strip(const lw_wall *wall, const lw_ground *ground, const lw_free_body *body, lw_at at,
                          const lw_working *working) {
  const lw_strength *soil = &ground->design.footing;
  double pad = at == LW_AT_PAD ? wall->site.pad.thickness_m : 0.0;
  double depth = ground->front.bearing_embedment_m + pad;
  double besides =
      depth >= wall->site.paired.depth_m ? ground->design.paired_kpa : ground->design.shallow_kpa;
  bool wet_behind = isfinite(ground->water_depth_m);
  double over = wet_behind ? INFINITY : wall->section.height_m - wall->site.front_water_depth_m + pad;
  weights weight = weights_of(&wall->site, depth, over, body->contact.area_m2, working);
  return (lw_strip){.width_m = body->contact.area_m2,
                    .eccentricity_m = off_middle(&body->contact),
                    .depth_m = depth,
                    .overburden_kpa = weight.beside_kpa,
                    .friction_rad = soil->friction_rad,
                    .cohesion_kpa = soil->cohesion_kpa + besides,
                    .unit_weight_kn_per_m3 = weight.below_kn_per_m3,
                    .vertical_kn_per_m = body->contact.vertical_kn_per_m,
                    .horizontal_kn_per_m = fmax(body->contact.horizontal_kn_per_m, 0.0),
                    .n_gamma = wall->method.n_gamma,
                    .n_gamma_value = wall->method.n_gamma_value,
                    .depth_factors = wall->method.depth_factors,
                    .inclination_factors = wall->method.inclination_factors};
}

void lw_bearing_show(const lw_wall *wall, const lw_ground *ground, const lw_free_body *body, lw_at at,
                     lw_borne *borne) {
  const lw_bearing_routine *routine = lw_bearing_routine_of(wall->method.bearing);
  borne->known = false;
  if (!routine || body->status != LW_OK || !body->contact.inside) return;
  borne->strip = lw_bearing_strip(wall, ground, body, at, NULL);
  borne->known = routine->ultimate(&borne->strip, &borne->bearing, NULL, NULL) == LW_OK;
}

/* A number that is given belongs to the friction that is given: a set that changes that leaves it unsafe. */
static bool outlives_its_friction(const lw_check_context *context) {
  double times = lw_factor_set_times(context->factor_set, context->load_case->kind, LW_FACTOR_FRICTION,
                                     LW_FACTOR_FRICTION_TIMES);
  return context->wall->method.n_gamma == LW_N_GAMMA_GIVEN && fabs(times - 1.0) > 1e-9;
}

/* The pressures themselves are told by the author's theory. */
static void tell_theory(const lw_check *check, bool net, double times, const lw_working *working) {
  const char *of = net ? "net / pressure less what stood there" : "ultimate / greatest pressure";
  lw_step step = {.symbol = "qR",
                  .formula = "what the set leaves of it",
                  .value = check->resistance.value,
                  .unit = "kPa"};
  if (fabs(times - 1.0) > 1e-12)
    lw_working_line(working, &step, "%.5f x %.4f", times,
                    lw_tell(working, "kPa", check->resistance.value / times));
  lw_check_tell_has(check, of, working);
}

static void by_theory(const lw_check_context *context, const lw_free_body *body, lw_check *check,
                      const lw_working *working) {
  const lw_bearing_routine *routine = lw_bearing_routine_of(context->wall->method.bearing);
  lw_bearing bearing;
  lw_error error = {0};
  if (outlives_its_friction(context)) {
    lw_check_not_shown(check, LW_REASON_GIVEN_NUMBER);
    return;
  }
  lw_strip strip = lw_bearing_strip(context->wall, &context->load_case->ground, body, check->at, working);
  if (routine->ultimate(&strip, &bearing, &error, working) != LW_OK) {
    lw_check_not_shown(check, error.reason);
    return;
  }
  bool net = context->wall->method.bearing_on == LW_BEARING_NET;
  double times = lw_factor_set_times(context->factor_set, context->load_case->kind,
                                     LW_FACTOR_BEARING_RESISTANCE, LW_FACTOR_BEARING_RESISTANCE_TIMES);
  check->resistance = lw_known(times * (net ? bearing.net_kpa : bearing.ultimate_kpa));
  check->demand = lw_known(body->contact.greatest_kpa - (net ? strip.overburden_kpa : 0.0));
  if (check->demand.value <= 1e-9) {
    check->holds = LW_HOLDS;
    check->reason = LW_REASON_NO_DEMAND;
    return;
  }
  check->has = lw_known(check->resistance.value / check->demand.value);
  lw_check_weigh(check, context->factor_set->row[LW_FACTOR_BEARING_THEORY], context->load_case->kind);
  tell_theory(check, net, times, working);
}

/* The base on a pad bears on the pad's stone; everything else on the ground. */
static double allowable(const lw_site *site, lw_at at) {
  bool on_stone = at == LW_AT_BASE && site->pad.thickness_m > 0.0 && site->pad.allowable_kpa > 0.0;
  return on_stone ? site->pad.allowable_kpa : site->allowable_bearing_kpa;
}

static void by_value(const lw_check_context *context, const lw_free_body *body, lw_check *check,
                     const lw_working *working) {
  double value = allowable(&context->wall->site, check->at);
  check->demand = lw_known(body->contact.greatest_kpa);
  if (value <= 0.0) {
    lw_check_not_shown(check, LW_REASON_NO_BEARING_VALUE);
    return;
  }
  check->resistance = lw_known(value);
  check->has = lw_known(value / body->contact.greatest_kpa);
  lw_check_weigh(check, context->factor_set->row[LW_FACTOR_BEARING_PRESUMPTIVE], context->load_case->kind);
  lw_check_tell_has(check, "allowable / greatest pressure", working);
}

static bool falls_away(const lw_check_context *context) {
  double slope = context->load_case->ground.front.slope_rad;
  return slope > 0.0 && !lw_site_is_level(&context->wall->site, slope);
}

lw_check lw_check_bearing(const lw_check_context *context, const lw_free_body *body,
                          const lw_working *working) {
  lw_check check = lw_check_begin(context, body, LW_CHECK_BEARING, "kPa");
  bool theory = context->wall->method.bearing != LW_BEARING_PRESUMPTIVE;
  if (body->status != LW_OK) return check;
  if (!body->contact.inside) {
    check.has = lw_known(0.0);
    lw_check_weigh(
        &check, context->factor_set->row[theory ? LW_FACTOR_BEARING_THEORY : LW_FACTOR_BEARING_PRESUMPTIVE],
        context->load_case->kind);
    check.reason = LW_REASON_OUTSIDE_BASE;
  } else if (falls_away(context)) {
    /* A value made for level ground says nothing there. */
    lw_check_not_shown(&check, LW_REASON_FRONT_SLOPE);
  } else if (theory) {
    by_theory(context, body, &check, working);
  } else {
    by_value(context, body, &check, working);
  }
  return check;
}
