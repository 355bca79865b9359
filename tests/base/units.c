/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>

#include <lowwall/base.h>

typedef struct expected {
  lw_kind kind;
  const char *name;
  double to_si;
} expected;

/* From the exact definitions: 1 ft = 0.3048 m, 1 lb = 0.45359237 kg, g = 9.80665 m/s2. */
static const expected table[] = {
    {LW_KIND_LENGTH, "mm", 0.001},
    {LW_KIND_LENGTH, "in", 0.0254},
    {LW_KIND_LENGTH, "ft", 0.3048},
    {LW_KIND_LENGTH, "yd", 0.9144},
    {LW_KIND_ANGLE, "deg", 0.017453292519943295},
    {LW_KIND_PRESSURE, "psf", 0.04788025898033584},
    {LW_KIND_PRESSURE, "psi", 6.894757293168361},
    {LW_KIND_PRESSURE, "kg/m2", 0.00980665},
    {LW_KIND_LINE_LOAD, "lb/ft", 0.014593902937206365},
    {LW_KIND_LINE_LOAD, "plf", 0.014593902937206365},
    {LW_KIND_FORCE, "lb", 0.0044482216152605},
    {LW_KIND_UNIT_WEIGHT, "pcf", 0.15708746384624618},
    {LW_KIND_UNIT_WEIGHT, "kg/m3", 0.00980665},
    {LW_KIND_UNIT_WEIGHT, "t/m3", 9.80665},
    {LW_KIND_MASS, "lb", 0.45359237},
    {LW_KIND_SHARE, "%", 0.01},
};

Test(base, unit_factors_are_exact) {
  for (size_t i = 0; i < sizeof table / sizeof *table; i++) {
    const lw_unit *unit = lw_unit_find(table[i].kind, table[i].name, strlen(table[i].name));
    cr_assert(unit != NULL, "%s", table[i].name);
    cr_expect(fabs(unit->to_si / table[i].to_si - 1.0) < 4e-16, "%s: %.17g", table[i].name, unit->to_si);
  }
}

Test(base, a_unit_belongs_to_its_kind) {
  cr_expect(lw_unit_find(LW_KIND_LENGTH, "kPa", 3) == NULL);
  cr_expect(lw_unit_find(LW_KIND_PRESSURE, "lb", 2) == NULL);
  cr_expect(lw_unit_find(LW_KIND_NUMBER, "mm", 2) == NULL);
  cr_expect(lw_unit_find(LW_KIND_ANGLE_OR_SHARE, "%", 1)->kind == LW_KIND_SHARE);
  cr_expect(lw_unit_find(LW_KIND_ANGLE_OR_SHARE, "deg", 3)->kind == LW_KIND_ANGLE);
  cr_expect(lw_unit_find(LW_KIND_FORCE, "lb", 2) != lw_unit_find(LW_KIND_MASS, "lb", 2));
}

Test(base, the_ways_to_write_a_unit_are_one_unit) {
  cr_expect(lw_unit_find(LW_KIND_UNIT_WEIGHT, "kN/m\xC2\xB3", 6) ==
            lw_unit_find(LW_KIND_UNIT_WEIGHT, "kN/m3", 5));
  cr_expect(lw_unit_find(LW_KIND_PRESSURE, "kN / m^2", 8) == lw_unit_find(LW_KIND_PRESSURE, "kN/m2", 5));
  cr_expect(lw_unit_find(LW_KIND_LENGTH, "", 0) == NULL);
  cr_expect(lw_unit_find(LW_KIND_LENGTH, "mmmmmmmmmmmmmmmmmmmmmmmmmmmmm", 29) == NULL);
}

Test(base, every_unit_is_found_under_its_own_name_and_kind) {
  size_t count = 0;
  for (const lw_unit *unit; (unit = lw_unit_at(count)) != NULL; count++) {
    cr_expect(lw_unit_find(unit->kind, unit->name, strlen(unit->name)) == unit, "%s", unit->name);
    cr_expect(unit->to_si > 0.0);
  }
  cr_expect(count > 40);
  for (int kind = LW_KIND_LENGTH; kind <= LW_KIND_AREA; kind++) {
    const char *name = lw_kind_unit((lw_kind)kind);
    const lw_unit *si = lw_unit_find((lw_kind)kind, name, strlen(name));
    cr_assert(si != NULL, "%s", name);
    cr_expect(si->to_si >= 1.0 && si->to_si <= 1.0, "%s", name);
  }
}
