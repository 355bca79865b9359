/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "parts.h"

/* What an officer asks besides, where the sheet does not say: one line, to ask by. What it says stands among
 * the reasons, and with all else that was given. */

/* Of the maps none need be named where the land is on none. */
void lw_blocks_untold(const lw_blocks *b) {
  const lw_case *c = &b->result->given;
  const lw_case_officer *o = &c->officer;
  bool on_none = c->site.mapped_land.origin == LW_GIVEN && c->site.mapped_land.value == LW_NO;
  const struct {
    const lw_choice *choice;
    const char *words;
  } asked[] = {{&o->rain_to, "where its rain water ends"},  {&o->easement, "easements"},
               {&o->protected_trees, "protected trees"},    {&o->flood_land, "land mapped for floods"},
               {&o->bushfire_land, "for bushfire"},         {&o->coast_land, "for the coast"},
               {&o->sight_lines, "sight lines of drivers"}, {&o->other_works, "what else is being built"},
               {&o->built_by, "who does the work"}};
  char list[300] = "";
  for (size_t i = 0; i < sizeof asked / sizeof *asked; i++) {
    const lw_choice *choice = asked[i].choice;
    bool map = choice == &o->flood_land || choice == &o->bushfire_land || choice == &o->coast_land;
    if (choice->origin == LW_ABSENT && !(map && on_none)) lw_block_join(list, sizeof list, asked[i].words);
  }
  if (list[0]) lw_block_say(b, LW_BLOCK_FACT, "not told", "ask about: %s", list);
}

static bool boundary_counts(const lw_verdict *v) {
  for (int i = 0; i < v->reasons.count; i++)
    if (strcmp(v->reasons.reason[i].slug, "boundary") == 0) return true;
  return false;
}

/* Where they have not agreed, or nobody knows, a reason says so. */
void lw_blocks_consent(const lw_blocks *b) {
  const lw_choice *consent = &b->result->given.officer.neighbour_consent;
  if (!boundary_counts(&b->result->verdict)) return;
  if (consent->origin == LW_ABSENT)
    lw_block_say(b, LW_BLOCK_FACT, "neighbour", "whether they agree is not told: ask for it in writing");
  if (consent->origin == LW_GIVEN && consent->value == LW_YES)
    lw_block_say(b, LW_BLOCK_FACT, "neighbour", "has agreed in writing, as given: ask to see it");
}
