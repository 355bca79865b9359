/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <lowwall/checks.h>

#include <stdlib.h>
#include <string.h>

#include "../verdict/help.h"
#include "tables/known.h"

static double *value_of(lw_tables *tables, const char *slug) {
  for (int i = 0; i < tables->threshold_count; i++)
    if (strcmp(tables->threshold[i].slug, slug) == 0) return &tables->threshold[i].value;
  cr_assert_fail("no threshold %s", slug);
  return NULL;
}

/* Each sentence is whole, and a figure in it is the row's, whatever stands there. */
Test(why_words, a_figure_in_a_sentence_is_that_of_the_table) {
  static const struct {
    double wide_m;
    const char *words, *us;
  } rows[] = {{0.3, "300 mm", "11-3/4 in"}, {0.15, "150 mm", "5-7/8 in"}, {0.455, "455 mm", "1 ft 5-7/8 in"}};
  lw_tables *tables = verdict_tables_copy();
  double *stone = value_of(tables, "stone-width");
  char words[LW_SITUATION_WHY_MAX];
  for (int i = 0; i < 3; i++) {
    *stone = rows[i].wide_m;
    lw_situation_why_words(LW_WHY_NOT_REACHED, tables, LW_UNITS_METRIC, words, sizeof words);
    cr_expect_not_null(strstr(words, rows[i].words), "%s", words);
    lw_situation_why_words(LW_WHY_NOT_REACHED, tables, LW_UNITS_US, words, sizeof words);
    cr_expect_not_null(strstr(words, rows[i].us), "%s", words);
    for (int why = 0; why < LW_WHY_COUNT; why++) {
      lw_situation_why_words((lw_situation_why)why, tables, (lw_units)(why % 2), words, sizeof words);
      size_t length = strlen(words);
      cr_expect(length > 10 && length + 1 < sizeof words && words[length - 1] != '.', "%s", words);
      cr_expect_null(strpbrk(words, "{}"), "%s", words);
    }
  }
  free(tables);
}
