/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "entry.h"

#include "base/amount.h"

#include <math.h>
#include <string.h>

/* Reads what a person writes for a measure: "900 mm", "4 ft 6 in", "3' 6\"", "7 5/8 in", "15 deg", "1:4",
 * "1 in 4", "30 %". */

enum { NUMBER_MAX = 1024, COUNT_UNITS = 6 };

const lw_unit *lw_item_unit(const lw_item *item, const char *name, size_t length, lw_fault_slug *slug) {
  const lw_unit *unit = lw_unit_find(item->kind, name, length);
  if (unit == NULL && item->also != LW_KIND_NUMBER) {
    unit = lw_unit_find(item->also, name, length);
  }
  if (unit == NULL && item->percent) {
    unit = lw_unit_find(LW_KIND_SHARE, name, length);
  }
  if (unit != NULL) {
    return unit;
  }
  *slug = LW_FAULT_UNKNOWN_UNIT;
  for (int kind = LW_KIND_SHARE; kind <= LW_KIND_VOLUME; kind++) {
    if (lw_unit_find((lw_kind)kind, name, length) != NULL) {
      *slug = LW_FAULT_WRONG_UNIT;
    }
  }
  return NULL;
}

static bool item_takes(const lw_item *item, lw_kind kind) {
  return item->kind == kind || (item->percent && kind == LW_KIND_SHARE) ||
         (item->also != LW_KIND_NUMBER && item->also == kind) ||
         (item->kind == LW_KIND_ANGLE_OR_SHARE && (kind == LW_KIND_ANGLE || kind == LW_KIND_SHARE));
}

/* Has a unit of the same kind and factor been listed before this one? Then it is another way to write it. */
static bool is_alias(size_t index) {
  const lw_unit *unit = lw_unit_at(index);
  for (size_t i = 0; i < index; i++) {
    const lw_unit *earlier = lw_unit_at(i);
    if (earlier->kind == unit->kind && fabs(earlier->to_si / unit->to_si - 1.0) < 1e-12) {
      return true;
    }
  }
  return false;
}

void lw_item_list_units(const lw_item *item, char *out, size_t size) {
  size_t used = 0;
  int listed = 0;
  out[0] = '\0';
  const lw_unit *unit;
  for (size_t i = 0; (unit = lw_unit_at(i)) != NULL && listed < COUNT_UNITS; i++) {
    if (item_takes(item, unit->kind) && !is_alias(i) && used + 12 < size) {
      used += (size_t)lw_print(out + used, size - used, "%s%s", listed++ > 0 ? ", " : "", unit->name);
    }
  }
  if (listed == 0) {
    lw_print(out, size, "%s", "none: it is a pure number");
  }
}

void lw_item_say(const lw_item *item, double si, char *out, size_t size) {
  const lw_unit *unit = lw_unit_find(item->kind, item->unit, strlen(item->unit));
  lw_print(out, size, unit != NULL ? "%.6g %s" : "%.6g%s", unit != NULL ? si / unit->to_si : si, item->unit);
}

/* A number at the head of text; its length, or 0. */
static size_t number_length(const char *text) {
  size_t i = strspn(text, "+-");
  size_t digits = strspn(text + i, "0123456789.,");
  if (i > 1 || digits == 0) {
    return 0;
  }
  i += digits;
  if (text[i] == 'e' || text[i] == 'E') {
    size_t sign = text[i + 1] == '+' || text[i + 1] == '-' ? 1 : 0;
    size_t power = strspn(text + i + 1 + sign, "0123456789");
    i += power > 0 ? 1 + sign + power : 0;
  }
  return i;
}

/* A bare number; the slug of what is wrong with it, or LW_FAULT_SLUG_COUNT. */
static lw_fault_slug read_number(const char *text, size_t length, bool comma_is_decimal, double *value) {
  const char *comma = memchr(text, ',', length);
  if (comma == NULL) {
    return lw_number_read(text, length, value) ? LW_FAULT_SLUG_COUNT : LW_FAULT_NOT_A_NUMBER;
  }
  if (!comma_is_decimal) {
    return LW_FAULT_DECIMAL_COMMA;
  }
  char copy[NUMBER_MAX];
  if (length >= sizeof copy || memchr(text, '.', length) != NULL) {
    return LW_FAULT_NOT_A_NUMBER;
  }
  memcpy(copy, text, length);
  copy[comma - text] = '.';
  return lw_number_read(copy, length, value) ? LW_FAULT_SLUG_COUNT : LW_FAULT_NOT_A_NUMBER;
}

static const char *skip_blanks(const char *text) {
  return text + strspn(text, " \t");
}

/* What stands between rise and run, "1:8" or "1 in 8": where it begins, and how long it is; NULL: nothing
 * does. Of a length `in` is an inch. */
static const char *between(const lw_entry *entry, size_t *length) {
  const char *colon = strchr(entry->value, ':'), *in = strstr(entry->value, " in ");
  bool slope = in != NULL && colon == NULL && item_takes(entry->item, LW_KIND_ANGLE) &&
               !item_takes(entry->item, LW_KIND_LENGTH);
  *length = slope ? 4 : 1;
  return slope ? in : colon;
}

/* rise:run, as an angle. */
static lw_fault_slug read_slope(const lw_entry *entry, const char *mark, size_t mark_length,
                                lw_measured *measured) {
  double rise;
  double run;
  const char *first = skip_blanks(entry->value);
  const char *second = skip_blanks(mark + mark_length);
  size_t length = number_length(first);
  lw_fault_slug slug = read_number(first, length, entry->comma_is_decimal, &rise);
  if (slug == LW_FAULT_SLUG_COUNT) {
    slug = read_number(second, strlen(second), entry->comma_is_decimal, &run);
  }
  if (slug != LW_FAULT_SLUG_COUNT) {
    return slug;
  }
  if (skip_blanks(first + length) != skip_blanks(mark) || !(run > 0.0)) {
    return LW_FAULT_NOT_A_NUMBER;
  }
  if (!item_takes(entry->item, LW_KIND_ANGLE)) {
    return LW_FAULT_WRONG_UNIT;
  }
  measured->kind = LW_KIND_ANGLE;
  measured->si = atan(rise / run);
  return entry->unit == NULL ? LW_FAULT_SLUG_COUNT : LW_FAULT_TWO_UNITS;
}

static bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

/* Where the unit that begins at text ends: at the next number that has a blank or a prime before it, or the
 * hyphen of a drawing between, "2'-7". */
static size_t unit_length(const char *text) {
  size_t i = 0;
  while (text[i] != '\0') {
    bool prime = i > 0 && (text[i - 1] == '\'' || (unsigned char)text[i - 1] == 0xB2);
    bool starts = (is_digit(text[i]) && i > 0 && (prime || text[i - 1] == ' ')) ||
                  (prime && text[i] == '-' && is_digit(text[i + 1]));
    if (starts || (i > 0 && lw_vulgar(text + i, NULL) > 0)) {
      break;
    }
    i++;
  }
  return i;
}

/* The inches behind the feet: "6 in" of "4 ft 6 in", "-6\"" of "4'-6\"". */
static lw_fault_slug read_inches(const lw_entry *entry, const char *rest, lw_measured *measured) {
  double inches;
  rest += *rest == '-' ? 1 : 0;
  lw_fault_slug slug = LW_FAULT_SLUG_COUNT;
  size_t length = lw_fraction(rest, &inches);
  if (length == 0) {
    length = number_length(rest);
    slug = read_number(rest, length, entry->comma_is_decimal, &inches);
  }
  if (slug != LW_FAULT_SLUG_COUNT) {
    return slug;
  }
  const char *name = skip_blanks(rest + length);
  const lw_unit *unit = lw_item_unit(entry->item, name, strlen(name), &slug);
  const lw_unit *inch = lw_unit_find(LW_KIND_LENGTH, "in", 2);
  if (unit == NULL || unit->kind != LW_KIND_LENGTH || fabs(unit->to_si - inch->to_si) > 1e-12 ||
      inches < 0.0) {
    return LW_FAULT_NOT_A_NUMBER;
  }
  measured->si += (measured->si < 0.0 ? -inches : inches) * unit->to_si;
  return LW_FAULT_SLUG_COUNT;
}

static bool same_unit(const lw_unit *a, const lw_unit *b) {
  return a->kind == b->kind && fabs(a->to_si / b->to_si - 1.0) < 1e-12;
}

/* A number, and its unit in the cell. */
static lw_fault_slug read_with_unit(const lw_entry *entry, lw_measured *measured) {
  double number;
  const char *text = skip_blanks(entry->value);
  size_t length = lw_fraction(text, &number);
  bool fraction = length > 0;
  lw_fault_slug slug = LW_FAULT_SLUG_COUNT;
  if (!fraction) {
    length = number_length(text);
    slug = length == 0 ? LW_FAULT_NOT_A_NUMBER : read_number(text, length, entry->comma_is_decimal, &number);
  }
  if (slug != LW_FAULT_SLUG_COUNT) {
    return slug;
  }
  const char *name = skip_blanks(text + length);
  size_t name_length = unit_length(name);
  const lw_unit *unit = entry->unit;
  if (name_length > 0) {
    unit = lw_item_unit(entry->item, name, name_length, &slug);
    if (unit == NULL) {
      return slug;
    }
    if (entry->unit != NULL && !same_unit(unit, entry->unit)) {
      return LW_FAULT_TWO_UNITS;
    }
  }
  measured->kind = unit != NULL ? unit->kind : LW_KIND_NUMBER;
  measured->si = number * (unit != NULL ? unit->to_si : 1.0);
  measured->in = unit != NULL ? unit->of : LW_UNITS_METRIC;
  const lw_unit *foot = lw_unit_find(LW_KIND_LENGTH, "ft", 2), *inch = lw_unit_find(LW_KIND_LENGTH, "in", 2);
  if (fraction && unit != NULL && !same_unit(unit, inch) && !same_unit(unit, foot)) {
    return LW_FAULT_NOT_A_NUMBER;
  }
  if (name[name_length] == '\0') {
    return LW_FAULT_SLUG_COUNT;
  }
  return unit != NULL && same_unit(unit, foot) ? read_inches(entry, name + name_length, measured)
                                               : LW_FAULT_NOT_A_NUMBER;
}

/* What the kind of the item makes of a number with no unit, or with one of its second kind. */
static lw_fault_slug fit_kind(const lw_item *item, lw_measured *measured) {
  switch (item->kind) {
  case LW_KIND_NUMBER:
    measured->si = measured->kind == LW_KIND_ANGLE ? tan(measured->si) : measured->si;
    measured->kind = LW_KIND_NUMBER;
    return LW_FAULT_SLUG_COUNT;
  case LW_KIND_COUNT:
    measured->kind = LW_KIND_COUNT;
    return fabs(measured->si - round(measured->si)) > 0.0 ? LW_FAULT_NOT_A_NUMBER : LW_FAULT_SLUG_COUNT;
  case LW_KIND_SHARE: measured->kind = LW_KIND_SHARE; return LW_FAULT_SLUG_COUNT;
  case LW_KIND_ANGLE_OR_SHARE:
    if (measured->kind == LW_KIND_NUMBER) {
      measured->kind = LW_KIND_SHARE;
      return fabs(measured->si) > 1.0 ? LW_FAULT_NO_UNIT : LW_FAULT_SLUG_COUNT;
    }
    return LW_FAULT_SLUG_COUNT;
  case LW_KIND_ANGLE:
    if (measured->kind == LW_KIND_SHARE) {
      *measured = (lw_measured){atan(measured->si), LW_KIND_ANGLE, LW_UNITS_METRIC};
    }
    return measured->kind == LW_KIND_NUMBER ? LW_FAULT_NO_UNIT : LW_FAULT_SLUG_COUNT;
  default: return measured->kind == LW_KIND_NUMBER ? LW_FAULT_NO_UNIT : LW_FAULT_SLUG_COUNT;
  }
}

/* Nothing is nothing in any unit. */
static void take_bare_zero(const lw_item *item, lw_measured *measured) {
  bool pure = measured->kind == LW_KIND_NUMBER && !(fabs(measured->si) > 0.0);
  if (pure && item->kind != LW_KIND_ANGLE_OR_SHARE)
    *measured = (lw_measured){0.0, item->kind, LW_UNITS_METRIC};
}

/* An end of a range in US units, to an eighth of an inch or four digits that lie within it. */
static void say_end(const lw_item *item, double si, bool low, char *out, size_t size) {
  static const double EIGHTH_M = LW_INCH_M / 8.0, LEAST = 1e-9;
  double figure = lw_in_units(LW_UNITS_US, item->kind, si);
  if (item->kind == LW_KIND_LENGTH) {
    double eighths = low ? ceil(si / EIGHTH_M - LEAST) : floor(si / EIGHTH_M + LEAST);
    lw_print(out, size, "%s", lw_metres(LW_UNITS_US, eighths * EIGHTH_M, 3).text);
    return;
  }
  double step = fabs(figure) > LEAST ? pow(10.0, floor(log10(fabs(figure))) - 3.0) : 1.0;
  figure = low ? ceil(figure / step - LEAST) * step : floor(figure / step + LEAST) * step;
  lw_print(out, size, "%.4g %s", figure, lw_units_name(LW_UNITS_US, item->kind));
}

void lw_item_say_range(const lw_item *item, lw_units units, char *out, size_t size) {
  char low[48];
  char high[48];
  const char *or_share = item->kind == LW_KIND_ANGLE_OR_SHARE ? ", or a share from 0 to 1" : "";
  lw_item_say(item, item->low, low, sizeof low);
  lw_item_say(item, item->high, high, sizeof high);
  if (lw_units_differ(units, item->kind)) {
    say_end(item, item->low, true, low, sizeof low);
    say_end(item, item->high, false, high, sizeof high);
  }
  lw_print(out, size, "a value from %s to %s%s", low, high, or_share);
}

/* The item's example, "900 mm", to who measures otherwise: a length to an inch. */
static void say_example(const lw_item *item, lw_units units, char *out, size_t size) {
  double value;
  size_t length = number_length(item->example);
  const char *name = skip_blanks(item->example + length);
  const lw_unit *unit = lw_unit_find(item->kind, name, strlen(name));
  bool differs =
      lw_units_differ(units, item->kind) && unit != NULL && lw_number_read(item->example, length, &value);
  lw_print(out, size, "%s",
           differs ? lw_amount_of(units, item->kind, value * unit->to_si, 1).text : item->example);
}

static void say_wanted(const lw_item *item, lw_units written_in, lw_fault_slug slug, char *wanted,
                       size_t size) {
  char units[96], example[64];
  say_example(item, written_in, example, sizeof example);
  lw_item_list_units(item, units, sizeof units);
  switch (slug) {
  case LW_FAULT_DECIMAL_COMMA:
    lw_print(wanted, size, "a point as the decimal mark, and none between thousands");
    break;
  case LW_FAULT_NO_UNIT:
    lw_print(wanted, size, "the number with its unit (%s), as in %s", units, example);
    break;
  case LW_FAULT_WRONG_UNIT:
  case LW_FAULT_UNKNOWN_UNIT: lw_print(wanted, size, "one of the units %s", units); break;
  case LW_FAULT_TWO_UNITS: lw_print(wanted, size, "one unit, in the value or beside it"); break;
  case LW_FAULT_OUT_OF_RANGE: lw_item_say_range(item, written_in, wanted, size); break;
  default:
    lw_print(wanted, size, "%s, as in %s",
             item->kind == LW_KIND_COUNT ? "a whole number" : "a number with its unit", example);
  }
}

lw_fault_slug lw_measure(const lw_entry *entry, lw_measured *measured, char *wanted, size_t size) {
  lw_measured m = {0.0, LW_KIND_NUMBER, LW_UNITS_METRIC};
  lw_fault_slug slug = LW_FAULT_SLUG_COUNT;
  if (lw_number_read(entry->value, entry->length, &m.si)) {
    m.kind = entry->unit != NULL ? entry->unit->kind : LW_KIND_NUMBER;
    m.si *= entry->unit != NULL ? entry->unit->to_si : 1.0;
    m.in = entry->unit != NULL ? entry->unit->of : LW_UNITS_METRIC;
  } else {
    size_t mark_length;
    const char *mark = between(entry, &mark_length);
    slug = mark != NULL ? read_slope(entry, mark, mark_length, &m) : read_with_unit(entry, &m);
  }
  take_bare_zero(entry->item, &m);
  slug = slug == LW_FAULT_SLUG_COUNT ? fit_kind(entry->item, &m) : slug;
  if (slug == LW_FAULT_SLUG_COUNT && !lw_item_takes_value(entry->item, m.kind, m.si)) {
    slug = LW_FAULT_OUT_OF_RANGE;
  }
  if (slug != LW_FAULT_SLUG_COUNT) {
    bool us = m.in == LW_UNITS_US || (entry->unit != NULL && entry->unit->of == LW_UNITS_US);
    say_wanted(entry->item, us ? LW_UNITS_US : LW_UNITS_METRIC, slug, wanted, size);
    return slug;
  }
  *measured = m;
  return slug;
}
