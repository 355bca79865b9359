/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_FENCE_H
#define LOWWALL_FENCE_H

#include <lowwall/checks.h>

LW_PUBLIC_BEGIN

/* A fence that is to carry soil, and wind on a fence. Per metre run of fence unless a name says post. */

/* What pushes a fence is measured in four ways; one alone misleads. */
#define LW_FENCE_MEASURES(X) \
  X(BOARD, "board", "pressure on the boards", "kPa") \
  X(SHEAR, "shear", "push at the ground", "kN/m") \
  X(GROUND, "ground", "moment at the ground", "kN m/m") \
  X(HOLE, "hole", "moment at the hole's bottom", "kN m/m")
typedef enum lw_fence_measure {
#define LW_FENCE_MEASURE_NAME(name, slug, words, unit) LW_FENCE_##name,
  LW_FENCE_MEASURES(LW_FENCE_MEASURE_NAME)
#undef LW_FENCE_MEASURE_NAME
  LW_FENCE_MEASURE_COUNT
} lw_fence_measure;

/* The bed as it presses: at rest, the same with its outlet blocked, and, as information only, yielding. */
#define LW_FENCE_STATES(X) X(DRY, "dry") X(BLOCKED, "blocked") X(YIELDING, "yielding")
typedef enum lw_fence_state {
#define LW_FENCE_STATE_NAME(name, slug) LW_FENCE_##name,
  LW_FENCE_STATES(LW_FENCE_STATE_NAME)
#undef LW_FENCE_STATE_NAME
  LW_FENCE_STATE_COUNT
} lw_fence_state;

typedef struct lw_fence_push { double of[LW_FENCE_MEASURE_COUNT]; } lw_fence_push;

/* Level soil against boards, standing on the lower of the two grounds. */
typedef struct lw_fence_bed {
  double height_m;                     /* of the soil above that ground */
  double coefficient;                  /* K0, or Ka where the boards may lean */
  double unit_weight_kn_per_m3, saturated_unit_weight_kn_per_m3, water_unit_weight_kn_per_m3;
  double surcharge_kpa;
  double water_depth_m;                /* below the soil's surface; INFINITY: none */
  double hole_m;                       /* depth of the post hole below the ground */
} lw_fence_bed;

typedef struct lw_fence_gust { double pressure_kpa, height_m, hole_m; } lw_fence_gust;

/** The coefficients of soil behind a fence: at rest, and where the boards may lean.
 *  in    friction_rad   φ   rad   0 ≤ φ < π/2
 *  from  [JAKY1944 coefficient]; [RANKINE1857 level ground]; tested by tests/handbook/fence.csv */
double lw_fence_at_rest(double friction_rad, const lw_working *working);
double lw_fence_yielding(double friction_rad, const lw_working *working);

/** Pressure, push and moments of soil on a fence.
 *  out   push   greatest pressure (at the ground), push and moment at the ground, moment about the bottom of
 *               the post hole: M + V L
 *  note  1 K (γ z + q); below water K (γsat - γw) and the water itself.
 *  from  [RANKINE1857 level ground] with [JAKY1944 coefficient] for K; tested by tests/handbook/fence.csv */
void lw_fence_soil_push(const lw_fence_bed *bed, lw_fence_push *push, const lw_working *working);

/** The same of wind on the whole face: p, p Hf, p Hf²/2, p Hf (Hf/2 + L).
 *  from  statics; tested by tests/handbook/fence.csv */
void lw_fence_wind_push(const lw_fence_gust *gust, lw_fence_push *push, const lw_working *working);

/** The height of soil at which one measure comes to a share of the wind's.
 *  in    bed      its height is not used
 *        wind     the push to be met
 *        share    0 < share; 1: equal to the wind
 *  out   height   unchanged on failure; 0 where the load on the bed alone is enough
 *  gives LW_OK · LW_NO_SOLUTION when no height below 100 m does it
 *  note  1 Dry: boards (p/K - q)/γ, push (√(q² + 2 γ p Hf/K) - q)/γ, without load the moment at the ground
 *          ∛(3 p Hf²/(K γ)). Otherwise a root.
 *  from  statics; tested by tests/handbook/fence.csv */
lw_status lw_fence_equal_height(const lw_fence_bed *bed, const lw_fence_push *wind, lw_fence_measure measure,
                                double share, double *height);

/* A post in the ground that it leans against. */
typedef struct lw_fence_hole {
  double depth_m, width_m;
  double friction_rad, unit_weight_kn_per_m3;
  double lateral_kpa_per_m;            /* what the code lets the ground bear, a metre of depth */
} lw_fence_hole;

/** The push that tips a short stiff post in ground without cohesion: γ b L³ Kp / (2 (e + L)).
 *  in    arm_m   height of the push above the ground, e   0 or more
 *  note  1 The ultimate push of one post; the head is free to turn.
 *        2 Concrete that fills the hole counts with its width. Water in the ground halves it, about.
 *  from  [BROMS1964 short free-headed piles]; tested by tests/handbook/fence.csv */
double lw_fence_broms(const lw_fence_hole *hole, double arm_m, const lw_working *working);

/** The depth a code asks of a post without restraint at the ground: d = A/2 (1 + √(1 + 4.36 h/A)) with
 *  A = 2.34 P/(S b).
 *  in    push_kn     of one post, P
 *        arm_m       its height above the ground, h
 *        width_m     b
 *        allowed_kpa S, at a third of the depth
 *  gives d [m]
 *  from  [IBC 1807.3.2.1]; tested by tests/handbook/fence.csv */
double lw_fence_code_depth(double push_kn, double arm_m, double width_m, double allowed_kpa);

/** The push that the same formula allows a post of that depth, S taken at a third of it.
 *  from  [IBC 1807.3.2.1] turned round; tested by tests/handbook/fence.csv */
double lw_fence_code_push(const lw_fence_hole *hole, double arm_m, const lw_working *working);

/** Depth at which the ground holds a push, by Broms over `factor`, and by the code.
 *  out   depth   unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION when 20 m are not enough */
lw_status lw_fence_broms_depth(const lw_fence_hole *hole, double push_kn, double arm_m, double factor,
                               double *depth);
lw_status lw_fence_code_depth_of(const lw_fence_hole *hole, double push_kn, double arm_m, double *depth);

/** Greatest bending stress in a board on two supports under an even pressure: w s²/8 over t²/6.
 *  gives it in kPa */
double lw_fence_board_stress(double pressure_kpa, double span_m, double thickness_m,
                             const lw_working *working);

/** Moment that a square post of solid timber resists: f b³/6.
 *  gives it in kN m of one post */
double lw_fence_post_moment(double strength_kpa, double side_m);

/* What pushes one post, spacing included: the bed, the bed with its outlet blocked, the wind, bed and
 * wind. */
#define LW_FENCE_LOADS(X) \
  X(SOIL, "soil") X(WET_SOIL, "wet_soil") X(WIND, "wind") X(SOIL_AND_WIND, "soil_and_wind")
typedef enum lw_fence_load {
#define LW_FENCE_LOAD_NAME(name, slug) LW_FENCE_##name,
  LW_FENCE_LOADS(LW_FENCE_LOAD_NAME)
#undef LW_FENCE_LOAD_NAME
  LW_FENCE_LOAD_COUNT
} lw_fence_load;

typedef struct lw_fence_post_load {
  double push_kn, arm_m, moment_knm;      /* at the ground; the push acts at arm_m above it */
  double broms_kn, code_kn;               /* what tips the post at that arm, what the code allows there */
  double has;                             /* Broms over the push */
  lw_number broms_depth_m, code_depth_m;  /* hole for `needs` by Broms, and by the code */
  lw_number moment_has;                   /* what the post itself resists over the moment, soil factored */
} lw_fence_post_load;

typedef struct lw_fence_post {
  double spacing_m;
  lw_fence_hole hole;
  double needs;                           /* of `has` */
  double soil_factor;                     /* on the soil's moment, for the post and the boards */
  lw_number gust_knm, lasting_knm;        /* what the post resists; not known without the post */
  lw_fence_post_load load[LW_FENCE_LOAD_COUNT];
} lw_fence_post;

typedef struct lw_fence_boards {
  double thickness_m, span_m;
  double stress_kpa, blocked_stress_kpa;       /* at the foot of the fence */
  double allowed_kpa;                          /* of softwood under a load that stays */
  double has, blocked_has;
} lw_fence_boards;

/* Wind on a fence on the wall or behind it. */
typedef struct lw_fence_wind {
  bool present, on_wall;
  double height_m, pressure_kpa, end_factor;   /* the pressure with the factor in it */
  double force_kn_per_m;                       /* p Hf */
  double foot_moment_knm_per_m;                /* about the fence's foot */
  double toe_moment_knm_per_m;                 /* of a fence on the wall, about the wall's toe */
  lw_number wall_moment_knm_per_m;             /* of the wall's own weight, about its toe */
  double distance_m;                           /* of a fence behind */
  double keep_off_m;                           /* common practice */
  lw_number clear_m;      /* from here on the drained wedge does not take the push; by lw_fence_clear */
} lw_fence_wind;

typedef struct lw_fence {
  bool back;              /* a fence is given as the back of the bed */
  lw_status status;       /* not LW_OK: the height of the soil there is not known, nothing of it holds */
  lw_reason reason;
  bool height_known, exposure_known;           /* of the fence at the back, and of its wind */
  lw_fence_bed bed;       /* at rest, dry */
  double yielding_coefficient, friction_rad;
  double blocked_water_m; /* with the outlet blocked, below the soil's surface at the fence */
  lw_fence_gust built_for;
  double lasting;         /* share of its strength against gusts that the fence keeps for good */
  lw_fence_push wind, soil[LW_FENCE_STATE_COUNT];
  double ratio[LW_FENCE_STATE_COUNT][LW_FENCE_MEASURE_COUNT];      /* soil over wind */
  /* The same over what is left for good; the ground around the hole is no timber and keeps its own. */
  double lasting_ratio[LW_FENCE_STATE_COUNT][LW_FENCE_MEASURE_COUNT];
  lw_number equal_m[LW_FENCE_STATE_COUNT][LW_FENCE_MEASURE_COUNT];
  lw_number lasting_equal_m[LW_FENCE_STATE_COUNT][LW_FENCE_MEASURE_COUNT];
  lw_fence_post post;
  lw_fence_boards boards;
  lw_fence_wind on;       /* the wind on the wall, or behind it */
} lw_fence;

/** The fence at the back and that on the wall or behind it: soil beside its wind, and wind on the wall.
 *  in    wall   as lw_wall_build made it
 *  out   fence  back and on.present are false where the sheet has no such fence; equal heights, post
 *               and boards are not found */
void lw_fence_weigh(const lw_wall *wall, const lw_tables *tables, lw_fence *fence);
/** Heights of soil found by root, posts and boards, for a report.
 *  in    fence  as lw_fence_weigh left it
 *  out   fence  equal_m, lasting_equal_m, post and boards, where it is the back of a bed */
void lw_fence_study(const lw_wall *wall, const lw_tables *tables, lw_fence *fence);

/** What the soil does to one post, and what the ground around it holds, as the working has it.
 *  in    fence   found */
void lw_fence_write_post(const lw_fence *fence, const lw_working *working);

/** The bed in one of its states. */
lw_fence_bed lw_fence_bed_in(const lw_fence *fence, lw_fence_state state);

/** From what distance on the critical wedge of the drained wall does not take the push of the posts.
 *  in    situations   as run
 *  out   wind         its clear_m; not known where nothing stands behind, or at rest
 *  note  1 Some twenty searches of the wedge: once a wall, not in a search over walls.
 *  from  [COULOMB1776 trial wedge] with a level push on the ground */
void lw_fence_clear(const lw_situations *situations, lw_fence_wind *wind);

/** Slugs, words and units, for the reports. */
const char *lw_fence_measure_slug(lw_fence_measure measure);
/** "moment at the ground" */
const char *lw_fence_measure_words(lw_fence_measure measure);
/** "kN m/m" */
const char *lw_fence_measure_unit(lw_fence_measure measure);
/** "dry", "blocked", "yielding" */
const char *lw_fence_state_slug(lw_fence_state state);
/** "soil", "wet_soil", "wind", "soil_and_wind" */
const char *lw_fence_load_slug(lw_fence_load load);

LW_PUBLIC_END

#endif
