/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "parts.h"
#include "report/text/limit_dates.h"
#include "verdict/limit_own.h"

/* The limits of laws and of this project that were held against the wall. */

static const char *trigger_words(const lw_limit_hit *hit) {
  switch (hit->row->trigger) {
  case LW_EXEMPT_BELOW:
    if (hit->past) return "past its exemption";
    return hit->kept ? "within its exemption, on its conditions" : "not past it, its conditions not met";
  case LW_APPROVAL_ABOVE: return hit->past ? "asks for an approval" : "asks for an approval above that";
  case LW_ENGINEER_ABOVE: return hit->past ? "asks for an engineer" : "asks for an engineer above that";
  case LW_DESIGN_ABOVE:
    if (hit->row->of_standard) return hit->past ? "begins to apply" : "begins to apply above that";
    return hit->past ? "asks for a design" : "asks for a design above that";
  case LW_BARRIER_ABOVE: return hit->past ? "asks about a barrier" : "asks about a barrier above that";
  }
  return "";
}

/* A row of this project's has no date. */
static bool own_row(const lw_limit_row *row) {
  return strcmp(row->status, "own") == 0;
}

/* The default's rows have one instrument, region and key, which stand above them. */
static bool default_row(const lw_limit_row *row) {
  return row->of_default && own_row(row);
}

/* Bytes of the key that a source begins with; 0: none. */
static size_t key_length(const char *source) {
  const char *end = strchr(source, ']');
  return source[0] == '[' && end ? (size_t)(end - source) + 1 : 0;
}

/* Whose it is and when it was so. */
static void print_instrument(const lw_blocks *b, const lw_limit_row *row, char *out, size_t size) {
  char dates[160];
  const char *of = own_row(row) ? "" : "as of ";
  lw_limit_print_dates(b->result->tables, row, dates, sizeof dates);
  if (default_row(row))
    lw_print(out, size, ",%s", row->from.source + key_length(row->from.source));
  else
    lw_print(out, size, ". %s, %s. %s, %s%s", row->instrument, row->region, row->from.source, of, dates);
}

static void of_default(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  for (int i = 0; i < v->limit_count; i++) {
    const lw_limit_row *row = v->limit[i].row;
    const char *source = row->from.source;
    if (!default_row(row)) continue;
    lw_block_say(b, LW_BLOCK_WORDS, "", "%.*s: %s, %s. %.*s", (int)strcspn(row->id, "-"), row->id,
                 row->instrument, row->region, (int)key_length(source), source);
    return;
  }
}

/* Clause, date and source of every row that was held against the wall; conditions where it is within one. */
void lw_blocks_limits(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  lw_block_say(b, LW_BLOCK_HEADING, "", "Limits on file; confirm each with the authority");
  of_default(b);
  for (int i = 0; i < v->limit_count; i++) {
    const lw_limit_hit *hit = &v->limit[i];
    const lw_limit_row *row = hit->row;
    char instrument[900], words[LW_LIMIT_WORDS];
    print_instrument(b, row, instrument, sizeof instrument);
    const lw_apart apart = lw_metres_apart(b->result->units, row->height_m, hit->height_m, 2);
    lw_block_say(b, LW_BLOCK_FACT, row->id, "%s%s (%s), here %s: %s%s%s", apart.one.text,
                 lw_limit_own(b->result->units, row, ", ", "").text, lw_height_slug(row->measured),
                 apart.other.text, trigger_words(hit), instrument,
                 lw_limit_print_words(hit, b->result->units, words, sizeof words));
  }
}
