/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "parts.h"
#include "said.h"
#include "screen.h"
#include "shorten.h"

/* The answer: the headline, which wall, the three answers, and of their reasons those it does not give. */

enum { HEADLINE_LINES = 7, REASON_LINES = 2, MARK_CHARACTERS = 24 };

/* Of a headline that is too long these sentences stay beside the first: what the sums say of the wall. */
static const char *const STAYS[] = {"It would move;", "It may move;", "It has less margin ",
                                    "It does not stand ", "Nobody can say "};

static bool stays(const char *sentence) {
  for (size_t i = 0; i < sizeof STAYS / sizeof *STAYS; i++)
    if (strncmp(sentence, STAYS[i], strlen(STAYS[i])) == 0) return true;
  return false;
}

/* The first sentence and the one that stays; the others as long as there is room. */
static void headline_of(const lw_page *page, const char *whole, char *out, size_t size) {
  const char *kept = "";
  for (const char *s = lw_shorten_next(whole); *s != '\0' && !kept[0]; s = lw_shorten_next(s))
    if (stays(s)) kept = s;
  lw_print(out, size, "%s", whole);
  if (lw_shorten_lines(page, "", out) <= HEADLINE_LINES) return;
  int before = HEADLINE_LINES - (kept[0] ? lw_shorten_lines(page, "", kept) : 0);
  lw_print(out, size, "%.*s", (int)(strlen(whole) - strlen(kept)), whole);
  if (kept[0] && out[0]) out[strlen(out) - 1] = '\0';
  lw_shorten_sentences(page, "", before, out);
  size_t used = strlen(out);
  lw_print(out + used, size - used, "%s%s", kept[0] ? " " : "", kept);
  lw_shorten_sentences(page, "", HEADLINE_LINES, out);
  lw_shorten_to(HEADLINE_LINES * 70, out);
}

static void headline(lw_screen *screen, const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  char whole[sizeof v->headline], shown[sizeof v->headline + 4];
  lw_text_faulty(&screen->page, result);
  lw_print(whole, sizeof whole, "%s", v->headline);
  lw_shorten_keys(whole);
  headline_of(&screen->page, whole, shown, sizeof shown);
  lw_page_headline(&screen->page, lw_text_tone(v), shown);
  if (result->tables->replaced[0]) {
    lw_print(shown, sizeof shown, "Made with replaced tables: %s.", result->tables->replaced);
    lw_shorten_to(LW_SCREEN_COLUMNS, shown);
    lw_page_linef(&screen->page, LW_TONE_PLAIN, "%s", shown);
  }
  lw_screen_piece(screen, LW_SCREEN_ANSWER, LW_STAYS);
}

static void title(lw_screen *screen, const lw_result *result) {
  char name[LW_WORDS_MAX], mark[LW_WORDS_MAX], line[2 * LW_WORDS_MAX + 4];
  lw_text_clean(result->given.about.title.text, name, sizeof name);
  lw_text_clean(result->given.about.mark.text, mark, sizeof mark);
  if (name[0]) lw_shorten_to(MARK_CHARACTERS, mark);
  lw_shorten_to(LW_SCREEN_COLUMNS - (mark[0] ? MARK_CHARACTERS + 3 : 0), name);
  lw_print(line, sizeof line, "%s%s%s", name, name[0] && mark[0] ? " - " : "", mark);
  lw_shorten_to(LW_SCREEN_COLUMNS, line);
  lw_page_blank(&screen->page);
  if (line[0]) lw_page_linef(&screen->page, LW_TONE_PLAIN, "%s", line);
  lw_screen_piece(screen, LW_SCREEN_ANSWER, LW_STAYS);
}

/* The gravest reason of an answer that is known, else the first that rests on one that is not. */
static const lw_verdict_reason *reason_of(const lw_verdict *v, lw_answer answer) {
  const lw_verdict_reason *best = NULL;
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    if (r->answer != answer || (answer == LW_ANSWER_WHO && r->who != v->who)) continue;
    if (!best || (best->assumed && !r->assumed)) best = r;
  }
  return best;
}

/* The headline begins a reason with a capital or without. */
static bool in_headline(const lw_verdict *v, const lw_verdict_reason *r) {
  char clause[sizeof r->text];
  lw_print(clause, sizeof clause, "%s", r->text + (r->text[0] ? 1 : 0));
  size_t length = strlen(clause);
  if (length > 0) clause[length - 1] = '\0';
  return strstr(v->headline, clause) != NULL;
}

static void because(lw_screen *screen, const lw_verdict *v, lw_answer answer, int gives) {
  static const char PREFIX[] = "                   ";
  const lw_verdict_reason *r = reason_of(v, answer);
  char text[sizeof r->text];
  if (!r || in_headline(v, r)) return;
  lw_print(text, sizeof text, "%s", r->text);
  lw_shorten_keys(text);
  lw_shorten_sentences(&screen->page, PREFIX, REASON_LINES, text);
  lw_page_say(&screen->page, PREFIX, text);
  lw_screen_piece(screen, LW_SCREEN_ANSWER, gives);
}

void lw_screen_answer(lw_screen *screen, const lw_result *result) {
  static const int gives[] = {[LW_ANSWER_WHAT] = 2, [LW_ANSWER_WHO] = 1};
  headline(screen, result);
  title(screen, result);
  for (int answer = LW_ANSWER_WHAT; answer <= LW_ANSWER_WHO; answer++) {
    lw_text_answer(&screen->page, result, (lw_answer)answer, false);
    lw_screen_piece(screen, LW_SCREEN_ANSWER, LW_STAYS);
    if (answer != LW_ANSWER_STANDS) because(screen, &result->verdict, (lw_answer)answer, gives[answer]);
  }
}
