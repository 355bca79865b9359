/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdio.h>

#include "base/tell.h"
#include "pressure_side.h"
#include "report/diagram_words.h"

/* Pressure against depth: as tables of text, and every column as CSV. */

/* A pressure or a push; pounds have one decimal. */
typedef struct told {
  lw_units units;
  const char *unit;
} told;

static void add_number(told in, lw_number value, int wide, lw_text *text) {
  if (value.known)
    lw_text_addf(text, "%*.*f", wide, in.units == LW_UNITS_US ? 1 : 3,
                 lw_tell_in(in.units, in.unit, value.value));
  else
    lw_text_addf(text, "%*s", wide, "-");
}

/* What is on the back: nothing where only the upright plane is. */
static lw_number of_back(const lw_diagram_depth *row, double value) {
  return (lw_number){value, row->depth_m > -1e-9};
}

static const char *depth_head(lw_units units) {
  return units == LW_UNITS_US ? "depth ft" : " depth m";
}

static void add_active(const lw_diagram *d, lw_units units, lw_text *text) {
  static const lw_way COLUMN[] = {LW_WAY_RANKINE, LW_WAY_COULOMB, LW_WAY_LOG_SPIRAL, LW_WAY_ANNEX_C,
                                  LW_WAY_AT_REST};
  const told kpa = {units, "kPa"};
  lw_text_addf(text,
               "\nActive and at rest: level pressure of soil and uniform load, %s over the height,\n"
               "not along the back; stress is upright, water and load in it\n"
               " %8s soil  stress   water Rankine Coulomb  spiral annex C at rest   loads\n",
               lw_tell_unit(units, "kPa").text, depth_head(units));
  for (int i = 0; i < d->depth_count; i++) {
    const lw_diagram_depth *row = &d->depth[i];
    lw_text_addf(text, "  %7.3f%5d", lw_tell_in(units, "m", row->depth_m), row->layer + 1);
    add_number(kpa, of_back(row, row->stress_kpa), 8, text);
    add_number(kpa, of_back(row, row->pore_kpa), 8, text);
    for (size_t k = 0; k < sizeof COLUMN / sizeof *COLUMN; k++)
      add_number(kpa, row->soil_kpa[COLUMN[k]], 8, text);
    add_number(kpa, of_back(row, row->loads_kpa), 8, text);
    lw_text_add(text, "\n");
  }
}

static void add_passive(const lw_diagram *d, lw_units units, lw_text *text) {
  static const lw_way COLUMN[] = {LW_WAY_PASSIVE_RANKINE, LW_WAY_PASSIVE_COULOMB, LW_WAY_PASSIVE_LOG_SPIRAL,
                                  LW_WAY_PASSIVE_ANNEX_C};
  const told kpa = {units, "kPa"}, push = {units, "kN/m"};
  lw_text_addf(text,
               "\nPassive, the same, beside the effective stress; wedge act and wedge pas: the level\n"
               "thrust of a wedge on the plane as far down as here, active and passive, %s\n"
               " %8s  effective  Rankine  Coulomb   spiral  annex C  wedge act  wedge pas\n",
               lw_tell_unit(units, "kN/m").text, depth_head(units));
  for (int i = 0; i < d->depth_count; i++) {
    const lw_diagram_depth *row = &d->depth[i];
    lw_text_addf(text, "  %7.3f", lw_tell_in(units, "m", row->depth_m));
    add_number(kpa, of_back(row, row->effective_kpa), 11, text);
    for (size_t k = 0; k < sizeof COLUMN / sizeof *COLUMN; k++)
      add_number(kpa, row->soil_kpa[COLUMN[k]], 9, text);
    add_number(push, row->down_to_kn_per_m[LW_WAY_WEDGE], 11, text);
    add_number(push, row->down_to_kn_per_m[LW_WAY_PASSIVE_WEDGE], 11, text);
    lw_text_add(text, "\n");
  }
}

/* The part of each load: what Coulomb and at rest make of the uniform one, and each at a distance. */
static void add_loads(const lw_diagram *d, lw_units units, lw_text *text) {
  const lw_plane *back = &d->asked.back;
  const told kpa = {units, "kPa"};
  char name[24];
  if (back->load_count == 0 && back->surcharge_kpa <= 0.0) return;
  lw_text_addf(text, "\nThe part of each load, level, %s", lw_tell_unit(units, "kPa").text);
  if (back->load_count > 0)
    lw_text_addf(text, "; at a distance by the %s", lw_load_theory_title(d->loads_by));
  lw_text_addf(text, "\n %8s", depth_head(units));
  if (back->surcharge_kpa > 0.0) lw_text_add(text, "  uniform,  uniform,");
  for (int k = 0; k < back->load_count; k++)
    lw_text_addf(text, "%12s", lw_diagram_load_name(d, k, name, sizeof name));
  if (back->surcharge_kpa > 0.0) lw_text_add(text, "\n            Coulomb   at rest");
  lw_text_add(text, "\n");
  for (int i = 0; i < d->depth_count; i++) {
    const lw_diagram_depth *row = &d->depth[i];
    lw_text_addf(text, "  %7.3f", lw_tell_in(units, "m", row->depth_m));
    if (back->surcharge_kpa > 0.0) {
      add_number(kpa, row->uniform_kpa[LW_WAY_COULOMB], 10, text);
      add_number(kpa, row->uniform_kpa[LW_WAY_AT_REST], 10, text);
    }
    for (int k = 0; k < back->load_count; k++) add_number(kpa, of_back(row, row->load_kpa[k]), 12, text);
    lw_text_add(text, "\n");
  }
}

void lw_pressure_depths_text(const lw_diagram *diagram, lw_units units, lw_text *text) {
  add_active(diagram, units, text);
  add_passive(diagram, units, text);
  add_loads(diagram, units, text);
}

static void csv_head(const lw_diagram *d, lw_text *text) {
  char name[24];
  lw_text_add(text, "depth [m],soil,stress [kPa],water [kPa],effective stress [kPa]");
  for (int i = 0; i < LW_WAY_COUNT; i++) {
    const char *slug = lw_way_slug((lw_way)i);
    if (i == LW_WAY_WEDGE || i == LW_WAY_PASSIVE_WEDGE)
      lw_text_addf(text, ",%s down to here [kN/m]", slug);
    else
      lw_text_addf(text, ",%s [kPa],%s of it uniform load [kPa]", slug, slug);
  }
  for (int k = 0; k < d->asked.back.load_count; k++)
    lw_text_addf(text, ",%s [kPa]", lw_diagram_load_name(d, k, name, sizeof name));
  lw_text_add(text, "\n");
}

static void csv_number(lw_number value, lw_text *text) {
  lw_text_add(text, ",");
  if (value.known) lw_text_addf(text, "%.9g", value.value);
}

void lw_pressure_depths_csv(const lw_diagram *diagram, lw_text *text) {
  csv_head(diagram, text);
  for (int i = 0; i < diagram->depth_count; i++) {
    const lw_diagram_depth *row = &diagram->depth[i];
    lw_text_addf(text, "%.9g,%d", row->depth_m, row->layer + 1);
    csv_number(of_back(row, row->stress_kpa), text);
    csv_number(of_back(row, row->pore_kpa), text);
    csv_number(of_back(row, row->effective_kpa), text);
    for (int k = 0; k < LW_WAY_COUNT; k++) {
      bool wedge = k == LW_WAY_WEDGE || k == LW_WAY_PASSIVE_WEDGE;
      csv_number(wedge ? row->down_to_kn_per_m[k] : row->soil_kpa[k], text);
      if (!wedge) csv_number(row->uniform_kpa[k], text);
    }
    for (int k = 0; k < diagram->asked.back.load_count; k++) csv_number(of_back(row, row->load_kpa[k]), text);
    lw_text_add(text, "\n");
  }
}
