/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "standards/factor_set.h"
#include "tables/known.h"
#include "../sheet/support.h"
#include "../checks/random_wall.h"
#include "../checks/support.h"

/* Partial factors: what they may not change, and which way each may only push. */

enum { WALLS = 12 / RANDOM_SHARE };

static const char *const sets[] = {"en1997-da1-1", "en1997-da1-2", "en1997-da2-geo",        "en1997-da3-geo",
                                   "en1997-equ",   "as-4678",      "aashto-lrfd-strength-1"};
enum { SETS = sizeof sets / sizeof *sets };

static lw_tables *own_tables(void) {
  lw_tables *tables = malloc(sizeof *tables);
  cr_assert_not_null(tables);
  *tables = *sheet_test_tables();
  return tables;
}

static lw_factor_row *row_of(lw_tables *tables, const char *format, const char *quantity) {
  for (int i = 0; i < tables->factor_count; i++) {
    lw_factor_row *row = &tables->factor[i];
    if (strcmp(row->factor_set, format) == 0 && strcmp(row->quantity, quantity) == 0) return row;
  }
  cr_assert(false, "%s has no %s", format, quantity);
  return NULL;
}

static void set_to(lw_factor_row *row, double value) {
  for (int i = 0; i < 3; i++) row->needs[i] = value;
}

static bool multiplies(const lw_factor_row *row) {
  return strstr(row->quantity, "favourable") != NULL;
}

static bool divides(const lw_factor_row *row) {
  static const char *const all[] = {"friction", "cohesion", "sliding-resistance", "bearing-resistance",
                                    "passive-resistance"};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++)
    if (strncmp(row->quantity, all[i], strlen(all[i])) == 0) return true;
  return false;
}

static lw_result *run_on(const random_wall *bare, const char *format, const lw_tables *tables) {
  lw_result *result = malloc(sizeof *result);
  random_wall wall = *bare;
  random_wall_add(&wall, "method format=%s", format);
  lw_case c = random_wall_case(&wall);
  cr_assert_not_null(result);
  cr_assert_eq(lw_run(&c, tables, LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  return result;
}

static bool same_bits(lw_number a, lw_number b) {
  return a.known == b.known && (!a.known || memcmp(&a.value, &b.value, sizeof a.value) == 0);
}

static void expect_same(const lw_result *a, const lw_result *b, const char *set, const char *name) {
  cr_assert_eq(a->situations.count, b->situations.count);
  for (int s = 0; s < a->situations.count; s++) {
    const lw_situation *p = &a->situations.situation[s], *q = &b->situations.situation[s];
    cr_assert_eq(p->check_count, q->check_count);
    for (int i = 0; i < p->check_count; i++) {
      const lw_check *x = checks_test_check(p, i), *y = checks_test_check(q, i);
      if (x->kind == LW_CHECK_BEARING) continue;
      bool same = same_bits(x->demand, y->demand) && same_bits(x->has, y->has) &&
                  same_bits(x->resistance, y->resistance);
      cr_expect(same, "%s, %s: %.17g, then %.17g: %s", set, lw_check_slug(x->kind), x->has.value,
                y->has.value, name);
    }
  }
}

/* The factors of a set given to the set "lowwall", each at one. A bearing resistance divided by 1.4 makes
 * the set partial, so that all loads are factored all the same. */
static void lend(lw_tables *tables, const char *set) {
  int count = tables->factor_count;
  for (int i = 0; i < count; i++) {
    lw_factor_row row = tables->factor[i];
    bool there = strncmp(row.quantity, "friction", 8) == 0 || strncmp(row.quantity, "cohesion", 8) == 0;
    if (strcmp(row.factor_set, set) != 0 || there || (!multiplies(&row) && !divides(&row))) continue;
    snprintf(row.factor_set, sizeof row.factor_set, "lowwall");
    set_to(&row, strcmp(row.quantity, "bearing-resistance") == 0 ? 1.4 : 1.0);
    tables->factor[tables->factor_count++] = row;
  }
}

Test(partial_factors, all_at_one_is_the_unfactored_state_bit_for_bit) {
  char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  for (int s = 0; s < SETS; s++) {
    lw_tables *tables = own_tables();
    dice d = {.state = 77};
    lend(tables, sets[s]);
    for (int i = 0; i < WALLS; i++) {
      random_wall wall = {0};
      random_wall_make(&d, &wall);
      random_wall_hurry(&wall, i);
      random_wall_name(&wall, name, sizeof name);
      lw_result *plain = run_on(&wall, "lowwall", sheet_test_tables());
      lw_result *factored = run_on(&wall, "lowwall", tables);
      expect_same(plain, factored, sets[s], name);
      free(plain);
      free(factored);
    }
    free(tables);
  }
}

typedef struct raised {
  const lw_result *before, *after;
  const char *set, *quantity, *name;
} raised;

/* The least over all situations: people who lean on a wall that leans back may do it good. */
static lw_number least(const lw_result *result, const lw_check *like) {
  lw_number found = {0};
  for (int s = 0; s < result->situations.count; s++) {
    const lw_situation *at = &result->situations.situation[s];
    for (int i = 0; i < at->check_count; i++) {
      const lw_check *c = checks_test_check(at, i);
      bool same = c->kind == like->kind && c->at == like->at && c->joint == like->joint;
      if (same && c->ratio.known && (!found.known || c->ratio.value < found.value)) found = c->ratio;
    }
  }
  return found;
}

/* A slip is searched for: of two hollows as deep to a thousandth it may end in either. */
static double slack_of(const lw_check *check) {
  return check->kind == LW_CHECK_SLIP ? 1e-3 : 1e-9;
}

static void expect_no_higher(const raised *r) {
  const lw_situation *first = &r->before->situations.situation[0];
  for (int i = 0; i < first->check_count; i++) {
    const lw_check *c = checks_test_check(first, i);
    lw_number x = least(r->before, c), y = least(r->after, c);
    if (!x.known || !y.known) continue;
    cr_expect(y.value <= x.value * (1.0 + slack_of(c)) + 1e-12, "%s, %s: %s at %d ratio %.9g, then %.9g: %s",
              r->set, r->quantity, lw_check_slug(c->kind), c->joint, x.value, y.value, r->name);
  }
}

/* Each factor by a fifth to the worse: what acts and what divides grows, what multiplies shrinks. */
static void raise(lw_factor_row *row) {
  bool times = strstr(row->quantity, "-times") != NULL;
  for (int i = 0; i < 3; i++) row->needs[i] *= times ? 1.0 / 1.2 : 1.2;
}

static bool acts(const lw_factor_row *row) {
  return multiplies(row) && strstr(row->quantity, "unfavourable") != NULL;
}

/* A wall that leans back, or carries soil, may stand better under a greater push: there only what is put on
 * the loads is held, for which both a greater and a lesser push are tried. */
static bool may_be_raised(const lw_factor_row *row, bool plain) {
  bool strength = strncmp(row->quantity, "friction", 8) == 0 || strncmp(row->quantity, "cohesion", 8) == 0;
  return acts(row) || (divides(row) && (plain || !strength));
}

static void raise_each(lw_tables *tables, const random_wall *wall, const char *set, bool plain) {
  char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  lw_result *before = run_on(wall, set, tables);
  random_wall_name(wall, name, sizeof name);
  for (int i = 0; i < tables->factor_count; i++) {
    lw_factor_row *row = &tables->factor[i], was = *row;
    if (strcmp(row->factor_set, set) != 0 || !may_be_raised(row, plain)) continue;
    raise(row);
    lw_result *after = run_on(wall, set, tables);
    expect_no_higher(&(raised){before, after, set, row->quantity, name});
    free(after);
    *row = was;
  }
  free(before);
}

Test(partial_factors, a_worse_factor_never_raises_a_ratio) {
  lw_tables *tables = own_tables();
  dice d = {.state = 4711};
  for (int w = 0; w < WALLS; w++) {
    random_wall any = {0}, plain = {0};
    random_wall_make(&d, &any);
    random_wall_plain(&d, &plain);
    random_wall_add(&plain, "soil 1 friction angle=%.4f deg", dice_between(&d, 24.0, 40.0));
    random_wall_add(&plain, "method thrust direction=level");
    random_wall_hurry(&any, w);
    random_wall_hurry(&plain, w);
    for (int s = 0; s < SETS; s++) {
      raise_each(tables, &any, sets[s], false);
      raise_each(tables, &plain, sets[s], true);
    }
  }
  free(tables);
}

static void expect_whole(const lw_result *result, const char *format, const char *name) {
  for (int s = 0; s < result->situations.count; s++) {
    const lw_situation *at = &result->situations.situation[s];
    for (int i = 0; i < at->check_count; i++) {
      const lw_check *c = checks_test_check(at, i);
      const lw_number all[] = {c->demand, c->resistance, c->has, c->needs, c->ratio};
      for (size_t k = 0; k < sizeof all / sizeof *all; k++)
        cr_expect(!all[k].known || isfinite(all[k].value), "%s, %s: number %zu: %s", format,
                  lw_check_slug(c->kind), k, name);
      cr_expect(c->ratio.known || c->reason != LW_REASON_NONE, "%s, %s: no ratio and no reason: %s", format,
                lw_check_slug(c->kind), name);
      cr_expect(c->holds != LW_CANNOT_SHOW || c->reason != LW_REASON_NONE, "%s, %s: %s", format,
                lw_check_slug(c->kind), name);
    }
  }
}

Test(partial_factors, every_format_has_an_answer_or_a_reason_on_any_wall) {
  const lw_tables *tables = sheet_test_tables();
  dice d = {.state = 99};
  char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
  for (int w = 0; w < 30 / RANDOM_SHARE; w++) {
    random_wall wall = {0};
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, w);
    random_wall_name(&wall, name, sizeof name);
    for (int i = 0; i < tables->factor_count; i++) {
      const char *format = tables->factor[i].factor_set;
      if (i > 0 && strcmp(format, tables->factor[i - 1].factor_set) == 0) continue;
      lw_result *result = run_on(&wall, format, tables);
      expect_whole(result, format, name);
      free(result);
    }
  }
}

/* Combination 1 with the factors of combination 2 is combination 2. */
Test(partial_factors, the_factors_alone_make_the_combination) {
  lw_tables *tables = own_tables();
  for (int i = 0; i < tables->factor_count; i++) {
    lw_factor_row *row = &tables->factor[i];
    if (strcmp(row->factor_set, "en1997-da1-1") != 0) continue;
    memcpy(row->needs, row_of(tables, "en1997-da1-2", row->quantity)->needs, sizeof row->needs);
  }
  dice d = {.state = 5};
  for (int w = 0; w < WALLS; w++) {
    random_wall wall = {0};
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, w);
    lw_result *swapped = run_on(&wall, "en1997-da1-1", tables);
    lw_result *second = run_on(&wall, "en1997-da1-2", tables);
    expect_same(second, swapped, "en1997-da1-1", "by chance");
    free(swapped);
    free(second);
  }
  free(tables);
}

/* [EN1997-1 2.4.2(9)P] one source, one factor: here both parts of the thrust of a sloping ground. */
Test(partial_factors, both_parts_of_a_thrust_take_one_factor) {
  static const char *const kinds[] = {"method format=lowwall", "method format=en1997-da1-1"};
  double level[2], upright[2];
  for (int i = 0; i < 2; i++) {
    lw_result *r = RUN("wall height=1.2 m", "base width=0.9 m", "top width=0.5 m",
                       "wall unit weight=24 kN/m3", "wall embedment=0.2 m", "ground slope=15 deg",
                       "soil 1 friction angle=33 deg", kinds[i], "method pressure=rankine");
    const lw_free_body *base = &checks_test_situation(r, LW_SITUATION_DRAINED)->base;
    level[i] = checks_test_horizontal(base, LW_FORCE_THRUST);
    upright[i] = checks_test_vertical(base, LW_FORCE_THRUST);
    free(r);
  }
  cr_expect(upright[0] > 0.1 && level[0] > 0.1);
  cr_expect(checks_test_near(level[1], 1.35 * level[0], 1e-12), "%.9g", level[1] / level[0]);
  cr_expect(checks_test_near(upright[1], 1.35 * upright[0], 1e-12), "%.9g", upright[1] / upright[0]);
}

/* The reason names what the row of the set says of it: from memory, or somebody's proposal. */
Test(partial_factors, what_must_not_decide_says_why) {
  static const lw_seen seen[] = {LW_MEMORY, LW_PROPOSAL};
  static const lw_reason reasons[] = {LW_REASON_NOT_FOR_DECISIONS, LW_REASON_PROPOSED_FACTORS};
  lw_tables *tables = own_tables();
  lw_factor_set_family family;
  for (int i = 0; i < 2; i++) {
    for (int row = 0; row < tables->factor_count; row++)
      if (tables->factor[row].need == LW_FACTOR_DECIDES) tables->factor[row].from.seen = seen[i];
    lw_factor_set_read(tables, "as-4678", &family);
    lw_check check = {.counts = true, .holds = LW_HOLDS};
    lw_factor_set_restrain(&family.set[0], &check);
    cr_expect_eq(check.holds, LW_CANNOT_SHOW);
    cr_expect_eq(check.reason, reasons[i], "%s", lw_reason_slug(check.reason));
  }
  free(tables);
}

/* A set that must not decide, and one part of a code: numbers, and never that it holds. */
Test(partial_factors, what_must_not_decide_never_holds) {
  static const char *const formats[] = {"method format=as-4678", "method format=en1997-da1-2",
                                        "method format=aashto-lrfd-service-1"};
  static const lw_reason reasons[] = {LW_REASON_NOT_FOR_DECISIONS, LW_REASON_PART_OF_FACTOR_SET,
                                      LW_REASON_PART_OF_FACTOR_SET};
  for (int i = 0; i < 3; i++) {
    lw_result *r = RUN("wall height=0.4 m", "base width=2 m", "top width=1.9 m", "wall unit weight=24 kN/m3",
                       "wall embedment=0.1 m", "soil 1 friction angle=38 deg", "base friction=0.6",
                       "allowable bearing=200 kPa", "people on cap=no", formats[i]);
    cr_expect_eq(r->verdict.stands, LW_CANNOT_SHOW, "%s", formats[i]);
    int shown = 0;
    for (int s = 0; s < r->situations.count; s++)
      for (int k = 0; k < r->situations.situation[s].check_count; k++) {
        const lw_check *c = checks_test_check(&r->situations.situation[s], k);
        cr_expect(!c->counts || c->holds != LW_HOLDS, "%s: %s", formats[i], lw_check_slug(c->kind));
        shown += c->counts && c->ratio.known && c->reason == reasons[i] ? 1 : 0;
      }
    cr_expect(shown > 0, "%s: no ratio is shown with its reason", formats[i]);
    free(r);
  }
}
