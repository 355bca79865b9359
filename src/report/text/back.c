/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "back.h"

#include <math.h>

#include "base/canned.h"
#include "report/back_rows.h"
#include "report/fluid.h"

/* What holds the soil back along the wall: the friction of the back, why it is what it is, and its downward
 * part, which rests on the wall's rear. */

static bool rubs(const lw_method *method) {
  return method->pressure == LW_PRESSURE_COULOMB || method->pressure == LW_PRESSURE_WEDGE;
}

static void say_why(const lw_result *result, lw_text *line) {
  const lw_interface_row *row = lw_back_row(result), *membrane = lw_back_membrane(result);
  char note[LW_NOTE_MAX];
  double degrees = result->wall.wall_friction_rad * LW_DEG_PER_RAD;
  lw_text_addf(line, "friction on the soil %.1f deg", degrees);
  if (!row) lw_text_add(line, ", as given.");
  if (row)
    lw_text_addf(line, ", %.3g of its angle. %s", result->given.wall.friction.si,
                 lw_canned_told(result->units, row->note, note, sizeof note));
  if (membrane) lw_text_addf(line, " Lined: %.2f of that.", membrane->share_of_friction_angle);
}

static void say_downward(const lw_result *result, lw_text *line) {
  const lw_free_body *base = &result->situations.situation[0].base;
  double down = base->thrust.vertical_kn_per_m;
  if (base->status != LW_OK || fabs(down) < 0.005) return;
  lw_text_addf(line, " As built %s of the push %s.",
               lw_amount_of(result->units, LW_KIND_LINE_LOAD, fabs(down), 2).text,
               down > 0.0 ? "hangs on the wall's rear: it holds in the moment and presses on the base"
                          : "lifts the wall at its rear, for the back leans into the soil");
}

void lw_text_back(const lw_page *page, const lw_result *result) {
  lw_text line = {0};
  if (!rubs(&result->wall.method) || !result->wall.section.known) return;
  say_why(result, &line);
  say_downward(result, &line);
  lw_page_say_text(page, "  Back:     ", &line);
}

static void say_beside(const lw_page *page, const lw_compared *c) {
  char loads[64] = "", wedge[48] = "";
  if (c->loads_kn_per_m > 0.0)
    lw_print(loads, sizeof loads, " and %s of loads at a distance",
             lw_amount_again(page->units, LW_KIND_LINE_LOAD, c->loads_kn_per_m, 2).text);
  if (c->wedge_known)
    lw_print(wedge, sizeof wedge, ", trial wedges %s",
             lw_amount_again(page->units, LW_KIND_LINE_LOAD, c->wedge_kn_per_m, 2).text);
  lw_page_sayf(page, "  Beside:   ", "%s, as built: %s%s%s. It does not decide.", c->title,
               lw_amount_of(page->units, LW_KIND_LINE_LOAD, c->formula_kn_per_m, 2).text, loads, wedge);
}

void lw_text_beside(const lw_page *page, const lw_result *result) {
  const lw_situations *all = &result->situations;
  static const lw_pressure_method methods[LW_COMPARED] = {LW_PRESSURE_RANKINE, LW_PRESSURE_COULOMB};
  if (!result->wall.section.known || all->count == 0 || result->wall.site.backfill_refused) return;
  for (int k = 0; k < LW_COMPARED; k++) {
    const lw_compared *c = &all->situation[0].compared[k];
    if (c->known && methods[k] != result->wall.method.pressure) say_beside(page, c);
  }
}

void lw_text_fluid(const lw_page *page, const lw_result *result) {
  lw_fluid f = lw_fluid_of(result);
  lw_text line = {0};
  if (!f.known || !f.row) return;
  lw_text_addf(&line, "as built the soil pushes as a fluid of %s; a code has %s for it %s. ",
               lw_amount_of(page->units, LW_KIND_UNIT_WEIGHT, f.weight_kn_per_m3, 2).text,
               lw_amount_again(page->units, LW_KIND_UNIT_WEIGHT, f.row->code_fluid_kn_per_m3, 2).text,
               f.row->fluid_from.source);
  if (f.share < 1.0)
    lw_text_addf(&line, "Ours is less, %.2f of it: the 1.5 that codes ask for goes with their own figure. ",
                 f.share);
  lw_text_add(&line, "It decides nothing.");
  lw_page_say_text(page, "  Fluid:    ", &line);
}
