/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What the ways out for water make of the blocked outlet: none, the usual state; one, an unusual one that
 * still decides; two or more, printed only. Water must be able to reach them. */
#include <criterion/criterion.h>
#include <stdlib.h>

#include "../checks/support.h"

#define WALL "wall height=600 mm", "block height=200 mm", "block depth=400 mm", "site behind=ground"

typedef struct ways {
  const char *outlets, *joints, *ground, *soil, *stone;
  lw_situation_kind kind;
  lw_situation_why why;
} ways;

Test(checks, ways_out_decide_what_a_blocked_outlet_is) {
  static const char none[] = "drain outlets=0", one[] = "drain outlets=1", two[] = "drain outlets=2";
  static const char open[] = "wall joints=open", sealed[] = "wall joints=sealed";
  static const char soaks[] = "ground drains=yes", holds[] = "ground drains=no";
  static const char silt[] = "soil 1 name=silt", rock[] = "soil 1 name=crushed rock";
  static const char bare[] = "stone width=0 mm", thin[] = "stone width=299 mm", wide[] = "stone width=300 mm";
  static const ways rows[] = {
      {none, sealed, holds, silt, wide, LW_USUAL, LW_WHY_NO_WAY_OUT},
      {none, sealed, holds, silt, bare, LW_USUAL, LW_WHY_NO_WAY_OUT},
      {one, sealed, holds, silt, wide, LW_UNUSUAL, LW_WHY_ONE_WAY_OUT},
      {none, open, holds, silt, wide, LW_UNUSUAL, LW_WHY_ONE_WAY_OUT},
      {none, sealed, soaks, rock, bare, LW_UNUSUAL, LW_WHY_ONE_WAY_OUT},
      {two, sealed, holds, silt, wide, LW_WHAT_IF, LW_WHY_WAYS_OUT},
      {one, open, holds, rock, bare, LW_WHAT_IF, LW_WHY_WAYS_OUT},
      {two, open, soaks, silt, thin, LW_USUAL, LW_WHY_NOT_REACHED},
      {none, sealed, soaks, silt, bare, LW_USUAL, LW_WHY_NOT_REACHED},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    const ways *w = &rows[i];
    lw_result *result = RUN(WALL, w->outlets, w->joints, w->ground, w->soil, w->stone);
    const lw_situation *blocked = checks_test_situation(result, LW_SITUATION_OUTLET_BLOCKED);
    cr_expect_eq(blocked->kind, w->kind, "row %zu", i);
    cr_expect_eq(blocked->decides, w->kind != LW_WHAT_IF, "row %zu", i);
    cr_expect_eq(blocked->why, w->why, "row %zu: %s", i, lw_situation_why_words(blocked->why));
    free(result);
  }
}

/* An outlet below the ground in front lets nothing out, unless the ground falls away as far. */
Test(checks, a_buried_outlet_is_no_way_out) {
  static const struct {
    const char *level, *slope;
    lw_situation_kind kind;
    lw_situation_why why;
  } rows[] = {
      {"outlet level=0 mm", "front slope=0 deg", LW_WHAT_IF, LW_WHY_WAYS_OUT},
      {"outlet level=30 mm", "front slope=0 deg", LW_WHAT_IF, LW_WHY_WAYS_OUT},
      {"outlet level=-1 mm", "front slope=0 deg", LW_USUAL, LW_WHY_BURIED},
      {"outlet level=-199 mm", "front slope=1:10", LW_WHAT_IF, LW_WHY_WAYS_OUT},
      {"outlet level=-201 mm", "front slope=1:10", LW_USUAL, LW_WHY_BURIED},
      {"outlet level=unknown", "front slope=0 deg", LW_WHAT_IF, LW_WHY_WAYS_OUT},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_result *result = RUN(WALL, "drain outlets=2", "drain outlet length=2 m", "wall joints=sealed",
                            "ground drains=no", "stone width=300 mm", rows[i].level, rows[i].slope);
    const lw_situation *blocked = checks_test_situation(result, LW_SITUATION_OUTLET_BLOCKED);
    cr_expect_eq(blocked->kind, rows[i].kind, "row %zu", i);
    cr_expect_eq(blocked->why, rows[i].why, "row %zu: %s", i, lw_situation_why_words(blocked->why));
    free(result);
  }
}
