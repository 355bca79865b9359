/* SPDX-License-Identifier: GPL-3.0-or-later */
/* A soil by its name or by what the hand test showed. */
#include "fold.h"
#include "names.h"

#include <math.h>
#include <string.h>

/* A measured value or range, SI. */
typedef struct span {
  double from, to;
} span;

static bool is_number_part(char c) {
  return (c >= '0' && c <= '9') || c == '.';
}

static const char *skip_blanks(const char *text) {
  return text + strspn(text, " ");
}

static bool read_length(const char **text, double *value) {
  size_t length = 0;
  *text = skip_blanks(*text);
  while (is_number_part((*text)[length])) length++;
  if (!lw_number_read(*text, length, value)) return false;
  *text = skip_blanks(*text + length);
  return true;
}

/* "25", "10 20" (a folded "10-20"), "10 to 20", each with an optional unit at the end. */
static bool read_span(const char *text, lw_kind kind, const char *unit_if_none, span *s) {
  if (!read_length(&text, &s->from)) return false;
  s->to = s->from;
  if (strncmp(text, "to ", 3) == 0) text += 3;
  if (is_number_part(skip_blanks(text)[0]) && !read_length(&text, &s->to)) return false;
  const char *name = text[0] ? text : unit_if_none;
  const lw_unit *unit = lw_unit_find(kind, name, strlen(name));
  if (!unit || s->to < s->from) return false;
  s->from *= unit->to_si;
  s->to *= unit->to_si;
  return true;
}

/* The ends of a row's range: the lower included, the upper not; no upper end is infinity. Rounding of
 * units must not move a value off the end it was typed at. */
static bool meets(const span *s, double from, double to) {
  const double slack = 1e-9;
  if (isnan(from)) return false;
  bool point = s->to - s->from < slack;
  bool above = point ? s->from >= from - slack : s->to > from + slack;
  return above && (isnan(to) || s->from < to - slack);
}

/* Refused soils first, then the smaller friction angle. */
static bool less_favourable(const lw_soil_row *a, const lw_soil_row *b) {
  if (isnan(a->friction_rad) || isnan(b->friction_rad)) return isnan(a->friction_rad);
  return a->friction_rad < b->friction_rad;
}

static const lw_soil_row *by_ribbon(const lw_tables *tables, const span *s) {
  const lw_soil_row *worst = NULL;
  for (int i = 0; i < tables->soil_count; i++) {
    const lw_soil_row *soil = &tables->soil[i];
    if (!meets(s, soil->ribbon_from_m, soil->ribbon_to_m)) continue;
    if (!worst || less_favourable(soil, worst)) worst = soil;
  }
  return worst;
}

static const lw_soil_row *by_heap(const lw_tables *tables, const span *s) {
  const span flattest = {s->from, s->from};
  for (int i = 0; i < tables->soil_count; i++)
    if (meets(&flattest, tables->soil[i].heap_from_rad, tables->soil[i].heap_to_rad)) return &tables->soil[i];
  return NULL;
}

/* What follows a leading word, or NULL when the text does not begin with it. */
static const char *after(const char *text, const char *word) {
  size_t length = strlen(word);
  return strncmp(text, word, length) == 0 ? text + length : NULL;
}

const lw_soil_row *lw_tables_soil(const lw_tables *tables, const char *name) {
  char folded[LW_FOLDED_MAX];
  span s;
  int i = lw_name_index(tables, LW_LIST_SOILS, name);
  if (i >= 0) return &tables->soil[i];
  lw_fold(name, strlen(name), folded);
  const char *ribbon = after(folded, "ribbon ");
  if (ribbon) return read_span(ribbon, LW_KIND_LENGTH, "mm", &s) ? by_ribbon(tables, &s) : NULL;
  const char *heap = after(folded, "poured heap ");
  if (!heap) heap = after(folded, "heap ");
  if (heap) return read_span(heap, LW_KIND_ANGLE, "deg", &s) ? by_heap(tables, &s) : NULL;
  return NULL;
}
