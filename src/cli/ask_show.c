/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdio.h>
#include <string.h>

#include <lowwall/result.h>

#include "ask/measures.h"
#include "base/canned.h"
#include "report/page.h"
#include "ask_print.h"
#include "ask_show.h"

/* Plain text, line below line: nothing moves, so that it can be read aloud, and be kept. */

void lw_ask_show_greeting(lw_ask_session *session) {
  bool us = session->asking.us;
  lw_ask_say(session,
             "A question at a time about one wall. Type an answer and press Enter. Other words do at any "
             "time: back, "
             "skip, stop, ? (why it is asked and how to find out), d (I do not know).");
  lw_ask_say(
      session,
      "Measures without a unit are in %s, as each question says; type %s for %s. The answers are kept in %s.",
      us ? "inches and feet" : "mm and m", us ? "metric" : "us", us ? "mm and m" : "inches and feet",
      session->file);
}

/* Words of a table, in the units of who is asked. */
static void say_words(const lw_page *page, const char *prefix, const char *words) {
  char said[LW_HAND_TEST_MAX];
  lw_page_say(page, prefix, lw_canned_told(page->units, words, said, sizeof said));
}

static void add_choices(const lw_page *page, const lw_question *question, const lw_answers *answers) {
  int chosen = lw_question_chosen(question, answers);
  bool several = question->row->kind == LW_QUESTION_SEVERAL;
  if (question->row->kind == LW_QUESTION_MEASURE) return;
  for (int i = 0; i < question->choice_count; i++) {
    const lw_choice_row *choice = &question->choice[i];
    char prefix[24];
    bool now = several ? lw_question_tick(choice, answers) == LW_TICK_YES : i == chosen;
    lw_print(prefix, sizeof prefix, "  %d%s ", i + 1, now ? " (now)" : "");
    say_words(page, prefix, choice->words);
  }
}

/* How to answer, by the kind of question. */
static void add_how(const lw_page *page, const lw_question *question) {
  const lw_question_row *row = question->row;
  char counts[LW_HAND_TEST_MAX];
  if (row->not_known[0])
    lw_page_sayf(page, "  d ", "I do not know. %s",
                 lw_canned_told(page->units, row->not_known, counts, sizeof counts));
  if (row->kind == LW_QUESTION_SEVERAL)
    lw_page_say(page, "",
                "Type the numbers of all that are so, with blanks between, or: none. A ? behind a number "
                "says that you do not know that one.");
  else if (row->kind == LW_QUESTION_CHOICE)
    lw_page_say(page, "", "Type a number.");
}

static void add_question(const lw_page *page, lw_ask_session *session, const lw_question *question,
                         const lw_answers *answers) {
  lw_page_blank(page);
  bool first = question->row->part == LW_QUESTION_FIRST;
  if (first) lw_page_sayf(page, "", "Question %d, up to %d to go.", session->asked_count, session->look.left);
  say_words(page, "", question->row->words);
  lw_page_blank(page);
  add_choices(page, question, answers);
  add_how(page, question);
}

/* The answers as read, for what stands there already. */
static void read_answers(lw_ask_session *session, lw_answers *answers) {
  session->again.count = 0;
  lw_status status = lw_answers_read(session->sheet.data, session->sheet.length, answers, &session->again);
  session->no_memory = session->no_memory || status == LW_NO_MEMORY;
}

void lw_ask_show_question(lw_ask_session *session, int index) {
  lw_answers answers;
  lw_text out = {0};
  const lw_page page = lw_ask_page(session, &out);
  const lw_question question = lw_question_of(session->asking.tables, index);
  read_answers(session, &answers);
  add_question(&page, session, &question, &answers);
  lw_answers_free(&answers);
  if (question.row->kind != LW_QUESTION_MEASURE) lw_text_add(&out, "> ");
  lw_ask_flush(session, &out);
}

/* The unit as one says it. */
static const char *said_unit(const char *unit) {
  static const char *const words[][2] = {{"in", "inches"}, {"ft", "feet"}, {"%", "the same measure"}};
  for (size_t i = 0; i < sizeof words / sizeof *words; i++)
    if (strcmp(words[i][0], unit) == 0) return words[i][1];
  return unit;
}

/* "  height, in mm (now 900 mm): " */
static void add_prompt(lw_ask_session *session, const lw_question *question, const lw_ask_walk *walk,
                       lw_text *out) {
  const lw_question_row *row = question->row;
  lw_answers answers;
  char words[LW_NOTE_MAX], of[LW_NAME_MAX];
  const lw_ask_part label = lw_ask_nth(row->labels, ';', walk->index),
                    unit = lw_ask_nth(session->asking.us ? row->us_units : row->units, ';', walk->index);
  const lw_page page = lw_ask_page(session, out);
  read_answers(session, &answers);
  const char *now = lw_answers_value(&answers, &walk->pair.named),
             *its = lw_answers_unit(&answers, &walk->pair.named);
  lw_ask_copy(&unit, of, sizeof of);
  lw_page_sayf(&page, "  - ", "%s%s%s%s%s%s%s%s", lw_ask_copy(&label, words, sizeof words),
               of[0] ? ", in " : "", said_unit(of), now ? " (now " : "", now ? now : "",
               now && its[0] ? " " : "", now ? its : "",
               now                                                           ? "; Enter keeps it)"
               : walk->index > 0 && lw_measure_may_be_left(row, walk->index) ? " (Enter: not known)"
                                                                             : "");
  lw_text_add(out, "> ");
  lw_answers_free(&answers);
}

bool lw_ask_now(lw_ask_session *session, int index, int measure, char line[LW_ASK_LINE]) {
  const lw_question question = lw_question_of(session->asking.tables, index);
  lw_answers answers;
  bool any = false;
  read_answers(session, &answers);
  for (lw_ask_walk walk = lw_ask_begin(question.row->items); !any && lw_ask_step(&walk);) {
    const char *value = lw_answers_value(&answers, &walk.pair.named),
               *unit = lw_answers_unit(&answers, &walk.pair.named);
    any = walk.index == measure && value;
    if (any) lw_print(line, LW_ASK_LINE, "%s%s%s", value, unit[0] ? " " : "", unit);
  }
  lw_answers_free(&answers);
  return any;
}

void lw_ask_show_prompt(lw_ask_session *session) {
  lw_text out = {0};
  lw_text_add(&out, "> ");
  lw_ask_flush(session, &out);
}

bool lw_ask_show_measure(lw_ask_session *session, int index, int measure) {
  const lw_question question = lw_question_of(session->asking.tables, index);
  lw_text out = {0};
  for (lw_ask_walk walk = lw_ask_begin(question.row->items); lw_ask_step(&walk);) {
    if (walk.index != measure) continue;
    add_prompt(session, &question, &walk, &out);
    lw_ask_flush(session, &out);
    return true;
  }
  return false;
}

void lw_ask_show_why(lw_ask_session *session, int index) {
  const lw_question_row *row = &session->asking.tables->question[index];
  lw_text out = {0};
  const lw_page page = lw_ask_page(session, &out);
  lw_ask_part step;
  int number = 0;
  say_words(&page, "Why: ", row->why);
  if (row->hand_test[0]) lw_page_say(&page, "", "How to find out:");
  for (const char *at = row->hand_test; lw_ask_next(&at, '|', &step);) {
    char words[LW_HAND_TEST_MAX], prefix[16];
    lw_print(prefix, sizeof prefix, "  %d. ", ++number);
    say_words(&page, prefix, lw_ask_copy(&step, words, sizeof words));
  }
  if (row->kind != LW_QUESTION_MEASURE) lw_text_add(&out, "> ");
  lw_ask_flush(session, &out);
}

void lw_ask_show_faults(lw_ask_session *session) {
  for (int i = 0; i < session->faults.count; i++) {
    const lw_fault *fault = &session->faults.fault[i];
    bool stood = fault->stood[0] != '\0';
    lw_ask_say(session, "That does not do%s%s%s: %s. Right would be: %s.", stood ? " (" : "", fault->stood,
               stood ? ")" : "", lw_fault_slug_sentence(fault->slug), fault->wanted);
  }
}

void lw_ask_show_so_far(lw_ask_session *session) {
  lw_text lines = {0}, out = {0};
  const lw_page page = lw_ask_page(session, &out);
  lw_status status = lw_questions_verdict(&session->asking, &lines);
  session->no_memory = session->no_memory || status == LW_NO_MEMORY;
  if (status == LW_OK && lines.length > 0) {
    lw_page_blank(&page);
    lw_page_say(&page, "", "So far, what is not answered taken as the worse:");
    lw_text_add(&out, lines.data);
    lw_ask_flush(session, &out);
  }
  lw_text_free(&lines);
}
