/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include "check.h"

#include <getopt.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <lowwall/report.h>

#include "cli.h"
#include "output.h"

static const char help[] =
    "lowwall check [--working | --json] [--format NAME | --format all] [--tables DIR] [-o FILE] [SHEET]\n"
    "              [ITEM=VALUE ...]\n"
    "\n"
    "Check the wall of a sheet, or the many walls of a schedule: what it is, whether it stands, who must\n"
    "sign.\n"
    "SHEET is a CSV file, or - for standard input. Items on the command line override it, as in\n"
    "'wall height=1.2 m'; without a sheet they make the wall.\n"
    "\n"
    "  --working           every step of the calculation after the report\n"
    "  --json              everything, as JSON; of a schedule an object a line\n"
    "  --format NAME       by that set of factors, as 'method format=NAME' does: see lowwall list formats\n"
    "  --format all        by the sheet's own set, and what governs under every other; of one wall\n"
    "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n"
    "  -o, --output FILE   write there, the whole of it or nothing; - is standard output\n"
    "  -h, --help          this page\n"
    "\n"
    "The results of a schedule are CSV, a row a wall.\n"
    "\n"
    "Exit status, of many walls the gravest in the order 1, 2, 5, 4, 3, 0:\n"
    "  0  every deciding check holds and the wall is below the limit on file; confirm with the authority\n"
    "  3  ask the council before building\n"
    "  4  a deciding check falls short, or cannot be shown\n"
    "  5  a licensed engineer must design it\n"
    "  2  bad input or bad options: a line a fault on standard error, and nothing written\n"
    "  1  anything else: the output could not be written, no memory\n";

/* All that a check of one wall needs, too big for a stack. */
typedef struct check_work {
  lw_faults faults;
  lw_input input;
  lw_case c;
  lw_result result, scratch;
} check_work;

/* An item has a "=" and no "/" before it; a file with "=" in its name can be given as ./NAME. */
static bool is_item(const char *argument) {
  const char *equals = strchr(argument, '=');
  return equals != NULL && memchr(argument, '/', (size_t)(equals - argument)) == NULL;
}

/* An item whose value was forgotten, rather than a file of that name. */
static bool lacks_value(const char *argument) {
  int number;
  return lw_item_find(argument, strlen(argument), &number) != NULL && access(argument, F_OK) != 0;
}

static bool take_arguments(int argc, char **argv, lw_check_asked *asked) {
  asked->item = argv + optind;
  for (int i = optind; i < argc; i++) {
    if (is_item(argv[i])) {
      asked->item[asked->item_count++] = argv[i];
    } else if (argv[i][0] == '\0') {
      lw_cli_refuse("check", "bad-option: an empty argument is neither a sheet nor ITEM=VALUE");
      return false;
    } else if (lacks_value(argv[i])) {
      lw_cli_refuse("check", "no-value: \"%.80s\" is an item and wants a value, as in 'wall height=900 mm'",
                    argv[i]);
      return false;
    } else if (asked->sheet != NULL) {
      lw_cli_refuse("check",
                    "bad-option: %.200s and %.200s: one sheet at a time; a schedule holds many walls",
                    asked->sheet, argv[i]);
      return false;
    } else {
      asked->sheet = argv[i];
    }
  }
  if (asked->sheet != NULL || asked->item_count > 0) return true;
  lw_cli_refuse("check", "bad-option: a sheet is wanted, or items as in 'wall height=600 mm'");
  return false;
}

/* Would the output take the place of the sheet it is made from? */
static bool eats_its_sheet(const lw_check_asked *asked) {
  struct stat in, out;
  if (asked->sheet == NULL || asked->output == NULL || strcmp(asked->output, "-") == 0) return false;
  int known = strcmp(asked->sheet, "-") == 0 ? fstat(STDIN_FILENO, &in) : stat(asked->sheet, &in);
  if (known != 0 || stat(asked->output, &out) != 0) return false;
  return S_ISREG(out.st_mode) && in.st_dev == out.st_dev && in.st_ino == out.st_ino;
}

/* A format by name is the item of that name; there is room for it, for the option took more than one. */
static void take_format(lw_check_asked *asked) {
  if (asked->format == NULL) return;
  asked->all_formats = strcmp(asked->format, "all") == 0;
  if (asked->all_formats) return;
  lw_print(asked->format_item, sizeof asked->format_item, "method format=%s", asked->format);
  asked->item[asked->item_count++] = asked->format_item;
}

static bool agree(const lw_check_asked *asked) {
  if (asked->working && asked->json) {
    lw_cli_refuse("check", "bad-option: --working is text; leave out --json");
    return false;
  }
  if (!eats_its_sheet(asked)) return true;
  lw_cli_refuse("check", "bad-option: %.200s is the sheet itself; give the output another name",
                asked->output);
  return false;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, lw_check_asked *asked) {
  static const struct option options[] = {
      {"working", no_argument, NULL, 'w'}, {"json", no_argument, NULL, 'j'},
      {"tables", required_argument, NULL, 't'},
      {"format", required_argument, NULL, 'f'}, {"output", required_argument, NULL, 'o'},
      {"help", no_argument, NULL, 'h'}, {"version", no_argument, NULL, 'v'}, {0}};
  optind = 0;   /* glibc: begin anew, whatever was read before */
  opterr = 0;
  for (int option; (option = getopt_long(argc, argv, ":o:h", options, NULL)) != -1;) {
    bool well = true;
    switch (option) {
    case 'w': asked->working = true; break;
    case 'j': asked->json = true; break;
    case 'f': well = lw_cli_take_once("check", "--format", optarg, &asked->format); break;
    case 't': well = lw_cli_take_once("check", "--tables", optarg, &asked->tables); break;
    case 'o': well = lw_cli_take_once("check", "--output", optarg, &asked->output); break;
    case 'v': return lw_cli_version(1, argv) + 1;
    case 'h': return lw_cli_print(help) + 1;
    default: return lw_cli_refuse_option("check", argv, option) + 1;
    }
    if (!well) return LW_EXIT_BAD_INPUT + 1;
  }
  if (!take_arguments(argc, argv, asked) || !agree(asked)) return LW_EXIT_BAD_INPUT + 1;
  take_format(asked);
  return 0;
}

void lw_check_override(const lw_check_asked *asked, lw_case *c, lw_faults *faults) {
  for (int i = 0; i < asked->item_count; i++) lw_sheet_override(asked->item[i], i + 1, c, faults);
}

static lw_text_style style_of(const lw_check_asked *asked) {
  const char *none = getenv("NO_COLOR"), *terminal = getenv("TERM");
  bool standard = asked->output == NULL || strcmp(asked->output, "-") == 0;
  bool dumb = terminal == NULL || terminal[0] == '\0' || strcmp(terminal, "dumb") == 0;
  bool refused = none != NULL && none[0] != '\0';
  bool colour = standard && !refused && !dumb && isatty(STDOUT_FILENO) == 1;
  return (lw_text_style){.colour = colour, .columns = 80};
}

static lw_status report(const lw_check_asked *asked, const lw_result *result, lw_text *text) {
  enum { INDENT = 2 };
  if (asked->json) return lw_report_json(result, INDENT, text);
  lw_text_style style = style_of(asked);
  lw_status status = lw_report_text(result, &style, text);
  return status == LW_OK && asked->working ? lw_report_working(result, &style, text) : status;
}

/* From a case that was read to its report. */
static int finish(const lw_check_asked *asked, const lw_tables *tables, check_work *work) {
  lw_error error = {0};
  lw_text text = {0};
  lw_check_override(asked, &work->c, &work->faults);
  lw_case_settle(tables, &work->c, &work->faults);
  if (work->faults.count > 0) return lw_cli_print_faults(&work->faults);
  if (lw_run(&work->c, tables, &work->result, &error) != LW_OK)
    return lw_cli_refuse("check", "%s: %s", lw_status_slug(error.status), error.text);
  lw_remedies_find(&work->result, &work->scratch);
  lw_water_find(&work->result, &work->scratch);
  if (asked->all_formats)
    lw_formats_compare(&work->result.wall, tables, &work->result.formats, &work->scratch.situations);
  if (report(asked, &work->result, &text) == LW_OK)
    return lw_output_write(asked->output, &text, work->result.verdict.exit_status);
  lw_text_free(&text);
  return lw_cli_no_memory();
}

static int check_upright(const lw_check_asked *asked, const lw_tables *tables, check_work *work) {
  lw_text bytes = {0};
  lw_status status = lw_input_rest(&work->input, &bytes, &work->faults);
  if (status == LW_OK)
    lw_sheet_read(bytes.data != NULL ? bytes.data : "", bytes.length, &work->c, &work->faults);
  lw_text_free(&bytes);
  if (status == LW_NO_MEMORY) return lw_cli_no_memory();
  return status == LW_OK ? finish(asked, tables, work) : lw_cli_print_faults(&work->faults);
}

static int check_schedule(const lw_check_asked *asked, const lw_tables *tables, check_work *work) {
  if (asked->working)
    return lw_cli_refuse("check", "bad-option: --working is for one wall; %.200s is a schedule",
                         asked->sheet);
  if (asked->all_formats)
    return lw_cli_refuse("check", "bad-option: --format all is for one wall; %.200s is a schedule",
                         asked->sheet);
  return lw_check_schedule(asked, tables, &work->input, &work->faults);
}

static int check(const lw_check_asked *asked, const lw_tables *tables, check_work *work) {
  if (asked->sheet == NULL) {
    lw_print(work->faults.file, sizeof work->faults.file, "lowwall check");
    return finish(asked, tables, work);
  }
  if (lw_input_open(&work->input, asked->sheet, &work->faults) != LW_OK)
    return lw_cli_print_faults(&work->faults);
  bool many = lw_sheet_is_schedule(work->input.block, work->input.length);
  return many ? check_schedule(asked, tables, work) : check_upright(asked, tables, work);
}

int lw_cli_check(int argc, char **argv) {
  lw_check_asked asked = {0};
  int ended = read_options(argc, argv, &asked);
  if (ended > 0) return ended - 1;
  int exit_status = LW_EXIT_OTHER;
  lw_tables *tables = lw_cli_tables(asked.tables, &exit_status);
  if (tables == NULL) return exit_status;
  check_work *work = calloc(1, sizeof *work);
  exit_status = work != NULL ? check(&asked, tables, work) : lw_cli_no_memory();
  if (work != NULL) lw_input_close(&work->input);
  free(work);
  free(tables);
  return exit_status;
}
