/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_ground.h"

#include <math.h>
#include <string.h>

#include "sheet/complete.h"
#include "sheet/faults.h"
#include "sheet/values.h"

bool lw_pressure_ground_has(const char *folded) {
  return strncmp(folded, "soil ", 5) == 0 || strncmp(folded, "load ", 5) == 0;
}

static bool soil_given(const lw_case_soil *soil) {
  return soil->name.origin == LW_GIVEN || lw_given(&soil->friction) || lw_given(&soil->cohesion) ||
         lw_given(&soil->unit_weight) || lw_given(&soil->saturated_unit_weight) || lw_given(&soil->bottom) ||
         lw_given(&soil->overconsolidation) || lw_given(&soil->light_unit_weight);
}

static int soil_count(const lw_case *c) {
  int count = 1;
  for (int i = 1; i < LW_SOIL_MAX; i++)
    if (soil_given(&c->ground.soil[i])) count = i + 1;
  return count;
}

static void missing(lw_faults *faults, int soil, const char *item, const char *example) {
  char name[64];
  lw_print(name, sizeof name, "soil %d %s", soil + 1, item);
  lw_faults_add(faults, LW_FAULT_MISSING_ITEM, (lw_cell_place){0, 0}, name, "", "'%s=%s'", name, example);
}

/* A name is looked up, and a weight that helps is wanted, for a wall. */
static void refuse_what_walls_have(lw_completing *s, lw_case_soil *soil) {
  if (soil->name.origin == LW_GIVEN)
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &soil->name,
                      "a friction angle and a unit weight; a soil's name is for a sheet");
  if (lw_given(&soil->light_unit_weight))
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &soil->light_unit_weight,
                      "this item left out: nothing here is helped by the soil's weight");
}

static void hold_bottom(lw_completing *s, int i, bool last, double above_m) {
  const lw_quantity *bottom = &s->c->ground.soil[i].bottom;
  if (last && lw_given(bottom))
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, bottom, "no bottom for the last soil: it goes on downwards");
  else if (!last && !lw_given(bottom))
    missing(s->faults, i, "bottom", "0.5 m");
  else if (!last && bottom->si <= above_m)
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, bottom, "a depth below %.6g m, where the layer begins",
                      above_m);
}

static void hold_soils(lw_completing *s) {
  int count = soil_count(s->c);
  double above = 0.0;
  for (int i = 0; i < count; i++) {
    lw_case_soil *soil = &s->c->ground.soil[i];
    refuse_what_walls_have(s, soil);
    if (i > 0 && !lw_given(&soil->friction)) missing(s->faults, i, "friction angle", "30 deg");
    if (i > 0 && !lw_given(&soil->unit_weight)) missing(s->faults, i, "unit weight", "18 kN/m3");
    if (lw_given(&soil->saturated_unit_weight) && lw_given(&soil->unit_weight) &&
        soil->saturated_unit_weight.si < soil->unit_weight.si)
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &soil->saturated_unit_weight,
                        "at least the unit weight of the moist soil");
    hold_bottom(s, i, i + 1 == count, above);
    above = lw_given(&soil->bottom) ? soil->bottom.si : above;
  }
}

static bool names_fit(lw_completing *s) {
  int before = s->faults->count;
  for (int i = 0; i < LW_LOAD_MAX; i++) {
    lw_case_load *load = &s->c->load[i];
    if (load->name.origin == LW_GIVEN)
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &load->name,
                        "its kind, size and place; a load's name is for a sheet");
    if (load->kind.origin == LW_GIVEN && load->kind.value == LW_LOAD_CAP)
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &load->kind,
                        "a load on the ground behind: uniform, strip, line or point");
  }
  return !lw_faults_more(s->faults, before);
}

void lw_pressure_ground_hold(lw_case *c, lw_faults *faults) {
  lw_completing s = {.c = c, .faults = faults};
  hold_soils(&s);
  if (names_fit(&s)) lw_complete_loads(&s);
}

static void put_layer(const lw_case_soil *soil, lw_layer *layer) {
  double moist = lw_si_or(&soil->unit_weight, 0.0);
  *layer = (lw_layer){.bottom_m = lw_si_or(&soil->bottom, INFINITY),
                      .friction_rad = lw_si_or(&soil->friction, 0.0),
                      .cohesion_kpa = lw_si_or(&soil->cohesion, 0.0),
                      .unit_weight_kn_per_m3 = moist,
                      .saturated_unit_weight_kn_per_m3 = lw_si_or(&soil->saturated_unit_weight, moist),
                      .overconsolidation = lw_si_or(&soil->overconsolidation, 1.0)};
}

static void put_load(const lw_case_load *load, lw_plane *plane) {
  bool strip = load->kind.value == LW_LOAD_STRIP;
  double pressure = lw_si_or(&load->pressure, 0.0), at = lw_si_or(&load->distance, 0.0);
  if (load->kind.origin == LW_ABSENT || load->kind.value == LW_LOAD_NONE) return;
  if (load->kind.value == LW_LOAD_UNIFORM) {
    plane->surcharge_kpa += pressure;
    return;
  }
  plane->load[plane->load_count++] =
      (lw_plane_load){.near_m = strip ? lw_si_or(&load->near_edge, 0.0) : at,
                      .far_m = strip ? lw_si_or(&load->far_edge, 0.0) : at,
                      .pressure_kpa = strip ? pressure : 0.0,
                      .force_kn_per_m = strip ? 0.0 : lw_si_or(&load->force, 0.0),
                      .below_m = lw_si_or(&load->below_ground, 0.0),
                      .point = load->kind.value == LW_LOAD_POINT};
}

void lw_pressure_ground_put(const lw_case *c, lw_plane *plane) {
  plane->layer_count = soil_count(c);
  for (int i = 1; i < plane->layer_count; i++) put_layer(&c->ground.soil[i], &plane->layer[i]);
  plane->layer[0].bottom_m = plane->layer_count > 1 ? c->ground.soil[0].bottom.si : INFINITY;
  for (int i = 0; i < LW_LOAD_MAX; i++) put_load(&c->load[i], plane);
}

void lw_pressure_ground_numbers(const lw_case *c, int *number) {
  int count = 0;
  for (int i = 0; i < LW_LOAD_MAX; i++)
    if (c->load[i].kind.origin != LW_ABSENT && c->load[i].kind.value > LW_LOAD_UNIFORM)
      number[count++] = i + 1;
}
