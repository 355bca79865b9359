/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "reasons.h"

#include <ctype.h>
#include <string.h>

static bool said_already(const lw_verdict *verdict, const lw_because *because) {
  for (int i = 0; i < verdict->reason_count; i++) {
    const lw_verdict_reason *r = &verdict->reason[i];
    if (r->answer == because->answer && r->who >= because->who && strcmp(r->slug, because->slug) == 0)
      return true;
  }
  return false;
}

/* The headline never says what it is, nor why the lesser of two must see it, and takes the first that is
 * known before the first: see lw_reasons_first. */
static bool outdone(const lw_verdict *verdict, const lw_because *because) {
  bool lesser = because->answer == LW_ANSWER_WHO && because->who < verdict->who;
  if (because->answer == LW_ANSWER_WHAT || lesser) return true;
  for (int i = 0; i < verdict->reason_count; i++) {
    const lw_verdict_reason *r = &verdict->reason[i];
    bool same = r->answer == because->answer && r->who == because->who;
    if (same && (!r->assumed || because->origin == LW_ASSUMED)) return true;
  }
  return false;
}

lw_verdict_reason *lw_reasons_new(lw_verdict *verdict, const lw_because *because) {
  if (because->answer == LW_ANSWER_WHO && because->who > verdict->who) verdict->who = because->who;
  if (verdict->headline_only && outdone(verdict, because)) return NULL;
  if (verdict->reason_count >= LW_REASONS_MAX) return NULL;
  if (!because->again && said_already(verdict, because)) return NULL;
  lw_verdict_reason *r = &verdict->reason[verdict->reason_count++];
  r->answer = because->answer;
  r->who = because->who;
  r->assumed = because->origin == LW_ASSUMED;
  r->text[0] = '\0';
  r->slug = because->slug;
  r->source = because->source ? because->source : "";
  return r;
}

void lw_reasons_add(lw_verdict *verdict, const lw_because *because, const char *text) {
  lw_verdict_reason *r = lw_reasons_new(verdict, because);
  if (r) lw_print(r->text, sizeof r->text, "%s", text);
}

lw_digits lw_two_decimals(double value) {
  lw_digits digits;
  lw_number_print(digits.text, sizeof digits.text, value, 2);
  return digits;
}

const char *lw_reasons_distance(const lw_quantity *q, char *out, size_t size) {
  bool assumed = q->origin == LW_ASSUMED;
  lw_print(out, size, assumed ? "at a distance not known, so taken as %s m" : "%s m away",
           lw_two_decimals(q->si).text);
  return out;
}

void lw_reasons_clause(const char *text, char *out, size_t size) {
  lw_print(out, size, "%s", text);
  size_t length = strlen(out);
  if (length > 0 && out[length - 1] == '.') out[length - 1] = '\0';
  bool acronym = out[0] != '\0' && isupper((unsigned char)out[1]);
  if (!acronym) out[0] = (char)tolower((unsigned char)out[0]);
}

const lw_verdict_reason *lw_reasons_first(const lw_verdict *verdict, lw_answer answer, lw_who who) {
  const lw_verdict_reason *best = NULL;
  for (int i = 0; i < verdict->reason_count; i++) {
    const lw_verdict_reason *r = &verdict->reason[i];
    if (r->answer != answer || r->who != who) continue;
    if (!best || (best->assumed && !r->assumed)) best = r;
  }
  return best;
}
