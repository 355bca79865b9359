/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"

#include <math.h>

/* The working of the water that stands or seeps behind the wall. */

static void step(const lw_page *page, const char *symbol, const char *formula, const char *numbers,
                 double value, const char *unit) {
  char prefix[24];
  lw_print(prefix, sizeof prefix, "  %-4s = ", symbol);
  lw_page_say(page, prefix, formula);
  lw_page_sayf(page, "       : ", "%s", numbers);
  lw_page_sayf(page, "       = ", "%.4f%s%s", value, unit[0] ? " " : "", unit);
}

static void wedge(const lw_page *page, const lw_plane *plane, const lw_seepage *s) {
  const lw_layer *soil = &plane->layer[0];
  double h = plane->height_m, q = plane->surcharge_kpa, rho = s->plane_angle_rad;
  double saturated = soil->saturated_unit_weight_kn_per_m3, phi = soil->friction_rad;
  double weight = (0.5 * saturated * h * h + q * h) / tan(rho), delta = plane->wall_friction_rad;
  double thrust = s->seeping_kn_per_m / cos(delta);
  char numbers[160];
  lw_print(numbers, sizeof numbers, "gw = %.3f kN/m3, H = %.3f m, rho = %.2f deg, the plane that pushes most",
           plane->water_unit_weight_kn_per_m3, h, rho * LW_DEG_PER_RAD);
  step(page, "U", "gw x integral of (h - y) along the plane", numbers, s->pore_force_kn_per_m, "kN/m");
  lw_print(numbers, sizeof numbers, "(%.2f x %.3f^2/2 + %.2f x %.3f) cot %.2f", saturated, h, q, h,
           rho * LW_DEG_PER_RAD);
  step(page, "W", "(gsat H^2/2 + q H) cot rho", numbers, weight, "kN/m");
  lw_print(numbers, sizeof numbers, "(%.4f sin(%.2f - %.2f) + %.4f sin %.2f)/cos(%.2f - %.2f - %.2f)", weight,
           rho * LW_DEG_PER_RAD, phi * LW_DEG_PER_RAD, s->pore_force_kn_per_m, phi * LW_DEG_PER_RAD,
           rho * LW_DEG_PER_RAD, phi * LW_DEG_PER_RAD, delta * LW_DEG_PER_RAD);
  step(page, "P", "(W sin(rho - phi) + U sin phi)/cos(rho - phi - d)", numbers, thrust, "kN/m");
}

static void seepage(const lw_page *page, const lw_result *result) {
  const lw_rain_seepage *of = &result->seepage;
  const lw_wall *wall = &result->wall;
  lw_back_plane back;
  lw_ground ground;
  if (!of->looked_at) return;
  lw_page_blank(page);
  lw_page_say(page, " ", "Steady rain that seeps to a drain which works");
  if (of->status != LW_OK) {
    lw_page_sayf(page, "  ", "Not worked out: %s.", lw_reason_sentence(of->reason));
    return;
  }
  lw_ground_own(wall, &ground);
  lw_back_plane_build(&wall->site, &ground, &wall->method, &(lw_stack){&wall->section, 0.0}, &back);
  lw_page_say(page, "  h    = ",
              "H - sum of An exp(-ln x) cos(ln y), ln = (2n + 1) pi/(2 H), An = 8 H/((2n + 1)^2 pi^2), the "
              "head at x behind the drain and y above its foot [GRAY1958 vertical drain]");
  wedge(page, &back.plane, &of->push);
  lw_page_sayf(page, "  ",
               "Level: %.4f kN/m seeping, %.4f dry, %.4f with water up to the ground; over g H^2/2 + q H "
               "that is %.4f, %.4f and %.4f. It decides nothing.",
               of->push.seeping_kn_per_m, of->push.dry_kn_per_m, of->push.blocked_kn_per_m,
               of->push.seeping_k, of->push.dry_k, of->push.blocked_k);
}

static const char *short_word(lw_water_state state) {
  switch (state) {
  case LW_WATER_STANDS_FULL: return "stands, full";
  case LW_WATER_FALLS_AT: return "stands until there";
  case LW_WATER_FALLS_DRY: return "falls short without it";
  case LW_WATER_NOT_SHOWN: return "cannot be shown";
  }
  return "";
}

static void limit_line(const lw_page *page, const lw_water_limit *limit) {
  char words[48], depth[24] = "-", ratio[24] = "-";
  const lw_check check = {.kind = limit->kind, .at = limit->at, .joint = limit->joint};
  lw_check_words(&check, words, sizeof words);
  if (limit->depth_m.known) lw_print(depth, sizeof depth, "%.4f", limit->depth_m.value);
  if (limit->ratio.known) lw_print(ratio, sizeof ratio, "%.4f", limit->ratio.value);
  lw_page_linef(page, LW_TONE_PLAIN, "  %-26s%10s%9s  %s%s", words, depth, ratio, short_word(limit->state),
                limit->jumps ? ", at once" : "");
}

static void limits(const lw_page *page, const lw_result *result) {
  const lw_water_limits *all = &result->water_limits;
  if (all->count == 0) return;
  lw_page_blank(page);
  lw_page_say(page, " ",
              "How high the water may stand: the level at which ratio = has / needs first falls to 1, by "
              "root search, asked as with the outlet blocked");
  lw_page_linef(page, LW_TONE_PLAIN, "  %-26s%10s%9s", "", "m below top", "ratio");
  for (int i = 0; i < all->count; i++) limit_line(page, &all->limit[i]);
}

void lw_working_water(const lw_page *page, const lw_result *result) {
  if (!result->seepage.looked_at && result->water_limits.count == 0) return;
  lw_page_heading(page, "Water in the bed");
  limits(page, result);
  seepage(page, result);
}
