/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/result.h>

#include "ask_end.h"
#include "ask_print.h"

/* The last page: the first screen of the wall, and what to do next. */

static lw_status add_screen(lw_ask_session *session, lw_text *out, bool *whole) {
  lw_result *result = &session->asking.scratch[0];
  session->faults.count = 0;
  *whole =
      lw_sheet_read(session->sheet.data, session->sheet.length, &result->given, &session->faults) == LW_OK &&
      lw_case_complete(session->asking.tables, &result->given, &session->faults) == LW_OK &&
      lw_run(&result->given, session->asking.tables, LW_DETAIL_EVERYTHING, result, NULL) == LW_OK;
  if (!*whole) return LW_OK;
  lw_remedies_find(result, &session->asking.scratch[1]);
  lw_water_find(result, &session->asking.scratch[1]);
  return lw_report_screen(result, &(lw_text_style){0}, out);
}

static int count_skipped(lw_ask_session *session) {
  int count = 0;
  for (int i = 0; i < session->look.count; i++)
    count += session->skipped[i] && session->look.state[i] == LW_ASKED_OPEN ? 1 : 0;
  return count;
}

/* What is needed before anything can be said. */
static void say_missing(lw_ask_session *session, lw_text *out) {
  for (int i = 0; i < session->faults.count && session->sheet.length > 0; i++)
    lw_text_addf(out, "Nothing can be said yet: %s is missing.\n", session->faults.fault[i].item);
  if (session->sheet.length == 0) lw_text_add(out, "Nothing was answered, and nothing is kept.\n");
}

static void say_next(lw_ask_session *session, bool whole, bool stopped, lw_text *out) {
  const char *file = session->file;
  int skipped = count_skipped(session);
  if (session->sheet.length == 0) return;
  lw_text_addf(out, "\nThe answers are in %s, a sheet that any spreadsheet opens.\n", file);
  if (stopped || skipped > 0)
    lw_text_addf(out, "  lowwall ask %s                    what is left to ask\n", file);
  if (!whole) return;
  lw_text_addf(out,
               "  lowwall check %s --full           all of it, with reasons and sources\n"
               "  lowwall draw %s -o wall.svg       the section, to scale\n"
               "  lowwall order %s                  what to order\n"
               "  lowwall pegs %s                   pegs, levels and the order of work\n"
               "  lowwall precheck %s -o pre.html   the pages for the council\n",
               file, file, file, file, file);
}

void lw_ask_show_end(lw_ask_session *session, bool stopped) {
  lw_text out = {0};
  bool whole = false;
  lw_text_add(&out, "\n");
  if (session->sheet.length > 0 && add_screen(session, &out, &whole) != LW_OK) session->no_memory = true;
  if (!whole) say_missing(session, &out);
  say_next(session, whole, stopped, &out);
  lw_ask_flush(session, &out);
}
