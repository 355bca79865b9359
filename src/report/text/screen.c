/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "screen.h"

/* The first screen: what someone on site reads before ordering blocks, and where the rest stands. */

lw_status lw_report_screen(const lw_result *result, const lw_text_style *style, lw_text *out) {
  lw_screen screen;
  lw_screen_begin(&screen, style, result->units);
  lw_screen_answer(&screen, result);
  lw_screen_remedies(&screen, result);
  lw_screen_checks(&screen, result);
  lw_screen_costs(&screen, result);
  lw_screen_asking(&screen, result);
  lw_screen_assumed(&screen, result);
  lw_screen_cautions(&screen, result);
  lw_screen_unchecked(&screen, result);
  lw_screen_read_on(&screen, result);
  lw_screen_put(&screen, LW_SCREEN_LINES, out);
  lw_text_free(&screen.words);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}
