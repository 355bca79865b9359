/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/base.h>

#include <string.h>

#include "amount.h"

/* Exact by definition: the foot, the avoirdupois pound and standard gravity. All else follows. */
#define FOOT LW_FOOT_M
#define INCH LW_INCH_M
#define POUND_KG 0.45359237
#define GRAVITY 9.80665
#define POUND_FORCE_KN (POUND_KG * GRAVITY / 1000.0)
#define DEGREE (3.14159265358979323846 / 180.0)

#define METRIC LW_UNITS_METRIC
#define US LW_UNITS_US

/* The first name of a factor is the one that lists and faults print; the others are ways to write it.
 * Sheets are typed by hand: raised figures, `^`, degree and prime signs are all met. */
static const lw_unit units[] = {
    {"%", LW_KIND_SHARE, 0.01, METRIC},
    {"percent", LW_KIND_SHARE, 0.01, METRIC},

    {"m", LW_KIND_LENGTH, 1.0, METRIC},
    {"mm", LW_KIND_LENGTH, 0.001, METRIC},
    {"cm", LW_KIND_LENGTH, 0.01, METRIC},
    {"in", LW_KIND_LENGTH, INCH, US},
    {"ft", LW_KIND_LENGTH, FOOT, US},
    {"yd", LW_KIND_LENGTH, 3.0 * FOOT, US},
    {"metre", LW_KIND_LENGTH, 1.0, METRIC},
    {"metres", LW_KIND_LENGTH, 1.0, METRIC},
    {"inch", LW_KIND_LENGTH, INCH, US},
    {"inches", LW_KIND_LENGTH, INCH, US},
    {"\"", LW_KIND_LENGTH, INCH, US},
    {"\xE2\x80\xB3", LW_KIND_LENGTH, INCH, US},
    {"foot", LW_KIND_LENGTH, FOOT, US},
    {"feet", LW_KIND_LENGTH, FOOT, US},
    {"'", LW_KIND_LENGTH, FOOT, US},
    {"\xE2\x80\xB2", LW_KIND_LENGTH, FOOT, US},

    {"deg", LW_KIND_ANGLE, DEGREE, METRIC},
    {"rad", LW_KIND_ANGLE, 1.0, METRIC},
    {"degrees", LW_KIND_ANGLE, DEGREE, METRIC},
    {"degree", LW_KIND_ANGLE, DEGREE, METRIC},
    {"\xC2\xB0", LW_KIND_ANGLE, DEGREE, METRIC},

    {"kPa", LW_KIND_PRESSURE, 1.0, METRIC},
    {"kN/m2", LW_KIND_PRESSURE, 1.0, METRIC},
    {"Pa", LW_KIND_PRESSURE, 0.001, METRIC},
    {"MPa", LW_KIND_PRESSURE, 1000.0, METRIC},
    {"kg/m2", LW_KIND_PRESSURE, GRAVITY / 1000.0, METRIC},
    {"t/m2", LW_KIND_PRESSURE, GRAVITY, METRIC},
    {"psf", LW_KIND_PRESSURE, POUND_FORCE_KN / (FOOT * FOOT), US},
    {"ksf", LW_KIND_PRESSURE, 1000.0 * POUND_FORCE_KN / (FOOT * FOOT), US},
    {"psi", LW_KIND_PRESSURE, POUND_FORCE_KN / (INCH * INCH), US},
    {"lb/ft2", LW_KIND_PRESSURE, POUND_FORCE_KN / (FOOT * FOOT), US},
    {"lb/in2", LW_KIND_PRESSURE, POUND_FORCE_KN / (INCH * INCH), US},
    {"N/mm2", LW_KIND_PRESSURE, 1000.0, METRIC},
    {"N/m2", LW_KIND_PRESSURE, 0.001, METRIC},

    {"kN/m", LW_KIND_LINE_LOAD, 1.0, METRIC},
    {"N/m", LW_KIND_LINE_LOAD, 0.001, METRIC},
    {"kg/m", LW_KIND_LINE_LOAD, GRAVITY / 1000.0, METRIC},
    {"lb/ft", LW_KIND_LINE_LOAD, POUND_FORCE_KN / FOOT, US},
    {"plf", LW_KIND_LINE_LOAD, POUND_FORCE_KN / FOOT, US},
    {"kip/ft", LW_KIND_LINE_LOAD, 1000.0 * POUND_FORCE_KN / FOOT, US},

    {"kN", LW_KIND_FORCE, 1.0, METRIC},
    {"N", LW_KIND_FORCE, 0.001, METRIC},
    {"kgf", LW_KIND_FORCE, GRAVITY / 1000.0, METRIC},
    {"lbf", LW_KIND_FORCE, POUND_FORCE_KN, US},
    {"lb", LW_KIND_FORCE, POUND_FORCE_KN, US},
    {"kip", LW_KIND_FORCE, 1000.0 * POUND_FORCE_KN, US},

    {"kN/m3", LW_KIND_UNIT_WEIGHT, 1.0, METRIC},
    {"N/m3", LW_KIND_UNIT_WEIGHT, 0.001, METRIC},
    {"kg/m3", LW_KIND_UNIT_WEIGHT, GRAVITY / 1000.0, METRIC},
    {"t/m3", LW_KIND_UNIT_WEIGHT, GRAVITY, METRIC},
    {"g/cm3", LW_KIND_UNIT_WEIGHT, GRAVITY, METRIC},
    {"pcf", LW_KIND_UNIT_WEIGHT, POUND_FORCE_KN / (FOOT * FOOT * FOOT), US},
    {"lb/ft3", LW_KIND_UNIT_WEIGHT, POUND_FORCE_KN / (FOOT * FOOT * FOOT), US},

    {"kg", LW_KIND_MASS, 1.0, METRIC},
    {"g", LW_KIND_MASS, 0.001, METRIC},
    {"t", LW_KIND_MASS, 1000.0, METRIC},
    {"lb", LW_KIND_MASS, POUND_KG, US},
    {"lbs", LW_KIND_MASS, POUND_KG, US},

    {"kNm/m", LW_KIND_MOMENT, 1.0, METRIC},
    {"ft-lb/ft", LW_KIND_MOMENT, POUND_FORCE_KN, US},

    {"m2", LW_KIND_AREA, 1.0, METRIC},
    {"ft2", LW_KIND_AREA, FOOT *FOOT, US},
    {"in2", LW_KIND_AREA, INCH *INCH, US},

    {"m3", LW_KIND_VOLUME, 1.0, METRIC},
    {"L", LW_KIND_VOLUME, 0.001, METRIC},
    {"litre", LW_KIND_VOLUME, 0.001, METRIC},
    {"litres", LW_KIND_VOLUME, 0.001, METRIC},
    {"ft3", LW_KIND_VOLUME, FOOT *FOOT *FOOT, US},
    {"yd3", LW_KIND_VOLUME, 27.0 * FOOT *FOOT *FOOT, US},

    {"kNm", LW_KIND_POST_MOMENT, 1.0, METRIC},
    {"Nm", LW_KIND_POST_MOMENT, 0.001, METRIC},
    {"ft-lb", LW_KIND_POST_MOMENT, POUND_FORCE_KN *FOOT, US},
    {"lb-ft", LW_KIND_POST_MOMENT, POUND_FORCE_KN *FOOT, US},
};

#undef METRIC
#undef US

enum { UNIT_COUNT = sizeof units / sizeof *units, UNIT_NAME_MAX = 16 };

/* The name without blanks, `^`, and with raised two and three as plain figures; 0 when too long. */
static size_t fold_name(const char *name, size_t length, char folded[UNIT_NAME_MAX]) {
  size_t used = 0;
  for (size_t i = 0; i < length; i++) {
    unsigned char c = (unsigned char)name[i];
    if (c == ' ' || c == '^') {
      continue;
    }
    if (c == 0xC2 && i + 1 < length &&
        ((unsigned char)name[i + 1] == 0xB2 || (unsigned char)name[i + 1] == 0xB3)) {
      c = (unsigned char)name[++i] == 0xB2 ? '2' : '3';
    }
    if (used + 1 >= UNIT_NAME_MAX) {
      return 0;
    }
    folded[used++] = (char)c;
  }
  folded[used] = '\0';
  return used;
}

static bool kind_takes(lw_kind kind, lw_kind unit_kind) {
  return kind == unit_kind ||
         (kind == LW_KIND_ANGLE_OR_SHARE && (unit_kind == LW_KIND_ANGLE || unit_kind == LW_KIND_SHARE));
}

const lw_unit *lw_unit_find(lw_kind kind, const char *name, size_t length) {
  char folded[UNIT_NAME_MAX];
  if (fold_name(name, length, folded) == 0) {
    return NULL;
  }
  for (size_t i = 0; i < UNIT_COUNT; i++) {
    if (kind_takes(kind, units[i].kind) && strcmp(folded, units[i].name) == 0) {
      return &units[i];
    }
  }
  return NULL;
}

const lw_unit *lw_unit_at(size_t index) {
  return index < UNIT_COUNT ? &units[index] : NULL;
}

size_t lw_unit_written(const char *words) {
  size_t length = strcspn(words, " ,;:.)");
  for (size_t i = 0; i < UNIT_COUNT; i++)
    if (strlen(units[i].name) == length && strncmp(words, units[i].name, length) == 0) return length;
  return 0;
}

const char *lw_kind_unit(lw_kind kind) {
  switch (kind) {
  case LW_KIND_LENGTH: return "m";
  case LW_KIND_ANGLE:
  case LW_KIND_ANGLE_OR_SHARE: return "rad";
  case LW_KIND_PRESSURE: return "kPa";
  case LW_KIND_LINE_LOAD: return "kN/m";
  case LW_KIND_FORCE: return "kN";
  case LW_KIND_UNIT_WEIGHT: return "kN/m3";
  case LW_KIND_MASS: return "kg";
  case LW_KIND_MOMENT: return "kNm/m";
  case LW_KIND_POST_MOMENT: return "kNm";
  case LW_KIND_VOLUME: return "m3";
  case LW_KIND_AREA: return "m2";
  case LW_KIND_NUMBER:
  case LW_KIND_COUNT:
  case LW_KIND_SHARE: return "";
  }
  return "";
}
