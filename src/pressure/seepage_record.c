/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "seepage_record.h"

#include <math.h>

#include "base/angles.h"
#include "base/bound.h"
#include "base/working.h"
#include "coulomb.h"
#include "seepage.h"

/* Each push as it was found; rho is the plane that pushes most. */

enum { WRITTEN_TERMS = 6 };

/* The alternating sum as it is added up, as far as it is printed. */
static void write_alternating(double angle_rad, double sum, const lw_working *working) {
  double degrees = angle_rad * LW_DEG_PER_RAD;
  char text[400] = "";
  size_t used = 0;
  for (int n = 0; n < WRITTEN_TERMS; n++) {
    int odd = 2 * n + 1;
    used += (size_t)lw_print(text + used, sizeof text - used, "%sexp(-%d pi cot %.5f/2)/%d^3",
                             n == 0       ? ""
                             : n % 2 == 0 ? " + "
                                          : " - ",
                             odd, degrees, odd);
  }
  const lw_step step = {"Sk", "sum over odd k, in turn + and -, of exp(-k pi cot rho/2)/k^3", NULL, sum, "",
                        ""};
  lw_working_step(working, &step, "%s", text);
}

void lw_seepage_write_along(const lw_plane *plane, double angle_rad, double thrust_kn_per_m,
                            const lw_working *working) {
  const lw_layer *soil = &plane->layer[0];
  double sum = lw_seepage_alternating(cos(angle_rad) / sin(angle_rad)),
         gw = plane->water_unit_weight_kn_per_m3;
  double weight = lw_seepage_weight(plane, soil->saturated_unit_weight_kn_per_m3) / tan(angle_rad);
  double pores = gw * lw_seepage_pore_area(plane->height_m, angle_rad);
  const lw_bound bound[] = {{"gsat", soil->saturated_unit_weight_kn_per_m3, "kN/m3"},
                            {"gw", gw, "kN/m3"},
                            {"hp", plane->height_m, "m"},
                            {"q", plane->surcharge_kpa, "kPa"},
                            {"phi", soil->friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"d", plane->wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"rho", angle_rad * LW_DEG_PER_RAD, "deg"},
                            {"Sk", sum, ""},
                            {"Us", pores, "kN/m"},
                            {"Ww", weight, "kN/m"}};
  const lw_step steps[] = {{"Us",
                            "gw hp^2 [1/(2 sin rho) - 14 x 1.20205690/pi^3 cos rho - 16/pi^3 Sk sin rho]",
                            NULL, pores, "kN/m", "[GRAY1958 vertical drain]"},
                           {"Ww", "(gsat hp^2/2 + q hp) cot rho", NULL, weight, "kN/m", ""},
                           {"Ps", "(Ww sin(rho - phi) + Us sin phi)/cos(rho - phi - d)", NULL,
                            thrust_kn_per_m, "kN/m", "[BARROS2006 pore pressure]"}};
  write_alternating(angle_rad, sum, working);
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}

void lw_seepage_write(const lw_plane *plane, const lw_seepage *s, double k, const lw_working *working) {
  const lw_layer *soil = &plane->layer[0];
  double moist = lw_seepage_weight(plane, soil->unit_weight_kn_per_m3);
  double thrust = s->seeping_kn_per_m / cos(plane->wall_friction_rad);
  const lw_bound bound[] = {{"gamma", soil->unit_weight_kn_per_m3, "kN/m3"},
                            {"gsat", soil->saturated_unit_weight_kn_per_m3, "kN/m3"},
                            {"gw", plane->water_unit_weight_kn_per_m3, "kN/m3"},
                            {"hp", plane->height_m, "m"},
                            {"q", plane->surcharge_kpa, "kPa"},
                            {"d", plane->wall_friction_rad * LW_DEG_PER_RAD, "deg"},
                            {"Ps", thrust, "kN/m"},
                            {"Ka", k, ""},
                            {"Qm", moist, "kN/m"},
                            {"Hs", s->seeping_kn_per_m, "kN/m"},
                            {"Hd", s->dry_kn_per_m, "kN/m"},
                            {"Hb", s->blocked_kn_per_m, "kN/m"}};
  const lw_step level = {"Hs", "Ps cos d", NULL, s->seeping_kn_per_m, "kN/m", ""};
  const lw_step steps[] = {
      {"Qm", "gamma hp^2/2 + q hp", NULL, moist, "kN/m", ""},
      {"Hd", "Ka Qm cos d", NULL, s->dry_kn_per_m, "kN/m", ""},
      {"Hb", "Ka ((gsat - gw) hp^2/2 + q hp) cos d + gw hp^2/2", NULL, s->blocked_kn_per_m, "kN/m", ""},
      {"ks", "Hs/Qm", NULL, s->seeping_k, "", ""},
      {"kd", "Hd/Qm", NULL, s->dry_k, "", ""},
      {"kb", "Hb/Qm", NULL, s->blocked_k, "", ""}};
  const lw_wall_angles angles = {.friction_rad = soil->friction_rad,
                                 .wall_friction_rad = plane->wall_friction_rad};
  lw_seepage_write_along(plane, s->plane_angle_rad, thrust, working);
  lw_working_bound(working, &level, bound, sizeof bound / sizeof bound[0]);
  lw_coulomb_write(LW_ACTIVE, &angles, k, working);
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}
