/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A sentence of a table that names a figure of another quotes it, "{thresholds/footing-line}", so that the
 * two cannot part when one of them is replaced. */
#include "quote.h"

#include <string.h>

#include "base/amount.h"
#include "base/canned.h"
#include "names.h"

/* Ways to say a pure number: in words where it is the usual one, else as a figure. */
static const struct {
  const char *as;
  double usual;
  const char *words;
  double times;
  const char *format;
} FORMS[] = {
    {"times", 2.0, "twice", 1.0, "%.4g times"},
    {"a height", 1.0, "a wall height", 1.0, "%.4g wall heights"},
    {"heights", 1.0, "one wall height", 1.0, "%.4g wall heights"},
    {"per cent", 0.01, "one per cent", 100.0, "%.4g per cent"},
};

/* Ways to say a length. */
static const struct {
  const char *as;
  double times;
  const char *format;
} LENGTHS[] = {{"mm", 1000.0, "%.4g mm"}, {"tenths", 1.0, "%.1f m"}};

/* The figure of a table's row and its unit; false: there is none. */
static bool figure_of(const lw_tables *tables, const char *table, const char *slug, double *value,
                      const char **unit) {
  if (strcmp(table, "clearances") == 0) {
    const lw_clearance_row *row = lw_tables_clearance(tables, slug);
    if (row) *value = row->at_least_m;
    *unit = "m";
    return row != NULL;
  }
  bool fence = strcmp(table, "fences") == 0;
  if (!fence && strcmp(table, "thresholds") != 0) return false;
  const lw_threshold_row *row = (fence ? lw_tables_fence : lw_tables_threshold)(tables, slug);
  if (!row) return false;
  *value = row->value;
  *unit = row->unit;
  return true;
}

/* The kind that a unit of the tables measures. */
static lw_kind kind_of(const char *unit) {
  const lw_unit *is;
  for (size_t i = 0; (is = lw_unit_at(i)) != NULL; i++)
    if (strcmp(is->name, unit) == 0) return is->kind;
  return LW_KIND_NUMBER;
}

/* A measure as a pair: "{3 m = 9 ft 10 in}". From a metre on whole inches are near enough. */
static void pair(const char *metric, lw_kind kind, double value, char *out, size_t size) {
  bool long_one = kind == LW_KIND_LENGTH && value >= 1.0;
  if (lw_units_differ(LW_UNITS_US, kind))
    lw_print(out, size, "{%s = %s}", metric, lw_amount_of(LW_UNITS_US, kind, value, long_one ? 1 : 2).text);
  else
    lw_print(out, size, "%s", metric);
}

static void say_plainly(double value, const char *unit, char *out, size_t size) {
  char metric[48];
  lw_print(metric, sizeof metric, "%.4g%s%s", value, unit[0] ? " " : "", unit);
  pair(metric, kind_of(unit), value, out, size);
}

static bool say_length(double length_m, const char *as, char *out, size_t size) {
  for (size_t i = 0; i < sizeof LENGTHS / sizeof *LENGTHS; i++) {
    char metric[48];
    if (strcmp(LENGTHS[i].as, as) != 0) continue;
    lw_print(metric, sizeof metric, LENGTHS[i].format, length_m * LENGTHS[i].times);
    pair(metric, LW_KIND_LENGTH, length_m, out, size);
    return true;
  }
  return false;
}

static bool say_number(double value, const char *as, char *out, size_t size) {
  for (size_t i = 0; i < sizeof FORMS / sizeof *FORMS; i++) {
    if (strcmp(FORMS[i].as, as) != 0) continue;
    bool usual = value > FORMS[i].usual - 1e-12 && value < FORMS[i].usual + 1e-12;
    if (usual)
      lw_print(out, size, "%s", FORMS[i].words);
    else
      lw_print(out, size, FORMS[i].format, value * FORMS[i].times);
    return true;
  }
  return false;
}

static bool say(double value, const char *unit, const char *as, char *out, size_t size) {
  if (as) return (strcmp(unit, "m") == 0 ? say_length : say_number)(value, as, out, size);
  say_plainly(value, unit, out, size);
  return true;
}

/* "table/slug" or "table/slug as form", in pieces; false: not of this form. */
static bool part(char *text, const char **table, const char **slug, const char **as) {
  char *slash = strchr(text, '/'), *word = strstr(text, " as ");
  if (!slash || (word && word < slash)) return false;
  *slash = '\0';
  if (word) *word = '\0';
  *table = text;
  *slug = slash + 1;
  *as = word ? word + 4 : NULL;
  return true;
}

bool lw_quote(const lw_tables *tables, const char *quote, size_t length, char *out, size_t size) {
  char text[LW_QUOTE_MAX];
  const char *table, *slug, *as, *unit;
  double value;
  if (length >= sizeof text) return false;
  memcpy(text, quote, length);
  text[length] = '\0';
  return part(text, &table, &slug, &as) && figure_of(tables, table, slug, &value, &unit) &&
         say(value, unit, as, out, size);
}

lw_status lw_quote_all(const lw_tables *tables, const char *text, lw_text *out, char wrong[LW_QUOTE_MAX]) {
  const char *at = text;
  for (const char *open; (open = strchr(at, '{')) != NULL;) {
    char said[LW_QUOTE_MAX];
    size_t ready = lw_canned_pair(open), length = ready > 0 ? ready - 1 : strcspn(open, "}");
    lw_print(wrong, LW_QUOTE_MAX, "%.*s}", (int)(length < LW_QUOTE_MAX ? length : LW_QUOTE_MAX), open);
    lw_text_add_bytes(out, at, (size_t)(open - at));
    if (ready > 0)
      lw_text_add_bytes(out, open, ready);
    else if (open[length] == '}' && lw_quote(tables, open + 1, length - 1, said, sizeof said))
      lw_text_add(out, said);
    else
      return LW_FAULTS;
    at = open + length + 1;
  }
  lw_text_add(out, at);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}
