/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/tell.h"
#include "slip_parts.h"

/* A slip as text and as JSON: the slices with both ways of holding, and the sums that can be followed by
 * hand. */

static lw_slip_forces forces_of(const lw_slip_run *run, int slice) {
  return lw_slip_forces_of(&run->list.slice[slice], NULL, 0.0, run->slip.bishop);
}

static double push(const lw_slip_run *run, double kn_per_m) {
  return lw_tell_in(run->units, "kN/m", kn_per_m);
}

static void add_slice(const lw_slip_run *run, const lw_slip_slice *s, const lw_slip_forces *f,
                      lw_text *text) {
  lw_units units = run->units;
  lw_text_addf(text,
               units == LW_UNITS_US ? "%7.3f %6.3f %7.1f %6.2f %6.3f %7.1f %6.1f %5.2f %7.1f %7.1f %7.1f\n"
                                    : "%7.3f %6.3f %7.2f %6.2f %6.3f %7.2f %6.2f %5.2f %7.2f %7.2f %7.2f\n",
               lw_tell_in(units, "m", s->x_m), lw_tell_in(units, "m", s->width_m),
               push(run, s->weight_kn_per_m), asin(s->sine) * LW_DEG_PER_RAD,
               lw_tell_in(units, "m", s->length_m), lw_tell_in(units, "kPa", s->pore_kpa),
               lw_tell_in(units, "kPa", s->cohesion_kpa), atan(s->tan_friction) * LW_DEG_PER_RAD,
               push(run, f->driving_kn_per_m), push(run, f->ordinary_kn_per_m),
               push(run, f->bishop_kn_per_m));
}

static void add_slices(const lw_slip_run *run, lw_text *text) {
  lw_slip_forces sum = {0};
  bool us = run->units == LW_UNITS_US;
  lw_text_add(text, "      x     dx      Ws     al     dl       u      c   phi       D      To      Tb\n");
  lw_text_add(text,
              us ? "     ft     ft   lb/ft    deg     ft     psf    psf   deg   lb/ft   lb/ft   lb/ft\n"
                 : "      m      m    kN/m    deg      m     kPa    kPa   deg    kN/m    kN/m    kN/m\n");
  for (int i = 0; i < run->list.count; i++) {
    const lw_slip_forces f = forces_of(run, i);
    add_slice(run, &run->list.slice[i], &f, text);
    sum.driving_kn_per_m += f.driving_kn_per_m;
    sum.ordinary_kn_per_m += f.ordinary_kn_per_m;
    sum.bishop_kn_per_m += f.bishop_kn_per_m;
  }
  double drives = push(run, sum.driving_kn_per_m), ordinary = push(run, sum.ordinary_kn_per_m),
         bishop = push(run, sum.bishop_kn_per_m);
  lw_text_addf(text, us ? "%-56s%8.0f%8.0f%8.0f\n" : "%-56s%8.2f%8.2f%8.2f\n", "sums", drives, ordinary,
               bishop);
  lw_text_addf(text, "\nOrdinary slices, sum To / sum D = %.2f / %.2f = %.4f [FELLENIUS1936 circle]\n",
               ordinary, drives, run->slip.ordinary);
  lw_text_addf(text, "Bishop, sum Tb / sum D = %.2f / %.2f = %.4f [BISHOP1955 simplified]\n", bishop, drives,
               run->slip.bishop);
}

static void add_steps(const lw_slip_run *run, lw_text *text) {
  lw_working working = lw_formula_text_working(text);
  working.units = run->units;
  lw_slip again;
  lw_text_add(text, "\nST is the sum of To, SD of D; SB that of Tb with the F before, g by how much SB/SD\n"
                    "rises with it, (sum of Tb sin al tan phi/ma)/(F^2 SD), by which Newton's rule goes on\n"
                    "until F stays\n");
  (void)lw_slip_of_slices(&run->list, NULL, 0.0, LW_SLIP_BISHOP, &again, &working);
}

static void add_circle(const lw_slip_run *run, lw_text *text) {
  const lw_slip_circle *c = &run->slip.circle;
  lw_units units = run->units;
  lw_text_addf(
      text, "%s circle: centre xc = %s, yc = %s, radius Rc = %s;\nout at x = %s, in at x = %s\n",
      run->searched ? "The worst" : "The given", lw_tell_amount(units, "m", c->centre_x_m, 4).text,
      lw_tell_amount(units, "m", c->centre_y_m, 4).text, lw_tell_amount(units, "m", c->radius_m, 4).text,
      lw_tell_amount(units, "m", c->exit_x_m, 3).text, lw_tell_amount(units, "m", c->entry_x_m, 3).text);
  lw_text_addf(
      text,
      "x is the middle of a slice, dx its width, Ws its weight, al the slope of its base, dl the length of "
      "that\nand u the pressure of water there; c and phi are of the soil at the base.\n"
      "sin al = (x - xc)/Rc; D = Ws sin al; To = c dl + (Ws dx/dl - u dl) tan phi, the bracket not below 0;"
      "\nTb = [c dx + (Ws - u dx) tan phi]/ma, ma = dx/dl + sin al tan phi/F, F = %.6f\n\n",
      run->slip.bishop);
  add_slices(run, text);
  add_steps(run, text);
}

static void add_plane(const lw_slip_run *run, lw_text *text) {
  lw_working working = lw_formula_text_working(text);
  working.units = run->units;
  double cosine = cos(run->slope_rad), pore = run->uplift_kpa * cosine * cosine;
  lw_text_addf(text, "Plane %s deep along a long slope of %.2f deg, pore pressure on it %s%s: F = %.4f\n",
               lw_tell_amount(run->units, "m", run->depth_m, 3).text, run->slope_rad * LW_DEG_PER_RAD,
               pore > 0.0 ? "uz cos^2 be = " : "", lw_tell_amount(run->units, "kPa", pore, 3).text,
               run->plane_factor);
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
