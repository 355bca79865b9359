/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "walls.h"

#include <stdio.h>
#include <string.h>

/* The walls as tables, for docs/validation.md. */

static void add_number(lw_text *out, lw_number n) {
  if (n.known)
    lw_text_addf(out, " %.2f |", n.value);
  else
    lw_text_add(out, " - |");
}

static void add_answer(lw_text *out, const ordinary_wall *wall, const ordinary_change *change) {
  ordinary_answer a = ordinary_run(wall, change);
  add_number(out, a.has);
  add_number(out, a.likely);
  lw_text_addf(out, " %s | %s |", lw_grade_slug(a.grade), a.governs);
}

typedef struct table {
  lw_text *out;
  const char *class;
  ordinary_change change;
} table;

static void add_row(void *context, const ordinary_wall *wall) {
  const table *t = context;
  if (!ordinary_is(wall, t->class)) return;
  lw_text_addf(t->out, "| %s | %s | %s | %s |", wall->id, wall->what, wall->source, wall->seen);
  add_answer(t->out, wall, &t->change);
  lw_text_add(t->out, "\n");
}

static void add_table(lw_text *out, const char *heading, const char *class, ordinary_change change) {
  table t = {out, class, change};
  lw_text_addf(out, "\n### %s\n\n", heading);
  lw_text_add(out, "| wall | what | source | known by | has | likely | grade | governs |\n"
                   "| --- | --- | --- | --- | --- | --- | --- | --- |\n");
  (void)ordinary_each(add_row, &t);
}

static void add_measured(void *context, const ordinary_wall *wall) {
  lw_text *out = context;
  if (!ordinary_is(wall, "measured")) return;
  ordinary_answer a = ordinary_run(wall, &(ordinary_change){0});
  lw_text_addf(out, "| %s | %s | %s | %s | %s |", wall->id, wall->what, wall->source, wall->seen,
               wall->outcome);
  add_number(out, a.sliding);
  add_number(out, a.tipping);
  lw_text_addf(out, " %s | %s |\n", lw_grade_slug(a.grade), wall->note);
}

void ordinary_write(lw_text *out) {
  lw_text_add(out,
              "\n## Ordinary walls\n\nWalls that people build, sheet by sheet in `tests/ordinary/sheets/`. "
              "*has* is the least of the checks that decide, by cautious values; *likely* by likely ones.\n");
  add_table(out, "By rules of proportion, 1.0 kPa behind", "rule", (ordinary_change){0});
  add_table(out, "The same, the load of a garden behind", "rule", (ordinary_change){.garden_load = true});
  add_table(out, "The same as the first, loam on stiff clay", "rule",
            (ordinary_change){.loam_on_clay = true});
  add_table(out, "As the trade builds them", "practice", (ordinary_change){0});
  add_table(out, "Known to be wrong", "known-wrong", (ordinary_change){0});
  lw_text_add(
      out, "\n### Walls of which it was seen whether they stood\n\n"
           "Few and old: a direction, no calibration. One of them was filled until it fell, so there is no "
           "mean of measured over computed. *sliding* and *tipping* are what the base has as built. The dock "
           "walls "
           "were let down by their ground: here they stand on rock and no slip is looked for, so their grade "
           "tells of the wall alone and says nothing of how they fell.\n\n"
           "| wall | what | source | known by | outcome | sliding | tipping | grade | note |\n"
           "| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
  (void)ordinary_each(add_measured, out);
}
