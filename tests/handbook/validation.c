/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "validation.h"
#include "../ordinary/walls.h"

#include <criterion/criterion.h>
#include <math.h>
#include <stdio.h>
#include <string.h>

#include "wall_rows.h"

/* The document is written from the same rows that the tests hold: nothing in it is typed by hand. */

typedef enum mark { SEEN, MEMORY, DERIVED, MARKS } mark;

typedef struct count {
  int agree, differ;
} count;

/* One file of rows: its own counts, all its lines, and those that differ. */
typedef struct part {
  count count[MARKS];
  lw_text lines, differ;
} part;

static mark mark_of(const case_row *row) {
  if (strcmp(row->seen, "seen") == 0) return SEEN;
  return strcmp(row->seen, "memory") == 0 ? MEMORY : DERIVED;
}

/* A bar would end the cell of a table. */
static void add_cell(lw_text *out, const char *text) {
  lw_text_add(out, " ");
  for (; *text != '\0'; text++) {
    if (*text == '|') lw_text_add(out, "\\");
    lw_text_add_bytes(out, text, 1);
  }
  lw_text_add(out, " |");
}

static void add_value(lw_text *out, const case_row *row, const char *number) {
  lw_text_addf(out, " %s%s%s |", number, row->unit[0] ? " " : "", row->unit);
}

/* Per cent of the published value; of nought, the difference itself. */
static void add_difference(lw_text *out, double ours, double theirs) {
  bool nought = fabs(theirs) < 1e-12;
  double difference = nought ? ours - theirs : 100.0 * (ours - theirs) / fabs(theirs);
  if (fabs(difference) < 0.005) difference = 0.0;
  lw_text_addf(out, " %.2f%s |", difference, nought ? "" : " %");
}

static const char *verdict_of(const case_row *row) {
  return strcmp(row->agrees, "derived") == 0 ? "as derived" : row->agrees;
}

static void add_line(lw_text *out, const case_row *row, double ours, bool whole) {
  bool derived = mark_of(row) == DERIVED;
  const char *theirs = derived ? row->recomputed : row->published;
  bool none = strcmp(theirs, "none") == 0;
  lw_text_add(out, "|");
  add_cell(out, row->id);
  add_cell(out, row->about);
  if (none) {
    lw_text_add(out, " no answer | no answer | - |");
  } else {
    char number[32];
    lw_print(number, sizeof number, "%.6g", ours);
    add_value(out, row, theirs);
    add_value(out, row, number);
    add_difference(out, ours, case_number_of(theirs));
  }
  add_cell(out, row->source);
  add_cell(out, row->seen);
  if (whole) lw_text_addf(out, " %s%s", verdict_of(row), row->note[0] ? ":" : "");
  add_cell(out, row->note);
  lw_text_add(out, "\n");
}

static void take_row(void *context, const case_row *row, case_outcome outcome, double ours) {
  part *p = context;
  bool differs = strcmp(row->agrees, "no") == 0;
  bool answered = outcome == CASE_VALUE || strcmp(row->recomputed, "none") == 0;
  count *c = &p->count[mark_of(row)];
  cr_assert(answered, "%s has no number of ours", row->id);
  *(differs ? &c->differ : &c->agree) += 1;
  add_line(&p->lines, row, ours, true);
  if (differs) add_line(&p->differ, row, ours, false);
}

static void add_intro(lw_text *out) {
  lw_text_add(
      out,
      "# Validation\n\n"
      "Numbers of books and papers beside ours. `make validation` writes this page from the rows of\n"
      "`tests/handbook/` and the library as it is, and a test holds it: a number that moves here moves\n"
      "nowhere unseen. How each book's convention is repeated stands in its row or in the sheet of its\n"
      "example, `tests/handbook/walls/`; what a source is, in [sources.md](sources.md).\n\n"
      "- *seen*: the number was read in a public copy of the source. Some copies work a book's example\n"
      "  anew by program; the last digit is then the copy's.\n"
      "- *memory*: the number is known, and was not read. **A value from memory guards against change and\n"
      "  proves nothing.**\n"
      "- *derived*: no number was published; a formula was worked out by another program.\n\n"
      "A row agrees when ours is within the tolerance of the printed digits. Where it does not, the reason\n"
      "stands beside it, ours is held to a value worked out independently, and nothing is tuned to the\n"
      "printed one.\n\n");
}

static void add_count(lw_text *out, const char *name, const part *p) {
  lw_text_addf(out, "| %s |", name);
  for (int m = SEEN; m < MARKS; m++) {
    const count *c = &p->count[m];
    if (m == DERIVED)
      lw_text_addf(out, " %d |\n", c->agree);
    else
      lw_text_addf(out, " %d | %d |", c->agree, c->differ);
  }
}

static part sum_of(const part *parts, int count_of_parts) {
  part sum = {.count = {{0, 0}}};
  for (int i = 0; i < count_of_parts; i++) {
    for (int m = SEEN; m < MARKS; m++) {
      sum.count[m].agree += parts[i].count[m].agree;
      sum.count[m].differ += parts[i].count[m].differ;
    }
  }
  return sum;
}

static void add_head(lw_text *out, const char *last) {
  lw_text_addf(out,
               "| case | what | published, or derived | ours | difference | source | mark | %s |\n"
               "| --- | --- | --- | --- | --- | --- | --- | --- |\n",
               last);
}

/* Numbers of the examples that are not held, from files of their own. */
static void add_left_out(lw_text *out, const char *file) {
  char line[CASE_LINE_MAX], cell[5][CASE_CELL_MAX];
  FILE *in = fopen(file, "r");
  cr_assert_not_null(in);
  for (bool head = true; fgets(line, sizeof line, in) != NULL; head = false) {
    const char *at = line;
    for (int i = 0; i < 5; i++) {
      cr_assert_not_null(at, "too few cells in: %s", line);
      at = case_cell(at, cell[i]);
    }
    if (head) continue;
    lw_text_add(out, "|");
    add_cell(out, cell[0]);
    add_cell(out, cell[1]);
    lw_text_addf(out, " %s%s%s |", cell[3][0] ? cell[3] : "-", cell[2][0] ? " " : "", cell[2]);
    add_cell(out, cell[4]);
    lw_text_add(out, "\n");
  }
  fclose(in);
}

/* The files of rows, in the order of the page; whole walls stand first and are run by their own. */
static const struct {
  const char *name, *file;
  case_run run;
} files[] = {
    {"Whole walls", "tests/handbook/walls.csv", NULL},
    {"Earth pressure", "tests/handbook/earth_pressure.csv", case_earth_pressure},
    {"Loads at a distance", "tests/handbook/loads.csv", case_loads},
    {"Bearing", "tests/handbook/bearing.csv", case_bearing},
    {"Slips", "tests/handbook/slip.csv", case_slip},
    {"Compaction and narrow beds", "tests/handbook/building.csv", case_building},
    {"Fences", "tests/handbook/fence.csv", case_fence},
};

enum { PARTS = sizeof files / sizeof files[0] };

static void take_files(part *parts) {
  for (int i = 0; i < PARTS; i++) {
    if (files[i].run == NULL)
      (void)wall_each(files[i].file, take_row, &parts[i]);
    else
      (void)case_each(files[i].file, files[i].run, take_row, &parts[i]);
  }
}

void validation_write(lw_text *out) {
  part parts[PARTS] = {0};
  take_files(parts);
  part all = sum_of(parts, PARTS);
  add_intro(out);
  lw_text_add(out, "| | seen, agrees | seen, differs | memory, agrees | memory, differs | derived |\n"
                   "| --- | --- | --- | --- | --- | --- |\n");
  for (int i = 0; i < PARTS; i++) add_count(out, files[i].name, &parts[i]);
  add_count(out, "all", &all);
  lw_text_add(out, "\n## What differs, and why\n\n");
  add_head(out, "why");
  for (int i = 0; i < PARTS; i++)
    if (parts[i].differ.length > 0) lw_text_add(out, parts[i].differ.data);
  lw_text_add(out, "\n## Left out\n\nNumbers of the examples below that nothing here is held against.\n\n"
                   "| case | what | published | why |\n| --- | --- | --- | --- |\n");
  add_left_out(out, "tests/handbook/walls_left_out.csv");
  add_left_out(out, "tests/handbook/left_out.csv");
  for (int i = 0; i < PARTS; i++) {
    lw_text_addf(out, "\n## %s\n\n", files[i].name);
    add_head(out, "agrees");
    lw_text_add(out, parts[i].lines.data);
    lw_text_free(&parts[i].lines);
    lw_text_free(&parts[i].differ);
  }
  ordinary_write(out);
}
