/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "slugs.h"

#include <criterion/criterion.h>

#include <ctype.h>
#include <string.h>

#include <lowwall/report.h>

#include "every_wall.h"

static bool part_of_word(char c) {
  return isalnum((unsigned char)c) || c == '-' || c == '_';
}

static bool stands_in(const char *text, const char *slug) {
  size_t length = strlen(slug);
  if (strchr(slug, '-') == NULL) return false; /* one word may be anybody's */
  for (const char *at = text; (at = strstr(at, slug)) != NULL; at += length)
    if ((at == text || !part_of_word(at[-1])) && !part_of_word(at[length])) return true;
  return false;
}

static const char *of_lists(const char *text) {
  for (int i = 0; i < LW_SITUATION_COUNT; i++)
    if (stands_in(text, lw_situation_slug((lw_situation_name)i)))
      return lw_situation_slug((lw_situation_name)i);
  for (int i = 0; i < LW_CHECK_KIND_COUNT; i++)
    if (stands_in(text, lw_check_slug((lw_check_kind)i))) return lw_check_slug((lw_check_kind)i);
  for (int i = 0; i < LW_REASON_COUNT; i++)
    if (stands_in(text, lw_reason_slug((lw_reason)i))) return lw_reason_slug((lw_reason)i);
  for (int i = 0; i < LW_GRADE_COUNT; i++)
    if (stands_in(text, lw_grade_slug((lw_grade)i))) return lw_grade_slug((lw_grade)i);
  for (int i = 0; i <= LW_CANNOT_SHOW; i++)
    if (stands_in(text, lw_holds_slug((lw_holds)i))) return lw_holds_slug((lw_holds)i);
  return NULL;
}

const char *slug_in(const char *text) {
  static const char *const of_remedies[] = {"deeper-blocks", "lower-wall",     "wider-stone",
                                            "stone-wedge",   "more-setback",   "load-back",
                                            "lower-soil",    "filled-hollows", "wider-pad"};
  /* The one name of a contact that is no word: "sliding at base" is one, too. */
  static const char *const at[] = {"joint-", "at base,", "at pad,", "at cap,", "at ground,"};
  for (size_t i = 0; i < sizeof of_remedies / sizeof *of_remedies; i++)
    if (stands_in(text, of_remedies[i])) return of_remedies[i];
  for (size_t i = 0; i < sizeof at / sizeof *at; i++)
    if (strstr(text, at[i]) != NULL) return at[i];
  return of_lists(text);
}

int every_page_speaks_to_people(const every_wall *wall) {
  const char *slug = slug_in(wall->page);
  cr_expect(slug == NULL, "\"%s\" in\n%s", slug ? slug : "", wall->name);
  return 1;
}

Test(slugs, a_slug_is_found_as_a_whole_word_only) {
  cr_expect_str_eq(slug_in("so outlet-blocked."), "outlet-blocked");
  cr_expect_str_eq(slug_in("it falls-short"), "falls-short");
  cr_expect_str_eq(slug_in("sliding at joint-3"), "joint-");
  cr_expect(slug_in("a set-out-of-range-finder, no pushing, outlet blocked, people sitting") == NULL);
}
