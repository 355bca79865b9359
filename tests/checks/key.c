/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

#include "../sheet/support.h"
#include "random_wall.h"
#include "support.h"

/* The key of a joint against what pushes beyond the joint's friction. */

#define STACK \
  "site behind=bed", "people on cap=no", "load 1 kind=none", "method slip=not", "course count=4", \
      "wall embedment=0 mm", "block height=200 mm", "block depth=600 mm", "block unit weight=20 kN/m3", \
      "soil 1 friction angle=30 deg", "soil 1 unit weight=18 kN/m3", "drain outlets=2", \
      "wall friction=0 deg"

static const lw_check *key_of(const lw_situation *s, int joint) {
  for (int i = 0; i < s->check_count; i++)
    if (s->kept[i].kind == LW_CHECK_KEY && s->kept[i].joint == joint) return checks_test_check(s, i);
  return NULL;
}

static const lw_check *sliding_of(const lw_situation *s, int joint) {
  for (int i = 0; i < s->check_count; i++)
    if (s->kept[i].kind == LW_CHECK_SLIDING && s->kept[i].at == LW_AT_JOINT && s->kept[i].joint == joint)
      return checks_test_check(s, i);
  return NULL;
}

/* By hand: three courses of 0.2 x 0.6 x 20 press 7.2 kN/m on joint 1 and 0.6 m of soil push
 * 1/3 x 18 x 0.6^2/2 = 1.08; with mu = 0.1 there is 1.08 - 0.72 = 0.36 on the key. */
Test(key, has_what_friction_leaves) {
  lw_result *r = RUN(STACK, "joint friction=0.1", "key strength=0.9 kN/m");
  const lw_situation *s = checks_test_situation(r, LW_SITUATION_DRAINED);
  const lw_check *key = key_of(s, 1);
  cr_assert_not_null(key);
  cr_expect(checks_test_near(key->demand.value, 0.36, 1e-9), "%.9g", key->demand.value);
  cr_expect(checks_test_near(key->resistance.value, 0.9, 1e-12));
  cr_expect(checks_test_near(key->has.value, 2.5, 1e-9));
  cr_expect(checks_test_near(key->needs.value, sliding_of(s, 1)->needs.value, 1e-15));
  cr_expect_eq(key->holds, LW_HOLDS);
  cr_expect_eq(sliding_of(s, 1)->holds, LW_FALLS_SHORT);
  cr_expect_eq(r->verdict.stands, LW_FALLS_SHORT, "sliding decides, whatever the key has");
  /* Joint shear is what the same key carries: it counts in sliding and takes nothing off the key. */
  lw_result *sheared = RUN(STACK, "joint friction=0.1", "key strength=0.9 kN/m", "joint shear=1 kN/m");
  const lw_situation *t = checks_test_situation(sheared, LW_SITUATION_DRAINED);
  cr_expect(checks_test_near(key_of(t, 1)->demand.value, 0.36, 1e-9));
  cr_expect_eq(sliding_of(t, 1)->holds, LW_HOLDS);
  free(r);
  free(sheared);
}

Test(key, nothing_is_on_it_where_friction_holds_all) {
  lw_result *r = RUN(STACK, "joint friction=0.6", "key strength=0.001 kN/m");
  for (int i = 0; i < r->situations.count; i++)
    for (int j = 1; j <= 3; j++) {
      const lw_check *key = key_of(&r->situations.situation[i], j);
      cr_assert_not_null(key);
      cr_expect(key->holds == LW_HOLDS && key->reason == LW_REASON_NO_DEMAND && !key->has.known);
      cr_expect(key->demand.known && key->demand.value < 1e-12);
    }
  free(r);
}

/* Light blocks in deep water float off their joints, and their keys out of their seats. */
Test(key, one_that_is_lifted_out_holds_nothing) {
  lw_result *r =
      RUN("site behind=bed", "load 1 kind=none", "method slip=not", "course count=4", "wall embedment=0 mm",
          "block height=200 mm", "block depth=600 mm", "block unit weight=2 kN/m3",
          "soil 1 friction angle=30 deg", "wall joints=sealed", "water depth=0 mm", "front water depth=0 mm",
          "key strength=9 kN/m", "load 2 kind=cap", "load 2 push=1 kN/m");
  const lw_check *key = key_of(checks_test_situation(r, LW_SITUATION_DRAINED), 1);
  cr_assert_not_null(key);
  cr_expect(key->has.known && fabs(key->has.value) < 1e-15 && key->holds == LW_FALLS_SHORT, "%.9g of %.9g",
            key->has.value, key->demand.value);
  free(r);
}

Test(key, no_word_of_it_where_none_is_given) {
  lw_result *r = RUN(STACK, "joint friction=0.1");
  const lw_text_style style = {.columns = 80};
  lw_text page = {0}, working = {0}, json = {0};
  cr_assert_eq(lw_report_text(r, &style, &page), LW_OK);
  cr_assert_eq(lw_report_working(r, &style, &working), LW_OK);
  cr_assert_eq(lw_report_json(r, 0, &json), LW_OK);
  cr_expect(strstr(page.data, "key of joint") == NULL && strstr(working.data, "key:") == NULL);
  cr_expect(strstr(json.data, "\"slug\": \"key\"") == NULL && strstr(json.data, ".key.") == NULL);
  for (int i = 0; i < r->situations.count; i++) cr_expect(key_of(&r->situations.situation[i], 1) == NULL);
  lw_text_free(&page);
  lw_text_free(&working);
  lw_text_free(&json);
  free(r);
}

/* Walls by chance under every set of factors, with what is said of their joints. */

enum { WALLS = 120 / RANDOM_SHARE };

static const char *set_of(int number) {
  const lw_tables *tables = sheet_test_tables();
  for (int i = 0, seen = 0; i < tables->factor_count; i++) {
    bool again = i > 0 && strcmp(tables->factor[i].factor_set, tables->factor[i - 1].factor_set) == 0;
    if (!again && seen++ == number) return tables->factor[i].factor_set;
  }
  return NULL;
}

static int sets(void) {
  int count = 0;
  while (set_of(count) != NULL) count++;
  return count;
}

static void drop(random_wall *wall, const char *item) {
  int kept = 0;
  for (int i = 0; i < wall->count; i++)
    if (strncmp(wall->text[i], item, strlen(item)) != 0)
      memmove(wall->text[kept++], wall->text[i], RANDOM_ITEM_BYTES);
  wall->count = kept;
}

static bool has_item(const random_wall *wall, const char *item) {
  for (int i = 0; i < wall->count; i++)
    if (strncmp(wall->text[i], item, strlen(item)) == 0) return true;
  return false;
}

/* Of courses, without key, its joints slippery. */
static random_wall slippery(dice *d, int number) {
  random_wall wall = {0};
  do {
    wall = (random_wall){0};
    random_wall_make(d, &wall);
  } while (!has_item(&wall, "course count=") || has_item(&wall, "course count=1"));
  random_wall_hurry(&wall, 1);
  drop(&wall, "joint ");
  drop(&wall, "key ");
  random_wall_add(&wall, "joint friction=%.4f", dice_between(d, 0.01, 0.3));
  random_wall_add(&wall, "method format=%s", set_of(number % sets()));
  return wall;
}

static lw_result *with(const random_wall *bare, const char *item, double kn_per_m) {
  random_wall wall = *bare;
  lw_result *result = malloc(sizeof *result);
  if (item) random_wall_add(&wall, "%s=%.17g kN/m", item, kn_per_m);
  lw_case c = random_wall_case(&wall);
  cr_assert_not_null(result);
  cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  return result;
}

static bool same_check(const lw_check *a, const lw_check *b) {
  return a->kind == b->kind && a->at == b->at && a->joint == b->joint && a->holds == b->holds &&
         a->counts == b->counts && a->reason == b->reason && a->has.known == b->has.known &&
         memcmp(&a->has.value, &b->has.value, sizeof a->has.value) == 0;
}

/* Every other check is to the last bit what it is without a key. */
static void expect_others_the_same(const lw_situation *s, const lw_situation *bare, const char *name) {
  int k = 0;
  for (int i = 0; i < s->check_count; i++) {
    if (s->kept[i].kind == LW_CHECK_KEY) continue;
    cr_assert_lt(k, bare->check_count);
    cr_expect(same_check(checks_test_check(s, i), checks_test_check(bare, k)), "check %d: %s", i, name);
    k++;
  }
  cr_expect_eq(k, bare->check_count, "%s", name);
}

typedef struct met {
  int keys, holds, short_of, factors, none;
} tally;

/* Friction and key together: a wall whose joint carries that shear beside its friction slides where the key
 * that is asked for 1 breaks, and by a factor on every strength both have the same one. */
static void expect_of_one_mind(const lw_situation *s, const lw_situation *sheared, const char *name,
                               tally *met) {
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *key = checks_test_check(s, i);
    if (key->kind != LW_CHECK_KEY) continue;
    const lw_check *slides = sliding_of(sheared, key->joint);
    cr_assert_not_null(slides);
    met->keys++;
    met->holds += key->holds == LW_HOLDS;
    met->short_of += key->holds == LW_FALLS_SHORT;
    met->none += key->reason == LW_REASON_NO_DEMAND;
    if (!key->has.known || !slides->has.known) continue;
    bool asked_1 = slides->needs.known && fabs(slides->needs.value - 1.0) < 1e-12;
    if (asked_1)
      cr_expect_eq(key->holds == LW_FALLS_SHORT, slides->holds == LW_FALLS_SHORT,
                   "%s joint %d: key %.9g, sliding %.9g: %s", lw_situation_slug(s->name), key->joint,
                   key->has.value, slides->has.value, name);
    bool by_factor = key->made_in.divided_by > 0.02 && key->has.value < 900.0 &&
                     fabs(key->has.value - key->made_in.divided_by) < 1e-12 * key->has.value;
    if (!by_factor) continue;
    met->factors++;
    cr_expect(checks_test_near(key->has.value, slides->has.value, 1e-6),
              "%s joint %d: key %.9g, sliding %.9g: %s", lw_situation_slug(s->name), key->joint,
              key->has.value, slides->has.value, name);
  }
}

Test(key, changes_no_other_check_and_is_of_one_mind_with_sliding) {
  dice d = {11};
  tally met = {0};
  for (int i = 0; i < WALLS; i++) {
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    random_wall wall = slippery(&d, i);
    double strength = dice_between(&d, 0.05, 4.0);
    lw_result *bare = with(&wall, NULL, 0.0), *keyed = with(&wall, "key strength", strength),
              *sheared = with(&wall, "joint shear", strength);
    random_wall_name(&wall, name, sizeof name);
    for (int s = 0; s < keyed->situations.count; s++) {
      expect_others_the_same(&keyed->situations.situation[s], &bare->situations.situation[s], name);
      expect_of_one_mind(&keyed->situations.situation[s], &sheared->situations.situation[s], name, &met);
    }
    free(bare);
    free(keyed);
    free(sheared);
  }
  cr_expect(met.keys > 10 * WALLS && met.holds > WALLS && met.short_of > WALLS && met.none > WALLS / 2,
            "%d %d %d %d", met.keys, met.holds, met.short_of, met.none);
  cr_expect(met.factors > WALLS / 4, "%d", met.factors);
}

/* A key, however strong, lets no wall stand that does not without it, and a weak one only takes away. */
Test(key, lets_no_wall_hold) {
  static const double strengths[] = {0.001, 1000.0};
  dice d = {12};
  int fell = 0, took = 0;
  for (int i = 0; i < WALLS / 2; i++) {
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    random_wall wall = slippery(&d, i);
    lw_result *bare = with(&wall, NULL, 0.0);
    random_wall_name(&wall, name, sizeof name);
    for (int k = 0; k < 2; k++) {
      lw_result *keyed = with(&wall, "key strength", strengths[k]);
      bool stands = bare->verdict.stands == LW_HOLDS;
      cr_expect(keyed->verdict.stands != LW_HOLDS || stands, "%g kN/m: %s", strengths[k], name);
      took += stands && keyed->verdict.stands != LW_HOLDS;
      free(keyed);
    }
    fell += bare->verdict.stands != LW_HOLDS;
    free(bare);
  }
  cr_expect(fell > WALLS / 4, "%d of %d", fell, took);
}

/* More strength never has less, and twice of it has twice as much where it is no factor on every strength. */
Test(key, has_as_much_more_as_it_is_stronger) {
  dice d = {13};
  int twice = 0;
  for (int i = 0; i < WALLS / 2; i++) {
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    random_wall wall = slippery(&d, i);
    double strength = dice_between(&d, 0.05, 4.0);
    lw_result *weak = with(&wall, "key strength", strength),
              *strong = with(&wall, "key strength", 2.0 * strength);
    random_wall_name(&wall, name, sizeof name);
    for (int s = 0; s < weak->situations.count; s++)
      for (int k = 0; k < weak->situations.situation[s].check_count; k++) {
        const lw_check *a = checks_test_check(&weak->situations.situation[s], k),
                       *b = checks_test_check(&strong->situations.situation[s], k);
        if (a->kind != LW_CHECK_KEY || !a->has.known || !b->has.known) continue;
        cr_expect(b->has.value >= a->has.value * (1.0 - 1e-9), "%s", name);
        if (a->made_in.divided_by > 0.0) continue;
        cr_expect(checks_test_near(b->has.value, 2.0 * a->has.value, 1e-9), "%s", name);
        twice++;
      }
    free(weak);
    free(strong);
  }
  cr_expect(twice > WALLS, "%d", twice);
}
