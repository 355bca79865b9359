/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "rebuilt.h"

#include <math.h>

/* Everything is looked at from the edge that is nearer to the resultant: x runs from there. */
typedef struct side {
  const rebuilt_plan *plan;
  bool rear;
  double resultant_m;
} side;

static double breadth(const side *s, double x) {
  double front = s->plan->front_share, rear = s->plan->rear_share, w = s->plan->width_m;
  return s->rear ? rear + (front - rear) * x / w : front + (rear - front) * x / w;
}

/* Of x^n times the breadth, which is a straight line: Simpson's rule is exact up to n = 2. */
static double moment(const side *s, int n, double from, double to) {
  double mid = 0.5 * (from + to);
  return (to - from) / 6.0 *
         (pow(from, n) * breadth(s, from) + 4.0 * pow(mid, n) * breadth(s, mid) +
          pow(to, n) * breadth(s, to));
}

static double bearing(const side *s, int n) {
  double w = s->plan->width_m, shell = s->plan->shell_m;
  if (shell <= 0.0 || 2.0 * shell >= w) return moment(s, n, 0.0, w);
  return moment(s, n, 0.0, shell) + moment(s, n, w - shell, w);
}

/* Even pressure over a length from the edge: where its middle stands. */
static double even_middle(const side *s, double length) {
  return moment(s, 1, 0.0, length) / moment(s, 0, 0.0, length);
}

/* Pressure that falls to nothing over a length: the same, and what it carries of 1 at the edge. */
static double falling(const side *s, double length) {
  return moment(s, 0, 0.0, length) - moment(s, 1, 0.0, length) / length;
}

static double falling_middle(const side *s, double length) {
  return (moment(s, 1, 0.0, length) - moment(s, 2, 0.0, length) / length) / falling(s, length);
}

static double halved(const side *s, double (*middle)(const side *, double)) {
  double low = 0.0, high = s->plan->width_m;
  for (int i = 0; i < 200; i++) {
    double length = 0.5 * (low + high);
    if (middle(s, length) < s->resultant_m)
      low = length;
    else
      high = length;
  }
  return 0.5 * (low + high);
}

/* Straight pressures over all that bears. gives whether none of them pulls */
static bool whole(const side *s, double vertical, double *near_kpa, double *far_kpa) {
  double a = bearing(s, 0), b = bearing(s, 1), c = bearing(s, 2), all = a * c - b * b;
  *near_kpa = vertical * (c - s->resultant_m * b) / all;
  *far_kpa = *near_kpa + vertical * (s->resultant_m * a - b) / all * s->plan->width_m;
  return fmin(*near_kpa, *far_kpa) >= -1e-11 * vertical / a;
}

static void press_part(const side *s, double vertical, rebuilt_contact *out) {
  double shell = s->plan->shell_m, length;
  if (shell > 0.0 && 2.0 * shell < s->plan->width_m) {
    length = fmin(shell, 3.0 * s->resultant_m);
    out->share = moment(s, 0, 0.0, length) / bearing(s, 0);
    return;
  }
  length = halved(s, falling_middle);
  out->share = moment(s, 0, 0.0, length) / bearing(s, 0);
  out->greatest_kpa = vertical / falling(s, length);
}

rebuilt_contact rebuilt_of(const rebuilt_plan *plan, const rebuilt_sums *sums, rebuilt_pressure pressure) {
  side s = {.plan = plan};
  rebuilt_contact out = {.area_m2 = moment(&s, 0, 0.0, plan->width_m), .share = 1.0};
  double near_kpa, far_kpa;
  double resultant = sums->vertical > 0.0 ? (sums->holds - sums->tips) / sums->vertical : 0.0;
  out.inside = sums->vertical > 0.0 && resultant > 0.0 && resultant < plan->width_m;
  if (plan->even) {
    out.near_m = 0.5 * plan->width_m;
    out.greatest_kpa = sums->vertical / plan->width_m;
    return out;
  }
  if (!out.inside) return out;
  s.rear = resultant * bearing(&s, 0) > bearing(&s, 1);
  s.resultant_m = out.near_m = s.rear ? plan->width_m - resultant : resultant;
  bool all = whole(&s, sums->vertical, &near_kpa, &far_kpa);
  out.greatest_kpa = fmax(near_kpa, far_kpa);
  if (!all) press_part(&s, sums->vertical, &out);
  if (pressure == REBUILT_LINEAR) out.greatest_kpa = fmax(near_kpa, far_kpa);
  if (pressure == REBUILT_EFFECTIVE)
    out.greatest_kpa = sums->vertical / moment(&s, 0, 0.0, halved(&s, even_middle));
  return out;
}
