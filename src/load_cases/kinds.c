/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "kinds.h"

#include "checks/bearing.h"
#include "checks/compression.h"
#include "checks/key.h"
#include "checks/overturning.h"
#include "checks/sliding.h"

/* The table of check kinds: who adds a check adds a row. DEVELOPERS.md says what else. */

static const lw_check_row ROWS[LW_CHECK_KIND_COUNT] = {
    [LW_CHECK_SLIDING] = {{.slug = "sliding",
                           .title = "sliding",
                           .unit = "kN/m",
                           .demand = "all that pushes to the front",
                           .resistance = "friction, adhesion or joint shear, passive where it is counted",
                           .needs = LW_FACTOR_SLIDING,
                           .or_needs = LW_FACTOR_SLIDING_WITH_PASSIVE,
                           .at = {[LW_AT_BASE] = "sliding on its base",
                                  [LW_AT_PAD] = "sliding under the pad",
                                  [LW_AT_JOINT] = "sliding above course %d",
                                  [LW_AT_CAP] = "cap sliding",
                                  [LW_AT_GROUND] = "bed sliding downhill"},
                           .below_one = "it would slide",
                           .theory = "The checks"},
                          .make = lw_check_sliding,
                          .make_ground = lw_check_bed,
                          .of_strengths = true},
    [LW_CHECK_OVERTURNING] = {{.slug = "overturning",
                               .title = "tipping",
                               .unit = "kN m/m",
                               .demand = "moments that tip",
                               .resistance = "moments that hold back",
                               .needs = LW_FACTOR_OVERTURNING,
                               .or_needs = LW_FACTOR_OVERTURNING,
                               .at = {[LW_AT_BASE] = "tipping over its toe"},
                               .below_one = "it would tip",
                               .theory = "The checks"},
                              .make = lw_check_overturning},
    [LW_CHECK_TILTING] = {{.slug = "tilting",
                           .title = "tipping",
                           .unit = "kN m/m",
                           .demand = "moments that tip",
                           .resistance = "moments that hold back",
                           .needs = LW_FACTOR_OVERTURNING,
                           .or_needs = LW_FACTOR_OVERTURNING,
                           .at = {[LW_AT_JOINT] = "tipping above course %d", [LW_AT_CAP] = "cap tipping"},
                           .below_one = "it would tip",
                           .theory = "The checks"},
                          .make = lw_check_overturning},
    [LW_CHECK_COMPRESSION] =
        {{.slug = "compression",
          .title = "share in compression",
          .unit = "m",
          .demand = "width of the contact, or its area a metre where blocks taper",
          .resistance = "what of it is in compression",
          .needs = LW_FACTOR_COMPRESSION,
          .or_needs = LW_FACTOR_COMPRESSION_WEAK,
          .at = {[LW_AT_BASE] = "base in compression", [LW_AT_JOINT] = "compression above course %d"},
          .of_pressure = true,
          .theory = "The checks"},
         .make = lw_check_compression},
    [LW_CHECK_BEARING] = {{.slug = "bearing",
                           .title = "ground",
                           .unit = "kPa",
                           .demand = "greatest pressure",
                           .resistance = "presumptive value, or what a theory says that the ground bears",
                           .needs = LW_FACTOR_BEARING_PRESUMPTIVE,
                           .or_needs = LW_FACTOR_BEARING_THEORY,
                           .at =
                               {[LW_AT_BASE] = "ground under the base", [LW_AT_PAD] = "ground under the pad"},
                           .below_one = "the ground would give way",
                           .of_pressure = true,
                           .theory = "Bearing"},
                          .make = lw_check_bearing},
    [LW_CHECK_KEY] = {{.slug = "key",
                       .title = "key",
                       .unit = "kN/m",
                       .demand = "what pushes beyond the friction of the joint",
                       .resistance = "`key strength`; not given: not checked",
                       .needs = LW_FACTOR_SLIDING,
                       .or_needs = LW_FACTOR_SLIDING,
                       .at = {[LW_AT_JOINT] = "key above course %d"},
                       .below_one = "the key would break",
                       .theory = "The key of a joint"},
                      .make = lw_check_key,
                      .asked = lw_check_key_given,
                      .of_strengths = true},
    [LW_CHECK_SLIP] = {{.slug = "slip",
                        .title = "slip",
                        .unit = "kN/m",
                        .demand = "what drives along the worst circle or plane",
                        .resistance = "what holds along it",
                        .needs = LW_FACTOR_SLIP,
                        .or_needs = LW_FACTOR_SLIP_DOUBTFUL,
                        .at = {[LW_AT_GROUND] = "slip of wall and ground"},
                        .below_one = "wall and ground would slip together",
                        .theory = "Global slip"},
                       .make_ground = lw_check_slip}};

const lw_check_row *lw_check_row_of(lw_check_kind kind) {
  return &ROWS[kind];
}

const lw_check_about *lw_check_about_of(lw_check_kind kind) {
  return &ROWS[kind].about;
}

const char *lw_check_slug(lw_check_kind kind) {
  return ROWS[kind].about.slug;
}

/* A share of the base says nothing of it. */
bool lw_check_tells_of_movement(const lw_check *check) {
  return ROWS[check->kind].about.below_one != NULL;
}

double lw_check_reserve(const lw_check *check) {
  return check->kind == LW_CHECK_BEARING && check->by ? check->by->reserve : 1.0;
}

/* Where the resultant is outside no pressure says how far from it: the check of tipping has that. */
lw_number lw_check_times(const lw_check *check) {
  bool lost = check->kind == LW_CHECK_BEARING && check->reason == LW_REASON_OUTSIDE_BASE;
  bool known = lw_check_tells_of_movement(check) && check->has.known && !lost;
  return (lw_number){known ? check->has.value * lw_check_reserve(check) : 0.0, known};
}

bool lw_check_is_lost(const lw_check *check) {
  lw_number times = lw_check_times(check);
  return check->reason == LW_REASON_OUTSIDE_BASE || (times.known && times.value < 1.0);
}
