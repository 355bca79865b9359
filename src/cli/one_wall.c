/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include "one_wall.h"

#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "sheet/likely.h"
#include "say.h"
#include "output.h"

/* An item has a "=" and no "/" before it; a file with "=" in its name can be given as ./NAME. */
static bool is_item(const char *argument) {
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
  if (is_item(argument)) {
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

/* The last of the items; all move up into the place of the option. */
static bool take_units(lw_wall_asked *asked) {
  if (asked->units == NULL) return true;
  if (strcmp(asked->units, "metric") != 0 && strcmp(asked->units, "us") != 0) {
    lw_cli_refuse(asked->command, "bad-option: --units %.40s: metric or us is wanted", asked->units);
    return false;
  }
  lw_print(asked->units_item, sizeof asked->units_item, "units=%s", asked->units);
  asked->item--;
  memmove(asked->item, asked->item + 1, (size_t)asked->item_count * sizeof *asked->item);
  asked->item[asked->item_count++] = asked->units_item;
  return true;
}

bool lw_wall_take_arguments(int argc, char **argv, int first, lw_wall_asked *asked) {
  asked->item = argv + first;
  for (int i = first; i < argc; i++)
    if (!take(argv[i], asked)) return false;
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
    return take_units(asked);
  return false;
}

void lw_wall_override(const lw_wall_asked *asked, lw_case *c, lw_faults *faults) {
  for (int i = 0; i < asked->item_count; i++) lw_sheet_override(asked->item[i], i + 1, c, faults);
  if (asked->also != NULL) lw_sheet_override(asked->also, asked->item_count + 1, c, faults);
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
    return lw_cli_refuse(asked->command, "bad-option: %.200s is a schedule; this is for one wall",
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

int lw_wall_run(const lw_wall_asked *asked, lw_one_wall *wall) {
  lw_error error = {0};
  int ended = lw_wall_read(asked, wall);
  if (ended > 0) return ended;
  (asked->complete ? asked->complete : lw_case_complete)(wall->tables, &wall->c, &wall->faults);
  if (wall->faults.count > 0) return lw_cli_print_faults(&wall->faults) + 1;
  if (lw_run(&wall->c, wall->tables, LW_DETAIL_EVERYTHING, &wall->result, &error) == LW_OK) return 0;
  return lw_cli_refuse(asked->command, "%s: %s", lw_status_slug(error.status), error.text) + 1;
}
