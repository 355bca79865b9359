/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "tables/known.h"
#include "complete.h"
#include "values.h"

/* Friction of the back where the sheet does not say: a share of the soil's angle by what the back is like,
 * what the wall stands on and what lies against it. It holds only while the soil sinks more than the wall. */

static const lw_soil_row *row_of(const lw_completing *s, const lw_case_soil *soil) {
  return soil->name.origin == LW_GIVEN ? lw_tables_soil(s->tables, soil->name.text) : NULL;
}

/* A row that may bear nothing is of ground softer than firm, or of nobody knows what. */
static bool on_soft_ground(const lw_completing *s) {
  const lw_quantity *bearing = &s->c->ground.allowable_bearing;
  const lw_soil_row *row = row_of(s, &s->c->ground.footing);
  double firm = lw_known_soil(s->tables, LW_SOIL_OF_FIRM_CLAY)->allowable_bearing_kpa;
  return (row != NULL && isnan(row->allowable_bearing_kpa)) || (lw_given(bearing) && bearing->si < firm);
}

/* Somebody has named the ground below, or measured what it is or bears. */
static bool ground_is_told(const lw_case *c) {
  const lw_case_soil *footing = &c->ground.footing;
  return footing->name.origin == LW_GIVEN || lw_given(&footing->friction) || lw_given(&footing->cohesion) ||
         lw_given(&c->ground.allowable_bearing);
}

/* What fills a bed was brought there, and stone keeps the ground from the wall. */
static bool natural_clay_lies_against_it(const lw_completing *s) {
  const lw_case *c = s->c;
  bool stone = lw_given(&c->ground.stone_width) && c->ground.stone_width.si > 0.0;
  if (stone || lw_choice_is(&c->site.behind, LW_BEHIND_BED)) return false;
  for (int i = 0; i < s->soil_count; i++) {
    const lw_soil_row *row = row_of(s, &c->ground.soil[i]);
    if (row != NULL && row->clay) return true;
  }
  return false;
}

static const lw_interface_row *back_of(const lw_completing *s) {
  if (on_soft_ground(s)) return lw_known_interface(s->tables, LW_ASSUMED_WALL_ON_SOFT);
  if (natural_clay_lies_against_it(s)) return lw_known_interface(s->tables, LW_ASSUMED_WALL_AT_CLAY);
  bool smooth = lw_choice_is(&s->c->wall.back, LW_WALL_BACK_SMOOTH);
  const lw_interface_row *own =
      lw_known_interface(s->tables, smooth ? LW_ASSUMED_SMOOTH_WALL : LW_ASSUMED_WALL);
  if (ground_is_told(s->c)) return own;
  const lw_interface_row *unnamed = lw_known_interface(s->tables, LW_ASSUMED_WALL_ON_UNNAMED);
  return unnamed->share_of_friction_angle < own->share_of_friction_angle ? unnamed : own;
}

static double share_of(const lw_completing *s, const lw_interface_row *row) {
  bool likely = s->c->look == LW_LOOK_LIKELY && !isnan(row->friction_likely);
  return likely ? row->friction_likely : row->share_of_friction_angle;
}

static bool said(const lw_choice *choice) {
  return choice->origin == LW_GIVEN && choice->row != LW_WORKED_OUT_ROW;
}

/* The back of a check and the lining of an order are one membrane: whoever says either has said both. A
 * smooth back may have one over it. */
static void agree_on_lining(lw_completing *s) {
  lw_choice *back = &s->c->wall.back;
  const lw_choice *lining = &s->c->order.lining;
  if (!said(lining)) return;
  if (lining->value == LW_YES && !said(back)) {
    *back = (lw_choice){.value = LW_WALL_BACK_LINED, .origin = LW_GIVEN, .row = LW_WORKED_OUT_ROW};
  } else if (lining->value == LW_YES && back->value == LW_WALL_BACK_ROUGH) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, lining,
                      "`wall back = lined` beside it, or no lining: a rough back has no membrane");
  } else if (lining->value == LW_NO && said(back) && back->value == LW_WALL_BACK_LINED) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, lining,
                      "yes, or left out, beside `wall back = lined`: that is a membrane");
  }
}

void lw_complete_back(lw_completing *s) {
  lw_case *c = s->c;
  agree_on_lining(s);
  if (c->wall.friction.origin != LW_ABSENT) return;
  const lw_interface_row *row = back_of(s);
  double share = share_of(s, row);
  if (lw_back_is_lined(c)) share *= share_of(s, lw_known_interface(s->tables, LW_ASSUMED_MEMBRANE));
  c->wall.friction = lw_from_table(LW_KIND_SHARE, share, (int)(row - s->tables->interface_));
}
