/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bound.h"

#include <ctype.h>
#include <math.h>
#include <string.h>

#include "tell.h"
#include "working.h"

enum { DIGITS = 5, FINE = 8, MOST_DECIMALS = 8, MOST = 480 };

static bool in_symbol(char c) {
  return isalnum((unsigned char)c) || c == '_' || c == '\'';
}

static size_t symbol_length(const char *at) {
  size_t length = 0;
  while (in_symbol(at[length])) length++;
  return length;
}

static const lw_bound *bound_to(const char *symbol, size_t length, const lw_bound *bound, size_t count) {
  for (size_t i = 0; i < count; i++)
    if (strlen(bound[i].symbol) == length && strncmp(bound[i].symbol, symbol, length) == 0) return &bound[i];
  return NULL;
}

/* Whether a formula has named it before. */
static bool named_before(const char *formula, const char *symbol, size_t length) {
  for (const char *at = formula; at < symbol; at++) {
    size_t other = symbol_length(at);
    if (other == length && strncmp(at, symbol, length) == 0) return true;
    at += other;
  }
  return false;
}

/* Zeros at the end stay: they say how well a number is known. */
static int decimals_of(double value, int digits) {
  if (!(fabs(value) > 0.0) || !isfinite(value)) return digits - 1;
  double first = floor(log10(fabs(value) * (1.0 + 5e-6)));
  return (int)fmin(fmax(digits - 1 - first, 0.0), MOST_DECIMALS);
}

static size_t put_in(lw_units units, const lw_bound *of, int digits, char *out, size_t size) {
  char number[40];
  lw_tell_name unit = lw_tell_unit(units, of->unit);
  double value = lw_tell_in(units, of->unit, of->value);
  lw_number_print(number, sizeof number, value, decimals_of(value, digits));
  return (size_t)lw_print(out, size, "%s = %s%s%s", of->symbol, number, unit.text[0] ? " " : "", unit.text);
}

/* The numbers of a formula, and to how many digits. */
typedef struct inputs {
  const lw_bound *bound;
  size_t count;
  int digits;
} inputs;

static void record(const lw_working *working, const lw_step *step, const inputs *all) {
  char text[MOST] = "";
  size_t used = 0;
  if (working == NULL) return;
  for (const char *at = step->formula; *at != '\0'; at += *at != '\0') {
    size_t length = symbol_length(at);
    const lw_bound *of = bound_to(at, length, all->bound, all->count);
    if (of != NULL && used < sizeof text - 2 && !named_before(step->formula, at, length)) {
      if (used > 0) used += (size_t)lw_print(text + used, sizeof text - used, ", ");
      used += put_in(working->units, of, all->digits, text + used, sizeof text - used);
    }
    at += length;
  }
  lw_working_step(working, step, "%s", text);
}

void lw_working_bound(const lw_working *working, const lw_step *step, const lw_bound *bound, size_t count) {
  record(working, step, &(inputs){bound, count, DIGITS});
}

void lw_working_bound_finely(const lw_working *working, const lw_step *step, const lw_bound *bound,
                             size_t count) {
  record(working, step, &(inputs){bound, count, FINE});
}
