/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A sentence of a table that names a figure of another quotes it, "{thresholds/footing-line}", so that the
 * two cannot part when one of them is replaced. */
#include "quote.h"

#include <string.h>

#include "names.h"

/* Ways to say a figure: in words where it is the usual one, else as a number. */
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
    {"mm", 0.0, "0 mm", 1000.0, "%.4g mm"},
    {"tenths", 0.0, "0.0 m", 1.0, "%.1f m"},
};

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

static bool say(double value, const char *unit, const char *as, char *out, size_t size) {
  if (!as) {
    lw_print(out, size, "%.4g%s%s", value, unit[0] ? " " : "", unit);
    return true;
  }
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
    size_t length = strcspn(open, "}");
    lw_print(wrong, LW_QUOTE_MAX, "%.*s}", (int)(length < LW_QUOTE_MAX ? length : LW_QUOTE_MAX), open);
    if (open[length] != '}' || !lw_quote(tables, open + 1, length - 1, said, sizeof said)) return LW_FAULTS;
    lw_text_add_bytes(out, at, (size_t)(open - at));
    lw_text_add(out, said);
    at = open + length + 1;
  }
  lw_text_add(out, at);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}
