/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SITE_H
#define LOWWALL_SITE_H

#include <lowwall/case.h>
#include <lowwall/tables.h>

LW_PUBLIC_BEGIN

/* The site: everything a wall meets, in plain SI doubles. Depths count downwards from the top of the wall.
 * INFINITY stands for "nowhere": the last soil's bottom, the depth of water that is not there, a slope that
 * never ends. */

/* An earthquake as a steady push: shares of the weight of whatever it moves. */
typedef struct lw_seismic {
  double horizontal;      /* kh, always to the worse side */
  double vertical;        /* kv, positive upwards: weight counts 1 - kv */
  double height_share;    /* of the plane's height: where what it adds to a thrust acts */
  bool pervious;          /* water below moves by itself; else it moves with the soil */
} lw_seismic;

typedef struct lw_soil {
  double friction_rad, cohesion_kpa;
  double unit_weight_kn_per_m3;            /* moist, where it pushes */
  double light_unit_weight_kn_per_m3;      /* moist, where its weight helps */
  double saturated_unit_weight_kn_per_m3;
  double bottom_m;                         /* of the last soil INFINITY: it goes on */
  double overconsolidation;                /* 1: never loaded more heavily than now */
} lw_soil;

/* Those of the sheet, the wall above, and the posts of a fence in the wind. */
enum { LW_SITE_LOAD_MAX = LW_LOAD_MAX + 2 };

typedef struct lw_site_load {
  lw_load_kind kind;      /* strip, line, point or cap; uniform ones are summed in surcharge_kpa */
  double pressure_kpa;    /* strip */
  double force;           /* line, cap: kN/m; point: kN, taken whole on the metre of wall in front of it */
  double push;            /* cap: outward at its level, kN/m */
  double push_kn_per_m;   /* level, towards the wall: of a line, where a post leans on the ground */
  double near_m, far_m;   /* from the rear of the top of the wall; line and point: both the distance */
  double below_m;         /* of the ground's level there */
  int number;             /* on the sheet, from 1 */
  bool other_wall;        /* not given as a load: the wall above and what it holds up */
} lw_site_load;

typedef struct lw_pad {
  double thickness_m;     /* 0: no pad */
  double width_m;         /* 0: unknown, and the load is not spread */
  double spread;          /* horizontal to vertical, each side: 0.5 */
  double unit_weight_kn_per_m3;
  double allowable_kpa;   /* of the pad's own stone; 0: not known, the ground's value is used */
} lw_pad;

typedef struct lw_site {
  int soil_count;
  lw_soil soil[LW_SOIL_MAX];
  bool backfill_refused;     /* a soil behind whose table row refuses it as backfill */
  bool free_draining;        /* every soil behind is */

  double slope_rad, slope_run_m;     /* ground behind; level beyond the run (INFINITY: never) */
  double soil_below_top_m;           /* the soil's surface at the wall, below its top */
  double front_slope_rad;            /* how the ground falls away in front, positive downwards */

  double surcharge_kpa;              /* the sum of all uniform loads */
  lw_number uniform_kpa[LW_LOAD_MAX];   /* of the load so numbered; known where it is uniform and given */
  int load_count;
  lw_site_load load[LW_SITE_LOAD_MAX];

  double water_depth_m, front_water_depth_m;   /* INFINITY: none */
  double overflow_below_top_m;
  double water_unit_weight_kn_per_m3;
  int drain_outlets;                 /* those that can come out */
  bool outlets_buried;               /* there are some, and they lie below the ground in front */
  bool joints_open, ground_drains;
  double stone_width_m;
  double leading_stone_m;            /* stone as wide as this leads the water of any soil to its way out */
  double level_rad;                  /* ground no steeper than this is level */
  double lean_height_m;              /* people lean on a top that stands more than this above the soil */

  double storm_rain_m, drainable_porosity;         /* 0: no storm */
  double trench_depth_m, trench_distance_m;        /* in front: below the ground, from the toe; 0: none */

  lw_soil footing;
  double base_friction;              /* tan of the angle, least of block on bedding and bedding on pad */
  double base_adhesion_kpa;
  double pad_friction;               /* pad on ground */
  double allowable_bearing_kpa;      /* 0: no value may be assumed */
  lw_pad pad;
  double bed_m;                      /* no pad is named: the levelled bed that is taken; 0: none */
} lw_site;

/* What holds a layer together. */
typedef struct lw_strength {
  double friction_rad, cohesion_kpa;
} lw_strength;

/* Strengths to reckon with in a load case: those that are given, or what a set of factors leaves of them. */
typedef struct lw_strengths {
  lw_strength soil[LW_SOIL_MAX];     /* of the layers of the site, as many as it has */
  lw_strength footing;
  double wall_friction_rad;          /* δ */
  double base_friction, base_adhesion_kpa, pad_friction;
  double joint_friction, joint_shear_kn_per_m, key_strength_kn_per_m;
  bool divided;                      /* of the soil behind: a coefficient that was given belongs to another */
} lw_strengths;

/* The ground in front of the wall in a load case. */
typedef struct lw_front {
  double slope_rad;                  /* positive downwards */
  double embedment_m;                /* base below the ground, for what resists in front */
  double bearing_embedment_m;        /* the same for bearing; 0 when it is not known */
  double dug_m;                      /* what a set of factors digs away before the ground resists */
  bool open;                         /* the site's trench is open: for a slip */
  bool undermined;                   /* by that trench: the wall rests on nothing that is known */
} lw_front;

/* The ground as it is in one load case. */
typedef struct lw_ground {
  lw_strengths design;
  double water_depth_m;              /* behind, below the top of the wall; INFINITY: dry */
  lw_seismic seismic;                /* all 0: no earthquake */
  double level_push;                 /* factor on what pushes the ground level: 1 without partial factors */
  double wind_kn_per_m, wind_distance_m;   /* of a fence behind, by its posts; 0: none */
  lw_front front;
} lw_ground;

/* The handbook's switches, in the order of docs/sheet.md. */
typedef struct lw_method {
  double influence_rad;              /* of the line up from the rear of the base, from the horizontal */
  lw_pressure_method pressure;
  lw_plane_choice plane;
  lw_direction direction;
  lw_counted thrust_vertical, soil_on_heel;
  lw_surcharge_on_heel surcharge_on_heel;
  lw_passive_as passive_as;
  bool passive_as_given;             /* false: the format decides */
  lw_uplift_as uplift_as;
  lw_base_pressure base_pressure;    /* never own: it is settled by the bearing method */
  lw_bearing_method bearing;
  lw_n_gamma n_gamma;
  double n_gamma_value;              /* only where it is given */
  lw_own_or_none depth_factors, inclination_factors;
  lw_bearing_on bearing_on;
  lw_crack crack;
  lw_load_pressure load_pressure;
  double passive_share, uplift_share;
  lw_passive_by passive_by;
  lw_active_by active_by;            /* beside Coulomb only */
  lw_overconsolidation overconsolidation;
  double coefficient;                /* of earth pressure, as given; 0: the formula's */
  double seismic_height;             /* share of the plane's height at which what an earthquake adds acts */
  lw_slip_method slip;
} lw_method;

/** The site of a settled case.
 *  in    c        a settled case
 *        tables   for whether a named soil drains freely or is refused as backfill
 *  out   site */
void lw_site_build(const lw_case *c, const lw_tables *tables, lw_site *site);

/** The switches of a settled case. */
void lw_method_build(const lw_case *c, lw_method *method);

/** Ways out for water, as design of the situations has them: outlets, + 1 open joints, + 1 draining ground;
 *  none unless the retained soil drains freely or the stone is as wide as leads its water. */
int lw_site_ways_out(const lw_site *site);

/** Where water stands with its way out blocked, below the top of the wall: up to the lower of the soil's top
 *  and the overflow, or higher where it stands there anyway. */
double lw_site_blocked_depth(const lw_site *site);

/** How far below the base the wall meets the ground: under the pad, or under the bed; 0: neither.
 *  note  1 Nothing is known of a bed that is only taken: it weighs nothing and spreads no load. */
double lw_site_under(const lw_site *site);

/** The least angle of friction of the soils behind; 0 without any. */
double lw_site_least_friction(const lw_site *site);

/** How far back a line from a foot up into the ground comes out of it, where the ground rises without end.
 *  in    depth_m   of the foot below the ground above it      m   0 or more
 *        run       of the line, back for each metre up        1   0 or more
 *        rise      of the ground, up for each metre back      1   any
 *  gives m; INFINITY where the ground is as steep as the line */
double lw_line_out(double depth_m, double run, double rise);

/** The same where the ground is level beyond slope_run_m of the site. */
double lw_site_line_out(const lw_site *site, double depth_m, double run, double rise);

/** The index of the soil at a depth below the top of the wall; on a boundary, the lower one. */
int lw_site_soil_at(const lw_site *site, double depth_m);

LW_PUBLIC_END

#endif
