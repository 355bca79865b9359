/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <string.h>

/* The head of the page, for someone who reads no further: the headline, the three answers, why. */

static lw_tone tone_of(const lw_verdict *v) {
  bool bad = v->stands != LW_HOLDS || v->who == LW_WHO_ENGINEER;
  return bad ? LW_TONE_BAD : v->who == LW_WHO_COUNCIL ? LW_TONE_STRONG : LW_TONE_GOOD;
}

static const char *stands_words(const lw_result *result) {
  switch (result->verdict.stands) {
  case LW_HOLDS: return "on paper, in every case that decides here";
  case LW_CANNOT_SHOW: return "nobody can say from this sheet";
  case LW_FALLS_SHORT:
    return lw_result_would_move(result) ? "no, as drawn it would move"
                                        : "on paper, but with less margin than is asked";
  }
  return "";
}

static const char *who_words(lw_who who) {
  switch (who) {
  case LW_WHO_ENGINEER: return "a licensed engineer, who designs it before work starts";
  case LW_WHO_COUNCIL: return "the council, before anything is built";
  case LW_WHO_BUILDER: return "you do, with the authority's word that this limit is still in force";
  }
  return "";
}

static void answers(const lw_page *page, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  lw_page_blank(page);
  lw_page_say(page, "  What it is       ", lw_what_sentence(v->what));
  lw_page_say(page, "  Does it stand    ", stands_words(result));
  lw_page_say(page, "  Who answers      ", who_words(v->who));
}

static void faulty(const lw_page *page, const lw_result *result) {
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    bool any = s->base.faulty || s->pad.faulty;
    for (int j = 0; j < s->joint_count; j++) any = any || s->joint[j].faulty;
    if (!any) continue;
    lw_page_tone(
        page, LW_TONE_BAD, "",
        "THIS REPORT IS FAULTY: formula and numerical wedge must agree here and do not. Do not use it.");
    lw_page_blank(page);
    return;
  }
}

static void reason(const lw_page *page, const lw_verdict_reason *r) {
  bool own = strncmp(r->source, "[LOWWALL", 8) == 0 || r->source[0] == '\0';
  lw_page_sayf(page, r->assumed ? "  ? " : "  - ", "%s%s%s", r->text, own ? "" : " ", own ? "" : r->source);
}

/* Of the limits that are past one is reason enough here; all of them stand under the heights. */
static bool is_limit(const lw_verdict_reason *r) {
  return strncmp(r->slug, "limit-", 6) == 0;
}

static bool said_before(const lw_verdict *v, int index) {
  for (int i = 0; i < index && is_limit(&v->reason[index]); i++) {
    const lw_verdict_reason *r = &v->reason[i];
    if (is_limit(r) && r->who == v->reason[index].who) return true;
  }
  return false;
}

/* The gravest first; of those alike, what is known before what rests on an answer that nobody gave. */
static void reasons_of(const lw_page *page, const lw_verdict *v, lw_answer answer, lw_who who) {
  for (int assumed = 0; assumed <= 1; assumed++) {
    for (int i = 0; i < v->reason_count; i++) {
      const lw_verdict_reason *r = &v->reason[i];
      bool alike = r->answer == answer && r->assumed == (assumed == 1);
      if (alike && (answer != LW_ANSWER_WHO || r->who == who) && !said_before(v, i)) reason(page, r);
    }
  }
}

static int count_of(const lw_verdict *v, lw_answer answer) {
  int count = 0;
  for (int i = 0; i < v->reason_count; i++) count += v->reason[i].answer == answer ? 1 : 0;
  return count;
}

static void group(const lw_page *page, const lw_verdict *v, lw_answer answer, const char *title) {
  if (count_of(v, answer) == 0) return;
  lw_page_linef(page, LW_TONE_PLAIN, " %s", title);
  if (answer == LW_ANSWER_WHO) {
    reasons_of(page, v, answer, LW_WHO_ENGINEER);
    reasons_of(page, v, answer, LW_WHO_COUNCIL);
  }
  reasons_of(page, v, answer, LW_WHO_BUILDER);
}

static bool any_assumed(const lw_verdict *v) {
  for (int i = 0; i < v->reason_count; i++) {
    if (v->reason[i].assumed) return true;
  }
  return false;
}

void lw_text_verdict(const lw_page *page, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  faulty(page, result);
  lw_page_tone(page, tone_of(v), "", v->headline);
  answers(page, result);
  lw_page_heading(page, any_assumed(v) ? "Why  (? rests on an answer that is not known)" : "Why");
  group(page, v, LW_ANSWER_WHAT, "What it is");
  group(page, v, LW_ANSWER_STANDS, "Whether it stands");
  group(page, v, LW_ANSWER_WHO, "Who answers for it");
}
