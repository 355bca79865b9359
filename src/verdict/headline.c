/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>
#include <string.h>

/* The first line of every report. It never tells anyone to go ahead: at most that the wall is below the
 * limit on file, and that the authority confirms. */

static void engineer(const lw_verdict *v, char *out, size_t size) {
  char why[480] = "see the reasons";
  const lw_verdict_reason *r = lw_reasons_first(v, LW_ANSWER_WHO, LW_WHO_ENGINEER);
  if (r) lw_reasons_clause(r->text, why, sizeof why);
  lw_print(out, size,
           "This is past the simple garden-bed limit (%s). A licensed engineer must design it under the "
           "local code "
           "before work starts.",
           why);
}

static void council(const lw_verdict *v, char *out, size_t size) {
  char why[480] = "see the reasons";
  const lw_verdict_reason *r = lw_reasons_first(v, LW_ANSWER_WHO, LW_WHO_COUNCIL);
  if (r) lw_reasons_clause(r->text, why, sizeof why);
  lw_print(out, size, "Ask the council before building: %s.", why);
}

static void does_not_stand(const lw_verdict *v, char *out, size_t size) {
  const lw_verdict_reason *r = NULL;
  for (int i = 0; i < v->reason_count && !r; i++) {
    if (v->reason[i].answer == LW_ANSWER_STANDS) r = &v->reason[i];
  }
  char why[480] = "see the checks";
  if (r) lw_reasons_clause(r->text, why, sizeof why);
  const char *begin = v->stands == LW_FALLS_SHORT ? "As drawn this wall does not stand"
                                                  : "Nobody can say from this sheet that the wall stands";
  const char *then = v->who == LW_WHO_COUNCIL ? " Ask the council too, before building." : "";
  lw_print(out, size, "%s: %s.%s", begin, why, then);
}

/* A line that asks for someone's word, not a fall or the scope of a standard. */
static bool asks_for_leave(lw_trigger trigger) {
  return trigger == LW_EXEMPT_BELOW || trigger == LW_APPROVAL_ABOVE || trigger == LW_ENGINEER_ABOVE;
}

/* The row that the wall comes nearest to, of those it is below. */
static const lw_limit_hit *nearest(const lw_verdict *v) {
  const lw_limit_hit *best = NULL;
  for (int i = 0; i < v->limit_count; i++) {
    const lw_limit_hit *hit = &v->limit[i];
    if (hit->past || !asks_for_leave(hit->row->trigger)) continue;
    if (!best || hit->row->height_m - hit->height_m < best->row->height_m - best->height_m) best = hit;
  }
  return best;
}

static const char *place_of(const lw_facts *f, const lw_limit_row *row) {
  if (!f->place_known) return "a place that is not known";
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

void lw_verdict_headline(const lw_facts *facts, lw_verdict *verdict) {
  char *out = verdict->headline;
  size_t size = sizeof verdict->headline;
  if (verdict->who == LW_WHO_ENGINEER) {
    engineer(verdict, out, size);
  } else if (verdict->stands != LW_HOLDS) {
    does_not_stand(verdict, out, size);
  } else if (verdict->who == LW_WHO_COUNCIL) {
    council(verdict, out, size);
  } else {
    below(facts, verdict, out, size);
  }
}
