/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What the tables of questions and choices promise. */
#include "ask/picture.h"
#include "ask/tries.h"
#include "sheet/said.h"
#include "tables/shape.h"
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <math.h>
#include <string.h>

#define EACH_QUESTION(q) \
  for (int index_ = 0; index_ < ask_tables()->question_count; index_++) \
    for (lw_question q = lw_question_of(ask_tables(), index_); q.row; q.row = NULL)

/* All parts of a list are items, or pairs of an item and a value that reads without fault. */
static void expect_list(const lw_question_row *row, const char *list, bool pairs) {
  int parts = 0, walked = -1;
  for (lw_ask_walk walk = lw_ask_begin(list); lw_ask_step(&walk); walked = walk.index, parts++) {
    char typed[200], name[LW_ITEM_NAME_MAX], value[LW_ANSWER_BYTES];
    lw_case c = {0};
    static lw_faults faults;
    faults.count = 0;
    cr_expect(eq(int, walk.pair.value.length > 0, pairs), "%s: %s", row->key, list);
    lw_named_print(&walk.pair.named, name, sizeof name);
    lw_print(typed, sizeof typed, "%s=%s", name, lw_ask_copy(&walk.pair.value, value, sizeof value));
    cr_expect(pairs == false || lw_sheet_override(typed, 1, &c, &faults) == LW_OK, "%s: %s: %s", row->key,
              typed, faults.fault[0].wanted);
  }
  cr_expect(eq(int, walked + 1, lw_ask_count(list, ';')), "%s: an unknown item in %s", row->key, list);
}

Test(ask_tables, each_item_and_each_write_reads_without_fault) {
  EACH_QUESTION(q) {
    expect_list(q.row, q.row->items, false);
    expect_list(q.row, q.row->counts_as, true);
    expect_list(q.row, q.row->mildest, true);
    expect_list(q.row, q.row->gravest, true);
    for (int i = 0; i < q.choice_count; i++) {
      expect_list(q.row, q.choice[i].writes, true);
      expect_list(q.row, q.choice[i].others, true);
    }
  }
}

static void expect_within(const lw_question_row *row, const char *list) {
  for (lw_ask_walk walk = lw_ask_begin(list); lw_ask_step(&walk);)
    cr_expect(lw_ask_has(row->items, &walk.pair.named), "%s writes %s", row->key, walk.pair.named.item->name);
}

Test(ask_tables, a_question_writes_its_own_items_only) {
  EACH_QUESTION(q) {
    bool fixed = q.row->kind == LW_QUESTION_MEASURE; /* what goes with the measures whatever they are */
    expect_within(q.row, q.row->counts_as);
    for (int i = 0; i < q.choice_count && !fixed; i++) {
      expect_within(q.row, q.choice[i].writes);
      expect_within(q.row, q.choice[i].others);
    }
  }
}

Test(ask_tables, each_choice_belongs_to_a_question_and_they_stand_together) {
  const lw_tables *t = ask_tables();
  int count = 0;
  EACH_QUESTION(q) {
    bool chosen = q.row->kind == LW_QUESTION_CHOICE || q.row->kind == LW_QUESTION_SEVERAL;
    cr_expect(chosen ? q.choice_count > 1 : q.choice_count <= 1, "%s", q.row->key);
    for (int i = 0; i < q.choice_count; i++) {
      cr_expect_str_eq(q.choice[i].question, q.row->key);
      cr_expect(chosen == false || q.choice[i].writes[0], "%s", q.choice[i].key);
      cr_expect(eq(int, q.choice[i].others[0] != '\0', q.row->kind == LW_QUESTION_SEVERAL), "%s",
                q.choice[i].key);
      cr_expect(strspn(q.choice[i].key, "0123456789") == 0, "%s is no number", q.choice[i].key);
    }
    count += q.choice_count;
  }
  cr_expect(eq(int, count, t->choice_count));
}

Test(ask_tables, measures_have_a_label_and_a_unit_each) {
  EACH_QUESTION(q) {
    int items = lw_ask_count(q.row->items, ';');
    if (q.row->kind != LW_QUESTION_MEASURE) {
      cr_expect(strlen(q.row->labels) + strlen(q.row->units) + strlen(q.row->us_units) == 0, "%s",
                q.row->key);
      continue;
    }
    cr_expect(eq(int, lw_ask_count(q.row->labels, ';'), items), "%s", q.row->key);
    for (lw_ask_walk walk = lw_ask_begin(q.row->items); lw_ask_step(&walk);)
      for (int us = 0; us < 2; us++) {
        char unit[LW_NAME_MAX];
        lw_fault_slug slug;
        const lw_ask_part part = lw_ask_nth(us ? q.row->us_units : q.row->units, ';', walk.index);
        lw_ask_copy(&part, unit, sizeof unit);
        cr_expect(lw_item_unit(walk.pair.named.item, unit, strlen(unit), &slug) != NULL, "%s: %s", q.row->key,
                  unit);
      }
  }
}

Test(ask_tables, each_sentence_is_one) {
  EACH_QUESTION(q) {
    const char *words = q.row->words;
    cr_expect(strchr("?.", words[strlen(words) - 1]) != NULL && strchr(words, '?') != NULL, "%s: %s",
              q.row->key, words);
    cr_expect(q.row->why[strlen(q.row->why) - 1] == '.', "%s: %s", q.row->key, q.row->why);
    size_t end = strlen(q.row->not_known);
    cr_expect(end == 0 || q.row->not_known[end - 1] == '.', "%s: %s", q.row->key, q.row->not_known);
    cr_expect(end > 0 || !q.row->counts_as[0], "%s", q.row->key);
    lw_ask_part step;
    for (const char *at = q.row->hand_test; lw_ask_next(&at, '|', &step);)
      cr_expect(step.length > 10 && step.text[step.length - 1] == '.', "%s: %.*s", q.row->key,
                (int)step.length, step.text);
  }
}

Test(ask_tables, each_when_is_about_items_and_their_words) {
  EACH_QUESTION(q) {
    lw_ask_part term;
    for (const char *at = q.row->when; lw_ask_next(&at, ';', &term);) {
      char text[LW_NOTE_MAX], folded[LW_FOLDED_MAX];
      lw_ask_part word, name = term;
      lw_ask_pair pair;
      lw_ask_copy(&term, text, sizeof text);
      char *equals = strchr(text, '=');
      cr_assert(equals != NULL, "%s: %s", q.row->key, text);
      name.length = (size_t)(equals - text) - (equals[-1] == '!' ? 1 : 0);
      cr_assert(lw_ask_pair_of(&name, &pair), "%s: %s", q.row->key, text);
      for (const char *words = equals + 1; lw_ask_next(&words, '|', &word);) {
        lw_fold(word.text, word.length, folded);
        bool near = lw_ask_is(&word, "near") && pair.named.item->near_is_grave;
        bool own =
            pair.named.item->type == LW_ITEM_CHOICE && lw_item_word_value(pair.named.item, folded) >= 0;
        cr_expect(near || own || lw_ask_is(&word, "not known"), "%s: %s", q.row->key, text);
      }
    }
  }
}

Test(ask_tables, ends_to_try_are_two_or_none) {
  EACH_QUESTION(q) {
    int mild = 0, grave = 0;
    for (int i = 0; i < q.choice_count && q.row->kind == LW_QUESTION_CHOICE; i++) {
      mild += q.choice[i].rank == 1;
      grave += q.choice[i].rank == 9;
    }
    cr_expect(le(int, mild, 1), "%s", q.row->key);
    cr_expect(eq(int, mild > 0, grave > 0), "%s", q.row->key);
    cr_expect(eq(int, q.row->mildest[0] != '\0', q.row->gravest[0] != '\0'), "%s", q.row->key);
  }
}

/* A wall with all that could be asked, so that nothing stands in the way of a default. */
static lw_case plain_wall(bool bed) {
  static const char *const common[] = {"wall height=600 mm",      "block height=200 mm",
                                       "block depth=300 mm",      "block length=400 mm",
                                       "other wall distance=2 m", "other wall height=600 mm"};
  lw_case c = {0};
  lw_faults faults = {.count = 0};
  for (size_t i = 0; i < sizeof common / sizeof *common; i++)
    lw_sheet_override(common[i], (int)i + 1, &c, &faults);
  if (bed) lw_sheet_override("site behind=bed", 9, &c, &faults);
  cr_assert(faults.count == 0);
  return c;
}

/* All that its checks have, in every situation. */
static void say_wall(lw_case *c, lw_text *out) {
  lw_result *result = ask_scratch();
  lw_faults faults = {.count = 0};
  cr_assert(lw_case_complete(ask_tables(), c, &faults) == LW_OK, "%s %s", faults.fault[0].item,
            faults.fault[0].wanted);
  cr_assert(lw_run(c, ask_tables(), LW_DETAIL_CHECKS, result, NULL) == LW_OK);
  for (int i = 0; i < result->situations.count; i++)
    for (int k = 0; k < result->situations.situation[i].check_count; k++) {
      const lw_check check = lw_situation_check(&result->situations.situation[i], k);
      lw_text_addf(out, "%d %d %d %.9g\n", check.kind, check.at, check.joint,
                   check.has.known ? check.has.value : -1.0);
    }
}

/* Line by line no figure of a is greater than that of b. */
static bool nowhere_more(const char *a, const char *b) {
  bool none = true;
  while (none && a && b && *a && *b) {
    const char *end_a = strchr(a, '\n'), *end_b = strchr(b, '\n'), *x = end_a, *y = end_b;
    double p = 0.0, q = 0.0;
    while (x > a && x[-1] != ' ') x--;
    while (y > b && y[-1] != ' ') y--;
    cr_assert(lw_number_read(x, (size_t)(end_a - x), &p) && lw_number_read(y, (size_t)(end_b - y), &q));
    none = p <= q + 1e-9;
    a = end_a + 1;
    b = end_b + 1;
  }
  return none;
}

/* The sums are of the very same wall; where a row of a table stands for it, of one that is no better than
 * that row. Who must see it is another matter: an answer that is not known is a question to the council. */
Test(ask_tables, what_not_knowing_counts_as_is_what_is_assumed) {
  int held = 0;
  EACH_QUESTION(q) {
    bool bed = lw_tables_listed("bed-soil|level", q.row->key), named = false;
    lw_case left_out = plain_wall(bed), counts = plain_wall(bed);
    lw_text a = {0}, b = {0};
    if (!q.row->counts_as[0]) continue;
    for (lw_ask_walk walk = lw_ask_begin(q.row->counts_as); lw_ask_step(&walk);) {
      char typed[200], name[LW_ITEM_NAME_MAX], value[LW_ANSWER_BYTES];
      static lw_faults faults;
      faults.count = 0;
      named = named || walk.pair.named.item->type == LW_ITEM_WORDS;
      lw_named_print(&walk.pair.named, name, sizeof name);
      lw_named_forget(&walk.pair.named, &left_out);
      lw_named_forget(&walk.pair.named, &counts);
      lw_print(typed, sizeof typed, "%s=%s", name, lw_ask_copy(&walk.pair.value, value, sizeof value));
      cr_assert(lw_sheet_override(typed, 1, &counts, &faults) == LW_OK, "%s", typed);
    }
    say_wall(&left_out, &a);
    say_wall(&counts, &b);
    bool well = named ? nowhere_more(a.data, b.data) : strcmp(a.data, b.data) == 0;
    cr_expect(well, "%s counts as %s\n%s----\n%s", q.row->key, q.row->counts_as, a.data, b.data);
    lw_text_free(&a);
    lw_text_free(&b);
    held++;
  }
  cr_expect(lt(int, 10, held));
}

Test(ask_tables, each_choice_to_look_at_has_a_picture_that_can_be_drawn) {
  int drawn = 0;
  for (int i = 0; i < ask_tables()->choice_count; i++) {
    const lw_choice_row *row = &ask_tables()->choice[i];
    cr_expect(lw_picture_reads(row->picture), "%s %s: %s", row->question, row->key, row->picture);
  }
  EACH_QUESTION(q) {
    for (int i = 0; i < q.choice_count; i++) {
      lw_drawing drawing = {0};
      lw_status status = lw_question_picture(ask_tables(), q.row->key, i, 40.0, &drawing);
      cr_expect(status == (q.choice[i].picture[0] ? LW_OK : LW_NO_SOLUTION), "%s %s", q.row->key,
                q.choice[i].key);
      cr_expect(q.choice[i].picture[0] || q.row->kind == LW_QUESTION_MEASURE, "%s %s", q.row->key,
                q.choice[i].key);
      for (size_t k = 0; k < drawing.spot_count; k++)
        cr_expect(drawing.spot[k].x_mm > -1.0 && drawing.spot[k].x_mm < 42.0 && drawing.spot[k].y_mm > -1.0 &&
                      drawing.spot[k].y_mm < 31.0,
                  "%s %s: a spot at %.1f, %.1f", q.row->key, q.choice[i].key, drawing.spot[k].x_mm,
                  drawing.spot[k].y_mm);
      drawn += drawing.mark_count > 2;
      lw_drawing_free(&drawing);
    }
    lw_drawing none = {0};
    cr_expect(lw_question_picture(ask_tables(), q.row->key, q.choice_count, 40.0, &none) == LW_NO_SOLUTION);
    cr_expect(lw_question_picture(ask_tables(), q.row->key, -1, 40.0, &none) == LW_NO_SOLUTION);
  }
  cr_expect(lt(int, 60, drawn));
}
