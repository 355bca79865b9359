/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Interviews by chance, and what an officer asks. */
#include "support.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <string.h>

static void random_answer(const lw_question *q, dice *d, char *out, size_t size) {
  out[0] = '\0';
  size_t used = 0;
  if (q->row->not_known[0] && dice_pick(d, 5) == 0) {
    lw_print(out, size, "not known");
  } else if (q->row->kind == LW_QUESTION_CHOICE) {
    lw_print(out, size, "%d", 1 + dice_pick(d, q->choice_count));
  } else if (q->row->kind == LW_QUESTION_SEVERAL) {
    for (int i = 0; i < q->choice_count; i++)
      if (dice_pick(d, 4) == 0)
        used += (size_t)lw_print(out + used, size - used, "%d%s ", i + 1, dice_pick(d, 5) == 0 ? "?" : "");
    if (used == 0) lw_print(out, size, "none");
  } else if (q->row->kind == LW_QUESTION_WORDS) {
    lw_print(out, size, strcmp(q->row->key, "place") == 0 ? "queensland" : "Any, \"name\"");
  } else {
    static const double sizes[] = {0.0, 10.0, 50.0, 200.0, 300.0, 400.0, 600.0, 2.0, 1.5, 5.0};
    for (int i = 0; i < lw_ask_count(q->row->items, ';'); i++)
      used += (size_t)lw_print(out + used, size - used, "%s%g", i > 0 ? "; " : "", sizes[dice_pick(d, 10)]);
  }
}

/* Whatever is answered in whatever order, the sheet reads, and says nothing that contradicts itself. */
Test(ask_chance, by_chance_the_sheet_always_reads_and_the_questions_end) {
  int taken = 0, refused = 0, ended = 0;
  for (int i = 0; i < 40 / RANDOM_SHARE; i++) {
    ask_talk talk;
    dice d = {.state = 4000u + (unsigned)i};
    ask_begin(&talk, i % 8 == 0);
    for (int step = 0; step < 80; step++) {
      char answer[200];
      bool any = dice_pick(&d, 6) == 0; /* back to one that was answered, or to one that is not needed */
      int question = any ? dice_pick(&d, talk.look.count) : ask_pick_open(&talk, &d);
      if (question < 0) break;
      const lw_question q = lw_question_of(ask_tables(), question);
      if (any && dice_pick(&d, 2) == 0) {
        ask_take_back(&talk, q.row->key);
        continue;
      }
      random_answer(&q, &d, answer, sizeof answer);
      lw_status status = ask_try(&talk, q.row->key, answer);
      taken += status == LW_OK;
      refused += status == LW_FAULTS;
      cr_expect(status == LW_OK || talk.faults.count > 0, "%s=%s", q.row->key, answer);
      cr_expect(status == LW_FAULTS || any || ask_state(&talk, q.row->key) != LW_ASKED_OPEN, "%s=%s\n%s",
                q.row->key, answer, talk.sheet.data);
    }
    ended += talk.look.next < 0;
    ask_end(&talk);
  }
  cr_expect(lt(int, 1000 / RANDOM_SHARE, taken), "%d taken, %d refused", taken, refused);
  cr_expect(lt(int, 8 / RANDOM_SHARE, ended), "%d ended", ended);
}

/* --- what an officer asks --- */

/* An answer that the question takes, whichever. */
static void any_answer(const lw_question *q, dice *d, char *out, size_t size) {
  if (q->row->kind == LW_QUESTION_WORDS)
    lw_print(out, size, "A wall");
  else
    random_answer(q, d, out, size);
}

/* Whatever was answered before, whichever way each of them is answered: none is refused, none comes back, and
 * the last of them is the end. */
Test(ask_chance, what_an_officer_asks_can_always_be_finished) {
  int asked = 0;
  for (int i = 0; i < 48 / RANDOM_SHARE; i++) {
    ask_talk talk;
    dice d = {.state = 900u + (unsigned)i};
    ask_begin(&talk, false);
    for (int k = 0; k < ask_tables()->question_count && k < 2 * i; k++) {
      char answer[200];
      const lw_question q = lw_question_of(ask_tables(), k);
      random_answer(&q, &d, answer, sizeof answer);
      if (q.row->part == LW_QUESTION_FIRST && talk.look.state[k] == LW_ASKED_OPEN)
        ask_try(&talk, q.row->key, answer);
    }
    for (int k = 0; k < ask_tables()->question_count; k++) {
      char answer[200];
      const lw_question q = lw_question_of(ask_tables(), k);
      if (q.row->part != LW_QUESTION_OFFICER || talk.look.state[k] != LW_ASKED_OPEN) continue;
      any_answer(&q, &d, answer, sizeof answer);
      ask_answer(&talk, q.row->key, answer);
      cr_expect(talk.look.state[k] == LW_ASKED_ANSWERED || talk.look.state[k] == LW_ASKED_NOT_KNOWN, "%s=%s",
                q.row->key, answer);
      asked++;
    }
    for (int k = 0; k < ask_tables()->question_count; k++)
      cr_expect(ask_tables()->question[k].part != LW_QUESTION_OFFICER || talk.look.state[k] != LW_ASKED_OPEN,
                "%s\n%s", ask_tables()->question[k].key, talk.sheet.data);
    ask_end(&talk);
  }
  cr_expect(lt(int, 48 * 5 / RANDOM_SHARE, asked));
}

/* None of it is a question of the first part, nor counted with it. */
Test(ask_chance, what_an_officer_asks_makes_the_first_part_no_longer) {
  ask_talk talk;
  ask_begin(&talk, false);
  int left = talk.look.left;
  for (int k = 0; k < ask_tables()->question_count; k++) {
    const lw_question q = lw_question_of(ask_tables(), k);
    if (q.row->part == LW_QUESTION_OFFICER && q.row->not_known[0]) ask_answer(&talk, q.row->key, "not known");
  }
  cr_expect(eq(int, talk.look.left, left));
  cr_expect(eq(int, talk.look.answered, 0));
  cr_expect(strcmp(ask_next(&talk), "kind") == 0);
  ask_end(&talk);
}
