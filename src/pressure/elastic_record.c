/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "elastic_record.h"

#include <math.h>

#include "base/bound.h"
#include "base/tell.h"
#include "base/working.h"
#include "elastic_reach.h"

/* The working of loads at a distance: a few steps a load, then their sum and its height. */

static double degrees(double rad) {
  return rad * LW_DEG_PER_RAD;
}

/* What each kind of load is reckoned by where there is no closed form. */
static const char *formula_of(lw_units units, const lw_plane_load *load, lw_load_pressure by) {
  bool us = units == LW_UNITS_US;
  bool curves = by == LW_LOAD_PRESSURE_CURVES, twice = by != LW_LOAD_PRESSURE_HALF_SPACE;
  if (load->pressure_kpa > 0.0)
    return twice ? "integral of (2q/pi)(B - sin B cos 2A) over the plane"
                 : "integral of (q/pi)(B - sin B cos 2A) over the plane";
  if (curves && load->point)
    return us ? "integral of the curve for a point load, times its mean fall along 3.281 ft"
              : "integral of the curve for a point load, times its mean fall along one metre";
  if (curves) return "integral of the curve for a line load over the plane";
  if (load->point && us)
    return twice ? "integral of (3Q/pi) x^2 z/R^5 over the plane, its mean along 3.281 ft of wall"
                 : "integral of (3Q/(2 pi)) x^2 z/R^5 over the plane, its mean along 3.281 ft of wall";
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

static void integrated(const lw_plane_load *load, lw_load_pressure by, const lw_step *push,
                       const lw_working *working) {
  lw_step step = *push;
  lw_units units = lw_tell_units(working);
  step.formula = formula_of(units, load, by);
  if (load->pressure_kpa > 0.0)
    lw_working_step(working, &step, "q = %s from %.3f to %s behind the plane, %s below ground",
                    lw_tell_amount(units, "kPa", load->pressure_kpa, 2).text,
                    lw_tell(working, "m", load->near_m), lw_tell_amount(units, "m", load->far_m, 3).text,
                    lw_tell_amount(units, "m", load->below_m, 3).text);
  else
    lw_working_step(working, &step, "Q = %s, %s behind the plane, %s below ground",
                    lw_tell_amount(units, load->point ? "kN" : "kN/m", load->force_kn_per_m, 3).text,
                    lw_tell_amount(units, "m", load->near_m, 3).text,
                    lw_tell_amount(units, "m", load->below_m, 3).text);
}

/* Names of one load's push, of its moment about the load's level, and of its height above the foot. */
typedef struct names {
  char push[8], moment[8], height[8], ratio[24];
} names;

static names names_of(int number, int count) {
  names n;
  char which[4] = "";
  if (count > 1) lw_print(which, sizeof which, "%d", number + 1);
  lw_print(n.push, sizeof n.push, "Pe%s", which);
  lw_print(n.moment, sizeof n.moment, "Me%s", which);
  lw_print(n.height, sizeof n.height, "he%s", which);
  lw_print(n.ratio, sizeof n.ratio, "z - Me%s/Pe%s", which, which);
  return n;
}

/* From push and moment about the load's level, z above the foot. */
static void height_of(const names *n, const lw_elastic_push *push, double z, const lw_working *working) {
  double moment = push->push_kn_per_m * (z - push->height_m);
  const lw_bound bound[] = {
      {"z", z, "m"}, {n->moment, moment, "kN m/m"}, {n->push, push->push_kn_per_m, "kN/m"}};
  lw_working_bound(working, &(lw_step){n->height, n->ratio, NULL, push->height_m, "m", ""}, bound, 3);
}

static void strip(const lw_elastic_reach *r, const names *n, const lw_elastic_push *push, const lw_step *step,
                  const lw_working *working) {
  double z = r->height_m, near = degrees(atan2(r->load->near_m, z)), far = degrees(atan2(r->load->far_m, z));
  bool twice = r->face == LW_ELASTIC_DOUBLED, endless = isinf(r->load->far_m);
  const lw_bound bound[] = {
      {"q", r->load->pressure_kpa, "kPa"},         {"z", z, "m"},       {"x1", r->load->near_m, "m"},
      {"x2", endless ? 0.0 : r->load->far_m, "m"}, {"T1", near, "deg"}, {"T2", far, "deg"}};
  size_t count = sizeof bound / sizeof *bound;
  lw_step whole = *step;
  lw_step moment = {n->moment, NULL, NULL, push->push_kn_per_m * (z - push->height_m), "kN m/m", ""};
  lw_working_bound(working, &(lw_step){"T1", "atan(x1/z)", NULL, near, "deg", ""}, bound, count);
  if (!endless) lw_working_bound(working, &(lw_step){"T2", "atan(x2/z)", NULL, far, "deg", ""}, bound, count);
  whole.formula = twice ? "2 q z (T2 - T1)/180" : "q z (T2 - T1)/180";
  lw_working_bound(working, &whole, bound, count);
  const char *once = "q/(2 pi) ((z^2 (T2 - T1) + x2^2 (90 - T2) - x1^2 (90 - T1)) pi/180 - z (x2 - x1))";
  const char *both = "q/pi ((z^2 (T2 - T1) + x2^2 (90 - T2) - x1^2 (90 - T1)) pi/180 - z (x2 - x1))";
  const char *once_endless = "q/(2 pi) ((z^2 - x1^2) (90 - T1) pi/180 + z x1)";
  const char *both_endless = "q/pi ((z^2 - x1^2) (90 - T1) pi/180 + z x1)";
  moment.formula = endless ? (twice ? both_endless : once_endless) : twice ? both : once;
  lw_working_bound(working, &moment, bound, count);
}

static void line(const lw_elastic_reach *r, const names *n, const lw_elastic_push *push, const lw_step *step,
                 const lw_working *working) {
  double z = r->height_m;
  bool twice = r->face == LW_ELASTIC_DOUBLED;
  const lw_bound bound[] = {{"Q", r->load->force_kn_per_m, "kN/m"},
                            {"r", fmax(r->load->near_m, LW_ELASTIC_NEAREST_M), "m"},
                            {"z", z, "m"}};
  lw_step whole = *step;
  whole.formula = twice ? "2 Q z^2/(pi (r^2 + z^2))" : "Q z^2/(pi (r^2 + z^2))";
  lw_working_bound(working, &whole, bound, 3);
  const lw_step moment = {n->moment,
                          twice ? "2 Q r/pi ((90 - atan(r/z)) pi/180 - r z/(r^2 + z^2))"
                                : "Q r/pi ((90 - atan(r/z)) pi/180 - r z/(r^2 + z^2))",
                          NULL,
                          push->push_kn_per_m * (z - push->height_m),
                          "kN m/m",
                          ""};
  lw_working_bound(working, &moment, bound, 3);
}

static void record_load(const lw_plane *plane, int i, lw_load_pressure by, const lw_elastic_push *push,
                        const lw_working *working) {
  const lw_plane_load *load = &plane->load[i];
  lw_elastic_reach r = lw_elastic_reach_of(plane, load, by);
  names n = names_of(i, plane->load_count);
  const lw_step step = {n.push, NULL, NULL, push->push_kn_per_m, "kN/m", source_of(load, by)};
  if (push->push_kn_per_m <= 0.0) return;
  if (!lw_elastic_has_closed_form(&r)) {
    integrated(load, by, &step, working);
    return;
  }
  if (load->pressure_kpa > 0.0)
    strip(&r, &n, push, &step, working);
  else
    line(&r, &n, push, &step, working);
  height_of(&n, push, r.height_m, working);
}

/* Of several loads: what they push together, and where. */
static void record_sum(const lw_plane *plane, const lw_elastic *push, const lw_working *working) {
  char pushes[240] = "", moments[320] = "";
  size_t used = 0, turned = 0;
  for (int i = 0; i < plane->load_count; i++) {
    const lw_elastic_push *one = &push->load[i];
    if (one->push_kn_per_m <= 0.0 || used >= sizeof pushes || turned >= sizeof moments) continue;
    const char *plus = used > 0 ? " + " : "";
    used += (size_t)lw_print(pushes + used, sizeof pushes - used, "%s%.5f", plus,
                             lw_tell(working, "kN/m", one->push_kn_per_m));
    turned +=
        (size_t)lw_print(moments + turned, sizeof moments - turned, "%s%.5f x %.5f", plus,
                         lw_tell(working, "kN/m", one->push_kn_per_m), lw_tell(working, "m", one->height_m));
  }
  if (used == 0 || plane->load_count < 2) return;
  lw_working_step(working, &(lw_step){"Pe", "sum of the pushes", NULL, push->push_kn_per_m, "kN/m", ""}, "%s",
                  pushes);
  lw_working_step(working,
                  &(lw_step){"he", "their moment about the foot / Pe", NULL, push->height_m, "m", ""},
                  "(%s)/(%s)", moments, pushes);
}

void lw_elastic_record(const lw_plane *plane, lw_load_pressure by, const lw_elastic *push,
                       const lw_working *working) {
  if (!working) return;
  lw_working_heading(working, "Loads at a distance, level pushes");
  for (int i = 0; i < plane->load_count; i++) record_load(plane, i, by, &push->load[i], working);
  record_sum(plane, push, working);
}
