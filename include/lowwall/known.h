/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_KNOWN_H
#define LOWWALL_KNOWN_H

/* Words of the tables that code knows. They are read once; a wall then compares numbers. */

/* What a format may ask for, and by what it may divide: the quantities of tables/formats.csv. A quantity that
 * ends in -times multiplies, its namesake divides; both are printed as their code prints them. */
#define LW_NEEDS(X) \
  X(SLIDING, "sliding") \
  X(SLIP, "slip") \
  X(SLIDING_WITH_PASSIVE, "sliding-with-passive") \
  X(OVERTURNING, "overturning") \
  X(COMPRESSION, "compression") \
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
typedef enum lw_need {
#define LW_NEED_NAME(name, quantity) LW_NEED_##name,
  LW_NEEDS(LW_NEED_NAME)
#undef LW_NEED_NAME
  LW_NEED_COUNT
} lw_need;

/* What narrows a row of limits.csv. */
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
typedef enum lw_only_if {
#define LW_ONLY_IF_NAME(name, slug) LW_ONLY_IF_##name,
  LW_ONLY_IFS(LW_ONLY_IF_NAME)
#undef LW_ONLY_IF_NAME
  LW_ONLY_IF_OTHER,                 /* a word that no sheet answers */
  LW_ONLY_IF_COUNT
} lw_only_if;

/* What brings a hazard up. */
#define LW_CUES(X) \
  X(ALWAYS, "always") X(DIGGING, "digging") X(DEEP_DIG, "deep-dig") X(COMPACTION, "compaction") \
  X(DELIVERY, "delivery") X(CUTTING, "cutting") X(LIFTING, "lifting") X(SOIL_IMPORTED, "soil-imported") \
  X(FOOD, "food") X(CAP, "cap") X(PEOPLE_ON_CAP, "people-on-cap") X(WORKS_MOVED, "works-moved") \
  X(TALL, "tall") X(OUTLET_BLOCKED, "outlet-blocked") X(FENCE_BEHIND, "fence-behind") \
  X(BUILDING_BEHIND, "building-behind") X(POOL, "pool") X(LOAD_BEHIND, "load-behind") \
  X(VEHICLE, "vehicle") X(TIER, "tier") X(SLOPE, "slope") X(CLAY, "clay") X(BOUNDARY, "boundary") \
  X(SERVICES, "services") X(PUBLIC_WAY, "public-way") X(SEISMIC, "seismic") X(TREE, "tree") \
  X(OVERHEAD, "overhead") X(COLD, "cold")
typedef enum lw_cue {
#define LW_CUE_NAME(name, slug) LW_CUE_##name,
  LW_CUES(LW_CUE_NAME)
#undef LW_CUE_NAME
  LW_CUE_COUNT /* at most 32: a hazard keeps a bit for each */
} lw_cue;

/* Rows that code asks for by name: found once, when the tables are read. */
#define LW_CLEARANCES(X) \
  X(BOUNDARY, "boundary") X(BUILDING, "building") X(OTHER_WALL, "other-wall") X(LOAD, "load") \
  X(SERVICE, "service") X(WATERBODY, "waterbody") X(PUBLIC_WAY, "public-way") \
  X(POOL_BARRIER, "pool-barrier") X(POOL_FLAG, "pool-flag") X(FALL_FLAG, "fall-flag") \
  X(FALL_BARRIER, "fall-barrier")
#define LW_THRESHOLDS(X) \
  X(LEVEL_GROUND, "level-ground") X(LEVEL_DIFFERENCE, "level-difference") X(BED_SLOPE, "bed-slope") \
  X(STONE_WIDTH, "stone-width") X(LEAN_HEIGHT, "lean-height") X(LIFT_MASS, "lift-mass") \
  X(COMPACTOR_DISTANCE, "compactor-distance") X(COMPACTOR_HEIGHTS, "compactor-heights") \
  X(MACHINE_DISTANCE, "machine-distance") \
  X(MACHINE_MASS, "machine-mass") X(HAND_MASS, "hand-mass") X(TRENCH_DEPTH, "trench-depth") \
  X(MOVEMENT_ALARM, "movement-alarm") X(ASK_AGAIN, "ask-again") X(FILL_THAT_COUNTS, "fill-that-counts") \
  X(TIER_APART, "tier-apart") X(TIER_ONE_WALL, "tier-one-wall") \
  X(DRAINABLE_POROSITY, "drainable-porosity") X(KEEP_OUT_FRONT, "keep-out-front") \
  X(OTHER_WALL_HEIGHT, "other-wall-height")
#define LW_CONDITIONS(X) \
  X(OTHER_WALL_NEAR, "other-wall-near") X(SLOPING_GROUND, "sloping-ground") \
  X(SUPPORTS_BUILDING, "supports-building") X(VEHICLE_LOAD, "vehicle-load") \
  X(LOAD_INSIDE_INFLUENCE, "load-inside-influence") X(WATER_HELD, "water-held") \
  X(BOUNDARY, "boundary") X(PUBLIC_WAY, "public-way") X(MAPPED_LAND, "mapped-land") \
  X(REACTIVE_SOIL, "reactive-soil") X(FENCE_LOAD, "fence-load") \
  X(FENCE_CARRIES_SOIL, "fence-carries-soil") X(BARRIER_NEEDED, "barrier-needed") \
  X(NO_OUTLET, "no-outlet") X(BAD_FILL, "bad-fill") X(EARTHQUAKE, "earthquake") \
  X(WALL_THAT_MOVED, "wall-that-moved") X(DIGS_BELOW_FOOTING, "digs-below-footing") \
  X(DRAINS_NEXT_DOOR, "drains-next-door") X(HERITAGE, "heritage") X(VIBRATING_LOAD, "vibrating-load")
#define LW_LOADS_ASKED(X) \
  X(GARDEN, "garden") X(VEHICLE, "vehicle") X(PEOPLE_SITTING_DOWN, "people-sitting-down") \
  X(PEOPLE_SITTING_OUT, "people-sitting-out") X(PEOPLE_LEANING, "people-leaning")
typedef enum lw_known_row {
#define LW_KNOWN_CLEARANCE_ROW(name, slug) LW_CLEARANCE_##name,
#define LW_KNOWN_THRESHOLD_ROW(name, slug) LW_THRESHOLD_##name,
#define LW_KNOWN_CONDITION_ROW(name, slug) LW_CONDITION_##name,
#define LW_KNOWN_LOAD_ROW(name, slug) LW_LOAD_OF_##name,
  LW_CLEARANCES(LW_KNOWN_CLEARANCE_ROW) LW_THRESHOLDS(LW_KNOWN_THRESHOLD_ROW)
  LW_CONDITIONS(LW_KNOWN_CONDITION_ROW) LW_LOADS_ASKED(LW_KNOWN_LOAD_ROW)
#undef LW_KNOWN_CLEARANCE_ROW
#undef LW_KNOWN_THRESHOLD_ROW
#undef LW_KNOWN_CONDITION_ROW
#undef LW_KNOWN_LOAD_ROW
  LW_KNOWN_COUNT
} lw_known_row;

#endif
