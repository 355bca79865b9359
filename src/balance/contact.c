/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "contact.h"

#include <math.h>

#include "base/extremes.h"
#include "contact_lines.h"
#include "forces.h"
#include "taper.h"

/* A base or joint in equilibrium: resultant, contact in compression, edge pressures, uplift. Moments are
 * about the contact's front edge; what turns the wall forwards overturns, the rest resists. */

static void add_moment(lw_contact *contact, double moment_knm_per_m) {
  if (moment_knm_per_m >= 0.0)
    contact->resisting_knm_per_m += moment_knm_per_m;
  else
    contact->overturning_knm_per_m -= moment_knm_per_m;
}

static void add_force(const lw_method *method, const lw_contact_terms *terms, const lw_force *f,
                      lw_contact *contact) {
  double level = -f->horizontal_kn_per_m * (f->y_m - terms->foot_y_m);
  double upright = f->vertical_kn_per_m * (f->x_m - terms->front_m);
  contact->vertical_kn_per_m += f->vertical_kn_per_m;
  contact->horizontal_kn_per_m += f->horizontal_kn_per_m;
  add_moment(contact, level);
  /* Some books take uplift off the resistance instead of adding it to what overturns. */
  if (f->kind == LW_FORCE_UPLIFT && method->uplift_as == LW_UPLIFT_OFF_RESISTANCE)
    contact->resisting_knm_per_m += upright;
  else
    add_moment(contact, upright);
  if (f->kind == LW_FORCE_UPLIFT) contact->uplift_kn_per_m -= f->vertical_kn_per_m;
}

static lw_contact sum_of(const lw_method *method, const lw_contact_terms *terms, const lw_forces *forces) {
  double width = terms->rear_m - terms->front_m;
  lw_contact sum = {.width_m = width, .area_m2 = width, .front_m = terms->front_m, .taper = terms->contact};
  sum.kern_m = sum.kern_behind_m = width / 6.0;
  if (width > 0.0 && !lw_taper_whole(terms->contact)) lw_taper_measure(terms->contact, &sum);
  for (int i = 0; i < forces->count; i++) add_force(method, terms, &forces->force[i], &sum);
  return sum;
}

double lw_contact_of_third(const lw_contact *contact) {
  return 6.0 * fabs(contact->eccentricity_m) / contact->width_m;
}

/* Edge pressures of a full rectangle. */
static void press_full(const lw_method *method, lw_contact *c, const lw_working *working) {
  double mean = c->vertical_kn_per_m / c->width_m, bend = 6.0 * c->eccentricity_m / c->width_m;
  double near = 0.5 * c->width_m - fabs(c->eccentricity_m);
  bool kern = fabs(bend) <= 1.0 + 1e-12;
  c->share_in_compression = kern ? 1.0 : 3.0 * near / c->width_m;
  c->compressed_m = kern ? c->width_m : 3.0 * near;
  if (method->base_pressure == LW_BASE_EFFECTIVE) {
    c->front_kpa = c->rear_kpa = c->vertical_kn_per_m / c->effective_width_m;
    if (working) lw_contact_line_even(c, working);
  } else if (kern || method->base_pressure == LW_BASE_LINEAR) {
    c->front_kpa = mean * (1.0 + bend);
    c->rear_kpa = mean * (1.0 - bend);
    if (working) lw_contact_line_straight(c, working);
  } else {
    double edge = 2.0 * c->vertical_kn_per_m / (3.0 * near);
    c->front_kpa = c->eccentricity_m > 0.0 ? edge : 0.0;
    c->rear_kpa = c->eccentricity_m > 0.0 ? 0.0 : edge;
    if (working) lw_contact_line_triangle(c, edge, working);
  }
}

/* Hollow blocks bear on two face shells only. Past the kern one shell carries all: its share of the two, less
 * where the resultant is so near the edge that not even that shell is pressed over its whole width. */
static void press_shells(double shell_m, lw_contact *c, const lw_working *working) {
  double half = 0.5 * c->width_m, inner = c->width_m - 2.0 * shell_m, area = 2.0 * shell_m;
  double inertia = (pow(c->width_m, 3) - pow(inner, 3)) / 12.0, kern = inertia / (area * half);
  c->kern_m = c->kern_behind_m = kern;
  double mean = c->vertical_kn_per_m / area, bend = c->eccentricity_m / kern;
  double near = half - fabs(c->eccentricity_m);
  bool whole = fabs(bend) <= 1.0 + 1e-12;
  c->share_in_compression = whole ? 1.0 : lw_smaller(0.5, 1.5 * near / shell_m);
  c->compressed_m = whole ? c->width_m : lw_smaller(shell_m, 3.0 * near);
  double edge =
      near < shell_m / 3.0 ? 2.0 * c->vertical_kn_per_m / (3.0 * near) : 2.0 * c->vertical_kn_per_m / shell_m;
  c->front_kpa = whole ? mean * (1.0 + bend) : (c->eccentricity_m > 0.0 ? edge : 0.0);
  c->rear_kpa = whole ? mean * (1.0 - bend) : (c->eccentricity_m > 0.0 ? 0.0 : edge);
  if (working) lw_contact_line_shells(c, shell_m, working);
}

/* Resultant and pressures that the sums make. */
static void press(const lw_method *method, const lw_contact_terms *terms, lw_contact *contact,
                  const lw_working *working) {
  if (contact->vertical_kn_per_m <= 0.0 || contact->width_m <= 0.0) return;
  double net = contact->resisting_knm_per_m - contact->overturning_knm_per_m;
  contact->resultant_m = net / contact->vertical_kn_per_m;
  contact->eccentricity_m = 0.5 * contact->width_m - contact->resultant_m;
  contact->effective_width_m = contact->width_m - 2.0 * fabs(contact->eccentricity_m);
  contact->inside = contact->effective_width_m > 0.0;
  if (working) lw_contact_line_resultant(contact, working);
  if (!contact->inside) return;
  if (!lw_taper_whole(terms->contact))
    contact->effective_width_m = lw_taper_effective(terms->contact, contact->width_m, contact->resultant_m);
  const lw_working *edges = terms->spreads ? NULL : working;
  bool shells = terms->shell_m > 0.0 && 2.0 * terms->shell_m < contact->width_m;
  if (!lw_taper_whole(terms->contact))
    lw_taper_press(method, terms->contact, shells ? terms->shell_m : 0.0, contact, edges);
  else if (shells)
    press_shells(terms->shell_m, contact, edges);
  else
    press_full(method, contact, edges);
  contact->greatest_kpa = lw_larger(contact->front_kpa, contact->rear_kpa);
}

void lw_contact_balance(const lw_method *method, const lw_contact_terms *terms, const lw_forces *forces,
                        lw_contact *contact, const lw_working *working) {
  *contact = sum_of(method, terms, forces);
  press(method, terms, contact, working);
}

/* Head falls in a straight line from rear to front over the length in compression; the open part behind it
 * carries the full rear head. weight: of water, times what else is on uplift. */
static lw_force uplift_over(const lw_contact_terms *terms, double factor, double weight,
                            double compressed_m) {
  double width = terms->rear_m - terms->front_m, rear = terms->rear_head_m, front = terms->front_head_m;
  if (!lw_taper_whole(terms->contact)) return lw_taper_uplift(terms, factor, weight, compressed_m);
  double open = width - compressed_m;
  double force = 0.5 * (front + rear) * compressed_m + rear * open;
  double moment =
      compressed_m * compressed_m * (front / 6.0 + rear / 3.0) + rear * open * (compressed_m + 0.5 * open);
  return (lw_force){.kind = LW_FORCE_UPLIFT,
                    .factor = factor,
                    .vertical_kn_per_m = -weight * force,
                    .x_m = terms->front_m + (force > 0.0 ? moment / force : 0.0),
                    .y_m = terms->foot_y_m};
}

/* A base that is said to hold its tension does not open. */
static bool opens(const lw_method *method, const lw_contact *contact) {
  if (method->base_pressure == LW_BASE_LINEAR) return false;
  if (contact->vertical_kn_per_m <= 0.0 || contact->resultant_m <= 0.0) return true;
  return contact->eccentricity_m > contact->kern_m;
}

/* What stays in compression of a contact that opens. The reaction stands at a third of that length, and so
 * does all
 * that the head loses over it: together they stand where the reaction would under the full rear head
 * everywhere. One that would tip then opens altogether. */
static double compressed_length(const lw_contact_terms *terms, const lw_contact *others, double full_lift) {
  double width = others->width_m;
  lw_plan_sums under = lw_taper_sums(terms->underside, width);
  double vertical = others->vertical_kn_per_m - full_lift * under.area_m2;
  double net = others->resisting_knm_per_m - others->overturning_knm_per_m - full_lift * under.first_m3;
  if (vertical <= 0.0 || net <= 0.0) return 0.0;
  return lw_smaller(lw_taper_compressed(terms->contact, width, net / vertical), width);
}

/* The contact with uplift beside the other forces. */
static void lift(const lw_method *method, const lw_contact_terms *terms, const lw_contact *others,
                 const lw_force *uplift, lw_contact *contact) {
  *contact = *others;
  add_force(method, terms, uplift, contact);
  press(method, terms, contact, NULL);
}

/* Uplift over what is in compression, told with what follows from it. */
static void tell_lifted(const lw_method *method, const lw_contact_terms *terms, double weight,
                        double compressed_m, lw_contact *contact, const lw_working *working) {
  if (lw_taper_whole(terms->contact))
    lw_contact_line_uplift(terms, weight, compressed_m, contact->uplift_kn_per_m, working);
  else
    lw_taper_line_uplift(terms, weight, compressed_m, contact->uplift_kn_per_m, working);
  press(method, terms, contact, working);
}

void lw_contact_solve(const lw_wall *wall, const lw_contact_terms *terms, lw_forces *forces,
                      lw_contact *contact, const lw_working *working) {
  const lw_method *method = &wall->method;
  bool under = terms->uplift || !lw_taper_whole(terms->contact);
  bool lifts = under && terms->rear_head_m + terms->front_head_m > 0.0 && method->uplift_share > 0.0;
  if (!lifts) {
    lw_contact_balance(method, terms, forces, contact, working);
    return;
  }
  lw_contact others = sum_of(method, terms, forces);
  lw_force *uplift = &forces->force[forces->count++];
  double factor = lw_forces_factor(forces, LW_FORCE_UPLIFT);
  double weight = wall->site.water_unit_weight_kn_per_m3 * method->uplift_share * factor;
  double compressed = others.width_m;
  *uplift = uplift_over(terms, factor, weight, compressed);
  lift(method, terms, &others, uplift, contact);
  if (terms->uplift && opens(method, contact)) {
    compressed = compressed_length(terms, &others, weight * terms->rear_head_m);
    *uplift = uplift_over(terms, factor, weight, compressed);
    lift(method, terms, &others, uplift, contact);
  }
  if (working) tell_lifted(method, terms, weight, compressed, contact, working);
}
