/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "taper.h"

#include <math.h>

#include "base/extremes.h"
#include "base/tell.h"
#include "base/working.h"
#include "contact_lines.h"

/* The share of the run at x is w(x) = w0 + k x. Everything here is the integral of a polynomial of x. */

static double slope_of(lw_taper taper, double length_m) {
  return (taper.rear - taper.front) / length_m;
}

bool lw_taper_whole(lw_taper taper) {
  return taper.front >= 1.0 && taper.rear >= 1.0;
}

lw_taper lw_taper_turned(lw_taper taper) {
  return (lw_taper){taper.rear, taper.front};
}

lw_plan_sums lw_taper_sums(lw_taper taper, double length_m) {
  double l = length_m, f = taper.front, r = taper.rear;
  return (lw_plan_sums){l * (f + r) / 2.0, l * l * (f + 2.0 * r) / 6.0, l * l * l * (f + 3.0 * r) / 12.0};
}

lw_plan_sums lw_taper_triangle(lw_taper taper, double length_m, double compressed_m) {
  double c = compressed_m, w = taper.front, k = slope_of(taper, length_m);
  return (lw_plan_sums){w * c / 2.0 + k * c * c / 6.0, w * c * c / 6.0 + k * c * c * c / 12.0,
                        w * c * c * c / 12.0 + k * c * c * c * c / 20.0};
}

/* The root of a c² + b c = d that is there without the square too, whatever the sign of a is. */
static double root(double a, double b, double d) {
  double square = sqrt(lw_larger(b * b + 4.0 * a * d, 0.0));
  return b >= 0.0 ? 2.0 * d / (b + square) : (square - b) / (2.0 * a);
}

/* Of a triangle of pressure as long as c: x = c (2 w + k c) / (6 w + 2 k c). */
double lw_taper_compressed(lw_taper taper, double length_m, double resultant_m) {
  double w = taper.front, k = slope_of(taper, length_m), r = resultant_m;
  lw_plan_sums all = lw_taper_triangle(taper, length_m, length_m);
  double kern = all.first_m3 / all.area_m2;
  if (r >= kern) return length_m * r / kern;
  return root(k, 2.0 * (w - k * r), 6.0 * w * r);
}

/* Of an even pressure as long as c: x = c (3 w + 2 k c) / (6 w + 3 k c). */
static double even_length(lw_taper taper, double length_m, double resultant_m) {
  double w = taper.front, k = slope_of(taper, length_m), r = resultant_m;
  return root(2.0 * k, 3.0 * (w - k * r), 6.0 * w * r);
}

static double area_to(lw_taper taper, double length_m, double to_m) {
  return to_m * (taper.front + 0.5 * slope_of(taper, length_m) * to_m);
}

double lw_taper_effective(lw_taper taper, double length_m, double resultant_m) {
  lw_plan_sums all = lw_taper_sums(taper, length_m);
  bool behind = resultant_m * all.area_m2 > all.first_m3;
  lw_taper from = behind ? lw_taper_turned(taper) : taper;
  double r = behind ? length_m - resultant_m : resultant_m;
  return area_to(from, length_m, lw_smaller(even_length(from, length_m, r), length_m));
}

/* Over what is in compression the head is lost on its way to the front; a joint that is open loses all of
 * it. */
static lw_plan_sums lost_over(const lw_contact_terms *terms, double compressed_m) {
  double width = terms->rear_m - terms->front_m;
  if (!terms->uplift) return lw_taper_sums(terms->contact, width);
  if (compressed_m <= 0.0) return (lw_plan_sums){0};
  return lw_taper_triangle(terms->contact, width, compressed_m);
}

lw_force lw_taper_uplift(const lw_contact_terms *terms, double factor, double weight, double compressed_m) {
  double width = terms->rear_m - terms->front_m, rear = terms->rear_head_m;
  double front = terms->uplift ? terms->front_head_m : 0.0;
  lw_plan_sums under = lw_taper_sums(terms->underside, width), lost = lost_over(terms, compressed_m);
  double force = rear * under.area_m2 - (rear - front) * lost.area_m2;
  double moment = rear * under.first_m3 - (rear - front) * lost.first_m3;
  return (lw_force){.kind = LW_FORCE_UPLIFT,
                    .factor = factor,
                    .vertical_kn_per_m = -weight * force,
                    .x_m = terms->front_m + (force > 0.0 ? moment / force : 0.0),
                    .y_m = terms->foot_y_m};
}

void lw_taper_line_uplift(const lw_contact_terms *terms, double weight, double compressed_m, double uplift,
                          const lw_working *working) {
  if (working == NULL) return;
  double width = terms->rear_m - terms->front_m;
  lw_step step = {
      .symbol = "U", .formula = "gw (hr Au - (hr - hf) Al)", .value = uplift, .unit = "kN/m, upwards"};
  lw_working_heading(working, "Water under it: hr on the undersides, Au, less what is lost over Al, which is "
                              "pressed");
  lw_units units = lw_tell_units(working);
  double front = terms->uplift ? terms->front_head_m : 0.0;
  lw_working_step(working, &step, "gw = %s, hr = %s, hf = %s, Au = %s, Al = %s",
                  lw_tell_amount(units, "kN/m3", weight, 4).text,
                  lw_tell_amount(units, "m", terms->rear_head_m, 4).text,
                  lw_tell_amount(units, "m", front, 4).text,
                  lw_tell_amount(units, "m2/m", lw_taper_sums(terms->underside, width).area_m2, 5).text,
                  lw_tell_amount(units, "m2/m", lost_over(terms, compressed_m).area_m2, 5).text);
}

static double core_of(lw_taper taper, double length_m) {
  lw_plan_sums all = lw_taper_triangle(taper, length_m, length_m);
  return all.first_m3 / all.area_m2;
}

void lw_taper_measure(lw_taper taper, lw_contact *contact) {
  double width = contact->width_m;
  contact->area_m2 = lw_taper_sums(taper, width).area_m2;
  contact->kern_m = 0.5 * width - core_of(taper, width);
  contact->kern_behind_m = 0.5 * width - core_of(lw_taper_turned(taper), width);
}

/* What is in compression from one edge on, and how hard at that edge. */
static void press_part(lw_taper taper, double near_m, lw_contact *c, double *edge_kpa) {
  double length = lw_smaller(lw_taper_compressed(taper, c->width_m, near_m), c->width_m);
  *edge_kpa = c->vertical_kn_per_m / lw_taper_triangle(taper, c->width_m, length).area_m2;
  c->compressed_m = length;
  c->share_in_compression = area_to(taper, c->width_m, length) / c->area_m2;
}

/* What bears in plan, with its moments about the front edge. */
static void tell_sums(lw_taper taper, const lw_plan_sums *sums, double width_m, const lw_working *working) {
  lw_step area = {.symbol = "A", .formula = "B (wf + wr)/2", .value = sums->area_m2, .unit = "m2/m"};
  lw_step first = {.symbol = "S", .formula = "B^2 (wf + 2 wr)/6", .value = sums->first_m3, .unit = "m3/m"};
  lw_step second = {.symbol = "J", .formula = "B^3 (wf + 3 wr)/12", .value = sums->second_m4, .unit = "m4/m"};
  double f = taper.front, r = taper.rear, b = lw_tell(working, "m", width_m);
  lw_working_line(working, &area, "%.4f (%.4f + %.4f)/2", b, f, r);
  lw_working_line(working, &first, "%.4f^2 (%.4f + 2 x %.4f)/6", b, f, r);
  lw_working_line(working, &second, "%.4f^3 (%.4f + 3 x %.4f)/12", b, f, r);
}

/* Straight over all of it, by sums in plan. */
static void tell_straight(const lw_plan_sums *sums, const lw_contact *c, const lw_working *working) {
  lw_units units = lw_tell_units(working);
  lw_amount v = lw_tell_amount(units, "kN/m", c->vertical_kn_per_m, 4),
            r = lw_tell_amount(units, "m", c->resultant_m, 5),
            a = lw_tell_amount(units, "m2/m", sums->area_m2, 6),
            s = lw_tell_amount(units, "m3/m", sums->first_m3, 6),
            j = lw_tell_amount(units, "m4/m", sums->second_m4, 6);
  lw_step front = {
      .symbol = "pf", .formula = "V (J - xR S)/(A J - S^2)", .value = c->front_kpa, .unit = "kPa"};
  lw_step rear = {.symbol = "pr",
                  .formula = "V (J - xR S + (xR A - S) B)/(A J - S^2)",
                  .value = c->rear_kpa,
                  .unit = "kPa"};
  lw_working_step(working, &front, "V = %s, xR = %s, A = %s, S = %s, J = %s", v.text, r.text, a.text, s.text,
                  j.text);
  lw_working_step(working, &rear, "V = %s, xR = %s, A = %s, S = %s, J = %s, B = %s", v.text, r.text, a.text,
                  s.text, j.text, lw_tell_amount(units, "m", c->width_m, 4).text);
}

/* A triangle on the part in compression: it stands as far from the edge as the resultant. */
static void tell_part(lw_taper from, double edge_kpa, const lw_contact *c, const lw_working *working) {
  double w = from.front, k = slope_of(from, c->width_m), length = c->compressed_m;
  lw_step x = {.symbol = "x",
               .formula = "bp (2 wn + k bp)/(6 wn + 2 k bp)",
               .value = length * (2.0 * w + k * length) / (6.0 * w + 2.0 * k * length),
               .unit = "m from the pressed edge, where the resultant stands"};
  lw_step edge = {.symbol = "pn",
                  .formula = "V/(wn bp/2 + k bp^2/6)",
                  .value = edge_kpa,
                  .unit = "kPa at the edge that is pressed"};
  lw_amount bp = lw_tell_amount(lw_tell_units(working), "m", length, 5),
            v = lw_tell_amount(lw_tell_units(working), "kN/m", c->vertical_kn_per_m, 4);
  double per = lw_tell(working, "1/m", k);
  lw_working_step(working, &x, "bp = %s, wn = %.4f, k = %.4f", bp.text, w, per);
  lw_working_step(working, &edge, "V = %s, bp = %s, wn = %.4f, k = %.4f", v.text, bp.text, w, per);
}

/* Straight pressures over all of it: a at the front edge, b more a metre. */
static bool press_whole(const lw_plan_sums *sums, lw_contact *c) {
  double v = c->vertical_kn_per_m, r = c->resultant_m;
  double bend = sums->area_m2 * sums->second_m4 - sums->first_m3 * sums->first_m3;
  c->front_kpa = v * (sums->second_m4 - r * sums->first_m3) / bend;
  c->rear_kpa = c->front_kpa + v * (r * sums->area_m2 - sums->first_m3) / bend * c->width_m;
  c->compressed_m = c->width_m;
  c->share_in_compression = 1.0;
  double least = -1e-12 * v / sums->area_m2;
  return c->front_kpa >= least && c->rear_kpa >= least;
}

/* As much of it as the method asks for. */
static void tell_all(const lw_method *method, lw_taper taper, bool whole, const lw_contact *c,
                     const lw_working *working) {
  lw_plan_sums sums = lw_taper_sums(taper, c->width_m);
  bool front = c->resultant_m * sums.area_m2 < sums.first_m3;
  tell_sums(taper, &sums, c->width_m, working);
  if (method->base_pressure == LW_BASE_EFFECTIVE)
    lw_contact_line_even(c, working);
  else if (whole || method->base_pressure == LW_BASE_LINEAR)
    tell_straight(&sums, c, working);
  else
    tell_part(front ? taper : lw_taper_turned(taper), front ? c->front_kpa : c->rear_kpa, c, working);
}

static void press_all(const lw_method *method, lw_taper taper, lw_contact *c, const lw_working *working) {
  lw_plan_sums sums = lw_taper_sums(taper, c->width_m);
  bool front = c->resultant_m * sums.area_m2 < sums.first_m3, whole = press_whole(&sums, c);
  double front_kpa = c->front_kpa, rear_kpa = c->rear_kpa, edge;
  if (!whole) {
    press_part(front ? taper : lw_taper_turned(taper), front ? c->resultant_m : c->width_m - c->resultant_m,
               c, &edge);
    c->front_kpa = front ? edge : 0.0;
    c->rear_kpa = front ? 0.0 : edge;
  }
  if (method->base_pressure == LW_BASE_EFFECTIVE) {
    c->front_kpa = c->rear_kpa = c->vertical_kn_per_m / c->effective_width_m;
  } else if (method->base_pressure == LW_BASE_LINEAR) {
    c->front_kpa = front_kpa;
    c->rear_kpa = rear_kpa;
  }
  if (working) tell_all(method, taper, whole, c, working);
}

/* A strip of the contact as sums about the front edge of it all. */
static void add_strip(lw_taper taper, double length_m, double from_m, double to_m, lw_plan_sums *sums) {
  double k = slope_of(taper, length_m), l = to_m - from_m;
  lw_taper ends = {taper.front + k * from_m, taper.front + k * to_m};
  lw_plan_sums own = lw_taper_sums(ends, l);
  sums->area_m2 += own.area_m2;
  sums->first_m3 += own.first_m3 + from_m * own.area_m2;
  sums->second_m4 += own.second_m4 + 2.0 * from_m * own.first_m3 + from_m * from_m * own.area_m2;
}

/* Past the kern one shell carries all, and not even all of its thickness where the resultant is very near. */
static void press_shells(lw_taper taper, double shell_m, lw_contact *c, const lw_working *working) {
  lw_plan_sums sums = {0}, one = {0};
  add_strip(taper, c->width_m, 0.0, shell_m, &sums);
  add_strip(taper, c->width_m, c->width_m - shell_m, c->width_m, &sums);
  bool front = c->resultant_m * sums.area_m2 < sums.first_m3;
  /* Where the pressure at the other edge is nothing. */
  double w = c->width_m;
  c->kern_m = 0.5 * w - (w * sums.first_m3 - sums.second_m4) / (w * sums.area_m2 - sums.first_m3);
  c->kern_behind_m = sums.second_m4 / sums.first_m3 - 0.5 * w;
  if (press_whole(&sums, c)) {
    if (working) tell_straight(&sums, c, working);
    return;
  }
  double near = front ? c->resultant_m : c->width_m - c->resultant_m;
  double length = lw_smaller(shell_m, 3.0 * near);
  double from = front ? 0.0 : c->width_m - length;
  add_strip(taper, c->width_m, from, from + length, &one);
  c->compressed_m = length;
  c->share_in_compression = one.area_m2 / sums.area_m2;
  double edge = 2.0 * c->vertical_kn_per_m / one.area_m2;
  c->front_kpa = front ? edge : 0.0;
  c->rear_kpa = front ? 0.0 : edge;
  lw_step one_bears = {.symbol = front ? "pf" : "pr",
                       .formula = "2V / area of the shell that bears",
                       .value = edge,
                       .unit = "kPa"};
  lw_working_line(working, &one_bears, "2 x %.4f / %.6f", lw_tell(working, "kN/m", c->vertical_kn_per_m),
                  lw_tell(working, "m2/m", one.area_m2));
}

void lw_taper_press(const lw_method *method, lw_taper taper, double shell_m, lw_contact *contact,
                    const lw_working *working) {
  if (shell_m > 0.0)
    press_shells(taper, shell_m, contact, working);
  else
    press_all(method, taper, contact, working);
}
