/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "push_record.h"

#include "base/bound.h"

void lw_push_record_rain(const lw_push *push, double seeping_kn_per_m, double moist_kn_per_m,
                         const lw_working *working) {
  double more = push->by_rain.thrust_kn_per_m, all = push->thrust.total_kn_per_m;
  double moist_height = (all * push->thrust.height_of_action_m - more * push->by_rain.height_m) /
                        (moist_kn_per_m > 0.0 ? moist_kn_per_m : 1.0);
  const lw_bound bound[] = {{"Ps", seeping_kn_per_m, "kN/m"},
                            {"P", moist_kn_per_m, "kN/m"},
                            {"dP", more, "kN/m"},
                            {"Pt", all, "kN/m"},
                            {"h", moist_height, "m"},
                            {"hp", push->back.plane.height_m, "m"}};
  const lw_step steps[] = {{"dP", "max(Ps - P, 0)", NULL, more, "kN/m", ""},
                           {"Pt", "P + dP", NULL, all, "kN/m", ""},
                           {"ht", "(P h + dP hp/3)/Pt", NULL, push->thrust.height_of_action_m, "m", ""}};
  if (working == NULL) return;
  for (size_t i = 0; i < sizeof steps / sizeof steps[0]; i++)
    lw_working_bound(working, &steps[i], bound, sizeof bound / sizeof bound[0]);
}
