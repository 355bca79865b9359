/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "items_document.h"

#include <string.h>

#include "entry.h"

/* The tables of docs/sheet.md, from the one table of items: document and program cannot drift apart. */

static void add_default(const lw_item *item, lw_text *out) {
  char said[64];
  if (item->type == LW_ITEM_WORDS || isnan(item->assumed)) {
    lw_text_add(out, "-");
  } else if (item->type == LW_ITEM_CHOICE) {
    lw_text_add(out, lw_item_word(item, (int)item->assumed, said, sizeof said));
  } else {
    lw_item_say(item, item->assumed, said, sizeof said);
    lw_text_add(out, said);
  }
}

static void add_takes(const lw_item *item, lw_text *out) {
  char low[64];
  char high[64];
  if (item->type == LW_ITEM_WORDS) {
    lw_text_addf(out, "words, at most %d bytes", LW_WORDS_MAX - 1);
  } else if (item->type == LW_ITEM_CHOICE) {
    lw_item_list_words(item, low, sizeof low);
    lw_text_add(out, low);
  } else {
    lw_item_say(item, item->low, low, sizeof low);
    lw_item_say(item, item->high, high, sizeof high);
    lw_text_addf(out, "%s to %s", low, high);
    lw_text_add(out, item->kind == LW_KIND_ANGLE_OR_SHARE ? ", or a share from 0 to 1" : "");
    lw_text_add(out, item->also == LW_KIND_ANGLE   ? ", or an angle"
                     : item->also == LW_KIND_FORCE ? ", or in kN"
                                                   : "");
  }
}

static void add_unit(const lw_item *item, lw_text *out) {
  lw_text_add(out, item->type != LW_ITEM_QUANTITY ? "-" : item->unit[0] != '\0' ? item->unit : "1");
}

static void add_item(const lw_item *item, lw_text *out) {
  char name[LW_ITEM_NAME_MAX];
  lw_item_print_name(item, 0, name, sizeof name);
  lw_text_addf(out, "| `%s` | ", name);
  add_unit(item, out);
  lw_text_add(out, " | ");
  add_takes(item, out);
  lw_text_add(out, " | ");
  add_default(item, out);
  lw_text_addf(out, " | `%s` | %s", item->example, item->means);
  if (item->question[0] != '\0') {
    lw_text_addf(out, " *%s*", item->question);
  }
  lw_text_add(out, " |\n");
}

void lw_items_document(lw_text *out) {
  lw_item_part part = LW_ABOUT_NOTHING;
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    if (part != item->part) {
      part = item->part;
      lw_text_addf(out, "\n### %s\n\n", lw_item_part_words(part));
      lw_text_add(
          out,
          "| item | unit | takes | safe default | example | meaning, and the *question* that settles it |\n"
          "| --- | --- | --- | --- | --- | --- |\n");
    }
    add_item(item, out);
  }
}
