/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "elsewhere.h"
#include "parts.h"
#include "said.h"
#include "balance/weigh.h"

/* The head of the page, for someone who reads no further: the headline, the three answers, why. */

lw_tone lw_text_tone(const lw_verdict *v) {
  bool bad = v->stands != LW_HOLDS || v->who == LW_WHO_ENGINEER;
  return bad ? LW_TONE_BAD : v->who == LW_WHO_COUNCIL ? LW_TONE_STRONG : LW_TONE_GOOD;
}

/* In every case that decides, with what fails beside them. */
static void holds_words(const lw_result *result, char *out, size_t size) {
  char but[120];
  if (lw_result_fails_elsewhere(result, but, sizeof but))
    lw_print(out, size, "by the checks that decide; but %s", but);
  else
    lw_print(out, size, "on paper, in every case that decides here");
}

static void short_words(const lw_result *result, bool worst_too, char *out, size_t size) {
  lw_check worst;
  const lw_situation *s = worst_too ? lw_result_told(result, &worst) : NULL;
  static const char *const how[] = {[LW_SHORT_OF_MARGIN] = "on paper, but with less margin than is asked",
                                    [LW_SHORT_BY_DESIGN] = "not by the design values of its format",
                                    [LW_SHORT_MOVES] = "no, it would move"};
  bool may = result->verdict.grade == LW_GRADE_MAY_MOVE;
  char words[48] = "";
  if (s) lw_check_words(&worst, words, sizeof words);
  lw_print(out, size, "%s%s%s%s%s", may ? "it may move" : how[result->verdict.falls], s ? "; worst: " : "",
           words, s ? ", " : "", s ? lw_situation_short(s->name) : "");
}

/* Why nobody can say, or what is worst, in the words of the table below. */
static void stands_words(const lw_result *result, bool worst_too, char *out, size_t size) {
  lw_check worst;
  bool unknown = lw_verdict_governing(result, &worst) && worst.holds == LW_CANNOT_SHOW;
  if (result->verdict.stands == LW_HOLDS)
    holds_words(result, out, size);
  else if (result->verdict.stands == LW_FALLS_SHORT || lw_result_would_move(result))
    short_words(result, worst_too, out, size);
  else
    lw_print(out, size, "nobody can say from this sheet%s%s", unknown ? ": " : "",
             unknown ? lw_reason_sentence(worst.reason) : "");
}

static const char *who_words(lw_who who) {
  switch (who) {
  case LW_WHO_ENGINEER: return "a licensed engineer, who designs it before work starts";
  case LW_WHO_COUNCIL: return "the council, before anything is built";
  case LW_WHO_BUILDER: return "you, with the authority's word that this limit is in force";
  }
  return "";
}

const char *lw_text_asked(lw_answer answer) {
  static const char *const asked[] = {
      [LW_ANSWER_WHAT] = "What it is", [LW_ANSWER_STANDS] = "Does it stand", [LW_ANSWER_WHO] = "Who answers"};
  return asked[answer];
}

void lw_text_answer_words(const lw_result *result, lw_answer answer, bool worst_too, char *out, size_t size) {
  if (answer == LW_ANSWER_STANDS)
    stands_words(result, worst_too, out, size);
  else
    lw_print(out, size, "%s",
             answer == LW_ANSWER_WHAT ? lw_what_sentence(result->verdict.what)
                                      : who_words(result->verdict.who));
}

void lw_text_answer(const lw_page *page, const lw_result *result, lw_answer answer, bool worst_too) {
  char words[200], prefix[24];
  lw_print(prefix, sizeof prefix, "  %-17s", lw_text_asked(answer));
  lw_text_answer_words(result, answer, worst_too, words, sizeof words);
  lw_page_say(page, prefix, words);
}

/* What is wrong with a situation, by a check of it or by a free body that no check looks at. */
static bool is_faulty(const lw_situation *s, lw_reason *reason) {
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    if (!lw_check_faulty(&check)) continue;
    *reason = check.reason;
    return true;
  }
  bool any = s->base.faulty || s->pad.faulty;
  for (int j = 0; j < s->joint_count; j++) any = any || s->joint[j].faulty;
  *reason = LW_REASON_WEDGE_DISAGREES;
  return any;
}

void lw_text_faulty(const lw_page *page, const lw_result *result) {
  for (int i = 0; i < result->situations.count; i++) {
    lw_reason reason;
    if (!is_faulty(&result->situations.situation[i], &reason)) continue;
    char text[200];
    lw_print(text, sizeof text, "THIS REPORT IS FAULTY, through a fault of the program: %s.",
             lw_reason_sentence(reason));
    lw_page_tone(page, LW_TONE_BAD, "", text);
    lw_page_blank(page);
    return;
  }
}

/* Where to read up a reason that is known. One that rests on no answer is settled by the answer, and its
 * sources stand in the list of them. */
static void reason(const lw_page *page, const lw_verdict_reason *r) {
  bool own = strncmp(r->source, "[LOWWALL", 8) == 0 || r->source[0] == '\0' || r->assumed;
  lw_page_sayf(page, r->assumed ? "  ? " : "  - ", "%s%s%s", r->text, own ? "" : " ", own ? "" : r->source);
}

/* What is refused is a reason twice, in the same words. */
static bool said_of_standing(const lw_verdict *v, int index) {
  for (int i = 0; i < index; i++) {
    bool other = v->reasons.reason[i].answer != v->reasons.reason[index].answer;
    if (other && strcmp(v->reasons.reason[i].text, v->reasons.reason[index].text) == 0) return true;
  }
  return false;
}

static bool belongs(const lw_verdict *v, int index, lw_answer answer, lw_who who) {
  const lw_verdict_reason *r = &v->reasons.reason[index];
  return r->answer == answer && (answer != LW_ANSWER_WHO || r->who == who) &&
         !lw_reason_said_before(v, index);
}

static int first_of(const lw_verdict *v, lw_answer answer) {
  for (int i = 0; i < v->reasons.count; i++) {
    if (v->reasons.reason[i].answer == answer) return i;
  }
  return -1;
}

/* At the head stand the reasons that are known and, whatever it rests on, the one that comes first: it alone
 * settles the answer. The others that rest on no answer would bury the checks; they stand further down. */
static bool at_head(const lw_verdict *v, int index) {
  return !v->reasons.reason[index].assumed || index == first_of(v, v->reasons.reason[index].answer);
}

static void reasons_of(const lw_page *page, const lw_verdict *v, lw_answer answer, lw_who who, bool head) {
  for (int i = 0; i < v->reasons.count; i++) {
    if (!belongs(v, i, answer, who) || at_head(v, i) != head) continue;
    if (said_of_standing(v, i))
      lw_page_say(page, v->reasons.reason[i].assumed ? "  ? " : "  - ", "What is said of whether it stands.");
    else
      reason(page, &v->reasons.reason[i]);
  }
}

static int count_resting(const lw_verdict *v, lw_answer answer) {
  int count = 0;
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    count += belongs(v, i, answer, r->who) && !at_head(v, i) ? 1 : 0;
  }
  return count;
}

static void group(const lw_page *page, const lw_verdict *v, lw_answer answer, const char *title) {
  int resting = count_resting(v, answer);
  if (first_of(v, answer) < 0) return;
  lw_page_part(page, title);
  /* The gravest first. */
  for (int who = LW_WHO_ENGINEER; who >= LW_WHO_BUILDER; who--) {
    if (answer == LW_ANSWER_WHO || who == LW_WHO_BUILDER) reasons_of(page, v, answer, (lw_who)who, true);
  }
  if (resting > 0) {
    lw_page_sayf(page, "  ? ", "and %d more that rest%s on an answer not known; see \"Not known\" below",
                 resting, resting == 1 ? "s" : "");
  }
}

static bool any_assumed(const lw_verdict *v) {
  for (int i = 0; i < v->reasons.count; i++) {
    if (v->reasons.reason[i].assumed) return true;
  }
  return false;
}

void lw_text_headline(const lw_page *page, const lw_result *result) {
  lw_text_faulty(page, result);
  lw_page_headline(page, lw_text_tone(&result->verdict), result->verdict.headline);
  if (result->tables->replaced[0])
    lw_page_sayf(page, "", "Made with replaced tables: %s.", result->tables->replaced);
}

void lw_text_verdict(const lw_page *page, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  lw_page_blank(page);
  for (int answer = LW_ANSWER_WHAT; answer <= LW_ANSWER_WHO; answer++)
    lw_text_answer(page, result, (lw_answer)answer, true);
  lw_page_heading(page, any_assumed(v) ? "Why  (? rests on an answer that is not known)" : "Why");
  group(page, v, LW_ANSWER_WHAT, "What it is");
  group(page, v, LW_ANSWER_STANDS, "Whether it stands");
  group(page, v, LW_ANSWER_WHO, "Who answers for it");
}

static void resting(const lw_page *page, const lw_verdict *v, lw_answer answer, lw_who who,
                    const char *title) {
  bool any = false;
  for (int i = 0; i < v->reasons.count; i++) any = any || (belongs(v, i, answer, who) && !at_head(v, i));
  if (!any) return;
  lw_page_part(page, title);
  reasons_of(page, v, answer, who, false);
}

void lw_text_resting(const lw_page *page, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  int count = 0;
  for (int answer = LW_ANSWER_WHAT; answer <= LW_ANSWER_WHO; answer++)
    count += count_resting(v, (lw_answer)answer);
  if (count == 0) return;
  lw_page_heading(page, "Not known, and therefore taken as the worse");
  resting(page, v, LW_ANSWER_WHAT, LW_WHO_BUILDER, "What it is");
  resting(page, v, LW_ANSWER_STANDS, LW_WHO_BUILDER, "Whether it stands");
  resting(page, v, LW_ANSWER_WHO, LW_WHO_ENGINEER, "Each alone would call for an engineer");
  resting(page, v, LW_ANSWER_WHO, LW_WHO_COUNCIL, "Each alone would call for the council");
  resting(page, v, LW_ANSWER_WHO, LW_WHO_BUILDER, "Who answers for it");
}
