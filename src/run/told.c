/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "told.h"

#include "again.h"
#include "base/working.h"

/* In the order of the page: the pushes, each contact and its checks, slips, what is worked out beside. */

static void tell_contact(const lw_result *result, const lw_situation *s, lw_at at, int joint,
                         const lw_working *working) {
  char words[24];
  lw_check_print_at(&(lw_check){.at = at, .joint = joint}, words, sizeof words);
  lw_working_heading(working, words);
  lw_again_contact(result, s, at, joint, working);
}

static void tell_contacts(const lw_result *result, const lw_situation *s, const lw_working *working) {
  bool cap = result->wall.section.has_cap;
  if (s->base.status == LW_OK) tell_contact(result, s, LW_AT_BASE, 0, working);
  if (s->pad.status == LW_OK) tell_contact(result, s, LW_AT_PAD, 0, working);
  for (int i = 0; i < s->joint_count; i++) {
    lw_at at = cap && i == s->joint_count - 1 ? LW_AT_CAP : LW_AT_JOINT;
    if (s->joint[i].status == LW_OK) tell_contact(result, s, at, i + 1, working);
  }
}

static void tell_checks(const lw_result *result, const lw_situation *s, const lw_working *working) {
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    lw_basis basis;
    char words[48];
    if (!check.has.known || !lw_again_basis(result, s, &check, &basis)) continue;
    lw_check_words(&check, words, sizeof words);
    lw_working_heading(working, words);
    lw_again_check(result, &basis, &check, working);
  }
}

static void tell_slip(const lw_result *result, const lw_situation *s, const lw_working *working) {
  lw_slip_view view;
  if (!lw_again_slip(result, s, &view)) return;
  lw_working_heading(working, "slip of wall and ground");
  lw_again_slices(result, &view, working);
}

static void tell_studies(const lw_result *result, const lw_working *working) {
  const lw_fence *fence = &result->fence;
  if (result->construction.studied) {
    lw_working_heading(working, "while it is built");
    lw_again_study(result, LW_STUDY_CONSTRUCTION, working);
  }
  if (result->narrow.shown) {
    lw_working_heading(working, "the narrow bed");
    lw_again_study(result, LW_STUDY_NARROW, working);
  }
  if (fence->on.present) {
    lw_working_heading(working, "wind on the fence");
    lw_again_study(result, LW_STUDY_WIND, working);
  }
  if (!fence->back || fence->status != LW_OK) return;
  lw_again_study(result, LW_STUDY_FENCE, working);
  lw_again_study(result, LW_STUDY_POST, working);
}

void lw_run_tell(const lw_result *result, const lw_working *working) {
  const lw_situations *all = &result->situations;
  lw_again_pushes(result, working);
  for (int i = 0; i < all->count; i++) {
    const lw_situation *s = &all->situation[i];
    lw_working_heading(working, lw_situation_sentence(s->name));
    tell_contacts(result, s, working);
    tell_checks(result, s, working);
    tell_slip(result, s, working);
    if (result->wall.bed_slope_rad > 0.0) {
      lw_working_heading(working, "bed sliding downhill");
      lw_again_bed(result, s, working);
    }
  }
  tell_studies(result, working);
}
