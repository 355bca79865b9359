/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_FORCES_H
#define LOWWALL_FORCES_H

#include <lowwall/wall.h>

LW_PUBLIC_BEGIN

/* Forces on one contact, a base, a pad or a joint, and the contact in equilibrium with them. */

/* What acts on a wall or on the courses above a joint. */
typedef enum lw_force_kind {
  LW_FORCE_PART,         /* a part of the section; index is its number in section.part */
  LW_FORCE_SOIL_ON_WALL, /* soil standing on heel, steps or a battered back */
  LW_FORCE_SURCHARGE_ON_WALL,
  LW_FORCE_THRUST, /* of the soil */
  LW_FORCE_SURCHARGE_THRUST,
  LW_FORCE_LOADS_THRUST, /* of loads at a distance: by elasticity, curves, or their part of the wedge */
  LW_FORCE_LEVEL_THRUST, /* of what pushes the ground behind level */
  LW_FORCE_WATER,        /* on the real outline behind */
  LW_FORCE_FRONT_WATER,
  LW_FORCE_UPLIFT,
  LW_FORCE_PEOPLE,
  LW_FORCE_CAP_LOAD,
  LW_FORCE_SEISMIC_THRUST, /* what an earthquake adds to the thrust */
  LW_FORCE_INERTIA,        /* of the wall (index 0), of what stands on it (1), of the pad (2) */
  LW_FORCE_SEISMIC_WATER,  /* open water behind (index 0) and in front (1) */
  LW_FORCE_TRENCH          /* of the ground in front of the pad, against what pushes on the pad's rear side */
} lw_force_kind;

/* Partial factors on what acts, by its source: both parts of one thrust, or of one weight, take the same. */
typedef struct lw_factors {
  bool factored; /* false: everything acts as it is, and the numbers mean nothing */
  double wall_weight, soil_weight, earth_pressure, water, front_water;
  double variable;          /* thrust of loads on the ground behind */
  double level_push;        /* thrust of what pushes the ground level: its factor is on it at its source */
  double variable_on_wall;  /* people, loads on the cap */
  double surcharge_on_wall; /* what presses on a heel: it may be missing there while it pushes behind */
  double trench;            /* the ground in front of the pad, as all that resists by itself in front */
} lw_factors;

/* What a load case puts on the wall besides the soil, and by which factors everything acts. */
typedef struct lw_actions {
  double people_down_kn_per_m, people_out_kn_per_m; /* on the front edge of the top */
  bool cap_load; /* the weight of loads of kind cap is on; their push always is */
  lw_factors factors;
} lw_actions;

typedef struct lw_force {
  lw_force_kind kind;
  double factor;  /* is in the force already: 1 without partial factors */
  int index;      /* of a part; 0 otherwise */
  double area_m2; /* where the force is a weight */
  double unit_weight_kn_per_m3;
  double moved_kn_per_m;      /* weight that an earthquake moves: of soil the heavy one, with its water */
  double horizontal_kn_per_m; /* positive: pushes towards the front */
  double vertical_kn_per_m;   /* positive: presses down */
  double x_m, y_m;            /* where it acts */
} lw_force;

enum { LW_FORCE_MAX = LW_PART_MAX + 32 };

/* Forces gathered on one contact: the base, or a joint. Moments are about its front edge. */
typedef struct lw_forces {
  lw_factors factors;
  int count;
  lw_force force[LW_FORCE_MAX];
} lw_forces;

/* The contact in equilibrium. */
typedef struct lw_contact {
  double width_m, front_m; /* its width, and x of its front edge */
  lw_taper taper;          /* share of the run that bears at its front and at its rear */
  double area_m2;          /* of a metre of run: less than the width under blocks that taper */
  double vertical_kn_per_m, horizontal_kn_per_m;
  double resisting_knm_per_m, overturning_knm_per_m;
  double resultant_m;           /* from the front edge; meaningless when inside is false */
  double eccentricity_m;        /* from the middle, positive towards the front */
  double kern_m, kern_behind_m; /* so far before and behind the middle it presses on all that bears */
  bool inside;                  /* V > 0 and the resultant inside the contact */
  double share_in_compression;  /* 0 to 1, of the area */
  double compressed_m;          /* its length, from the edge that is pressed most */
  double front_kpa, rear_kpa;   /* edge pressures by method base pressure */
  double greatest_kpa;
  double effective_width_m; /* B - 2|e|; of blocks that taper the area about the resultant */
  double uplift_kn_per_m;
} lw_contact;

/** The eccentricity of the resultant over a sixth of the width: 1 or less, and it lies in the middle third.
 *  in    contact   inside is true */
double lw_contact_of_third(const lw_contact *contact);

LW_PUBLIC_END

#endif
