/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "precheck_file.h"

#include <string.h>

#include <lowwall/report.h>

#include "report/precheck/pdf.h"
#include "cli.h"
#include "output.h"
#include "say.h"

/* A pre-check that needs nothing else: its sheet is run again and its pages are made again. */

typedef struct pre_checked {
  lw_text pdf, hash, sheet;
} pre_checked;

static void free_file(pre_checked *file) {
  lw_text_free(&file->pdf);
  lw_text_free(&file->hash);
  lw_text_free(&file->sheet);
}

/* gives 0 to go on, else the exit status + 1 */
static int read_file(lw_one_wall *wall, const char *name, pre_checked *file) {
  lw_error error = {0};
  wall->input.wanted = "a pre-check";
  lw_status status = lw_input_open(&wall->input, name, &wall->faults);
  if (status == LW_OK) status = lw_input_rest(&wall->input, &file->pdf, &wall->faults);
  if (status == LW_FAULTS) return lw_cli_print_faults(&wall->faults) + 1;
  if (status == LW_OK) status = lw_precheck_sheet(&file->pdf, &file->hash, &file->sheet, &error);
  if (status == LW_OK) return 0;
  if (status == LW_NO_MEMORY) return lw_cli_no_memory() + 1;
  lw_cli_refuse("precheck", "%s: %.200s: %s", lw_status_slug(status), name, error.text);
  return (status == LW_NOT_READ ? LW_EXIT_BAD_INPUT : LW_EXIT_OTHER) + 1;
}

/* On either paper: which it was is not asked. */
static bool is_made_so(const lw_result *result, const char *hash, const lw_text *pdf) {
  bool same = false;
  for (int paper = LW_PAPER_A4; paper <= LW_PAPER_LETTER && !same; paper++) {
    lw_text again = {0};
    lw_error error = {0};
    same = lw_precheck_pdf(result, hash, (lw_paper)paper, &again, &error) == LW_OK &&
           again.length == pdf->length && memcmp(again.data, pdf->data, pdf->length) == 0;
    lw_text_free(&again);
  }
  return same;
}

static int judge(const char *name, lw_one_wall *wall, const char *hash, const pre_checked *file) {
  lw_text text = {0};
  bool belongs = file->hash.length > 0 && strcmp(file->hash.data, hash) == 0;
  bool same = belongs && is_made_so(&wall->result, hash, &file->pdf);
  if (!belongs)
    lw_text_addf(
        &text,
        "The hash in %s does NOT belong to the sheet attached to it with these tables and lowwall %s.\n"
        "Theirs is %s\n",
        name, LW_VERSION, hash);
  else
    lw_text_addf(&text, "The hash in %s belongs to the sheet attached to it, these tables and lowwall %s.\n",
                 name, LW_VERSION);
  if (belongs)
    lw_text_add(&text,
                same ? "Its pages are, byte for byte, those that this lowwall makes of that sheet.\n"
                     : "Its pages are NOT those that this lowwall makes here of that sheet: other fonts may "
                       "do that, or a hand.\nMake it anew from the sheet and compare them.\n");
  return lw_output_write(NULL, &text, same ? LW_EXIT_DONE : LW_EXIT_OTHER);
}

static int verify(const lw_wall_asked *asked, const char *name, lw_one_wall *wall, pre_checked *file) {
  char hash[LW_HASH_HEX] = "";
  lw_error error = {0};
  int ended = read_file(wall, name, file);
  if (ended == 0) {
    lw_sheet_read(file->sheet.data, file->sheet.length, &wall->c, &wall->faults);
    ended = lw_wall_run(asked, wall);
  }
  if (ended > 0) return ended - 1;
  lw_status status = lw_precheck_hash(&wall->result.given, asked->tables, hash, &error);
  if (status != LW_OK) return lw_cli_fail("precheck", status, &error);
  lw_water_find(&wall->result, &wall->scratch);
  return judge(name, wall, hash, file);
}

int lw_precheck_verify_file(const lw_wall_asked *asked, const char *name) {
  int exit_status = LW_EXIT_OTHER;
  pre_checked file = {0};
  lw_one_wall *wall = lw_wall_open(asked, &exit_status);
  if (wall == NULL) return exit_status;
  exit_status = verify(asked, name, wall, &file);
  free_file(&file);
  lw_wall_close(wall);
  return exit_status;
}
