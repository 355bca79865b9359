/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/lateral.h>

#include <math.h>

#include "base/bound.h"
#include "base/integral.h"
#include "base/tell.h"

/* Soil between two faces. */

/* (1 - exp(-r z))/r, which tends to z: r is 0 between smooth faces. */
static double hung(double rate_per_m, double depth_m) {
  double x = rate_per_m * depth_m;
  return x < 1e-12 ? depth_m : -expm1(-x) / rate_per_m;
}

double lw_slot_kpa(const lw_slot *slot, double coefficient, double depth_m) {
  double rate = 2.0 * coefficient * tan(slot->wall_friction_rad) / slot->width_m;
  double upright =
      slot->unit_weight_kn_per_m3 * hung(rate, depth_m) + slot->surcharge_kpa * exp(-rate * depth_m);
  return coefficient * upright;
}

typedef struct integrand {
  const lw_slot *slot;
  double coefficient, height_m;
} integrand;

static double pressure_at(double depth_m, const void *context) {
  const integrand *i = context;
  return lw_slot_kpa(i->slot, i->coefficient, depth_m);
}

static double moment_at(double depth_m, const void *context) {
  const integrand *i = context;
  return lw_slot_kpa(i->slot, i->coefficient, depth_m) * (i->height_m - depth_m);
}

/* Cut where the pressure has settled to within exp(-4) of what it tends to, again and again: in each piece
 * the rule is exact to the last digits. Below forty widths over the friction it no longer changes. */
static double integral_of(lw_function f, const integrand *of) {
  double rate = 2.0 * of->coefficient * tan(of->slot->wall_friction_rad) / of->slot->width_m;
  double piece = rate > 0.0 ? 4.0 / rate : of->height_m, sum = 0.0, from = 0.0;
  for (int i = 0; i < 10 && from + piece < of->height_m; i++, from += piece)
    sum += lw_gauss_integral(f, of, from, from + piece);
  return sum + lw_gauss_integral(f, of, from, of->height_m);
}

/* What is integrated has a closed form, which the working has; with load it has none there. */
static void record(const integrand *of, const lw_lateral *push, const lw_working *working) {
  const lw_slot *slot = of->slot;
  static const char JANSSEN[] = "[JANSSEN1895 slices]";
  double k = of->coefficient, rate = 2.0 * k * tan(slot->wall_friction_rad) / slot->width_m;
  bool smooth = rate * of->height_m < 1e-3;
  double told = lw_tell(working, "1/m", rate);
  const lw_bound bound[] = {{"K", k, ""},
                            {"gamma", slot->unit_weight_kn_per_m3, "kN/m3"},
                            {"Bn", slot->width_m, "m"},
                            {"hn", of->height_m, "m"},
                            {"d", slot->wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"rn", told, ""},
                            {"Pn", push->thrust_kn_per_m, "kN/m"}};
  const lw_step steps[] = {{"rn", "2 K tan d/Bn", NULL, told, "", ""},
                           {"sn", smooth ? "K gamma hn" : "K gamma [1 - exp(-rn hn)]/rn", NULL,
                            lw_slot_kpa(slot, k, of->height_m), "kPa", JANSSEN},
                           {"Pn", smooth ? "K gamma hn^2/2" : "K gamma [hn - (1 - exp(-rn hn))/rn]/rn", NULL,
                            push->thrust_kn_per_m, "kN/m", JANSSEN},
                           {"zn",
                            smooth ? "hn/3" : "K gamma [hn^2/2 - hn/rn + (1 - exp(-rn hn))/rn^2]/(rn Pn)",
                            NULL, push->height_m, "m", ""}};
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound_finely(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

lw_status lw_slot_thrust(const lw_slot *slot, double coefficient, double height_m, lw_lateral *lateral,
                         lw_error *error, const lw_working *working) {
  integrand of = {slot, coefficient, height_m};
  bool well = slot->width_m > 0.0 && slot->unit_weight_kn_per_m3 > 0.0 && slot->wall_friction_rad >= 0.0 &&
              slot->wall_friction_rad < acos(0.0) && coefficient > 0.0 && height_m > 0.0;
  if (!well)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_OUT_OF_RANGE,
                        "a slot has a width, a height, soil that weighs something and a coefficient");
  double push = integral_of(pressure_at, &of), moment = integral_of(moment_at, &of);
  if (!isfinite(push) || !isfinite(moment) || !(push > 0.0))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_WEDGE,
                        "the pressure between the faces cannot be summed");
  *lateral = (lw_lateral){.thrust_kn_per_m = push, .height_m = moment / push};
  if (working != NULL) record(&of, lateral, working);
  return LW_OK;
}

static lw_status out_of_range(lw_error *error, const char *sentence) {
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_ANGLE_OUT_OF_RANGE, "%s", sentence);
}

lw_status lw_frydman_keissar_coefficient(double friction_rad, double wall_friction_rad, double *k,
                                         lw_error *error, const lw_working *working) {
  bool well = friction_rad > 0.0 && friction_rad < acos(0.0) && wall_friction_rad >= 0.0 &&
              wall_friction_rad <= friction_rad + 1e-12;
  if (!well) return out_of_range(error, "the friction of the face must be from 0 to that of the soil");
  double s = sin(friction_rad) * sin(friction_rad), t = tan(wall_friction_rad);
  double m = 4.0 * t * t - s + 1.0;
  *k = (s + 1.0 - sqrt(fmax((s + 1.0) * (s + 1.0) - (1.0 - s) * m, 0.0))) / m;
  const lw_bound bound[] = {{"phi", friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"d", wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"s2", s, ""},
                            {"mk", m, ""}};
  static const char FRYDMAN[] = "[FRYDMAN1987 stress at a rough face]";
  const lw_step steps[] = {
      {"s2", "sin^2 phi", NULL, s, "", ""},
      {"mk", "4 tan^2 d - s2 + 1", NULL, m, "", ""},
      {"Kfk", "(s2 + 1 - sqrt(max((s2 + 1)^2 - (1 - s2) mk, 0)))/mk", NULL, *k, "", FRYDMAN}};
  for (int i = 0; i < 3; i++) lw_working_bound(working, &steps[i], bound, 4);
  return LW_OK;
}

lw_status lw_handy_coefficient(double friction_rad, double *k, lw_error *error, const lw_working *working) {
  if (!(friction_rad > 0.0) || friction_rad >= acos(0.0))
    return out_of_range(error, "the friction angle must be above 0 and below 90 deg");
  double ka = (1.0 - sin(friction_rad)) / (1.0 + sin(friction_rad));
  double t = 0.5 * (acos(0.0) + friction_rad), c = cos(t), s = sin(t);
  *k = 1.06 * (c * c + ka * s * s);
  const lw_bound bound[] = {{"phi", friction_rad * LW_DEG_PER_RAD, "deg"}, {"Ka", ka, ""}};
  const lw_step active = {"Ka", "(1 - sin phi)/(1 + sin phi)", NULL, ka, "", "[RANKINE1857 level ground]"};
  const lw_step arch = {"Kw", "1.06 (cos^2(45 + phi/2) + Ka sin^2(45 + phi/2))",
                        NULL, *k,
                        "",   "[HANDY1985 the arch in soil arching]"};
  lw_working_bound(working, &active, bound, 2);
  lw_working_bound(working, &arch, bound, 2);
  return LW_OK;
}
