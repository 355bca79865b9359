/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "footing.h"

#include <math.h>

#include "sheet/values.h"
#include "tables/known.h"

/* What the wall stands on. It slides on one of two faces: on its levelled bed, or the bed with it on the
 * ground. */

/* Sheared under a base, ground falls to its critical angle [EN1997-1 6.5.3]. An angle that is given is the
 * one that is meant; of ground that nobody names nothing is known but the least friction of a base. */
static double friction_of_ground(const lw_case *c, const lw_tables *tables, double times) {
  const lw_quantity *angle = &c->ground.footing.friction;
  const lw_soil_row *row = lw_footing_row(c, tables);
  if (row && !isnan(row->critical_rad)) return tan(row->critical_rad) * times;
  if (row || angle->origin == LW_GIVEN) return tan(angle->si);
  const lw_interface_row *unknown = lw_known_interface(tables, LW_ASSUMED_BASE);
  return c->look == LW_LOOK_LIKELY ? unknown->friction_likely : unknown->friction_low;
}

/* Clay holds no more than its undrained strength. By cautious values that goes for ground that nobody has
 * named as well, and whose friction nobody gives: it counts as what is assumed there. */
static double undrained_of(const lw_case *c, const lw_tables *tables, double times) {
  const lw_soil_row *row = lw_footing_row(c, tables);
  bool on_pad = c->pad.thickness.origin != LW_ABSENT;
  bool face_given = !on_pad && c->ground.base_friction.origin == LW_GIVEN;
  if (!row && c->look != LW_LOOK_LIKELY && !lw_told(&c->ground.footing.friction) && !face_given)
    row = lw_known_soil(tables, LW_SOIL_OF_CLAY_LOAM);
  return row && !isnan(row->undrained_kpa) ? row->undrained_kpa * times : 0.0;
}

static void faces_build(const lw_case *c, const lw_tables *tables, lw_site *site) {
  double times = c->look == LW_LOOK_LIKELY ? lw_known_value(tables, LW_THRESHOLD_LIKELY_GROUND_FACE) : 1.0;
  site->bed_friction = lw_si_or(&c->ground.base_friction, 0.0);
  site->pad_friction = friction_of_ground(c, tables, times);
  site->undrained_kpa = undrained_of(c, tables, times);
  /* Without a pad the weaker of the two faces acts right under the wall. */
  bool told = lw_told(&c->ground.footing.friction);
  bool no_pad = c->pad.thickness.origin == LW_ABSENT;
  site->base_friction = told && no_pad ? fmin(site->bed_friction, site->pad_friction) : site->bed_friction;
}

/* Clay that is there keeps what a table pairs with its low angle, where it does not crack. Near the surface
 * it softens: by cautious values it keeps nothing there, and usually a little. A strength that is given has
 * no pair on file. */
static void paired_build(const lw_case *c, const lw_tables *tables, lw_site *site) {
  const lw_soil_row *row = lw_footing_row(c, tables);
  const lw_choice *reactive = &c->site.reactive_soil;
  bool still = reactive->origin == LW_GIVEN && reactive->value == LW_NO;
  if (!row || isnan(row->paired_cohesion_kpa) || !still || c->ground.footing.cohesion.origin == LW_GIVEN)
    return;
  double most = lw_known_value(tables, LW_THRESHOLD_PAIRED_MOST),
         part = lw_known_value(tables, LW_THRESHOLD_PAIRED_SHARE) * row->paired_cohesion_kpa,
         softened = fmin(part, lw_known_value(tables, LW_THRESHOLD_PAIRED_SHALLOW));
  bool likely = c->look == LW_LOOK_LIKELY;
  site->paired = (lw_paired){
      .cohesion_kpa = likely ? row->paired_cohesion_kpa : fmin(part, most),
      .depth_m = lw_known_value(tables, LW_THRESHOLD_PAIRED_DEPTH),
      .shallow_kpa = likely ? softened : 0.0,
      .likely_kpa = row->paired_cohesion_kpa,
      .likely_shallow_kpa = softened,
      .slip_without = likely ? 0.0 : lw_known_value(tables, LW_THRESHOLD_SLIP_WITHOUT_PAIR),
  };
}

static void pad_build(const lw_case *c, const lw_tables *tables, lw_site *site) {
  const lw_soil_row *stone =
      c->pad.material.origin == LW_ABSENT ? NULL : lw_tables_soil(tables, c->pad.material.text);
  site->pad = (lw_pad){
      .thickness_m = lw_si_or(&c->pad.thickness, 0.0),
      .width_m = lw_si_or(&c->pad.width, 0.0),
      .spread = lw_si_or(&c->pad.spread, 0.0),
      .unit_weight_kn_per_m3 = stone ? stone->light_unit_weight_kn_per_m3 : 0.0,
      .allowable_kpa = stone && isfinite(stone->allowable_bearing_kpa) ? stone->allowable_bearing_kpa : 0.0,
      .in_known_ground = lw_told(&c->ground.footing.friction),
  };
}

void lw_footing_build(const lw_case *c, const lw_tables *tables, lw_site *site) {
  site->base_adhesion_kpa = lw_si_or(&c->ground.base_adhesion, 0.0);
  site->allowable_bearing_kpa = lw_si_or(&c->ground.allowable_bearing, 0.0);
  faces_build(c, tables, site);
  paired_build(c, tables, site);
  pad_build(c, tables, site);
}
