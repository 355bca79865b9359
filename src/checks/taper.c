/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "taper.h"

#include <math.h>

#include "base/extremes.h"

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

lw_plan_sums lw_taper_triangle(lw_taper taper, double length_m, double pressed_m) {
  double c = pressed_m, w = taper.front, k = slope_of(taper, length_m);
  return (lw_plan_sums){w * c / 2.0 + k * c * c / 6.0, w * c * c / 6.0 + k * c * c * c / 12.0,
                        w * c * c * c / 12.0 + k * c * c * c * c / 20.0};
}

/* The root of a c² + b c = d that is there without the square too, whatever the sign of a is. */
static double root(double a, double b, double d) {
  double square = sqrt(lw_larger(b * b + 4.0 * a * d, 0.0));
  return b >= 0.0 ? 2.0 * d / (b + square) : (square - b) / (2.0 * a);
}

/* Of a triangle of pressure as long as c: x = c (2 w + k c) / (6 w + 2 k c). */
double lw_taper_pressed(lw_taper taper, double length_m, double resultant_m) {
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

lw_force lw_taper_uplift(const lw_contact_terms *terms, double factor, double weight, double pressed_m) {
  double width = terms->rear_m - terms->front_m, rear = terms->rear_head_m, front = terms->front_head_m;
  lw_plan_sums under = lw_taper_sums(terms->underside, width), bears = lw_taper_sums(terms->contact, width);
  lw_plan_sums lost = {0};
  if (!terms->uplift)
    front = 0.0, lost = bears;
  else if (pressed_m > 0.0)
    lost = lw_taper_triangle(terms->contact, width, pressed_m);
  double force = rear * under.area_m2 - (rear - front) * lost.area_m2;
  double moment = rear * under.first_m3 - (rear - front) * lost.first_m3;
  return (lw_force){.kind = LW_FORCE_UPLIFT,
                    .factor = factor,
                    .vertical_kn_per_m = -weight * force,
                    .x_m = terms->front_m + (force > 0.0 ? moment / force : 0.0),
                    .y_m = terms->foot_y_m};
}

static double core_of(lw_taper taper, double length_m) {
  lw_plan_sums all = lw_taper_triangle(taper, length_m, length_m);
  return all.area_m2 > 0.0 ? all.first_m3 / all.area_m2 : 0.0;
}

void lw_taper_measure(lw_taper taper, lw_contact *contact) {
  double width = contact->width_m;
  contact->area_m2 = lw_taper_sums(taper, width).area_m2;
  contact->kern_m = 0.5 * width - core_of(taper, width);
  contact->kern_behind_m = 0.5 * width - core_of(lw_taper_turned(taper), width);
}

/* What is pressed from one edge on, and how hard at that edge. */
static void press_part(lw_taper taper, double near_m, lw_contact *c, double *edge_kpa) {
  double length = lw_smaller(lw_taper_pressed(taper, c->width_m, near_m), c->width_m);
  *edge_kpa = c->vertical_kn_per_m / lw_taper_triangle(taper, c->width_m, length).area_m2;
  c->pressed_m = length;
  c->share_in_compression = area_to(taper, c->width_m, length) / c->area_m2;
}

/* Straight pressures over all of it: a at the front edge, b more a metre. */
static bool press_whole(const lw_plan_sums *sums, lw_contact *c) {
  double v = c->vertical_kn_per_m, r = c->resultant_m;
  double bend = sums->area_m2 * sums->second_m4 - sums->first_m3 * sums->first_m3;
  c->front_kpa = v * (sums->second_m4 - r * sums->first_m3) / bend;
  c->rear_kpa = c->front_kpa + v * (r * sums->area_m2 - sums->first_m3) / bend * c->width_m;
  c->pressed_m = c->width_m;
  c->share_in_compression = 1.0;
  double least = -1e-12 * v / sums->area_m2;
  return c->front_kpa >= least && c->rear_kpa >= least;
}

static void press_all(const lw_method *method, lw_taper taper, lw_contact *c) {
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
static void press_shells(lw_taper taper, double shell_m, lw_contact *c) {
  lw_plan_sums sums = {0}, one = {0};
  add_strip(taper, c->width_m, 0.0, shell_m, &sums);
  add_strip(taper, c->width_m, c->width_m - shell_m, c->width_m, &sums);
  bool front = c->resultant_m * sums.area_m2 < sums.first_m3;
  /* Where the pressure at the other edge is nothing. */
  double w = c->width_m;
  c->kern_m = 0.5 * w - (w * sums.first_m3 - sums.second_m4) / (w * sums.area_m2 - sums.first_m3);
  c->kern_behind_m = sums.second_m4 / sums.first_m3 - 0.5 * w;
  if (press_whole(&sums, c)) return;
  double near = front ? c->resultant_m : c->width_m - c->resultant_m;
  double length = lw_smaller(shell_m, 3.0 * near);
  double from = front ? 0.0 : c->width_m - length;
  add_strip(taper, c->width_m, from, from + length, &one);
  c->inside = one.area_m2 > 0.0;
  if (!c->inside) return;
  c->pressed_m = length;
  c->share_in_compression = one.area_m2 / sums.area_m2;
  double edge = 2.0 * c->vertical_kn_per_m / one.area_m2;
  c->front_kpa = front ? edge : 0.0;
  c->rear_kpa = front ? 0.0 : edge;
}

void lw_taper_press(const lw_method *method, lw_taper taper, double shell_m, lw_contact *contact) {
  if (shell_m > 0.0)
    press_shells(taper, shell_m, contact);
  else
    press_all(method, taper, contact);
}
