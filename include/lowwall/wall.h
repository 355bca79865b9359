/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_WALL_H
#define LOWWALL_WALL_H

#include <lowwall/case.h>
#include <lowwall/tables.h>

LW_PUBLIC_BEGIN

/* The site: everything a wall meets, in plain SI doubles. Depths count downwards from the top of the wall.
 * INFINITY stands for "nowhere": the last soil's bottom, the depth of water that is not there, a slope that
 * never ends. */

/* An earthquake as a steady push: shares of the weight of whatever it moves. */
typedef struct lw_seismic {
  double horizontal;   /* kh, always to the worse side */
  double vertical;     /* kv, positive upwards: weight counts 1 - kv */
  double height_share; /* of the plane's height: where what it adds to a thrust acts */
  bool pervious;       /* water below moves by itself; else it moves with the soil */
} lw_seismic;

typedef struct lw_soil {
  double friction_rad, cohesion_kpa;
  double unit_weight_kn_per_m3;       /* moist, where it pushes */
  double light_unit_weight_kn_per_m3; /* moist, where its weight helps */
  double saturated_unit_weight_kn_per_m3;
  double bottom_m;          /* of the last soil INFINITY: it goes on */
  double overconsolidation; /* 1: never loaded more heavily than now */
} lw_soil;

/* Those of the sheet, the wall above, and the posts of a fence in the wind. */
enum { LW_SITE_LOAD_MAX = LW_LOAD_MAX + 2 };

typedef struct lw_site_load {
  lw_load_kind kind;    /* strip, line, point or cap; uniform ones are summed in surcharge_kpa */
  double pressure_kpa;  /* strip */
  double force;         /* line, cap: kN/m; point: kN, taken whole on the metre of wall in front of it */
  double push;          /* cap: outward at its level, kN/m */
  double push_kn_per_m; /* level, towards the wall: of a line, where a post leans on the ground */
  double near_m, far_m; /* from the rear of the top of the wall; line and point: both the distance */
  double below_m;       /* of the ground's level there */
  int number;           /* on the sheet, from 1 */
  bool other_wall;      /* not given as a load: the wall above and what it holds up */
} lw_site_load;

/* Cohesion of the natural clay that the wall stands in: a table pairs it with a low angle. In slips and in
 * bearing by theory alone. */
typedef struct lw_paired {
  double cohesion_kpa;                   /* what of it counts; 0: none, and the rest means nothing */
  double depth_m;                        /* below the ground in front, from which it does */
  double shallow_kpa;                    /* what counts above that depth */
  double likely_kpa, likely_shallow_kpa; /* the same by likely values, in either look */
  double slip_without;                   /* what a slip must have with none of it; 0: that is not asked */
} lw_paired;

typedef struct lw_pad {
  double thickness_m; /* 0: no pad */
  double width_m;     /* 0: unknown, and the load is not spread */
  double spread;      /* horizontal to vertical, each side: 0.5 */
  double unit_weight_kn_per_m3;
  double allowable_kpa; /* of the pad's own stone; 0: not known, the ground's value is used */
  bool in_known_ground; /* the ground of its trench has a name or an angle */
} lw_pad;

/* Why a soil behind is refused as backfill. */
typedef enum lw_refused {
  LW_REFUSED_NOT,
  LW_REFUSED_BY_TABLE,
  LW_REFUSED_OUTSIDE_BED, /* plant soil, and real ground is held up */
  LW_REFUSED_TOO_HIGH,    /* plant soil, in a bed that is too high for it */
  LW_REFUSED_DEEP_COMPOST
} lw_refused;

typedef struct lw_site {
  int soil_count;
  lw_soil soil[LW_SOIL_MAX];
  bool backfill_refused;       /* a soil behind is refused as backfill */
  lw_refused refused;          /* the first such, and why */
  int refused_soil;            /* its index */
  bool free_draining;          /* every soil behind is */
  double permeability_m_per_s; /* the least of the soils behind; 0: of one of them it is not known */

  double slope_rad, slope_run_m; /* ground behind; level beyond the run (INFINITY: never) */
  double soil_below_top_m;       /* the soil's surface at the wall, below its top */
  double front_slope_rad;        /* how the ground falls away in front, positive downwards */

  double surcharge_kpa;               /* the sum of all uniform loads */
  lw_number uniform_kpa[LW_LOAD_MAX]; /* of the load so numbered; known where it is uniform and given */
  int load_count;
  lw_site_load load[LW_SITE_LOAD_MAX];

  double water_depth_m, front_water_depth_m; /* INFINITY: none */
  double overflow_below_top_m;
  double water_unit_weight_kn_per_m3;
  int drain_outlets;   /* those that can come out */
  bool outlets_buried; /* there are some, and they lie below the ground in front */
  bool joints_open;    /* from base to top, with no lining behind them */
  bool ground_drains;
  bool water_held; /* a pond or tank behind, that is told */
  bool filtered;   /* something keeps the soil out of the stone */
  double stone_width_m;
  int ways_found;     /* 1 the outlets of the drain, + 1 open joints, + 1 draining ground; outlets and ground
                     only where the soil behind, or stone as wide as leads its water, brings it there */
  int ways_out;       /* the same; without a filter all of them are one */
  double joints_hold; /* share of the height to which a wall with open joints holds water */
  double leading_stone_m; /* stone as wide as this leads the water of any soil to its way out */
  double fine_m_per_s;    /* soil that lets water through no faster is full in any wet week */
  double level_rad;       /* ground no steeper than this is level */
  double reach_run;       /* over rise: what stands within that line up and back from the foot leans on it */
  double lean_height_m;   /* people lean on a top that stands more than this above the soil */

  double storm_rain_m, drainable_porosity;  /* 0: no storm */
  double trench_depth_m, trench_distance_m; /* in front: below the ground, from the toe; 0: none */
  double
      trench_line_fall; /* over run, forwards from the base: a trench inside that line undermines the wall */

  lw_soil footing;
  double bed_friction;  /* tan of the angle: wall on its bed, the less of block on bedding, bedding on pad */
  double base_friction; /* the same, or without a pad the less of that and pad_friction */
  double base_adhesion_kpa;
  double pad_friction;          /* bed or pad on the ground */
  double undrained_kpa;         /* cu of clay there, which holds no more on what bears; 0: it is not known */
  double allowable_bearing_kpa; /* 0: no value may be assumed */
  lw_paired paired;
  lw_pad pad;
} lw_site;

/* What holds a layer together. */
typedef struct lw_strength {
  double friction_rad, cohesion_kpa;
} lw_strength;

/* Strengths to reckon with in a load case: those that are given, or what a set of factors leaves of them. */
typedef struct lw_strengths {
  lw_strength soil[LW_SOIL_MAX]; /* of the layers of the site, as many as it has */
  lw_strength footing;
  double wall_friction_rad;  /* δ of the back */
  double front_friction_rad; /* of the buried face in front */
  double base_friction, base_adhesion_kpa, pad_friction;
  double undrained_kpa; /* cu of the ground right under it; 0: it is not known */
  double paired_kpa;    /* cohesion of the footing that counts in slips and bearing, deep down */
  double shallow_kpa;   /* what of it counts above there */
  double joint_friction, joint_shear_kn_per_m, key_strength_kn_per_m;
  bool divided; /* of the soil behind: a coefficient that was given belongs to another */
} lw_strengths;

/* The ground in front of the wall in a load case. */
typedef struct lw_front {
  double slope_rad;           /* positive downwards */
  double embedment_m;         /* base below the ground, for what resists in front */
  double bearing_embedment_m; /* the same for bearing; 0 when it is not known */
  double dug_m;               /* what a set of factors digs away before the ground resists */
  bool open;                  /* the site's trench is open: for a slip */
  bool undermined;            /* by that trench: the wall rests on nothing that is known */
} lw_front;

/* The ground as it is in one load case. */
typedef struct lw_ground {
  lw_strengths design;
  double water_depth_m; /* behind, below the top of the wall; INFINITY: dry */
  bool led_away;        /* soaked: the water behind is on its way out, and none stands under the wall */
  bool seeping;         /* rain seeps through the soil to a drain at the wall's back */
  lw_seismic seismic;   /* all 0: no earthquake */
  double level_push;    /* factor on what pushes the ground level: 1 without partial factors */
  double wind_kn_per_m, wind_distance_m; /* of a fence behind, by its posts; 0: none */
  double surcharge_kpa; /* uniform load behind: the site's, less where a person stands instead of it */
  double person_kpa, person_near_m, person_far_m; /* that person, as a strip; 0: nobody */
  double wind_below_m;                            /* the ground that they push, below the soil there */
  lw_front front;
} lw_ground;

/* The handbook's switches, in the order of docs/sheet.md. */
typedef struct lw_method {
  double influence_rad; /* of the line up from the rear of the base, from the horizontal */
  lw_pressure_method pressure;
  lw_plane_choice plane;
  lw_direction direction;
  lw_counted thrust_vertical, soil_on_heel, pad_in_trench;
  lw_surcharge_on_heel surcharge_on_heel;
  lw_passive_as passive_as;
  bool passive_as_given; /* false: the set of factors does */
  lw_uplift_as uplift_as;
  lw_base_pressure base_pressure; /* never own: the bearing method decides it */
  lw_bearing_method bearing;
  lw_n_gamma n_gamma;
  double n_gamma_value; /* only where it is given */
  lw_own_or_none depth_factors, inclination_factors;
  lw_bearing_on bearing_on;
  lw_crack crack;
  lw_load_pressure load_pressure;
  double passive_share, uplift_share;
  lw_passive_by passive_by;
  lw_active_by active_by; /* beside Coulomb only */
  lw_overconsolidation overconsolidation;
  double coefficient;    /* of earth pressure, as given; 0: the formula's */
  double seismic_height; /* share of the plane's height at which what an earthquake adds acts */
  lw_slip_method slip;
} lw_method;

/* The wall's section: one metre run of it, cut across. x from the toe towards the retained soil, y up from
 * the base; the toe is the origin. A wall of courses is a stack of rectangles, any other wall a polygon. */

enum { LW_PART_MAX = LW_COURSE_MAX + 2, LW_OUTLINE_MAX = 4 * (LW_COURSE_MAX + 2) };

typedef enum lw_part_kind {
  LW_PART_COURSE,
  LW_PART_CAP,
  LW_PART_SLAB,
  LW_PART_FACE,
  LW_PART_STEM,
  LW_PART_BACK,
  LW_PART_POLYGON
} lw_part_kind;

typedef struct lw_corner {
  double x_m, y_m;
} lw_corner;

typedef struct lw_part {
  lw_part_kind kind;
  int number;               /* of a course, from 1 at the bottom */
  double area_m2, x_m, y_m; /* centroid */
  double unit_weight_kn_per_m3, weight_kn_per_m;
  double front_m, rear_m, bottom_m, top_m; /* its box */
} lw_part;

/* Share of the wall's run that blocks take up, from the front of a strip to its rear, on a straight line in
 * between: 1 and 1 is a full rectangle. */
typedef struct lw_taper {
  double front, rear;
} lw_taper;

typedef struct lw_section {
  double height_m; /* base to top, cap included */
  lw_wall_kind kind;
  double embedment_m;         /* base below the ground in front, for levels and thrust */
  double bearing_embedment_m; /* as given; 0 when assumed: what is not known does not help */
  double base_width_m;
  double back_foot_m; /* x where the back, of a stem on a slab too, meets the level of the base */
  bool known;         /* false: block depth or base width is not given; nothing below is */
  double contact_front_m, contact_rear_m; /* of the base, or of the joint under the lowest course */
  double tail_share;  /* of blocks that taper: length at the rear over that at the face; or 1 */
  bool tails_filled;  /* what stands between two tails is weighed with them */
  lw_taper contact;   /* from contact_front_m to contact_rear_m: what bears */
  lw_taper underside; /* and what has an underside there, that water may push on */
  double shell_m;     /* hollow and unfilled: only the face shells bear, this thick; 0 otherwise */
  lw_corner crest;    /* rear end of the top: where the ground behind meets the wall */
  double rear_m;      /* rearmost x, the cap left out */
  double back_rad;    /* θ of the line from there to the rear of the top, positive when soil lies on it */
  double back_lean;   /* tan θ */
  bool has_cap, cap_bonded;
  double cap_front_m; /* x of the cap's front edge */
  double cap_overhang_m, cap_depth_m, cap_height_m;
  double joint_friction, joint_shear_kn_per_m;
  double key_strength_kn_per_m; /* of the key or lip of a joint; 0: not given, and not checked */
  int course_count;             /* 0 for a polygon */
  int part_count, outline_count;
  lw_part part[LW_PART_MAX];         /* from the bottom up */
  lw_corner outline[LW_OUTLINE_MAX]; /* counter-clockwise, starting at the toe; no cap overhang */
} lw_section;

/* The wall on its site: what a complete case comes to in plain numbers. Nothing later reads the case. */

/* Wind on a fence that stands on the wall or behind it. Of what is not known, the most. */
typedef struct lw_wall_wind {
  bool present;        /* false: there is no fence, and nothing below holds */
  bool behind;         /* its posts push the ground that the wall holds */
  double height_m;     /* of the fence */
  double pressure_kpa; /* the factor of a run's end in it */
  double end_factor;
  double push_kn_per_m, distance_m; /* behind the rear of the top */
  double below_m; /* the ground that holds the posts, below the soil there: a bed's soil holds none */
} lw_wall_wind;

/* One person at the edge of a bed that is only planted, spread along the wall. */
typedef struct lw_wall_person {
  bool present;                       /* false: nothing below holds */
  double planted_kpa;                 /* the part of the uniform load that the person stands instead of */
  double force_kn, side_m;            /* on a square */
  double length_m;                    /* of wall that it spreads to */
  double pressure_kpa, near_m, far_m; /* what comes of it: a strip behind the rear of the top */
} lw_wall_person;

/* A fence that closes a bed at its back, as it was told; without one nothing below holds. */
typedef struct lw_back_fence {
  bool present;
  lw_number height_m;        /* of one that is said to stand behind the wall */
  lw_number wind_kpa;        /* that it was built for, by the pressure or the exposure given */
  lw_number soil_height_m;   /* of the soil against it, above the lower ground beside it */
  double level_difference_m; /* of the grounds beside wall and fence; 0: not told */
  double lasting;            /* share of its strength against gusts that it keeps for good */
  double post_spacing_m, post_depth_m, post_width_m;
  lw_number post_moment_knm, post_side_m; /* what one post resists, or the side of a square one */
  double board_thickness_m, board_span_m;
} lw_back_fence;

/* What compacts the fill, as it was told. */
typedef struct lw_told_plant {
  const lw_plant_row *row;              /* of the plant that is named; NULL: none is */
  lw_number mass_kg, force_kn, width_m; /* given beside or instead of a name */
  lw_number distance_m, layer_m;        /* as it is kept, and as the fill is laid */
} lw_told_plant;

/* Two walls, one above the other, by the clear distance between them over the height of the lower. */
typedef enum lw_tier_band {
  LW_TIER_NONE,     /* no other wall is known */
  LW_TIER_ALONE,    /* each a wall of its own, apart from a slip */
  LW_TIER_TOGETHER, /* the upper one loads the lower one */
  LW_TIER_ONE_WALL  /* too near for two */
} lw_tier_band;

typedef struct lw_tier {
  lw_tier_band band;
  bool above;          /* the other wall stands above this one */
  double distance_m;   /* clear, from the back of the lower to the face of the upper */
  double height_m;     /* of the other wall */
  double lower_m;      /* height of the lower of the two */
  double pressure_kpa; /* of the upper wall and its soil on this one's ground; 0: none */
} lw_tier;

/* Why a slip of wall and ground is looked for, or is not. */
typedef enum lw_slip_cause {
  LW_SLIP_LEVEL_BED,     /* only imported soil on level ground: nothing to slip on */
  LW_SLIP_GROUND_BEHIND, /* ground held up */
  LW_SLIP_SLOPE,         /* the ground behind or in front slopes */
  LW_SLIP_TIER           /* another wall near */
} lw_slip_cause;

/* Why a set of factors that asks for more on doubtful ground does so. */
#define LW_DOUBTS(X) \
  X(NONE, "none", "") \
  X(NOT_NAMED, "not-named", "the ground under the base is not named or tested") \
  X(WEAK, "weak", "the ground under the base bears little") \
  X(FILL_NOT_NAMED, "fill-not-named", "the soil behind is not named or tested") \
  X(BUILDING, "building", "a building stands in reach of it") \
  X(BUILDING_NOT_TOLD, "building-not-told", "nobody said how far the nearest building is")
typedef enum lw_doubt {
#define LW_DOUBT_NAME(name, slug, words) LW_DOUBT_##name,
  LW_DOUBTS(LW_DOUBT_NAME)
#undef LW_DOUBT_NAME
      LW_DOUBT_COUNT
} lw_doubt;

/* What the situations are run on. */
typedef struct lw_wall {
  lw_site site;
  lw_method method;
  double wall_friction_rad;  /* δ of the back; a share is of the least friction angle behind */
  double front_friction_rad; /* of other faces: the same where the sheet gives it, else 0 */
  char factor_set[LW_NAME_MAX];
  bool people_on_cap;
  lw_wall_wind wind;
  lw_wall_person person;
  double seismic_horizontal, seismic_vertical; /* coefficients; both 0: no earthquake is looked at */
  lw_tier tier;
  lw_slip_cause slip_cause;
  double bed_slope_rad; /* of the ground under a bed that stands on a slope; 0: it does not */
  lw_section section;
  lw_doubt base_doubt, slip_doubt; /* about what the base stands on; about all that a slip cuts */
  lw_back_fence back_fence;
  lw_told_plant plant;
  double bed_width_m;                              /* of a bed, clear, as given; 0: not given, or no bed */
  double weight_kn_per_m, weight_moment_knm_per_m; /* of the section, about its toe; 0: it is not known */
} lw_wall;

LW_PUBLIC_END

#endif
