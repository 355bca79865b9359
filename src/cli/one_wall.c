/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include "one_wall.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "sheet/likely.h"
#include "say.h"
#include "output.h"

bool lw_wall_is_item(const char *argument) {
  const char *equals = strchr(argument, '=');
  return equals != NULL && memchr(argument, '/', (size_t)(equals - argument)) == NULL;
}

/* An item whose value was forgotten, rather than a file of that name. */
static bool lacks_value(const char *argument) {
  int number;
  return lw_item_find(argument, lw_likely_stem(argument, strlen(argument)), &number) != NULL &&
         access(argument, F_OK) != 0;
}

static bool take(char *argument, lw_wall_asked *asked) {
  const char *command = asked->command;
  if (lw_wall_is_item(argument)) {
    asked->item[asked->item_count++] = argument;
    return true;
  }
  if (argument[0] == '\0')
    lw_cli_refuse(command, "bad-option: an empty argument is neither a sheet nor ITEM=VALUE");
  else if (lacks_value(argument))
    lw_cli_refuse(command, "no-value: \"%.80s\" is an item and wants a value, as in 'wall height=900 mm'",
                  argument);
  else if (asked->sheet != NULL && asked->wants_list && asked->list == NULL)
    asked->list = argument;
  else if (asked->sheet != NULL)
    lw_cli_refuse(command, "bad-option: %.200s and %.200s: one sheet at a time; a schedule holds many walls",
                  asked->sheet, argument);
  else
    asked->sheet = argument;
  return asked->sheet == argument || asked->list == argument;
}

/* Would the output take the place of a file that it is made from? */
static bool eats(const lw_wall_asked *asked, const char *name) {
  struct stat in, out;
  if (name == NULL || asked->output == NULL || strcmp(asked->output, "-") == 0) return false;
  int known = strcmp(name, "-") == 0 ? fstat(STDIN_FILENO, &in) : stat(name, &in);
  if (known != 0 || stat(asked->output, &out) != 0) return false;
  return S_ISREG(out.st_mode) && in.st_dev == out.st_dev && in.st_ino == out.st_ino;
}

void lw_wall_add_item(lw_wall_asked *asked, const char *name, const char *value) {
  if (value == NULL) return;
  assert(asked->option_item_count < LW_OPTION_ITEMS);
  char *item = asked->option_item[asked->option_item_count++];
  lw_print(item, sizeof asked->option_item[0], "%s=%s", name, value);
}

const char *lw_wall_item(const lw_wall_asked *asked, int index) {
  int of_option = index - asked->item_count;
  if (of_option < 0) return asked->item[index];
  return of_option < asked->option_item_count ? asked->option_item[of_option] : NULL;
}

bool lw_wall_take_arguments(const lw_arguments *arguments, lw_wall_asked *asked) {
  asked->item = arguments->at;
  for (int i = 0; i < arguments->count; i++)
    if (!take(arguments->at[i], asked)) return false;
  lw_wall_add_item(asked, "units", asked->units);
  if (asked->sheet == NULL && asked->item_count == 0)
    lw_cli_refuse(asked->command, "bad-option: a sheet is wanted, or items as in 'wall height=600 mm'");
  else if (eats(asked, asked->list))
    lw_cli_refuse(asked->command, "bad-option: %.200s is the list itself; give the output another name",
                  asked->output);
  else if (eats(asked, asked->sheet))
    lw_cli_refuse(asked->command, "bad-option: %.200s is the sheet itself; give the output another name",
                  asked->output);
  else if (lw_output_is_table(asked->output, asked->tables))
    lw_cli_refuse(asked->command, "bad-option: %.200s is a table in use; give the output another name",
                  asked->output);
  else
    return true;
  return false;
}

void lw_wall_override(const lw_wall_asked *asked, lw_case *c, lw_faults *faults) {
  const char *item;
  for (int i = 0; (item = lw_wall_item(asked, i)) != NULL; i++) lw_sheet_override(item, i + 1, c, faults);
}

void lw_wall_close(lw_one_wall *wall) {
  if (wall == NULL) return;
  lw_input_close(&wall->input);
  free(wall->tables);
  free(wall);
}

/* What keeps a sheet from being read, said aloud. gives the exit status + 1 */
static int unread(const lw_one_wall *wall, lw_status status) {
  return (status == LW_NO_MEMORY ? lw_cli_no_memory() : lw_cli_print_faults(&wall->faults)) + 1;
}

/* gives 0 to go on, else the exit status + 1 */
static int open_sheet(const lw_wall_asked *asked, lw_one_wall *wall) {
  if (asked->sheet == NULL) {
    lw_print(wall->faults.file, sizeof wall->faults.file, "lowwall %s", asked->command);
    return 0;
  }
  lw_status status = lw_input_open(&wall->input, asked->sheet, &wall->faults);
  if (status != LW_OK) return unread(wall, status);
  wall->many = lw_sheet_is_schedule(wall->input.block, wall->input.length);
  return 0;
}

lw_one_wall *lw_wall_open(const lw_wall_asked *asked, int *exit_status) {
  lw_tables *tables = lw_cli_tables(asked->tables, exit_status);
  if (tables == NULL) return NULL;
  lw_one_wall *wall = calloc(1, sizeof *wall);
  if (wall == NULL) {
    free(tables);
    *exit_status = lw_cli_no_memory();
    return NULL;
  }
  wall->tables = tables;
  int ended = open_sheet(asked, wall);
  if (ended == 0) return wall;
  *exit_status = ended - 1;
  lw_wall_close(wall);
  return NULL;
}

static int read_rest(const lw_wall_asked *asked, lw_one_wall *wall) {
  lw_text bytes = {0};
  if (wall->many)
    return lw_cli_refuse(asked->command,
                         "bad-option: %.200s is a schedule, and this is for one wall; give the sheet of one",
                         asked->sheet) +
           1;
  lw_status status = lw_input_rest(&wall->input, &bytes, &wall->faults);
  if (status == LW_OK)
    lw_sheet_read(bytes.data != NULL ? bytes.data : "", bytes.length, &wall->c, &wall->faults);
  lw_text_free(&bytes);
  return status == LW_OK ? 0 : unread(wall, status);
}

int lw_wall_read(const lw_wall_asked *asked, lw_one_wall *wall) {
  int ended = asked->sheet != NULL ? read_rest(asked, wall) : 0;
  if (ended == 0) lw_wall_override(asked, &wall->c, &wall->faults);
  return ended;
}

void lw_wall_complete(const lw_wall_asked *asked, lw_one_wall *wall) {
  (asked->complete ? asked->complete : lw_case_complete)(wall->tables, &wall->c, &wall->faults);
}

int lw_wall_run(const lw_wall_asked *asked, lw_one_wall *wall) {
  lw_error error = {0};
  int ended = lw_wall_read(asked, wall);
  if (ended > 0) return ended;
  lw_wall_complete(asked, wall);
  if (wall->faults.count > 0) return lw_cli_print_faults(&wall->faults) + 1;
  if (lw_run(&wall->c, wall->tables, LW_DETAIL_EVERYTHING, &wall->result, &error) == LW_OK) return 0;
  return lw_cli_refuse(asked->command, "%s: %s", lw_status_slug(error.status), error.text) + 1;
}
