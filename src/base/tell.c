/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tell.h"

#include <math.h>
#include <string.h>

#include "print.h"

/* A metric unit and the one in its place: so many of a kind, times so many metres. */
typedef struct pair {
  const char *metric, *us;
  lw_kind kind;
  double of_kind; /* the metric unit in lw_kind_unit(kind) */
  int metres;
} pair;

/* The longest of those that begin alike first. A pound of mass weighs a pound. */
static const pair ALL[] = {
    {"kNm/m", "ft-lb/ft", LW_KIND_MOMENT, 1.0, 0}, {"kN m/m", "ft-lb/ft", LW_KIND_MOMENT, 1.0, 0},
    {"kNm", "ft-lb", LW_KIND_POST_MOMENT, 1.0, 0}, {"kN/m3", "pcf", LW_KIND_UNIT_WEIGHT, 1.0, 0},
    {"kN/m2", "psf", LW_KIND_PRESSURE, 1.0, 0},    {"kN/m", "lb/ft", LW_KIND_LINE_LOAD, 1.0, 0},
    {"kN", "lb", LW_KIND_FORCE, 1.0, 0},           {"kPa/m", "psf/ft", LW_KIND_PRESSURE, 1.0, -1},
    {"kPa", "psf", LW_KIND_PRESSURE, 1.0, 0},      {"kg", "lb", LW_KIND_MASS, 1.0, 0},
    {"m4/m", "ft4/ft", LW_KIND_NUMBER, 1.0, 3},    {"m3/m", "ft3/ft", LW_KIND_NUMBER, 1.0, 2},
    {"m2/m", "ft2/ft", LW_KIND_NUMBER, 1.0, 1},    {"m2 a metre", "ft2 a foot", LW_KIND_NUMBER, 1.0, 1},
    {"m3", "ft3", LW_KIND_NUMBER, 1.0, 3},         {"m2", "ft2", LW_KIND_NUMBER, 1.0, 2},
    {"mm", "in", LW_KIND_LENGTH, 0.001, 0},        {"m", "ft", LW_KIND_LENGTH, 1.0, 0},
    {"1/m", "1/ft", LW_KIND_NUMBER, 1.0, -1},
};

/* The unit that it begins with, the words behind it left out; NULL: pure numbers and angles. */
static const pair *find(const char *unit) {
  for (size_t i = 0; i < sizeof ALL / sizeof *ALL; i++) {
    size_t length = strlen(ALL[i].metric);
    bool is = strncmp(unit, ALL[i].metric, length) == 0;
    if (is && (unit[length] == '\0' || unit[length] == ',' || unit[length] == ' ')) return &ALL[i];
  }
  return NULL;
}

static double si_of(lw_kind kind, const char *name) {
  return lw_unit_find(kind, name, strlen(name))->to_si;
}

/* How many of the unit that is told stand in one of the metric one. */
static double times(const pair *of) {
  double feet = 1.0 / si_of(LW_KIND_LENGTH, "ft"), per = pow(feet, of->metres);
  if (of->kind == LW_KIND_NUMBER) return per;
  const char *us = of->metres == 0 ? of->us : lw_units_name(LW_UNITS_US, of->kind);
  return of->of_kind / si_of(of->kind, us) * per;
}

double lw_tell_in(lw_units units, const char *unit, double value) {
  const pair *of = units == LW_UNITS_US ? find(unit) : NULL;
  return of ? value * times(of) : value;
}

lw_tell_name lw_tell_unit(lw_units units, const char *unit) {
  const pair *of = units == LW_UNITS_US ? find(unit) : NULL;
  lw_tell_name name;
  lw_print(name.text, sizeof name.text, "%s%s", of ? of->us : "", of ? unit + strlen(of->metric) : unit);
  return name;
}

lw_amount lw_tell_amount(lw_units units, const char *unit, double value, int decimals) {
  lw_amount amount;
  size_t used = lw_number_print(amount.text, sizeof amount.text, lw_tell_in(units, unit, value), decimals);
  lw_tell_name name = lw_tell_unit(units, unit);
  lw_print(amount.text + used, sizeof amount.text - used, "%s%s", name.text[0] ? " " : "", name.text);
  return amount;
}

lw_amount lw_tell_result(lw_units units, double told) {
  static const double FIVE_DIGITS = 99999.5, WRITTEN_OUT = 1e9;
  lw_amount amount;
  bool many = units == LW_UNITS_US && fabs(told) >= FIVE_DIGITS && fabs(told) < WRITTEN_OUT;
  lw_print(amount.text, sizeof amount.text, many ? "%.0f" : "%.5g", told);
  return amount;
}
