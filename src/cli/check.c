/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include "check.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include <lowwall/report.h>

#include "cli.h"
#include "crew.h"
#include "options.h"
#include "output.h"

static const char help[] =
    "lowwall check [--full | --working | --json] [--as FORM] [--likely] [--format NAME | --format all]\n"
    "              [--units metric|us] [--tables DIR] [-j N] [-o FILE] [SHEET] [ITEM=VALUE ...]\n"
    "\n"
    "Check the wall of a sheet, or the many walls of a schedule: what it is, whether it stands, who must\n"
    "sign.\n"
    "SHEET is a CSV file, or - for standard input. Items on the command line override it, as in\n"
    "'wall height=1.2 m'; without a sheet they make the wall.\n"
    "\n"
    "  --full              the whole report; without it the first screen, 60 lines at most\n"
    "  --working           the whole report, and every step of the calculation after it\n"
    "  --working=all       and every joint in full, not only the one nearest to its limit\n" LW_CLI_AS_HELP
    "  --likely            of a schedule: what each wall has by likely values; left out, those that fall "
    "short\n"
    "  --json              everything, as JSON; of a schedule an object a line\n"
    "  --format NAME       by that set of factors, as 'method format=NAME' does: see lowwall list formats\n"
    "  --format all        the whole report, and what governs under every other set; of one wall\n"
    "  --units metric|us   what it is written in; left out, as most of the sheet is measured\n"
    "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n"
    "  -j, --jobs N        check a schedule with N threads, 1 to 256; left out it is 1. The output is the\n"
    "                      same whatever N is; of one wall nothing changes. -j $(nproc) uses every core\n"
    "  -o, --output FILE   write there, the whole of it or nothing; - is standard output\n"
    "  -h, --help          this page\n"
    "\n"
    "The results of a schedule are CSV, a row a wall in the order of the schedule. While it runs, a line on\n"
    "a terminal shows how far it is.\n"
    "\n"
    "Exit status, of many walls the gravest in the order 1, 2, 5, 4, 3, 0:\n"
    "  0  every deciding check holds and the wall is below the limit on file; confirm with the authority\n"
    "  3  ask the council before building\n"
    "  4  a deciding check falls short, or cannot be shown\n"
    "  5  a licensed engineer must design it\n"
    "  2  bad input or bad options: a line a fault on standard error, and nothing written\n"
    "  1  anything else: the output could not be written, no memory\n";

static bool take_jobs(lw_check_asked *asked) {
  double jobs = 1.0;
  asked->jobs = 1;
  if (asked->jobs_given == NULL) return true;
  bool number = lw_number_read(asked->jobs_given, strlen(asked->jobs_given), &jobs);
  if (number && jobs >= 1.0 && jobs <= LW_CREW_MAX && floor(jobs) >= jobs) {
    asked->jobs = (int)jobs;
    return true;
  }
  lw_cli_refuse("check",
                "bad-option: --jobs %.40s: a number of threads from 1 to %d is wanted, at best that "
                "of the cores",
                asked->jobs_given, LW_CREW_MAX);
  return false;
}

/* Alone --working has one joint in full, with "all" every one. */
static bool take_working(lw_check_asked *asked) {
  if (asked->joints == NULL) return true;
  asked->every_joint = strcmp(asked->joints, "all") == 0;
  if (!asked->every_joint)
    lw_cli_refuse("check", "bad-option: --working=%.40s: all is wanted, for every joint in full, or nothing",
                  asked->joints);
  return asked->every_joint;
}

static bool agree(lw_check_asked *asked) {
  if (!lw_cli_take_as("check", false, asked->json, &asked->as)) return false;
  if (!asked->working || !asked->json) return true;
  lw_cli_refuse("check", "bad-option: --working is text; leave out --json");
  return false;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, lw_check_asked *asked) {
  const lw_option options[] = {
      {"full", .flag = &asked->full},
      {"working", .flag = &asked->working, .text = &asked->joints},
      {"likely", .flag = &asked->likely},
      {"json", .flag = &asked->json},
      LW_OPTION_AS(&asked->as.given),
      {"format", .text = &asked->format},
      {"jobs", 'j', .text = &asked->jobs_given},
      LW_OPTION_UNITS(&asked->wall.units),
      LW_OPTION_TABLES(&asked->wall.tables),
      LW_OPTION_OUTPUT(&asked->wall.output),
      {0},
  };
  lw_arguments rest;
  int ended = lw_options_read(options, help, argc, argv, &rest);
  if (ended > 0) return ended;
  if (!take_working(asked) || !take_jobs(asked) || !lw_wall_take_arguments(&rest, &asked->wall) ||
      !agree(asked))
    return LW_EXIT_BAD_INPUT + 1;
  asked->all_formats = asked->format != NULL && strcmp(asked->format, "all") == 0;
  if (!asked->all_formats) lw_wall_add_item(&asked->wall, "method format", asked->format);
  return 0;
}

static lw_text_style style_of(const lw_check_asked *asked) {
  const char *none = getenv("NO_COLOR"), *terminal = getenv("TERM");
  const char *output = asked->wall.output;
  bool standard = output == NULL || strcmp(output, "-") == 0;
  bool dumb = terminal == NULL || terminal[0] == '\0' || strcmp(terminal, "dumb") == 0;
  bool refused = none != NULL && none[0] != '\0';
  bool colour = asked->as.as == LW_AS_TEXT && standard && !refused && !dumb && isatty(STDOUT_FILENO) == 1;
  return (lw_text_style){
      .colour = colour, .columns = 80, .every_joint = asked->every_joint, .as = asked->as.as};
}

/* What people read, one document of a form. */
static lw_status pages(const lw_check_asked *asked, const lw_result *result, lw_text *text) {
  lw_text_style style = style_of(asked);
  char title[2 * LW_WORDS_MAX + 8];
  lw_cli_title(result, "Check of a wall", title, sizeof title);
  lw_report_begin(&style, title, text);
  bool screen = !asked->full && !asked->working && !asked->all_formats;
  lw_status status = screen ? lw_report_screen(result, &style, text) : lw_report_text(result, &style, text);
  if (status == LW_OK && asked->working) status = lw_report_working(result, &style, text);
  lw_report_end(&style, text);
  return text->failed ? LW_NO_MEMORY : status;
}

static lw_status report(const lw_check_asked *asked, const lw_result *result, lw_text *text) {
  enum { INDENT = 2 };
  return asked->json ? lw_report_json(result, INDENT, text) : pages(asked, result, text);
}

static int check_one(const lw_check_asked *asked, lw_one_wall *wall) {
  lw_result *result = &wall->result;
  lw_text text = {0};
  int ended = lw_wall_run(&asked->wall, wall);
  if (ended > 0) return ended - 1;
  lw_remedies_find(result, &wall->scratch);
  lw_water_find(result, &wall->scratch);
  if (asked->all_formats)
    lw_factor_sets_compare(&result->wall, wall->tables, &result->factor_sets, &wall->scratch.situations);
  if (report(asked, result, &text) == LW_OK)
    return lw_output_write(asked->wall.output, &text, result->verdict.exit_status);
  lw_text_free(&text);
  return lw_cli_no_memory();
}

static int check_schedule(const lw_check_asked *asked, lw_one_wall *wall) {
  const char *alone = asked->working                ? "--working"
                      : asked->all_formats          ? "--format all"
                      : asked->full && !asked->json ? "--full"
                                                    : NULL;
  if (asked->as.given != NULL)
    return lw_cli_refuse(
        "check",
        "bad-option: --as is for one wall; %.200s is a schedule, which gives CSV, or JSON with "
        "--json",
        asked->wall.sheet);
  if (alone != NULL)
    return lw_cli_refuse("check", "bad-option: %s is for one wall; %.200s is a schedule", alone,
                         asked->wall.sheet);
  return lw_check_schedule(asked, wall);
}

int lw_cli_check(int argc, char **argv) {
  lw_check_asked asked = {.wall = {.command = "check"}};
  int ended = read_options(argc, argv, &asked), exit_status = LW_EXIT_OTHER;
  if (ended > 0) return ended - 1;
  lw_one_wall *wall = lw_wall_open(&asked.wall, &exit_status);
  if (wall == NULL) return exit_status;
  exit_status = wall->many ? check_schedule(&asked, wall) : check_one(&asked, wall);
  lw_wall_close(wall);
  return exit_status;
}
