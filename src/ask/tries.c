/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "tries.h"

#include "sheet/said.h"

/* An answer is worth asking for when what is said of the wall may change with it. One question alone does not
 * tell: two doubts may each be harmless and together not. So each is tried twice, with the other answers left
 * out and with the other answers at their mildest; and between those two walls one answer after the other is
 * changed, so that whoever changes what is said is found. */

static void put_pair(const lw_ask_pair *pair, lw_case *c) {
  char name[LW_ITEM_NAME_MAX], value[LW_ANSWER_BYTES], typed[LW_ITEM_NAME_MAX + LW_ANSWER_BYTES + 1];
  lw_faults faults = {.count = 0};
  lw_named_print(&pair->named, name, sizeof name);
  lw_print(typed, sizeof typed, "%s=%s", name, lw_ask_copy(&pair->value, value, sizeof value));
  lw_named_forget(&pair->named, c);
  lw_sheet_override(typed, 1, c, &faults);
}

static void put_list(const char *list, lw_case *c) {
  for (lw_ask_walk walk = lw_ask_begin(list); lw_ask_step(&walk);) put_pair(&walk.pair, c);
}

static int rank_of(lw_ask_end end) {
  enum { MILDEST = 1, GRAVEST = 9 };
  return end == LW_END_MILD ? MILDEST : GRAVEST;
}

static const lw_choice_row *choice_at(const lw_question *question, lw_ask_end end) {
  for (int i = 0; i < question->choice_count; i++)
    if (question->choice[i].rank == rank_of(end)) return &question->choice[i];
  return NULL;
}

bool lw_question_has_ends(const lw_question *question) {
  switch (question->row->kind) {
  case LW_QUESTION_CHOICE: return choice_at(question, LW_END_MILD) && choice_at(question, LW_END_GRAVE);
  case LW_QUESTION_SEVERAL: return true;
  case LW_QUESTION_MEASURE:
  case LW_QUESTION_WORDS: break;
  }
  return question->row->mildest[0] != '\0' && question->row->gravest[0] != '\0';
}

void lw_question_put_end(const lw_question *question, lw_ask_end end, lw_case *c) {
  bool mild = end == LW_END_MILD;
  for (int i = 0; i < question->choice_count && question->row->kind == LW_QUESTION_SEVERAL; i++)
    put_list(mild ? question->choice[i].others : question->choice[i].writes, c);
  if (question->row->kind == LW_QUESTION_CHOICE) put_list(choice_at(question, end)->writes, c);
  if (question->row->kind == LW_QUESTION_MEASURE || question->row->kind == LW_QUESTION_WORDS)
    put_list(mild ? question->row->mildest : question->row->gravest, c);
}

/* What a person is told, without its figures. */
typedef struct told {
  bool any; /* the wall could be run, and there is something to say of it */
  lw_what what;
  lw_holds stands;
  lw_grade grade;
  lw_who who;
  int exit_status;
  bool certain;
} told;

typedef struct trying {
  const lw_tables *tables;
  lw_result *scratch;
  lw_case so_far, mild; /* the others left out, and at their mildest */
  int runs;
  int count, index[LW_QUESTION_ROWS]; /* of the questions with ends */
} trying;

static told run(trying *t, const lw_case *from) {
  lw_faults faults = {.count = 0};
  lw_result *result = &t->scratch[0];
  result->given = *from;
  t->runs++;
  /* The search for a slip takes most of the time. What it depends on has no ends, and is asked anyway. */
  if (result->given.method.slip.origin == LW_ABSENT)
    result->given.method.slip = (lw_choice){.value = LW_SLIP_NOT, .origin = LW_GIVEN};
  if (lw_case_complete(t->tables, &result->given, &faults) != LW_OK ||
      lw_run(&result->given, t->tables, LW_DETAIL_VERDICT, result, NULL) != LW_OK)
    return (told){.any = false};
  lw_check check;
  bool depth = !lw_verdict_governing(result, &check) || check.reason != LW_REASON_NO_DEPTH;
  if (result->verdict.grade != LW_GRADE_HOLDS) lw_looks_find(result, &t->scratch[1]);
  const lw_verdict *v = &result->verdict;
  return (told){depth, v->what, v->stands, v->grade, v->who, v->exit_status, v->called_for_certain};
}

static bool same(const told *a, const told *b) {
  return a->any == b->any && a->what == b->what && a->stands == b->stands && a->grade == b->grade &&
         a->who == b->who && a->exit_status == b->exit_status && a->certain == b->certain;
}

static lw_question nth(const trying *t, int i) {
  return lw_question_of(t->tables, t->index[i]);
}

static bool moves(trying *t, int i, lw_ask_end end, const lw_case *from, const told *by) {
  const lw_question question = nth(t, i);
  lw_case c = *from;
  lw_question_put_end(&question, end, &c);
  const told then = run(t, &c);
  return !same(&then, by);
}

/* One answer after the other, from the mildest wall to the one with nothing known, and to the gravest. */
static void walk(trying *t, lw_ask_end to_grave, bool wanted[LW_QUESTION_ROWS]) {
  lw_case c = t->mild;
  told last = run(t, &c);
  for (int i = 0; i < t->count; i++) {
    const lw_question question = nth(t, i);
    if (to_grave == LW_END_GRAVE)
      lw_question_put_end(&question, LW_END_GRAVE, &c);
    else
      for (lw_ask_walk items = lw_ask_begin(question.row->items); lw_ask_step(&items);)
        lw_named_forget(&items.pair.named, &c);
    const told now = run(t, &c);
    wanted[t->index[i]] = wanted[t->index[i]] || !same(&now, &last);
    last = now;
  }
}

int lw_tries(const lw_tables *tables, const lw_answers *answers, lw_result *scratch,
             bool wanted[LW_QUESTION_ROWS]) {
  trying t = {.tables = tables, .scratch = scratch, .so_far = answers->c};
  const told now = run(&t, &t.so_far);
  if (!now.any) return t.runs;
  t.mild = t.so_far;
  for (int i = 0; i < tables->question_count; i++) {
    const lw_question question = lw_question_of(tables, i);
    if (!wanted[i] || question.row->part != LW_QUESTION_FIRST || !lw_question_has_ends(&question)) continue;
    t.index[t.count++] = i;
    lw_question_put_end(&question, LW_END_MILD, &t.mild);
  }
  const told mildest = run(&t, &t.mild);
  for (int i = 0; i < t.count; i++)
    wanted[t.index[i]] = moves(&t, i, LW_END_MILD, &t.so_far, &now) ||
                         moves(&t, i, LW_END_GRAVE, &t.so_far, &now) ||
                         moves(&t, i, LW_END_GRAVE, &t.mild, &mildest);
  walk(&t, LW_END_MILD, wanted);
  walk(&t, LW_END_GRAVE, wanted);
  return t.runs;
}
