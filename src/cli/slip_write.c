/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "slip_parts.h"

/* A slip as text and as JSON: the slices with both ways of holding, and the sums that can be followed by
 * hand. */

static double friction_of(const lw_slip_slice *s, double normal) {
  return fmax(normal, 0.0) * s->tan_friction;
}

static double driving(const lw_slip_slice *s) {
  return s->weight_kn_per_m * s->sine;
}

static double by_ordinary(const lw_slip_slice *s) {
  return s->cohesion_kpa * s->length_m +
         friction_of(s, s->weight_kn_per_m * s->cosine - s->pore_kpa * s->length_m);
}

static double m_alpha(const lw_slip_slice *s, double factor) {
  return s->cosine + s->sine * s->tan_friction / factor;
}

static double by_bishop(const lw_slip_slice *s, double factor) {
  double holds = s->cohesion_kpa * s->width_m + friction_of(s, s->weight_kn_per_m - s->pore_kpa * s->width_m);
  return holds / m_alpha(s, factor);
}

static void add_slices(const lw_slip_run *run, lw_text *text) {
  lw_text_add(text, "     x      b       W      a      l       u      c   phi       D      To      Tb\n"
                    "     m      m    kN/m    deg      m     kPa    kPa   deg    kN/m    kN/m    kN/m\n");
  for (int i = 0; i < run->list.count; i++) {
    const lw_slip_slice *s = &run->list.slice[i];
    lw_text_addf(text, "%6.2f %6.3f %7.2f %6.2f %6.3f %7.2f %6.2f %5.1f %7.2f %7.2f %7.2f\n", s->x_m,
                 s->width_m, s->weight_kn_per_m, asin(s->sine) * LW_DEG_PER_RAD, s->length_m, s->pore_kpa,
                 s->cohesion_kpa, atan(s->tan_friction) * LW_DEG_PER_RAD, driving(s), by_ordinary(s),
                 by_bishop(s, run->slip.bishop));
  }
}

static void add_sums(const lw_slip_run *run, lw_text *text) {
  double drives = 0.0, ordinary = 0.0, bishop = 0.0;
  for (int i = 0; i < run->list.count; i++) {
    const lw_slip_slice *s = &run->list.slice[i];
    drives += driving(s);
    ordinary += by_ordinary(s);
    bishop += by_bishop(s, run->slip.bishop);
  }
  lw_text_addf(text, "\nOrdinary slices, sum To / sum D = %.2f / %.2f = %.4f [FELLENIUS1936 circle]\n",
               ordinary, drives, run->slip.ordinary);
  lw_text_addf(text, "Bishop, sum Tb / sum D = %.2f / %.2f = %.4f [BISHOP1955 simplified]\n", bishop, drives,
               run->slip.bishop);
}

static void add_circle(const lw_slip_run *run, lw_text *text) {
  const lw_slip_circle *c = &run->slip.circle;
  lw_text_addf(text,
               "%s circle: centre x = %.3f m, y = %.3f m, R = %.3f m;\nout at x = %.3f m, in at x = %.3f m\n",
               run->searched ? "The worst" : "The given", c->centre_x_m, c->centre_y_m, c->radius_m,
               c->exit_x_m, c->entry_x_m);
  lw_text_add(text, "D = W sin a; To = c l + (W cos a - u l) tan phi; Tb = [c b + (W - u b) tan phi]/m,\n"
                    "m = cos a + sin a tan phi/F, F that of Bishop; sin a = (x - xc)/R\n\n");
  add_slices(run, text);
  add_sums(run, text);
}

static void add_plane(const lw_slip_run *run, lw_text *text) {
  double cosine = cos(run->slope_rad), pore = run->uplift_kpa * cosine * cosine;
  lw_text_addf(text,
               "Plane %.3f m deep along a long slope of %.2f deg, pore pressure on it %.3f kPa:\n"
               "F = [c + (w z cos^2 b - u) tan phi]/(w z sin b cos b) = %.4f [TAYLOR1948 infinite slope]\n",
               run->depth_m, run->slope_rad * LW_DEG_PER_RAD, pore, run->plane_factor);
}

void lw_slip_write_text(const lw_slip_run *run, lw_text *text) {
  if (run->plane) add_plane(run, text);
  if (run->plane && run->circular) lw_text_add(text, "\n");
  if (run->circular) add_circle(run, text);
  lw_text_add(
      text, "\nA factor of a plain slope by itself; whether a slope holds is for whoever may sign for it.\n");
}

static void set_circle(json_t *object, const lw_slip_run *run) {
  const lw_slip_circle *c = &run->slip.circle;
  lw_json_set_flag(object, "searched", run->searched);
  lw_formula_set(object, "centre_x_m", c->centre_x_m, NULL);
  lw_formula_set(object, "centre_y_m", c->centre_y_m, NULL);
  lw_formula_set(object, "radius_m", c->radius_m, NULL);
  lw_formula_set(object, "exit_x_m", c->exit_x_m, NULL);
  lw_formula_set(object, "entry_x_m", c->entry_x_m, NULL);
  lw_formula_set(object, "ordinary", run->slip.ordinary, NULL);
  lw_formula_set(object, "bishop", run->slip.bishop, NULL);
  lw_formula_set(object, "driving_kn_per_m", run->slip.driving_kn_per_m, NULL);
}

static void set_slice(json_t *object, const lw_slip_slice *s, double factor) {
  lw_formula_set(object, "x_m", s->x_m, NULL);
  lw_formula_set(object, "width_m", s->width_m, NULL);
  lw_formula_set(object, "weight_kn_per_m", s->weight_kn_per_m, NULL);
  lw_formula_set(object, "angle_deg", asin(s->sine) * LW_DEG_PER_RAD, NULL);
  lw_formula_set(object, "length_m", s->length_m, NULL);
  lw_formula_set(object, "pore_kpa", s->pore_kpa, NULL);
  lw_formula_set(object, "cohesion_kpa", s->cohesion_kpa, NULL);
  lw_formula_set(object, "friction_deg", atan(s->tan_friction) * LW_DEG_PER_RAD, NULL);
  lw_formula_set(object, "driving_kn_per_m", driving(s), NULL);
  lw_formula_set(object, "ordinary_kn_per_m", by_ordinary(s), NULL);
  lw_formula_set(object, "bishop_kn_per_m", by_bishop(s, factor), NULL);
}

json_t *lw_slip_write_json(const lw_formula_given *given, const lw_slip_run *run) {
  json_t *out = json_object();
  lw_formula_given_json(given, lw_json_object(out, "given"));
  if (run->plane) {
    json_t *plane = lw_json_object(out, "plane");
    double cosine = cos(run->slope_rad);
    lw_formula_set(plane, "pore_kpa", run->uplift_kpa * cosine * cosine, NULL);
    lw_formula_set(plane, "factor", run->plane_factor, NULL);
  }
  if (!run->circular) return out;
  set_circle(lw_json_object(out, "circle"), run);
  json_t *slices = lw_json_list(out, "slices");
  for (int i = 0; i < run->list.count; i++)
    set_slice(lw_json_entry(slices), &run->list.slice[i], run->slip.bishop);
  return out;
}
