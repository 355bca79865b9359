/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CASE_H
#define LOWWALL_CASE_H

#include <lowwall/base.h>

LW_PUBLIC_BEGIN

/* A case is one wall as its user knows it: quantities, choices and words, each with where it came from.
 * Everything to the right of `lw_case` in the flow holds plain SI doubles. */

enum { LW_SOIL_MAX = 6, LW_LOAD_MAX = 6, LW_POINT_MAX = 32, LW_COURSE_MAX = 24, LW_WORDS_MAX = 96 };

typedef enum lw_origin { LW_ABSENT, LW_GIVEN, LW_TABLE, LW_ASSUMED } lw_origin;

/* Where on the sheet: row 0 is the command line, and column then counts its items. */
typedef struct lw_quantity {
  double si; /* meaningless while absent */
  lw_origin origin;
  lw_kind kind; /* of this value: an angle-or-share says here which it is */
  int row, column;
  int table_row; /* row of the table it came from, LW_MORE_THAN of one given so, -1 otherwise */
  lw_units in;   /* those it is written in, where it is given */
} lw_quantity;

/* Of a distance that is given as `more than 3 m`: it counts as 3 m, the near end. */
enum { LW_MORE_THAN = -2 };

typedef struct lw_choice {
  int value; /* index into the item's list of words */
  lw_origin origin;
  int row, column;
} lw_choice;

typedef struct lw_words {
  char text[LW_WORDS_MAX];
  lw_origin origin;
  int row, column;
} lw_words;

typedef enum lw_yes_no { LW_NO, LW_YES } lw_yes_no;
typedef enum lw_behind { LW_BEHIND_GROUND, LW_BEHIND_BED } lw_behind;
typedef enum lw_back { LW_BACK_WALL, LW_BACK_FENCE, LW_BACK_BUILDING, LW_BACK_GROUND } lw_back;
typedef enum lw_side { LW_SIDE_ABOVE, LW_SIDE_BELOW } lw_side;
typedef enum lw_above { LW_ABOVE_NOBODY, LW_ABOVE_HOUSEHOLD, LW_ABOVE_PUBLIC } lw_above;
typedef enum lw_works { LW_WORKS_NEW, LW_WORKS_RAISED, LW_WORKS_MOVED } lw_works;
typedef enum lw_rain_to {
  LW_RAIN_OWN_GROUND,
  LW_RAIN_STREET,
  LW_RAIN_SOAKAWAY,
  LW_RAIN_EASEMENT,
  LW_RAIN_NEXT_DOOR
} lw_rain_to;
typedef enum lw_easement { LW_EASEMENT_NONE, LW_EASEMENT_BESIDE, LW_EASEMENT_UNDER } lw_easement;
typedef enum lw_other_works {
  LW_OTHER_WORKS_NONE,
  LW_OTHER_WORKS_BUILDING,
  LW_OTHER_WORKS_POOL,
  LW_OTHER_WORKS_PAVING,
  LW_OTHER_WORKS_EARTHWORKS,
  LW_OTHER_WORKS_OTHER
} lw_other_works;
typedef enum lw_built_by { LW_BUILT_BY_LICENSED, LW_BUILT_BY_OWNER, LW_BUILT_BY_HELPERS } lw_built_by;
typedef enum lw_fence_place { LW_FENCE_BEHIND, LW_FENCE_ON_WALL } lw_fence_place;
typedef enum lw_exposure { LW_EXPOSURE_SHELTERED, LW_EXPOSURE_ORDINARY, LW_EXPOSURE_EXPOSED } lw_exposure;
typedef enum lw_wall_kind { LW_WALL_COURSES, LW_WALL_SECTION } lw_wall_kind;
typedef enum lw_fixing { LW_FIXING_DRY, LW_FIXING_BONDED } lw_fixing;
typedef enum lw_joints { LW_JOINTS_OPEN, LW_JOINTS_SEALED } lw_joints;
typedef enum lw_wall_back { LW_WALL_BACK_ROUGH, LW_WALL_BACK_SMOOTH, LW_WALL_BACK_LINED } lw_wall_back;
typedef enum lw_bed_use { LW_BED_PLANTED, LW_BED_WALKED, LW_BED_VEHICLE } lw_bed_use;
typedef enum lw_stone_filter {
  LW_STONE_FILTER_CLOTH,
  LW_STONE_FILTER_GRADED,
  LW_STONE_FILTER_NONE
} lw_stone_filter;

/* Every quantity that is not given has two values on file: a cautious one, which decides, and the likely one.
 * The look says which of them stand in. */
typedef enum lw_look { LW_LOOK_CAUTIOUS, LW_LOOK_LIKELY } lw_look;
typedef enum lw_load_kind {
  LW_LOAD_NONE,
  LW_LOAD_UNIFORM,
  LW_LOAD_STRIP,
  LW_LOAD_LINE,
  LW_LOAD_POINT,
  LW_LOAD_CAP
} lw_load_kind;
typedef enum lw_pressure_method {
  LW_PRESSURE_COULOMB,
  LW_PRESSURE_RANKINE,
  LW_PRESSURE_WEDGE,
  LW_PRESSURE_AT_REST
} lw_pressure_method;
typedef enum lw_plane_choice { LW_PLANE_OWN, LW_PLANE_HEEL, LW_PLANE_BACK } lw_plane_choice;
typedef enum lw_direction { LW_DIRECTION_OWN, LW_DIRECTION_LEVEL } lw_direction;
typedef enum lw_counted { LW_COUNTED, LW_NOT_COUNTED } lw_counted;
typedef enum lw_surcharge_on_heel { LW_SURCHARGE_PUSHES, LW_SURCHARGE_PRESSES } lw_surcharge_on_heel;
typedef enum lw_passive_as { LW_PASSIVE_RESISTANCE, LW_PASSIVE_OFF_PUSH } lw_passive_as;
typedef enum lw_passive_by {
  LW_PASSIVE_OWN,
  LW_PASSIVE_LOG_SPIRAL,
  LW_PASSIVE_ANNEX_C,
  LW_PASSIVE_BY_RANKINE,
  LW_PASSIVE_BY_COULOMB
} lw_passive_by;
typedef enum lw_active_by { LW_ACTIVE_OWN, LW_ACTIVE_ANNEX_C } lw_active_by;
typedef enum lw_overconsolidation { LW_OCR_MAYNE_KULHAWY, LW_OCR_EN1997 } lw_overconsolidation;
typedef enum lw_uplift_as { LW_UPLIFT_MOMENT, LW_UPLIFT_OFF_RESISTANCE } lw_uplift_as;
typedef enum lw_base_pressure {
  LW_BASE_OWN, /* effective with a theory of bearing, no tension with a presumptive value */
  LW_BASE_NO_TENSION,
  LW_BASE_LINEAR,
  LW_BASE_EFFECTIVE
} lw_base_pressure;
typedef enum lw_bearing_method {
  LW_BEARING_PRESUMPTIVE,
  LW_BEARING_TERZAGHI,
  LW_BEARING_MEYERHOF,
  LW_BEARING_HANSEN,
  LW_BEARING_VESIC,
  LW_BEARING_EN1997
} lw_bearing_method;
typedef enum lw_n_gamma { /* own: the method's own; given: a number, never a word of a sheet */
                          LW_N_GAMMA_OWN,
                          LW_N_GAMMA_MEYERHOF,
                          LW_N_GAMMA_HANSEN,
                          LW_N_GAMMA_VESIC,
                          LW_N_GAMMA_EN1997,
                          LW_N_GAMMA_GIVEN
} lw_n_gamma;
typedef enum lw_own_or_none { LW_OWN, LW_NONE } lw_own_or_none;
typedef enum lw_bearing_on { LW_BEARING_GROSS, LW_BEARING_NET } lw_bearing_on;
typedef enum lw_load_pressure { /* how a load at a distance reaches the wall */
                                LW_LOAD_PRESSURE_OWN,
                                LW_LOAD_PRESSURE_HALF_SPACE,
                                LW_LOAD_PRESSURE_DOUBLED,
                                LW_LOAD_PRESSURE_CURVES,
                                LW_LOAD_PRESSURE_WEDGE
} lw_load_pressure;
typedef enum lw_slip_method { LW_SLIP_BISHOP, LW_SLIP_ORDINARY, LW_SLIP_NOT } lw_slip_method;
typedef enum lw_crack { LW_CRACK_DRY, LW_CRACK_WET, LW_CRACK_TRIANGLE } lw_crack;

/* A soil as the sheet has it; `soil n ...` and `footing soil ...` share it. */
typedef struct lw_case_soil {
  lw_words name;
  lw_quantity friction, cohesion, unit_weight, light_unit_weight, saturated_unit_weight, bottom;
  lw_quantity overconsolidation;
} lw_case_soil;

typedef struct lw_case_load {
  lw_words name; /* a row of tables/loads.csv */
  lw_choice kind;
  lw_quantity pressure, force, push, near_edge, far_edge, distance, below_ground;
  lw_quantity height; /* of what is stacked or held, for a row that gives a pressure a metre */
} lw_case_load;

typedef struct lw_case_point {
  lw_quantity x, y;
} lw_case_point;

/* The plan, for the order and the pegs only: runs of face in order, with the soil on the left of who walks
 * along them. Checks are of one metre of straight wall and read none of this. */
enum { LW_RUN_MAX = 12, LW_STEP_MAX = 8 };
typedef enum lw_plan_ends { LW_ENDS_OPEN, LW_ENDS_CLOSED } lw_plan_ends;
typedef enum lw_plan_line { LW_LINE_BASE, LW_LINE_TOP } lw_plan_line;
typedef enum lw_half_unit { LW_HALF_CUT, LW_HALF_SOLD } lw_half_unit;
typedef enum lw_corner_unit { LW_CORNER_TURNED, LW_CORNER_CUT, LW_CORNER_HANDED } lw_corner_unit;

typedef struct lw_case_run {
  lw_quantity length, radius, cap_depth;
} lw_case_run;
typedef struct lw_case_step {
  lw_quantity distance, courses;
} lw_case_step;

typedef struct lw_case_order {
  lw_case_run run[LW_RUN_MAX];
  lw_quantity turn[LW_RUN_MAX];
  lw_choice ends, line, corner_unit, lining;
  lw_quantity end_setback, ground_fall;
  lw_case_step step[LW_STEP_MAX];
  lw_quantity corner_length, joint_gap, curve_gap, tail_length, cap_length, bedding_thickness, bedding_ratio,
      cement_bag_mass, pad_beyond, pipe_fall, outlet_length, soil_plug, geotextile_lap;
  lw_quantity block_allowance, curve_allowance, spare_units, cap_allowance, adhesive_bead, adhesive_allowance,
      stone_compaction, stone_allowance, geotextile_allowance, pipe_allowance, lining_allowance, settlement,
      spoil_bulking, pallet_mass;
  lw_choice half_unit, offcuts;
  lw_quantity saw_kerf, barrow_mass, barrow_volume, skip_volume;
} lw_case_order;

/* Who asks, and about which wall. */
typedef struct lw_case_about {
  lw_words title, mark, place, note;
  lw_words applicant, address, builder, date; /* for the office; the date is YYYY-MM-DD */
  lw_choice units;                            /* an lw_units: see lw_case_units */
} lw_case_about;

/* The place, and what stands near. */
typedef struct lw_case_site {
  lw_choice behind, back, other_wall_side, above, vehicle_access, water_held, mapped_land, reactive_soil,
      works, heritage, earthquakes, vibration, drains_next_door;
  lw_quantity level_difference, boundary_distance, building_distance, other_wall_distance, other_wall_height,
      public_way_distance, service_distance, waterbody_distance, pool_barrier_distance;
} lw_case_site;

/* What an officer asks besides. What is left out is not held against the wall: only an answer counts, and so
 * does the answer that it is not known. */
typedef struct lw_case_officer {
  lw_choice rain_to, easement, protected_trees, flood_land, bushfire_land, coast_land, neighbour_consent,
      sight_lines, other_works, built_by;
} lw_case_officer;

/* A fence, screen or hedge, its posts and boards, and the wind on it. */
typedef struct lw_case_fence {
  lw_choice place, wind_exposure, run_end;
  lw_quantity height, distance, soil_height, wind_pressure, post_spacing, post_depth, post_width, post_moment,
      post_section, board_thickness, board_span, permanent_factor;
} lw_case_fence;

typedef struct lw_case_wall {
  lw_choice kind, back;
  lw_quantity height, embedment, friction, unit_weight;
} lw_case_wall;

/* A wall of blocks: base courses, courses, cap, and what holds in the joints. */
typedef struct lw_case_courses {
  lw_quantity count, block_height, block_depth, block_length, block_unit_weight, block_mass, setback,
      base_count, base_depth, fill_unit_weight, face_shell_thickness, cap_height, cap_depth, cap_overhang,
      cap_unit_weight, joint_friction, joint_shear, key_strength;
  lw_choice cap_fixing, people_on_cap;
} lw_case_courses;

/* Any other wall, by its widths and batters or by its points. */
typedef struct lw_case_shape {
  lw_quantity top_width, base_width, face_batter, back_batter, toe_length, heel_length, slab_thickness;
  lw_case_point point[LW_POINT_MAX];
} lw_case_shape;

typedef struct lw_case_pad {
  lw_quantity width, thickness, spread;
  lw_words material;
} lw_case_pad;

/* The ground behind, below and in front, and a trench that may be dug there. */
typedef struct lw_case_ground {
  lw_quantity slope, slope_run, soil_below_top, front_slope, cut_depth, fill_depth, stone_width;
  lw_case_soil soil[LW_SOIL_MAX];
  lw_case_soil footing;
  lw_quantity base_friction, base_adhesion, allowable_bearing, trench_depth, trench_distance;
  lw_choice bed_use;
} lw_case_ground;

typedef struct lw_case_water {
  lw_quantity depth, front_depth, overflow_below_top, unit_weight, drain_outlets, outlet_level;
  lw_choice wall_joints, ground_drains, stone_filter;
  lw_quantity storm_rain, drainable_porosity;
} lw_case_water;

typedef struct lw_case_earthquake {
  lw_quantity horizontal, vertical;
} lw_case_earthquake;

/* How the wall is built: what compacts the soil behind it, in which layers. */
typedef struct lw_case_construction {
  lw_words plant;
  lw_quantity plant_mass, plant_force, plant_width, plant_distance, layer_thickness, bed_width;
} lw_case_construction;

/* How it is worked out, for a student with a handbook. */
typedef struct lw_case_method {
  lw_choice pressure, plane, thrust_direction, thrust_vertical, soil_on_heel, surcharge_on_heel, passive_as,
      uplift_as, base_pressure, bearing, n_gamma, depth_factors, inclination_factors, bearing_on, crack,
      passive_by, active_by, overconsolidation, slip, load_pressure, pad_in_trench;
  lw_quantity passive, base_friction, base_cohesion, uplift, seismic_height, influence_line, n_gamma_value,
      coefficient;
  lw_words factor_set, conventions;
} lw_case_method;

/* The likely value of a quantity, beside the one that decides. It takes the place of the given or assumed one
 * where a case of look LW_LOOK_LIKELY is completed. */
enum { LW_LIKELY_MAX = 24 };
typedef struct lw_likely_value {
  size_t offset; /* of the quantity in lw_case: that names the item */
  lw_quantity value;
} lw_likely_value;

typedef struct lw_case_likely {
  int count;
  lw_likely_value value[LW_LIKELY_MAX];
} lw_case_likely;

/* Answers that are no value: the item counts as left out, and was asked about all the same. Of LW_SAID_LESS a
 * distance is nearer than si, nobody has said how near. */
typedef enum lw_said_kind { LW_SAID_NOT_KNOWN, LW_SAID_LESS } lw_said_kind;
enum { LW_SAID_MAX = 64 };
typedef struct lw_said {
  double si;
  lw_said_kind kind;
  unsigned short offset; /* of the value in lw_case: that names the item */
} lw_said;

typedef struct lw_case_said {
  int count;
  lw_said said[LW_SAID_MAX];
} lw_case_said;

typedef struct lw_case {
  lw_case_about about;
  lw_case_site site;
  lw_case_officer officer;
  lw_case_fence fence;
  lw_case_wall wall;
  lw_case_courses courses;
  lw_case_shape shape;
  lw_case_pad pad;
  lw_case_ground ground;
  lw_case_water water;
  lw_case_load load[LW_LOAD_MAX];
  lw_case_earthquake earthquake;
  lw_case_construction construction;
  lw_case_method method;
  lw_case_order order;
  lw_case_likely likely; /* by lw_item_set_likely */
  lw_case_said told;     /* items whose answer is that it is not known; completing leaves it alone */
  lw_look look;          /* which values stand in for what is not given */
  bool complete;         /* lw_case_complete has filled in what was left out */
  bool counted;          /* a row of a schedule: what most of its columns are written in is known */
  lw_units most;         /* that */
} lw_case;

LW_PUBLIC_END

#endif
