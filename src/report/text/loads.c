/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "loads.h"

#include "parts.h"

/* Lines of loads behind the wall, where the sheet gives any. */

bool lw_free_body_has_loads(const lw_free_body *body) {
  return body->status == LW_OK && body->back.plane.load_count > 0 &&
         body->elastic_by != LW_LOAD_PRESSURE_WEDGE;
}

const char *lw_load_theory_word(lw_load_pressure by) {
  static const char *const words[] = {[LW_LOAD_PRESSURE_OWN] = "",
                                      [LW_LOAD_PRESSURE_HALF_SPACE] = "half space",
                                      [LW_LOAD_PRESSURE_DOUBLED] = "doubled",
                                      [LW_LOAD_PRESSURE_CURVES] = "curves",
                                      [LW_LOAD_PRESSURE_WEDGE] = "wedge"};
  return words[by];
}

const char *lw_load_kind_word(lw_load_kind kind) {
  static const char *const words[] = {"none", "uniform", "strip", "line", "point", "cap"};
  return words[kind];
}

const char *lw_loads_source(const lw_result *result) {
  const lw_free_body *base = &result->situations.situation[0].base;
  if (result->situations.count == 0 || !lw_free_body_has_loads(base)) return "";
  return base->elastic_by == LW_LOAD_PRESSURE_CURVES ? "[TERZAGHI1954 curves]"
                                                     : "[BOUSSINESQ1885 line, strip and point]";
}

void lw_text_influence(const lw_page *page, const lw_result *result) {
  const lw_influence *all = &result->influence;
  double angle = all->angle_rad * LW_DEG_PER_RAD;
  for (int i = 0; i < all->count; i++) {
    const lw_influence_load *load = &all->load[i];
    if (load->kind == LW_LOAD_UNIFORM || !load->heavy) continue;
    char too_near[64] = "";
    if (load->below_base) {
      lw_page_sayf(page, "  ",
                   "Load %d stands below the rear of the base: it does not push this wall, and counts only "
                   "where ground slips below it.",
                   load->number);
      continue;
    }
    if (load->inside)
      lw_print(too_near, sizeof too_near, ": %s too near",
               lw_metres_apart(page->units, load->move_m, 0.0, 2).one.text);
    const lw_apart apart = lw_metres_apart(page->units, load->distance_m, load->line_m, 2);
    lw_page_sayf(page, "  ",
                 "Load %d begins %s behind the top, %s the line of influence, which rises at %.0f deg from "
                 "the rear of the base and passes its level at %s%s.",
                 load->number, apart.one.text, load->inside ? "inside" : "outside", angle, apart.other.text,
                 too_near);
  }
}
