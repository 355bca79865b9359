/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "wall_rows.h"

/* The names of walls.csv and where each number lies in a result. */

static const lw_section *section_of(const wall_place *p) {
  return &p->result->wall.section;
}

/* --- weights and arms: "weight stem", "arm slab"; of the soil "low" and "high" are the two lots that books
 * list apart, below and above the level where the ground meets the wall --- */

static bool is_force(const wall_place *p, const lw_force *f, const char *what) {
  static const char *const PARTS[] = {"course", "cap", "slab", "face", "stem", "back", "polygon"};
  switch (f->kind) {
  case LW_FORCE_PART:
    if (strcmp(what, "wall") == 0) return true;
    return f->index >= 0 && strcmp(what, PARTS[section_of(p)->part[f->index].kind]) == 0;
  case LW_FORCE_SOIL_ON_WALL:
    if (strcmp(what, "soil") == 0) return true;
    return strcmp(what, f->index == 0 ? "soil low" : "soil high") == 0;
  case LW_FORCE_SURCHARGE_ON_WALL: return strcmp(what, "surcharge") == 0;
  default: return false;
  }
}

static bool weigh(const wall_place *p, const char *what, double *weight, double *arm) {
  double moment = 0.0;
  bool found = false;
  *weight = 0.0;
  for (int i = 0; i < p->body->forces.count; i++) {
    const lw_force *f = &p->body->forces.force[i];
    if (!is_force(p, f, what)) continue;
    found = true;
    *weight += f->vertical_kn_per_m;
    moment += f->vertical_kn_per_m * f->x_m;
  }
  *arm = moment / *weight;
  return found;
}

/* --- sums of a kind of force --- */

static double sum_of(const wall_place *p, lw_force_kind kind, bool horizontal) {
  double sum = 0.0;
  for (int i = 0; i < p->body->forces.count; i++) {
    const lw_force *f = &p->body->forces.force[i];
    if (f->kind == kind) sum += horizontal ? f->horizontal_kn_per_m : f->vertical_kn_per_m;
  }
  return sum;
}

static double soil_thrust(const wall_place *p) {
  return sum_of(p, LW_FORCE_THRUST, true);
}
static double soil_thrust_vertical(const wall_place *p) {
  return sum_of(p, LW_FORCE_THRUST, false);
}
static double surcharge_thrust(const wall_place *p) {
  return sum_of(p, LW_FORCE_SURCHARGE_THRUST, true);
}

static double wall_and_soil(const wall_place *p) {
  return sum_of(p, LW_FORCE_PART, false) + sum_of(p, LW_FORCE_SOIL_ON_WALL, false);
}

/* --- thrust --- */

static double thrust(const wall_place *p) {
  return p->body->thrust.total_kn_per_m;
}
static double thrust_horizontal(const wall_place *p) {
  return p->body->thrust.horizontal_kn_per_m;
}
static double thrust_vertical(const wall_place *p) {
  return p->body->thrust.vertical_kn_per_m;
}
static double thrust_height(const wall_place *p) {
  return p->body->thrust.height_of_action_m;
}
static double coefficient(const wall_place *p) {
  return p->body->thrust.coefficient;
}
static double crack_depth(const wall_place *p) {
  return p->body->thrust.crack_depth_m;
}
static double plane_height(const wall_place *p) {
  return p->body->back.plane.height_m;
}

static double thrust_and_water(const wall_place *p) {
  return p->body->thrust.total_kn_per_m + p->body->thrust.water_kn_per_m;
}

static double thrust_and_water_height(const wall_place *p) {
  const lw_thrust *t = &p->body->thrust;
  double moment = t->total_kn_per_m * t->height_of_action_m + t->water_kn_per_m * t->water_height_m;
  return moment / thrust_and_water(p);
}

/* With tension counted, as books do before they say that it cracks, the level diagram is one line. */
static double thrust_with_tension(const wall_place *p) {
  const lw_plane *plane = &p->body->back.plane;
  double top = NAN, foot = NAN, stress = plane->layer[0].unit_weight_kn_per_m3 * plane->height_m;
  (void)lw_rankine_pressure(LW_ACTIVE, &plane->layer[0], 0.0, 0.0, &top, NULL);
  (void)lw_rankine_pressure(LW_ACTIVE, &plane->layer[0], 0.0, stress, &foot, NULL);
  return 0.5 * (top + foot) * plane->height_m;
}

/* --- contact --- */

static double vertical(const wall_place *p) {
  return p->body->contact.vertical_kn_per_m;
}
static double horizontal(const wall_place *p) {
  return p->body->contact.horizontal_kn_per_m;
}
static double resisting(const wall_place *p) {
  return p->body->contact.resisting_knm_per_m;
}
static double overturning(const wall_place *p) {
  return p->body->contact.overturning_knm_per_m;
}
static double net_moment(const wall_place *p) {
  return resisting(p) - overturning(p);
}
static double resultant_arm(const wall_place *p) {
  return p->body->contact.resultant_m;
}
static double eccentricity(const wall_place *p) {
  return p->body->contact.eccentricity_m;
}
/* Where the resultant is outside there is no pressure to speak of. */
static double inside_or_none(const wall_place *p, double value) {
  return p->body->contact.inside ? value : NAN;
}
static double toe_pressure(const wall_place *p) {
  return inside_or_none(p, p->body->contact.front_kpa);
}
static double heel_pressure(const wall_place *p) {
  return inside_or_none(p, p->body->contact.rear_kpa);
}
static double greatest_pressure(const wall_place *p) {
  return p->body->contact.greatest_kpa;
}
static double resultant_force(const wall_place *p) {
  return hypot(vertical(p), horizontal(p));
}
static double passive(const wall_place *p) {
  return p->body->passive_kn_per_m;
}

static double middle_third(const wall_place *p) {
  const lw_contact *c = &p->body->contact;
  return c->inside && fabs(c->eccentricity_m) <= c->width_m / 6.0 ? 1.0 : 0.0;
}

/* --- checks --- */

static double has(const wall_place *p, lw_check_kind kind) {
  for (int i = 0; i < p->situation->check_count; i++) {
    const lw_check whole = lw_situation_check(p->situation, i), *c = &whole;
    if (c->kind == kind && c->at == p->at && c->joint == p->joint && c->has.known) return c->has.value;
  }
  return NAN;
}

static double sliding(const wall_place *p) {
  return has(p, LW_CHECK_SLIDING);
}
static double overturning_factor(const wall_place *p) {
  return has(p, p->at == LW_AT_BASE ? LW_CHECK_OVERTURNING : LW_CHECK_TILTING);
}
static double does_not_slide(const wall_place *p) {
  return sliding(p) >= 1.0 ? 1.0 : 0.0;
}

/* --- bearing of a book that mixes its authors: capacity and depth factors of one, inclination factors of
 * another, everything on the effective width --- */

static lw_strip effective_strip(const wall_place *p) {
  const lw_soil *soil = &p->result->wall.site.footing;
  double depth = section_of(p)->bearing_embedment_m;
  return (lw_strip){.width_m = p->body->contact.effective_width_m,
                    .depth_m = depth,
                    .overburden_kpa = depth * soil->unit_weight_kn_per_m3,
                    .friction_rad = soil->friction_rad,
                    .cohesion_kpa = soil->cohesion_kpa,
                    .unit_weight_kn_per_m3 = soil->unit_weight_kn_per_m3,
                    .vertical_kn_per_m = vertical(p),
                    .horizontal_kn_per_m = horizontal(p)};
}

static lw_bearing by(const wall_place *p,
                     lw_status (*author)(const lw_strip *, lw_bearing *, lw_error *, const lw_working *)) {
  lw_strip strip = effective_strip(p);
  lw_bearing bearing = {.nc = NAN, .dc = NAN, .dq = NAN};
  (void)author(&strip, &bearing, NULL, NULL);
  return bearing;
}

static double depth_factor_c(const wall_place *p) {
  return by(p, lw_bearing_hansen).dc;
}
static double depth_factor_q(const wall_place *p) {
  return by(p, lw_bearing_hansen).dq;
}

static double ultimate_of(const wall_place *p, const lw_bearing *depth) {
  lw_strip s = effective_strip(p);
  lw_bearing n = by(p, lw_bearing_vesic), i = by(p, lw_bearing_meyerhof);
  return s.cohesion_kpa * n.nc * depth->dc * i.ic + s.overburden_kpa * n.nq * depth->dq * i.iq +
         0.5 * s.unit_weight_kn_per_m3 * s.width_m * n.n_gamma * i.i_gamma;
}

static double mixed_ultimate(const wall_place *p) {
  lw_bearing depth = by(p, lw_bearing_hansen);
  return ultimate_of(p, &depth);
}

static double mixed_factor(const wall_place *p) {
  lw_bearing depth = by(p, lw_bearing_hansen);
  return ultimate_of(p, &depth) / toe_pressure(p);
}

/* --- geometry --- */

static double height(const wall_place *p) {
  return section_of(p)->height_m;
}
static double fill_over_heel(const wall_place *p) {
  return plane_height(p) - section_of(p)->part[0].top_m;
}
static double over_point_4(const wall_place *p) {
  return height(p) - p->result->given.shape.point[3].y.si;
}

static double heel_width(const wall_place *p) {
  const lw_section *s = section_of(p);
  return s->base_width_m - s->part[s->part_count - 1].rear_m;
}

static double design_friction(const wall_place *p) {
  return p->body->back.plane.layer[0].friction_rad;
}

typedef struct quantity {
  const char *name;
  double (*of)(const wall_place *);
} quantity;

static const quantity QUANTITIES[] = {
    {"wall and soil", wall_and_soil},
    {"soil thrust horizontal", soil_thrust},
    {"soil thrust vertical", soil_thrust_vertical},
    {"surcharge thrust", surcharge_thrust},
    {"thrust", thrust},
    {"thrust horizontal", thrust_horizontal},
    {"thrust vertical", thrust_vertical},
    {"thrust height", thrust_height},
    {"thrust and water", thrust_and_water},
    {"thrust and water height", thrust_and_water_height},
    {"thrust with tension", thrust_with_tension},
    {"coefficient", coefficient},
    {"crack depth", crack_depth},
    {"plane height", plane_height},
    {"vertical", vertical},
    {"horizontal", horizontal},
    {"resisting moment", resisting},
    {"overturning moment", overturning},
    {"net moment", net_moment},
    {"resultant arm", resultant_arm},
    {"resultant force", resultant_force},
    {"eccentricity", eccentricity},
    {"toe pressure", toe_pressure},
    {"heel pressure", heel_pressure},
    {"greatest pressure", greatest_pressure},
    {"resultant in middle third", middle_third},
    {"passive", passive},
    {"sliding factor", sliding},
    {"sliding holds by itself", does_not_slide},
    {"overturning factor", overturning_factor},
    {"depth factor of cohesion", depth_factor_c},
    {"depth factor of overburden", depth_factor_q},
    {"mixed ultimate pressure", mixed_ultimate},
    {"mixed bearing factor", mixed_factor},
    {"height", height},
    {"fill over heel", fill_over_heel},
    {"height over point 4", over_point_4},
    {"heel width", heel_width},
    {"design friction", design_friction},
};

bool wall_quantity(const wall_place *place, const char *name, double *value) {
  double weight, arm;
  if (strncmp(name, "weight ", 7) == 0) return weigh(place, name + 7, value, &arm);
  if (strncmp(name, "arm ", 4) == 0) return weigh(place, name + 4, &weight, value);
  for (size_t i = 0; i < sizeof QUANTITIES / sizeof QUANTITIES[0]; i++) {
    if (strcmp(name, QUANTITIES[i].name) != 0) continue;
    *value = QUANTITIES[i].of(place);
    return true;
  }
  return false;
}
