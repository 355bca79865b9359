/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "measures.h"

#include <criterion/criterion.h>

#include <ctype.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

/* The factors are the definitions of foot, pound and standard gravity, written out here once more. */
static const double FOOT = 0.3048, INCH = 0.0254, POUND = 0.45359237,
                    POUND_KN = 0.45359237 * 9.80665 / 1000.0;

static const struct {
  const char *name;
  bool us;
  lw_kind kind;
} UNITS[] = {{"kN/m3", false, LW_KIND_UNIT_WEIGHT},
             {"kN/m", false, LW_KIND_LINE_LOAD},
             {"kN m/m", false, LW_KIND_MOMENT},
             {"kN", false, LW_KIND_FORCE},
             {"kPa", false, LW_KIND_PRESSURE},
             {"kg", false, LW_KIND_MASS},
             {"mm", false, LW_KIND_LENGTH},
             {"m3", false, LW_KIND_VOLUME},
             {"m2", false, LW_KIND_AREA},
             {"m", false, LW_KIND_LENGTH},
             {"t", false, LW_KIND_MASS},
             {"L", false, LW_KIND_VOLUME},
             {"ft-lb/ft", true, LW_KIND_MOMENT},
             {"ft-lb", true, LW_KIND_POST_MOMENT},
             {"ft2", true, LW_KIND_AREA},
             {"ft3", true, LW_KIND_VOLUME},
             {"ft", true, LW_KIND_LENGTH},
             {"in", true, LW_KIND_LENGTH},
             {"lb/ft", true, LW_KIND_LINE_LOAD},
             {"lb", true, LW_KIND_MASS},
             {"psf", true, LW_KIND_PRESSURE},
             {"pcf", true, LW_KIND_UNIT_WEIGHT},
             {"yd3", true, LW_KIND_VOLUME},
             {"tons", true, LW_KIND_MASS},
             {"kip/ft", true, LW_KIND_LINE_LOAD}};

/* In SI; pounds as a mass. */
static double factor_of(const measure *m) {
  static const struct {
    const char *name;
    double si;
  } FACTORS[] = {{"mm", 0.001}, {"t", 1000.0}, {"L", 0.001}};
  if (strcmp(m->unit, "in") == 0) return INCH;
  if (strcmp(m->unit, "tons") == 0) return 2000.0 * POUND;
  if (strcmp(m->unit, "kip/ft") == 0) return 1000.0 * POUND_KN / FOOT;
  if (strcmp(m->unit, "ft3") == 0) return FOOT * FOOT * FOOT;
  for (size_t i = 0; i < sizeof FACTORS / sizeof *FACTORS; i++)
    if (strcmp(m->unit, FACTORS[i].name) == 0) return FACTORS[i].si;
  if (!m->us) return 1.0;
  switch (m->kind) {
  case LW_KIND_LENGTH: return FOOT;
  case LW_KIND_PRESSURE: return POUND_KN / (FOOT * FOOT);
  case LW_KIND_LINE_LOAD: return POUND_KN / FOOT;
  case LW_KIND_UNIT_WEIGHT: return POUND_KN / (FOOT * FOOT * FOOT);
  case LW_KIND_MASS: return POUND;
  case LW_KIND_MOMENT: return POUND_KN;
  case LW_KIND_POST_MOMENT: return POUND_KN * FOOT;
  case LW_KIND_VOLUME: return 27.0 * FOOT * FOOT * FOOT;
  case LW_KIND_AREA: return FOOT * FOOT;
  default: return 1.0;
  }
}

/* "7.25", "7-1/2" or "1/2" at the head of a text; 0: no figure. */
static size_t figure_of(const char *at, double *value, double *step) {
  char *end;
  size_t length = strspn(at, "0123456789");
  if (length == 0) return 0;
  if (at[length] == '.' && isdigit((unsigned char)at[length + 1]))
    length += 1 + strspn(at + length + 1, "0123456789");
  const char *point = memchr(at, '.', length);
  *value = strtod(at, NULL);
  *step = point ? pow(10.0, -(double)(at + length - point - 1)) : 1.0;
  const char *rest = at[length] == '-' ? at + length + 1 : at;
  long above = strtol(rest, &end, 10);
  bool fraction = end > rest && end[0] == '/' && end[1] != '\0' && strchr("248", end[1]) &&
                  !isdigit((unsigned char)end[2]) && strncmp(end + 2, " in", 3) == 0;
  if (point || !fraction) return length;
  *value = (rest > at ? *value : 0.0) + (double)above / (end[1] - '0');
  *step = 0.125;
  return (size_t)(end - at) + 2;
}

static int unit_of(const char *at, size_t *length) {
  for (size_t i = 0; i < sizeof UNITS / sizeof *UNITS; i++) {
    *length = strlen(UNITS[i].name);
    if (strncmp(at, UNITS[i].name, *length) != 0) continue;
    if (!isalnum((unsigned char)at[*length]) && at[*length] != '/' && at[*length] != '-') return (int)i;
  }
  return -1;
}

/* "in" is a word of English too: "1 in 100", "one wall in all". */
static bool is_inches(const char *at, double value) {
  return !(fabs(value - 1.0) < 1e-9 && isdigit((unsigned char)at[3])) && strncmp(at, "in all", 6) != 0 &&
         strncmp(at, "in place", 8) != 0;
}

/* The inches behind whole feet. */
static void add_inches(measure *m) {
  const char *rest = m->at + m->length;
  double inches, step;
  size_t figure = rest[0] == ' ' ? figure_of(rest + 1, &inches, &step) : 0;
  if (strcmp(m->unit, "ft") != 0 || m->step < 1.0 || figure == 0) return;
  m->step = 12.0;
  if (strncmp(rest + 1 + figure, " in", 3) != 0 || isalpha((unsigned char)rest[figure + 4])) return;
  m->value += inches / 12.0;
  m->step = 0.125 / 12.0;
  m->length += 1 + figure + 3;
}

static bool measure_at(const char *at, measure *m) {
  size_t unit;
  *m = (measure){.at = at, .unit = ""};
  m->length = figure_of(at, &m->value, &m->step);
  if (m->length == 0) return false;
  int i = at[m->length] == ' ' ? unit_of(at + m->length + 1, &unit) : -1;
  if (i < 0 || (strcmp(UNITS[i].name, "in") == 0 && !is_inches(at + m->length + 1, m->value))) return true;
  m->unit = UNITS[i].name;
  m->us = UNITS[i].us;
  m->kind = UNITS[i].kind;
  m->length += 1 + unit;
  add_inches(m);
  return true;
}

/* Past what a source says or somebody types. */
static const char *past_quoted(const char *at) {
  const char *close = at[0] == '[' ? "]" : at[0] == '`' ? "`" : at[0] == '\'' ? "'" : NULL;
  const char *end = close ? strstr(at + 1, close) : NULL;
  return end ? end + 1 : at;
}

bool measure_next(const char **text, measure *found) {
  bool joined = false;
  for (const char *at = *text; *at != '\0'; at++) {
    const char *past = joined ? at : past_quoted(at);
    if (past > at) at = past;
    if (!joined && measure_at(at, found)) {
      *text = at + found->length;
      return true;
    }
    bool sign = *at == '-' && (at == *text || at[-1] == ' ');
    joined = isalnum((unsigned char)*at) || *at == '.' || *at == '_' || (*at == '-' && !sign);
    if (*at == '\0') break;
  }
  return false;
}

char *measure_fold(const char *text, bool without_law) {
  static const char LAW[] = " by the law";
  char *folded = calloc(1, strlen(text) + 1);
  size_t used = 0;
  cr_assert_not_null(folded);
  for (; *text != '\0'; text++) {
    bool blank = *text == ' ' || *text == '\n';
    if (blank && used > 0 && folded[used - 1] == ' ') continue;
    folded[used++] = blank ? ' ' : *text;
    bool law = used >= sizeof LAW - 1 && strncmp(folded + used - (sizeof LAW - 1), LAW, sizeof LAW - 1) == 0;
    if (!without_law || !law) continue;
    /* " (1.00 m by the law)" or ", 1.00 m by the law" */
    while (used > 0 && folded[used - 1] != '(' && folded[used - 1] != ',') used--;
    used -= used > 0 ? 1 : 0;
    memset(folded + used, '\0', sizeof LAW);
    if (text[1] == ')') text++;
  }
  folded[used] = '\0';
  return folded;
}

/* What a law says is told in its own words. */
static const char *past_law(const char *at) {
  static const char *const BEGINS[] = {"It says: ", "Only if: "};
  for (size_t i = 0; i < sizeof BEGINS / sizeof *BEGINS; i++) {
    const char *found = strstr(at, BEGINS[i]);
    if (found) return found;
  }
  return NULL;
}

void expect_all_in(lw_units units, const char *text, const char *name) {
  char *folded = measure_fold(text, true);
  const char *at = folded, *law = past_law(folded);
  measure m;
  while (measure_next(&at, &m)) {
    bool other = m.unit[0] != '\0' && m.us != (units == LW_UNITS_US);
    /* In a metric text "in" is English unless feet or a fraction go before it. */
    if (units == LW_UNITS_METRIC && strcmp(m.unit, "in") == 0) other = m.step < 1.0;
    if (!other || (law && m.at > law)) continue;
    cr_expect(false, "%s: %.*s in ...%.*s", name, (int)m.length, m.at, 90,
              m.at > folded + 40 ? m.at - 40 : m.at);
    break;
  }
  free(folded);
}

void expect_narrow(const char *text, const char *name) {
  for (const char *line = text, *end; (end = strchr(line, '\n')) != NULL; line = end + 1) {
    int width = 0;
    for (const char *at = line; at < end; at++) width += ((unsigned char)*at & 0xC0) != 0x80 ? 1 : 0;
    bool typed = memchr(line, '\'', (size_t)(end - line)) != NULL;
    cr_expect(width <= 80 || typed, "%s: %.*s", name, (int)(end - line), line);
  }
}

/* Half of the last digit; a metric length with few digits is told in feet as coarsely. */
static double half_step(const measure *m, const measure *metric) {
  double half = 0.5000001 * m->step * factor_of(m);
  if (!m->us || m->kind != LW_KIND_LENGTH) return half;
  bool coarse = strcmp(metric->unit, "m") == 0 && metric->step > 0.09;
  if (coarse) return metric->step > 0.9 ? 0.5 * FOOT : 0.5 * INCH;
  return fmax(half, m->step < 0.09 ? half : 0.0625000001 * INCH);
}

static bool near(double a, double b, double within) {
  return fabs(a - b) <= within + 1e-9 * fabs(a);
}

/* A metric figure whose unit was said before it. */
static bool unit_fits(const measure *metric, const measure *us) {
  static const double SCALES[] = {1.0, 0.001, 1000.0};
  for (size_t i = 0; i < sizeof SCALES / sizeof *SCALES; i++) {
    double half = 0.5000001 * metric->step * SCALES[i] + half_step(us, metric);
    if (near(metric->value * SCALES[i], us->value * factor_of(us), half)) return true;
  }
  return false;
}

/* Columns of a table have their unit at the head of it. */
static bool column_fits(const measure *metric, const measure *us) {
  static const lw_kind KINDS[] = {LW_KIND_LENGTH, LW_KIND_PRESSURE, LW_KIND_LINE_LOAD, LW_KIND_MOMENT,
                                  LW_KIND_VOLUME, LW_KIND_AREA,     LW_KIND_MASS};
  for (size_t i = 0; i < sizeof KINDS / sizeof *KINDS; i++) {
    measure as = {.unit = "", .us = true, .kind = KINDS[i], .value = us->value, .step = us->step};
    double half = 0.5000001 * metric->step + 0.5000001 * us->step * factor_of(&as);
    if (near(metric->value, as.value * factor_of(&as), half)) return true;
  }
  return false;
}

static bool is_pair(const measure *metric, const measure *us) {
  if (us->unit[0] == '\0')
    return near(metric->value, us->value, 1e-9) || (metric->unit[0] == '\0' && column_fits(metric, us));
  if (metric->unit[0] == '\0') return unit_fits(metric, us);
  double in_si = us->kind == LW_KIND_MASS && metric->kind == LW_KIND_FORCE ? POUND_KN : factor_of(us);
  double half = 0.5000001 * metric->step * factor_of(metric) + half_step(us, metric) * in_si / factor_of(us);
  return near(metric->value * factor_of(metric), us->value * in_si, half);
}

int expect_paired(const char *metric, const char *us, const char *name) {
  char *m_text = measure_fold(metric, true), *us_text = measure_fold(us, true);
  const char *m_at = m_text, *us_at = us_text;
  measure m, u;
  int paired = 0;
  for (bool more = true; more;) {
    bool has_m = measure_next(&m_at, &m), has_us = measure_next(&us_at, &u);
    more = has_m && has_us && is_pair(&m, &u);
    paired += more ? 1 : 0;
    if (more || (!has_m && !has_us)) continue;
    cr_expect(false, "figure %d:\n%.120s\n%.120s\nof %s", paired + 1,
              has_m ? (m.at > m_text + 30 ? m.at - 30 : m_text) : "none",
              has_us ? (u.at > us_text + 30 ? u.at - 30 : us_text) : "none", name);
  }
  free(m_text);
  free(us_text);
  return paired;
}
