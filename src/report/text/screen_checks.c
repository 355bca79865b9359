/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "rows.h"
#include "screen.h"
#include "balance/weigh.h"

/* The table of checks, in its order; the nearest to its limit stays longest. */

/* How many of the others are graver. */
static int graver_than(const lw_rows *rows, int index) {
  int count = 0;
  for (int i = 0; i < rows->count; i++)
    count += i != index && lw_check_graver(&rows->row[i].check, &rows->row[index].check) ? 1 : 0;
  return count;
}

/* Each reason once. */
static void say_why_not_shown(lw_screen *screen, const lw_rows *rows) {
  bool said[LW_REASON_COUNT] = {false};
  for (int i = 0; i < rows->count; i++) {
    const lw_check *check = &rows->row[i].check;
    if (!check->counts || check->holds != LW_CANNOT_SHOW || said[check->reason]) continue;
    said[check->reason] = true;
    lw_page_sayf(&screen->page, "  ", "Not shown: %s.", lw_reason_sentence(check->reason));
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
  if (!any_number(&rows)) {
    screen->heading[LW_SCREEN_CHECKS] = "Checks";
    say_why_not_shown(screen, &rows);
    return;
  }
  lw_rows_put_head(&screen->page, "Checks, each at its worst");
  lw_screen_piece(screen, LW_SCREEN_CHECKS, LW_STAYS);
  for (int i = 0; i < rows.count; i++) {
    int graver = graver_than(&rows, i);
    lw_row_put(&screen->page, &rows.row[i]);
    lw_screen_piece(screen, LW_SCREEN_CHECKS, graver == 0 ? LW_STAYS : graver);
  }
  say_why_not_shown(screen, &rows);
  lw_rows_put_legend(&screen->page, &rows);
  lw_screen_piece(screen, LW_SCREEN_MARKS, LW_STAYS);
}
