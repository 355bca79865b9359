/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "parts.h"
#include "said.h"

/* The wall under every set of factors, side by side. */

/* What a reader may take from a line: a set that must not decide never says that the wall holds. */
static void outcome_of(const lw_factor_set_answer *a, char *out, size_t size) {
  bool reached = a->governed && a->check.ratio.known && a->check.ratio.value >= 1.0 - 1e-12;
  if (!a->governed) {
    lw_print(out, size, "%s", a->stands == LW_HOLDS ? "nothing pushes" : "asks nothing");
  } else if (a->stands == LW_CANNOT_SHOW && reached && !a->decides) {
    lw_print(out, size, "not for decisions");
  } else if (a->stands == LW_CANNOT_SHOW && reached && a->part) {
    lw_print(out, size, "reached: a part");
  } else {
    lw_check_outcome(&a->check, out, size);
  }
}

static void print_answer(const lw_page *page, const lw_factor_set_answer *a) {
  char outcome[40], has[24], needs[24], ratio[24], words[48];
  lw_page_number(a->check.has, has, sizeof has);
  lw_page_number(a->check.needs, needs, sizeof needs);
  lw_page_number(a->check.ratio, ratio, sizeof ratio);
  outcome_of(a, outcome, sizeof outcome);
  lw_page_rowf(page, a->stands == LW_FALLS_SHORT ? LW_TONE_BAD : LW_TONE_PLAIN,
               "  |%-24s|%7s|%7s|%7s  |%-21s |%s%s", a->row->factor_set, has, needs, ratio, outcome,
               a->memory ? "m" : "", a->proposal ? "p" : "");
  lw_page_sayf(page, "      ", "%s%s", a->row->title,
               a->decides || strstr(a->row->title, "not for decisions") ? "" : ": not for decisions");
  if (!a->governed) return;
  lw_check_words(&a->check, words, sizeof words);
  lw_page_sayf(page, "      ", "%s, %s", words, lw_situation_short(a->situation));
}

void lw_text_factor_sets(const lw_page *page, const lw_result *result) {
  const lw_factor_sets *factor_sets = &result->factor_sets;
  bool part = false, kept = false;
  if (factor_sets->count == 0) return;
  lw_page_heading(page, "The same wall under every set of factors on file, what governs in each");
  lw_page_headf(page, "  |%-24s|%7s|%7s|%7s  |%-21s |%s%s", "", "has", "needs", "ratio", "", "", "");
  for (int i = 0; i < factor_sets->count; i++) {
    print_answer(page, &factor_sets->answer[i]);
    part = part || factor_sets->answer[i].part;
    kept = kept || !factor_sets->answer[i].decides;
  }
  lw_page_say(
      page, "  ",
      "The verdict above is that of this sheet's own set. A ratio of one set says nothing of another: "
      "each asks in its own way, and has and needs of partial factors are design values.");
  if (part)
    lw_page_say(page, "  ",
                "A part: one combination of a code that asks for several together; the set that includes it "
                "says whether all hold.");
  if (kept)
    lw_page_say(
        page, "  ",
        "Not for decisions: those numbers are from memory, unread in print, or a proposal; the row `decides` "
        "of each set says which (lowwall list formats).");
  lw_page_say(page, "  ", "m: some number of the set is from memory; p: some is a proposal of this project.");
}
