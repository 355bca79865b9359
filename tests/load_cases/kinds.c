/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"
#include "../checks/support.h"
#include "load_cases/kinds.h"

/* The table of check kinds: each row is whole, documented, and met on walls. */

static const lw_check_about *about(int kind) {
  return lw_check_about_of((lw_check_kind)kind);
}

static bool made_at(int kind, lw_at at) {
#define PLACES(name, base, pad, joint, cap, ground) {base, pad, joint, cap, ground},
  static const bool places[LW_CHECK_KIND_COUNT][LW_AT_COUNT] = {LW_CHECK_KINDS(PLACES)};
#undef PLACES
  return places[kind][at];
}

Test(check_kinds, every_row_is_whole) {
  for (int i = 0; i < LW_CHECK_KIND_COUNT; i++) {
    const lw_check_about *a = about(i);
    cr_assert(a->slug && a->title && a->unit && a->demand && a->resistance && a->theory, "row %d", i);
    for (int k = 0; k < i; k++) cr_expect_str_neq(a->slug, about(k)->slug);
    for (int at = 0; at < LW_AT_COUNT; at++) {
      cr_expect_eq(a->at[at] != NULL, made_at(i, (lw_at)at), "%s at %d: words where it is made", a->slug, at);
      if (a->at[at]) cr_expect_eq(strstr(a->at[at], "%d") != NULL, at == LW_AT_JOINT, "%s", a->slug);
    }
  }
}

Test(check_kinds, the_theory_of_each_has_its_heading) {
  lw_text theory = sheet_test_file("docs/theory.md");
  for (int i = 0; i < LW_CHECK_KIND_COUNT; i++) {
    char heading[80];
    snprintf(heading, sizeof heading, "# %s\n", about(i)->theory);
    cr_expect(strstr(theory.data, heading) != NULL, "docs/theory.md has no heading %s", about(i)->theory);
  }
  lw_text_free(&theory);
}

/* The heading as a page links to it: small letters, blanks to dashes. */
static void anchor_of(const char *heading, char *out, size_t size) {
  size_t n = 0;
  for (; heading[n] != '\0' && n + 1 < size; n++)
    out[n] = heading[n] == ' ' ? '-' : (char)tolower((unsigned char)heading[n]);
  out[n] = '\0';
}

static void add_row(const lw_check_about *a, lw_text *out) {
  static const char *const places[LW_AT_COUNT] = {"base", "pad", "joint-N", "cap", "ground"};
  static const char *const quantities[] = {
#define QUANTITY(name, quantity) quantity,
      LW_FACTORS(QUANTITY)
#undef QUANTITY
  };
  char anchor[80];
  anchor_of(a->theory, anchor, sizeof anchor);
  lw_text_add(out, "| ");
  lw_text_add(out, a->slug);
  lw_text_add(out, " |");
  for (int at = 0; at < LW_AT_COUNT; at++) {
    if (!a->at[at]) continue;
    lw_text_add(out, " `");
    lw_text_add(out, places[at]);
    lw_text_add(out, "`");
  }
  const char *const cells[] = {
      " | ", a->demand, " | ", a->resistance, " | ", a->unit, " | `", quantities[a->needs], "`"};
  for (size_t i = 0; i < sizeof cells / sizeof *cells; i++) lw_text_add(out, cells[i]);
  if (a->or_needs != a->needs) {
    lw_text_add(out, " `");
    lw_text_add(out, quantities[a->or_needs]);
    lw_text_add(out, "`");
  }
  const char *const end[] = {" | [", a->theory, "](theory.md#", anchor, ") |\n"};
  for (size_t i = 0; i < sizeof end / sizeof *end; i++) lw_text_add(out, end[i]);
}

Test(check_kinds, the_document_of_the_results_has_the_table) {
  static const char begin[] = "<!-- checks: begin -->\n", end[] = "<!-- checks: end -->\n";
  lw_text page = sheet_test_file("docs/results.md"), table = {0};
  lw_text_add(&table, "| check | where | demand | resistance | unit | asked by a set | theory |\n"
                      "| --- | --- | --- | --- | --- | --- | --- |\n");
  for (int i = 0; i < LW_CHECK_KIND_COUNT; i++) add_row(about(i), &table);
  const char *from = strstr(page.data, begin), *to = strstr(page.data, end);
  cr_assert(from != NULL && to != NULL);
  from += sizeof begin - 1;
  bool same = (size_t)(to - from) == table.length && memcmp(from, table.data, table.length) == 0;
  cr_expect(same, "docs/results.md lags behind the table of checks; put between its two marks:\n%s",
            table.data);
  lw_text_free(&page);
  lw_text_free(&table);
}

/* A wall of each sort for each kind of check: it holds, it falls short, it cannot be shown. */
#define GROUND \
  "site behind=ground", "wall height=0.65 m", "wall embedment=0.2 m", "block height=200 mm", \
      "soil 1 friction angle=32 deg", "allowable bearing=100 kPa", "cap height=50 mm", \
      "pad thickness=150 mm"
#define DEEP GROUND, "block depth=900 mm"
#define THIN GROUND, "block depth=150 mm", "ground slope=20 deg"
#define CLAY GROUND, "block depth=900 mm", "soil 1 name=high-plasticity clay", "stone width=0 m"
enum { ITEMS = 14 };
typedef struct outcomes {
  const char *const wall[3][ITEMS];
} outcomes;

static const outcomes OUTCOMES[LW_CHECK_KIND_COUNT] = {
    [LW_CHECK_SLIDING] = {{{DEEP}, {THIN}, {CLAY}}},
    [LW_CHECK_OVERTURNING] = {{{DEEP}, {THIN}, {CLAY}}},
    [LW_CHECK_TILTING] = {{{DEEP}, {THIN}, {CLAY}}},
    [LW_CHECK_COMPRESSION] = {{{DEEP}, {THIN}, {CLAY}}},
    [LW_CHECK_BEARING] = {{{DEEP}, {THIN}, {DEEP, "front slope=1:8"}}},
    [LW_CHECK_KEY] = {{{DEEP, "key strength=9 kN/m"},
                       {THIN, "joint friction=0.1", "key strength=0.2 kN/m"},
                       {CLAY, "key strength=9 kN/m"}}},
    [LW_CHECK_SLIP] = {{{DEEP, "footing soil friction angle=38 deg"},
                        {DEEP, "footing soil friction angle=12 deg", "ground slope=25 deg"},
                        {CLAY}}},
};

Test(check_kinds, every_kind_holds_falls_short_and_cannot_be_shown) {
  static const char *const words[] = {"holds", "falls short", "cannot be shown"};
  for (int kind = 0; kind < LW_CHECK_KIND_COUNT; kind++) {
    for (int outcome = LW_HOLDS; outcome <= LW_CANNOT_SHOW; outcome++) {
      cr_assert_not_null(OUTCOMES[kind].wall[outcome][0], "no wall where %s %s", about(kind)->slug,
                         words[outcome]);
      lw_result *r = checks_test_run(OUTCOMES[kind].wall[outcome]);
      bool met = false;
      for (int s = 0; s < r->situations.count; s++)
        for (int i = 0; i < r->situations.situation[s].check_count; i++) {
          const lw_check *check = checks_test_check(&r->situations.situation[s], i);
          met = met || ((int)check->kind == kind && (int)check->holds == outcome && check->counts);
        }
      cr_expect(met, "%s: no check that counts %s", about(kind)->slug, words[outcome]);
      free(r);
    }
  }
}

/* Where a wall has a place, it has every kind of check that is made there, in the order of the table. */
Test(check_kinds, a_place_has_its_checks_in_the_order_of_the_table) {
  static const char *const items[ITEMS] = {DEEP, "key strength=9 kN/m"};
  lw_result *r = checks_test_run(items);
  const lw_situation *s = checks_test_situation(r, LW_SITUATION_DRAINED);
  int seen[LW_CHECK_KIND_COUNT][LW_AT_COUNT] = {{0}};
  for (int i = 0; i < s->check_count; i++) {
    const lw_check *now = checks_test_check(s, i), *before = i > 0 ? checks_test_check(s, i - 1) : NULL;
    bool same = before && before->at == now->at && before->joint == now->joint;
    seen[now->kind][now->at]++;
    cr_expect(made_at((int)now->kind, now->at));
    cr_expect(!same || before->kind < now->kind);
  }
  for (int kind = 0; kind < LW_CHECK_KIND_COUNT; kind++)
    for (int at = 0; at < LW_AT_GROUND; at++)
      cr_expect_eq(seen[kind][at] > 0, made_at(kind, (lw_at)at), "%s at %d", about(kind)->slug, at);
  free(r);
}
