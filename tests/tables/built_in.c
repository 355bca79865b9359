/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What the tables in the library hold. */
#include "help.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <csv.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#define DEGREE (3.14159265358979323846 / 180.0)

static const lw_origin_note no_origin;

/* Rows of a CSV text as libcsv counts them by itself, the header left out. */
static void count_row(int ending, void *rows) {
  (void)ending;
  ++*(int *)rows;
}

static int rows_in_file(const char *name) {
  lw_text text = {0};
  struct csv_parser parser;
  int rows = 0;
  cr_assert_eq(lw_tables_csv(NULL, name, &text, NULL), LW_OK);
  csv_init(&parser, CSV_STRICT);
  csv_parse(&parser, text.data, text.length, NULL, count_row, &rows);
  csv_fini(&parser, NULL, count_row, &rows);
  csv_free(&parser);
  lw_text_free(&text);
  return rows - 1;
}

Test(tables, as_many_rows_as_the_files_have) {
  const lw_tables *t = tables_built_in();
  const struct {
    const char *name;
    int rows, least;
  } tables[] = {
      {"soils", t->soil_count, 16},
      {"interfaces", t->interface_count, 30},
      {"materials", t->material_count, 20},
      {"loads", t->load_count, 20},
      {"bearing", t->bearing_count, 40},
      {"plant", t->plant_count, 8},
      {"conventions", t->conventions_count, 5},
      {"formats", t->factor_count, 50},
      {"limits", t->limit_count, 90},
      {"hazards", t->hazard_count, 62},
      {"conditions", t->condition_count, 18},
      {"clearances", t->clearance_count, 12},
      {"thresholds", t->threshold_count, 10},
      {"fences", t->fence_count, 14},
      {"ordering", t->ordering_count, 35},
      {"questions", t->question_count, 25},
      {"choices", t->choice_count, 60},
  };
  size_t count = sizeof tables / sizeof tables[0];
  for (size_t i = 0; i < count; i++) {
    cr_expect(eq(int, tables[i].rows, rows_in_file(tables[i].name)), "%s", tables[i].name);
    cr_expect(le(int, tables[i].least, tables[i].rows), "%s", tables[i].name);
    cr_expect_str_eq(lw_tables_name_at(i), tables[i].name);
  }
  cr_expect_null(lw_tables_name_at(count));
}

/* "[KEY locator]" somewhere, or the one sentence for what builders do. */
static bool names_a_source(const lw_origin_note *from) {
  const char *open = strchr(from->source, '[');
  bool practice = strcmp(from->source, "common practice, no source") == 0;
  if (practice) return from->seen == LW_PRACTICE;
  return open && open[1] >= 'A' && open[1] <= 'Z' && strchr(open, ' ') && strchr(open, ']');
}

#define EXPECT_SOURCES(rows, count, label) \
  for (int i = 0; i < (count); i++) \
  cr_expect(names_a_source(&(rows)[i].from), "%s: \"%s\"", (rows)[i].label, (rows)[i].from.source)

Test(tables, every_row_says_where_it_comes_from) {
  const lw_tables *t = tables_built_in();
  cr_assert_not(names_a_source(&no_origin));
  EXPECT_SOURCES(t->soil, t->soil_count, name);
  EXPECT_SOURCES(t->interface_, t->interface_count, name);
  EXPECT_SOURCES(t->material, t->material_count, name);
  EXPECT_SOURCES(t->load, t->load_count, slug);
  EXPECT_SOURCES(t->bearing, t->bearing_count, name);
  EXPECT_SOURCES(t->plant, t->plant_count, name);
  EXPECT_SOURCES(t->factor, t->factor_count, factor_set);
  EXPECT_SOURCES(t->limit, t->limit_count, id);
  EXPECT_SOURCES(t->hazard, t->hazard_count, id);
  EXPECT_SOURCES(t->condition, t->condition_count, slug);
  EXPECT_SOURCES(t->clearance, t->clearance_count, slug);
  EXPECT_SOURCES(t->threshold, t->threshold_count, slug);
  EXPECT_SOURCES(t->fence, t->fence_count, slug);
  EXPECT_SOURCES(t->ordering, t->ordering_count, slug);
  EXPECT_SOURCES(t->question, t->question_count, key);
  for (int i = 0; i < t->soil_count; i++) {
    cr_expect(names_a_source(&t->soil[i].weight_from), "%s", t->soil[i].name);
    cr_expect(names_a_source(&t->soil[i].bearing_from), "%s", t->soil[i].name);
  }
}

/* [NAVFAC-7.02 p.63] prints coefficient and angle side by side, the angle to a whole degree. */
Test(tables, printed_angles_agree_with_printed_coefficients) {
  const lw_tables *t = tables_built_in();
  int compared = 0;
  for (int i = 0; i < t->interface_count; i++) {
    const lw_interface_row *row = &t->interface_[i];
    if (isnan(row->friction_low) || isnan(row->angle_low_rad)) continue;
    cr_expect(lt(dbl, fabs(atan(row->friction_low) - row->angle_low_rad), 1.0 * DEGREE), "%s", row->name);
    cr_expect(lt(dbl, fabs(atan(row->friction_high) - row->angle_high_rad), 1.0 * DEGREE), "%s", row->name);
    compared++;
  }
  cr_expect(eq(int, compared, 15));
}

Test(tables, each_interface_gives_friction_in_one_way) {
  const lw_tables *t = tables_built_in();
  for (int i = 0; i < t->interface_count; i++) {
    const lw_interface_row *row = &t->interface_[i];
    int ways =
        !isnan(row->friction_low) + !isnan(row->share_of_tan_friction) + !isnan(row->share_of_friction_angle);
    cr_expect(eq(int, ways, 1), "%s", row->name);
  }
}

Test(tables, safe_defaults_are_rows) {
  const lw_tables *t = tables_built_in();
  const lw_soil_row *loam = lw_tables_soil(t, "loam"), *under = lw_tables_soil(t, "clay loam");
  cr_assert_not_null(loam);
  cr_assert_not_null(under);
  cr_expect(epsilon_eq(dbl, loam->friction_rad, 26 * DEGREE, 1e-12));
  cr_expect(epsilon_eq(dbl, loam->unit_weight_kn_per_m3, 20, 1e-12));
  cr_expect(epsilon_eq(dbl, loam->light_unit_weight_kn_per_m3, 16, 1e-12));
  cr_expect(epsilon_eq(dbl, loam->saturated_unit_weight_kn_per_m3, 21, 1e-12));
  cr_expect(epsilon_eq(dbl, under->friction_rad, 24 * DEGREE, 1e-12));
  cr_expect(epsilon_eq(dbl, under->allowable_bearing_kpa, 50, 1e-12));
  cr_expect(eq(int, (int)loam->from.seen, LW_PROPOSAL));
  cr_expect(epsilon_eq(dbl, lw_tables_interface(t, "assumed base")->friction_low, 0.30, 1e-12));
  cr_expect(epsilon_eq(dbl, lw_tables_interface(t, "assumed joint")->friction_low, 0.40, 1e-12));
}

/* The default set as its table stands; each figure says how it is known. */
Test(tables, the_default_format_has_a_mark_on_each_number) {
  const lw_tables *t = tables_built_in();
  const struct {
    const char *quantity;
    double needs[3];
    lw_seen seen[3];
  } rows[] = {
      {"sliding", {1.5, 1.33, 1.1}, {LW_SEEN, LW_SEEN, LW_SEEN}},
      {"overturning", {1.5, 1.33, 1.1}, {LW_SEEN, LW_PROPOSAL, LW_SEEN}},
      {"compression", {0.5, 0.5, 0.0}, {LW_PROPOSAL, LW_PROPOSAL, LW_PROPOSAL}},
      {"compression-on-weak-ground", {0.75, 0.5, 0.0}, {LW_PROPOSAL, LW_PROPOSAL, LW_PROPOSAL}},
      {"slip", {1.3, 1.2, 1.0}, {LW_PROPOSAL, LW_PROPOSAL, LW_PROPOSAL}},
      {"slip-on-doubtful-ground", {1.5, 1.2, 1.0}, {LW_MEMORY, LW_PROPOSAL, LW_PROPOSAL}},
      {"bearing-theory", {3.0, 2.0, 1.1}, {LW_MEMORY, LW_MEMORY, LW_PROPOSAL}},
      {"bearing-presumptive", {1.0, 1.0, 1.0}, {LW_MEMORY, LW_MEMORY, LW_MEMORY}},
  };
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    const lw_factor_row *row = lw_tables_factor(t, "lowwall", rows[i].quantity);
    cr_assert_not_null(row, "%s", rows[i].quantity);
    for (int k = LW_USUAL; k <= LW_EXTREME; k++) {
      cr_expect(epsilon_eq(dbl, row->needs[k], rows[i].needs[k], 1e-12), "%s %d", rows[i].quantity, k);
      cr_expect(eq(int, (int)row->needs_seen[k], (int)rows[i].seen[k]), "%s %d", rows[i].quantity, k);
    }
  }
  const lw_factor_row *passive = lw_tables_factor(t, "lowwall", "sliding-with-passive");
  cr_expect(epsilon_eq(dbl, passive->needs[LW_USUAL], 2.0, 1e-12));
  cr_expect(eq(int, (int)passive->needs_seen[LW_USUAL], LW_MEMORY));
  for (int k = LW_UNUSUAL; k <= LW_EXTREME; k++) {
    const lw_factor_row *without = lw_tables_factor(t, "lowwall", "sliding");
    cr_expect(eq(int, (int)passive->needs_seen[k], LW_PROPOSAL));
    cr_expect_leq(without->needs[k] * 2.0 / 1.5, passive->needs[k]);
    cr_expect_lt(passive->needs[k], passive->needs[k - 1]);
  }
}

Test(tables, each_format_says_where_passive_goes_and_what_divides_strength) {
  const lw_tables *t = tables_built_in();
  static const char *const formats[] = {"lowwall",        "ibc",        "irc", "navfac-dm7", "em-1110-2-2502",
                                        "em-1110-2-2100", "aashto-asd", "cp2", "gb-50007"};
  for (size_t i = 0; i < sizeof formats / sizeof formats[0]; i++) {
    cr_assert(lw_tables_has_factor_set(t, formats[i]), "%s", formats[i]);
    cr_expect_not_null(lw_tables_factor(t, formats[i], "passive-as"), "%s", formats[i]);
    const lw_factor_row *friction = lw_tables_factor(t, formats[i], "friction");
    cr_assert_not_null(friction, "%s", formats[i]);
    cr_expect(epsilon_eq(dbl, friction->needs[LW_USUAL], 1.0, 1e-12), "%s", formats[i]);
    cr_expect_not_null(lw_tables_factor(t, formats[i], "sliding"), "%s", formats[i]);
  }
  for (int i = 0; i < t->factor_count; i++) {
    const char *set = t->factor[i].factor_set;
    if (lw_tables_factor(t, set, "sliding") == NULL) continue;
    cr_expect_not_null(lw_tables_factor(t, set, "passive-as"), "%s asks of sliding without passive-as", set);
  }
  cr_expect(
      epsilon_eq(dbl, lw_tables_factor(t, "em-1110-2-2502", "passive-as")->needs[LW_USUAL], 1.0, 1e-12));
  cr_expect(epsilon_eq(dbl, lw_tables_factor(t, "navfac-dm7", "passive-as")->needs[LW_USUAL], 0.0, 1e-12));
}

Test(tables, loads_of_people_are_marked) {
  const lw_tables *t = tables_built_in();
  const struct {
    const char *slug, *unit;
    double value;
    lw_seen seen;
  } rows[] = {
      {"garden", "kPa", 2.5, LW_PROPOSAL},
      {"vehicle", "kPa", 10, LW_PROPOSAL},
      {"people-sitting-down", "kN/m", 1.6, LW_PROPOSAL},
      {"people-sitting-out", "kN/m", 0.15, LW_MEMORY},
      {"people-leaning", "kN/m", 0.5, LW_MEMORY},
  };
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
    const lw_load_row *row = lw_tables_load(t, rows[i].slug);
    cr_assert_not_null(row, "%s", rows[i].slug);
    cr_expect(epsilon_eq(dbl, row->value, rows[i].value, 1e-12), "%s", rows[i].slug);
    cr_expect_str_eq(row->unit, rows[i].unit, "%s", rows[i].slug);
    cr_expect(eq(int, (int)row->from.seen, (int)rows[i].seen), "%s", rows[i].slug);
  }
}

Test(tables, refused_soils_have_no_strength_and_say_what_to_do) {
  const lw_tables *t = tables_built_in();
  static const char *const refused[] = {"high-plasticity clay", "organic soil", "uncontrolled fill"};
  for (size_t i = 0; i < sizeof refused / sizeof refused[0]; i++) {
    const lw_soil_row *soil = lw_tables_soil(t, refused[i]);
    cr_assert_not_null(soil, "%s", refused[i]);
    cr_expect(eq(int, (int)soil->use, LW_BACKFILL_REFUSED), "%s", refused[i]);
    cr_expect(isnan(soil->friction_rad) && isnan(soil->allowable_bearing_kpa), "%s", refused[i]);
    cr_expect(lt(sz, 40, strlen(soil->note)), "%s", refused[i]);
  }
}

/* Proposals of this project: below the loam that is assumed elsewhere, and no bearing value for any. */
Test(tables, plant_soils_count_in_a_bed_alone) {
  const lw_tables *t = tables_built_in();
  const struct {
    const char *name;
    lw_backfill_use use;
    double low_deg, typical_deg;
  } rows[] = {{"topsoil", LW_BACKFILL_BED, 24.0, 26.0},
              {"planting mix", LW_BACKFILL_BED, 26.0, 28.0},
              {"compost", LW_BACKFILL_BED_TOP, 24.0, 26.0}};
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    const lw_soil_row *row = lw_tables_soil(t, rows[i].name);
    cr_assert_not_null(row, "%s", rows[i].name);
    cr_expect(eq(int, (int)row->use, (int)rows[i].use), "%s", row->name);
    cr_expect(epsilon_eq(dbl, row->friction_rad, rows[i].low_deg * DEGREE, 1e-12), "%s", row->name);
    cr_expect(epsilon_eq(dbl, row->friction_typical_rad, rows[i].typical_deg * DEGREE, 1e-12), "%s",
              row->name);
    cr_expect(eq(int, (int)row->from.seen, LW_PROPOSAL), "%s", row->name);
    cr_expect(isnan(row->allowable_bearing_kpa), "%s", row->name);
    /* Wet where it pushes. */
    cr_expect(epsilon_eq(dbl, row->unit_weight_kn_per_m3, row->saturated_unit_weight_kn_per_m3, 1e-12), "%s",
              row->name);
  }
}
