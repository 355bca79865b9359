/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <string.h>

#include "help.h"

/* What is said of an old wall is so of this one: one that is raised need not have moved. */
Test(verdict, an_old_wall_is_told_what_is_so_of_it) {
  static const struct {
    const char *works, *told;
  } EACH[] = {{"works=raised", "raised, reused or mended: it is made higher than it was."},
              {"works=moved", "raised, reused or mended: it has moved."},
              {"works=new", NULL}};
  for (size_t i = 0; i < sizeof EACH / sizeof *EACH; i++) {
    const lw_verdict v = verdict_with(verdict_tables(), EACH[i].works, LW_HOLDS);
    bool told = false;
    for (int k = 0; k < v.reasons.count; k++) {
      const char *text = v.reasons.reason[k].text;
      told = told || (EACH[i].told && strstr(text, EACH[i].told));
      cr_expect_null(strstr(text, "leans"), "%s: %s", EACH[i].works, text);
    }
    cr_expect_eq(told, EACH[i].told != NULL, "%s", EACH[i].works);
  }
}
