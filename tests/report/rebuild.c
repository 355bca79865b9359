/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <jansson.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "report/json/json.h"

#include "../checks/random_wall.h"
#include "../sheet/support.h"
#include "rebuilt.h"

/* Another program can check every check from the JSON alone: this one does, from forces[]. */

typedef struct count {
  const char *name;
  int sliding, moments, pressed, bearing, elsewhere, unknown, divided, balanced, both, keys;
} made;

static double number(const json_t *object, const char *key) {
  return json_number_value(json_object_get(object, key));
}

static const char *word(const json_t *object, const char *key) {
  const char *text = json_string_value(json_object_get(object, key));
  return text != NULL ? text : "";
}

static bool is(const json_t *object, const char *key, const char *text) {
  return strcmp(word(object, key), text) == 0;
}

static bool is_true(const json_t *value) {
  return value != NULL && json_is_true(value);
}

/* The contact of a check in its load case: one of those shown, or of the list. */
static const json_t *contact_of(const json_t *situation, const json_t *check) {
  size_t i;
  const json_t *entry;
  json_int_t load_case = json_integer_value(json_object_get(check, "load_case"));
  const json_t *list = json_object_get(situation, load_case > 0 ? "load_cases" : "joints");
  if (load_case == 0 && (is(check, "at", "base") || is(check, "at", "pad")))
    return json_object_get(situation, word(check, "at"));
  json_array_foreach(list, i, entry) {
    if (!is(entry, "at", word(check, "at"))) continue;
    if (load_case == 0 || json_integer_value(json_object_get(entry, "number")) == load_case) return entry;
  }
  return NULL;
}

static void add_moment(rebuilt_sums *sums, double moment) {
  if (moment >= 0.0)
    sums->holds += moment;
  else
    sums->tips -= moment;
}

/* Each arm and moment must agree with the force that it is of. */
static rebuilt_sums sums_of(const json_t *contact, bool uplift_off_resistance) {
  rebuilt_sums sums = {0};
  size_t i;
  json_t *force;
  json_array_foreach(json_object_get(contact, "forces"), i, force) {
    double down = number(force, "vertical_kn_per_m"), out = number(force, "horizontal_kn_per_m");
    double upright = down * number(force, "arm_m"), level = -out * number(force, "lever_m");
    cr_expect_float_eq(number(force, "moment_of_vertical_knm_per_m"), upright,
                       1e-9 * fmax(1.0, fabs(upright)));
    cr_expect_float_eq(number(force, "moment_of_horizontal_knm_per_m"), level, 1e-9 * fmax(1.0, fabs(level)));
    sums.vertical += down;
    sums.horizontal += out;
    add_moment(&sums, level);
    if (uplift_off_resistance && strncmp(word(force, "name"), "uplift", 6) == 0)
      sums.holds += upright;
    else
      add_moment(&sums, upright);
  }
  return sums;
}

static rebuilt_plan plan_of(const json_t *contact, const char *at) {
  bool tapers = json_object_get(contact, "front_share") != NULL;
  return (rebuilt_plan){.width_m = number(contact, "width_m"),
                        .front_share = tapers ? number(contact, "front_share") : 1.0,
                        .rear_share = tapers ? number(contact, "rear_share") : 1.0,
                        .shell_m = number(contact, "shell_m"),
                        .even = strcmp(at, "pad") == 0};
}

static rebuilt_pressure pressure_of(const json_t *method) {
  if (is(method, "base_pressure", "linear")) return REBUILT_LINEAR;
  if (is(method, "base_pressure", "effective")) return REBUILT_EFFECTIVE;
  bool own = is(method, "base_pressure", "own") && !is(method, "bearing", "presumptive");
  return own ? REBUILT_EFFECTIVE : REBUILT_NO_TENSION;
}

/* The check that is being made again, and whose it is. */
typedef struct again {
  made *count;
  const char *situation;
  const json_t *check;
} remaking;

static void expect(const remaking *a, const char *key, double value, double slack) {
  double printed = number(a->check, key);
  cr_expect(fabs(printed - value) <= slack * fmax(fabs(value), 1.0),
            "%s: %s, %s of %s, %s: %.12g, made %.12g", a->count->name, a->situation, word(a->check, "at"),
            word(a->check, "slug"), key, printed, value);
}

static void expect_has(const remaking *a, double resistance, double demand, double slack) {
  expect(a, "resistance", resistance, slack);
  expect(a, "demand", demand, slack);
  if (!json_is_number(json_object_get(a->check, "has"))) return;
  double has = resistance / demand;
  expect(a, "has", has, slack * fmax(1.0, fabs(has)));
}

/* A factor on every strength is found by a search: what is left of the strengths then just holds the push,
 * unless the push jumps there. */
static void slides(const remaking *a, const json_t *contact, const rebuilt_sums *sums) {
  const json_t *by = json_object_get(a->check, "holds_by");
  cr_assert(by != NULL, "%s: sliding does not say what holds", a->count->name);
  double divided = number(contact, "strengths_divided_by"), passive = number(by, "passive_kn_per_m");
  double holds = number(by, "times") *
                 (number(by, "friction") * fmax(sums->vertical, 0.0) + number(by, "bond_kn_per_m"));
  bool off_push = is_true(json_object_get(by, "passive_off_push"));
  if (json_object_get(by, "at_most_kn_per_m") != NULL) holds = fmin(holds, number(by, "at_most_kn_per_m"));
  if (!off_push) holds += passive;
  double push = sums->horizontal - (off_push ? passive : 0.0);
  a->count->sliding++;
  if (divided > 0.0) {
    cr_expect(holds > push - 1e-6 * fmax(push, 1.0), "%s", a->count->name);
    a->count->balanced += holds < push + 1e-6 * fmax(push, 1.0) ? 1 : 0;
    a->count->divided++;
    holds = divided * push;
  }
  expect_has(a, holds, fmax(push, 0.0), 1e-9);
}

/* What friction leaves is on the key. */
static void keys(const remaking *a, const json_t *contact, const rebuilt_sums *sums) {
  const json_t *by = json_object_get(a->check, "holds_by");
  double divided = number(contact, "strengths_divided_by"), times = number(by, "times");
  double beyond = sums->horizontal - times * number(by, "friction") * fmax(sums->vertical, 0.0);
  a->count->keys++;
  expect_has(a, divided > 0.0 ? divided * beyond : times * number(by, "bond_kn_per_m"), fmax(beyond, 0.0),
             1e-9);
}

static void presses(const remaking *a, const rebuilt_plan *plan, const rebuilt_sums *sums,
                    rebuilt_pressure pressure) {
  rebuilt_contact c = rebuilt_of(plan, sums, pressure);
  double slack = 1e-9;
  /* The last digits of a near edge are those of the moments. */
  if (c.inside) slack *= fmax(1.0, 1e-2 * (sums->holds + sums->tips) / (sums->vertical * c.near_m));
  if (is(a->check, "slug", "compression")) {
    a->count->pressed++;
    expect_has(a, c.inside ? c.share * c.area_m2 : 0.0, c.area_m2, slack);
  } else if (c.inside) {
    a->count->bearing++;
    expect(a, "demand", c.greatest_kpa, slack);
    expect(a, "has", number(a->check, "resistance") / c.greatest_kpa,
           slack * fmax(1.0, number(a->check, "has")));
  }
}

static void make(remaking *a, const json_t *method, const json_t *situation) {
  const json_t *contact = contact_of(situation, a->check);
  bool bears = is(a->check, "slug", "bearing");
  cr_assert(contact != NULL, "%s: no load case for %s", a->count->name, word(a->check, "at"));
  rebuilt_sums sums = sums_of(contact, is(method, "uplift_as", "off resistance"));
  rebuilt_plan plan = plan_of(contact, word(a->check, "at"));
  if (json_integer_value(json_object_get(a->check, "load_case")) > 0) a->count->elsewhere++;
  if (is(a->check, "slug", "sliding")) {
    slides(a, contact, &sums);
  } else if (is(a->check, "slug", "key")) {
    keys(a, contact, &sums);
  } else if (is(a->check, "slug", "overturning") || is(a->check, "slug", "tilting")) {
    a->count->moments++;
    expect_has(a, sums.holds, sums.tips, 1e-9);
  } else if (is(a->check, "slug", "compression") || (bears && is(method, "bearing", "presumptive"))) {
    presses(a, &plan, &sums, pressure_of(method));
  } else {
    cr_expect(bears, "make() here and docs/results.md do not say how %s is made", word(a->check, "slug"));
  }
}

static const json_t *shown_contact(const json_t *situation, const json_t *check) {
  size_t i;
  json_t *entry;
  if (is(check, "at", "base") || is(check, "at", "pad")) return json_object_get(situation, word(check, "at"));
  json_array_foreach(json_object_get(situation, "joints"), i, entry) {
    if (is(entry, "at", word(check, "at"))) return entry;
  }
  return NULL;
}

/* People sitting: each contact with a check as they press it, and without them, all else the same. */
static void both_runs(const json_t *situation, made *count) {
  size_t i, k;
  json_t *check, *entry;
  cr_expect(number(situation, "people_down_kn_per_m") > 0.0, "%s", count->name);
  json_array_foreach(json_object_get(situation, "checks"), i, check) {
    int lighter = 0;
    if (json_object_get(check, "load_case") == NULL) continue;
    json_array_foreach(json_object_get(situation, "load_cases"), k, entry) {
      bool there = is(entry, "at", word(check, "at")) && is(entry, "set", word(situation, "set"));
      double push = number(shown_contact(situation, check), "horizontal_kn_per_m");
      bool same_push = fabs(number(entry, "horizontal_kn_per_m") - push) < 1e-9 * fmax(fabs(push), 1.0);
      lighter += there && same_push && number(entry, "people_down_kn_per_m") < 1e-12 ? 1 : 0;
    }
    cr_expect(lighter > 0, "%s: %s without people", count->name, word(check, "at"));
    count->both++;
  }
}

static void make_all(const json_t *root, made *count) {
  const json_t *method = json_object_get(root, "method");
  size_t i, k;
  json_t *situation, *check;
  json_array_foreach(json_object_get(root, "situations"), i, situation) {
    remaking a = {.count = count, .situation = word(situation, "slug")};
    if (is(situation, "slug", "people-sitting")) both_runs(situation, count);
    json_array_foreach(json_object_get(situation, "checks"), k, check) {
      a.check = check;
      bool shown = json_is_number(json_object_get(check, "demand")) && !is(check, "at", "ground");
      if (json_object_get(check, "load_case") != NULL)
        make(&a, method, situation);
      else
        count->unknown += shown ? 1 : 0;
    }
  }
}

static void make_wall(const lw_case *c, made *count) {
  static lw_result result;
  json_t *root = json_object();
  cr_assert_eq(lw_run(c, sheet_test_tables(), LW_DETAIL_EVERYTHING, &result, NULL), LW_OK, "%s", count->name);
  lw_json_situations(root, &result);
  lw_json_method(root, &result);
  make_all(root, count);
  json_decref(root);
}

/* The sets of factors, each once. */
static const char *set_of(int number) {
  const lw_tables *tables = sheet_test_tables();
  for (int i = 0, seen = 0; i < tables->factor_count; i++) {
    bool again = i > 0 && strcmp(tables->factor[i].factor_set, tables->factor[i - 1].factor_set) == 0;
    if (!again && seen++ == number) return tables->factor[i].factor_set;
  }
  return NULL;
}

Test(report, the_demo_walls_can_be_made_from_their_json) {
  static const char *const sheets[] = {"docs/demo/bed.csv", "docs/demo/terrace.csv", "docs/demo/bank.csv"};
  for (size_t i = 0; i < sizeof sheets / sizeof *sheets; i++) {
    lw_case c = {0};
    lw_faults faults = {0};
    made of = {.name = sheets[i]};
    lw_text text = sheet_test_file(sheets[i]);
    lw_sheet_read(text.data, text.length, &c, &faults);
    lw_case_complete(sheet_test_tables(), &c, &faults);
    cr_assert_eq(faults.count, 0, "%s", sheets[i]);
    make_wall(&c, &of);
    cr_expect(of.sliding > 3 && of.moments > 3 && of.pressed > 3 && of.bearing > 0, "%s", sheets[i]);
    cr_expect_eq(of.unknown, 0, "%s", sheets[i]);
    lw_text_free(&text);
  }
}

Test(report, every_check_can_be_made_from_the_forces_in_the_json) {
  enum { WALLS = 200 / RANDOM_SHARE };
  dice d = {2026};
  made count = {0};
  int sets = 0;
  while (set_of(sets) != NULL) sets++;
  cr_assert(sets > 20);
  for (int i = 0; i < WALLS; i++) {
    random_wall wall = {0};
    char name[4096];
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, 1);
    random_wall_add(&wall, "method format=%s", set_of(i % sets));
    count.name = random_wall_name(&wall, name, sizeof name);
    lw_case c = random_wall_case(&wall);
    make_wall(&c, &count);
  }
  cr_expect(count.sliding > 10 * WALLS && count.moments > 10 * WALLS && count.pressed > 10 * WALLS);
  cr_expect(count.both > 3 * WALLS && count.keys > WALLS / 2);
  cr_expect(count.bearing > WALLS / 2 && count.elsewhere > 5 * WALLS);
  cr_expect(count.divided > WALLS && count.balanced > 0.95 * count.divided, "%d of %d", count.balanced,
            count.divided);
  cr_expect_eq(count.unknown, 0, "%d checks say no load case", count.unknown);
}
