/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "again.h"

#include "load_cases/situation.h"
#include "load_cases/slip_check.h"
#include "slip/circle.h"
#include "studies/construction.h"
#include "studies/fence_told.h"
#include "studies/narrow.h"
#include "studies/rain_seepage.h"

void lw_again_pushes(const lw_result *result, const lw_working *working) {
  lw_situations_tell(&result->wall, result->tables, &result->situations, working);
}

void lw_again_joint(const lw_result *result, const lw_situation *situation, int joint, lw_free_body *body) {
  lw_situation_joint(&result->wall, situation, joint, body);
}

void lw_again_contact(const lw_result *result, const lw_situation *situation, lw_at at, int joint,
                      const lw_working *working) {
  lw_situation_tell(&result->wall, situation, at, joint, working);
}

bool lw_again_basis(const lw_result *result, const lw_situation *situation, const lw_check *check,
                    lw_basis *basis) {
  return lw_check_basis(&result->wall, result->tables, situation, check, basis);
}

void lw_again_check(const lw_result *result, const lw_basis *basis, const lw_check *check,
                    const lw_working *working) {
  lw_check_tell(basis, result->tables, check, working);
}

static void add_forces(lw_slip_view *view) {
  view->sum = (lw_slip_forces){0};
  for (int i = 0; i < view->list.count; i++) {
    lw_slip_forces *f = &view->force[i], *sum = &view->sum;
    *f = lw_slip_forces_of(&view->list.slice[i], &view->slip.circle, view->seismic, view->slip.bishop);
    sum->driving_kn_per_m += f->driving_kn_per_m;
    sum->shaken_kn_per_m += f->shaken_kn_per_m;
    sum->ordinary_kn_per_m += f->ordinary_kn_per_m;
    sum->bishop_kn_per_m += f->bishop_kn_per_m;
  }
}

bool lw_again_slip(const lw_result *result, const lw_situation *situation, lw_slip_view *view) {
  lw_slip_ground ground;
  const lw_slip *slip = &situation->slip;
  if (!situation->slip_known || slip->status != LW_OK) return false;
  lw_situation_slip_ground(&result->wall, result->tables, situation, &ground);
  const lw_slip_soil *below = &ground.below;
  bool range = below->spare_kn_per_m3 > 0.0;
  view->seismic = ground.seismic_horizontal;
  view->light_kn_per_m3 = range ? below->unit_weight_kn_per_m3 - below->spare_kn_per_m3 : 0.0;
  view->found = lw_slip_factor(slip, result->wall.method.slip);
  if (lw_slip_of_circle(&ground, &slip->circle, LW_SLIP_SHOWN, &view->slip, &view->list) != LW_OK)
    return false;
  add_forces(view);
  return true;
}

void lw_again_slices(const lw_result *result, const lw_slip_view *view, const lw_working *working) {
  lw_slip again;
  (void)lw_slip_of_slices(&view->list, &view->slip.circle, view->seismic, result->wall.method.slip, &again,
                          working);
}

void lw_again_bed(const lw_result *result, const lw_situation *situation, const lw_working *working) {
  lw_situation_bed_write(&result->wall, result->tables, situation, working);
}

void lw_again_study(const lw_result *result, lw_study study, const lw_working *working) {
  lw_rain_seepage seepage;
  switch (study) {
  case LW_STUDY_SEEPAGE: lw_rain_seepage_find(&result->wall, &seepage, working); return;
  case LW_STUDY_CONSTRUCTION:
    lw_construction_write(&result->wall, result->tables, &result->construction, working);
    return;
  case LW_STUDY_NARROW: lw_narrow_write(&result->situations, &result->narrow, working); return;
  case LW_STUDY_FENCE: lw_fence_tell_pushes(&result->fence, working); return;
  case LW_STUDY_POST: lw_fence_tell_post(&result->fence, working); return;
  case LW_STUDY_WIND: lw_fence_tell_wind(&result->wall, &result->fence.on, working); return;
  }
}
