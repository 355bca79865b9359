/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "amount.h"

#include <math.h>
#include <string.h>

#include "tape.h"

/* The unit that figures of a kind are told in. */
static const char *const US[] = {
    [LW_KIND_LENGTH] = "ft",       [LW_KIND_PRESSURE] = "psf",      [LW_KIND_LINE_LOAD] = "lb/ft",
    [LW_KIND_FORCE] = "lb",        [LW_KIND_UNIT_WEIGHT] = "pcf",   [LW_KIND_MASS] = "lb",
    [LW_KIND_MOMENT] = "ft-lb/ft", [LW_KIND_POST_MOMENT] = "ft-lb", [LW_KIND_VOLUME] = "yd3",
    [LW_KIND_AREA] = "ft2",
};

static const double MM = 1000.0;

/* A push of ten thousand pounds a foot or more is told in kips. */
static const double KIP = 1000.0, IN_KIPS_FROM = 10000.0;

bool lw_units_differ(lw_units units, lw_kind kind) {
  return units == LW_UNITS_US && US[kind] != NULL;
}

const char *lw_units_name(lw_units units, lw_kind kind) {
  return lw_units_differ(units, kind) ? US[kind] : lw_kind_unit(kind);
}

double lw_in_units(lw_units units, lw_kind kind, double si) {
  if (!lw_units_differ(units, kind)) return si;
  return si / lw_unit_find(kind, US[kind], strlen(US[kind]))->to_si;
}

/* "2 ft", "2 ft 7 in", "2 ft 0-3/4 in", "7-3/8 in", "3/4 in", "0 in". */
static lw_amount feet_and_inches(double length_m, int eighths) {
  lw_amount amount;
  const lw_tape tape = lw_tape_read(length_m, eighths);
  char feet[24] = "", inches[16] = "";
  bool part = tape.part[0] != '\0', any_feet = tape.feet > 0;
  if (any_feet) lw_print(feet, sizeof feet, "%ld ft", tape.feet);
  if (part && !any_feet && tape.inches == 0)
    lw_print(inches, sizeof inches, "%s in", tape.part);
  else if (part || tape.inches > 0 || !any_feet)
    lw_print(inches, sizeof inches, "%d%s%s in", tape.inches, part ? "-" : "", tape.part);
  lw_print(amount.text, sizeof amount.text, "%s%s%s%s", tape.minus ? "-" : "", feet,
           any_feet && inches[0] != '\0' ? " " : "", inches);
  return amount;
}

/* Farther than anybody measures with a tape, or none: told as a figure. */
static bool has_inches(double length_m) {
  return fabs(length_m) < 1e6;
}

static lw_amount figure(double value, int decimals, const char *unit) {
  lw_amount amount;
  size_t used = lw_number_print(amount.text, sizeof amount.text, value, decimals);
  lw_print(amount.text + used, sizeof amount.text - used, " %s", unit);
  return amount;
}

static lw_amount us_figure(lw_kind kind, double si, int decimals) {
  double value = lw_in_units(LW_UNITS_US, kind, si);
  bool space = kind == LW_KIND_VOLUME || kind == LW_KIND_AREA || kind == LW_KIND_LENGTH;
  if (kind == LW_KIND_LINE_LOAD && fabs(value) >= IN_KIPS_FROM) return figure(value / KIP, 1, "kip/ft");
  bool tenths = fabs(value) >= 0.05 && fabs(value) < 9.95; /* nothing is 0, not 0.0 */
  return figure(value, space ? decimals : tenths ? 1 : 0, US[kind]);
}

lw_amount lw_amount_of(lw_units units, lw_kind kind, double si, int decimals) {
  if (!lw_units_differ(units, kind)) return figure(si, decimals, lw_kind_unit(kind));
  if (kind == LW_KIND_LENGTH && has_inches(si))
    return feet_and_inches(si, decimals > 1 ? LW_TAPE_EIGHTH : decimals == 1 ? LW_TAPE_INCH : LW_TAPE_FOOT);
  return us_figure(kind, si, decimals);
}

lw_amount lw_metres(lw_units units, double length_m, int decimals) {
  return lw_amount_of(units, LW_KIND_LENGTH, length_m, decimals);
}

static bool of_eighths(double length_m) {
  double eighths = length_m / LW_INCH_M * LW_TAPE_INCH;
  return fabs(eighths - round(eighths)) < 1e-6;
}

lw_amount lw_exactly(lw_units units, lw_kind kind, double si, const char *metric_unit) {
  lw_amount amount;
  bool us = lw_units_differ(units, kind), length = kind == LW_KIND_LENGTH;
  if (us && length && of_eighths(si)) return lw_metres(units, si, 3);
  const char *name = !us ? metric_unit : length ? "in" : lw_units_name(units, kind);
  const lw_unit *unit = lw_unit_find(kind, name, strlen(name));
  lw_print(amount.text, sizeof amount.text, name[0] != '\0' ? "%.6g %s" : "%.6g%s",
           unit != NULL ? si / unit->to_si : si, name);
  return amount;
}

/* Water weighs 62.4 pcf, and everybody knows it by that. */
static lw_amount pounds_a_foot(double kn_per_m3) {
  static const double TO_A_TENTH = 0.05;
  double pcf = lw_in_units(LW_UNITS_US, LW_KIND_UNIT_WEIGHT, kn_per_m3);
  bool whole = fabs(pcf - round(pcf)) < TO_A_TENTH || pcf > 100.0;
  return figure(pcf, whole ? 0 : 1, US[LW_KIND_UNIT_WEIGHT]);
}

lw_amount lw_value_of(lw_units units, lw_kind kind, double si) {
  enum { DECIMALS = 2 };
  static const double CUBIC_FOOT_M3 = LW_FOOT_M * LW_FOOT_M * LW_FOOT_M, HALF_YARD_M3 = 13.5 * CUBIC_FOOT_M3;
  if (kind == LW_KIND_LENGTH) return lw_millimetres(units, si);
  bool small = units == LW_UNITS_US && kind == LW_KIND_VOLUME && si < HALF_YARD_M3;
  if (units == LW_UNITS_US && kind == LW_KIND_UNIT_WEIGHT) return pounds_a_foot(si);
  return small ? figure(si / CUBIC_FOOT_M3, 1, "ft3") : lw_amount_of(units, kind, si, DECIMALS);
}

lw_amount lw_amount_again(lw_units units, lw_kind kind, double si, int decimals) {
  lw_amount amount;
  if (lw_units_differ(units, kind)) return lw_amount_of(units, kind, si, decimals);
  lw_number_print(amount.text, sizeof amount.text, si, decimals);
  return amount;
}

lw_amount lw_moment(lw_units units, double knm_per_m, int decimals) {
  if (units == LW_UNITS_US) return lw_amount_of(units, LW_KIND_MOMENT, knm_per_m, decimals);
  return figure(knm_per_m, decimals, "kN m/m");
}

enum { DECIMALS_MOST = 4 };

/* The value with so many decimals; US lengths in inches. */
static lw_amount finer(lw_units units, lw_kind kind, double value, int decimals) {
  double figures = lw_in_units(units, kind, value);
  if (kind == LW_KIND_LENGTH && units == LW_UNITS_US) return figure(value / LW_INCH_M, decimals, "in");
  return figure(figures, decimals, lw_units_name(units, kind));
}

static bool read_the_same(const lw_apart *apart, double one, double other) {
  return strcmp(apart->one.text, apart->other.text) == 0 && fabs(one - other) > 0.0;
}

/* What no decimals tell apart differs by rounding alone, and is told as it would be. */
static lw_apart finest(lw_apart plain, lw_apart fine) {
  return strcmp(fine.one.text, fine.other.text) == 0 ? plain : fine;
}

lw_apart lw_amounts_apart(lw_units units, lw_kind kind, double one, double other, int decimals) {
  lw_apart plain = {lw_amount_of(units, kind, one, decimals), lw_amount_of(units, kind, other, decimals)};
  lw_apart apart = plain;
  if (lw_units_differ(units, kind)) decimals = 0;
  while (++decimals <= DECIMALS_MOST && read_the_same(&apart, one, other))
    apart = (lw_apart){finer(units, kind, one, decimals), finer(units, kind, other, decimals)};
  return finest(plain, apart);
}

lw_apart lw_metres_apart(lw_units units, double one_m, double other_m, int decimals) {
  return lw_amounts_apart(units, LW_KIND_LENGTH, one_m, other_m, decimals);
}

lw_apart lw_millimetres_apart(lw_units units, double one_m, double other_m) {
  lw_apart plain = {lw_millimetres(units, one_m), lw_millimetres(units, other_m)}, apart = plain;
  if (units == LW_UNITS_US) return lw_metres_apart(units, one_m, other_m, 3);
  for (int decimals = 1; decimals <= DECIMALS_MOST && read_the_same(&apart, one_m, other_m); decimals++)
    apart = (lw_apart){figure(one_m * MM, decimals, "mm"), figure(other_m * MM, decimals, "mm")};
  return finest(plain, apart);
}

lw_amount lw_millimetres_again(lw_units units, double length_m) {
  return lw_amount_again(units, LW_KIND_LENGTH, units == LW_UNITS_US ? length_m : length_m * MM,
                         units == LW_UNITS_US ? 3 : 0);
}

lw_amount lw_millimetres(lw_units units, double length_m) {
  if (units == LW_UNITS_US) return lw_metres(units, length_m, 3);
  return figure(length_m * MM, 0, "mm");
}
