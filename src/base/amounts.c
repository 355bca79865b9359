/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "amounts.h"

#include <ctype.h>
#include <string.h>

#include "amount.h"

/* Units of our sentences, the longer before what they begin with. */
static const struct {
  const char *name;
  lw_kind kind;
} UNITS[] = {{"kN/m3", LW_KIND_UNIT_WEIGHT}, {"kN/m2", LW_KIND_PRESSURE}, {"kN/m", LW_KIND_LINE_LOAD},
             {"kNm/m", LW_KIND_MOMENT},      {"kPa", LW_KIND_PRESSURE},   {"kN", LW_KIND_FORCE},
             {"kg", LW_KIND_MASS},           {"mm", LW_KIND_LENGTH},      {"m3", LW_KIND_VOLUME},
             {"m2", LW_KIND_AREA},           {"m", LW_KIND_LENGTH}};

enum { UNIT_COUNT = sizeof UNITS / sizeof *UNITS, FIGURE_MAX = 24 };

/* One measure as it stands: its figures, one or two with a word between, and its unit. */
typedef struct lw_stands {
  size_t length;
  int unit, figures;
  double value[2];
  int decimals[2];
  char between[8];
} lw_stands;

static bool joins(char c) {
  return isalnum((unsigned char)c) || c == '.' || c == '/' || c == '_' || c == '-' || c == ':' || c == '%';
}

/* The length of a figure, 0: none stands there. */
static size_t figure_at(const char *at, double *value, int *decimals) {
  size_t length = strspn(at, "0123456789"), whole = length;
  if (length == 0 || length > FIGURE_MAX) return 0;
  if (at[length] == '.' && isdigit((unsigned char)at[length + 1]))
    length += 1 + strspn(at + length + 1, "0123456789");
  *decimals = length > whole ? (int)(length - whole) - 1 : 0;
  return lw_number_read(at, length, value) ? length : 0;
}

static int unit_at(const char *at, size_t *length) {
  for (int i = 0; i < UNIT_COUNT; i++) {
    *length = strlen(UNITS[i].name);
    if (strncmp(at, UNITS[i].name, *length) != 0) continue;
    if (!isalnum((unsigned char)at[*length]) && at[*length] != '/') return i;
  }
  return -1;
}

/* "100 to 150 mm": the first figure has the second one's unit. */
static size_t second_at(const char *at, lw_stands *stands) {
  static const char *const BETWEEN[] = {" to ", " by ", " or ", " and "};
  for (size_t i = 0; i < sizeof BETWEEN / sizeof *BETWEEN; i++) {
    size_t word = strlen(BETWEEN[i]);
    if (strncmp(at, BETWEEN[i], word) != 0) continue;
    size_t figure = figure_at(at + word, &stands->value[1], &stands->decimals[1]);
    if (figure == 0) return 0;
    lw_print(stands->between, sizeof stands->between, "%s", BETWEEN[i]);
    return word + figure;
  }
  return 0;
}

static bool measure_at(const char *at, lw_stands *stands) {
  size_t unit, used = figure_at(at, &stands->value[0], &stands->decimals[0]);
  if (used == 0) return false;
  stands->figures = 1;
  stands->unit = at[used] == ' ' ? unit_at(at + used + 1, &unit) : -1;
  if (stands->unit < 0) {
    size_t second = second_at(at + used, stands);
    stands->figures = 2;
    if (second == 0 || at[used + second] != ' ') return false;
    used += second;
    stands->unit = unit_at(at + used + 1, &unit);
  }
  if (stands->unit < 0) return false;
  stands->length = used + 1 + unit;
  return true;
}

/* Round figures are told round: a metre or two to an inch, ten to a foot, a hundredth of one to 1/8 in. */
static lw_amount told(lw_units units, const lw_stands *stands, int figure) {
  double value = stands->value[figure];
  int decimals = stands->decimals[figure];
  lw_kind kind = UNITS[stands->unit].kind;
  if (kind != LW_KIND_LENGTH) return lw_amount_of(units, kind, value, decimals);
  if (UNITS[stands->unit].name[1] == 'm') return lw_millimetres(units, value / 1000.0);
  return lw_metres(units, value, decimals == 0 && value < 10.0 ? 1 : decimals);
}

/* "(1/8 in)" behind a measure: the length of it, 0: none. */
static size_t us_behind(const char *at) {
  const char *end = strchr(at, ')');
  if (strncmp(at, " (", 2) != 0 || !end) return 0;
  bool us =
      strncmp(end - 3, " in", 3) == 0 || strncmp(end - 3, " ft", 3) == 0 || strncmp(end - 3, " lb", 3) == 0;
  return us ? (size_t)(end - at) + 1 : 0;
}

static size_t put(char *out, size_t size, size_t used, const char *bytes, size_t count) {
  size_t room = size - 1 - used, taken = count < room ? count : room;
  memcpy(out + used, bytes, taken);
  out[used + taken] = '\0';
  return used + taken;
}

const char *lw_amounts_told(lw_units units, const char *sentence, char *out, size_t size) {
  size_t used = 0;
  bool source = false;
  out[0] = '\0';
  for (const char *at = sentence; *at != '\0';) {
    lw_stands stands = {0};
    source = *at == '[' || (source && *at != ']');
    bool begins = at == sentence || !joins(at[-1]);
    if (units == LW_UNITS_METRIC || source || !begins || !measure_at(at, &stands)) {
      used = put(out, size, used, at++, 1);
      continue;
    }
    at += stands.length;
    size_t behind = us_behind(at);
    if (behind > 0) {
      used = put(out, size, used, at + 2, behind - 3);
      at += behind;
      continue;
    }
    for (int i = 0; i < stands.figures; i++) {
      const lw_amount amount = told(units, &stands, i);
      used = put(out, size, used, amount.text, strlen(amount.text));
      if (i + 1 < stands.figures) used = put(out, size, used, stands.between, strlen(stands.between));
    }
  }
  return out;
}
