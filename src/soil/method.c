/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "method.h"

#include <lowwall/wall.h>

#include "base/angles.h"
#include "sheet/values.h"

/* An absent choice is its first word, which is the cautious one. */
static int word_of(const lw_choice *choice) {
  return choice->origin == LW_ABSENT ? 0 : choice->value;
}

/* A theory gives what the effective width bears; a presumptive value is held against the edge. */
static lw_base_pressure base_pressure_of(const lw_case *c) {
  lw_base_pressure word = (lw_base_pressure)word_of(&c->method.base_pressure);
  bool theory = word_of(&c->method.bearing) != LW_BEARING_PRESUMPTIVE;
  if (word != LW_BASE_OWN) return word;
  return theory ? LW_BASE_EFFECTIVE : LW_BASE_NO_TENSION;
}

/* The number of a book goes before whose formula it is. */
static lw_n_gamma n_gamma_of(const lw_case *c) {
  bool given = c->method.n_gamma_value.origin != LW_ABSENT;
  return given ? LW_N_GAMMA_GIVEN : (lw_n_gamma)word_of(&c->method.n_gamma);
}

void lw_method_build(const lw_case *c, lw_method *method) {
  *method = (lw_method){
      .pressure = (lw_pressure_method)word_of(&c->method.pressure),
      .plane = (lw_plane_choice)word_of(&c->method.plane),
      .direction = (lw_direction)word_of(&c->method.thrust_direction),
      .thrust_vertical = (lw_counted)word_of(&c->method.thrust_vertical),
      .soil_on_heel = (lw_counted)word_of(&c->method.soil_on_heel),
      .pad_in_trench = (lw_counted)word_of(&c->method.pad_in_trench),
      .surcharge_on_heel = (lw_surcharge_on_heel)word_of(&c->method.surcharge_on_heel),
      .passive_as = (lw_passive_as)word_of(&c->method.passive_as),
      .passive_as_given = c->method.passive_as.origin == LW_GIVEN || c->method.passive_as.origin == LW_TABLE,
      .uplift_as = (lw_uplift_as)word_of(&c->method.uplift_as),
      .base_pressure = base_pressure_of(c),
      .bearing = (lw_bearing_method)word_of(&c->method.bearing),
      .n_gamma = n_gamma_of(c),
      .n_gamma_value = lw_si_or(&c->method.n_gamma_value, 0.0),
      .depth_factors = (lw_own_or_none)word_of(&c->method.depth_factors),
      .inclination_factors = (lw_own_or_none)word_of(&c->method.inclination_factors),
      .bearing_on = (lw_bearing_on)word_of(&c->method.bearing_on),
      .crack = (lw_crack)word_of(&c->method.crack),
      .load_pressure = (lw_load_pressure)word_of(&c->method.load_pressure),
      .influence_rad = lw_si_or(&c->method.influence_line, LW_HALF_PI / 2.0),
      .passive_share = lw_si_or(&c->method.passive, 0.0),
      .uplift_share = lw_si_or(&c->method.uplift, 1.0),
      .passive_by = (lw_passive_by)word_of(&c->method.passive_by),
      .active_by = (lw_active_by)word_of(&c->method.active_by),
      .overconsolidation = (lw_overconsolidation)word_of(&c->method.overconsolidation),
      .coefficient = lw_si_or(&c->method.coefficient, 0.0),
      .seismic_height = lw_si_or(&c->method.seismic_height, 0.6),
      .slip = (lw_slip_method)word_of(&c->method.slip),
  };
}
