/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdio.h>

#include <lowwall/result.h>

#include "ask.h"

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
  return lw_report_screen(result, false, out);
}

static int count_skipped(const lw_ask_session *session) {
  int count = 0;
  for (int i = 0; i < session->look.count; i++)
    count += session->skipped[i] && session->look.state[i] == LW_ASKED_OPEN ? 1 : 0;
  return count;
}

/* What is needed before anything can be said. */
static void say_missing(const lw_ask_session *session) {
  for (int i = 0; i < session->faults.count; i++)
    lw_ask_say("Nothing can be said yet: %s is missing.", session->faults.fault[i].item);
  if (session->sheet.length == 0) lw_ask_say("Nothing was answered, and nothing is kept.");
}

static void say_next(const lw_ask_session *session, bool whole, bool stopped) {
  const char *file = session->file;
  int skipped = count_skipped(session);
  if (session->sheet.length == 0) return;
  printf("\n");
  lw_ask_say("The answers are in %s, a sheet that any spreadsheet opens.%s", file,
             stopped || skipped > 0 ? " What is left is asked by:" : "");
  if (stopped || skipped > 0) printf("  lowwall ask %s\n", file);
  if (!whole) return;
  printf("Next:\n"
         "  lowwall check %s --full           all of it, with reasons and sources\n"
         "  lowwall draw %s -o wall.svg       the section, to scale\n"
         "  lowwall order %s                  what to order\n"
         "  lowwall pegs %s                   pegs, levels and the order of work\n"
         "  lowwall precheck %s -o pre.html   the pages for the council\n",
         file, file, file, file, file);
}

lw_status lw_ask_show_end(lw_ask_session *session, bool stopped) {
  lw_text out = {0};
  bool whole = false;
  lw_status status = session->sheet.length > 0 ? add_screen(session, &out, &whole) : LW_OK;
  printf("\n");
  if (status == LW_OK && out.length > 0) fwrite(out.data, 1, out.length, stdout);
  lw_text_free(&out);
  if (!whole) say_missing(session);
  if (status == LW_OK) say_next(session, whole, stopped);
  fflush(stdout);
  return status;
}
