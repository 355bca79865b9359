/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <getopt.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

#include "check.h"
#include "cli.h"
#include "output.h"

/* `lowwall order` and `lowwall pegs`: two pages of the same order. */

static const char order_help[] =
    "lowwall order [--csv | --json] [--tables DIR] [-o FILE] [SHEET] [ITEM=VALUE ...]\n"
    "\n"
    "What to order for the wall of a sheet as it is given: blocks course by course, cuts, caps, stone, "
    "soil.\n"
    "It needs the plan, `run 1 length` at least. It does not say that the wall may be built: the check's\n"
    "headline stands first.\n";
static const char pegs_help[] =
    "lowwall pegs [--csv | --json] [--tables DIR] [-o FILE] [SHEET] [ITEM=VALUE ...]\n"
    "\n"
    "Where the pegs of the wall of a sheet go, the levels, the order of work with the points at which to "
    "stop\n"
    "and look, and what to read after hand-over. The check's headline stands first.\n";
static const char options_help[] =
    "\n"
    "  --csv               as CSV\n"
    "  --json              everything, as JSON\n"
    "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n"
    "  -o, --output FILE   write there, the whole of it or nothing; - is standard output\n"
    "  -h, --help          this page\n"
    "\n"
    "One wall at a time: a schedule is refused. Exit status 0, 2 bad input or bad options, 1 anything "
    "else.\n";

typedef struct asked {
  const char *command;
  lw_order_page page;
  bool csv, json;
  const char *tables, *output;
  lw_check_asked items;
} asked;

typedef struct work {
  lw_faults faults;
  lw_input input;
  lw_case c;
  lw_result result;
  lw_order order;
} work;

static bool take_arguments(int argc, char **argv, asked *a) {
  a->items.item = argv + optind;
  for (int i = optind; i < argc; i++) {
    const char *equals = strchr(argv[i], '=');
    bool item = equals != NULL && memchr(argv[i], '/', (size_t)(equals - argv[i])) == NULL;
    if (item) {
      a->items.item[a->items.item_count++] = argv[i];
    } else if (a->items.sheet == NULL && argv[i][0] != '\0') {
      a->items.sheet = argv[i];
    } else {
      lw_cli_refuse(a->command, "bad-option: \"%.200s\": one sheet at a time, then ITEM=VALUE", argv[i]);
      return false;
    }
  }
  if (a->items.sheet != NULL || a->items.item_count > 0) return true;
  lw_cli_refuse(a->command, "bad-option: a sheet is wanted, or items as in 'run 1 length=6 m'");
  return false;
}

static int print_help(const asked *a) {
  lw_text page = {0};
  lw_text_add(&page, a->page == LW_PAGE_ORDER ? order_help : pegs_help);
  lw_text_add(&page, options_help);
  return lw_output_write(NULL, &page, LW_EXIT_DONE);
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, asked *a) {
  static const struct option options[] = {
      {"csv", no_argument, NULL, 'c'},          {"json", no_argument, NULL, 'j'},
      {"tables", required_argument, NULL, 't'}, {"output", required_argument, NULL, 'o'},
      {"help", no_argument, NULL, 'h'},         {0}};
  optind = 0;
  opterr = 0;
  for (int option; (option = getopt_long(argc, argv, ":o:h", options, NULL)) != -1;) {
    bool well = true;
    switch (option) {
    case 'c': a->csv = true; break;
    case 'j': a->json = true; break;
    case 't': well = lw_cli_take_once(a->command, "--tables", optarg, &a->tables); break;
    case 'o': well = lw_cli_take_once(a->command, "--output", optarg, &a->output); break;
    case 'h': return print_help(a) + 1;
    default: return lw_cli_refuse_option(a->command, argv, option) + 1;
    }
    if (!well) return LW_EXIT_BAD_INPUT + 1;
  }
  if (a->csv && a->json) return lw_cli_refuse(a->command, "bad-option: --csv or --json, not both") + 1;
  return take_arguments(argc, argv, a) ? 0 : LW_EXIT_BAD_INPUT + 1;
}

static lw_status report(const asked *a, const work *w, lw_text *text) {
  if (a->json) return lw_report_order_json(&w->result, &w->order, a->page, 2, text);
  if (a->csv) return lw_report_order_csv(&w->result, &w->order, a->page, text);
  lw_text_style style = {.columns = 80};
  return lw_report_order_text(&w->result, &w->order, a->page, &style, text);
}

static int finish(const asked *a, const lw_tables *tables, work *w) {
  lw_error error = {0};
  lw_text text = {0};
  lw_check_override(&a->items, &w->c, &w->faults);
  if (lw_case_settle(tables, &w->c, &w->faults) == LW_OK) lw_case_settle_order(tables, &w->c, &w->faults);
  if (w->faults.count > 0) return lw_cli_print_faults(&w->faults);
  if (lw_run(&w->c, tables, &w->result, &error) != LW_OK)
    return lw_cli_refuse(a->command, "%s: %s", lw_status_slug(error.status), error.text);
  if (lw_order_make(&w->result, &w->order, &w->faults) != LW_OK) return lw_cli_print_faults(&w->faults);
  if (report(a, w, &text) == LW_OK) return lw_output_write(a->output, &text, LW_EXIT_DONE);
  lw_text_free(&text);
  return lw_cli_no_memory();
}

static int read_sheet(const asked *a, const lw_tables *tables, work *w) {
  lw_text bytes = {0};
  if (a->items.sheet == NULL) {
    lw_print(w->faults.file, sizeof w->faults.file, "lowwall %s", a->command);
    return finish(a, tables, w);
  }
  if (lw_input_open(&w->input, a->items.sheet, &w->faults) != LW_OK) return lw_cli_print_faults(&w->faults);
  if (lw_sheet_is_schedule(w->input.block, w->input.length))
    return lw_cli_refuse(a->command,
                         "bad-option: %.200s is a schedule; an order is made from the sheet of one wall",
                         a->items.sheet);
  lw_status status = lw_input_rest(&w->input, &bytes, &w->faults);
  if (status == LW_OK) lw_sheet_read(bytes.data != NULL ? bytes.data : "", bytes.length, &w->c, &w->faults);
  lw_text_free(&bytes);
  if (status == LW_NO_MEMORY) return lw_cli_no_memory();
  return status == LW_OK ? finish(a, tables, w) : lw_cli_print_faults(&w->faults);
}

static int run(int argc, char **argv, const char *command, lw_order_page page) {
  asked a = {.command = command, .page = page};
  int ended = read_options(argc, argv, &a);
  if (ended > 0) return ended - 1;
  int exit_status = LW_EXIT_OTHER;
  lw_tables *tables = lw_cli_tables(a.tables, &exit_status);
  if (tables == NULL) return exit_status;
  work *w = calloc(1, sizeof *w);
  exit_status = w != NULL ? read_sheet(&a, tables, w) : lw_cli_no_memory();
  if (w != NULL) lw_input_close(&w->input);
  free(w);
  free(tables);
  return exit_status;
}

int lw_cli_order(int argc, char **argv) {
  return run(argc, argv, "order", LW_PAGE_ORDER);
}

int lw_cli_pegs(int argc, char **argv) {
  return run(argc, argv, "pegs", LW_PAGE_PEGS);
}
