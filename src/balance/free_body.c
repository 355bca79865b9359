/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "free_body.h"

#include <lowwall/pressure.h>
#include <math.h>

#include "base/extremes.h"
#include "pressure/elastic_push.h"
#include "pressure/methods.h"
#include "contact.h"
#include "gather.h"
#include "ground.h"
#include "passive.h"

void lw_free_body_start(const lw_push *push, lw_free_body *body) {
  body->status = push->status;
  body->reason = push->reason;
  body->passive_kn_per_m = 0.0;
  body->forces.count = 0;
  body->contact = (lw_contact){0};
  body->faulty = push->faulty;
  if (body->faulty) body->status = LW_NO_SOLUTION;
}

void lw_free_body_end(lw_free_body *body) {
  const lw_contact *c = &body->contact;
  /* A sum is finite only where every one of its terms is. */
  double sum = c->width_m + c->front_m + c->vertical_kn_per_m + c->horizontal_kn_per_m +
               c->resisting_knm_per_m + c->overturning_knm_per_m + c->resultant_m + c->eccentricity_m +
               c->share_in_compression + c->front_kpa + c->rear_kpa + c->greatest_kpa + c->effective_width_m +
               c->uplift_kn_per_m + body->passive_kn_per_m;
  if (isfinite(sum)) return;
  body->faulty = true;
  body->status = LW_NO_SOLUTION;
  body->reason = LW_REASON_NOT_FINITE;
}

/* A curve may differ from the wedge even where every plane agrees. */
static lw_difference difference_of(const lw_push *push) {
  lw_difference of_plane = lw_plane_difference(&push->back.plane);
  bool curved = push->formula == lw_active_routine_of(LW_PRESSURE_COULOMB, LW_ACTIVE_ANNEX_C);
  return curved && of_plane == LW_DIFFER_NOT ? LW_DIFFER_CURVE : of_plane;
}

void lw_free_body_show(const lw_push *push, lw_free_body *body) {
  body->back = push->back;
  body->thrust = push->thrust;
  body->formula = push->formula;
  body->formula_kn_per_m = push->formula_kn_per_m;
  body->rain_kn_per_m = push->by_rain.thrust_kn_per_m;
  body->elastic = push->elastic;
  body->elastic_by = push->elastic_by;
  body->by_formula_kn_per_m =
      push->formula_kn_per_m + lw_elastic_along(&push->elastic, push->thrust.angle_rad);
  body->difference = difference_of(push);
  body->wedge = push->wedge;
  body->wedge_known = push->wedge_known;
  body->wedge_governs = push->wedge_governs;
}

static lw_contact_terms terms_of(const lw_site *site, const lw_ground *ground, const lw_section *section,
                                 bool uplift) {
  lw_heads heads = lw_ground_heads(site, ground, section->height_m);
  return (lw_contact_terms){.front_m = section->contact_front_m,
                            .rear_m = section->contact_rear_m,
                            .contact = section->contact,
                            .underside = section->underside,
                            .rear_head_m = heads.rear_m,
                            .front_head_m = heads.front_m,
                            .uplift = uplift};
}

void lw_free_body_undermine(const lw_load_case *load_case, lw_free_body *body) {
  if (!load_case->ground.front.undermined || body->status != LW_OK) return;
  body->status = LW_NO_SOLUTION;
  body->reason = LW_REASON_UNDERMINED;
}

void lw_free_body_base(const lw_wall *wall, const lw_load_case *load_case, const lw_push *push,
                       lw_free_body *body, const lw_working *working) {
  const lw_ground *ground = &load_case->ground;
  lw_free_body_start(push, body);
  if (body->status != LW_OK) return;
  lw_forces_gather(wall, load_case, &wall->section, push, &body->forces);
  lw_contact_terms terms = terms_of(&wall->site, ground, &wall->section, true);
  lw_contact_solve(wall, &terms, &body->forces, &body->contact, working);
  body->passive_kn_per_m = lw_passive_resistance(wall, ground, 0.0, NULL);
  lw_free_body_end(body);
  lw_free_body_undermine(load_case, body);
}

/* A joint that is open lets the water out; one that is sealed carries it as uplift. */
void lw_free_body_above(const lw_wall *wall, const lw_load_case *load_case, const lw_section *above,
                        const lw_push *push, lw_free_body *body, const lw_working *working) {
  lw_free_body_start(push, body);
  if (body->status != LW_OK) return;
  lw_forces_gather(wall, load_case, above, push, &body->forces);
  lw_contact_terms terms = terms_of(&wall->site, &load_case->ground, above, !wall->site.joints_open);
  terms.shell_m = above->shell_m;
  lw_contact_solve(wall, &terms, &body->forces, &body->contact, working);
  lw_free_body_end(body);
}
