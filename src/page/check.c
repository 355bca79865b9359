/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "moves.h"
#include "replies.h"
#include "wall.h"
#include "balance/weigh.h"
#include "report/text/advised.h"
#include "report/text/echo.h"
#include "report/text/hazard.h"
#include "report/text/parts.h"
#include "report/text/rows.h"
#include "report/text/said.h"
#include "report/text/unchecked.h"

/* The answer, the checks, what is assumed and what to mind, in the words of the reports. */

/* How grave an answer is, from 0: what it is says less than how it stands, which says less than who. */
static int gravity(const lw_verdict *v, lw_answer answer) {
  if (answer == LW_ANSWER_WHO) return v->who == LW_WHO_ENGINEER ? 3 : v->who == LW_WHO_COUNCIL ? 1 : 0;
  if (answer == LW_ANSWER_STANDS) return v->stands == LW_HOLDS ? 0 : 2;
  return 0;
}

static void put_answer(json_t *list, const lw_result *result, lw_answer answer) {
  static const char *const slugs[] = {
      [LW_ANSWER_WHAT] = "what", [LW_ANSWER_STANDS] = "stands", [LW_ANSWER_WHO] = "who"};
  char words[200];
  json_t *entry = lw_json_entry(list);
  lw_text_answer_words(result, answer, false, words, sizeof words);
  lw_json_set_text(entry, "answer", slugs[answer]);
  lw_json_set_text(entry, "asked", lw_text_asked(answer));
  lw_json_set_text(entry, "words", words);
  lw_json_set_count(entry, "gravity", gravity(&result->verdict, answer));
}

/* The gravest first, else what it is, whether it stands, who must see it. */
static void put_answers(json_t *reply, const lw_result *result) {
  json_t *list = lw_json_list(reply, "answers");
  for (int grave = 3; grave >= 0; grave--)
    for (int answer = LW_ANSWER_WHAT; answer <= LW_ANSWER_WHO; answer++)
      if (gravity(&result->verdict, (lw_answer)answer) == grave) put_answer(list, result, (lw_answer)answer);
}

static void put_verdict(json_t *reply, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  static const char *const tones[] = {
      [LW_TONE_PLAIN] = "plain", [LW_TONE_STRONG] = "ask", [LW_TONE_GOOD] = "good", [LW_TONE_BAD] = "bad"};
  char looks[200];
  lw_text faulty = {0};
  lw_page page = {.out = &faulty, .style = {.columns = 10000}, .units = result->units};
  lw_text_faulty(&page, result);
  lw_reply_put(reply, "faulty", &faulty);
  lw_json_set_text(reply, "title", result->given.about.title.text);
  lw_json_set_text(reply, "mark", result->given.about.mark.text);
  lw_json_set_text(reply, "tone", tones[lw_text_tone(v)]);
  lw_json_set_count(reply, "exit", v->exit_status);
  lw_json_set_text(reply, "what", lw_what_slug(v->what));
  lw_json_set_text(reply, "stands", lw_holds_slug(v->stands));
  lw_json_set_text(reply, "who", lw_who_slug(v->who));
  lw_json_set_text(reply, "grade", lw_grade_slug(v->grade));
  lw_json_set_text(reply, "advice_title", lw_remedies_title_before(result));
  put_answers(reply, result);
  lw_text headline = {0};
  lw_text_add(&headline, v->headline);
  lw_reply_put(reply, "headline", &headline);
  lw_json_set_text(reply, "looks",
                   v->grade != LW_GRADE_HOLDS ? lw_looks_words(&result->looks, looks, sizeof looks) : "");
}

static void put_row(json_t *list, const lw_rows *rows, int index) {
  const lw_row *row = &rows->row[index];
  json_t *entry = lw_json_entry(list);
  char words[48], has[24], needs[24], marked[24], likely[24], told[160];
  lw_check_words(&row->check, words, sizeof words);
  lw_row_print_has(&row->check, has, sizeof has);
  lw_page_number(row->check.needs, needs, sizeof needs);
  lw_row_print_needs(row, marked, sizeof marked);
  lw_page_number(row->likely, likely, sizeof likely);
  lw_json_set_text(entry, "words", words);
  lw_json_set_text(entry, "has", has);
  lw_json_set_text(entry, "needs", marked);
  lw_json_set_text(entry, "likely", likely);
  (void)lw_json_set_real(entry, "ratio", row->check.ratio);
  lw_json_set_text(entry, "outcome", lw_row_outcome(row));
  lw_print(told, sizeof told, "%s: has %s, needs %s: %s", words, has, needs, lw_row_outcome(row));
  lw_json_set_text(entry, "told", told);
  lw_json_set_text(entry, "case", lw_situation_short(row->situation->name));
  lw_json_set_flag(entry, "counts", row->check.counts);
  lw_json_set_flag(entry, "holds", row->check.counts && row->check.holds == LW_HOLDS);
  lw_json_set_text(entry, "why",
                   row->check.holds == LW_CANNOT_SHOW ? lw_reason_sentence(row->check.reason) : "");
}

static void put_checks(json_t *reply, const lw_result *result) {
  lw_json_set_text(reply, "checks_title", "Each check at its worst");
  lw_rows rows;
  lw_text legend = {0};
  lw_page page = {.out = &legend, .style = {.columns = 10000}, .units = result->units};
  json_t *list = lw_json_list(reply, "checks");
  lw_rows_collect(result, &rows);
  for (int i = 0; i < rows.count; i++) put_row(list, &rows, i);
  lw_rows_put_legend(&page, &rows);
  lw_reply_put(reply, "legend", &legend);
}

static void put_assumed(void *context, const lw_echo *echo) {
  if (echo->origin != LW_ASSUMED || echo->item->question[0] == '\0') return;
  json_t *entry = lw_json_entry(context);
  lw_text words = {0};
  lw_text_addf(&words, "Taken meanwhile: %s.", echo->words);
  lw_json_set_text(entry, "item", echo->name);
  lw_reply_put(entry, "words", &words);
  lw_json_set_text(entry, "question", echo->item->question);
}

static void put_unchecked(void *context, const lw_unchecked *unchecked) {
  lw_json_append(context, json_string(unchecked->text));
}

static void put_reasons(json_t *reply, const lw_verdict *v) {
  json_t *list = lw_json_list(reply, "reasons");
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    if (lw_reason_said_before(v, i)) continue;
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "asked", lw_text_asked(r->answer));
    lw_json_set_text(entry, "words", r->text);
    lw_json_set_text(entry, "rests", r->assumed ? "It rests on an answer that is not known." : "");
    lw_json_set_text(entry, "item", r->left_out ? r->left_out : "");
  }
}

static void put_cautions(json_t *reply, const lw_result *result) {
  const lw_reasons *reasons = &result->verdict.reasons;
  json_t *list = lw_json_list(reply, "cautions");
  for (int i = 0; i < reasons->caution_count; i++) {
    char words[LW_HAZARD_WORDS_MAX];
    lw_hazard_words(reasons->caution[i], result->units, words, sizeof words);
    lw_json_append(list, json_string(words));
  }
}

lw_status lw_reply_check(lw_request *asked) {
  const lw_request_wall *wall;
  lw_status status = lw_request_run(asked, &wall);
  if (status == LW_OK) {
    put_verdict(asked->reply, &wall->result);
    put_checks(asked->reply, &wall->result);
    put_reasons(asked->reply, &wall->result.verdict);
    lw_echo_each(&wall->result, put_assumed, lw_json_list(asked->reply, "assumed"));
    lw_json_set_text(asked->reply, "assumed_none", "Everything that is asked for was answered.");
    put_cautions(asked->reply, &wall->result);
    lw_unchecked_each(&wall->result, put_unchecked, lw_json_list(asked->reply, "unchecked"));
    lw_json_set_text(asked->reply, "certifies_nothing", LW_CERTIFIES_NOTHING);
    lw_reply_put_handles(asked->reply, &wall->result);
    lw_reply_put_sheet(asked->reply, &wall->c);
  }
  return status;
}
