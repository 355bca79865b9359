/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <ctype.h>
#include <math.h>
#include <stdarg.h>
#include <string.h>

#include "base/print.h"

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

/* Why it falls short, or would move, goes before what cannot be shown. */
static const lw_verdict_reason *why_not(const lw_reaching *to) {
  const lw_verdict *v = to->verdict;
  const lw_reasons *why = to->reasons;
  bool told = v->stands == LW_FALLS_SHORT || v->grade == LW_GRADE_WOULD_MOVE;
  if (told && why->told >= 0) return &why->reason[why->told];
  for (int i = 0; i < why->count; i++) {
    if (why->reason[i].answer == LW_ANSWER_STANDS) return &why->reason[i];
  }
  return NULL;
}

static const char *how_it_fails(const lw_verdict *v) {
  if (v->grade == LW_GRADE_WOULD_MOVE) return "As drawn this wall would move: it";
  if (v->grade == LW_GRADE_MAY_MOVE) return "As drawn this wall may move; do not build it so: it";
  return v->stands == LW_FALLS_SHORT ? "As drawn this wall"
                                     : "Nobody can say from this sheet that the wall stands:";
}

/* Likely beside cautious, never alone. */
static void add_looks(const lw_looks *looks, char *out, size_t size) {
  char words[200];
  if (lw_looks_words(looks, words, sizeof words)[0] == '\0') return;
  add(out, size, " %c%s.", toupper((unsigned char)words[0]), words + 1);
}

static void does_not_stand(const lw_reaching *to, char *out, size_t size) {
  const lw_verdict_reason *r = why_not(to);
  char why[480] = "see the checks";
  if (r) lw_reasons_clause(r->text, why, sizeof why);
  add(out, size, "%s %s.", how_it_fails(to->verdict), why);
  if (to->verdict->grade == LW_GRADE_MAY_MOVE) add_looks(to->looks, out, size);
}

/* The sentence first, whole: its reason, and what the sums say, come after it. */
static void engineer(const lw_reaching *to, char *out, size_t size) {
  const lw_verdict_reason *r = lw_reasons_first(to->reasons, LW_ANSWER_WHO, LW_WHO_ENGINEER);
  const lw_verdict_reason *stands = to->verdict->stands == LW_HOLDS ? NULL : why_not(to);
  add(out, size,
      "This is past the simple garden-bed limit: a licensed engineer must design it under the local code "
      "before work starts.");
  if (r) add(out, size, " %c%s", toupper((unsigned char)r->text[0]), r->text + 1);
  bool twice = r && stands && strcmp(r->text, stands->text) == 0;
  if (!stands || twice) return;
  add(out, size, " ");
  does_not_stand(to, out, size);
}

static void council(const lw_reasons *reasons, char *out, size_t size) {
  char why[480] = "see the reasons";
  const lw_verdict_reason *r = lw_reasons_first(reasons, LW_ANSWER_WHO, LW_WHO_COUNCIL);
  if (r) lw_reasons_clause(r->text, why, sizeof why);
  add(out, size, "Ask the council before building: %s.", why);
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
           "Every deciding check holds, and it is below the limit on file for %s (%.2f m, %s, %s); confirm "
           "with the "
           "authority.",
           place_of(f, row), row->height_m, row->from.source, row->as_of);
}

void lw_verdict_headline(const lw_facts *facts, lw_reaching *to) {
  lw_verdict *verdict = to->verdict;
  char *out = verdict->headline;
  size_t size = sizeof verdict->headline;
  out[0] = '\0';
  if (verdict->who == LW_WHO_ENGINEER) {
    engineer(to, out, size);
  } else if (verdict->stands != LW_HOLDS) {
    does_not_stand(to, out, size);
    if (verdict->who == LW_WHO_COUNCIL) add(out, size, " Ask the council too, before building.");
  } else if (verdict->who == LW_WHO_COUNCIL) {
    council(to->reasons, out, size);
  } else {
    below(facts, verdict, out, size);
  }
}
