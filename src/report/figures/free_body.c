/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "free_body.h"

#include <math.h>
#include <stddef.h>

#include "report/soil_push.h"
#include "report/text/loads.h"

/* The thrust on a contact and the contact in balance, each a number of the free body under a key. */

typedef struct lw_free_body_figure {
  const char *tail, *label, *unit;
  size_t offset;
  double times;
} lw_free_body_figure;

#define OF(field) offsetof(lw_free_body, field), 1.0
#define ANGLE(field) offsetof(lw_free_body, field), LW_DEG_PER_RAD

static const lw_free_body_figure thrusts[] = {
    {"plane_height_m", "height of the plane that soil pushes on", "m", OF(back.plane.height_m)},
    {"plane_batter_deg", "angle of the plane from the vertical", "deg", ANGLE(back.plane.batter_rad)},
    {"plane_slope_deg", "slope of the ground above the plane", "deg", ANGLE(back.plane.slope_rad)},
    {"plane_foot_x_m", "foot of the plane behind the toe", "m", OF(back.foot_x_m)},
    {"plane_foot_y_m", "foot of the plane above the base", "m", OF(back.foot_y_m)},
    {"plane_top_x_m", "top of the plane behind the toe", "m", OF(back.top_x_m)},
    {"plane_top_y_m", "top of the plane above the base", "m", OF(back.top_y_m)},
    {"thrust_kn_per_m", "thrust used, soil and load", "kN/m", OF(thrust.total_kn_per_m)},
    {"formula_kn_per_m", "thrust by the formula", "kN/m", OF(formula_kn_per_m)},
    {"rain_kn_per_m", "what rain seeping to a drain adds to it", "kN/m", OF(rain_kn_per_m)},
    {"coefficient", "coefficient of earth pressure, lowest soil", "", OF(thrust.coefficient)},
    {"thrust_angle_deg", "angle of the thrust to the horizontal", "deg", ANGLE(thrust.angle_rad)},
    {"thrust_horizontal_kn_per_m", "horizontal part of the thrust", "kN/m", OF(thrust.horizontal_kn_per_m)},
    {"thrust_vertical_kn_per_m", "vertical part of the thrust", "kN/m", OF(thrust.vertical_kn_per_m)},
    {"height_of_action_m", "height of the thrust above the foot of its plane", "m",
     OF(thrust.height_of_action_m)},
    {"surcharge_thrust_kn_per_m", "part of the thrust from the uniform load", "kN/m",
     OF(thrust.surcharge_kn_per_m)},
    {"surcharge_height_m", "height of that part above the foot of the plane", "m",
     OF(thrust.surcharge_height_m)},
    {"water_kn_per_m", "push of the water on the plane's height", "kN/m", OF(thrust.water_kn_per_m)},
    {"water_height_m", "height of that push above the foot of the plane", "m", OF(thrust.water_height_m)},
    {"crack_depth_m", "depth of the tension crack", "m", OF(thrust.crack_depth_m)},
};

static const lw_free_body_figure in_front[] = {
    {"passive_kn_per_m", "resistance of the ground in front that is counted", "kN/m", OF(passive_kn_per_m)},
};

static const lw_free_body_figure wedges[] = {
    {"wedge_thrust_kn_per_m", "thrust by trial wedges", "kN/m", OF(wedge.thrust_kn_per_m)},
    {"wedge_plane_deg", "failure plane of the wedge from the horizontal", "deg",
     ANGLE(wedge.plane_angle_rad)},
    {"wedge_weight_kn_per_m", "weight of the wedge and the loads on it", "kN/m", OF(wedge.weight_kn_per_m)},
    {"wedge_reach_m", "where the wedge meets the ground, behind the plane", "m", OF(wedge.reach_m)},
    {"wedge_height_of_action_m", "height of the wedge's thrust above the foot of its plane", "m",
     OF(wedge.height_of_action_m)},
};

static const lw_free_body_figure contacts[] = {
    {"width_m", "width of the contact", "m", OF(contact.width_m)},
    {"front_m", "front edge of the contact behind the toe", "m", OF(contact.front_m)},
    {"kern_m", "all that bears is in compression with the resultant so far in front of the middle", "m",
     OF(contact.kern_m)},
    {"vertical_kn_per_m", "all that presses down", "kN/m", OF(contact.vertical_kn_per_m)},
    {"horizontal_kn_per_m", "all that pushes to the front", "kN/m", OF(contact.horizontal_kn_per_m)},
    {"uplift_kn_per_m", "uplift of water under it", "kN/m", OF(contact.uplift_kn_per_m)},
    {"resisting_knm_per_m", "moments that hold it back", "kN m/m", OF(contact.resisting_knm_per_m)},
    {"overturning_knm_per_m", "moments that tip it", "kN m/m", OF(contact.overturning_knm_per_m)},
};

static const lw_free_body_figure pressures[] = {
    {"resultant_m", "resultant from the front edge", "m", OF(contact.resultant_m)},
    {"eccentricity_m", "resultant in front of the middle", "m", OF(contact.eccentricity_m)},
    {"share_in_compression", "share of the contact in compression", "", OF(contact.share_in_compression)},
    {"front_kpa", "pressure at the front edge", "kPa", OF(contact.front_kpa)},
    {"rear_kpa", "pressure at the rear edge", "kPa", OF(contact.rear_kpa)},
    {"greatest_kpa", "greatest pressure", "kPa", OF(contact.greatest_kpa)},
    {"effective_width_m", "effective width", "m", OF(contact.effective_width_m)},
};

/* Only under blocks that taper. */
static const lw_free_body_figure tapers[] = {
    {"area_m2", "area of the contact, of a metre of wall", "m2", OF(contact.area_m2)},
    {"front_share", "share of the run that bears at its front", "", OF(contact.taper.front)},
    {"rear_share", "share of the run that bears at its rear", "", OF(contact.taper.rear)},
    {"kern_behind_m", "all that bears is in compression with the resultant so far behind the middle", "m",
     OF(contact.kern_behind_m)},
    {"pressed_m", "how much of the width is in compression", "m", OF(contact.compressed_m)},
};

/* Only in an earthquake. */
static const lw_free_body_figure seismic[] = {
    {"seismic_thrust_kn_per_m", "part of the thrust from the earthquake", "kN/m",
     OF(thrust.seismic_kn_per_m)},
    {"seismic_height_m", "height of that part above the foot of the plane", "m", OF(thrust.seismic_height_m)},
    {"seismic_coefficient", "coefficient in the earthquake, lowest soil", "", OF(thrust.seismic_coefficient)},
    {"seismic_angle_deg", "angle by which the earthquake turns the weight, lowest soil", "deg",
     ANGLE(thrust.seismic_turn_rad)},
};

static void put_all(const lw_figures *figures, const lw_free_body *body, const lw_free_body_figure *list,
                    size_t count) {
  for (size_t i = 0; i < count; i++) {
    const double *value = (const double *)(const void *)((const char *)body + list[i].offset);
    lw_figures_put(figures, &(lw_figure_word){list[i].tail, list[i].label, list[i].unit, ""},
                   *value * list[i].times);
  }
}

#define COUNT(list) (sizeof(list) / sizeof *(list))

static void put_contact(const lw_figures *figures, const lw_free_body *body) {
  const lw_contact *contact = &body->contact;
  put_all(figures, body, contacts, COUNT(contacts));
  if (contact->inside) {
    put_all(figures, body, pressures, COUNT(pressures));
    lw_figures_put(figures,
                   &(lw_figure_word){"of_third",
                                     "eccentricity over a sixth of the width: to 1 in the middle third", "",
                                     ""},
                   lw_contact_of_third(contact));
  }
  if (contact->area_m2 < contact->width_m) put_all(figures, body, tapers, COUNT(tapers));
}

static void put_seismic(const lw_figures *figures, const lw_free_body *body) {
  const lw_seismic *shaken = &body->back.plane.seismic;
  if (shaken->horizontal > 0.0 || fabs(shaken->vertical) > 0.0)
    put_all(figures, body, seismic, COUNT(seismic));
}

void lw_figures_of_push(const lw_figures *figures, const lw_free_body *body) {
  if (body->status != LW_OK) return;
  put_all(figures, body, thrusts, COUNT(thrusts));
  put_seismic(figures, body);
}

/* What loads of limited width push beside the formula. */
static void of_loads(const lw_figures *figures, const lw_free_body *body) {
  if (!lw_free_body_has_loads(body)) return;
  lw_figures_put(figures,
                 &(lw_figure_word){"loads_push_kn_per_m", "push of loads at a distance, set beside the wedge",
                                   "kN/m", ""},
                 body->elastic.push_kn_per_m);
  lw_figures_put(
      figures,
      &(lw_figure_word){"loads_height_m", "height of that push above the foot of its plane", "m", ""},
      body->elastic.height_m);
}

/* What of the free body is drawn as one arrow. */
static void of_soil_push(const lw_figures *figures, const lw_free_body *body) {
  lw_soil_push push;
  if (!lw_soil_push_find(body, &push)) return;
  const lw_figure_row rows[] = {
      {"soil_push_kn_per_m", "push of soil and loads on it, as it acts", "kN/m", push.kn_per_m},
      {"soil_push_angle_deg", "angle of that push to the horizontal", "deg", push.angle_rad * LW_DEG_PER_RAD},
      {"soil_push_height_m", "height of that push above the foot of its plane", "m", push.above_foot_m},
      {"through_ground_kn_per_m", "what posts push through the ground, not in it", "kN/m",
       push.through_ground_kn_per_m},
  };
  LW_FIGURES_PUT(figures, rows);
}

void lw_figures_of_free_body(const lw_figures *figures, const lw_free_body *body) {
  if (body->status != LW_OK) return;
  put_all(figures, body, thrusts, COUNT(thrusts));
  put_all(figures, body, in_front, COUNT(in_front));
  put_seismic(figures, body);
  of_loads(figures, body);
  of_soil_push(figures, body);
  if (body->wedge_known) {
    put_all(figures, body, wedges, COUNT(wedges));
    lw_figures_put(figures, &(lw_figure_word){"wedge_difference_kn_per_m", "wedge less formula", "kN/m", ""},
                   body->wedge.thrust_kn_per_m - body->by_formula_kn_per_m);
  }
  put_contact(figures, body);
}

static lw_reason no_wedge(const lw_figures *figures) {
  if (figures->result->wall.method.coefficient > 0.0) return LW_REASON_NO_WEDGE_GIVEN;
  bool at_rest = figures->result->wall.method.pressure == LW_PRESSURE_AT_REST;
  return at_rest ? LW_REASON_NO_WEDGE_AT_REST : LW_REASON_NO_WEDGE;
}

void lw_figures_of_joint(const lw_figures *figures, const lw_joint *joint) {
  if (joint->status != LW_OK) return;
  lw_free_body body = {.contact = joint->contact};
  lw_figures_put(figures, &(lw_figure_word){"height_m", "height of the joint above the base", "m", ""},
                 joint->height_m);
  lw_figures_put(figures, &(lw_figure_word){"thrust_kn_per_m", "thrust used, soil and load", "kN/m", ""},
                 joint->thrust_kn_per_m);
  lw_figures_put(figures,
                 &(lw_figure_word){"height_of_action_m", "height of the thrust above the joint", "m", ""},
                 joint->thrust_height_m);
  if (joint->elastic_kn_per_m > 0.0) {
    lw_figures_put(figures,
                   &(lw_figure_word){"loads_push_kn_per_m", "push of loads at a distance, used", "kN/m", ""},
                   joint->elastic_kn_per_m);
    lw_figures_put(figures,
                   &(lw_figure_word){"loads_height_m", "height of that push above the joint", "m", ""},
                   joint->elastic_height_m);
  }
  lw_figures_put_number(figures,
                        &(lw_figure_word){"wedge_thrust_kn_per_m", "thrust by trial wedges", "kN/m", ""},
                        (lw_number){joint->wedge_kn_per_m, joint->wedge_known}, no_wedge(figures));
  put_contact(figures, &body);
}

/* Pressure down the plane: an entry at its ends and at every break, two where it jumps. */
void lw_figures_of_profile(const lw_figures *figures, const lw_free_body *body) {
  for (int i = 0; body->status == LW_OK && i < body->thrust.profile_count; i++) {
    const lw_profile_point *p = &body->thrust.profile[i];
    char part[24];
    lw_print(part, sizeof part, "profile-%d", i + 1);
    lw_figures b = lw_figures_below(figures, part);
    lw_figures_put(&b, &(lw_figure_word){"depth_m", "depth below the top of the plane", "m", ""}, p->depth_m);
    lw_figures_put(&b, &(lw_figure_word){"soil_kpa", "pressure of the soil, load included", "kPa", ""},
                   p->soil_kpa);
    lw_figures_put(&b, &(lw_figure_word){"surcharge_kpa", "part of it from the uniform load", "kPa", ""},
                   p->surcharge_kpa);
    lw_figures_put(&b, &(lw_figure_word){"water_kpa", "pressure of the water", "kPa", ""}, p->water_kpa);
  }
}

/* Bearing by theory, author's factors and all: as worked out for the footing that was checked. */
static void put_factors(const lw_figures *figures, const lw_bearing *b, const char *source) {
  const struct {
    const char *tail, *label, *unit;
    double value;
  } rows[] = {
      {"nc", "bearing factor Nc", "", b->nc},
      {"nq", "bearing factor Nq", "", b->nq},
      {"n_gamma", "bearing factor N gamma", "", b->n_gamma},
      {"dc", "depth factor of cohesion", "", b->dc},
      {"dq", "depth factor of overburden", "", b->dq},
      {"d_gamma", "depth factor of weight", "", b->d_gamma},
      {"ic", "inclination factor of cohesion", "", b->ic},
      {"iq", "inclination factor of overburden", "", b->iq},
      {"i_gamma", "inclination factor of weight", "", b->i_gamma},
      {"effective_width_m", "effective width", "m", b->effective_width_m},
      {"ultimate_kpa", "ultimate bearing pressure", "kPa", b->ultimate_kpa},
      {"net_kpa", "ultimate bearing pressure less the overburden", "kPa", b->net_kpa},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
    lw_figures_put(figures, &(lw_figure_word){rows[i].tail, rows[i].label, rows[i].unit, source},
                   rows[i].value);
}

void lw_figures_of_bearing(const lw_figures *figures, const lw_borne *borne) {
  const lw_bearing_routine *routine = lw_bearing_routine_of(figures->result->wall.method.bearing);
  if (!borne->known) return;
  lw_figures below = lw_figures_below(figures, "strip");
  put_factors(&below, &borne->bearing, routine->source);
}
