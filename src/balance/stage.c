/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "stage.h"

#include <lowwall/pressure.h>
#include <math.h>

#include "base/extremes.h"
#include "pressure/elastic_push.h"
#include "pressure/methods.h"
#include "contact.h"
#include "gather.h"
#include "passive.h"

void lw_stage_start(const lw_push *push, lw_stage *stage) {
  stage->status = push->status;
  stage->reason = push->reason;
  stage->passive_kn_per_m = 0.0;
  stage->forces.count = 0;
  stage->contact = (lw_contact){0};
  stage->faulty = push->faulty;
  if (stage->faulty) stage->status = LW_NO_SOLUTION;
}

void lw_stage_end(lw_stage *stage) {
  const lw_contact *c = &stage->contact;
  /* A sum is finite only where every one of its terms is. */
  double sum = c->width_m + c->front_m + c->vertical_kn_per_m + c->horizontal_kn_per_m +
               c->resisting_knm_per_m + c->overturning_knm_per_m + c->resultant_m + c->eccentricity_m +
               c->share_in_compression + c->front_kpa + c->rear_kpa + c->greatest_kpa + c->effective_width_m +
               c->uplift_kn_per_m + stage->passive_kn_per_m;
  if (isfinite(sum)) return;
  stage->faulty = true;
  stage->status = LW_NO_SOLUTION;
  stage->reason = LW_REASON_NOT_FINITE;
}

/* A curve may differ from the wedge even where every plane agrees. */
static lw_difference difference_of(const lw_push *push) {
  lw_difference of_plane = lw_plane_difference(&push->back.plane);
  bool curved = push->formula == lw_active_routine_of(LW_PRESSURE_COULOMB, LW_ACTIVE_ANNEX_C);
  return curved && of_plane == LW_DIFFER_NOT ? LW_DIFFER_CURVE : of_plane;
}

void lw_stage_show(const lw_push *push, lw_stage *stage) {
  stage->back = push->back;
  stage->thrust = push->thrust;
  stage->formula = push->formula;
  stage->formula_kn_per_m = push->formula_kn_per_m;
  stage->elastic = push->elastic;
  stage->elastic_by = push->elastic_by;
  stage->by_formula_kn_per_m =
      push->formula_kn_per_m + lw_elastic_along(&push->elastic, push->thrust.angle_rad);
  stage->difference = difference_of(push);
  stage->wedge = push->wedge;
  stage->wedge_known = push->wedge_known;
  stage->wedge_governs = push->wedge_governs;
}

static double head(double section_height_m, double depth_m) {
  return lw_larger(section_height_m - depth_m, 0.0);
}

static lw_contact_terms terms_of(const lw_site *site, const lw_ground *ground, const lw_section *section,
                                 bool uplift) {
  return (lw_contact_terms){.front_m = section->contact_front_m,
                            .rear_m = section->contact_rear_m,
                            .contact = section->contact,
                            .underside = section->underside,
                            .rear_head_m = head(section->height_m, ground->water_depth_m),
                            .front_head_m = head(section->height_m, site->front_water_depth_m),
                            .uplift = uplift};
}

void lw_stage_undermine(const lw_load_case *load_case, lw_stage *stage) {
  if (!load_case->ground.front.undermined || stage->status != LW_OK) return;
  stage->status = LW_NO_SOLUTION;
  stage->reason = LW_REASON_UNDERMINED;
}

void lw_stage_base(const lw_wall *wall, const lw_load_case *load_case, const lw_push *push, lw_stage *stage,
                   const lw_working *working) {
  const lw_ground *ground = &load_case->ground;
  lw_stage_start(push, stage);
  if (stage->status != LW_OK) return;
  lw_forces_gather(wall, load_case, &wall->section, push, &stage->forces);
  lw_contact_terms terms = terms_of(&wall->site, ground, &wall->section, true);
  lw_contact_solve(wall, &terms, &stage->forces, &stage->contact, working);
  stage->passive_kn_per_m = lw_passive_resistance(wall, ground, 0.0, NULL);
  lw_stage_end(stage);
  lw_stage_undermine(load_case, stage);
}

/* A joint that is open lets the water out; one that is sealed carries it as uplift. */
void lw_stage_above(const lw_wall *wall, const lw_load_case *load_case, const lw_section *above,
                    const lw_push *push, lw_stage *stage, const lw_working *working) {
  lw_stage_start(push, stage);
  if (stage->status != LW_OK) return;
  lw_forces_gather(wall, load_case, above, push, &stage->forces);
  lw_contact_terms terms = terms_of(&wall->site, &load_case->ground, above, !wall->site.joints_open);
  terms.shell_m = above->shell_m;
  lw_contact_solve(wall, &terms, &stage->forces, &stage->contact, working);
  lw_stage_end(stage);
}
