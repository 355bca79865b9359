/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_STAGE_H
#define LOWWALL_CHECKS_STAGE_H

#include <assert.h>
#include <lowwall/compaction.h>

#include "format.h"

/* Whose a part of a thrust is: each has a partial factor of its own. */
typedef enum lw_push_part {
  LW_PART_OF_SOIL,
  LW_PART_OF_SURCHARGE,
  LW_PART_OF_EARTHQUAKE,
  LW_PART_OF_LOADS,  /* at a distance, where the wedge carries them */
  LW_PART_OF_PUSHES, /* level ones on the ground */
  LW_PUSH_PARTS
} lw_push_part;

/* The push on one contact: it depends on soil and water only, so situations with the same water share it. */
typedef struct lw_push {
  lw_status status;
  lw_reason reason; /* why there is none, or what is wrong with a faulty one */
  const lw_pressure_routine *formula;
  double formula_kn_per_m;
  lw_elastic elastic; /* of the loads at a distance, level; not used where the wedge governs */
  lw_load_pressure elastic_by;
  lw_wedge wedge;
  bool wedge_known, wedge_governs, faulty;
  lw_lateral by_loads, by_pushes; /* what loads at a distance and level pushes add to a thrust */
  lw_lateral unloaded;            /* the wedge without both, where it has them; thrust 0: it has none */
  lw_lateral part[LW_PUSH_PARTS]; /* the thrust again, each part along it and at its own height */
  lw_thrust thrust;
  lw_back_plane back;
} lw_push;

/* What a situation puts on the wall besides the soil. */
typedef struct lw_actions {
  double people_down_kn_per_m, people_out_kn_per_m; /* on the front edge of the top */
  bool cap_load; /* the weight of loads of kind cap is on; their push always is */
  lw_factors factors;
} lw_actions;

/* A wedge that was searched, and on which plane. */
typedef struct lw_wedge_known {
  bool known;
  lw_plane plane;
  lw_wedge wedge;
} lw_wedge_known;

/* searched: of a push found before, and replaced by one that is searched here; NULL allowed. Where both
 * planes are the same figure at another size its wedge is scaled instead of searched again. */
void lw_push_find(const lw_wall *wall, const lw_section *section, double extra_depth_m,
                  lw_wedge_known *searched, lw_push *push, const lw_working *working);

/* Divide a thrust among those whose it is: no arm leaves the plane, and the parts make up thrust and
 * moment. */
void lw_push_divide(lw_push *push);

/* What is wrong with a push that was found: a value that is no number, no push where soil stands that cannot
 * stand by itself, a wedge that disagrees. LW_REASON_NONE: nothing. */
lw_reason lw_push_doubt(const lw_wall *wall, const lw_section *section, double extra_depth_m,
                        const lw_push *push);

/* Forces on a section; uplift is added by lw_contact_solve. */
void lw_forces_gather(const lw_wall *wall, const lw_section *section, const lw_push *push,
                      const lw_actions *actions, lw_forces *forces);
/* The partial factor that a kind of force takes from its source. */
double lw_factor_of(const lw_factors *factors, lw_force_kind kind);
/* 1 without any */
static inline double lw_forces_factor(const lw_forces *forces, lw_force_kind kind) {
  return forces->factors.factored ? lw_factor_of(&forces->factors, kind) : 1.0;
}
/* Forces come in through these two, and take their factor on there. */
static inline void lw_forces_put(lw_forces *forces, int index, lw_force force) {
  assert(index >= 0 && index < LW_FORCE_MAX);
  force.factor = lw_forces_factor(forces, force.kind);
  force.horizontal_kn_per_m *= force.factor;
  force.vertical_kn_per_m *= force.factor;
  forces->force[index] = force;
}
static inline void lw_forces_add(lw_forces *forces, lw_force force) {
  lw_forces_put(forces, forces->count++, force);
}
void lw_soil_on_wall(const lw_wall *wall, const lw_section *section, const lw_back_plane *back,
                     lw_forces *forces);
void lw_water_on_outline(const lw_site *site, const lw_section *section, double extra_depth_m,
                         lw_forces *forces);

/* What an earthquake does to a section beside the thrust: inertia of the wall and of what stands on it, and
 * open water. Nothing without one. */
void lw_seismic_on_wall(const lw_site *site, const lw_section *section, const lw_back_plane *back,
                        lw_forces *forces);
/* The inertia of one weight, under an index of its own. */
lw_force lw_seismic_inertia(const lw_site *site, const lw_force *weight, int index);
bool lw_seismic_acts(const lw_site *site);

typedef struct lw_contact_terms {
  double front_m, rear_m; /* of the contact, in the section's x */
  double foot_y_m;        /* moments are about this level: 0, or below it for the pad's underside */
  double shell_m;
  lw_taper contact, underside; /* what bears between these ends, and what has an underside there */
  double rear_head_m, front_head_m; /* of water at its ends; 0: none */
  bool uplift;
} lw_contact_terms;

/* Balance the forces on the contact, uplift and contact made to agree; adds the uplift to the forces. */
void lw_contact_solve(const lw_wall *wall, const lw_contact_terms *terms, lw_forces *forces,
                      lw_contact *contact);
/* Sums, resultant and pressures for the forces as they are. */
void lw_contact_balance(const lw_method *method, const lw_contact_terms *terms, const lw_forces *forces,
                        lw_contact *contact);

/* Whether the push is known, nothing gathered yet. */
void lw_stage_start(const lw_push *push, lw_stage *stage);
/* Balanced: a stage with a value that is no number is faulty and has no answer. */
void lw_stage_end(lw_stage *stage);
void lw_stage_base(const lw_wall *wall, const lw_push *push, const lw_actions *actions, lw_stage *stage);
void lw_stage_pad(const lw_wall *wall, const lw_push *push, const lw_actions *actions, lw_stage *stage);
void lw_stage_above(const lw_wall *wall, const lw_section *above, const lw_push *push,
                    const lw_actions *actions, lw_stage *stage);
/* The push itself, in a stage that somebody looks at: checks need only what is gathered and balanced. */
void lw_stage_show(const lw_push *push, lw_stage *stage);

/* What the checks of one situation share. */
typedef struct lw_check_context {
  const lw_wall *wall;
  const lw_format *format;
  lw_situation_kind kind;
  bool wet; /* water stands behind: buoyant ground under the base */
} lw_check_context;

lw_check lw_check_sliding(const lw_check_context *context, const lw_stage *stage, lw_at at, int joint);
/* Sliding where the set's factor is on the strength of every wedge: the factor at which what is left of the
 * strengths just holds the push that they leave. */
typedef struct lw_wedges {
  const lw_wall *wall; /* as built */
  const lw_format *format;
  const lw_situation *situation; /* its kind, water and earthquake */
  const lw_actions *actions;
  lw_at at;
  int joint; /* 1 is the lowest; the one under the cap too */
} lw_wedges;
lw_check lw_check_sliding_of_wedges(const lw_wedges *wedges);

/* The most that the ground may hold where it is taken without friction; INFINITY: no such limit. */
double lw_sliding_most(const lw_check_context *context, const lw_contact *contact, lw_at at);
lw_check lw_check_overturning(const lw_check_context *context, const lw_stage *stage, lw_at at, int joint);
lw_check lw_check_compression(const lw_check_context *context, const lw_stage *stage, lw_at at, int joint);
/* The strip footing that a theory takes the contact for. */
lw_strip lw_bearing_strip(const lw_check_context *context, const lw_stage *stage, lw_at at);
lw_check lw_check_bearing(const lw_check_context *context, const lw_stage *stage, lw_at at);

lw_number lw_known(double value);
/* has, needs, ratio and whether it holds, from demand and resistance. */
void lw_check_weigh(lw_check *check, const lw_format_row *row, lw_situation_kind kind);
/* A check that has no answer, and why. */
void lw_check_not_shown(lw_check *check, lw_reason reason);

#endif
