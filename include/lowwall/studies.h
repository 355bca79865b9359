/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_H
#define LOWWALL_STUDIES_H

#include <lowwall/checks.h>
#include <lowwall/diagram.h>

LW_PUBLIC_BEGIN

/* What is worked out beside the checks and decides nothing: building the wall, a bed between two faces,
 * fences, loads against the line of influence, digging in front, water, and every set of factors. */

/* The wall while it is built: course by course, with fill and plant level with the newest one. What is found
 * here is over when the wall stands, and whoever builds can avoid it: it decides nothing of the finished
 * wall, it says how near the plant may come. */

/* The plant, as given, from its row, or the usual plate where nobody said. */
typedef struct lw_plant {
  char name[LW_NAME_MAX];    /* "" when only its numbers are given */
  bool named;                /* by the sheet: a name, or numbers of its own */
  const lw_plant_row *row;   /* that the numbers not given came from; NULL: none */
  double mass_kg, force_kn;  /* force: dynamic, on top of the weight */
  double width_m;            /* of its contact, along the wall */
  double layer_m;            /* thickest loose layer that it compacts */
  double line_load_kn_per_m; /* (weight + force)/width */
} lw_plant;

/* How near a piece of plant may come to the newest course. */
typedef struct lw_stand_off {
  lw_number distance_m; /* there it holds by just what is needed; 0: even touching */
  lw_number keep_m;     /* no less than the thresholds have, rounded up to what can be kept on site */
  lw_reason reason;     /* why there is none */
} lw_stand_off;

/* One course newly laid, the fill just compacted level with it, the plant touching. */
typedef struct lw_construction_course {
  int course;                                 /* 1 is the lowest, on its bed */
  double height_m;                            /* of fill against it; 0: none */
  double friction_rad, unit_weight_kn_per_m3; /* of that fill */
  lw_compaction_diagram diagram;
  lw_lateral push, earth;    /* with the plant touching; of the layer of earth alone */
  lw_check sliding, tilting; /* on the joint or bed below it, by its own weight only */
  bool has_lower;
  lw_check lower; /* the gravest of the contacts below, earth that has yielded pushing there */
} lw_construction_course;

typedef struct lw_construction {
  bool studied; /* false: reason says why nothing below is there */
  lw_reason reason;
  lw_plant plant, hand; /* hand: the hand rammer of the table */
  double layer_m;       /* thickness of a layer, as given or as it should be */
  bool layer_given, layer_too_thick;
  int layers;                             /* a course is filled in so many */
  double layer_most_m, hand_layer_most_m; /* thickest for each: never more than a course */
  int course_count;
  lw_construction_course course[LW_COURSE_MAX];
  int worst; /* the course whose joint is nearest to its limit or furthest past it: an index */
  lw_stand_off stand_off, hand_stand_off;
  lw_number distance_m;      /* at which the plant will run, as given */
  lw_check at_distance;      /* the gravest newest joint then; means nothing where distance_m is not known */
  bool moves;                /* it falls short at the distance given */
  lw_lateral whole, yielded; /* on the whole wall: nothing having given way; once it has */
} lw_construction;

/* A bed between two faces nearer than the ordinary wedge reaches. The wedge stays what the wall is checked
 * with; what stands here is for a student, and nothing of it is ever counted. */

#define LW_NARROW_METHODS(X) \
  X(AT_REST, "at-rest", "slices with the coefficient at rest, faces that do not yield", \
    "[JANSSEN1895 slices]; [JAKY1944 1 - sin phi]") \
  X(ACTIVE, "active", "slices with the active coefficient", \
    "[JANSSEN1895 slices]; [RANKINE1857 level ground]") \
  X(FRYDMAN_KEISSAR, "frydman-keissar", "slices with the stress beside a rough face that yields", \
    "[JANSSEN1895 slices]; [FRYDMAN1987 stress at a rough face]") \
  X(HANDY, "handy", "slices with the coefficient of an arch", \
    "[JANSSEN1895 slices]; [HANDY1985 the arch in soil arching]")
typedef enum lw_narrow_method {
#define LW_NARROW_NAME(name, slug, title, source) LW_NARROW_##name,
  LW_NARROW_METHODS(LW_NARROW_NAME)
#undef LW_NARROW_NAME
      LW_NARROW_COUNT
} lw_narrow_method;

/* Of the height, where an arch has been found to bring the push. [HANDY1985 abstract] */
#define LW_NARROW_RAISED 0.42

typedef struct lw_narrow_value {
  bool known;
  lw_reason reason; /* why not */
  double coefficient;
  double foot_kpa;     /* at the foot of the wall */
  lw_lateral push;     /* of the soil's weight, without load */
  double share;        /* of the triangle K γ H²/2 with the same K */
  double height_share; /* height of the push ÷ H */
} lw_narrow_value;

typedef struct lw_narrow {
  bool shown;           /* false: nothing below is there */
  double bed_width_m;   /* clear, as given */
  double wedge_width_m; /* H tan(45° - φ/2): what the ordinary wedge wants */
  double height_m;      /* H */
  double friction_rad, wall_friction_rad, unit_weight_kn_per_m3; /* of the weakest soil behind */
  lw_narrow_value value[LW_NARROW_COUNT];
  bool raised_known;
  double raised_height_m; /* LW_NARROW_RAISED H */
  lw_check overturning;   /* as the wall is checked, drained */
  lw_check raised;        /* the same with the push of the soil raised so */
} lw_narrow;

/** Slug, words and source of a method, for the reports. */
const char *lw_narrow_slug(lw_narrow_method method);
const char *lw_narrow_title(lw_narrow_method method);
const char *lw_narrow_source(lw_narrow_method method);

/** The published values alone, of one soil between two faces.
 *  in    narrow   bed width, height, friction, wall friction and unit weight: > 0, wall friction from 0 to φ
 *  out   narrow   wedge_width_m and value[]; each says whether it is known
 *  from  [JANSSEN1895 slices]; tested by tests/studies/narrow.c */
void lw_narrow_solve(lw_narrow *narrow, const lw_working *working);

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

typedef struct lw_fence_push {
  double of[LW_FENCE_MEASURE_COUNT];
} lw_fence_push;

/* Level soil against boards, standing on the lower of the two grounds. */
typedef struct lw_fence_bed {
  double height_m;    /* of the soil above that ground */
  double coefficient; /* K0, or Ka where the boards may lean */
  double unit_weight_kn_per_m3, saturated_unit_weight_kn_per_m3, water_unit_weight_kn_per_m3;
  double surcharge_kpa;
  double water_depth_m; /* below the soil's surface; INFINITY: none */
  double hole_m;        /* depth of the post hole below the ground */
} lw_fence_bed;

typedef struct lw_fence_gust {
  double pressure_kpa, height_m, hole_m;
} lw_fence_gust;

/* A post in the ground that it leans against. */
typedef struct lw_fence_hole {
  double depth_m, width_m;
  double friction_rad, unit_weight_kn_per_m3;
  double lateral_kpa_per_m; /* what the code lets the ground bear, a metre of depth */
} lw_fence_hole;

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
  double push_kn, arm_m, moment_knm;     /* at the ground; the push acts at arm_m above it */
  double broms_kn, code_kn;              /* what tips the post at that arm, what the code allows there */
  double has;                            /* Broms over the push */
  lw_number broms_depth_m, code_depth_m; /* hole for `needs` by Broms, and by the code */
  lw_number moment_has;                  /* what the post itself resists over the moment, soil factored */
} lw_fence_post_load;

typedef struct lw_fence_post {
  double spacing_m;
  lw_fence_hole hole;
  double needs;                    /* of `has` */
  double soil_factor;              /* on the soil's moment, for the post and the boards */
  lw_number gust_knm, lasting_knm; /* what the post resists; not known without the post */
  lw_fence_post_load load[LW_FENCE_LOAD_COUNT];
} lw_fence_post;

typedef struct lw_fence_boards {
  double thickness_m, span_m;
  double stress_kpa, blocked_stress_kpa; /* at the foot of the fence */
  double allowed_kpa;                    /* of softwood under a load that stays */
  double has, blocked_has;
} lw_fence_boards;

/* Wind on a fence on the wall or behind it. */
typedef struct lw_fence_wind {
  bool present, on_wall;
  double height_m, pressure_kpa, end_factor; /* the pressure with the factor in it */
  double force_kn_per_m;                     /* p Hf */
  double foot_moment_knm_per_m;              /* about the fence's foot */
  double toe_moment_knm_per_m;               /* of a fence on the wall, about the wall's toe */
  lw_number wall_moment_knm_per_m;           /* of the wall's own weight, about its toe */
  double distance_m;                         /* of a fence behind */
  double keep_off_m;                         /* common practice */
  double stone_off_m; /* from here on, or from the distance to keep, its posts stand clear of the stone */
  double below_m;     /* the ground that its posts push, below the soil there */
  lw_number clear_m;  /* from here on the drained wedge does not take the push; at LW_DETAIL_EVERYTHING */
} lw_fence_wind;

typedef struct lw_fence {
  bool back;        /* a fence is given as the back of the bed */
  lw_status status; /* not LW_OK: the height of the soil there is not known, nothing of it holds */
  lw_reason reason;
  bool height_known, exposure_known; /* of the fence at the back, and of its wind */
  lw_fence_bed bed;                  /* at rest, dry */
  double yielding_coefficient, friction_rad;
  double blocked_water_m; /* with the outlet blocked, below the soil's surface at the fence */
  lw_fence_gust built_for;
  double lasting; /* share of its strength against gusts that the fence keeps for good */
  lw_fence_push wind, soil[LW_FENCE_STATE_COUNT];
  double ratio[LW_FENCE_STATE_COUNT][LW_FENCE_MEASURE_COUNT]; /* soil over wind */
  /* The same over what is left for good; the ground around the hole is no timber and keeps its own. */
  double lasting_ratio[LW_FENCE_STATE_COUNT][LW_FENCE_MEASURE_COUNT];
  lw_number equal_m[LW_FENCE_STATE_COUNT][LW_FENCE_MEASURE_COUNT];
  lw_number lasting_equal_m[LW_FENCE_STATE_COUNT][LW_FENCE_MEASURE_COUNT];
  lw_fence_post post;
  lw_fence_boards boards;
  lw_fence_wind on; /* the wind on the wall, or behind it */
} lw_fence;

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

/* The line of influence: from the rear of the base up into the ground. What stands within it leans on the
 * wall; a builder keeps heavy things beyond it. */

typedef struct lw_influence_load {
  int number;          /* on the sheet, from 1 */
  lw_load_kind kind;   /* uniform, strip, line or point */
  double pressure_kpa; /* of a uniform load or a strip */
  double force;        /* of a line load kN/m, of a point load kN */
  double distance_m;   /* of its near edge, behind the top of the wall */
  double below_m;      /* of the ground's level there */
  double line_m;       /* where the line passes the load's level, behind the top of the wall */
  double move_m;       /* how far back it would have to go to stand on the line; 0: it is outside */
  bool heavy;          /* heavier than garden use; a uniform load: as heavy as a vehicle's */
  bool below_base;     /* it stands below the rear of the base, and does not push the wall */
  bool inside;
} lw_influence_load;

typedef struct lw_influence {
  double angle_rad; /* from the horizontal */
  double reach_m;   /* so far behind the rear of the top the line comes out of the ground */
  double wedge_m;   /* so far behind the wall the plane of failure of its weakest soil does, from the
                            underside of the pad up, 45 degrees less half its friction from the upright */
  int count;
  lw_influence_load load[LW_LOAD_MAX];
} lw_influence;

/* Digging in front of the toe: what an open trench does to a wall, and where nobody may dig. */

typedef struct lw_trench {
  double depth_m, distance_m; /* of the trench: below the ground in front, from the toe; depth 0: none */
  double floor_m;             /* of its floor above the base; below 0: deeper than the base */
  bool undermines;            /* deeper than the base, and too near: the base cannot be shown */
  lw_number thrust_times, moment_times; /* of the soil's push if the ground down to the floor were held too */
  double keep_out_depth_m;              /* nobody digs deeper than this below the ground in front ... */
  double keep_out_distance_m;           /* ... nearer than this to the toe */
} lw_trench;

/* Water in a bed: where a storm lifts it to, and how high it may stand before each check falls short. */

/* A storm on a bed that cannot drain. */
typedef struct lw_storm {
  double rain_m;        /* 0: no storm is given, and nothing below holds */
  double porosity;      /* share of the soil that fills from field-moist */
  double rise_m;        /* rain over porosity */
  double from_depth_m;  /* where the water stands before, below the top of the wall */
  double water_depth_m; /* where it stands after, below the top of the wall */
  bool spills;          /* it would rise beyond the soil or the overflow, and runs off */
} lw_storm;

#define LW_WATER_STATES(X) \
  X(STANDS_FULL, "stands-full", "stands with the highest water that is taken") \
  X(FALLS_AT, "falls-at", "stands until the water reaches this level") \
  X(FALLS_DRY, "falls-dry", "falls short with no more water than stands there already") \
  X(NOT_SHOWN, "not-shown", "cannot be shown whatever the water")
typedef enum lw_water_state {
#define LW_WATER_NAME(name, slug, sentence) LW_WATER_##name,
  LW_WATER_STATES(LW_WATER_NAME)
#undef LW_WATER_NAME
} lw_water_state;

/** Slug and sentence of a state, from the one list. */
const char *lw_water_state_slug(lw_water_state state);
const char *lw_water_state_sentence(lw_water_state state);

/* How high the water behind may stand before one check falls short of what `outlet-blocked` asks. */
typedef struct lw_water_limit {
  lw_check_kind kind;
  lw_at at;
  int joint;
  lw_water_state state;
  lw_number depth_m; /* of that level below the top of the wall; known in FALLS_AT and STANDS_FULL */
  lw_number ratio;   /* of the check with the water at that level */
  bool jumps;        /* it does not pass through 1 there: a base that opens gives way at once */
  lw_reason reason;  /* of NOT_SHOWN */
} lw_water_limit;

typedef struct lw_water_limits {
  bool found; /* searched for: see lw_water_find in result.h */
  int count;
  lw_water_limit limit[LW_CHECK_MAX];
} lw_water_limits;

/* Steady rain on soil that drains badly, seeping to a drain that works. */
typedef struct lw_rain_seepage {
  bool looked_at;   /* the soil drains badly and water has an outlet or open joints to go to */
  lw_status status; /* not LW_OK: no numbers, and reason says why */
  lw_reason reason;
  lw_seepage push; /* on the plane of the whole wall */
} lw_rain_seepage;

/* One wall under one set of factors: what governs there. */
typedef struct lw_factor_set_answer {
  const lw_factor_row *row; /* the first of the set: its name and title */
  lw_holds stands;          /* by the checks alone; never LW_HOLDS for what must not decide */
  bool governed;            /* a check governs, and what follows is about it */
  lw_situation_name situation;
  lw_situation_kind kind;
  lw_check check;
  bool part;             /* another set includes it: by itself it decides nothing */
  bool decides;          /* false: from memory or a proposal, not for decisions */
  bool memory, proposal; /* some number of the set, or of those it includes, is */
} lw_factor_set_answer;

/* Every set of tables/formats.csv, in the order of the table. */
typedef struct lw_factor_sets {
  int count;
  lw_factor_set_answer answer[LW_FACTOR_ROWS];
} lw_factor_sets;

/** The same wall under every set of factors on file.
 *  in    wall      as lw_wall_build made it; its own set does not matter
 *        tables    in effect
 *  out   factor_sets   filled
 *        scratch   situations to run in; what they hold afterwards is the last set's */
void lw_factor_sets_compare(const lw_wall *wall, const lw_tables *tables, lw_factor_sets *factor_sets,
                            lw_situations *scratch);

/** The planes behind a wall for all methods side by side: the back as Coulomb takes it, and upright behind
 *  the wall as Rankine does; strengths, water and loads as they are given, no factor, no earthquake.
 *  in    wall    any that lw_wall_build made
 *  out   asked   for lw_diagram_find; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason no-depth where the section is not known, or no-demand where
 *        no soil stands behind it */
lw_status lw_diagram_planes(const lw_wall *wall, lw_diagram_asked *asked, lw_error *error);

LW_PUBLIC_END

#endif
