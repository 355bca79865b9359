/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"
#include "report/precheck/precheck.h"
#include "every_wall.h"
#include "walls.h"

#include <lowwall/report.h>

/* Each report lists the keys that it cites: read here by a reading of its own, "[KEY locator]". */

static size_t key_at(const char *at) {
  size_t length = 0;
  while (isupper((unsigned char)at[length]) || isdigit((unsigned char)at[length]) ||
         (at[length] != '\0' && strchr("-./", at[length]) != NULL))
    length++;
  bool key = isupper((unsigned char)at[0]) && length > 1 && (at[length] == ' ' || at[length] == '\n');
  return key ? length : 0;
}

/* The key as a whole word of the list. */
static bool listed(const char *list, const char *key, size_t length) {
  for (const char *at = strstr(list, key); at != NULL; at = strstr(at + 1, key)) {
    bool begins = at == list || strchr(" ,[\n", at[-1]) != NULL;
    if (begins && strchr(" ,].\n", at[length]) != NULL) return true;
  }
  return false;
}

static int hold_text(const char *text, const char *list, const char *name) {
  int cited = 0;
  for (const char *at = strchr(text, '['); at != NULL && at < list; at = strchr(at + 1, '[')) {
    char key[64];
    size_t length = key_at(at + 1);
    if (length == 0 || length >= sizeof key) continue;
    snprintf(key, sizeof key, "%.*s", (int)length, at + 1);
    cr_expect(listed(list, key, length), "%s cites %s and does not list it", name, key);
    cited++;
  }
  return cited;
}

int every_key_cited_is_listed(const every_wall *wall) {
  static const char heading[] = "Sources (docs/sources.md";
  const char *of_page = strstr(wall->page, heading), *of_working = NULL;
  for (const char *at = strstr(wall->working, heading); at != NULL; at = strstr(at + 1, heading))
    of_working = at;
  cr_assert(of_page && of_working, "%s has no list of sources", wall->name);
  char *sources = json_dumps(json_object_get(wall->json, "sources"), 0), *all = json_dumps(wall->json, 0);
  json_t *copy = json_loads(all, 0, NULL);
  json_object_del(copy, "given");
  json_object_del(copy, "title");
  json_object_del(copy, "mark");
  json_object_del(copy, "sources");
  char *rest = json_dumps(copy, 0);
  int cited = hold_text(wall->page, of_page, wall->name) + hold_text(wall->working, of_working, wall->name);
  for (const char *at = strchr(rest, '['); at != NULL; at = strchr(at + 1, '[')) {
    char key[64];
    size_t length = key_at(at + 1);
    if (length == 0 || length >= sizeof key) continue;
    snprintf(key, sizeof key, "%.*s", (int)length, at + 1);
    cr_expect(listed(sources, key, length), "%s: the JSON cites %s and does not list it", wall->name, key);
    cited++;
  }
  json_decref(copy);
  free(sources);
  free(all);
  free(rest);
  return cited > 0 ? 1 : 0;
}

typedef struct cited_page {
  const char *wall, *sources;
  int cited;
  bool told; /* where the keys are explained */
} cited_page;

/* A key is explained by its row of docs/sources.md. */
static void take(void *context, const lw_block *block) {
  cited_page *page = context;
  if (strcmp(block->label, "[sources]") == 0) page->told = strstr(block->words, "docs/sources.md") != NULL;
  for (const char *at = strchr(block->words, '['); at != NULL; at = strchr(at + 1, '[')) {
    char row[80];
    size_t length = key_at(at + 1);
    if (length == 0) continue;
    snprintf(row, sizeof row, "\n| %.*s |", (int)length, at + 1);
    cr_expect_not_null(strstr(page->sources, row), "%s cites %s", page->wall, row + 1);
    page->cited++;
  }
}

Test(report, what_a_precheck_cites_is_explained_where_it_says) {
  lw_text sources = sheet_test_file("docs/sources.md");
  for (size_t i = 0; wall_sorts[i] != NULL; i++) {
    cited_page page = {.wall = wall_sorts[i], .sources = sources.data};
    lw_precheck_each(wall_of(wall_sorts[i]), "0", take, &page);
    cr_expect(page.told && page.cited > 0, "%s", wall_sorts[i]);
  }
  lw_text_free(&sources);
}

/* At rest under a slope the coefficient is another author's. */
Test(report, at_rest_on_a_slope_cites_its_own_source) {
  static const char wall[] =
      "wall height=800 mm;block height=200 mm;wall embedment=200 mm;block depth=600 mm;people on cap=no;"
      "soil 1 name=clean sand;footing soil name=clean sand;method pressure=at rest;method slip=not;ground "
      "slope=";
  char level[320], slope[320];
  snprintf(level, sizeof level, "%s0 deg", wall);
  snprintf(slope, sizeof slope, "%s10 deg", wall);
  lw_text of_level = wall_working(wall_of(level));
  cr_expect_not_null(strstr(of_level.data, "[JAKY1944"));
  lw_text of_slope = wall_working(wall_of(slope));
  cr_expect_null(strstr(of_slope.data, "[JAKY1944"));
  cr_expect_not_null(strstr(of_slope.data, "[EN1997-1 9.5.2]"));
  lw_text_free(&of_level);
  lw_text_free(&of_slope);
}
