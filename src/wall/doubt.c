/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "doubt.h"

#include "sheet/values.h"
#include "tables/known.h"

/* Ground is known by its name, which is a row of the table or what a hand test showed, or by an angle that
 * somebody measured. */

static bool named(const lw_case_soil *soil) {
  return soil->name.origin == LW_GIVEN || soil->friction.origin == LW_GIVEN;
}

/* What it bears may be known of ground that has no name: for how hard an edge may press that is enough. */
static lw_doubt of_base(const lw_case *c, const lw_tables *tables, const lw_site *site) {
  bool told = named(&c->ground.footing) || c->ground.allowable_bearing.origin == LW_GIVEN;
  if (!told) return LW_DOUBT_NOT_NAMED;
  bool weak = site->allowable_bearing_kpa < lw_known_value(tables, LW_THRESHOLD_WEAK_GROUND);
  return weak ? LW_DOUBT_WEAK : LW_DOUBT_NONE;
}

static bool all_named(const lw_case *c, int count) {
  for (int i = 0; i < count; i++)
    if (!named(&c->ground.soil[i])) return false;
  return true;
}

/* A slip reaches back farther than the line of influence: a building counts as far away as another wall. */
static lw_doubt of_buildings(const lw_case *c, const lw_tables *tables, const lw_section *section) {
  const lw_quantity *distance = &c->site.building_distance;
  double reach = lw_known_value(tables, LW_THRESHOLD_SLIP_BUILDING) * section->height_m;
  bool closes = c->site.back.origin == LW_GIVEN && c->site.back.value == LW_BACK_BUILDING;
  if (closes || (distance->origin == LW_GIVEN && distance->si < reach)) return LW_DOUBT_BUILDING;
  return distance->origin == LW_GIVEN ? LW_DOUBT_NONE : LW_DOUBT_BUILDING_NOT_TOLD;
}

static lw_doubt of_slip(const lw_case *c, const lw_tables *tables, const lw_wall *wall) {
  if (!named(&c->ground.footing)) return LW_DOUBT_NOT_NAMED;
  if (!all_named(c, wall->site.soil_count)) return LW_DOUBT_FILL_NOT_NAMED;
  return of_buildings(c, tables, &wall->section);
}

void lw_doubt_build(const lw_case *c, const lw_tables *tables, lw_wall *wall) {
  wall->base_doubt = of_base(c, tables, &wall->site);
  wall->slip_doubt = of_slip(c, tables, wall);
}
