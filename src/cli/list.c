/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "list.h"

#include <stdlib.h>
#include <string.h>

#include "base/canned.h"
#include "sheet/items_document.h"
#include "tables/find.h"
#include "cli.h"
#include "options.h"
#include "output.h"
#include "tables/fold.h"
#include "tables/quote.h"

typedef struct list_asked {
  const lw_list *list;
  bool csv, json, markdown;
  const char *tables, *output, *only; /* only: a place or a set of factors */
} list_asked;

enum { LIST_MOST = 24 };

static int print_help(void) {
  lw_text text = {0};
  lw_text_add(&text,
              "lowwall list LIST [--csv | --json | --markdown] [--tables DIR] [-o FILE]\n"
              "lowwall list limits PLACE\n"
              "lowwall list formats FORMAT\n"
              "\n"
              "Print the published values in effect, with their sources, or what a sheet may hold.\n"
              "seen: read in a public copy; memory: known, not read; derived, proposal: made by this\n"
              "project; practice: common practice, no source. docs/sources.md says what a [KEY ...] is.\n\n");
  const lw_list *list;
  for (size_t i = 0; (list = lw_list_at(i)) != NULL; i++)
    lw_text_addf(&text, "  %-10s  %s\n", list->name, list->about);
  lw_text_add(&text,
              "\n"
              "  --csv               as CSV; a published table as it stands in its file\n"
              "  --json              as JSON, an object a row\n"
              "  --markdown          of items: the tables of docs/sheet.md\n"
              "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its\n"
              "                      name\n"
              "  -o, --output FILE   write there, the whole of it or nothing\n"
              "  -h, --help          this page\n");
  return lw_output_write(NULL, &text, LW_EXIT_DONE);
}

static const lw_list *find(const char *name) {
  const char *names[LIST_MOST] = {NULL};
  const lw_list *list;
  for (size_t i = 0; (list = lw_list_at(i)) != NULL && i + 1 < LIST_MOST; i++) {
    if (strcmp(list->name, name) == 0) return list;
    names[i] = list->name;
  }
  const char *nearest = lw_cli_nearest(name, names);
  if (nearest != NULL)
    lw_cli_refuse("list", "bad-option: there is no list \"%.80s\"; the nearest is %s", name, nearest);
  else
    lw_cli_refuse("list", "bad-option: there is no list \"%.80s\"", name);
  return NULL;
}

static bool is_of(const list_asked *asked, const char *list) {
  return strcmp(asked->list->name, list) == 0;
}

/* What the options ask, held against each other. */
static bool agree(const list_asked *asked) {
  if (asked->csv + asked->json + asked->markdown > 1) {
    lw_cli_refuse("list", "bad-option: one of --csv, --json and --markdown");
  } else if (asked->markdown && !is_of(asked, "items")) {
    lw_cli_refuse("list", "bad-option: --markdown is for items only");
  } else if (asked->only != NULL && !is_of(asked, "limits") && !is_of(asked, "formats")) {
    lw_cli_refuse("list", "bad-option: \"%.80s\" is too much: a name stands behind limits and formats only",
                  asked->only);
  } else {
    return true;
  }
  return false;
}

static bool take_arguments(const lw_arguments *arguments, list_asked *asked) {
  if (arguments->count == 0) {
    lw_cli_refuse("list", "bad-option: the name of a list is wanted, as in lowwall list soils");
    return false;
  }
  asked->list = find(arguments->at[0]);
  if (asked->list == NULL) return false;
  asked->only = arguments->at[1];
  if (arguments->count > 2) {
    lw_cli_refuse("list", "bad-option: \"%.80s\" is too much", arguments->at[2]);
    return false;
  }
  return agree(asked);
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, list_asked *asked) {
  const lw_option options[] = {
      {"csv", .flag = &asked->csv},           {"json", .flag = &asked->json},
      {"markdown", .flag = &asked->markdown}, LW_OPTION_TABLES(&asked->tables),
      LW_OPTION_OUTPUT(&asked->output),       {0},
  };
  lw_arguments rest;
  int ended = lw_options_read(options, NULL, argc, argv, &rest);
  if (ended == LW_OPTIONS_HELP) return print_help() + 1;
  if (ended > 0) return ended;
  if (!take_arguments(&rest, asked)) return LW_EXIT_BAD_INPUT + 1;
  if (!lw_output_is_table(asked->output, asked->tables)) return 0;
  return lw_cli_refuse("list", "bad-option: %.200s is a table in use; give the output another name",
                       asked->output) +
         1;
}

/* Is there such a place or set? Otherwise the nearest is named. */
static bool is_known(const list_asked *asked, const lw_tables *tables) {
  bool place = is_of(asked, "limits");
  bool known =
      place ? lw_tables_has_place(tables, asked->only) : lw_tables_has_factor_set(tables, asked->only);
  if (known) return true;
  const char *nearest = lw_tables_nearest(tables, place ? "places" : "formats", asked->only);
  const char *all = place ? "; lowwall list places has those that are" : "; lowwall list formats has them";
  lw_cli_refuse("list", "bad-option: no %s \"%.80s\" is on file%s%s", place ? "place" : "format", asked->only,
                nearest != NULL ? "; the nearest is " : all, nearest != NULL ? nearest : "");
  return false;
}

static bool applies(const list_asked *asked, const lw_tables *tables, const char *key) {
  char folded[LW_FOLDED_MAX], other[LW_FOLDED_MAX];
  if (is_of(asked, "formats")) {
    lw_fold(asked->only, strlen(asked->only), folded);
    lw_fold(key, strlen(key), other);
    return strcmp(folded, other) == 0;
  }
  lw_places places = {0};
  lw_tables_add_places(tables, lw_tables_place_row(tables, asked->only), &places);
  for (int i = 0; i < tables->limit_count; i++)
    if (strcmp(tables->limit[i].id, key) == 0) return places.at[tables->limit_place[i]];
  return false;
}

static void keep_only(const list_asked *asked, const lw_tables *tables, lw_grid *grid) {
  int column = lw_grid_column(grid, is_of(asked, "limits") ? "id" : "format");
  for (int row = grid->rows - 1; row > 0; row--)
    if (!applies(asked, tables, lw_grid_at(grid, row, column))) lw_grid_remove(grid, row);
}

/* For people and programs a sentence has its figures, and measures in both units; --csv prints the file as it
 * stands. */
static lw_status say_quotes(const lw_tables *tables, const lw_text *csv, lw_text *said) {
  char wrong[LW_QUOTE_MAX];
  lw_text quoted = {0};
  lw_status status = lw_quote_all(tables, csv->data != NULL ? csv->data : "", &quoted, wrong);
  if (status == LW_OK) lw_canned_add_both(quoted.data != NULL ? quoted.data : "", said);
  lw_text_free(&quoted);
  return said->failed ? LW_NO_MEMORY : status;
}

static lw_status write_form(const list_asked *asked, const lw_tables *tables, const lw_text *csv,
                            lw_text *out) {
  lw_grid grid = {0};
  lw_text said = {0};
  lw_status status = asked->csv ? LW_OK : say_quotes(tables, csv, &said);
  if (status == LW_OK) status = lw_grid_read(asked->csv ? csv : &said, &grid);
  lw_text_free(&said);
  if (status == LW_OK && asked->only != NULL) keep_only(asked, tables, &grid);
  if (status == LW_OK && asked->json)
    status = lw_list_json(asked->list, &grid, out);
  else if (status == LW_OK && asked->csv)
    lw_grid_csv(&grid, out);
  else if (status == LW_OK)
    lw_list_text(asked->list, &grid, out);
  lw_grid_free(&grid);
  return status;
}

static lw_status fill(const list_asked *asked, const lw_tables *tables, lw_text *out) {
  if (asked->markdown) {
    lw_items_document(out);
    return LW_OK;
  }
  lw_text csv = {0};
  lw_status status = LW_OK;
  if (asked->list->make != NULL)
    asked->list->make(tables, &csv);
  else
    status = lw_tables_csv(asked->tables, asked->list->name, &csv, NULL);
  if (status == LW_OK && csv.failed) status = LW_NO_MEMORY;
  if (status == LW_OK && asked->csv && asked->only == NULL)
    lw_text_add_bytes(out, csv.data, csv.length);
  else if (status == LW_OK)
    status = write_form(asked, tables, &csv, out);
  lw_text_free(&csv);
  return status;
}

static int print(const list_asked *asked, const lw_tables *tables) {
  lw_text out = {0};
  if (asked->only != NULL && !is_known(asked, tables)) return LW_EXIT_BAD_INPUT;
  lw_status status = fill(asked, tables, &out);
  if (status == LW_OK) return lw_output_write(asked->output, &out, LW_EXIT_DONE);
  lw_text_free(&out);
  if (status == LW_NO_MEMORY) return lw_cli_no_memory();
  return lw_cli_refuse("list", "%s: the table %s cannot be read", lw_status_slug(status), asked->list->name);
}

int lw_cli_list(int argc, char **argv) {
  list_asked asked = {0};
  int ended = read_options(argc, argv, &asked);
  if (ended > 0) return ended - 1;
  int exit_status = LW_EXIT_OTHER;
  lw_tables *tables = lw_cli_tables(asked.tables, &exit_status);
  if (tables == NULL) return exit_status;
  exit_status = print(&asked, tables);
  free(tables);
  return exit_status;
}
