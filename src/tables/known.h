/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_KNOWN_H
#define LOWWALL_TABLES_KNOWN_H

#include <lowwall/tables.h>

/* Words of the tables that code knows. They are read once; a wall then compares numbers. */

/* What a set of factors may ask for, and by what it may divide: the quantities of tables/formats.csv. A
 * quantity that
 * ends in -times multiplies, its namesake divides; both are printed as their code prints them. */
#define LW_FACTORS(X) \
  X(SLIDING, "sliding") \
  X(SLIP, "slip") \
  X(SLIP_DOUBTFUL, "slip-on-doubtful-ground") \
  X(SLIDING_WITH_PASSIVE, "sliding-with-passive") \
  X(OVERTURNING, "overturning") \
  X(COMPRESSION, "compression") \
  X(COMPRESSION_WEAK, "compression-on-weak-ground") \
  X(BEARING_THEORY, "bearing-theory") \
  X(BEARING_PRESUMPTIVE, "bearing-presumptive") \
  X(PASSIVE_AS, "passive-as") \
  X(FRICTION, "friction") \
  X(FRICTION_TIMES, "friction-times") \
  X(COHESION, "cohesion") \
  X(COHESION_TIMES, "cohesion-times") \
  X(UNDRAINED_COHESION, "undrained-cohesion") \
  X(SLIP_RESISTANCE, "slip-resistance") \
  X(SLIP_RESISTANCE_TIMES, "slip-resistance-times") \
  X(SLIDING_RESISTANCE, "sliding-resistance") \
  X(SLIDING_RESISTANCE_TIMES, "sliding-resistance-times") \
  X(BEARING_RESISTANCE, "bearing-resistance") \
  X(BEARING_RESISTANCE_TIMES, "bearing-resistance-times") \
  X(PASSIVE_RESISTANCE, "passive-resistance") \
  X(PASSIVE_RESISTANCE_TIMES, "passive-resistance-times") \
  X(PERMANENT, "permanent-unfavourable") \
  X(PERMANENT_FAVOURABLE, "permanent-favourable") \
  X(WALL_WEIGHT, "wall-weight-unfavourable") \
  X(WALL_WEIGHT_FAVOURABLE, "wall-weight-favourable") \
  X(SOIL_WEIGHT, "soil-weight-unfavourable") \
  X(SOIL_WEIGHT_FAVOURABLE, "soil-weight-favourable") \
  X(EARTH_PRESSURE, "earth-pressure-unfavourable") \
  X(EARTH_PRESSURE_FAVOURABLE, "earth-pressure-favourable") \
  X(AT_REST, "at-rest-pressure-unfavourable") \
  X(WATER, "water-unfavourable") \
  X(WATER_FAVOURABLE, "water-favourable") \
  X(VARIABLE, "variable-unfavourable") \
  X(VARIABLE_FAVOURABLE, "variable-favourable") \
  X(VARIABLE_ON_WALL, "variable-on-wall-unfavourable") \
  X(DECIDES, "decides") \
  X(UNDRAINED_SLIDING, "undrained-sliding-of-weight") \
  X(DUG_SHARE, "dug-in-front-of-height") \
  X(DUG_MOST, "dug-in-front-most-m") \
  X(PUSH_STRENGTH, "push-strength") \
  X(SLIDING_ON_STRENGTH, "sliding-on-strength")
typedef enum lw_factor {
#define LW_FACTOR_NAME(name, quantity) LW_FACTOR_##name,
  LW_FACTORS(LW_FACTOR_NAME)
#undef LW_FACTOR_NAME
      LW_FACTOR_COUNT
} lw_factor;

/* What narrows a row of limits.csv. */
/* clang-format off */
#define LW_ONLY_IFS(X) \
  X(NEAR_BOUNDARY, "near-boundary") X(NEAR_WATERBODY, "near-waterbody") \
  X(WALKING_SURFACE, "walking-surface") X(NEXT_TO_HIGHWAY, "next-to-highway") \
  X(NEAR_PUBLIC_WAY, "near-public-way") X(MAPPED_LAND, "mapped-land") \
  X(SUPPORTS_STRUCTURE, "supports-structure") X(CROSSES_BOUNDARY, "crosses-boundary") \
  X(WEAKENS_ADJOINING, "weakens-adjoining") X(CHANGES_DRAINAGE, "changes-drainage") \
  X(OTHER_LOAD, "other-load-than-soil") X(NOT_LEVEL_SOIL_ALONE, "not-level-soil-alone") \
  X(HERITAGE, "heritage") X(NOT_DRAINED, "not-drained") X(SLOPING_GROUND, "sloping-ground") \
  X(OTHER_WALL_NEAR, "other-wall-near") X(LIQUID_HELD, "liquid-held") X(REACTIVE_SOIL, "reactive-soil") \
  X(BAD_FILL, "bad-fill") X(EARTHQUAKES, "seismic-category-d-e-f") X(DRY_LAID, "dry-laid") \
  X(NOT_DRY_STONE, "not-dry-stone") X(ALWAYS, "always")
/* clang-format on */
typedef enum lw_only_if {
#define LW_ONLY_IF_NAME(name, slug) LW_ONLY_IF_##name,
  LW_ONLY_IFS(LW_ONLY_IF_NAME)
#undef LW_ONLY_IF_NAME
      LW_ONLY_IF_OTHER, /* a word that no sheet answers */
  LW_ONLY_IF_COUNT
} lw_only_if;

/* What brings a hazard up. */
/* clang-format off */
#define LW_CUES(X) \
  X(ALWAYS, "always") X(DIGGING, "digging") X(DEEP_DIG, "deep-dig") X(COMPACTION, "compaction") \
  X(DELIVERY, "delivery") X(CUTTING, "cutting") X(LIFTING, "lifting") X(SOIL_IMPORTED, "soil-imported") \
  X(FOOD, "food") X(CAP, "cap") X(PEOPLE_ON_CAP, "people-on-cap") X(WORKS_MOVED, "works-moved") \
  X(TALL, "tall") X(OUTLET_BLOCKED, "outlet-blocked") X(FENCE_BEHIND, "fence-behind") \
  X(BUILDING_BEHIND, "building-behind") X(POOL, "pool") X(LOAD_BEHIND, "load-behind") \
  X(VEHICLE, "vehicle") X(TIER, "tier") X(SLOPE, "slope") X(CLAY, "clay") X(BOUNDARY, "boundary") \
  X(SERVICES, "services") X(PUBLIC_WAY, "public-way") X(SEISMIC, "seismic") X(TREE, "tree") \
  X(OVERHEAD, "overhead") X(COLD, "cold")
/* clang-format on */
typedef enum lw_cue {
#define LW_CUE_NAME(name, slug) LW_CUE_##name,
  LW_CUES(LW_CUE_NAME)
#undef LW_CUE_NAME
      LW_CUE_COUNT /* at most 32: a hazard keeps a bit for each */
} lw_cue;

/* Rows that code asks for by name: found once, when the tables are read. A table of figures (thresholds,
 * fences, ordering) must have each row named here, in the unit named here, and no other row: a figure that
 * nothing reads is refused. */
/* clang-format off */
#define LW_CLEARANCES(X) \
  X(BOUNDARY, "boundary") X(BUILDING, "building") X(OTHER_WALL, "other-wall") X(LOAD, "load") \
  X(SERVICE, "service") X(WATERBODY, "waterbody") X(PUBLIC_WAY, "public-way") \
  X(POOL_BARRIER, "pool-barrier") X(POOL_BARRIER_NZ, "pool-barrier-nz") \
  X(POOL_FLAG, "pool-flag") X(FALL_FLAG, "fall-flag") \
  X(FALL_BARRIER, "fall-barrier")
#define LW_THRESHOLDS(X) \
  X(UNKNOWN_SLOPE, "unknown-slope", "") X(FULL_LOAD_HEIGHT, "full-load-height", "m") \
  X(LIKELY_LOAD, "likely-load", "") X(PERSON_SIDE, "person-side", "m") \
  X(PERSON_DISTANCE, "person-distance", "m") X(PERSON_SPREAD, "person-spread", "") \
  X(LEVEL_GROUND, "level-ground", "") X(LEVEL_DIFFERENCE, "level-difference", "m") \
  X(BED_SLOPE, "bed-slope", "") X(STONE_WIDTH, "stone-width", "m") \
  X(OPEN_JOINTS_HOLD, "open-joints-hold", "") X(FINE_SOIL, "fine-soil", "mm/h") \
  X(LEAN_HEIGHT, "lean-height", "m") \
  X(LIFT_MASS, "lift-mass", "kg") X(COMPACTOR_DISTANCE, "compactor-distance", "m") \
  X(COMPACTOR_HEIGHTS, "compactor-heights", "") X(MACHINE_DISTANCE, "machine-distance", "m") \
  X(MACHINE_MASS, "machine-mass", "kg") X(HAND_MASS, "hand-mass", "kg") \
  X(TRENCH_DEPTH, "trench-depth", "m") X(TRENCH_LINE, "trench-line", "") \
  X(REACH_LINE, "reach-line", "") X(DIG_LINE, "dig-line", "") \
  X(MOVEMENT_ALARM, "movement-alarm", "") \
  X(TIER_APART, "tier-apart", "") X(TIER_ONE_WALL, "tier-one-wall", "") \
  X(DRAINABLE_POROSITY, "drainable-porosity", "") X(FOOTING_LINE, "footing-line", "m") \
  X(FOOTING_DEPTH, "footing-depth", "m") \
  X(FOOTING_LINE_DEEP, "footing-line-deep", "m") \
  X(ROOT_RADIUS, "root-radius", "") X(KEEP_OUT_FRONT, "keep-out-front", "") \
  X(FILL_THAT_COUNTS, "fill-that-counts", "") X(OTHER_WALL_HEIGHT, "other-wall-height", "m") \
  X(ASK_AGAIN, "ask-again", "years") X(PLANT_SOIL_HELD, "plant-soil-held", "m") \
  X(COMPOST_DEPTH, "compost-depth", "m") X(LIKELY_FRICTION, "likely-friction", "deg") \
  X(WEAK_GROUND, "weak-ground", "kPa") X(SLIP_BUILDING, "slip-building", "") \
  X(BEARING_RESERVE, "bearing-reserve", "") \
  X(LIKELY_MARGIN, "likely-margin", "") X(LIKELY_GROUND_FACE, "likely-ground-face", "") \
  X(PAIRED_SHARE, "paired-cohesion-share", "") X(PAIRED_MOST, "paired-cohesion-most", "kPa") \
  X(PAIRED_DEPTH, "paired-cohesion-depth", "m") X(PAIRED_SHALLOW, "paired-cohesion-shallow", "kPa") \
  X(SLIP_WITHOUT_PAIR, "slip-without-pair", "") X(SAME_JOB, "same-job", "") \
  X(HAND_LAID_DEPTH, "hand-laid-depth", "m")
#define LW_FENCES(X) \
  X(WIND_SHELTERED, "wind-sheltered", "kPa") X(WIND_ORDINARY, "wind-ordinary", "kPa") \
  X(WIND_EXPOSED, "wind-exposed", "kPa") X(RUN_END, "run-end", "") X(LEAST_HEIGHT, "least-height", "m") \
  X(TIMBER_LASTING, "timber-lasting", "") X(TIMBER_GUST, "timber-gust", "") \
  X(TIMBER_STRENGTH, "timber-strength", "kPa") X(TIMBER_MATERIAL, "timber-material", "") \
  X(SOIL_FACTOR, "soil-factor", "") X(GROUND_FACTOR, "ground-factor", "") \
  X(LATERAL_BEARING, "lateral-bearing", "kPa/m") X(KEEP_OFF, "keep-off", "") \
  X(CLEAR_GAP, "clear-gap", "m") X(POST_CLEAR, "post-clear", "m") \
  X(UNKNOWN_HEIGHT, "unknown-height", "m") \
  X(UNKNOWN_BOUNDARY, "unknown-boundary", "m") \
  X(UNKNOWN_SPACING, "unknown-spacing", "m") \
  X(UNKNOWN_HOLE, "unknown-hole", "m") \
  X(UNKNOWN_POST_WIDTH, "unknown-post-width", "m") \
  X(UNKNOWN_BOARD, "unknown-board", "m") \
  X(UNKNOWN_BOARD_SPAN, "unknown-board-span", "m")
#define LW_ORDERINGS(X) \
  X(LOW_WALL_COURSES, "low-wall-courses", "") \
  X(BLOCK_ALLOWANCE, "block-allowance", "") X(CURVE_ALLOWANCE, "curve-allowance", "") \
  X(SPARE_UNITS, "spare-units", "") X(CAP_ALLOWANCE, "cap-allowance", "") \
  X(ADHESIVE_BEAD, "adhesive-bead", "m") X(ADHESIVE_ALLOWANCE, "adhesive-allowance", "") \
  X(STONE_COMPACTION, "stone-compaction", "") X(STONE_ALLOWANCE, "stone-allowance", "") \
  X(GEOTEXTILE_ALLOWANCE, "geotextile-allowance", "") X(PIPE_ALLOWANCE, "pipe-allowance", "") \
  X(LINING_ALLOWANCE, "lining-allowance", "") X(SETTLEMENT, "settlement", "") \
  X(BEDDING_THICKNESS, "bedding-thickness", "m") X(BEDDING_RATIO, "bedding-ratio", "") \
  X(BEDDING_LOOSE, "bedding-loose", "") X(CEMENT_BAG_MASS, "cement-bag-mass", "kg") \
  X(CEMENT_DENSITY, "cement-density", "kg") X(PAD_BEYOND, "pad-beyond", "m") \
  X(PAD_STONE_DENSITY, "pad-stone-density", "kg") X(DRAIN_PIPE_FALL, "drain-pipe-fall", "") \
  X(DRAIN_OUTLET_LENGTH, "drain-outlet-length", "m") X(SOIL_PLUG, "soil-plug", "m") \
  X(GEOTEXTILE_LAP, "geotextile-lap", "m") X(PALLET_MASS, "pallet-mass", "kg") \
  X(OPEN_DIG_LINE, "open-dig-line", "") \
  X(BULK_SAND, "bulk-sand", "") X(BULK_LOAM, "bulk-loam", "") X(BULK_CLAY, "bulk-clay", "") \
  X(OVERLAP_LEAST, "overlap-least", "") X(CUT_LEAST, "cut-least", "") \
  X(CUT_MOST, "cut-most", "") \
  X(CAP_PIECE_LEAST, "cap-piece-least", "m") X(MITRE_PIECE_LEAST, "mitre-piece-least", "") \
  X(MITRE_POINT_LEAST, "mitre-point-least", "") X(PEG_TOLERANCE, "peg-tolerance", "m") \
  X(BASE_LEVEL_TOLERANCE, "base-level-tolerance", "m") X(STEP_UNDER, "step-under", "m") \
  X(JOINT_STEP_ALARM, "joint-step-alarm", "m") X(SOIL_BELOW_CAP, "soil-below-cap", "m") \
  X(STONE_DENSITY, "stone-density", "kg") X(SAND_DENSITY, "sand-density", "kg") \
  X(SOIL_LAYER, "soil-layer", "m") X(SAW_KERF, "saw-kerf", "m") X(BARROW_MASS, "barrow-mass", "kg") \
  X(BARROW_VOLUME, "barrow-volume", "m3") X(SKIP_VOLUME, "skip-volume", "m3") \
  X(CAP_JOINT_LEAST, "cap-joint-least", "m") X(SOIL_DUG, "soil-dug", "kg") \
  X(BLOCK_CONCRETE, "block-concrete", "kg") X(PAD_LOW_WALL, "pad-low-wall", "m") \
  X(PAD_HIGH_WALL, "pad-high-wall", "m") \
  X(FILTER_RETAINS, "filter-retains", "") X(FILTER_DRAINS, "filter-drains", "")
#define LW_CONDITIONS(X) \
  X(OTHER_WALL_NEAR, "other-wall-near") X(SLOPING_GROUND, "sloping-ground") \
  X(SUPPORTS_BUILDING, "supports-building") X(VEHICLE_LOAD, "vehicle-load") \
  X(LOAD_INSIDE_INFLUENCE, "load-inside-influence") X(WATER_HELD, "water-held") \
  X(BOUNDARY, "boundary") X(PUBLIC_WAY, "public-way") X(MAPPED_LAND, "mapped-land") \
  X(REACTIVE_SOIL, "reactive-soil") X(FENCE_LOAD, "fence-load") X(FENCE_NEAR, "fence-near") \
  X(FENCE_CARRIES_SOIL, "fence-carries-soil") X(BARRIER_NEEDED, "barrier-needed") \
  X(NO_OUTLET, "no-outlet") X(BAD_FILL, "bad-fill") X(EARTHQUAKE, "earthquake") \
  X(WALL_THAT_MOVED, "wall-that-moved") X(DIGS_BELOW_FOOTING, "digs-below-footing") \
  X(DIGS_BESIDE_BUILDING, "digs-beside-building") \
  X(DRAINS_NEXT_DOOR, "drains-next-door") X(HERITAGE, "heritage") X(VIBRATING_LOAD, "vibrating-load") \
  X(RAIN_LED_AWAY, "rain-led-away") X(RAIN_SOAKAWAY, "rain-soakaway") X(EASEMENT, "easement") \
  X(PROTECTED_TREES, "protected-trees") X(FLOOD_LAND, "flood-land") X(BUSHFIRE_LAND, "bushfire-land") \
  X(COAST_LAND, "coast-land") X(NEIGHBOUR_CONSENT, "neighbour-consent") X(SIGHT_LINES, "sight-lines") \
  X(OTHER_WORKS, "other-works") X(OWNER_BUILDS, "owner-builds")
#define LW_LOADS_ASKED(X) \
  X(GARDEN, "garden") X(GARDEN_FULL, "garden-full") X(PLANTED, "planted") \
  X(PERSON_AT_EDGE, "person-at-edge") X(VEHICLE, "vehicle") \
  X(PEOPLE_SITTING_DOWN, "people-sitting-down") X(PEOPLE_SITTING_OUT, "people-sitting-out") \
  X(PEOPLE_LEANING, "people-leaning")
/* What stands in for an answer that is left out, and for what a study needs. */
#define LW_SOILS_ASKED(X) \
  X(LOAM, "loam") X(CLAY_LOAM, "clay loam") X(SANDY_CLAY, "clayey sand") X(CRUSHED_ROCK, "crushed rock") \
  X(TOPSOIL, "topsoil") X(FIRM_CLAY, "firm clay")
#define LW_BACKS_ASKED(X) \
  X(WALL, "assumed wall") X(SMOOTH_WALL, "assumed smooth wall") \
  X(WALL_ON_UNNAMED, "assumed wall on ground not named") X(WALL_ON_SOFT, "assumed wall on soft ground") \
  X(WALL_AT_CLAY, "assumed wall against natural clay") X(MEMBRANE, "membrane behind a wall")
#define LW_INTERFACES_ASKED(X) \
  X(BASE, "assumed base") X(BED_OF_GRAVEL, "assumed bed of gravel") X(BED_OF_SAND, "assumed bed of sand") \
  X(JOINT, "assumed joint") X(CLEAN_JOINT, "assumed clean joint") LW_BACKS_ASKED(X)
#define LW_MATERIALS_ASKED(X) \
  X(SOLID_BLOCK, "solid concrete block") X(DRY_STONE, "dry stone with its voids") \
  X(LOOSE_GRAVEL, "loose gravel") X(DRY_SAND, "dry sand") \
  X(STORED_SAND, "stored sand")
#define LW_PLANT_ASKED(X) X(HAND_RAMMER, "hand rammer") X(USUAL, "medium plate compactor")
typedef enum lw_known_row {
#define LW_KNOWN_CLEARANCE_ROW(name, slug) LW_CLEARANCE_##name,
#define LW_KNOWN_THRESHOLD_ROW(name, slug, unit) LW_THRESHOLD_##name,
#define LW_KNOWN_FENCE_ROW(name, slug, unit) LW_FENCE_OF_##name,
#define LW_KNOWN_ORDERING_ROW(name, slug, unit) LW_ORDERING_##name,
#define LW_KNOWN_CONDITION_ROW(name, slug) LW_CONDITION_##name,
#define LW_KNOWN_LOAD_ROW(name, slug) LW_LOAD_OF_##name,
#define LW_KNOWN_SOIL_ROW(name, slug) LW_SOIL_OF_##name,
#define LW_KNOWN_INTERFACE_ROW(name, slug) LW_ASSUMED_##name,
#define LW_KNOWN_MATERIAL_ROW(name, slug) LW_MATERIAL_OF_##name,
#define LW_KNOWN_PLANT_ROW(name, slug) LW_PLANT_OF_##name,
  LW_CLEARANCES(LW_KNOWN_CLEARANCE_ROW) LW_THRESHOLDS(LW_KNOWN_THRESHOLD_ROW)
  LW_FENCES(LW_KNOWN_FENCE_ROW) LW_ORDERINGS(LW_KNOWN_ORDERING_ROW)
  LW_CONDITIONS(LW_KNOWN_CONDITION_ROW) LW_LOADS_ASKED(LW_KNOWN_LOAD_ROW)
  LW_SOILS_ASKED(LW_KNOWN_SOIL_ROW) LW_INTERFACES_ASKED(LW_KNOWN_INTERFACE_ROW)
  LW_MATERIALS_ASKED(LW_KNOWN_MATERIAL_ROW) LW_PLANT_ASKED(LW_KNOWN_PLANT_ROW)
#undef LW_KNOWN_CLEARANCE_ROW
#undef LW_KNOWN_THRESHOLD_ROW
#undef LW_KNOWN_FENCE_ROW
#undef LW_KNOWN_ORDERING_ROW
#undef LW_KNOWN_CONDITION_ROW
#undef LW_KNOWN_LOAD_ROW
#undef LW_KNOWN_SOIL_ROW
#undef LW_KNOWN_INTERFACE_ROW
#undef LW_KNOWN_MATERIAL_ROW
#undef LW_KNOWN_PLANT_ROW
  LW_KNOWN_COUNT
} lw_known_row;
/* clang-format on */
_Static_assert((int)LW_KNOWN_COUNT <= (int)LW_KNOWN_MAX, "tables keep a number for each of these rows");

/* The rows that code asks for, without a search. Where none may be there they are NULL. */

/** The slug of a row. */
const char *lw_known_slug(lw_known_row row);
/** A row, which must be one of that table. */
const lw_load_row *lw_known_load(const lw_tables *tables, lw_known_row row);
const lw_condition_row *lw_known_condition(const lw_tables *tables, lw_known_row row);
const lw_clearance_row *lw_known_clearance(const lw_tables *tables, lw_known_row row);
/** Likewise; tables have these once they are read. */
const lw_threshold_row *lw_known_threshold(const lw_tables *tables, lw_known_row row);
const lw_soil_row *lw_known_soil(const lw_tables *tables, lw_known_row row);
const lw_interface_row *lw_known_interface(const lw_tables *tables, lw_known_row row);
const lw_material_row *lw_known_material(const lw_tables *tables, lw_known_row row);
const lw_plant_row *lw_known_plant(const lw_tables *tables, lw_known_row row);
/** The value of a row of thresholds, fences or ordering, which tables have once they are read. */
double lw_known_value(const lw_tables *tables, lw_known_row row);

/** The load of people, a barrow and a mower on the ground behind a wall, which grows with it.
 *  in    held_m   height of soil held up     m     any
 *  from  [BS8002-2015 4.6.3.2]; the least of it [LOWWALL loads] */
double lw_known_garden_kpa(const lw_tables *tables, double held_m);

#endif
