/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "parts.h"
#include "who.h"

/* Who must see it, and which works they are: what an officer reads first and files by. */

static void who(const lw_blocks *b) {
  char words[640];
  lw_precheck_who(&b->result->verdict, words, sizeof words);
  lw_block_say(b, LW_BLOCK_WHO, "", "Who must see it: %s.", words);
}

/* What is not given is room to write. */
static void field(const lw_blocks *b, const char *label, const lw_words *words) {
  if (words->text[0])
    lw_block_say(b, LW_BLOCK_FACT, label, "%s", words->text);
  else
    lw_block_say(b, LW_BLOCK_LINE, label, " ");
}

static void office(const lw_blocks *b) {
  const lw_case_about *about = &b->result->given.about;
  field(b, "applicant", &about->applicant);
  field(b, "address, lot", &about->address);
  field(b, "builder", &about->builder);
  field(b, "date of issue", &about->date);
}

void lw_blocks_works(const lw_blocks *b) {
  const lw_case_about *about = &b->result->given.about;
  who(b);
  lw_block_say(b, LW_BLOCK_HEADLINE, "", "%s", b->result->verdict.headline);
  lw_block_say(b, LW_BLOCK_HEADING, "", "The works");
  office(b);
  lw_block_say(b, LW_BLOCK_FACT, "place", "%s",
               about->place.text[0] ? about->place.text
                                    : "not given: the cautious default of the tables is used");
  if (about->title.text[0]) lw_block_say(b, LW_BLOCK_FACT, "title", "%s", about->title.text);
  if (about->mark.text[0]) lw_block_say(b, LW_BLOCK_FACT, "mark", "%s", about->mark.text);
  if (b->result->tables->replaced[0])
    lw_block_say(b, LW_BLOCK_FACT, "tables", "REPLACED, not those that lowwall comes with: %s",
                 b->result->tables->replaced);
  if (about->note.text[0]) lw_block_say(b, LW_BLOCK_FACT, "note", "%s", about->note.text);
  lw_block_say(b, LW_BLOCK_FACT, "what it is", "%s", lw_what_sentence(b->result->verdict.what));
}
