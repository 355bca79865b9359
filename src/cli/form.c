/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdlib.h>
#include <string.h>

#include <lowwall/questions.h>

#include "cli.h"
#include "options.h"
#include "output.h"

static const char help[] =
    "lowwall form [--paper a4|letter] [--units metric|us] [--tables DIR] -o FILE\n"
    "\n"
    "The questions of lowwall ask as two pages to fill in with a pencil on site: boxes to tick, lines for "
    "measures,\n"
    "room for a sketch; and a third with what an officer asks besides. FILE ends in .pdf or .html.\n"
    "\n"
    "  --paper a4|letter   the paper of a PDF; a4 if not given\n"
    "  --units metric|us   measures in one of them; left out, both are there to ring\n"
    "  --tables DIR        questions of your own: each CSV file in DIR replaces the table of its name\n"
    "  -o, --output FILE   write there, the whole of it or nothing\n"
    "  -h, --help          this page\n";

typedef struct form_asked {
  const char *output, *tables, *paper, *units;
} form_asked;

static bool agree(const form_asked *asked) {
  if (!asked->output || (!lw_cli_ends_in(asked->output, ".pdf") && !lw_cli_ends_in(asked->output, ".html")))
    lw_cli_refuse("form", "bad-option: -o FILE is wanted, and FILE ends in .pdf or .html");
  else if (lw_output_is_table(asked->output, asked->tables))
    lw_cli_refuse("form", "bad-option: %.200s is a table in use; give the output another name",
                  asked->output);
  else
    return true;
  return false;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, form_asked *asked) {
  const lw_option options[] = {
      LW_OPTION_PAPER(&asked->paper),
      LW_OPTION_UNITS(&asked->units),
      LW_OPTION_TABLES(&asked->tables),
      LW_OPTION_OUTPUT(&asked->output),
      {0},
  };
  lw_arguments rest;
  int ended = lw_options_read(options, help, argc, argv, &rest);
  if (ended > 0) return ended;
  if (rest.count > 0) return lw_cli_refuse("form", "bad-option: \"%.80s\" is too much", rest.at[0]) + 1;
  return agree(asked) ? 0 : LW_EXIT_BAD_INPUT + 1;
}

static lw_form_units units_of(const form_asked *asked) {
  if (!asked->units) return LW_FORM_IN_BOTH;
  return strcmp(asked->units, "us") == 0 ? LW_FORM_IN_US : LW_FORM_IN_METRIC;
}

static lw_status make_pdf(const form_asked *asked, const lw_tables *tables, lw_text *out, lw_error *error) {
  lw_drawing page[LW_FORM_PAGES] = {0};
  int count = 0;
  bool letter = asked->paper && strcmp(asked->paper, "letter") == 0;
  lw_paper paper = letter ? LW_PAPER_LETTER : LW_PAPER_A4;
  lw_status status = lw_questions_form_pages(tables, paper, units_of(asked), page, &count, error);
  if (status == LW_OK) status = lw_drawing_pdf(page, count, out, error);
  for (int i = 0; i < LW_FORM_PAGES; i++) lw_drawing_free(&page[i]);
  return status;
}

static int make(const form_asked *asked, const lw_tables *tables) {
  lw_error error = {0};
  lw_text out = {0};
  bool html = lw_cli_ends_in(asked->output, ".html");
  lw_status status =
      html ? lw_questions_form_html(tables, units_of(asked), &out) : make_pdf(asked, tables, &out, &error);
  if (status == LW_OK) return lw_output_write(asked->output, &out, LW_EXIT_DONE);
  lw_text_free(&out);
  return lw_cli_fail("form", status, &error);
}

int lw_cli_form(int argc, char **argv) {
  form_asked asked = {0};
  int ended = read_options(argc, argv, &asked), exit_status = LW_EXIT_OTHER;
  if (ended > 0) return ended - 1;
  lw_tables *tables = lw_cli_tables(asked.tables, &exit_status);
  if (tables == NULL) return exit_status;
  exit_status = make(&asked, tables);
  free(tables);
  return exit_status;
}
