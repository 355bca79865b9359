/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pad.h"

#include <assert.h>
#include <math.h>

#include "base/tell.h"
#include "base/working.h"
#include "soil/site.h"
#include "contact.h"
#include "forces.h"
#include "gather.h"
#include "ground.h"
#include "inertia.h"
#include "pad_trench.h"
#include "passive.h"
#include "free_body.h"
#include "taper.h"

/* The underside of the pad: the thrust covers the pad's thickness too, the load spreads through it from the
 * effective width of the base, and the pad's own weight within the spread is added. */

/* Width of the spread about the resultant, kept within the pad; the pad stands evenly under the base. */
static double spread_width(const lw_wall *wall, double resultant_m, double effective_m,
                           const lw_working *working) {
  const lw_pad *pad = &wall->site.pad;
  lw_step step = {.symbol = "Bs",
                  .formula = "B', nothing being known that spreads it",
                  .value = effective_m,
                  .unit = "m"};
  if (pad->width_m <= 0.0) {
    lw_working_line(working, &step, "%.4f", lw_tell(working, "m", effective_m));
    return effective_m;
  }
  double base = wall->section.base_width_m, beyond = 0.5 * (pad->width_m - base);
  double room = fmin(resultant_m + beyond, base + beyond - resultant_m);
  double spread = effective_m + 2.0 * pad->spread * pad->thickness_m;
  step.value = fmin(spread, 2.0 * room);
  step.formula =
      spread <= 2.0 * room ? "B' + 2 x spread x thickness" : "twice the way to the pad's nearer edge";
  if (spread <= 2.0 * room)
    lw_working_line(working, &step, "%.4f + 2 x %.4f x %.4f", lw_tell(working, "m", effective_m), pad->spread,
                    lw_tell(working, "m", pad->thickness_m));
  else
    lw_working_line(working, &step, "2 x %.4f", lw_tell(working, "m", room));
  return step.value;
}

static lw_force pad_weight(const lw_pad *pad, double width_m, double middle_m) {
  return (lw_force){.kind = LW_FORCE_PART,
                    .index = -1,
                    .area_m2 = width_m * pad->thickness_m,
                    .unit_weight_kn_per_m3 = pad->unit_weight_kn_per_m3,
                    .moved_kn_per_m = width_m * pad->thickness_m * pad->unit_weight_kn_per_m3,
                    .vertical_kn_per_m = width_m * pad->thickness_m * pad->unit_weight_kn_per_m3,
                    .x_m = middle_m,
                    .y_m = -0.5 * pad->thickness_m};
}

/* The load comes from the blocks: where they taper, from no more than their own effective area. */
static double effective_width(const lw_section *section, const lw_contact *contact) {
  if (lw_taper_whole(section->contact)) return contact->effective_width_m;
  double width = section->contact_rear_m;
  return fmin(contact->effective_width_m, lw_taper_effective(section->contact, width, contact->resultant_m));
}

/* The pad's stone within a width, and what an earthquake makes of it. */
static void put_pad(const lw_force *weight, const lw_seismic *seismic, int at, lw_forces *forces) {
  lw_forces_put(forces, at, *weight);
  if (lw_seismic_acts(seismic)) lw_forces_put(forces, at + 1, lw_seismic_inertia(seismic, weight, 2));
}

/* Before the lower part of the pad, where ground holds most: of the moment that the rear side makes it takes
 * rather too little. */
static void put_trench(const lw_wall *wall, const lw_ground *ground, const lw_push *push, lw_forces *forces,
                       const lw_working *working) {
  double held = lw_pad_held_in_trench(wall, ground, push, forces, working);
  if (held <= 0.0) return;
  lw_forces_add(forces, (lw_force){.kind = LW_FORCE_TRENCH,
                                   .horizontal_kn_per_m = -held,
                                   .y_m = -2.0 / 3.0 * wall->site.pad.thickness_m});
}

static void press_evenly(lw_contact *contact, double width_m, const lw_working *working) {
  contact->width_m = contact->area_m2 = contact->compressed_m = width_m;
  contact->effective_width_m = width_m;
  contact->kern_m = contact->kern_behind_m = width_m / 6.0;
  contact->eccentricity_m = 0.0;
  contact->share_in_compression = 1.0;
  contact->inside = contact->vertical_kn_per_m > 0.0 && width_m > 0.0;
  contact->greatest_kpa = contact->inside ? contact->vertical_kn_per_m / width_m : 0.0;
  contact->front_kpa = contact->rear_kpa = contact->greatest_kpa;
  lw_step even = {.symbol = "p", .formula = "V/Bs", .value = contact->greatest_kpa, .unit = "kPa, evenly"};
  lw_working_line(working, &even, "%.4f / %.4f", lw_tell(working, "kN/m", contact->vertical_kn_per_m),
                  lw_tell(working, "m", width_m));
}

static lw_contact_terms terms_of(const lw_wall *wall, const lw_ground *ground) {
  double under = wall->section.height_m + wall->site.pad.thickness_m;
  lw_heads heads = lw_ground_heads(&wall->site, ground, under);
  return (lw_contact_terms){.front_m = 0.0,
                            .rear_m = wall->section.base_width_m,
                            .foot_y_m = -wall->site.pad.thickness_m,
                            .contact = {1.0, 1.0},
                            .underside = {1.0, 1.0},
                            .uplift = true,
                            .spreads = true,
                            .rear_head_m = heads.rear_m,
                            .front_head_m = heads.front_m};
}

static void balance(const lw_wall *wall, const lw_load_case *load_case, const lw_push *push,
                    lw_free_body *body, const lw_working *working) {
  const lw_ground *ground = &load_case->ground;
  const lw_pad *pad = &wall->site.pad;
  lw_forces_gather(wall, load_case, &wall->section, push, &body->forces);
  lw_contact_terms terms = terms_of(wall, ground);
  /* The stone under the base takes part in the balance; what lies within the spread is weighed after. */
  int at = body->forces.count;
  lw_force weight = pad_weight(pad, wall->section.base_width_m, 0.5 * wall->section.base_width_m);
  body->forces.count += lw_seismic_acts(&ground->seismic) ? 2 : 1;
  put_pad(&weight, &ground->seismic, at, &body->forces);
  put_trench(wall, ground, push, &body->forces, working);
  lw_contact_solve(wall, &terms, &body->forces, &body->contact, working);
  body->passive_kn_per_m = lw_passive_resistance(wall, ground, wall->site.pad.thickness_m, NULL);
  if (!body->contact.inside) return;
  double effective = effective_width(&wall->section, &body->contact);
  double width = spread_width(wall, body->contact.resultant_m, effective, working);
  weight = pad_weight(pad, width, body->contact.resultant_m);
  put_pad(&weight, &ground->seismic, at, &body->forces);
  lw_contact_balance(&wall->method, &terms, &body->forces, &body->contact, NULL);
  press_evenly(&body->contact, width, working);
}

void lw_free_body_pad(const lw_wall *wall, const lw_load_case *load_case, const lw_push *push,
                      lw_free_body *body, const lw_working *working) {
  assert(wall->site.pad.thickness_m > 0.0);
  lw_free_body_start(push, body);
  if (body->status != LW_OK) return;
  balance(wall, load_case, push, body, working);
  lw_free_body_end(body);
  lw_free_body_undermine(load_case, body);
}
