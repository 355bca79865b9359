/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/elastic.h>

/* The working of loads at a distance: a step a load, then their sum and its height. */

/* What each kind of load is reckoned by. */
static const char *formula_of(const lw_plane_load *load, lw_load_pressure by) {
  bool curves = by == LW_LOAD_PRESSURE_CURVES, twice = by != LW_LOAD_PRESSURE_HALF_SPACE;
  if (load->pressure_kpa > 0.0)
    return twice ? "integral of (2q/pi)(B - sin B cos 2A) over the plane"
                 : "integral of (q/pi)(B - sin B cos 2A) over the plane";
  if (curves)
    return load->point ? "integral of the curve for a point load, times its mean fall along one metre"
                       : "integral of the curve for a line load over the plane";
  if (load->point)
    return twice ? "integral of (3Q/pi) x^2 z/R^5 over the plane and one metre of wall"
                 : "integral of (3Q/(2 pi)) x^2 z/R^5 over the plane and one metre of wall";
  return twice ? "integral of (4Q/pi) x^2 z/(x^2 + z^2)^2 over the plane"
               : "integral of (2Q/pi) x^2 z/(x^2 + z^2)^2 over the plane";
}

static const char *source_of(const lw_plane_load *load, lw_load_pressure by) {
  if (by == LW_LOAD_PRESSURE_CURVES && load->pressure_kpa <= 0.0) return "[TERZAGHI1954 curves]";
  return "[BOUSSINESQ1885 line, strip and point]";
}

static void record_load(const lw_plane_load *load, lw_load_pressure by, double push_kn_per_m,
                        const lw_working *working) {
  lw_step step = {.symbol = "Pq",
                  .formula = formula_of(load, by),
                  .value = push_kn_per_m,
                  .unit = "kN/m",
                  .source = source_of(load, by)};
  if (load->pressure_kpa > 0.0)
    lw_working_step(working, &step, "q = %.2f kPa from %.3f to %.3f m behind the plane, %.3f m below ground",
                    load->pressure_kpa, load->near_m, load->far_m, load->below_m);
  else
    lw_working_step(working, &step, "Q = %.3f %s, %.3f m behind the plane, %.3f m below ground",
                    load->force_kn_per_m, load->point ? "kN" : "kN/m", load->near_m, load->below_m);
}

void lw_elastic_record(const lw_plane *plane, lw_load_pressure by, const lw_elastic *push,
                       const lw_working *working) {
  if (!working) return;
  lw_working_heading(working, "Loads at a distance");
  for (int i = 0; i < plane->load_count; i++)
    record_load(&plane->load[i], by, push->load[i].push_kn_per_m, working);
  lw_working_step(working,
                  &(lw_step){.symbol = "hq",
                             .formula = "moment of these pushes / their sum",
                             .value = push->height_m,
                             .unit = "m",
                             .source = ""},
                  "%.4f kN m/m / %.4f kN/m, above the foot of the plane",
                  push->push_kn_per_m * push->height_m, push->push_kn_per_m);
}
