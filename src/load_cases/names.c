/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/checks.h>

#include <string.h>

#include "base/canned.h"
#include "tables/quote.h"
#include "kinds.h"
#include "tables/known.h"

/* What a check and a situation are called: by programs, and when one speaks to people. */

#define SLUG_OF(name, slug, words, sentence) slug,
#define WORDS_OF(name, slug, words, sentence) words,
#define SENTENCE_OF(name, slug, words, sentence) sentence,
#define WHY_OF(name, sentence) sentence,

const char *lw_situation_slug(lw_situation_name name) {
  static const char *const slugs[] = {LW_SITUATIONS(SLUG_OF)};
  return slugs[name];
}

const char *lw_situation_short(lw_situation_name name) {
  static const char *const words[] = {LW_SITUATIONS(WORDS_OF)};
  return words[name];
}

const char *lw_situation_sentence(lw_situation_name name) {
  static const char *const sentences[] = {LW_SITUATIONS(SENTENCE_OF)};
  return sentences[name];
}

/* A sentence quotes one figure at most. */
void lw_situation_why_words(lw_situation_why why, const lw_tables *tables, lw_units units, char *out,
                            size_t size) {
  static const char *const sentences[] = {LW_SITUATION_WHYS(WHY_OF)};
  const char *sentence = sentences[why];
  size_t open = strcspn(sentence, "{"), quoted = strcspn(sentence + open, "}");
  char figure[LW_QUOTE_MAX], told[LW_QUOTE_MAX];
  lw_print(out, size, "%s", sentence);
  if (sentence[open] == '\0' || !lw_quote(tables, sentence + open + 1, quoted - 1, figure, sizeof figure))
    return;
  lw_print(out, size, "%.*s%s%s", (int)open, sentence, lw_canned_told(units, figure, told, sizeof told),
           sentence + open + quoted + 1);
}

const char *lw_situation_kind_slug(lw_situation_kind kind) {
  static const char *const slugs[] = {
      [LW_USUAL] = "usual", [LW_UNUSUAL] = "unusual", [LW_EXTREME] = "extreme", [LW_WHAT_IF] = "what-if"};
  return slugs[kind];
}

lw_doubt lw_check_doubt(const lw_wall *wall, const lw_check *check) {
  int need = check->by ? check->by->need : LW_FACTOR_COUNT;
  if (need == LW_FACTOR_COMPRESSION_WEAK) return wall->base_doubt;
  return need == LW_FACTOR_SLIP_DOUBTFUL ? wall->slip_doubt : LW_DOUBT_NONE;
}

const char *lw_doubt_slug(lw_doubt doubt) {
#define DOUBT_SLUG(name, slug, words) slug,
  static const char *const slugs[] = {LW_DOUBTS(DOUBT_SLUG)};
  return slugs[doubt];
}

const char *lw_doubt_words(lw_doubt doubt) {
#define DOUBT_WORDS(name, slug, words) words,
  static const char *const words[] = {LW_DOUBTS(DOUBT_WORDS)};
  return words[doubt];
}

void lw_check_words(const lw_check *check, char *out, size_t size) {
  const char *words = lw_check_about_of(check->kind)->at[check->at];
  lw_print(out, size, words ? words : "", check->joint);
}

void lw_check_print_at(const lw_check *check, char *out, size_t size) {
  static const char *const AT[] = {
      [LW_AT_BASE] = "base", [LW_AT_PAD] = "pad", [LW_AT_CAP] = "cap", [LW_AT_GROUND] = "ground"};
  char number[16];
  if (check->at != LW_AT_JOINT) {
    lw_print(out, size, "%s", AT[check->at]);
    return;
  }
  lw_number_print(number, sizeof number, check->joint, 0);
  lw_print(out, size, "joint-%s", number);
}
