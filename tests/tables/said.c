/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Every sentence of every table that is told in the reader's units. */
#include <criterion/criterion.h>

#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "base/canned.h"
#include "tables/quote.h"
#include "tables/shape.h"
#include "../report/measures.h"
#include "help.h"

typedef void (*sentence_taker)(const lw_shape *shape, const lw_column *column, const char *name,
                               const char *sentence);

static int each_sentence(sentence_taker take) {
  const lw_tables *tables = tables_built_in();
  const lw_shape *shape;
  int told = 0;
  for (size_t i = 0; (shape = lw_shape_at(i)) != NULL; i++) {
    int count;
    memcpy(&count, (const char *)tables + shape->count_offset, sizeof count);
    for (int row = 0; row < count; row++) {
      const char *at = (const char *)tables + shape->rows_offset + (size_t)row * shape->row_size;
      for (size_t k = 0; k < shape->column_count; k++) {
        const lw_column *column = &shape->columns[k];
        if (column->type != LW_COLUMN_SAID) continue;
        take(shape, column, at + shape->columns[0].offset, at + column->offset);
        told++;
      }
    }
  }
  return told;
}

/* In a block of its own size, so that the sanitizer sees a read past its end. */
static void hold_prefix(const char *sentence, size_t length) {
  char *copy = malloc(length + 1), said[1200], wrong[LW_QUOTE_MAX];
  lw_text text = {0};
  cr_assert_not_null(copy);
  memcpy(copy, sentence, length);
  copy[length] = '\0';
  for (int units = LW_UNITS_METRIC; units <= LW_UNITS_US; units++)
    cr_expect_leq(strlen(lw_canned_told((lw_units)units, copy, said, sizeof said)), length);
  cr_expect_leq(strlen(lw_canned_both(copy, said, sizeof said)), length, "%s", said);
  (void)lw_quote_all(tables_built_in(), copy, &text, wrong);
  lw_text_free(&text);
  free(copy);
}

static void hold_prefixes(const lw_shape *shape, const lw_column *column, const char *name,
                          const char *sentence) {
  (void)shape, (void)column, (void)name;
  const char *brace = strchr(sentence, '{');
  if (!brace) return;
  for (size_t length = (size_t)(brace - sentence); length <= strlen(sentence); length++)
    hold_prefix(sentence, length);
}

Test(said, no_beginning_of_a_sentence_is_read_past_its_end) {
  cr_expect_gt(each_sentence(hold_prefixes), 500);
}

/* A figure before a unit, outside of braces and of the brackets of a source. */
static const char *bare_measure(const char *sentence) {
  static const char *const UNITS[] = {"mm", "m", "m2", "m3", "kPa", "kN", "kN/m", "kN/m3", "kg", "t"};
  for (const char *at = sentence; *at != '\0'; at++) {
    if (*at == '{') at += strcspn(at, "}");
    if (*at == '[') at += strcspn(at, "]");
    if (*at == '\0') break;
    if (!isdigit((unsigned char)at[0]) || at[1] != ' ') continue;
    size_t length = strcspn(at + 2, " ,;.:)");
    for (size_t i = 0; i < sizeof UNITS / sizeof *UNITS; i++)
      if (strlen(UNITS[i]) == length && strncmp(at + 2, UNITS[i], length) == 0) return at;
  }
  return NULL;
}

/* Exempt are the words of a law, which stand as they are, and figures that only lists and JSON have. */
static void hold_both_ways(const lw_shape *shape, const lw_column *column, const char *name,
                           const char *sentence) {
  bool law = strcmp(shape->name, "limits") == 0 && strncmp(name, "DEFAULT", 7) != 0;
  bool number = strcmp(column->header, "number") == 0;
  if (law || number) return;
  const char *bare = bare_measure(sentence);
  cr_expect_null(bare, "%s, %s: one system only: %s", shape->name, name, bare);
}

Test(said, every_measure_stands_in_both_units) {
  cr_expect_not_null(bare_measure("wide 3 m"));
  cr_expect_null(bare_measure("{3 m = 10 ft}, [KEY 3 m] and 3 mains, 1:10"));
  (void)each_sentence(hold_both_ways);
}

/* The least and the most of a side's lengths, in metres: "30 to 50 mm", "1-1/4 to 2 in", "6 ft 7 in". Of two
 * figures the first has the other's unit. false: it names no length. */
static bool lengths_of(const char *side, size_t length, double *least, double *most) {
  char words[80];
  const char *at = words;
  double waits = NAN;
  snprintf(words, sizeof words, "%.*s", (int)length, side);
  *least = INFINITY, *most = 0.0;
  for (measure m; measure_next(&at, &m);) {
    const lw_unit *unit = lw_unit_find(LW_KIND_LENGTH, m.unit, strlen(m.unit));
    if (unit) {
      *least = fmin(*least, unit->to_si * fmin(m.value, waits)); /* fmin passes over what is no number */
      *most = fmax(*most, unit->to_si * fmax(m.value, waits));
    }
    waits = unit ? NAN : m.value;
  }
  return *most > 0.0;
}

static int pairs;

/* A round figure of the trade on either side, no farther than a third from the other. */
static void hold_alike(const lw_shape *shape, const lw_column *column, const char *name,
                       const char *sentence) {
  (void)column;
  for (const char *at = strchr(sentence, '{'); at; at = strchr(at + 1, '{')) {
    double least, most, us_least, us_most;
    const char *equals = strstr(at, " = "), *end = strchr(at, '}');
    cr_assert(equals && end && equals < end, "%s, %s: %s", shape->name, name, at);
    if (!lengths_of(at + 1, (size_t)(equals - at - 1), &least, &most)) continue;
    cr_assert(lengths_of(equals + 3, (size_t)(end - equals - 3), &us_least, &us_most), "%s", at);
    pairs++;
    cr_expect(us_least > 0.75 * least && us_most < 1.3 * most, "%s, %s: %g to %g is %g to %g, %s",
              shape->name, name, least, most, us_least, us_most, at);
  }
}

Test(said, both_units_say_the_same_measure) {
  pairs = 0;
  (void)each_sentence(hold_alike);
  cr_expect_gt(pairs, 30);
}
