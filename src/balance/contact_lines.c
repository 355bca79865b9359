/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "contact_lines.h"

#include <math.h>

#include "base/tell.h"
#include "base/working.h"

/* A length in compression of 0 is a contact that opens altogether. */
static const double NOTHING = 1e-12;

void lw_contact_line_resultant(const lw_contact *c, const lw_working *working) {
  lw_step at = {.symbol = "xR", .formula = "", .value = c->resultant_m, .unit = "m from the front edge"};
  lw_step off = {
      .symbol = "e", .formula = "B/2 - xR", .value = c->eccentricity_m, .unit = "m towards the front"};
  lw_step left = {.symbol = "B'", .formula = "B - 2|e|", .value = c->effective_width_m, .unit = "m"};
  double width = lw_tell(working, "m", c->width_m);
  lw_working_line(working, &at, "(%.4f - %.4f) / %.4f", lw_tell(working, "kN m/m", c->resisting_knm_per_m),
                  lw_tell(working, "kN m/m", c->overturning_knm_per_m),
                  lw_tell(working, "kN/m", c->vertical_kn_per_m));
  if (!c->inside) return;
  lw_working_line(working, &off, "%.4f/2 - %.4f", width, lw_tell(working, "m", c->resultant_m));
  if (c->area_m2 < c->width_m) return;
  lw_working_line(working, &left, "%.4f - 2 x %.4f", width, lw_tell(working, "m", fabs(c->eccentricity_m)));
}

void lw_contact_line_uplift(const lw_contact_terms *terms, double weight, double compressed_m, double uplift,
                            const lw_working *working) {
  if (working == NULL) return;
  double width = terms->rear_m - terms->front_m;
  bool opens = compressed_m <= NOTHING, gapes = !opens && compressed_m < width - NOTHING;
  lw_step step = {.symbol = "U",
                  .formula = opens   ? "gw hr B"
                             : gapes ? "gw ((hr + hf)/2 bp + hr (B - bp))"
                                     : "gw (hr + hf)/2 B",
                  .value = uplift,
                  .unit = "kN/m, upwards"};
  lw_working_heading(working, opens ? "Water under it: the resultant is in front, and all of it opens"
                              : gapes
                                  ? "Water under it: the head falls over what is pressed, bp, and is whole "
                                    "behind it"
                                  : "Water under it: the head falls from the rear to the front");
  lw_units units = lw_tell_units(working);
  lw_working_step(
      working, &step, "gw = %s, hr = %s, hf = %s, bp = %s, B = %s",
      lw_tell_amount(units, "kN/m3", weight, 4).text, lw_tell_amount(units, "m", terms->rear_head_m, 4).text,
      lw_tell_amount(units, "m", terms->front_head_m, 4).text,
      lw_tell_amount(units, "m", compressed_m, 4).text, lw_tell_amount(units, "m", width, 4).text);
}

void lw_contact_line_straight(const lw_contact *c, const lw_working *working) {
  bool to_front = c->eccentricity_m >= 0.0;
  lw_step front = {.symbol = "pf",
                   .formula = to_front ? "V/B (1 + 6|e|/B)" : "V/B (1 - 6|e|/B)",
                   .value = c->front_kpa,
                   .unit = "kPa"};
  lw_step rear = {.symbol = "pr",
                  .formula = to_front ? "V/B (1 - 6|e|/B)" : "V/B (1 + 6|e|/B)",
                  .value = c->rear_kpa,
                  .unit = "kPa"};
  double v = lw_tell(working, "kN/m", c->vertical_kn_per_m), b = lw_tell(working, "m", c->width_m),
         e = lw_tell(working, "m", fabs(c->eccentricity_m));
  lw_working_line(working, &front, "%.4f/%.4f (1 %c 6 x %.5f/%.4f)", v, b, to_front ? '+' : '-', e, b);
  lw_working_line(working, &rear, "%.4f/%.4f (1 %c 6 x %.5f/%.4f)", v, b, to_front ? '-' : '+', e, b);
}

void lw_contact_line_triangle(const lw_contact *c, double edge_kpa, const lw_working *working) {
  lw_step edge = {.symbol = c->eccentricity_m > 0.0 ? "pf" : "pr",
                  .formula = "2V / (3 (B/2 - |e|)), a triangle",
                  .value = edge_kpa,
                  .unit = "kPa"};
  lw_working_line(working, &edge, "2 x %.4f / (3 (%.4f/2 - %.5f))",
                  lw_tell(working, "kN/m", c->vertical_kn_per_m), lw_tell(working, "m", c->width_m),
                  lw_tell(working, "m", fabs(c->eccentricity_m)));
}

void lw_contact_line_even(const lw_contact *c, const lw_working *working) {
  lw_step even = {.symbol = "p", .formula = "V/B'", .value = c->front_kpa, .unit = "kPa, evenly"};
  lw_working_line(working, &even, "%.4f / %.4f", lw_tell(working, "kN/m", c->vertical_kn_per_m),
                  lw_tell(working, "m", c->effective_width_m));
}

/* Past the core one shell carries all: its edge is pressed twice the mean of what bears. */
static void one_shell(const lw_contact *c, double shell_m, const lw_working *working) {
  bool front = c->eccentricity_m > 0.0;
  double near = 0.5 * c->width_m - fabs(c->eccentricity_m), edge = front ? c->front_kpa : c->rear_kpa;
  lw_step step = {
      .symbol = front ? "pf" : "pr", .formula = "2V / t, one shell bears", .value = edge, .unit = "kPa"};
  if (near < shell_m / 3.0)
    lw_contact_line_triangle(c, edge, working);
  else
    lw_working_line(working, &step, "2 x %.4f / %.4f", lw_tell(working, "kN/m", c->vertical_kn_per_m),
                    lw_tell(working, "m", shell_m));
}

void lw_contact_line_shells(const lw_contact *c, double shell_m, const lw_working *working) {
  double b = lw_tell(working, "m", c->width_m), e = lw_tell(working, "m", c->eccentricity_m),
         v = lw_tell(working, "kN/m", c->vertical_kn_per_m), t = lw_tell(working, "m", shell_m),
         k = lw_tell(working, "m", c->kern_m);
  lw_step core = {.symbol = "k", .formula = "(B^3 - (B - 2t)^3)/(12 t B)", .value = c->kern_m, .unit = "m"};
  lw_step front = {.symbol = "pf", .formula = "V/(2t) (1 + e/k)", .value = c->front_kpa, .unit = "kPa"};
  lw_step rear = {.symbol = "pr", .formula = "V/(2t) (1 - e/k)", .value = c->rear_kpa, .unit = "kPa"};
  lw_working_line(working, &core, "(%.4f^3 - (%.4f - 2 x %.4f)^3)/(12 x %.4f x %.4f)", b, b, t, t, b);
  if (fabs(c->eccentricity_m) > c->kern_m * (1.0 + 1e-12)) {
    one_shell(c, shell_m, working);
    return;
  }
  lw_working_line(working, &front, "%.4f/(2 x %.4f) (1 + (%.5f)/%.5f)", v, t, e, k);
  lw_working_line(working, &rear, "%.4f/(2 x %.4f) (1 - (%.5f)/%.5f)", v, t, e, k);
}
