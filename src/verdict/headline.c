/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <ctype.h>
#include <math.h>
#include <stdarg.h>
#include <string.h>

#include "base/print.h"
#include "limit_own.h"
#include "telling.h"

/* The first line of every report. It never tells anyone to go ahead: at most that the wall is below the
 * limit on file, and that the authority confirms. */

/* Onto what is there already. */
static void add(char *out, size_t size, const char *format, ...) __attribute__((format(printf, 3, 4)));
static void add(char *out, size_t size, const char *format, ...) {
  size_t used = strlen(out);
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(out + used, size - used, format, arguments);
  va_end(arguments);
}

/* What is to be said: the verdict, its reasons, and what was found. */
typedef struct lw_saying {
  const lw_reaching *to;
  const lw_situations *situations;
} lw_saying;

static bool tells_of_check(const lw_reaching *to) {
  const lw_verdict *v = to->verdict;
  return to->reasons->told >= 0 && (v->stands == LW_FALLS_SHORT || v->grade == LW_GRADE_WOULD_MOVE);
}

/* Why it falls short, or would move, goes before what cannot be shown. */
static const lw_verdict_reason *why_not(const lw_reaching *to) {
  const lw_reasons *why = to->reasons;
  if (tells_of_check(to)) return &why->reason[why->told];
  for (int i = 0; i < why->count; i++) {
    if (why->reason[i].answer == LW_ANSWER_STANDS) return &why->reason[i];
  }
  return NULL;
}

static const char *grade_words(const lw_verdict *v) {
  if (v->grade == LW_GRADE_WOULD_MOVE) return "It would move; do not build it so.";
  if (v->grade == LW_GRADE_MAY_MOVE) return "It may move; do not build it so.";
  if (v->stands != LW_FALLS_SHORT) return "Nobody can say from this sheet that it stands.";
  return v->falls == LW_SHORT_BY_DESIGN ? "It does not stand by its design values, which hold the margin."
                                        : "It has less margin than asked.";
}

/* Likely beside cautious, never alone. gives whether there was anything to say */
static bool add_looks(const lw_looks *looks, char *out, size_t size) {
  char words[200];
  if (lw_looks_words(looks, words, sizeof words)[0] == '\0') return false;
  add(out, size, " %c%s.", toupper((unsigned char)words[0]), words + 1);
  return true;
}

/* Both looks have said how much it has: then only where. */
static void add_check(const lw_saying *saying, bool looks_said, char *out, size_t size) {
  const lw_verdict *v = saying->to->verdict;
  const lw_situation *s = &saying->situations->situation[v->told_situation];
  const lw_check check = lw_situation_check(s, v->told_check);
  char clause[LW_CLAUSE_MAX];
  if (looks_said) {
    lw_telling_name(&check, s, clause, sizeof clause);
    add(out, size, " Worst is %s.", clause);
    return;
  }
  lw_telling_check(&check, s, clause, sizeof clause);
  add(out, size, " %c%s.", toupper((unsigned char)clause[0]), clause + 1);
}

static void does_not_stand(const lw_saying *saying, char *out, size_t size) {
  const lw_reaching *to = saying->to;
  const lw_verdict_reason *r = why_not(to);
  add(out, size, "%s", grade_words(to->verdict));
  bool looks_said = to->verdict->grade == LW_GRADE_MAY_MOVE && add_looks(to->looks, out, size);
  if (tells_of_check(to))
    add_check(saying, looks_said, out, size);
  else
    add(out, size, " %s", r ? r->text : "See the checks.");
}

/* The sentence first, whole: its reason, and what the sums say, come after it. */
static void engineer(const lw_saying *saying, char *out, size_t size) {
  const lw_reaching *to = saying->to;
  const lw_verdict_reason *r = lw_reasons_first(to->reasons, LW_ANSWER_WHO, LW_WHO_ENGINEER);
  const lw_verdict_reason *stands = to->verdict->stands == LW_HOLDS ? NULL : why_not(to);
  add(out, size,
      "This is past the simple garden-bed limit: a licensed engineer must design it under the local code "
      "before work starts.");
  if (r) add(out, size, " %s", r->text);
  bool twice = r && stands && strcmp(r->text, stands->text) == 0;
  if (!stands || twice) return;
  add(out, size, " ");
  does_not_stand(saying, out, size);
}

static void council(const lw_reasons *reasons, char *out, size_t size) {
  const lw_verdict_reason *r = lw_reasons_first(reasons, LW_ANSWER_WHO, LW_WHO_COUNCIL);
  add(out, size, "Ask the council before building. %s", r ? r->text : "See the reasons.");
}

/* The row that the wall comes nearest to, of those that may clear it. */
static const lw_limit_hit *nearest(const lw_verdict *v) {
  const lw_limit_hit *best = NULL;
  for (int i = 0; i < v->limit_count; i++) {
    const lw_limit_hit *hit = &v->limit[i];
    if (hit->past || !hit->clears) continue;
    if (!best || hit->row->height_m - hit->height_m < best->row->height_m - best->height_m) best = hit;
  }
  return best;
}

const lw_limit_hit *lw_verdict_limit(const lw_verdict *verdict) {
  const lw_limit_hit *passed = NULL;
  for (int i = 0; i < verdict->limit_count; i++) {
    const lw_limit_hit *hit = &verdict->limit[i];
    bool fits = (hit->row->trigger == LW_ENGINEER_ABOVE) == (verdict->who == LW_WHO_ENGINEER);
    bool fitted = passed && (passed->row->trigger == LW_ENGINEER_ABOVE) == (verdict->who == LW_WHO_ENGINEER);
    if (hit->past && (!passed || (fits && !fitted))) passed = hit;
  }
  return passed ? passed : nearest(verdict);
}

static const char *place_of(const lw_facts *f, const lw_limit_row *row) {
  if (f->c->about.place.origin == LW_ABSENT) return "a place that is not known";
  if (!f->place_known) return "a place that has none of its own on file";
  return strcmp(row->region, "national") == 0 ? row->country : row->region;
}

static void below(const lw_facts *f, const lw_verdict *v, char *out, size_t size) {
  const lw_limit_hit *hit = nearest(v);
  if (!hit) {
    lw_print(out, size,
             "Every deciding check holds, but no limit is on file for this place; ask the authority.");
    return;
  }
  const lw_limit_row *row = hit->row;
  lw_print(out, size,
           "Every deciding check holds, and it is below the limit on file for %s (%s%s, %s, %s); confirm "
           "with the "
           "authority.",
           place_of(f, row), lw_metres(f->units, row->height_m, 2).text,
           lw_limit_own(f->units, row, ", ", "").text, row->from.source, row->as_of);
}

void lw_verdict_headline(const lw_facts *facts, const lw_situations *situations, lw_reaching *to) {
  const lw_saying saying = {to, situations};
  lw_verdict *verdict = to->verdict;
  char *out = verdict->headline;
  size_t size = sizeof verdict->headline;
  out[0] = '\0';
  if (verdict->who == LW_WHO_ENGINEER) {
    engineer(&saying, out, size);
  } else if (verdict->stands != LW_HOLDS) {
    does_not_stand(&saying, out, size);
    if (verdict->who == LW_WHO_COUNCIL) add(out, size, " Ask the council too, before building.");
  } else if (verdict->who == LW_WHO_COUNCIL) {
    council(to->reasons, out, size);
  } else {
    below(facts, verdict, out, size);
  }
}
