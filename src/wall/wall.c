/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "wall.h"

#include <lowwall/wall.h>

#include <math.h>

#include "soil/method.h"
#include "soil/site.h"
#include "beside.h"
#include "doubt.h"
#include "person.h"
#include "section.h"
#include "tier.h"
#include "wind.h"

/* A share is of the weakest soil behind: less friction on the back is the greater push. */
static double wall_friction_of(const lw_case *c, const lw_site *site) {
  const lw_quantity *friction = &c->wall.friction;
  if (friction->origin == LW_ABSENT) return 0.0;
  if (friction->kind == LW_KIND_ANGLE) return friction->si;
  return friction->si * lw_site_least_friction(site);
}

void lw_wall_build(const lw_case *c, const lw_tables *tables, lw_wall *wall) {
  *wall = (lw_wall){0};
  wall->people_on_cap =
      c->courses.people_on_cap.origin == LW_ABSENT || c->courses.people_on_cap.value == LW_YES;
  lw_site_build(c, tables, &wall->site);
  lw_section_build(c, tables, &wall->section);
  lw_method_build(c, &wall->method);
  wall->wall_friction_rad = wall_friction_of(c, &wall->site);
  /* Soil drags down the back it settles along; nobody knows that of another face. */
  wall->front_friction_rad = c->wall.friction.origin == LW_GIVEN ? wall->wall_friction_rad : 0.0;
  lw_wall_wind_build(c, tables, &wall->wind);
  lw_wall_person_build(c, tables, &wall->person);
  if (c->earthquake.horizontal.origin != LW_ABSENT) wall->seismic_horizontal = c->earthquake.horizontal.si;
  if (c->earthquake.vertical.origin != LW_ABSENT) wall->seismic_vertical = fabs(c->earthquake.vertical.si);
  lw_print(wall->factor_set, sizeof wall->factor_set, "%s",
           c->method.factor_set.origin == LW_ABSENT ? "lowwall" : c->method.factor_set.text);
  lw_tier_build(c, tables, wall);
  lw_slip_cause_build(c, tables, wall);
  lw_beside_build(c, tables, wall);
  lw_doubt_build(c, tables, wall);
  if (!wall->section.known) return;
  wall->weight_kn_per_m = lw_section_weight(&wall->section);
  wall->weight_moment_knm_per_m = lw_section_moment(&wall->section);
}
