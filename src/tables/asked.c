/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Rows that code asks for: there, in the unit that code takes. A row that nothing reads is refused: whoever
 * wrote it meant something by it, and would never see that nothing came of it. */
#include "names.h"
#include "shape.h"

#include <math.h>
#include <string.h>

static lw_status wrong(lw_error *error, const char *table, const char *row, const char *column,
                       const char *stood, const char *cure) {
  return lw_error_set(error, LW_FAULTS, LW_REASON_NONE,
                      "%s.csv, the row of %.60s, column %s: \"%.60s\" stands there; %s", table, row, column,
                      stood, cure);
}

static const char *unit_of(const lw_tables *tables, lw_list list, int row) {
  switch (list) {
  case LW_LIST_THRESHOLDS: return tables->threshold[row].unit;
  case LW_LIST_FENCES: return tables->fence[row].unit;
  default: return tables->ordering[row].unit;
  }
}

/* Conditions and distances may be taken out by whom they do not concern; a figure, never. */
static bool may_be_gone(lw_list list) {
  return list == LW_LIST_CONDITIONS || list == LW_LIST_CLEARANCES;
}

static lw_status check_known(const lw_tables *tables, lw_known_row which, lw_error *error) {
  lw_list list = lw_known_list(which);
  const char *table = lw_list_table(list), *slug = lw_known_slug(which), *unit = lw_known_unit(which);
  int row = tables->known[which];
  if (row < 0 && !may_be_gone(list))
    return lw_error_set(error, LW_FAULTS, LW_REASON_NONE,
                        "%s.csv: there is no row for %s, and lowwall cannot do without it", table, slug);
  if (row < 0 || !unit || strcmp(unit_of(tables, list, row), unit) == 0) return LW_OK;
  char cure[64];
  lw_print(cure, sizeof cure, "lowwall takes this figure in %s", unit[0] ? unit : "no unit: leave it empty");
  return wrong(error, table, slug, "unit", unit_of(tables, list, row), cure);
}

/* Every row of a list whose rows are all asked for by name. */
static lw_status check_unread(const lw_tables *tables, lw_list list, lw_error *error) {
  for (int row = 0; row < lw_list_rows(tables, list); row++) {
    const char *slug = lw_list_name(tables, list, row);
    char cure[160];
    if (lw_known_is(list, slug)) continue;
    const char *nearest = lw_known_nearest(list, slug);
    lw_print(cure, sizeof cure, "nothing reads that row: %s%s%s",
             nearest ? "the nearest that is read is " : "take it out", nearest ? nearest : "",
             nearest ? ", else take it out" : "");
    return wrong(error, lw_list_table(list), slug, "slug", slug, cure);
  }
  return LW_OK;
}

static const char includes[] = "includes-";

/* Some quantities hold in every situation: a figure of their own beside it would not be read. */
static const char *wrong_figure(const lw_factor_row *row) {
  bool takes_in = row->includes >= 0;
  if (!takes_in && row->need != LW_FACTOR_PASSIVE_AS && row->need != LW_FACTOR_DECIDES) return NULL;
  double usual = row->needs[LW_USUAL];
  bool yes = usual > 0.5, whole = fabs(usual - (yes ? 1.0 : 0.0)) < 1e-12;
  if (!whole || (takes_in && !yes)) return takes_in ? "1 should stand there" : "0 or 1 should stand there";
  for (int kind = LW_UNUSUAL; kind <= LW_EXTREME; kind++)
    if (isfinite(row->needs[kind]) && fabs(row->needs[kind] - usual) > 1e-12)
      return "it holds in every situation: the same as under usual, or nothing";
  return NULL;
}

/* The set of a row takes in more sets than a wall is held against. */
static bool takes_in_too_many(const lw_tables *tables, const lw_factor_row *row) {
  int count = 0;
  for (int i = row->set; i >= 0; i = tables->factor[i].next) count += tables->factor[i].includes >= 0;
  return count > LW_FORMAT_PARTS_MAX;
}

/* A quantity that no check asks for, or a set taken in that has no rows, would be missed in silence. */
static lw_status check_factors(const lw_tables *tables, lw_error *error) {
  for (int i = 0; i < tables->factor_count; i++) {
    const lw_factor_row *row = &tables->factor[i];
    const char *figure = wrong_figure(row);
    if (figure) return wrong(error, "formats", row->factor_set, "usual to extreme", row->quantity, figure);
    if (takes_in_too_many(tables, row))
      return wrong(error, "formats", row->factor_set, "quantity", row->quantity,
                   "a set takes in five others at most: make two of it");
    if (row->need != LW_FACTOR_COUNT || row->includes >= 0) continue;
    bool takes_in = strncmp(row->quantity, includes, sizeof includes - 1) == 0;
    return wrong(error, "formats", row->factor_set, "quantity", row->quantity,
                 takes_in ? "no row has that set: write its name as its own rows do"
                          : "no check asks for it: docs/sheet.md lists the quantities");
  }
  return LW_OK;
}

/* The units in which a load is read, by its kind. */
static const char *units_of(lw_load_row_kind kind) {
  switch (kind) {
  case LW_LOAD_ROW_UNIFORM:
  case LW_LOAD_ROW_STRIP: return "kPa|kPa/m";
  case LW_LOAD_ROW_POINT: return "kN";
  case LW_LOAD_ROW_LINE:
  case LW_LOAD_ROW_CAP:
  case LW_LOAD_ROW_PUSH: break;
  }
  return "kN/m";
}

static lw_status check_loads(const lw_tables *tables, lw_error *error) {
  for (int i = 0; i < tables->load_count; i++) {
    const lw_load_row *row = &tables->load[i];
    char cure[64];
    lw_print(cure, sizeof cure, "a load of this kind is in %s", units_of(row->kind));
    if (lw_word_index(units_of(row->kind), row->unit) < 0)
      return wrong(error, "loads", row->slug, "unit", row->unit, cure);
    if (isfinite(row->push_kn_per_m) && row->kind != LW_LOAD_ROW_CAP)
      return wrong(error, "loads", row->slug, "push [kN/m]", "a number", "only a load of kind cap has one");
    if (isfinite(row->width_m) && row->kind != LW_LOAD_ROW_STRIP)
      return wrong(error, "loads", row->slug, "width [m]", "a number", "only a load of kind strip has one");
  }
  return LW_OK;
}

static const char why[] = "a number should stand there: the row is taken where the answer is left out";

/* What the ground under the wall is taken as, in either look. */
static lw_status check_under(const lw_tables *tables, lw_error *error) {
  static const lw_known_row soils[] = {LW_SOIL_OF_CLAY_LOAM, LW_SOIL_OF_SANDY_CLAY, LW_SOIL_OF_FIRM_CLAY};
  for (size_t i = 0; i < sizeof soils / sizeof *soils; i++)
    if (!isfinite(lw_known_soil(tables, soils[i])->allowable_bearing_kpa))
      return wrong(error, "soils", lw_known_slug(soils[i]), "allowable_bearing [kPa]", "", why);
  if (!isfinite(lw_known_soil(tables, LW_SOIL_OF_SANDY_CLAY)->friction_typical_rad))
    return wrong(error, "soils", lw_known_slug(LW_SOIL_OF_SANDY_CLAY), "friction_angle_typical [deg]", "",
                 why);
  return LW_OK;
}

/* The friction of a back is a share of its soil's angle, in either look. */
static lw_status check_backs(const lw_tables *tables, lw_error *error) {
#define BACK(name, slug) LW_ASSUMED_##name,
  static const lw_known_row backs[] = {LW_BACKS_ASKED(BACK)};
#undef BACK
  for (size_t i = 0; i < sizeof backs / sizeof *backs; i++) {
    const lw_interface_row *row = lw_known_interface(tables, backs[i]);
    if (!isfinite(row->share_of_friction_angle) || !isfinite(row->friction_likely))
      return wrong(error, "interfaces", row->name, "share_of_friction_angle and friction_likely", "", why);
  }
  return LW_OK;
}

/* What stands in for an answer that is left out must have a number to give. */
static lw_status check_stand_ins(const lw_tables *tables, lw_error *error) {
  static const lw_known_row assumed[] = {LW_ASSUMED_BASE, LW_ASSUMED_BED_OF_GRAVEL, LW_ASSUMED_BED_OF_SAND,
                                         LW_ASSUMED_JOINT, LW_ASSUMED_CLEAN_JOINT};
  static const lw_known_row soils[] = {LW_SOIL_OF_LOAM, LW_SOIL_OF_CLAY_LOAM, LW_SOIL_OF_SANDY_CLAY,
                                       LW_SOIL_OF_TOPSOIL};
  for (size_t i = 0; i < sizeof assumed / sizeof *assumed; i++)
    if (!isfinite(lw_known_interface(tables, assumed[i])->friction_low) ||
        !isfinite(lw_known_interface(tables, assumed[i])->friction_likely))
      return wrong(error, "interfaces", lw_known_slug(assumed[i]), "friction_low and friction_likely", "",
                   why);
  for (size_t i = 0; i < sizeof soils / sizeof *soils; i++)
    if (!isfinite(lw_known_soil(tables, soils[i])->friction_rad))
      return wrong(error, "soils", lw_known_slug(soils[i]), "friction_angle [deg]", "", why);
  if (!isfinite(lw_known_soil(tables, LW_SOIL_OF_TOPSOIL)->friction_typical_rad))
    return wrong(error, "soils", "topsoil", "friction_angle_typical [deg]", "", why);
  static const lw_known_row walls[] = {LW_MATERIAL_OF_SOLID_BLOCK, LW_MATERIAL_OF_DRY_STONE};
  for (size_t i = 0; i < sizeof walls / sizeof *walls; i++)
    if (!isfinite(lw_known_material(tables, walls[i])->unit_weight_likely_kn_per_m3))
      return wrong(error, "materials", lw_known_slug(walls[i]), "unit_weight_likely [kN/m3]", "", why);
  lw_status status = check_backs(tables, error);
  return status == LW_OK ? check_under(tables, error) : status;
}

lw_status lw_tables_check_asked(const lw_tables *tables, lw_error *error) {
  static const lw_list all_asked[] = {LW_LIST_CONDITIONS, LW_LIST_CLEARANCES, LW_LIST_THRESHOLDS,
                                      LW_LIST_FENCES, LW_LIST_ORDERING};
  lw_status status = LW_OK;
  for (size_t i = 0; i < sizeof all_asked / sizeof *all_asked && status == LW_OK; i++)
    status = check_unread(tables, all_asked[i], error);
  for (int i = 0; i < LW_KNOWN_COUNT && status == LW_OK; i++)
    status = check_known(tables, (lw_known_row)i, error);
  if (status == LW_OK) status = check_stand_ins(tables, error);
  if (status == LW_OK) status = check_factors(tables, error);
  return status == LW_OK ? check_loads(tables, error) : status;
}
