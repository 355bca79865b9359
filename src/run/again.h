/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_RUN_AGAIN_H
#define LOWWALL_RUN_AGAIN_H

#include <lowwall/result.h>

#include "load_cases/basis.h"

/* A result gone through once more, for its reports: they name a contact, a check or a study of it, and get
 * what stands there in full, or are told its steps. No report calls what computes. */

/* The steps to the push on the base, each situation under its heading. */
void lw_again_pushes(const lw_result *result, const lw_working *working);

/* One joint in full, from 1: as lw_situation.base is of the base. */
void lw_again_joint(const lw_result *result, const lw_situation *situation, int joint, lw_free_body *body);

/* The steps from the sums of a contact, which the wall has, to its resultant and pressures. */
void lw_again_contact(const lw_result *result, const lw_situation *situation, lw_at at, int joint,
                      const lw_working *working);

/* What a check of the situation rests on; another load case may stand in its made_in.
 * gives false where it has no numbers, or is in the ground as a whole: then it is not to be used */
bool lw_again_basis(const lw_result *result, const lw_situation *situation, const lw_check *check,
                    lw_basis *basis);
/* The steps of that check; the last has the symbol "has". */
void lw_again_check(const lw_result *result, const lw_basis *basis, const lw_check *check,
                    const lw_working *working);

/* The worst circle in a few slices, for a student to go through. */
enum { LW_SLIP_SHOWN = 8 };
typedef struct lw_slip_view {
  lw_slip slip;
  lw_slip_slices list;
  lw_slip_forces force[LW_SLIP_SLICE_MAX], sum;
  double seismic;         /* kh */
  double light_kn_per_m3; /* of the ground in front where its weight helps; 0: as everywhere */
  double found;           /* the factor of the search, by the method asked for */
} lw_slip_view;
/* gives false where there is none */
bool lw_again_slip(const lw_result *result, const lw_situation *situation, lw_slip_view *view);
/* The steps to the factors of these slices, and how a bed slides down the slope it stands on. */
void lw_again_slices(const lw_result *result, const lw_slip_view *view, const lw_working *working);
void lw_again_bed(const lw_result *result, const lw_situation *situation, const lw_working *working);

/* The steps of what is worked out beside. */
typedef enum lw_study {
  LW_STUDY_SEEPAGE,
  LW_STUDY_CONSTRUCTION,
  LW_STUDY_NARROW,
  LW_STUDY_FENCE,
  LW_STUDY_POST,
  LW_STUDY_WIND
} lw_study;
void lw_again_study(const lw_result *result, lw_study study, const lw_working *working);

#endif
