/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "shape.h"

#include <ctype.h>
#include <string.h>

/* What the program asks for by name. A table that was replaced must still have it. */
typedef struct needed {
  const char *table, *name;
} needed;

static const needed needs[] = {
    {"formats", "lowwall"},
    {"limits", "default"},
};

static bool has(const lw_tables *tables, const needed *need) {
  if (strcmp(need->table, "formats") == 0) return lw_tables_has_factor_set(tables, need->name);
  return lw_tables_has_place(tables, need->name);
}

static lw_status wrong(lw_error *error, const char *file, const char *row, const char *sentence) {
  return lw_error_set(error, LW_FAULTS, LW_REASON_NONE, "%s.csv, the row of %.60s: %s", file, row, sentence);
}

/* Comparisons with NAN are false: a missing number is in order with every other. */
static lw_status check_soils(const lw_tables *tables, lw_error *error) {
  for (int i = 0; i < tables->soil_count; i++) {
    const lw_soil_row *soil = &tables->soil[i];
    if (soil->light_unit_weight_kn_per_m3 > soil->unit_weight_kn_per_m3)
      return wrong(error, "soils", soil->name, "the light unit weight is above the unit weight");
    if (soil->light_unit_weight_kn_per_m3 > soil->unit_weight_typical_kn_per_m3 ||
        soil->unit_weight_typical_kn_per_m3 > soil->unit_weight_kn_per_m3)
      return wrong(error, "soils", soil->name,
                   "the typical unit weight is not between the light and the heavy");
    if (soil->unit_weight_kn_per_m3 > soil->saturated_unit_weight_kn_per_m3)
      return wrong(error, "soils", soil->name, "the saturated unit weight is below the moist one");
    if (soil->friction_rad > soil->friction_typical_rad)
      return wrong(error, "soils", soil->name, "the cautious friction angle is above the typical one");
    if (soil->ribbon_from_m >= soil->ribbon_to_m || soil->heap_from_rad >= soil->heap_to_rad)
      return wrong(error, "soils", soil->name, "a range of a hand test ends before it begins");
    if (soil->use == LW_BACKFILL_REFUSED && soil->note[0] == '\0')
      return wrong(error, "soils", soil->name, "a refused soil needs a note: why, and what to do");
  }
  return LW_OK;
}

static lw_status check_material(const lw_material_row *row, lw_error *error) {
  double low = row->unit_weight_low_kn_per_m3, high = row->unit_weight_high_kn_per_m3,
         likely = row->unit_weight_likely_kn_per_m3;
  if (low > high) return wrong(error, "materials", row->name, "the low unit weight is above the high one");
  if (likely < low || likely > high)
    return wrong(error, "materials", row->name, "the likely unit weight is not between the low and the high");
  return LW_OK;
}

static lw_status check_ranges(const lw_tables *tables, lw_error *error) {
  lw_status status = LW_OK;
  for (int i = 0; i < tables->interface_count; i++)
    if (tables->interface_[i].friction_low > tables->interface_[i].friction_high)
      return wrong(error, "interfaces", tables->interface_[i].name, "the low friction is above the high one");
  for (int i = 0; i < tables->material_count && status == LW_OK; i++)
    status = check_material(&tables->material[i], error);
  return status;
}

/* "New South Wales: Maitland" as the slug of what stands before the colon. */
static void slug_of(const char *name, char *out, size_t size) {
  size_t used = 0;
  for (; *name && *name != ':' && used + 1 < size; name++)
    if (*name != '\'') out[used++] = *name == ' ' ? '-' : (char)tolower((unsigned char)*name);
  out[used] = '\0';
}

static bool is_slug(const char *place) {
  return place[0] != '\0' && place[strspn(place, "abcdefghijklmnopqrstuvwxyz0123456789-")] == '\0';
}

/* A place around another has rows of its own, or is the country or the region that the row itself names. */
static bool is_around(const lw_tables *tables, const lw_limit_row *row, const char *place) {
  char country[sizeof row->country], region[sizeof row->region];
  slug_of(row->country, country, sizeof country);
  slug_of(row->region, region, sizeof region);
  return lw_tables_has_place(tables, place) || strcmp(place, country) == 0 || strcmp(place, region) == 0;
}

static const char *wrong_within(const lw_tables *tables, const lw_limit_row *row) {
  char place[sizeof row->within];
  for (const char *at = row->within; *at;) {
    size_t length = strcspn(at, "|");
    memcpy(place, at, length);
    place[length] = '\0';
    if (!is_slug(place) || !is_around(tables, row, place))
      return "within names a place that has no row and is not the row's country or region";
    at += length + (at[length] == '|');
  }
  return NULL;
}

/* Rows of one region are about one place: one that is not is misspelt, and would be missed in silence. */
static const char *wrong_place(const lw_tables *tables, const lw_limit_row *row) {
  if (!is_slug(row->place)) return "the place is not written in small letters, digits and hyphens";
  for (int i = 0; i < tables->limit_count; i++) {
    const lw_limit_row *other = &tables->limit[i];
    bool same = strcmp(other->country, row->country) == 0 && strcmp(other->region, row->region) == 0;
    if (same && strcmp(other->place, row->place) != 0)
      return "another row of the same country and region has another place";
  }
  return wrong_within(tables, row);
}

static bool is_month(const char *text) {
  static const char form[] = "0000-00";
  bool same = strlen(text) == sizeof form - 1;
  for (size_t i = 0; same && i < sizeof form - 1; i++)
    same = form[i] == '0' ? isdigit((unsigned char)text[i]) != 0 : text[i] == form[i];
  return same && strcmp(text + 5, "01") >= 0 && strcmp(text + 5, "12") <= 0;
}

static const char *wrong_row(const lw_tables *tables, const lw_limit_row *row) {
  if (row->read[0] != '\0' && !is_month(row->read))
    return "the day of reading is not a month such as 2019-08, nor empty";
  return wrong_place(tables, row);
}

static lw_status check_places(const lw_tables *tables, lw_error *error) {
  for (int i = 0; i < tables->limit_count; i++) {
    const char *sentence = wrong_row(tables, &tables->limit[i]);
    if (sentence) return wrong(error, "limits", tables->limit[i].id, sentence);
  }
  return LW_OK;
}

lw_status lw_tables_check(const lw_tables *tables, lw_error *error) {
  for (size_t i = 0; i < sizeof needs / sizeof needs[0]; i++)
    if (!has(tables, &needs[i]))
      return lw_error_set(error, LW_FAULTS, LW_REASON_NONE,
                          "%s.csv: there is no row for %s, and lowwall cannot do without it", needs[i].table,
                          needs[i].name);
  lw_status status = lw_tables_check_asked(tables, error);
  if (status == LW_OK) status = check_soils(tables, error);
  if (status == LW_OK) status = check_places(tables, error);
  return status == LW_OK ? check_ranges(tables, error) : status;
}
