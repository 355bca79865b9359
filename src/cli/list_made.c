/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "list.h"

#include <math.h>
#include <string.h>

#include <lowwall/ground.h>
#include <lowwall/pressure.h>

#include "sheet/entry.h"

static void add_row(lw_text *csv, const char *const *cells) {
  for (int i = 0; cells[i] != NULL; i++) {
    if (i > 0) lw_text_add(csv, ",");
    lw_grid_add_cell(csv, cells[i]);
  }
  lw_text_add(csv, "\n");
}

/* The first row of a place has its other names. */
static bool is_first(const lw_tables *tables, int row) {
  for (int i = 0; i < row; i++)
    if (strcmp(tables->limit[i].place, tables->limit[row].place) == 0) return false;
  return true;
}

void lw_list_make_places(const lw_tables *tables, lw_text *csv) {
  lw_text_add(csv, "place,also,within,country,region,limits\n");
  for (int row = 0; row < tables->limit_count; row++) {
    const lw_limit_row *limit = &tables->limit[row];
    char rows[16];
    int count = 0;
    if (!is_first(tables, row)) continue;
    for (int i = row; i < tables->limit_count; i++)
      count += strcmp(tables->limit[i].place, limit->place) == 0;
    lw_print(rows, sizeof rows, "%d", count);
    add_row(csv, (const char *const[]){limit->place, limit->aliases, limit->within, limit->country,
                                       limit->region, rows, NULL});
  }
}

/* Title and source of a word that has a routine; a word without one has what the item means. */
static void add_method(const lw_item *item, int word, lw_text *csv) {
  char said[48];
  const char *title = word == 0 ? item->means : "", *source = "";
  if (strcmp(item->name, "method pressure") == 0) {
    const lw_pressure_routine *routine = lw_pressure_routine_of((lw_pressure_method)word);
    title = routine->title;
    source = routine->source;
  } else if (strcmp(item->name, "method passive by") == 0 && word != LW_PASSIVE_OWN) {
    const lw_pressure_routine *routine = lw_passive_routine_of((lw_passive_by)word);
    title = routine->title;
    source = routine->source;
  } else if (strcmp(item->name, "method active by") == 0 && word != LW_ACTIVE_OWN) {
    const lw_pressure_routine *routine = lw_active_routine_of(LW_PRESSURE_COULOMB, (lw_active_by)word);
    title = routine->title;
    source = routine->source;
  } else if (strcmp(item->name, "method bearing") == 0) {
    const lw_bearing_routine *routine = lw_bearing_routine_of((lw_bearing_method)word);
    title = routine != NULL ? routine->title : "presumptive values: lowwall list bearing";
    source = routine != NULL ? routine->source : "";
  }
  lw_item_word(item, word, said, sizeof said);
  add_row(csv, (const char *const[]){item->name, said, title, source, NULL});
}

static const char *word_of_kind(const lw_item *item) {
  return item->kind == LW_KIND_SHARE ? "a share" : item->kind == LW_KIND_ANGLE ? "an angle" : "a number";
}

void lw_list_make_methods(const lw_tables *tables, lw_text *csv) {
  (void)tables;
  lw_text_add(csv, "item,word,title,source\n");
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    char said[48];
    if (item->part != LW_ABOUT_METHOD) continue;
    if (item->type == LW_ITEM_QUANTITY)
      add_row(csv, (const char *const[]){item->name, word_of_kind(item), item->means, "", NULL});
    else if (item->type == LW_ITEM_WORDS)
      add_row(csv, (const char *const[]){item->name, "a name", item->means, "", NULL});
    else
      for (int word = 0; lw_item_word(item, word, said, sizeof said)[0] != '\0'; word++)
        add_method(item, word, csv);
  }
}

static void say_takes(const lw_item *item, char *out, size_t size) {
  char low[64], high[64];
  if (item->type == LW_ITEM_CHOICE) {
    lw_item_list_words(item, out, size);
  } else if (item->type == LW_ITEM_WORDS) {
    lw_print(out, size, "words, at most %d bytes", LW_WORDS_MAX - 1);
  } else {
    lw_item_say(item, item->low, low, sizeof low);
    lw_item_say(item, item->high, high, sizeof high);
    lw_print(out, size, "%s to %s%s%s", low, high,
             item->kind == LW_KIND_ANGLE_OR_SHARE ? ", or a share from 0 to 1" : "",
             item->also == LW_KIND_ANGLE   ? ", or an angle"
             : item->also == LW_KIND_FORCE ? ", or in kN"
                                           : "");
  }
}

static void say_default(const lw_item *item, char *out, size_t size) {
  bool none = item->type == LW_ITEM_WORDS || isnan(item->assumed);
  if (none)
    lw_print(out, size, "-");
  else if (item->type == LW_ITEM_CHOICE)
    lw_item_word(item, (int)item->assumed, out, size);
  else
    lw_item_say(item, item->assumed, out, size);
}

void lw_list_make_items(const lw_tables *tables, lw_text *csv) {
  (void)tables;
  lw_text_add(csv, "part,item,key,takes,default,example,means,question\n");
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    char name[LW_ITEM_NAME_MAX], key[96], takes[160], safe[64];
    lw_item_print_name(item, 0, name, sizeof name);
    lw_item_print_key(item, 0, key, sizeof key);
    say_takes(item, takes, sizeof takes);
    say_default(item, safe, sizeof safe);
    add_row(csv, (const char *const[]){lw_item_part_words(item->part), name, key, takes, safe, item->example,
                                       item->means, item->question, NULL});
  }
}

static const char *measured(lw_kind kind) {
  switch (kind) {
  case LW_KIND_NUMBER: return "number";
  case LW_KIND_COUNT: return "count";
  case LW_KIND_SHARE: return "share";
  case LW_KIND_LENGTH: return "length";
  case LW_KIND_ANGLE:
  case LW_KIND_ANGLE_OR_SHARE: return "angle";
  case LW_KIND_PRESSURE: return "pressure";
  case LW_KIND_LINE_LOAD: return "load a metre";
  case LW_KIND_FORCE: return "force";
  case LW_KIND_UNIT_WEIGHT: return "unit weight";
  case LW_KIND_MASS: return "mass";
  case LW_KIND_MOMENT: return "moment";
  case LW_KIND_POST_MOMENT: return "moment of one";
  case LW_KIND_VOLUME: return "volume";
  case LW_KIND_AREA: return "area";
  }
  return "";
}

void lw_list_make_units(const lw_tables *tables, lw_text *csv) {
  const lw_unit *unit;
  (void)tables;
  lw_text_add(csv, "unit,measures,to_si,si_unit\n");
  for (size_t i = 0; (unit = lw_unit_at(i)) != NULL; i++) {
    char factor[40];
    lw_print(factor, sizeof factor, "%.15g", unit->to_si);
    add_row(csv,
            (const char *const[]){unit->name, measured(unit->kind), factor, lw_kind_unit(unit->kind), NULL});
  }
}
