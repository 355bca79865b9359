/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "evaluate.h"

#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { TEXT_MAX = 1024, NOT_MOVED = -1 };

/* One reading of a text from its beginning to its end. The numbers that may be rounded are counted as they
 * come, names first; the one that is moved is so by its half digit, up or down. */
typedef struct reader {
  const char *at;
  const evaluate_names *names;
  const char *formula;
  int met, moved;
  double by;
  int in_angle, in_bars;
  bool failed;
} reader;

static const double PI = 3.14159265358979323846;

static const char *const UNITS[] = {
    "kN m/m", "kN m", "kN/m3",  "kN/m2",  "kN/m",   "kPa/m", "m2/m", "m3/m",     "m4/m",  "kN",    "kPa",
    "deg",    "rad",  "m2",     "m3",     "mm",     "m",     "kg",   "ft-lb/ft", "ft-lb", "lb/ft", "psf/ft",
    "psf",    "pcf",  "ft2/ft", "ft3/ft", "ft4/ft", "ft2",   "ft3",  "ft",       "in",    "lb"};

size_t evaluate_unit(const char *text) {
  for (size_t i = 0; i < sizeof UNITS / sizeof *UNITS; i++) {
    size_t length = strlen(UNITS[i]);
    bool is = strncmp(text, UNITS[i], length) == 0;
    if (is && !isalnum((unsigned char)text[length]) && text[length] != '\'') return length;
  }
  return 0;
}

/* What is printed to five digits has no decimals left when it is a great number. */
enum { FIVE_DIGITS = 5 };

double evaluate_half_digit(const char *number) {
  const char *at = number + strspn(number, "+-");
  size_t whole = strspn(at, "0123456789");
  at += whole;
  if (*at != '.') return whole < FIVE_DIGITS ? 0.0 : 0.5;
  size_t decimals = strspn(at + 1, "0123456789");
  const char *end = at + 1 + decimals;
  int power = (*end == 'e' && strspn(end + 1, "+-0123456789") > 1) ? (int)strtol(end + 1, NULL, 10) : 0;
  return 0.5 * pow(10.0, power - (double)decimals);
}

static void blanks(reader *r) {
  while (*r->at == ' ') r->at++;
}

static bool next_is(reader *r, char sign) {
  blanks(r);
  if (*r->at != sign) return false;
  r->at++;
  return true;
}

static double fail(reader *r) {
  r->failed = true;
  return 0.0;
}

static double sum(reader *r);
static double power(reader *r);

static double moved(reader *r, double value, double half) {
  if (half <= 0.0) return value;
  return r->met++ == r->moved ? value + r->by * half : value;
}

/* "0.5" of the formula is a half; a number that is put in has only the digits that are printed. */
static bool stands_in(const char *formula, const char *number, size_t length) {
  for (const char *at = formula; at != NULL && *at != '\0'; at++) {
    if (!isdigit((unsigned char)*at)) continue;
    size_t run = strspn(at, "0123456789.");
    if (run == length && strncmp(at, number, length) == 0) return true;
    at += run - 1;
  }
  return false;
}

static double number(reader *r) {
  char *end;
  double value = strtod(r->at, &end);
  size_t length = (size_t)(end - r->at);
  double half = stands_in(r->formula, r->at, length) ? 0.0 : evaluate_half_digit(r->at);
  r->at = end;
  blanks(r);
  size_t unit = evaluate_unit(r->at);
  r->at += unit;
  return moved(r, value, half);
}

static size_t word_length(const char *text) {
  size_t length = 0;
  if (!isalpha((unsigned char)text[0])) return 0;
  while (isalnum((unsigned char)text[length]) || text[length] == '\'' || text[length] == '_') length++;
  return length;
}

static double of_name(reader *r, const char *word, size_t length) {
  for (int i = 0; r->names != NULL && i < r->names->count; i++) {
    const evaluate_name *name = &r->names->of[i];
    if (strlen(name->name) != length || strncmp(name->name, word, length) != 0) continue;
    return name->value + (r->moved == i ? r->by * name->half : 0.0);
  }
  if (length == 2 && strncmp(word, "pi", 2) == 0) return r->in_angle > 0 ? 180.0 : PI;
  return fail(r);
}

static double cot(double x) {
  double tangent = tan(x);
  return fabs(tangent) > 0.0 ? 1.0 / tangent : INFINITY;
}

typedef struct function {
  const char *word;
  double (*of)(double);
  bool takes_angle, gives_angle;
} function;

static const function *function_of(const char *word, size_t length) {
  static const function ALL[] = {{"sin", sin, true, false},   {"cos", cos, true, false},
                                 {"tan", tan, true, false},   {"cot", cot, true, false},
                                 {"asin", asin, false, true}, {"acos", acos, false, true},
                                 {"atan", atan, false, true}, {"sqrt", sqrt, false, false},
                                 {"ln", log, false, false},   {"exp", exp, false, false}};
  for (size_t i = 0; i < sizeof ALL / sizeof *ALL; i++)
    if (strlen(ALL[i].word) == length && strncmp(ALL[i].word, word, length) == 0) return &ALL[i];
  return NULL;
}

static double primary(reader *r);

/* What stands after sin: a bracket, a name, a number, or "2A". */
static double argument(reader *r) {
  blanks(r);
  bool counted = isdigit((unsigned char)*r->at);
  double value = primary(r);
  return counted && isalpha((unsigned char)*r->at) ? value * primary(r) : value;
}

static double call(reader *r, const function *f) {
  double raised = 1.0;
  if (*r->at == '^') {
    char *end;
    raised = strtod(r->at + 1, &end);
    r->at = end;
  }
  int outer = r->in_angle;
  r->in_angle = f->takes_angle ? outer + 1 : 0;
  double value = argument(r);
  r->in_angle = outer;
  value = f->of(f->takes_angle ? value * PI / 180.0 : value);
  return pow(f->gives_angle ? value * 180.0 / PI : value, raised);
}

/* max(a, b, ...) and min */
static double extreme(reader *r, bool greatest) {
  if (!next_is(r, '(')) return fail(r);
  double best = sum(r);
  while (next_is(r, ',')) {
    double other = sum(r);
    best = greatest ? fmax(best, other) : fmin(best, other);
  }
  return next_is(r, ')') ? best : fail(r);
}

static double word(reader *r, size_t length) {
  const char *begin = r->at;
  const function *f = function_of(begin, length);
  r->at += length;
  if (f != NULL) return call(r, f);
  if (length == 3 && strncmp(begin, "max", 3) == 0) return extreme(r, true);
  if (length == 3 && strncmp(begin, "min", 3) == 0) return extreme(r, false);
  return of_name(r, begin, length);
}

static double bracketed(reader *r, char end) {
  r->at++;
  double value = sum(r);
  return next_is(r, end) ? value : fail(r);
}

static double between_bars(reader *r) {
  r->in_bars++;
  double value = bracketed(r, '|');
  r->in_bars--;
  return fabs(value);
}

static double primary(reader *r) {
  blanks(r);
  size_t length = word_length(r->at);
  if (r->failed) return 0.0;
  if (isdigit((unsigned char)*r->at)) return number(r);
  if (*r->at == '(') return bracketed(r, ')');
  if (*r->at == '[') return bracketed(r, ']');
  if (*r->at == '|' && r->in_bars == 0) return between_bars(r);
  return length > 0 ? word(r, length) : fail(r);
}

static double power(reader *r) {
  blanks(r);
  if (*r->at == '-' || *r->at == '+') {
    double sign = *r->at++ == '-' ? -1.0 : 1.0;
    return sign * power(r);
  }
  double base = primary(r);
  if (r->failed || *r->at != '^') return base;
  r->at++;
  return pow(base, power(r));
}

/* Whether a factor begins here without a sign before it. */
static bool beside(const reader *r) {
  char c = *r->at;
  return isalnum((unsigned char)c) || c == '(' || c == '[' || (c == '|' && r->in_bars == 0);
}

static bool is_times(const reader *r) {
  return *r->at == 'x' && word_length(r->at) == 1 && r->at[1] != '^';
}

/* Divided by nothing a number has no end, as for who moves the divisor there; atan has a value for that. */
static double over(double value, double divisor) {
  if (fabs(divisor) > 0.0) return value / divisor;
  return fabs(value) > 0.0 ? copysign(INFINITY, value) * copysign(1.0, divisor) : NAN;
}

static double product(reader *r) {
  double value = power(r);
  for (;;) {
    blanks(r);
    if (r->failed) return 0.0;
    if (*r->at == '/') {
      r->at++;
      value = over(value, power(r));
    } else if (is_times(r)) {
      r->at++;
      value *= power(r);
    } else if (beside(r)) {
      value *= power(r);
    } else {
      return value;
    }
  }
}

static double sum(reader *r) {
  double value = product(r);
  for (;;) {
    blanks(r);
    if (r->failed || (*r->at != '+' && *r->at != '-')) return value;
    bool minus = *r->at++ == '-';
    double next = product(r);
    value += minus ? -next : next;
  }
}

static bool read_once(const char *text, const reader *as, double *value, int *met) {
  reader r = *as;
  r.at = text;
  *value = sum(&r);
  blanks(&r);
  if (met != NULL) *met = r.met;
  return !r.failed && *r.at == '\0' && isfinite(*value);
}

/* By how much one input moves the value, the worse of up and down. */
static double change(const char *text, const reader *as, int input, double value) {
  double most = 0.0;
  for (int side = -1; side <= 1; side += 2) {
    reader r = *as;
    double other;
    r.moved = input;
    r.by = side;
    if (read_once(text, &r, &other, NULL)) most = fmax(most, fabs(other - value));
  }
  return most;
}

bool evaluate(const char *text, size_t length, const evaluate_names *names, const char *formula,
              evaluated *out) {
  char whole[TEXT_MAX];
  int first = names != NULL ? names->count : 0, last;
  reader as = {.names = names, .formula = formula, .met = first, .moved = NOT_MOVED};
  evaluated made = {0};
  if (length >= sizeof whole) return false;
  snprintf(whole, sizeof whole, "%.*s", (int)length, text);
  if (!read_once(whole, &as, &made.value, &last)) return false;
  for (int i = 0; i < last; i++) made.half += change(whole, &as, i, made.value);
  *out = made;
  return true;
}
