/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "back.h"

#include <math.h>

#include "report/back_rows.h"

/* What holds the soil back along the wall: the friction of the back, why it is what it is, and its downward
 * part, which rests on the wall's rear. */

static bool rubs(const lw_method *method) {
  return method->pressure == LW_PRESSURE_COULOMB || method->pressure == LW_PRESSURE_WEDGE;
}

static void say_why(const lw_result *result, lw_text *line) {
  const lw_interface_row *row = lw_back_row(result), *membrane = lw_back_membrane(result);
  double degrees = result->wall.wall_friction_rad * LW_DEG_PER_RAD;
  lw_text_addf(line, "friction on the soil %.1f deg", degrees);
  if (!row) lw_text_add(line, ", as given.");
  if (row) lw_text_addf(line, ", %.3g of its angle. %s", result->given.wall.friction.si, row->note);
  if (membrane) lw_text_addf(line, " Lined: %.2f of that.", membrane->share_of_friction_angle);
}

static void say_downward(const lw_result *result, lw_text *line) {
  const lw_free_body *base = &result->situations.situation[0].base;
  double down = base->thrust.vertical_kn_per_m;
  if (base->status != LW_OK || fabs(down) < 0.005) return;
  lw_text_addf(line, " As built %.2f kN/m of the push %s.", fabs(down),
               down > 0.0 ? "hangs on the wall's rear: it holds in the moment and presses on the base"
                          : "lifts the wall at its rear, for the back leans into the soil");
}

void lw_text_back(const lw_page *page, const lw_result *result) {
  lw_text line = {0};
  if (!rubs(&result->wall.method) || !result->wall.section.known) return;
  say_why(result, &line);
  say_downward(result, &line);
  if (line.data) lw_page_say(page, "  Back:     ", line.data);
  page->out->failed = page->out->failed || line.failed;
  lw_text_free(&line);
}
