/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_H
#define LOWWALL_WALL_H

#include <lowwall/section.h>
#include <lowwall/site.h>

LW_PUBLIC_BEGIN

/* The wall on its site: what a settled case comes to in plain numbers. Nothing later reads the case. */

/* Wind on a fence that stands on the wall or behind it. Of what is not known, the most. */
typedef struct lw_wall_wind {
  bool present;             /* false: there is no fence, and nothing below holds */
  bool behind;              /* its posts push the ground that the wall holds */
  double height_m;          /* of the fence */
  double pressure_kpa;      /* the factor of a run's end in it */
  double end_factor;
  double push_kn_per_m, distance_m;   /* behind the rear of the top */
} lw_wall_wind;

/* A fence that closes a bed at its back, as it was told; without one nothing below holds. */
typedef struct lw_back_fence {
  bool present;
  lw_number height_m;          /* of one that is said to stand behind the wall */
  lw_number wind_kpa;          /* that it was built for, by the pressure or the exposure given */
  lw_number soil_height_m;     /* of the soil against it, above the lower ground beside it */
  double level_difference_m;   /* of the grounds beside wall and fence; 0: not told */
  double lasting;              /* share of its strength against gusts that it keeps for good */
  double post_spacing_m, post_depth_m, post_width_m;
  lw_number post_moment_knm, post_side_m;   /* what one post resists, or the side of a square one */
  double board_thickness_m, board_span_m;
} lw_back_fence;

/* What compacts the fill, as it was told. */
typedef struct lw_told_plant {
  const lw_plant_row *row;     /* of the plant that is named; NULL: none is */
  lw_number mass_kg, force_kn, width_m;   /* given beside or instead of a name */
  lw_number distance_m, layer_m;          /* as it is kept, and as the fill is laid */
} lw_told_plant;

/* Two walls, one above the other, by the clear distance between them over the height of the lower. */
typedef enum lw_tier_band {
  LW_TIER_NONE,         /* no other wall is known */
  LW_TIER_ALONE,        /* each a wall of its own, apart from a slip */
  LW_TIER_TOGETHER,     /* the upper one loads the lower one */
  LW_TIER_ONE_WALL      /* too near for two */
} lw_tier_band;

typedef struct lw_tier {
  lw_tier_band band;
  bool above;             /* the other wall stands above this one */
  double distance_m;      /* clear, from the back of the lower to the face of the upper */
  double height_m;        /* of the other wall */
  double lower_m;         /* height of the lower of the two */
  double pressure_kpa;    /* of the upper wall and its soil on this one's ground; 0: none */
} lw_tier;

/* Why a slip of wall and ground is looked for, or is not. */
typedef enum lw_slip_cause {
  LW_SLIP_LEVEL_BED,      /* only imported soil on level ground: nothing to slip on */
  LW_SLIP_GROUND_BEHIND,  /* ground held up */
  LW_SLIP_SLOPE,          /* the ground behind or in front slopes */
  LW_SLIP_TIER            /* another wall near */
} lw_slip_cause;

/* What the situations are run on. */
typedef struct lw_wall {
  lw_site site;
  lw_method method;
  double wall_friction_rad; /* δ; a share is of the least friction angle behind */
  char format[LW_NAME_MAX];
  bool people_on_cap;
  lw_wall_wind wind;
  double seismic_horizontal, seismic_vertical;   /* coefficients; both 0: no earthquake is looked at */
  lw_tier tier;
  lw_slip_cause slip_cause;
  double bed_slope_rad;     /* of the ground under a bed that stands on a slope; 0: it does not */
  lw_section section;
  lw_back_fence back_fence;
  lw_told_plant plant;
  double bed_width_m;       /* of a bed, clear, as given; 0: not given, or no bed */
} lw_wall;

/** Site, section and switches of a settled case. */
void lw_wall_build(const lw_case *c, const lw_tables *tables, lw_wall *wall);

LW_PUBLIC_END

#endif
