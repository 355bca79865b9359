/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "formula.h"

#include <math.h>
#include <string.h>

#include "sheet/entry.h"
#include "sheet/faults.h"
#include "output.h"
#include "say.h"

enum { ITEM_TEXT_MAX = 1024 };

static size_t find(const lw_formula_sheet *sheet, const char *folded) {
  for (size_t i = 0; i < sheet->count; i++)
    if (strcmp(folded, sheet->item[i].item.name) == 0 || strcmp(folded, sheet->item[i].sheet_name) == 0)
      return i;
  return sheet->count;
}

static void unknown(const lw_formula_sheet *sheet, const char *folded, int number, lw_formula_given *given) {
  const char *nearest = "";
  int best = 1 + (int)strlen(folded) / 3;
  for (size_t i = 0; i < sheet->count; i++) {
    int distance = lw_edit_distance(folded, sheet->item[i].item.name);
    if (distance < best) {
      best = distance;
      nearest = sheet->item[i].item.name;
    }
  }
  lw_cell_place place = {0, number};
  if (nearest[0] != '\0')
    lw_faults_add(&given->faults, LW_FAULT_UNKNOWN_ITEM, place, "", folded, "an item; the nearest is \"%s\"",
                  nearest);
  else
    lw_faults_add(&given->faults, LW_FAULT_UNKNOWN_ITEM, place, "", folded, "an item of `lowwall %s --help`",
                  given->faults.file);
}

static void store_word(const lw_item *item, const char *text, lw_formula_value *value, lw_faults *faults) {
  char folded[LW_FOLDED_MAX], words[128];
  lw_fold(text, strlen(text), folded);
  int word = lw_item_word_value(item, folded);
  lw_item_list_words(item, words, sizeof words);
  if (word < 0)
    lw_faults_add(faults, LW_FAULT_UNKNOWN_WORD, (lw_cell_place){0, value->argument}, item->name, text,
                  "one of: %s", words);
  value->word = word < 0 ? 0 : word;
}

static void store_number(const lw_item *item, const char *text, lw_formula_value *value, lw_faults *faults) {
  lw_entry entry = {.item = item, .value = text, .length = strlen(text), .column = value->argument};
  lw_measured measured;
  char wanted[160];
  lw_fault_slug slug = lw_measure(&entry, &measured, wanted, sizeof wanted);
  if (slug != LW_FAULT_SLUG_COUNT) {
    lw_faults_add(faults, slug, (lw_cell_place){0, value->argument}, item->name, text, "%s", wanted);
    return;
  }
  value->si = measured.si;
  value->kind = measured.kind;
  value->in = measured.in;
}

static void trim(char *text) {
  size_t lead = strspn(text, " \t"), used = strlen(text + lead);
  memmove(text, text + lead, used + 1);
  while (used > 0 && (text[used - 1] == ' ' || text[used - 1] == '\t')) text[--used] = '\0';
}

static void store(const lw_formula_sheet *sheet, size_t index, const char *written, lw_formula_given *given) {
  const lw_item *item = &sheet->item[index].item;
  lw_formula_value *value = &given->value[index];
  lw_cell_place place = {0, value->argument};
  char text[ITEM_TEXT_MAX];
  if (strlen(written) >= sizeof text) {
    lw_faults_add(&given->faults, LW_FAULT_CELL_TOO_LONG, place, item->name, "", "at most %d bytes",
                  ITEM_TEXT_MAX - 1);
    return;
  }
  memcpy(text, written, strlen(written) + 1);
  trim(text);
  if (text[0] == '\0')
    lw_faults_add(&given->faults, LW_FAULT_NO_VALUE, place, item->name, "", "a value, as in %s",
                  item->example);
  else if (item->type == LW_ITEM_CHOICE)
    store_word(item, text, value, &given->faults);
  else
    store_number(item, text, value, &given->faults);
}

/* The first item that is needed: there is one in every command. */
static const lw_item *first_needed(const lw_formula_sheet *sheet) {
  size_t i = 0;
  while (i + 1 < sheet->count && !sheet->item[i].needed) i++;
  return &sheet->item[i].item;
}

static void take(const lw_formula_sheet *sheet, const char *argument, int number, lw_formula_given *given) {
  const char *equals = strchr(argument, '=');
  char folded[LW_FOLDED_MAX];
  lw_cell_place place = {0, number};
  if (equals == NULL) {
    const lw_item *item = first_needed(sheet);
    lw_faults_add(&given->faults, LW_FAULT_NO_VALUE, place, "", argument, "item=value, as in '%s=%s'",
                  item->name, item->example);
    return;
  }
  lw_fold(argument, (size_t)(equals - argument), folded);
  size_t index = find(sheet, folded);
  if (index == sheet->count && sheet->more != NULL && sheet->more(folded)) {
    (void)lw_sheet_override(argument, number, given->more, &given->faults);
    return;
  }
  if (index == sheet->count) {
    unknown(sheet, folded, number, given);
    return;
  }
  lw_formula_value *value = &given->value[index];
  if (value->given) {
    lw_faults_add(&given->faults, LW_FAULT_DUPLICATE_ITEM, place, sheet->item[index].item.name, argument,
                  "the item once; it is item %d already", value->argument);
    return;
  }
  *value = (lw_formula_value){
      .given = true, .argument = number, .written = equals + 1, .kind = sheet->item[index].item.kind};
  store(sheet, index, equals + 1, given);
}

static void note_missing(const lw_formula_sheet *sheet, lw_formula_given *given) {
  for (size_t i = 0; i < sheet->count; i++) {
    const lw_item *item = &sheet->item[i].item;
    if (sheet->item[i].needed && !given->value[i].given)
      lw_faults_add(&given->faults, LW_FAULT_MISSING_ITEM, (lw_cell_place){0, 0}, item->name, "", "'%s=%s'",
                    item->name, item->example);
  }
}

int lw_formula_help(const lw_formula_sheet *sheet) {
  char words[128];
  lw_text page = {0};
  lw_text_add(&page, sheet->usage);
  for (size_t i = 0; i < sheet->count; i++) {
    const lw_item *item = &sheet->item[i].item;
    if (item->type == LW_ITEM_CHOICE)
      lw_item_list_words(item, words, sizeof words);
    else
      lw_item_list_units(item, words, sizeof words);
    lw_text_addf(&page, "  %-27s %s%s (%s)\n", item->name, item->means,
                 sheet->item[i].needed ? " Needed." : "", words);
  }
  return lw_output_write(NULL, &page, LW_EXIT_DONE);
}

/* What most of what was measured is written in. */
static lw_units units_of(const lw_formula_given *given) {
  int written[2] = {0};
  for (size_t i = 0; i < given->sheet->count; i++) {
    const lw_formula_value *v = &given->value[i];
    bool measured = v->kind == LW_KIND_LENGTH || v->kind >= LW_KIND_PRESSURE;
    if (v->given && measured && fabs(v->si) > 0.0) written[v->in]++;
  }
  return written[LW_UNITS_US] > written[LW_UNITS_METRIC] ? LW_UNITS_US : LW_UNITS_METRIC;
}

void lw_formula_take_units(const char *units, lw_formula_given *given) {
  given->units = units == NULL ? units_of(given) : strcmp(units, "us") == 0 ? LW_UNITS_US : LW_UNITS_METRIC;
}

void lw_formula_begin(const lw_formula_sheet *sheet, const char *name, lw_formula_given *given) {
  memset(given, 0, sizeof *given);
  given->sheet = sheet;
  lw_print(given->faults.file, sizeof given->faults.file, "%s", name);
}

void lw_formula_take(const lw_arguments *items, lw_formula_given *given) {
  for (int i = 0; i < items->count; i++) take(given->sheet, items->at[i], i + 1, given);
  note_missing(given->sheet, given);
}

int lw_formula_read(const lw_formula_sheet *sheet, int argc, char **argv, lw_formula_given *given) {
  const char *units = NULL;
  const lw_option options[] = {{"json", .flag = &given->json}, LW_OPTION_UNITS(&units), {0}};
  lw_arguments items;
  lw_formula_begin(sheet, argv[0], given);
  int ended = lw_options_read(options, NULL, argc, argv, &items);
  if (ended == LW_OPTIONS_HELP) return lw_formula_help(sheet) + 1;
  if (ended > 0) return ended;
  lw_formula_take(&items, given);
  lw_formula_take_units(units, given);
  return 0;
}

void lw_formula_contradict(lw_formula_given *given, size_t item, const char *wanted) {
  const lw_formula_value *value = &given->value[item];
  lw_faults_add(&given->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){0, value->argument},
                given->sheet->item[item].item.name, value->written, "%s", wanted);
}

int lw_formula_refuse(const lw_formula_given *given, const char *name) {
  lw_faults faults = given->faults;
  lw_print(faults.file, sizeof faults.file, "lowwall %s", name);
  return lw_cli_print_faults(&faults);
}
