/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "reasons.h"

#include <lowwall/sheet.h>

#include <string.h>

static bool said_already(const lw_reasons *reasons, const lw_because *because) {
  for (int i = 0; i < reasons->count; i++) {
    const lw_verdict_reason *r = &reasons->reason[i];
    if (r->answer == because->answer && r->who >= because->who && strcmp(r->slug, because->slug) == 0)
      return true;
  }
  return false;
}

static bool asked_already(const lw_reasons *reasons, const lw_because *because) {
  for (int i = 0; because->left_out && i < reasons->count; i++) {
    const lw_verdict_reason *r = &reasons->reason[i];
    bool same = r->answer == because->answer && r->left_out;
    if (same && strcmp(r->left_out, because->left_out) == 0) return true;
  }
  return false;
}

/* The headline never says what it is, nor why the lesser of two must see it, nor why the council must when
 * nobody has shown that it stands, and takes a reason that is known before others: see lw_reasons_first. Of
 * standing it may take any. */
static bool outdone(const lw_reaching *to, const lw_because *because) {
  const lw_verdict *verdict = to->verdict;
  bool engineer = because->who == LW_WHO_ENGINEER || verdict->stands == LW_HOLDS;
  bool lesser = because->answer == LW_ANSWER_WHO && (because->who < verdict->who || !engineer);
  if (because->answer == LW_ANSWER_WHAT || lesser) return true;
  if (because->answer == LW_ANSWER_STANDS) return false;
  for (int i = 0; i < to->reasons->count; i++) {
    const lw_verdict_reason *r = &to->reasons->reason[i];
    bool same = r->answer == because->answer && r->who == because->who;
    if (same && (!r->assumed || because->origin == LW_ASSUMED)) return true;
  }
  return false;
}

/* Who must see it, and whether that rests only on what is not known. */
static void call(lw_verdict *verdict, const lw_because *because) {
  if (because->answer != LW_ANSWER_WHO || because->who < verdict->who) return;
  if (because->who > verdict->who) {
    verdict->called_for_certain = false;
    verdict->rests_on = NULL;
  }
  verdict->who = because->who;
  bool unknown = because->origin == LW_ASSUMED || because->left_out;
  verdict->called_for_certain = verdict->called_for_certain || !unknown;
  if (unknown && !verdict->rests_on) verdict->rests_on = because->left_out ? because->left_out : "";
}

static lw_verdict_reason *reason_new(lw_reaching *to, const lw_because *because) {
  lw_reasons *reasons = to->reasons;
  call(to->verdict, because);
  if (to->detail < LW_DETAIL_EVERYTHING && outdone(to, because)) return NULL;
  if (reasons->count >= LW_REASONS_MAX || asked_already(reasons, because)) return NULL;
  if (!because->again && said_already(reasons, because)) return NULL;
  lw_verdict_reason *r = &reasons->reason[reasons->count++];
  r->answer = because->answer;
  r->who = because->who;
  r->assumed = because->origin == LW_ASSUMED;
  r->text[0] = '\0';
  r->slug = because->slug;
  r->source = because->source ? because->source : "";
  r->left_out = because->left_out;
  return r;
}

lw_verdict_reason *lw_reasons_new(lw_reaching *to, const lw_because *because) {
  if (because->answer != LW_ANSWER_WHO || because->origin != LW_ASSUMED) return reason_new(to, because);
  lw_because question = *because;
  if (question.who > LW_WHO_COUNCIL) question.who = LW_WHO_COUNCIL;
  return reason_new(to, &question);
}

const char *lw_reasons_question(const char *left_out, char *out, size_t size) {
  int number;
  const lw_item *item = lw_item_find(left_out, strlen(left_out), &number);
  bool asks = item && item->question[0] != '\0';
  lw_print(out, size, "the sheet leaves out %s%s%s%s", left_out, asks ? " (" : "", asks ? item->question : "",
           asks ? ")" : "");
  return out;
}

void lw_reasons_ask(lw_reaching *to, const char *slug, const char *source, const char *left_out) {
  char question[LW_CLAUSE_MAX];
  lw_verdict_reason *r = lw_reasons_new(to, &(lw_because){.answer = LW_ANSWER_WHO,
                                                          .who = LW_WHO_COUNCIL,
                                                          .origin = LW_ASSUMED,
                                                          .slug = slug,
                                                          .source = source,
                                                          .left_out = left_out,
                                                          .again = true});
  if (!r) return;
  lw_print(r->text, sizeof r->text, "%s.", lw_reasons_question(left_out, question, sizeof question));
  r->text[0] = 'T';
}

void lw_reasons_add(lw_reaching *to, const lw_because *because, const char *text) {
  lw_verdict_reason *r = lw_reasons_new(to, because);
  if (r) lw_print(r->text, sizeof r->text, "%s", text);
}

lw_digits lw_digits_of(double value, int decimals) {
  lw_digits digits;
  lw_number_print(digits.text, sizeof digits.text, value, decimals);
  return digits;
}

lw_digits lw_two_decimals(double value) {
  return lw_digits_of(value, 2);
}

lw_away lw_reasons_away(const lw_quantity *q, const lw_amount *said) {
  lw_away away;
  bool assumed = q->origin == LW_ASSUMED;
  lw_print(away.text, sizeof away.text, assumed ? "at a distance not known, so taken as %s" : "%s away",
           said->text);
  return away;
}

const lw_verdict_reason *lw_reasons_first(const lw_reasons *reasons, lw_answer answer, lw_who who) {
  const lw_verdict_reason *best = NULL;
  for (int i = 0; i < reasons->count; i++) {
    const lw_verdict_reason *r = &reasons->reason[i];
    if (r->answer != answer || r->who != who) continue;
    if (!best || (best->assumed && !r->assumed)) best = r;
  }
  return best;
}
