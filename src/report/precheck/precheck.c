/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include <lowwall/report.h>

#include "parts.h"
#include "base/canned.h"
#include "base/hash.h"
#include "report/text/said.h"
#include "sheet/said.h"

/* What the pre-check says, in the order in which an officer asks. It claims nothing: it shows. */

static void heading(const lw_blocks *b, const char *words) {
  lw_block_say(b, LW_BLOCK_HEADING, "", "%s", words);
}

/* Of a wall without a fence only where a limit counts one in. */
static bool is_with_fence(const lw_verdict *v) {
  bool counts = v->height_m[LW_HEIGHT_FENCE] > v->height_m[LW_HEIGHT_EXPOSED];
  for (int i = 0; i < v->limit_count; i++) counts = counts || v->limit[i].row->measured == LW_HEIGHT_FENCE;
  return counts;
}

static void heights(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  heading(b, "Heights, as different laws measure them");
  for (int i = 0; i < LW_HEIGHT_KINDS; i++) {
    if (i == LW_HEIGHT_FENCE && !is_with_fence(v)) continue;
    lw_block_say(b, LW_BLOCK_FACT, lw_height_slug((lw_height_kind)i), "%s, %s",
                 lw_block_m(b, v->height_m[i]).text, lw_height_sentence((lw_height_kind)i));
  }
  if (b->result->wall.site.pad.thickness_m > 0.0)
    lw_block_say(b, LW_BLOCK_FACT, "to the pad", "%s, from the underside of the pad to the top",
                 lw_block_m(b, v->total_to_pad_m).text);
}

static void reasons(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  heading(b, "Why: what is given, checked or not known");
  for (int i = 0; i < v->reasons.count; i++) {
    const lw_verdict_reason *r = &v->reasons.reason[i];
    bool twice = i > 0 && strcmp(r->text, v->reasons.reason[i - 1].text) == 0;
    if (twice || lw_reason_said_before(v, i)) continue;
    bool own = strncmp(r->source, "[LOWWALL", 8) == 0 || r->source[0] == '\0';
    const char *by = r->assumed ? "not known" : r->answer == LW_ANSWER_STANDS ? "checked" : "given";
    lw_block_say(b, LW_BLOCK_FACT, by, "%s%s%s", r->text, own ? "" : " ", own ? "" : r->source);
  }
}

static void cautions(const lw_blocks *b) {
  const lw_verdict *v = &b->result->verdict;
  lw_units units = b->result->units;
  heading(b, "Cautions that fit this wall");
  for (int i = 0; i < v->reasons.caution_count; i++) {
    char hazard[LW_SOURCE_MAX], caution[LW_NOTE_MAX];
    lw_block_say(b, LW_BLOCK_FACT, v->reasons.caution[i]->id, "%s. %s",
                 lw_canned_told(units, v->reasons.caution[i]->hazard, hazard, sizeof hazard),
                 lw_canned_told(units, v->reasons.caution[i]->caution, caution, sizeof caution));
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
  const char *given = date->text[0] ? " --date " : "";
  hash_line(b, "hash", hash, 0);
  hash_line(b, "goes on", hash, (LW_HASH_HEX - 1) / 2);
  lw_block_say(b, LW_BLOCK_FACT, "to check",
               "lowwall precheck --verify HASH%s%s SHEET. The hash is of the sheet, what was typed "
               "beside it (items, --date, --units), tables and version.",
               given, date->text);
}

/* Room to write, and what it takes to rerun the sheet. */
static void end(const lw_blocks *b, const char *hash) {
  heading(b, "Who takes responsibility");
  lw_block_say(b, LW_BLOCK_LINE, "name", " ");
  lw_block_say(b, LW_BLOCK_LINE, "signature", " ");
  lw_block_say(b, LW_BLOCK_HALF_LINE, "licence", " ");
  lw_block_say(b, LW_BLOCK_HALF_LINE, "date", " ");
  lw_block_say(b, LW_BLOCK_FACT, "program",
               "lowwall %s, a pre-check by calculation. It certifies nothing and claims no "
               "compliance with any code; the local code and a licensed engineer go before it.",
               LW_VERSION);
  lw_block_say(b, LW_BLOCK_FACT, "[sources]", "docs/sources.md of lowwall says what each is");
  hash_of(b, hash);
}

void lw_precheck_each(const lw_result *result, const char *hash, lw_block_taker taker, void *context) {
  lw_blocks b = {result, taker, context};
  lw_blocks_works(&b);
  heights(&b);
  lw_block_say(&b, LW_BLOCK_SECTION, "", " ");
  lw_blocks_ground(&b);
  lw_blocks_checks(&b);
  lw_blocks_special(&b);
  reasons(&b);
  lw_blocks_limits(&b);
  lw_blocks_neighbours(&b);
  cautions(&b);
  lw_blocks_inputs(&b);
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
