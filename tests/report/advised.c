/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "advised.h"

#include <criterion/criterion.h>

#include <stdlib.h>
#include <string.h>

#include "report/text/advised.h"

#include "every_wall.h"
#include "slugs.h"

static bool begins(const char *text, const char *with) {
  return strncmp(text, with, strlen(with)) == 0;
}

static int count(const lw_result *result, bool cures) {
  int found = 0;
  for (int i = 0; i < result->remedy_count; i++)
    found += (result->remedy[i].kind == LW_REMEDY_CURE) == cures ? 1 : 0;
  return found;
}

/* A title promises cures only where there are, and nothing else below them that it does not name. */
static void hold_title(const lw_result *result, const char *name) {
  const char *title = lw_remedies_title(result);
  bool promises = begins(title, "What would make it stand"), none = begins(title, "Nothing");
  bool other = strstr(title, "in its place") != NULL;
  cr_expect_eq(promises, count(result, true) > 0, "%s: %s", title, name);
  cr_expect(!none || count(result, true) == 0, "%s: %s", title, name);
  cr_expect_eq(other, count(result, false) > 0, "%s: %s", title, name);
  if (result->verdict.stands == LW_HOLDS) {
    cr_expect(begins(title, "As it is"), "%s: %s", title, name);
    cr_expect_str_eq(lw_remedies_title_before(result), title);
  }
}

/* Where there is none it is said why, and only there. */
static void hold_instead(const lw_result *result, const char *name) {
  lw_text instead = {0};
  lw_remedies_instead(result, &instead);
  cr_expect_eq(instead.length > 0, result->remedy_count == 0, "%s", name);
  if (instead.length > 0) {
    cr_expect_eq(begins(instead.data, "Nothing has to change"), result->verdict.stands == LW_HOLDS, "%s: %s",
                 instead.data, name);
    cr_expect(slug_in(instead.data) == NULL, "%s: %s", instead.data, name);
  }
  lw_text_free(&instead);
}

/* Each page has the title where it has a remedy, and promises none where there is none. */
static void hold_page(const lw_result *result, const lw_text *page, const char *name) {
  char head[48];
  lw_print(head, sizeof head, "\n%.40s", lw_remedies_title(result));
  cr_expect(result->remedy_count == 0 || strstr(page->data, head) != NULL, "%s: %s", head, name);
  cr_expect(count(result, true) > 0 || strstr(page->data, "\nWhat would make") == NULL, "%s", name);
  cr_expect(slug_in(page->data) == NULL, "%s: %s", slug_in(page->data) ? slug_in(page->data) : "", name);
}

int advised_hold(const lw_result *result, const char *name) {
  static const lw_text_style plain = {.columns = 80};
  lw_text page = {0}, screen = {0};
  hold_title(result, name);
  hold_instead(result, name);
  cr_assert_eq(lw_report_text(result, &plain, &page), LW_OK);
  cr_assert_eq(lw_report_screen(result, &plain, &screen), LW_OK);
  hold_page(result, &page, name);
  hold_page(result, &screen, name);
  lw_text_free(&page);
  lw_text_free(&screen);
  return 1;
}

int every_advice_has_a_true_title(const every_wall *wall) {
  return advised_hold(wall->result, wall->name);
}
