/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include <lowwall/report.h>

#include "parts.h"
#include "base/amounts.h"
#include "base/hash.h"
#include "report/text/limit_dates.h"
#include "report/text/said.h"
#include "sheet/said.h"
#include "verdict/limit_own.h"

/* What the pre-check says, in the order in which an officer asks. It claims nothing: it shows. */

static void heading(const lw_blocks *b, const char *words) {
  lw_block_say(b, LW_BLOCK_HEADING, "", "%s", words);
}

static void heights(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  heading(b, "Heights, as different laws measure them");
  for (int i = 0; i < LW_HEIGHT_KINDS; i++)
    lw_block_say(b, LW_BLOCK_FACT, lw_height_slug((lw_height_kind)i), "%s, %s",
                 lw_block_m(b, v->height_m[i]).text, lw_height_sentence((lw_height_kind)i));
  lw_block_say(b, LW_BLOCK_FACT, "to the pad", "%s, from the underside of the pad to the top",
               lw_block_m(b, v->total_to_pad_m).text);
}

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

/* The figure as it stands in the law, where that counts otherwise than the reader: an officer compares it. */
static lw_limit_figure own_figure(const lw_blocks *b, const lw_limit_row *row) {
  lw_limit_figure own = lw_limit_own(b->result->units, row, ", ", "");
  if (b->result->units == LW_UNITS_METRIC && lw_limit_counts_inches(row) && !row->of_default)
    lw_print(own.text, sizeof own.text, ", %s in the law", lw_metres(LW_UNITS_US, row->height_m, 2).text);
  return own;
}

/* Whose it is and when it was so; of the default's rows it is said once, above them. */
static void print_instrument(const lw_blocks *b, const lw_limit_row *row, char *out, size_t size) {
  char dates[160];
  const char *of = own_row(row) ? "" : "as of ";
  lw_limit_print_dates(b->result->tables, row, dates, sizeof dates);
  if (row->of_default && own_row(row))
    lw_print(out, size, "%s", row->from.source);
  else
    lw_print(out, size, "%s, %s. %s, %s%s", row->instrument, row->region, row->from.source, of, dates);
}

static void of_default(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  for (int i = 0; i < v->limit_count; i++) {
    const lw_limit_row *row = v->limit[i].row;
    if (!row->of_default || !own_row(row)) continue;
    lw_block_say(b, LW_BLOCK_WORDS, "", "%.*s: %s, %s.", (int)strcspn(row->id, "-"), row->id, row->instrument,
                 row->region);
    return;
  }
}

/* Clause, date and source of every row that was held against the wall; conditions where it is within one. */
static void limits(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  heading(b, "Limits on file held against it; confirm each with the authority");
  of_default(b);
  for (int i = 0; i < v->limit_count; i++) {
    const lw_limit_hit *hit = &v->limit[i];
    const lw_limit_row *row = hit->row;
    char instrument[900], words[LW_LIMIT_WORDS];
    print_instrument(b, row, instrument, sizeof instrument);
    const lw_apart apart = lw_metres_apart(b->result->units, row->height_m, hit->height_m, 2);
    lw_block_say(b, LW_BLOCK_FACT, row->id, "%s%s (%s), here %s: %s. %s%s", apart.one.text,
                 own_figure(b, row).text, lw_height_slug(row->measured), apart.other.text, trigger_words(hit),
                 instrument, lw_limit_print_words(hit, words, sizeof words));
  }
}

static void reasons(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  heading(b, "Why, by what is given and what is not known");
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    bool twice = i > 0 && strcmp(r->text, v->reasons.reason[i - 1].text) == 0;
    if (twice || lw_reason_said_before(v, i)) continue;
    bool own = strncmp(r->source, "[LOWWALL", 8) == 0 || r->source[0] == '\0';
    lw_block_say(b, LW_BLOCK_FACT, r->assumed ? "not known" : "given", "%s%s%s", r->text, own ? "" : " ",
                 own ? "" : r->source);
  }
}

/* Bytes of a sentence of a table, said in other units. */
enum { LW_TOLD_BYTES = 700 };

static void cautions(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  lw_units units = b->result->units;
  heading(b, "Cautions that fit this wall");
  for (int i = 0; i < v->reasons.caution_count; i++) {
    char hazard[LW_TOLD_BYTES], caution[LW_TOLD_BYTES];
    lw_block_say(b, LW_BLOCK_FACT, v->reasons.caution[i]->id, "%s. %s",
                 lw_amounts_told(units, v->reasons.caution[i]->hazard, hazard, sizeof hazard),
                 lw_amounts_told(units, v->reasons.caution[i]->caution, caution, sizeof caution));
  }
}

/* In groups of eight, as people read it out, half of it a line, for which no column is too narrow; --verify
 * takes it with and without the blanks. */
static void hash_line(const lw_blocks *b, const char *label, const char *hash, int first) {
  enum { GROUP = 8, GROUPS = 4 };
  char line[(GROUP + 1) * GROUPS + 1];
  size_t used = 0, length = strlen(hash);
  for (size_t i = (size_t)first; i < length && i < (size_t)first + GROUP * GROUPS; i++) {
    if (i > (size_t)first && i % GROUP == 0) line[used++] = ' ';
    line[used++] = hash[i];
  }
  line[used] = '\0';
  lw_block_say(b, LW_BLOCK_FACT, label, "%s", line);
}

/* What was typed beside the sheet is a part of it. */
static void hash_of(const lw_blocks *b, const char *hash) {
  const lw_words *date = &b->result->given.about.date;
  bool given = date->text[0] != '\0';
  hash_line(b, "hash", hash, 0);
  hash_line(b, "goes on", hash, (LW_HASH_HEX - 1) / 2);
  lw_block_say(
      b, LW_BLOCK_FACT, "to check",
      "lowwall precheck --verify HASH%s%s SHEET. It is of the sheet, of what was typed beside it (items, "
      "--date, --units), of the tables and the version.",
      given ? " --date " : "", given ? date->text : "");
}

/* The keys of all that is cited above. */
static void sources(const lw_blocks *b) {
  const lw_cited *cited = b->cited;
  char keys[LW_CITED_MAX * (LW_CITED_BYTES + 2)] = "";
  size_t used = 0;
  for (int i = 0; i < cited->count; i++) {
    lw_print(keys + used, sizeof keys - used, "%s%s", i > 0 ? ", " : "", cited->key[i]);
    used += strlen(keys + used);
  }
  if (cited->count == 0) return;
  heading(b, "Sources");
  lw_block_say(b, LW_BLOCK_FACT, "keys", "%s. docs/sources.md of lowwall says what each is.", keys);
}

/* Room to write, and what it takes to rerun the sheet. */
static void end(const lw_blocks *b, const char *hash) {
  heading(b, "Who takes responsibility");
  lw_block_say(b, LW_BLOCK_LINE, "name", " ");
  lw_block_say(b, LW_BLOCK_LINE, "licence", " ");
  lw_block_say(b, LW_BLOCK_LINE, "signature", " ");
  lw_block_say(b, LW_BLOCK_LINE, "date", " ");
  lw_block_say(b, LW_BLOCK_FACT, "program",
               "lowwall %s, a pre-check by calculation. It certifies nothing and claims no "
               "compliance with any code; the local code and a licensed engineer go before it.",
               LW_VERSION);
  hash_of(b, hash);
}

void lw_precheck_each(const lw_result *result, const char *hash, lw_block_taker taker, void *context) {
  lw_cited cited = {.count = 0};
  lw_blocks b = {result, taker, context, &cited};
  lw_blocks_works(&b);
  heights(&b);
  lw_block_say(&b, LW_BLOCK_SECTION, "", " ");
  lw_blocks_ground(&b);
  lw_blocks_checks(&b);
  lw_blocks_special(&b);
  reasons(&b);
  limits(&b);
  lw_blocks_neighbours(&b);
  cautions(&b);
  lw_blocks_inputs(&b);
  sources(&b);
  end(&b, hash);
}

lw_status lw_precheck_hash(const lw_case *c, const char *directory, char hex[LW_HASH_HEX], lw_error *error) {
  lw_text text = {0};
  lw_status status = LW_OK;
  const char *name;
  lw_hash hash;
  lw_case given = *c;
  lw_said_forget_idle(&given); /* what is not known was not given, unless an officer asks */
  lw_text_addf(&text, "lowwall %s\n", LW_VERSION);
  lw_sheet_write(&given, false, &text);
  for (size_t i = 0; status == LW_OK && (name = lw_tables_name_at(i)) != NULL; i++) {
    lw_text_addf(&text, "\n%s\n", name);
    status = lw_tables_csv(directory, name, &text, error);
  }
  if (status == LW_OK && text.failed)
    status = lw_error_set(error, LW_NO_MEMORY, LW_REASON_NONE, "no memory left");
  lw_hash_start(&hash);
  lw_hash_add(&hash, text.data, text.length);
  lw_text_free(&text);
  if (status == LW_OK) lw_hash_end(&hash, hex);
  return status;
}
