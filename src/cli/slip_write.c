/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "slip_parts.h"

/* A slip as text and as JSON: the slices with both ways of holding, and the sums that can be followed by
 * hand. */

static lw_slip_forces forces_of(const lw_slip_run *run, int slice) {
  return lw_slip_forces_of(&run->list.slice[slice], NULL, 0.0, run->slip.bishop);
}

static void add_slices(const lw_slip_run *run, lw_text *text) {
  lw_slip_forces sum = {0};
  lw_text_add(text, "      x     dx      Ws     al     dl       u      c   phi       D      To      Tb\n"
                    "      m      m    kN/m    deg      m     kPa    kPa   deg    kN/m    kN/m    kN/m\n");
  for (int i = 0; i < run->list.count; i++) {
    const lw_slip_slice *s = &run->list.slice[i];
    const lw_slip_forces f = forces_of(run, i);
    lw_text_addf(text, "%7.3f %6.3f %7.2f %6.2f %6.3f %7.2f %6.2f %5.2f %7.2f %7.2f %7.2f\n", s->x_m,
                 s->width_m, s->weight_kn_per_m, asin(s->sine) * LW_DEG_PER_RAD, s->length_m, s->pore_kpa,
                 s->cohesion_kpa, atan(s->tan_friction) * LW_DEG_PER_RAD, f.driving_kn_per_m,
                 f.ordinary_kn_per_m, f.bishop_kn_per_m);
    sum.driving_kn_per_m += f.driving_kn_per_m;
    sum.ordinary_kn_per_m += f.ordinary_kn_per_m;
    sum.bishop_kn_per_m += f.bishop_kn_per_m;
  }
  lw_text_addf(text, "%-56s%8.2f%8.2f%8.2f\n", "sums", sum.driving_kn_per_m, sum.ordinary_kn_per_m,
               sum.bishop_kn_per_m);
  lw_text_addf(text, "\nOrdinary slices, sum To / sum D = %.2f / %.2f = %.4f [FELLENIUS1936 circle]\n",
               sum.ordinary_kn_per_m, sum.driving_kn_per_m, run->slip.ordinary);
  lw_text_addf(text, "Bishop, sum Tb / sum D = %.2f / %.2f = %.4f [BISHOP1955 simplified]\n",
               sum.bishop_kn_per_m, sum.driving_kn_per_m, run->slip.bishop);
}

static void add_steps(const lw_slip_run *run, lw_text *text) {
  lw_working working = lw_formula_text_working(text);
  lw_slip again;
  lw_text_add(text, "\nST is the sum of To, SD of D; SB that of Tb with the F before, g by how much SB/SD\n"
                    "rises with it, (sum of Tb sin al tan phi/ma)/(F^2 SD), by which Newton's rule goes on\n"
                    "until F stays\n");
  (void)lw_slip_of_slices(&run->list, NULL, 0.0, LW_SLIP_BISHOP, &again, &working);
}

static void add_circle(const lw_slip_run *run, lw_text *text) {
  const lw_slip_circle *c = &run->slip.circle;
  lw_text_addf(text,
               "%s circle: centre xc = %.4f m, yc = %.4f m, radius Rc = %.4f m;\nout at x = %.3f m, in at x "
               "= %.3f m\n",
               run->searched ? "The worst" : "The given", c->centre_x_m, c->centre_y_m, c->radius_m,
               c->exit_x_m, c->entry_x_m);
  lw_text_addf(
      text,
      "sin al = (x - xc)/Rc; D = Ws sin al; To = c dl + (Ws dx/dl - u dl) tan phi, the bracket not below 0;"
      "\nTb = [c dx + (Ws - u dx) tan phi]/ma, ma = dx/dl + sin al tan phi/F, F = %.6f\n\n",
      run->slip.bishop);
  add_slices(run, text);
  add_steps(run, text);
}

static void add_plane(const lw_slip_run *run, lw_text *text) {
  lw_working working = lw_formula_text_working(text);
  double cosine = cos(run->slope_rad), pore = run->uplift_kpa * cosine * cosine;
  lw_text_addf(text,
               "Plane %.3f m deep along a long slope of %.2f deg, pore pressure on it %.3f kPa: F = %.4f\n",
               run->depth_m, run->slope_rad * LW_DEG_PER_RAD, pore, run->plane_factor);
  (void)lw_slip_infinite(&run->ground.below, run->slope_rad, run->depth_m, run->uplift_kpa, &working);
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

static void set_slice(json_t *object, const lw_slip_run *run, int number) {
  const lw_slip_slice *s = &run->list.slice[number];
  const lw_slip_forces f = forces_of(run, number);
  lw_formula_set(object, "x_m", s->x_m, NULL);
  lw_formula_set(object, "width_m", s->width_m, NULL);
  lw_formula_set(object, "weight_kn_per_m", s->weight_kn_per_m, NULL);
  lw_formula_set(object, "angle_deg", asin(s->sine) * LW_DEG_PER_RAD, NULL);
  lw_formula_set(object, "length_m", s->length_m, NULL);
  lw_formula_set(object, "pore_kpa", s->pore_kpa, NULL);
  lw_formula_set(object, "cohesion_kpa", s->cohesion_kpa, NULL);
  lw_formula_set(object, "friction_deg", atan(s->tan_friction) * LW_DEG_PER_RAD, NULL);
  lw_formula_set(object, "driving_kn_per_m", f.driving_kn_per_m, NULL);
  lw_formula_set(object, "ordinary_kn_per_m", f.ordinary_kn_per_m, NULL);
  lw_formula_set(object, "bishop_kn_per_m", f.bishop_kn_per_m, NULL);
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
  for (int i = 0; i < run->list.count; i++) set_slice(lw_json_entry(slices), run, i);
  return out;
}
