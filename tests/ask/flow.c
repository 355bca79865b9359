/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Interviews: by the book, by chance, back and forth. */
#include "../checks/random_wall.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <string.h>

/* --- answers of an ordinary person --- */

typedef struct reply {
  const char *key, *answer;
} reply;

static const reply BED[] = {{"kind", "bed-level"},
                            {"place", "not known"},
                            {"height", "400; 50"},
                            {"block", "200; 300; 400; ; 0"},
                            {"water", "pipe-two"},
                            {"top", "bare"},
                            {"base", "rock"},
                            {"bed-soil", "topsoil"},
                            {"ground", "firm"},
                            {"use", "plants"},
                            {"near", "none"},
                            {"fence", "none"},
                            {"land", "none"},
                            {"hole", "yes"},
                            {"works", "new"},
                            {"front", "0"},
                            {"level", "0"},
                            {"bed-size", "3; 1.2"},
                            {"rain", "own-ground"},
                            {"easement", "none"},
                            {"place-rules", "none"},
                            {"other-works", "none"},
                            {"built-by", "helpers"},
                            {"applicant", "A school"},
                            {"address", "Hill Lane 3"},
                            {"builder", "Parents"},
                            {"title", "Herb bed"}};

static const reply BANK[] = {{"kind", "bank"},
                             {"place", "new-south-wales"},
                             {"height", "800 mm; 50 mm"},
                             {"block", "200; 400; 400; 60; 20"},
                             {"water", "pipe-two"},
                             {"top", "cap"},
                             {"cap-size", "50; 420"},
                             {"base", "rock-deep"},
                             {"soil", "sandy-loam"},
                             {"ground", "stiff"},
                             {"use", "people"},
                             {"slope", "10; 5"},
                             {"front", "0"},
                             {"near", "1 3"},
                             {"boundary", "2"},
                             {"other-wall", "2.5; 600"},
                             {"other-side", "above"},
                             {"fence", "behind"},
                             {"fence-behind", "1.2; 2"},
                             {"land", "none"},
                             {"hole", "no"},
                             {"dig", "700; 100"},
                             {"works", "new"},
                             {"length", "9.6"},
                             {"cap-length", "600"},
                             {"rain", "street"},
                             {"easement", "not known"},
                             {"place-rules", "2"},
                             {"maps", "1"},
                             {"consent", "no"},
                             {"other-works", "pool"},
                             {"built-by", "licensed"},
                             {"applicant", "A school"},
                             {"address", "Hill Lane 3"},
                             {"builder", "Parents"},
                             {"title", "Terrace"}};

enum { BED_COUNT = sizeof BED / sizeof *BED, BANK_COUNT = sizeof BANK / sizeof *BANK };

static const char *reply_to(const reply *replies, int count, const char *key) {
  for (int i = 0; i < count; i++)
    if (strcmp(replies[i].key, key) == 0) return replies[i].answer;
  return NULL;
}

/* Answer what comes next until nothing does; parts: how many of them are asked. */
static void walk(ask_talk *talk, const reply *replies, int count, lw_question_part last) {
  for (int i = 0; talk->look.next >= 0 && talk->asking.tables->question[talk->look.next].part <= last; i++) {
    const char *key = ask_next(talk), *answer = reply_to(replies, count, key);
    cr_assert(i < 2 * LW_QUESTION_ROWS, "the questions have no end");
    cr_assert(answer != NULL, "nobody expected to be asked %s", key);
    ask_answer(talk, key, answer);
  }
}

static void expect_whole(const ask_talk *talk) {
  lw_case c;
  lw_faults faults = {.count = 0};
  cr_expect(lw_sheet_read(talk->sheet.data, talk->sheet.length, &c, &faults) == LW_OK, "%s",
            talk->sheet.data);
  cr_expect(lw_case_complete(ask_tables(), &c, &faults) == LW_OK, "%s: %s\n%s", faults.fault[0].item,
            faults.fault[0].wanted, talk->sheet.data);
}

static int exit_of(const ask_talk *talk, bool order_too) {
  lw_case c;
  lw_faults faults = {.count = 0};
  lw_result *result = ask_scratch();
  lw_sheet_read(talk->sheet.data, talk->sheet.length, &c, &faults);
  lw_case_complete(ask_tables(), &c, &faults);
  if (order_too) lw_case_complete_order(ask_tables(), &c, &faults);
  cr_assert(faults.count == 0, "%s: %s", faults.fault[0].item, faults.fault[0].wanted);
  cr_assert(lw_run(&c, ask_tables(), LW_DETAIL_VERDICT, result, NULL) == LW_OK);
  return result->verdict.exit_status;
}

Test(ask_flow, a_bed_on_level_ground_has_its_answer_after_fifteen) {
  ask_talk talk;
  ask_begin(&talk, true);
  walk(&talk, BED, BED_COUNT, LW_QUESTION_FIRST);
  cr_expect(le(int, talk.answers, 15), "%d answers", talk.answers);
  cr_expect(le(int, 10, talk.answers), "%d answers", talk.answers);
  expect_whole(&talk);
  cr_expect(ask_has_row(&talk, "site behind,bed,,") && ask_has_row(&talk, "wall height,400,mm,"), "%s",
            talk.sheet.data);
  walk(&talk, BED, BED_COUNT, LW_QUESTION_OFFICER);
  cr_expect(ask_has_row(&talk, "run 3 length,3,m,") && ask_has_row(&talk, "turn 2 angle,90,deg,"), "%s",
            talk.sheet.data);
  exit_of(&talk, true);
  ask_end(&talk);
}

Test(ask_flow, a_terrace_is_asked_more) {
  ask_talk talk;
  ask_begin(&talk, true);
  walk(&talk, BANK, BANK_COUNT, LW_QUESTION_FIRST);
  cr_expect(le(int, talk.answers, 25), "%d answers", talk.answers);
  cr_expect(le(int, 15, talk.answers), "%d answers", talk.answers);
  walk(&talk, BANK, BANK_COUNT, LW_QUESTION_OFFICER);
  expect_whole(&talk);
  cr_expect(eq(int, exit_of(&talk, true), 5), "another wall that stands near");
  ask_end(&talk);
}

/* --- in any order --- */

static void walk_by_chance(ask_talk *talk, const reply *replies, int count, dice *d) {
  for (int question; (question = ask_pick_open(talk, d)) >= 0;) {
    const char *key = talk->asking.tables->question[question].key, *answer = reply_to(replies, count, key);
    ask_answer(talk, key, answer ? answer : "not known");
  }
}

Test(ask_flow, in_any_order_the_same_answers_are_the_same_sheet) {
  const struct {
    const reply *replies;
    int count;
  } people[] = {{BED, BED_COUNT}, {BANK, BANK_COUNT}};
  for (int p = 0; p < 2; p++) {
    ask_talk first;
    ask_begin(&first, false);
    walk(&first, people[p].replies, people[p].count, LW_QUESTION_OFFICER);
    for (int i = 0; i < 12; i++) {
      ask_talk other;
      dice d = {.state = 77u + (unsigned)i};
      ask_begin(&other, false);
      /* Of what kind it is decides what is asked: else a bed is asked what a bank is asked, too. */
      ask_answer(&other, "kind", people[p].replies[0].answer);
      walk_by_chance(&other, people[p].replies, people[p].count, &d);
      cr_expect(strcmp(first.sheet.data, other.sheet.data) == 0, "%s\n----\n%s", first.sheet.data,
                other.sheet.data);
      ask_end(&other);
    }
    ask_end(&first);
  }
}

/* --- one answer --- */

Test(ask_flow, none_is_near_settles_seven_distances_at_once) {
  ask_talk talk;
  ask_begin(&talk, false);
  ask_answer(&talk, "near", "none");
  cr_expect(ask_has_row(&talk, "boundary distance,more than 3 m,"), "%s", talk.sheet.data);
  cr_expect(ask_has_row(&talk, "public way distance,more than 6 m,"), "%s", talk.sheet.data);
  cr_expect(ask_has_row(&talk, "waterbody distance,more than 40 m,"), "%s", talk.sheet.data);
  cr_expect(ask_state(&talk, "boundary") != LW_ASKED_OPEN);
  ask_answer(&talk, "near", "boundary 5?");
  cr_expect(ask_has_row(&talk, "boundary distance,less than 3 m,"), "%s", talk.sheet.data);
  cr_expect(ask_has_row(&talk, "service distance,not known,"), "%s", talk.sheet.data);
  cr_expect(ask_state(&talk, "boundary") == LW_ASKED_OPEN &&
            ask_state(&talk, "building") == LW_ASKED_NOT_NEEDED);
  ask_answer(&talk, "boundary", "1.2");
  cr_expect(ask_has_row(&talk, "boundary distance,1.2,m,"), "%s", talk.sheet.data);
  ask_answer(&talk, "near", "boundary building");
  cr_expect(ask_has_row(&talk, "boundary distance,1.2,m,"), "what is known better stays\n%s",
            talk.sheet.data);
  ask_take_back(&talk, "boundary");
  cr_expect(ask_has_row(&talk, "boundary distance,less than 3 m,"), "%s", talk.sheet.data);
  ask_answer(&talk, "near", "none");
  cr_expect(ask_has_row(&talk, "boundary distance,more than 3 m,"), "%s", talk.sheet.data);
  ask_end(&talk);
}

Test(ask_flow, measures_take_their_unit_or_another) {
  const struct {
    bool us;
    const char *answer, *row;
  } cases[] = {{false, "900", "wall height,900,mm,"},
               {false, "0.9 m; 0", "wall height,0.9,m,"},
               {true, "36", "wall height,36,in,"},
               {true, "3 ft 2 1/2 in", "wall height,3 ft 2 1/2 in,,"},
               {true, "3' 2\"", "wall height,\"3' 2\"\"\",,"},
               {false, "900; not known", "soil below top,not known,,"},
               {false, "900; 50 mm", "soil below top,50,mm,"},
               {true, "35 1/2", "wall height,35 1/2 in,,"}};
  for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
    ask_talk talk;
    ask_begin(&talk, false);
    talk.asking.us = cases[i].us;
    ask_answer(&talk, "height", cases[i].answer);
    cr_expect(ask_has_row(&talk, cases[i].row), "%s\n%s", cases[i].answer, talk.sheet.data);
    ask_end(&talk);
  }
}

Test(ask_flow, a_wrong_answer_is_refused_with_its_cure) {
  const reply wrong[] = {{"kind", "6"},
                         {"kind", "0"},
                         {"kind", "1.5"},
                         {"kind", "boat"},
                         {"kind", ""},
                         {"height", "tall"},
                         {"height", "900 kg"},
                         {"height", "1;2;3"},
                         {"height", "not known"},
                         {"height", "0,9"},
                         {"near", "9"},
                         {"near", "none 2"},
                         {"place", "atlantis"},
                         {"front", "-5"},
                         {"block", "200; 300; 400; 60; 9 km"},
                         {"place", "Portland, Maine"},
                         {"no-such", "1"}};
  ask_talk talk;
  ask_begin(&talk, false);
  for (size_t i = 0; i < sizeof wrong / sizeof *wrong; i++) {
    cr_expect(ask_try(&talk, wrong[i].key, wrong[i].answer) == LW_FAULTS, "%s=%s", wrong[i].key,
              wrong[i].answer);
    cr_expect(talk.faults.count > 0 && talk.faults.fault[0].wanted[0], "%s=%s", wrong[i].key,
              wrong[i].answer);
    cr_expect(talk.sheet.length == 0);
  }
  ask_end(&talk);
}

/* Where the wall is: the second question, in free words. Nobody can guess what is on file. */
Test(ask_flow, a_place_that_is_not_on_file_is_told_what_is) {
  ask_talk talk;
  ask_begin(&talk, false);
  cr_expect(ask_try(&talk, "place", "Canada") == LW_FAULTS);
  cr_expect_not_null(strstr(talk.faults.fault[0].wanted, "on file there: ontario, "));
  cr_expect_not_null(strstr(talk.faults.fault[0].wanted, "not known"));
  cr_expect_null(strstr(talk.faults.fault[0].wanted, "lowwall"));
  ask_answer(&talk, "place", "Bristol, England");
  cr_expect(ask_has_row(&talk, "place,\"Bristol, England\","), "%s", talk.sheet.data);
  ask_end(&talk);
}

/* Whoever tells how high the fence is that closes the bed has no fence on the wall. */
Test(ask_flow, the_fence_that_closes_a_bed_stands_behind_it) {
  static const char *const answers[] = {"1.8; 0.6; 2.4; 600", "1.8; not known", "1.8"};
  for (size_t i = 0; i < sizeof answers / sizeof *answers; i++) {
    ask_talk talk;
    ask_begin(&talk, false);
    ask_answer(&talk, "kind", "bed-fence");
    ask_answer(&talk, "posts", answers[i]);
    cr_expect(ask_has_row(&talk, "fence place,behind,"), "%s\n%s", answers[i], talk.sheet.data);
    ask_end(&talk);
  }
}

Test(ask_flow, an_answer_that_contradicts_another_is_refused_and_the_sheet_stays) {
  ask_talk talk;
  ask_begin(&talk, false);
  ask_answer(&talk, "height", "600; 0");
  cr_expect(ask_try(&talk, "height", "600; 700") == LW_FAULTS || ask_has_row(&talk, "soil below top,700"),
            "soil below the ground");
  cr_expect(ask_try(&talk, "block", "200; 300; 400; ; 300") == LW_FAULTS, "as deep as the block");
  cr_expect_str_eq(talk.faults.fault[0].item, "block");
  cr_expect(ask_state(&talk, "block") == LW_ASKED_OPEN);
  ask_end(&talk);
}

Test(ask_flow, what_the_wall_no_longer_has_goes_with_it) {
  ask_talk talk;
  ask_begin(&talk, false);
  ask_answer(&talk, "fence", "behind");
  ask_answer(&talk, "fence-behind", "1.8; 0.5");
  ask_answer(&talk, "fence", "none");
  cr_expect(ask_has_row(&talk, "fence height,0,m,") && !ask_has_row(&talk, "fence distance"), "%s",
            talk.sheet.data);
  ask_answer(&talk, "kind", "bank");
  ask_answer(&talk, "slope", "20; not known");
  ask_answer(&talk, "kind", "bed-level");
  cr_expect(ask_has_row(&talk, "level difference,0,mm,") && !ask_has_row(&talk, "ground slope run"), "%s",
            talk.sheet.data);
  ask_answer(&talk, "kind", "bed-slope");
  cr_expect(ask_has_row(&talk, "level difference") == false && ask_state(&talk, "level") == LW_ASKED_OPEN,
            "%s", talk.sheet.data);
  ask_end(&talk);
}

Test(ask_flow, a_sheet_from_elsewhere_keeps_its_notes_and_its_other_rows) {
  static const char sheet[] = "item;value;unit;note\n;;;by hand\nwall height;0,9;m;with the string\n"
                              "pad width;600;mm;\nwall height likely;0,8;m;\n";
  lw_text out = {0};
  lw_faults faults = {.count = 0};
  const lw_asking_for asking = {.tables = ask_tables(), .sheet = sheet, .length = strlen(sheet)};
  cr_assert(lw_question_answer(&asking, "hole", "yes", &out, &faults) == LW_OK);
  cr_expect_str_eq(out.data, "item,value,unit,note\n,,,by hand\nwall height,0.9,m,with the string\n"
                             "wall height likely,0.8,m,\npad width,600,mm,\nground drains,yes,,\n");
  lw_text_free(&out);
}

/* A bed of one side cannot be ordered. */
Test(ask_flow, an_order_wants_every_measure_and_says_which) {
  ask_talk talk;
  ask_begin(&talk, false);
  ask_answer(&talk, "kind", "bed-level");
  cr_expect(ask_try(&talk, "bed-size", "3 m") == LW_FAULTS);
  cr_expect(strstr(talk.faults.fault[0].wanted, "its width, outside") != NULL, "%s",
            talk.faults.fault[0].wanted);
  cr_expect(ask_try(&talk, "bed-size", "3 m; not known") == LW_FAULTS);
  ask_answer(&talk, "bed-size", "3 m; 1.2 m");
  ask_end(&talk);
}

/* What is open on it is answered with whatever comes first, and nothing contradicts what stands there. */
Test(ask_flow, each_starter_sheet_can_be_gone_on_with) {
  static const char *const kinds[] = {"bed", "ground", "section"};
  for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++) {
    ask_talk talk;
    lw_text sheet = {0};
    ask_begin(&talk, false);
    lw_sheet_start(kinds[i], &sheet);
    talk.sheet = sheet;
    talk.asking.sheet = sheet.data;
    talk.asking.length = sheet.length;
    cr_assert(lw_questions_look(&talk.asking, &talk.look, &talk.faults) == LW_OK, "%s", kinds[i]);
    bool section = strcmp(kinds[i], "section") == 0;
    cr_expect(eq(int, ask_state(&talk, "block") == LW_ASKED_NOT_NEEDED, section), "%s", kinds[i]);
    for (int question; (question = talk.look.next) >= 0;) {
      const lw_question q = lw_question_of(ask_tables(), question);
      const char *answer = q.row->kind == LW_QUESTION_WORDS ? "queensland" : "1";
      bool all = q.row->part == LW_QUESTION_ORDER && lw_ask_count(q.row->items, ';') > 1;
      if (q.row->kind == LW_QUESTION_MEASURE)
        answer = q.row->units[0] == '%' ? "0" : all ? "2 m; 2 m" : "0.5 m";
      ask_answer(&talk, q.row->key, answer);
    }
    expect_whole(&talk);
    ask_end(&talk);
  }
}

Test(ask_flow, a_sheet_with_a_fault_is_told_and_nothing_is_written) {
  static const char sheet[] = "item,value\nwall hight,900 mm\n";
  lw_text out = {0};
  lw_asked asked = {.count = 7};
  lw_faults faults = {.count = 0};
  const lw_asking_for asking = {.tables = ask_tables(), .sheet = sheet, .length = strlen(sheet)};
  cr_expect(lw_questions_look(&asking, &asked, &faults) == LW_FAULTS && asked.count == 7);
  cr_expect(lw_question_answer(&asking, "hole", "yes", &out, &faults) == LW_FAULTS && out.length == 0);
  cr_expect(lw_questions_json(&asking, &out, &faults) == LW_FAULTS && out.length == 0);
  cr_expect(eq(int, faults.count, 3));
}
