/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "help.h"
#include "verdict/conditions.h"

static char *read_document(void) {
  FILE *file = fopen("docs/verdict.md", "rb");
  cr_assert_not_null(file);
  char *text = calloc(1, 65536);
  cr_assert_not_null(text);
  size_t length = fread(text, 1, 65535, file);
  cr_assert(length > 1000 && length < 65535);
  fclose(file);
  return text;
}

static void expect_slug(const char *document, const char *slug) {
  char quoted[64];
  snprintf(quoted, sizeof quoted, "`%s`", slug);
  cr_expect_not_null(strstr(document, quoted), "docs/verdict.md has no %s", quoted);
}

/* Reasons of many walls, grave and mild: each slug stands in the document. */
Test(verdict, document_names_every_reason_that_is_given) {
  static const char *const walls[] = {
      "",
      "site behind=ground;site back=ground;level difference=1 m",
      "other wall distance=0.3 m;ground slope=1:4",
      "building distance=0.2 m;boundary distance=0.2 m;public way distance=0.2 m;service distance=0.05 m",
      "site back=building;soil 1 name=organic soil;fence height=1 m",
      "site back=fence;works=moved;mapped land=yes",
      "course count=17;site above=public;reactive soil=yes;vehicle access=yes;water held behind=yes",
      ("boundary distance=0.9 m;building distance=1.4 m;other wall distance=1.9 m;service distance=0.9 m;"
       "waterbody distance=30 m;public way distance=3 m;pool barrier distance=0.5 m"),
      "trench depth=1.2 m;trench distance=0.4 m",
      "place=NSW;course count=12;boundary distance=0.9 m",
      "other wall side=above;other wall height=1.1 m;other wall distance=2.1 m;water depth=0.2 m"};
  char *document = read_document();
  for (size_t i = 0; i < sizeof walls / sizeof *walls; i++) {
    for (int holds = LW_HOLDS; holds <= LW_FALLS_SHORT; holds++) {
      lw_verdict v = verdict_of(walls[i], (lw_holds)holds);
      cr_expect(v.reasons.count > 0);
      for (int r = 0; r < v.reasons.count; r++) expect_slug(document, v.reasons.reason[r].slug);
    }
  }
  free(document);
}

Test(verdict, document_names_every_condition_word_and_height) {
  char *document = read_document();
  size_t count = 0;
  for (const char *slug; (slug = lw_verdict_condition_at(count)) != NULL; count++) {
    expect_slug(document, slug);
    cr_expect_not_null(lw_tables_condition(verdict_tables(), slug), "%s", slug);
  }
  cr_expect_eq(count, 34u);
  for (int w = LW_WHAT_TIER; w <= LW_WHAT_BED; w++) expect_slug(document, lw_what_slug((lw_what)w));
  for (int k = 0; k < LW_HEIGHT_KINDS; k++) expect_slug(document, lw_height_slug((lw_height_kind)k));
  free(document);
}

/* Every cue of the hazards is one that a wall can have, or one that no item asks for. */
Test(verdict, document_names_every_cue_of_the_hazards) {
  static const char *const not_asked[] = {"tree", "cold", "overhead"};
  char *document = read_document();
  for (int i = 0; i < verdict_tables()->hazard_count; i++) {
    const char *list = verdict_tables()->hazard[i].when;
    while (list[0] != '\0') {
      char cue[40];
      size_t length = strcspn(list, "|");
      bool known = false;
      snprintf(cue, sizeof cue, "%.*s", (int)length, list);
      for (size_t n = 0; n < sizeof not_asked / sizeof *not_asked; n++)
        known = known || !strcmp(cue, not_asked[n]);
      if (!known) expect_slug(document, cue);
      list += length + (list[length] == '|' ? 1 : 0);
    }
  }
  free(document);
}
