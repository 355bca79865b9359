/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "echo.h"

#include <math.h>
#include <stddef.h>
#include <string.h>

#include "report/page.h"
#include "sheet/likely.h"

/* The case said back: each value as its user would write it, with where it came from. */

static bool is_angle(lw_kind kind) {
  return kind == LW_KIND_ANGLE || kind == LW_KIND_ANGLE_OR_SHARE;
}

static bool is_pure(lw_kind kind) {
  return kind == LW_KIND_NUMBER || kind == LW_KIND_COUNT || kind == LW_KIND_SHARE;
}

static const char *words_unit(const lw_item *item, const lw_quantity *q, double *factor) {
  const lw_unit *unit = is_pure(q->kind) ? NULL : lw_unit_find(q->kind, item->unit, strlen(item->unit));
  const char *si = lw_kind_unit(q->kind);
  if (!unit && !is_pure(q->kind)) unit = lw_unit_find(q->kind, si, strlen(si));
  *factor = unit ? unit->to_si : 1.0;
  return unit ? unit->name : "";
}

/* A share of another angle is said as a share, and its key's value is the angle it comes to. */
static void echo_share(const lw_result *result, const lw_quantity *q, lw_echo *echo) {
  lw_print(echo->words, sizeof echo->words, "%.6g of the soil's angle", q->si);
  echo->value = (lw_number){result->wall.wall_friction_rad * LW_DEG_PER_RAD, true};
  echo->unit = "deg";
}

static bool is_slope(const lw_item *item) {
  return item->kind == LW_KIND_ANGLE && (strstr(item->name, "slope") || strstr(item->name, "batter"));
}

/* A slope of one in so many is said so beside its degrees. Degrees come this near to such a slope only where
 * they are one. gives false of any other */
static bool echo_slope(const lw_quantity *q, lw_echo *echo) {
  enum { LONGEST_RUN = 1000 };
  static const double SAME = 1e-12, HALVES = 2.0;
  double slope = tan(q->si);
  if (!is_slope(echo->item) || fabs(slope) < 1.0 / LONGEST_RUN) return false;
  double run = round(HALVES / fabs(slope)) / HALVES;
  if (!(run > 0.0) || fabs(fabs(slope) * run - 1.0) >= SAME) return false;
  lw_print(echo->words, sizeof echo->words, "%s1:%.6g, %.4g deg", slope < 0.0 ? "-" : "", run,
           q->si * LW_DEG_PER_RAD);
  return true;
}

static void echo_quantity(const lw_result *result, const lw_quantity *q, lw_echo *echo) {
  double factor;
  bool angle = is_angle(q->kind);
  echo->origin = q->origin;
  echo->row = q->row;
  echo->column = q->column;
  echo->worked_out = q->origin == LW_GIVEN && q->row == LW_WORKED_OUT_ROW;
  if (echo->item->kind == LW_KIND_ANGLE_OR_SHARE && !angle) {
    echo_share(result, q, echo);
    return;
  }
  echo->value = (lw_number){angle ? q->si * LW_DEG_PER_RAD : q->si, true};
  echo->unit = angle ? "deg" : lw_kind_unit(q->kind);
  if (echo_slope(q, echo)) return;
  const char *unit = words_unit(echo->item, q, &factor);
  bool more = q->origin == LW_GIVEN && q->table_row == LW_MORE_THAN;
  if (lw_units_differ(result->units, q->kind))
    lw_print(echo->words, sizeof echo->words, "%s%s", more ? "more than " : "",
             lw_value_of(result->units, q->kind, q->si).text);
  else
    lw_print(echo->words, sizeof echo->words, unit[0] ? "%s%.6g %s" : "%s%.6g%s", more ? "more than " : "",
             q->si / factor, unit);
}

static void echo_choice(const lw_choice *choice, lw_echo *echo) {
  echo->origin = choice->origin;
  echo->row = choice->row;
  echo->column = choice->column;
  if (choice->origin != LW_ABSENT) lw_item_word(echo->item, choice->value, echo->words, sizeof echo->words);
}

static void echo_words(const lw_words *words, lw_echo *echo) {
  echo->origin = words->origin;
  echo->row = words->row;
  echo->column = words->column;
  lw_text_clean(words->text, echo->words, sizeof echo->words);
}

/* The part of a soil row that a value came from. */
static const lw_origin_note *note_of(const lw_soil_row *row, const char *name) {
  if (strstr(name, "weight")) return &row->weight_from;
  if (strstr(name, "porosity")) return &row->porosity_from;
  return strstr(name, "bearing") ? &row->bearing_from : &row->from;
}

/* Friction that stands in for what is not given keeps its row as well. */
static bool stands_in(const lw_item *item) {
  return item->offset == offsetof(lw_case, ground.base_friction) ||
         item->offset == offsetof(lw_case, courses.joint_friction) ||
         item->offset == offsetof(lw_case, wall.friction);
}

/* A value from a table keeps its row: loads for loads, interfaces for friction, soils for all else. */
static void find_source(const lw_result *result, const lw_quantity *q, lw_echo *echo) {
  const lw_tables *tables = result->tables;
  if (echo->item->part == LW_ABOUT_METHOD) return;
  if (stands_in(echo->item)) {
    if (q->origin != LW_GIVEN && q->table_row >= 0)
      lw_print(echo->source, sizeof echo->source, "%s", tables->interface_[q->table_row].from.source);
    return;
  }
  bool load = strncmp(echo->item->name, "load", 4) == 0;
  int count = load ? tables->load_count : tables->soil_count;
  if (q->origin == LW_GIVEN || q->table_row < 0 || q->table_row >= count) return;
  if (q->origin == LW_ASSUMED && !load) return;
  const lw_origin_note *from =
      load ? &tables->load[q->table_row].from : note_of(&tables->soil[q->table_row], echo->item->name);
  lw_print(echo->source, sizeof echo->source, "%s", from->source);
}

/* A method item that a book's conventions brought keeps the book. */
static void find_book(const lw_result *result, lw_echo *echo) {
  const lw_conventions_row *row =
      lw_tables_conventions(result->tables, result->given.method.conventions.text);
  if (echo->item->part == LW_ABOUT_METHOD && echo->origin == LW_TABLE && row)
    lw_print(echo->source, sizeof echo->source, "%s", row->from.source);
}

static void echo_one(const lw_result *result, lw_case *c, lw_echo *echo) {
  const lw_item *item = echo->item;
  if (item->type == LW_ITEM_QUANTITY) {
    const lw_quantity *q = lw_item_quantity(item, echo->number, c);
    echo_quantity(result, q, echo);
    find_source(result, q, echo);
  } else if (item->type == LW_ITEM_CHOICE) {
    echo_choice(lw_item_choice(item, echo->number, c), echo);
  } else {
    echo_words(lw_item_words(item, echo->number, c), echo);
  }
  find_book(result, echo);
  lw_item_print_name(item, echo->number, echo->name, sizeof echo->name);
  lw_item_print_key(item, echo->number, echo->key, sizeof echo->key);
}

/* The likely value beside it, which the sheet gives. */
static void echo_likely(const lw_result *result, const lw_item *item, int number, lw_echo_taker taker,
                        void *context) {
  const lw_quantity *q = item->type == LW_ITEM_QUANTITY ? lw_item_likely(item, number, &result->given) : NULL;
  lw_echo echo = {.item = item, .number = number, .unit = "", .likely = true};
  if (!q) return;
  echo_quantity(result, q, &echo);
  /* Of which angle a likely share is one, only the likely look knows. */
  if (q->kind == LW_KIND_SHARE) {
    echo.value = (lw_number){q->si, true};
    echo.unit = "";
  }
  lw_likely_print_name(item, number, echo.name, sizeof echo.name);
  lw_likely_print_key(item, number, echo.key, sizeof echo.key);
  taker(context, &echo);
}

void lw_echo_each(const lw_result *result, lw_echo_taker taker, void *context) {
  lw_case c = result->given;
  for (size_t i = 0; i < lw_item_count(); i++) {
    const lw_item *item = lw_item_at(i);
    for (int n = item->repeats > 0 ? 1 : 0; n <= item->repeats; n++) {
      lw_echo echo = {.item = item, .number = n, .unit = ""};
      echo_one(result, &c, &echo);
      if (echo.origin != LW_ABSENT) taker(context, &echo);
      echo_likely(result, item, n, taker, context);
    }
  }
}
