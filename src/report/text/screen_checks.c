/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "rows.h"
#include "screen.h"
#include "verdict/moves.h"

/* The table of checks, in its order; the nearest to its limit stays longest. */

/* By what it comes to, in both looks. */
static int gravity(const lw_row *row) {
  static const int of[] = {[LW_GRADE_HOLDS] = 1,      [LW_GRADE_LESS_MARGIN] = 2,     [LW_GRADE_MAY_MOVE] = 3,
                           [LW_GRADE_WOULD_MOVE] = 4, [LW_GRADE_CANNOT_BE_SHOWN] = 3, [LW_GRADE_COUNT] = 0};
  return of[row->grade];
}

static bool is_graver(const lw_row *a, const lw_row *b) {
  int difference = gravity(a) - gravity(b);
  return difference != 0 ? difference > 0 : lw_check_told_before(&a->check, &b->check);
}

/* How many of the others are graver. */
static int graver_than(const lw_rows *rows, int index) {
  int count = 0;
  for (int i = 0; i < rows->count; i++)
    count += i != index && is_graver(&rows->row[i], &rows->row[index]) ? 1 : 0;
  return count;
}

typedef struct lw_whys {
  int count;
  lw_reason why[LW_ROWS_MAX];
} lw_whys;

/* Why rows cannot be shown, each reason once. */
static lw_whys whys_of(const lw_rows *rows) {
  lw_whys all = {.count = 0};
  for (int i = 0; i < rows->count; i++) {
    const lw_check *check = &rows->row[i].check;
    bool said = !check->counts || check->holds != LW_CANNOT_SHOW;
    for (int k = 0; k < all.count; k++) said = said || all.why[k] == check->reason;
    if (!said) all.why[all.count++] = check->reason;
  }
  return all;
}

static void say_why_not_shown(lw_screen *screen, const lw_whys *all) {
  for (int i = 0; i < all->count; i++) {
    lw_page_sayf(&screen->page, "  ", "Not shown: %s.", lw_reason_sentence(all->why[i]));
    lw_screen_piece(screen, LW_SCREEN_CHECKS, 1);
  }
}

static bool any_number(const lw_rows *rows) {
  for (int i = 0; i < rows->count; i++)
    if (rows->row[i].check.has.known) return true;
  return false;
}

void lw_screen_checks(lw_screen *screen, const lw_result *result) {
  lw_rows rows;
  lw_rows_collect(result, &rows);
  if (rows.count == 0) return;
  lw_whys whys = whys_of(&rows);
  if (!any_number(&rows)) {
    /* The answer has said it where it is one and the same. */
    screen->heading[LW_SCREEN_CHECKS] = "Checks";
    if (whys.count > 1) say_why_not_shown(screen, &whys);
    return;
  }
  lw_rows_put_head(&screen->page, "Checks, each at its worst", &rows);
  lw_screen_piece(screen, LW_SCREEN_CHECKS, LW_STAYS);
  for (int i = 0; i < rows.count; i++) {
    int graver = graver_than(&rows, i);
    lw_row_put(&screen->page, &rows, i);
    bool holds = rows.row[i].check.holds == LW_HOLDS;
    lw_screen_piece(screen, LW_SCREEN_CHECKS,
                    graver == 0 ? LW_STAYS : graver + (holds ? LW_GIVES_EASILY : 0));
  }
  say_why_not_shown(screen, &whys);
  lw_rows_put_unshown(&screen->page, result, &rows);
  lw_screen_piece(screen, LW_SCREEN_CHECKS, 1);
  lw_rows_put_legend(&screen->page, &rows);
  lw_screen_piece(screen, LW_SCREEN_MARKS, LW_STAYS);
}
