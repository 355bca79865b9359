/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <jansson.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "page/core.h"
#include "../../checks/random_wall.h"

/* The native answers that those of the module are held against: a line a request, a line its answer.
 *   native COUNT SHEET.csv ...
 * Every question about each sheet, then the figures of COUNT walls by chance, of some all. */

/* Of so many walls by chance one in full. */
enum { EACH_WHOLE = 20 };

static lw_tables tables;

static void answer(json_t *request) {
  char *line = json_dumps(request, JSON_COMPACT);
  lw_text out = {0};
  if (!line || lw_page_answer(&tables, NULL, line, strlen(line), &out) != LW_OK) exit(1);
  printf("%s\n%s", line, out.data);
  lw_text_free(&out);
  free(line);
  json_decref(request);
}

static char *read_file(const char *path) {
  FILE *file = fopen(path, "rb");
  size_t room = 1 << 20;
  char *text = calloc(1, room);
  if (!file || !text) exit(1);
  (void)fread(text, 1, room - 1, file);
  fclose(file);
  return text;
}

static void sheet(const char *path) {
  static const char *const DOES[] = {"questions", "check",   "advice",   "order",
                                     "pegs",      "working", "precheck", "sheet"};
  static const char *const VIEWS[] = {"section", "elevation", "plan"};
  char *text = read_file(path);
  for (size_t i = 0; i < sizeof DOES / sizeof *DOES; i++)
    answer(json_pack("{s:s,s:s}", "do", DOES[i], "sheet", text));
  for (size_t i = 0; i < sizeof VIEWS / sizeof *VIEWS; i++)
    answer(json_pack("{s:s,s:s,s:s}", "do", "draw", "view", VIEWS[i], "sheet", text));
  answer(json_pack("{s:s,s:s,s:s}", "do", "report", "as", "json", "sheet", text));
  answer(json_pack("{s:s,s:s,s:s}", "do", "report", "as", "text", "sheet", text));
  free(text);
}

static void by_chance(int count) {
  dice d = {20261129};
  for (int n = 0; n < count; n++) {
    random_wall wall = {.count = 0};
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, n);
    json_t *set = json_array();
    for (int i = 0; i < wall.count; i++) json_array_append_new(set, json_string(wall.text[i]));
    const char *as = n % EACH_WHOLE == 0 ? "json" : "figures";
    answer(json_pack("{s:s,s:s,s:s,s:o}", "do", "report", "as", as, "sheet", "", "set", set));
  }
}

int main(int argc, char **argv) {
  if (argc < 2 || lw_tables_read(NULL, &tables, NULL) != LW_OK) return 1;
  answer(json_pack("{s:s}", "do", "items"));
  for (int i = 2; i < argc; i++) sheet(argv[i]);
  double count;
  if (!lw_number_read(argv[1], strlen(argv[1]), &count)) return 1;
  by_chance((int)count);
  return 0;
}
