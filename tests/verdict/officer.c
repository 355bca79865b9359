/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What an officer asks besides: over walls by chance, each answer to each of it. */
#include "../checks/random_wall.h"
#include "help.h"

#include <lowwall/report.h>
#include <lowwall/sheet.h>

#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* What an answer raises; "": it is mild, and raises nothing. */
typedef struct officer_reply {
  const char *answer, *slug;
} officer_reply;
static const officer_reply REPLIES[] = {{"rain water to=own ground", ""},
                                        {"rain water to=street", "rain-led-away"},
                                        {"rain water to=soakaway", "rain-soakaway"},
                                        {"rain water to=easement", "rain-led-away"},
                                        {"rain water to=next door", "drains-next-door"},
                                        {"rain water to=not known", "drains-next-door"},
                                        {"easement=none", ""},
                                        {"easement=beside", "easement"},
                                        {"easement=under", "easement"},
                                        {"easement=not known", "easement"},
                                        {"protected trees=no", ""},
                                        {"protected trees=yes", "protected-trees"},
                                        {"protected trees=not known", "protected-trees"},
                                        {"flood land=no", ""},
                                        {"flood land=yes", "flood-land"},
                                        {"flood land=not known", "flood-land"},
                                        {"bushfire land=no", ""},
                                        {"bushfire land=yes", "bushfire-land"},
                                        {"bushfire land=not known", "bushfire-land"},
                                        {"coast land=no", ""},
                                        {"coast land=yes", "coast-land"},
                                        {"coast land=not known", "coast-land"},
                                        {"neighbour consent=yes", ""},
                                        {"neighbour consent=no", "neighbour-consent"},
                                        {"neighbour consent=not known", "neighbour-consent"},
                                        {"sight lines=no", ""},
                                        {"sight lines=yes", "sight-lines"},
                                        {"sight lines=not known", "sight-lines"},
                                        {"other works=none", ""},
                                        {"other works=building", "other-works"},
                                        {"other works=pool", "other-works"},
                                        {"other works=paving", "other-works"},
                                        {"other works=earthworks", "other-works"},
                                        {"other works=other", "other-works"},
                                        {"other works=not known", "other-works"},
                                        {"built by=licensed", ""},
                                        {"built by=owner", "owner-builds"},
                                        {"built by=helpers", "owner-builds"},
                                        {"built by=not known", ""}};
enum { REPLY_COUNT = sizeof REPLIES / sizeof *REPLIES };

/* The verdict alone is reached anew: no sum reads what an officer asks. */
static void answer(const lw_case *from, const char *typed, lw_result *result) {
  lw_faults faults = {.count = 0};
  lw_case c = *from;
  cr_assert_eq(lw_sheet_override(typed, 70, &c, &faults), LW_OK, "%s: %s", typed, faults.fault[0].wanted);
  cr_assert_eq(lw_case_complete(verdict_tables(), &c, &faults), LW_OK, "%s: %s", typed,
               faults.fault[0].wanted);
  cr_assert_eq(lw_run(&c, verdict_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK);
}

static lw_case without_slips(const random_wall *wall) {
  lw_case c = {0};
  lw_faults faults = {.count = 0};
  for (int i = 0; i < wall->count; i++)
    cr_assert_eq(lw_sheet_override(wall->text[i], i + 1, &c, &faults), LW_OK, "%s", wall->text[i]);
  c.method.slip = (lw_choice){.value = LW_SLIP_NOT, .origin = LW_GIVEN};
  return c;
}

static bool says(const lw_result *r, const char *slug, bool assumed) {
  for (int i = 0; i < r->verdict.reasons.count; i++) {
    const lw_verdict_reason *reason = &r->verdict.reasons.reason[i];
    if (reason->assumed == assumed && strcmp(reason->slug, slug) == 0) return true;
  }
  return false;
}

/* Who must see it, the exit status and the number of reasons never fall; what stands, its grade and all that
 * was said before stays. */
static void expect_no_milder(const lw_result *bare, const lw_result *told, const char *typed) {
  const lw_verdict *a = &bare->verdict, *b = &told->verdict;
  cr_expect(a->who <= b->who && a->reasons.count <= b->reasons.count, "%s: %s", typed, b->headline);
  cr_expect(a->stands == b->stands && a->grade == b->grade && a->what == b->what, "%s", typed);
  cr_expect(!(a->called_for_certain && a->who == b->who) || b->called_for_certain, "%s", typed);
  for (int i = 0; i < a->reasons.count; i++) {
    const lw_verdict_reason *r = &a->reasons.reason[i];
    cr_expect(says(told, r->slug, r->assumed) || (r->assumed && says(told, r->slug, false)), "%s: no %s",
              typed, r->slug);
  }
}

/* The sentence stands in the report and in the JSON, and what was answered in both. */
static void expect_written(const lw_result *r, const officer_reply *reply) {
  lw_text text = {0}, json = {0};
  cr_assert_eq(lw_report_text(r, &(lw_text_style){.columns = 200}, &text), LW_OK);
  cr_assert_eq(lw_report_json(r, 0, &json), LW_OK);
  for (int i = 0; i < r->verdict.reasons.count; i++) {
    const lw_verdict_reason *reason = &r->verdict.reasons.reason[i];
    if (strcmp(reason->slug, reply->slug) != 0) continue;
    char head[24];
    snprintf(head, sizeof head, "%.20s", reason->text);
    cr_expect_not_null(strstr(text.data, head), "%s: %s", reply->answer, reason->text);
    cr_expect_not_null(strstr(json.data, reason->text), "%s: %s", reply->answer, reason->text);
  }
  lw_text_free(&text);
  lw_text_free(&json);
}

Test(officer, no_answer_makes_a_wall_milder_and_each_is_told) {
  static lw_result bare, told;
  int raised = 0, quiet = 0;
  dice d = {.state = 1414};
  for (int n = 0; n < 24 / RANDOM_SHARE; n++) {
    random_wall wall;
    random_wall_make(&d, &wall);
    lw_case from = without_slips(&wall);
    answer(&from, "mark=W1", &bare);
    for (int i = 0; i < REPLY_COUNT; i++) {
      const officer_reply *reply = &REPLIES[i];
      bool unknown = strstr(reply->answer, "not known") != NULL;
      answer(&from, reply->answer, &told);
      expect_no_milder(&bare, &told, reply->answer);
      bool near = says(&bare, "boundary", false) || says(&bare, "boundary", true);
      bool meant = reply->slug[0] && (strcmp(reply->slug, "neighbour-consent") != 0 || near);
      if (meant && bare.verdict.reasons.count < LW_REASONS_MAX - 2)
        cr_expect(says(&told, reply->slug, false) || (unknown && says(&told, reply->slug, true)), "%s: no %s",
                  reply->answer, reply->slug);
      if (!reply->slug[0])
        cr_expect_eq(bare.verdict.reasons.count, told.verdict.reasons.count, "%s", reply->answer);
      if (n % 8 == 0) expect_written(&told, reply);
      raised += bare.verdict.who < told.verdict.who;
      quiet += !reply->slug[0];
    }
  }
  /* So few walls as the sanitizers leave need not show one that is raised. */
  cr_expect(quiet > 0 && (RANDOM_SHARE > 1 || raised > 10), "%d raised", raised);
}

/* The named maps are the land's, whatever that item says; and one that is not is no map at all. */
Test(officer, a_map_by_its_name_is_mapped_land) {
  static const char *const maps[] = {"flood land", "bushfire land", "coast land"};
  for (int i = 0; i < 3; i++)
    for (int mapped = 0; mapped < 3; mapped++) {
      char changes[120];
      snprintf(changes, sizeof changes, "mapped land=%s;%s=yes",
               mapped == 2 ? "?"
               : mapped    ? "yes"
                           : "no",
               maps[i]);
      lw_verdict v = verdict_of(changes, LW_HOLDS);
      const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_WHO, "mapped-land");
      cr_assert_not_null(r, "%s", changes);
      cr_expect(!r->assumed && v.who == LW_WHO_ENGINEER, "%s: %s", changes, v.headline);
      snprintf(changes, sizeof changes, "mapped land=no;%s=no", maps[i]);
      v = verdict_of(changes, LW_HOLDS);
      cr_expect_eq(v.who, LW_WHO_BUILDER, "%s: %s", changes, v.headline);
    }
}

/* A limit that mapped land or changed drainage narrows is about a wall of that name too. */
Test(officer, limits_hear_of_it_by_its_name) {
  const lw_tables *tables = verdict_tables();
  int held = 0;
  for (int i = 0; i < tables->limit_count; i++) {
    const lw_limit_row *row = &tables->limit[i];
    bool maps = strstr(row->only_if, "mapped-land") || strstr(row->any_height_if, "mapped-land");
    bool drains = strstr(row->only_if, "changes-drainage") || strstr(row->any_height_if, "changes-drainage");
    if (!maps && !drains) continue;
    char one[160], other[160];
    snprintf(one, sizeof one, "place=%s;%s", row->place,
             maps ? "mapped land=yes" : "water sent next door=yes");
    snprintf(other, sizeof other, "place=%s;%s", row->place,
             maps ? "flood land=yes" : "rain water to=next door");
    lw_verdict a = verdict_of(one, LW_HOLDS), b = verdict_of(other, LW_HOLDS);
    cr_expect(a.who == b.who && a.limit_count == b.limit_count, "%s: %s", other, b.headline);
    held++;
  }
  cr_expect(held > 0);
}

Test(officer, who_builds_it_is_said_and_calls_nobody) {
  lw_verdict v = verdict_of("built by=owner", LW_HOLDS);
  const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_WHO, "owner-builds");
  cr_assert_not_null(r);
  cr_expect(r->who == LW_WHO_BUILDER && v.who == LW_WHO_BUILDER && v.exit_status == 0, "%s", v.headline);
  v = verdict_of("built by=not known", LW_HOLDS);
  cr_expect(v.who == LW_WHO_BUILDER, "%s", v.headline);
}
