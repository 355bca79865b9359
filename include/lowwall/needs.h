/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_NEEDS_H
#define LOWWALL_NEEDS_H

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
  X(DECIDES, "decides")
typedef enum lw_need {
#define LW_NEED_NAME(name, quantity) LW_NEED_##name,
  LW_NEEDS(LW_NEED_NAME)
#undef LW_NEED_NAME
  LW_NEED_COUNT
} lw_need;

#endif
