/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"
#include "balance/weigh.h"
#include "report/page.h"
#include "report/text/said.h"
#include "report/text/unchecked.h"

/* Every situation that decides, each check at its worst over the joints; then what is not checked, in the
 * same letters. */

/* Whether no other of its kind is graver, nor as grave and before it. */
static bool is_worst(const lw_situation *s, int index, const lw_check *check) {
  for (int i = 0; i < s->check_count; i++) {
    lw_check other = lw_situation_check(s, i);
    if (i == index || other.kind != check->kind || other.at != check->at) continue;
    if (lw_check_graver(&other, check) || (i < index && !lw_check_graver(check, &other))) return false;
  }
  return true;
}

static void row(const lw_blocks *b, const lw_check *check) {
  char words[80], outcome[48], has[24], needs[24];
  lw_check_words(check, words, sizeof words);
  lw_check_outcome(check, outcome, sizeof outcome);
  lw_page_number(check->has, has, sizeof has);
  lw_page_number(check->needs, needs, sizeof needs);
  b->taker(b->context, &(lw_block){.kind = LW_BLOCK_CHECK,
                                   .label = words,
                                   .words = outcome,
                                   .has = has,
                                   .needs = needs,
                                   .strong = !check->counts || check->holds != LW_HOLDS});
}

static void unchecked(void *context, const lw_unchecked *what) {
  const lw_blocks *b = *(const lw_blocks *const *)context;
  b->taker(b->context,
           &(lw_block){.kind = LW_BLOCK_WORDS, .label = what->slug, .words = what->text, .strong = true});
}

static void columns(const lw_blocks *b) {
  b->taker(b->context, &(lw_block){.kind = LW_BLOCK_COLUMNS,
                                   .label = "resistance over demand",
                                   .words = "outcome",
                                   .has = "has",
                                   .needs = "needs"});
}

static bool is_shown(const lw_situation *s) {
  for (int i = 0; i < s->check_count; i++)
    if (lw_situation_check(s, i).holds != LW_CANNOT_SHOW) return true;
  return false;
}

static bool any_is_shown(const lw_situations *all) {
  for (int i = 0; i < all->count; i++)
    if (all->situation[i].decides && is_shown(&all->situation[i])) return true;
  return false;
}

/* The grade, and both looks where the wall does not hold: never the likely one alone. */
static void grade(const lw_blocks *b) {
  char words[200];
  lw_grade of = b->result->verdict.grade;
  bool both = of != LW_GRADE_HOLDS && lw_looks_words(&b->result->looks, words, sizeof words)[0] != '\0';
  lw_block_say(b, LW_BLOCK_HEADING, "", "%s",
               any_is_shown(&b->result->situations) ? "By the checks below" : "No check could be shown");
  lw_block_say(b, LW_BLOCK_FACT, lw_grade_slug(of), "%s%s%s", lw_grade_sentence(of), both ? "; " : "",
               both ? words : "");
}

void lw_blocks_checks(const lw_blocks *blocks) {
  const lw_situations *all = &blocks->result->situations;
  grade(blocks);
  for (int i = 0; i < all->count; i++) {
    const lw_situation *s = &all->situation[i];
    if (!s->decides) continue;
    lw_block_say(blocks, LW_BLOCK_HEADING, "", "%s: %s", is_shown(s) ? "Checked" : "Not shown",
                 lw_situation_sentence(s->name));
    columns(blocks);
    for (int k = 0; k < s->check_count; k++) {
      lw_check check = lw_situation_check(s, k);
      if (is_worst(s, k, &check)) row(blocks, &check);
    }
  }
  lw_block_say(blocks, LW_BLOCK_HEADING, "", "Not checked");
  lw_unchecked_each(blocks->result, unchecked, &blocks);
}
