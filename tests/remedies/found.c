/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "../verdict/help.h"

static void find(lw_result *result) {
  lw_result *scratch = calloc(1, sizeof *scratch);
  cr_assert_not_null(scratch);
  lw_remedies_find(result, scratch);
  free(scratch);
}

static const lw_remedy *remedy(const lw_result *result, const char *slug) {
  for (int i = 0; i < result->remedy_count; i++) {
    if (strcmp(result->remedy[i].slug, slug) == 0) return &result->remedy[i];
  }
  return NULL;
}

static bool stands(const char *changes) {
  lw_result *result = verdict_run(changes);
  bool holds = result->verdict.stands == LW_HOLDS;
  free(result);
  return holds;
}

/* Ground that lets the bed under the blocks slide no sooner than the blocks. */
#define FIRM "footing soil friction angle=38 deg;allowable bearing=150 kPa;"

/* A terrace wall too thin for its height, on good ground. */
static const char thin[] =
    "site behind=ground;level difference=0.6 m;course count=7;base friction=0.6;block depth=";

static const char *with(char *out, size_t size, const char *base, const char *format, double value) {
  int used = lw_print(out, size, "%s", base);
  lw_print(out + used, size - (size_t)used, format, value);
  return out;
}

/* What is found holds, and one step less does not. */
Test(remedies, deeper_blocks_are_the_least_that_stand) {
  char changes[240];
  lw_result *result = verdict_run(with(changes, sizeof changes, thin, "%.0f mm", 183.0));
  find(result);
  const lw_remedy *r = remedy(result, "deeper-blocks");
  cr_assert_not_null(r);
  double mm = r->part[0].value * 1000.0;
  cr_expect_float_eq(fmod(mm + 1e-6, 50.0), 0.0, 1e-3, "%g mm", mm);
  cr_expect(stands(with(changes, sizeof changes, thin, "%.0f mm", mm)), "%s", r->text);
  cr_expect_not(stands(with(changes, sizeof changes, thin, "%.0f mm", mm - 50.0)), "%s", r->text);
  cr_expect(r->ratio.known && r->ratio.value >= 1.0);
  free(result);
}

Test(remedies, a_depth_not_known_is_found) {
  lw_result *result = verdict_run("block depth=unknown;base friction=0.6");
  find(result);
  const lw_remedy *r = remedy(result, "deeper-blocks");
  cr_assert_not_null(r);
  char changes[160];
  cr_expect(stands(
      with(changes, sizeof changes, "base friction=0.6;block depth=", "%.0f mm", r->part[0].value * 1000.0)));
  cr_expect_eq(result->remedy_count, 1);
  free(result);
}

Test(remedies, a_lower_wall_is_the_highest_that_stands) {
  static const char base[] =
      FIRM "site behind=ground;level difference=0.6 m;base friction=0.6;block depth=250 mm;course count=";
  char changes[240];
  lw_result *result = verdict_run(with(changes, sizeof changes, base, "%.0f", 7.0));
  cr_assert_neq(result->verdict.stands, LW_HOLDS);
  find(result);
  const lw_remedy *r = remedy(result, "lower-wall");
  cr_assert_not_null(r);
  double courses = round((r->part[0].value + 0.1) / 0.1);
  cr_expect(courses < 7.0);
  cr_expect(stands(with(changes, sizeof changes, base, "%.0f", courses)), "%s", r->text);
  cr_expect_not(stands(with(changes, sizeof changes, base, "%.0f", courses + 1.0)), "%s", r->text);
  free(result);
}

/* The ground drains and nothing else: with that way blocked the water stands behind, and that decides. */
Test(remedies, a_drain_where_water_decides) {
  static const char one[] =
      FIRM "base friction=0.6;wall joints=sealed;ground drains=yes;block depth=450 mm;course "
           "count=6;drain outlets=";
  char changes[240];
  lw_result *result = verdict_run(with(changes, sizeof changes, one, "%.0f", 0.0));
  cr_assert_neq(result->verdict.stands, LW_HOLDS);
  find(result);
  const lw_remedy *r = remedy(result, "drain");
  cr_assert_not_null(r);
  cr_expect(stands(with(changes, sizeof changes, one, "%.0f", 2.0)), "%s", r->text);
  free(result);
}

/* Two ways out without a filter count as one. */
Test(remedies, a_filter_where_the_ways_out_count_as_one) {
  static const char open[] =
      FIRM "base friction=0.6;ground drains=yes;wall joints=sealed;block depth=450 mm;course count=6;"
           "stone filter=";
  char changes[240];
  lw_result *result = verdict_run(with(changes, sizeof changes, open, "none", 0.0));
  cr_assert_neq(result->verdict.stands, LW_HOLDS);
  find(result);
  const lw_remedy *r = remedy(result, "filter");
  cr_assert_not_null(r);
  cr_expect(stands(with(changes, sizeof changes, open, "cloth", 0.0)), "%s", r->text);
  free(result);
}

Test(remedies, no_drain_where_there_is_one) {
  char changes[240];
  lw_result *result = verdict_run(with(changes, sizeof changes, thin, "%.0f mm", 180.0));
  find(result);
  cr_expect_null(remedy(result, "drain"));
  free(result);
}

/* Each remedy alone: its ratio is that of the same wall with the value given on its sheet. */
Test(remedies, loads_kept_back_and_setback_say_what_a_sheet_would) {
  static const char loaded[] =
      FIRM "site behind=ground;level difference=0.6 m;course count=7;base friction=0.7;"
           "block depth=430 mm;load 1 kind=uniform;load 1 pressure=14 kPa";
  lw_result *result = verdict_run(loaded);
  cr_assert_neq(result->verdict.stands, LW_HOLDS);
  find(result);
  const lw_remedy *back = remedy(result, "load-back");
  cr_assert_not_null(back);
  char changes[400];
  int used = lw_print(changes, sizeof changes,
                      FIRM "site behind=ground;level difference=0.6 m;course count=7;"
                           "base friction=0.7;block depth=430 mm;load 1 kind=strip;load 1 pressure=14 kPa;");
  double far = back->part[0].value + 20.0 * result->wall.section.height_m;
  lw_print(changes + used, sizeof changes - (size_t)used, "load 1 near edge=%.1f m;load 1 far edge=%.1f m",
           back->part[0].value, far);
  cr_expect(stands(changes), "%s", changes);
  lw_print(changes + used, sizeof changes - (size_t)used, "load 1 near edge=%.1f m;load 1 far edge=%.1f m",
           back->part[0].value - 0.1, far - 0.1);
  cr_expect_not(stands(changes), "%s", changes);
  free(result);
}

Test(remedies, no_remedies_for_a_wall_that_stands_or_is_refused) {
  lw_result *holds = verdict_run("base friction=0.7;block depth=500 mm");
  cr_assert_eq(holds->verdict.stands, LW_HOLDS, "%s", holds->verdict.headline);
  find(holds);
  cr_expect_eq(holds->remedy_count, 0);
  free(holds);
  lw_result *refused = verdict_run("soil 1 name=organic soil;block depth=100 mm");
  find(refused);
  cr_expect_eq(refused->remedy_count, 0);
  free(refused);
}

Test(remedies, a_remedy_is_no_way_round_the_engineer) {
  char changes[240];
  static const char base[] = "mapped land=yes;course count=7;base friction=0.6;block depth=";
  lw_result *result = verdict_run(with(changes, sizeof changes, base, "%.0f mm", 180.0));
  cr_assert_eq(result->verdict.who, LW_WHO_ENGINEER);
  find(result);
  cr_assert_gt(result->remedy_count, 0);
  for (int i = 0; i < result->remedy_count; i++) {
    cr_expect_not_null(strstr(result->remedy[i].text, "The engineer decides all the same."));
  }
  free(result);
}

Test(remedies, a_section_gets_a_wider_base) {
  lw_case c;
  lw_faults faults = {.count = 0};
  static const char sheet[] =
      "item,value\nwall kind,section\nwall height,0.9 m\nwall embedment,0.1 m\ntop width,0.3 m\n"
      "base width,0.35 m\nbase friction,0.55\nground slope,0 deg\nvehicle access,no\n"
      "soil 1 name,clean sand\ndrain outlets,2\nground drains,yes\nstone width,300 mm\nstone "
      "filter,cloth\npeople on cap,no\n"
      "footing soil friction angle,33 deg\n";
  cr_assert_eq(lw_sheet_read(sheet, sizeof sheet - 1, &c, &faults), LW_OK, "%s", faults.fault[0].wanted);
  lw_result *result = calloc(1, sizeof *result);
  cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  cr_assert_neq(result->verdict.stands, LW_HOLDS);
  find(result);
  const lw_remedy *r = remedy(result, "deeper-blocks");
  cr_assert_not_null(r);
  c.shape.base_width.si = r->part[0].value;
  cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
  cr_expect_eq(result->verdict.stands, LW_HOLDS);
  free(result);
}

/* ---- what is worth asking ---- */

static const lw_asking *asked(const lw_result *result, const char *item) {
  for (int i = 0; i < result->asking_count; i++) {
    if (strcmp(result->asking[i].item, item) == 0) return &result->asking[i];
  }
  return NULL;
}

Test(remedies, the_one_unknown_answer_is_asked_first) {
  lw_result *result = verdict_run("base friction=0.7;block depth=500 mm;mapped land=unknown");
  find(result);
  cr_assert_gt(result->asking_count, 0);
  cr_expect_str_eq(result->asking[0].item, "mapped land");
  cr_expect_str_eq(result->asking[0].assumed, "yes");
  cr_expect_eq(result->asking[0].exit_then, 0);
  cr_expect_neq(result->asking[0].question[0], '\0');
  free(result);
}

Test(remedies, nothing_given_is_asked) {
  lw_result *result = verdict_run("base friction=0.7;block depth=500 mm;mapped land=yes");
  find(result);
  cr_expect_null(asked(result, "mapped land"));
  cr_expect_null(asked(result, "boundary distance"));
  free(result);
}

Test(remedies, questions_are_sorted_by_what_they_change) {
  lw_result *result =
      verdict_run("vehicle access=unknown;mapped land=unknown;base friction=unknown;drain outlets=unknown;"
                  "wall joints=unknown;ground drains=unknown;boundary distance=unknown;soil 1 name=unknown");
  find(result);
  cr_assert_gt(result->asking_count, 2);
  for (int i = 1; i < result->asking_count; i++) {
    cr_expect_leq(result->asking[i - 1].exit_then, result->asking[i].exit_then);
    if (result->asking[i - 1].exit_then != result->asking[i].exit_then) continue;
    bool stood = result->asking[i - 1].stands_then == LW_HOLDS,
         stands_now = result->asking[i].stands_then == LW_HOLDS;
    cr_expect(stood || !stands_now);
  }
  free(result);
}

/* The graver verdict falls away first: it stands, before there is one question less. */
Test(remedies, an_answer_that_makes_it_stand_comes_before_one_that_leaves_a_question_less) {
  lw_result *result = verdict_run(
      "footing soil name=unknown;allowable bearing=150 kPa;mapped land=unknown;base friction=unknown;"
      "block depth=450 mm;course count=6");
  cr_assert_eq(result->verdict.exit_status, 4);
  cr_assert_eq(result->verdict.who, LW_WHO_COUNCIL);
  find(result);
  cr_expect_str_eq(result->asking[0].item, "footing soil name");
  cr_expect_eq(result->asking[0].stands_then, LW_HOLDS);
  cr_expect_eq(result->asking[0].exit_then, 3);
  const lw_asking *question = asked(result, "mapped land");
  cr_assert_not_null(question);
  cr_expect_eq(question->exit_then, 4);
  free(result);
}

Test(remedies, the_favourable_answer_is_what_a_sheet_would_say) {
  lw_result *result =
      verdict_run("footing soil name=unknown;base friction=unknown;block depth=500 mm;course count=6");
  find(result);
  const lw_asking *a = asked(result, "base friction");
  cr_assert_not_null(a);
  cr_expect_str_eq(a->assumed, "0.3");
  lw_result *then =
      verdict_run("footing soil name=unknown;base friction=0.45;block depth=500 mm;course count=6");
  cr_expect_eq(then->verdict.exit_status, a->exit_then);
  cr_expect_eq(then->verdict.stands, a->stands_then);
  free(then);
  free(result);
}
