/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_parts.h"

#include <math.h>

#include <lowwall/pressure.h>

#include "base/tell.h"
#include "formula.h"

static bool shaken(const lw_plane *plane) {
  return plane->seismic.horizontal > 0.0 || fabs(plane->seismic.vertical) > 0.0;
}

void lw_pressure_seismic_json(const lw_plane *plane, const lw_thrust *thrust, json_t *out) {
  if (!shaken(plane)) return;
  lw_formula_set(out, "seismic_thrust_kn_per_m", thrust->seismic_kn_per_m, NULL);
  lw_formula_set(out, "seismic_height_m", thrust->seismic_height_m, NULL);
  lw_formula_set(out, "seismic_coefficient", thrust->seismic_coefficient,
                 thrust->seismic_coefficient > 0.0 ? NULL : "no-coefficient");
  lw_formula_set(out, "seismic_angle_deg", thrust->seismic_turn_rad * LW_DEG_PER_RAD, NULL);
}

void lw_pressure_seismic_text(const lw_plane *plane, const lw_thrust *thrust, lw_units units, lw_text *text) {
  if (!shaken(plane)) return;
  lw_text_addf(text, "  earthquake       %10.4f %s of the thrust, at %s above the foot\n",
               lw_tell_in(units, "kN/m", thrust->seismic_kn_per_m), lw_tell_unit(units, "kN/m").text,
               lw_tell_amount(units, "m", thrust->seismic_height_m, 4).text);
  if (thrust->seismic_coefficient > 0.0)
    lw_text_addf(text, "                   %10.4f coefficient with it, the weight turned by %.2f deg\n",
                 thrust->seismic_coefficient, thrust->seismic_turn_rad * LW_DEG_PER_RAD);
}

/* Curves are not computed in an earthquake: there the static value stands beside it. */
static lw_status along_spiral(const lw_plane *plane, lw_thrust *spiral, lw_error *error) {
  lw_plane still = *plane;
  still.seismic = (lw_seismic){0};
  return lw_log_spiral_thrust(LW_PASSIVE, &still, spiral, error, NULL);
}

void lw_pressure_spiral_json(const lw_plane *plane, const lw_thrust *thrust, json_t *out) {
  lw_thrust spiral = {0};
  lw_error error = {0};
  if (!thrust->passive_unsafe) return;
  const char *reason = along_spiral(plane, &spiral, &error) == LW_OK ? NULL : lw_reason_slug(error.reason);
  lw_formula_set(out, "log_spiral_coefficient", spiral.coefficient, reason);
  lw_formula_set(out, "log_spiral_thrust_kn_per_m", spiral.total_kn_per_m, reason);
}

void lw_pressure_spiral_text(const lw_plane *plane, const lw_thrust *thrust, lw_units units, lw_text *text) {
  lw_thrust spiral;
  if (!thrust->passive_unsafe) return;
  lw_text_add(text, "  UNSAFE: a plane wedge overrates passive pressure when wall friction exceeds a\n"
                    "  third of the friction angle. A curved surface gives less.\n");
  if (along_spiral(plane, &spiral, NULL) == LW_OK)
    lw_text_addf(text, "  along a spiral   %10.4f %s, coefficient %.4f%s\n",
                 lw_tell_in(units, "kN/m", spiral.total_kn_per_m), lw_tell_unit(units, "kN/m").text,
                 spiral.coefficient, shaken(plane) ? ", without the earthquake" : "");
}
