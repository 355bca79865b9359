/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "tables/known.h"
#include "items.h"
#include "complete.h"
#include "faults.h"
#include "values.h"

/* What an order needs beyond a check: the plan in order, and for each allowance left out the row of
 * tables/ordering.csv with its name. */

static bool of_order(const lw_item *item) {
  return item->part == LW_ABOUT_PLAN || item->part == LW_ABOUT_ORDER;
}

static void fill_in_quantity(lw_completing *s, const lw_item *item) {
  lw_quantity *q = lw_item_quantity(item, 0, s->c);
  if (lw_given(q)) return;
  const lw_ordering_row *row = lw_tables_ordering(s->tables, item->name);
  if (!isnan(item->assumed)) {
    *q = lw_assumed(item->kind, item->assumed);
  } else if (row != NULL) {
    *q = lw_assumed(item->kind, row->value);
    q->table_row = (int)(row - s->tables->ordering);
  }
}

static void fill_in(lw_completing *s) {
  lw_item_walk walk = {0};
  for (const lw_item *item = lw_item_next(&walk); item != NULL; item = lw_item_next(&walk)) {
    if (!of_order(item) || item->repeats > 0) continue;
    if (item->type == LW_ITEM_QUANTITY) {
      fill_in_quantity(s, item);
    } else if (!isnan(item->assumed)) {
      lw_choice *choice = lw_item_choice(item, 0, s->c);
      if (choice->origin == LW_ABSENT)
        *choice = (lw_choice){.value = (int)item->assumed, .origin = LW_ASSUMED};
    }
  }
}

/* A wall that is checked with a membrane is ordered with one. */
static void fill_in_lining(lw_completing *s) {
  lw_choice *lining = &s->c->order.lining;
  if (lining->origin == LW_ABSENT && lw_back_is_lined(s->c))
    *lining = (lw_choice){.value = LW_YES, .origin = LW_GIVEN, .row = LW_WORKED_OUT_ROW};
}

/* The soil that is dug tells how much it swells; what is not known swells most. */
static void fill_in_bulking(lw_completing *s) {
  lw_case_order *o = &s->c->order;
  if (lw_given(&o->spoil_bulking)) return;
  const char *soil = s->c->ground.footing.name.origin == LW_GIVEN ? s->c->ground.footing.name.text : "clay";
  bool loam = strstr(soil, "loam") != NULL && strstr(soil, "clay") == NULL;
  bool sand = strstr(soil, "clean sand") != NULL || strstr(soil, "gravel") != NULL;
  lw_known_row bulk = sand ? LW_ORDERING_BULK_SAND : loam ? LW_ORDERING_BULK_LOAM : LW_ORDERING_BULK_CLAY;
  o->spoil_bulking = lw_assumed(LW_KIND_NUMBER, lw_known_value(s->tables, bulk));
  o->spoil_bulking.table_row = s->tables->known[bulk];
}

/* Dry bedding levels blocks: cast or built stone lies on the pad itself. */
static void fill_in_solid(lw_completing *s) {
  lw_quantity *bedding = &s->c->order.bedding_thickness;
  if (!lw_given(bedding)) *bedding = lw_assumed(LW_KIND_LENGTH, 0.0);
}

static void fill_in_blocks(lw_completing *s) {
  lw_case *c = s->c;
  lw_case_order *o = &c->order;
  if (!lw_given(&o->corner_length)) o->corner_length = lw_assumed(LW_KIND_LENGTH, c->courses.block_length.si);
  if (!lw_given(&o->tail_length)) o->tail_length = lw_assumed(LW_KIND_LENGTH, c->courses.block_length.si);
}

/* A solid section is ordered by volume and tonne: it has no blocks, and steps are counted in courses. */
static void hold_solid(lw_completing *s) {
  lw_case_order *o = &s->c->order;
  const lw_quantity *steps = lw_given(&o->ground_fall) ? &o->ground_fall : &o->step[0].distance;
  if (lw_given(steps))
    lw_complete_fault(
        s, LW_FAULT_CONTRADICTION, steps,
        "no steps: they are counted in courses, and a solid section has none; a plan for each level");
}

static void hold_blocks(lw_completing *s) {
  lw_case *c = s->c;
  if (!lw_given(&c->courses.block_length))
    lw_complete_missing(s, &c->courses.block_length, NULL,
                        "the length of one block: an order cannot be counted without");
  if (!lw_given(&c->courses.block_depth))
    lw_complete_missing(s, &c->courses.block_depth, NULL,
                        "the depth of one block: an order cannot be counted without");
  bool cap = lw_given(&c->courses.cap_height) && c->courses.cap_height.si > 0.0;
  if (cap && !lw_given(&c->order.cap_length))
    lw_complete_missing(s, &c->order.cap_length, NULL, "the length of one cap");
}

/* Runs 1 to n without a gap; gives n. */
static int count_runs(lw_completing *s) {
  lw_case_order *o = &s->c->order;
  int count = 0;
  while (count < LW_RUN_MAX && lw_given(&o->run[count].length)) count++;
  if (count == 0)
    lw_complete_missing(s, &o->run[0].length, NULL,
                        "the length of the wall: an order cannot be counted without");
  for (int i = count; i < LW_RUN_MAX && count > 0; i++) {
    bool run = lw_given(&o->run[i].length) || lw_given(&o->run[i].radius) || lw_given(&o->run[i].cap_depth);
    const lw_quantity *q = lw_given(&o->run[i].length)   ? &o->run[i].length
                           : lw_given(&o->run[i].radius) ? &o->run[i].radius
                                                         : &o->run[i].cap_depth;
    if (!run) continue;
    lw_complete_fault(s, LW_FAULT_GAP_IN_NUMBERING, q, "run %d length before it", count + 1);
    return count;
  }
  return count;
}

static void hold_turns(lw_completing *s, int runs) {
  lw_case_order *o = &s->c->order;
  for (int i = 0; i + 1 < runs; i++)
    if (!lw_given(&o->turn[i]))
      lw_complete_missing(s, &o->turn[i], NULL,
                          "how the wall turns between two runs; 0 deg where it runs on");
  for (int i = runs; i < LW_RUN_MAX && runs > 0; i++)
    if (lw_given(&o->turn[i]))
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &o->turn[i], "a turn at the end of one of %d runs", runs);
}

static void hold_radii(lw_completing *s, int runs) {
  lw_case_order *o = &s->c->order;
  for (int i = 0; i < runs; i++) {
    const lw_quantity *radius = &o->run[i].radius;
    if (!lw_given(radius)) continue;
    double least = s->c->courses.block_depth.si;
    if (fabs(radius->si) < 0.05)
      lw_complete_fault(s, LW_FAULT_OUT_OF_RANGE, radius,
                        "a radius other than 0; left out, the run is straight");
    else if (radius->si > 0.0 && lw_given(&s->c->courses.block_depth) && radius->si <= least)
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, radius, "more than the block depth, %s",
                        lw_complete_exactly(s, LW_KIND_LENGTH, least, "mm").text);
    else if (o->run[i].length.si > 6.2832 * fabs(radius->si) + 0.01)
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &o->run[i].length,
                        "at most one full circle of its radius, %s",
                        lw_complete_exactly(s, LW_KIND_LENGTH, 6.28318530718 * fabs(radius->si), "m").text);
  }
}

static void hold_steps(lw_completing *s) {
  lw_case_order *o = &s->c->order;
  int count = 0;
  while (count < LW_STEP_MAX && lw_given(&o->step[count].distance)) count++;
  for (int i = 0; i < LW_STEP_MAX; i++) {
    const lw_quantity *courses = &o->step[i].courses;
    if (i < count && !lw_given(courses))
      lw_complete_missing(s, courses, NULL,
                          "how many courses the base rises there, negative when it goes down");
    else if (i >= count && (lw_given(courses) || lw_given(&o->step[i].distance)))
      lw_complete_fault(s, LW_FAULT_GAP_IN_NUMBERING, lw_given(courses) ? courses : &o->step[i].distance,
                        "step %d distance before it", count + 1);
    else if (i < count && fabs(courses->si - round(courses->si)) > 1e-9)
      lw_complete_fault(s, LW_FAULT_OUT_OF_RANGE, courses, "a whole number of courses");
    if (i > 0 && i < count && o->step[i].distance.si <= o->step[i - 1].distance.si)
      lw_complete_fault(s, LW_FAULT_CONTRADICTION, &o->step[i].distance, "farther than the step before it");
  }
  if (count > 0 && lw_given(&o->ground_fall))
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &o->ground_fall,
                      "one of the two: the ground's fall, or the steps");
}

lw_status lw_case_complete_order(const lw_tables *tables, lw_case *c, lw_faults *faults) {
  lw_case work = *c;
  lw_completing s = {.tables = tables, .c = &work, .faults = faults};
  int before = faults->count;
  lw_complete_ranges_of_order(&s);
  if (lw_faults_more(faults, before)) return LW_FAULTS;
  bool solid = work.wall.kind.value != LW_WALL_COURSES;
  (solid ? hold_solid : hold_blocks)(&s);
  int runs = count_runs(&s);
  hold_turns(&s, runs);
  hold_radii(&s, runs);
  hold_steps(&s);
  if (lw_faults_more(faults, before)) return LW_FAULTS;
  fill_in_lining(&s);
  fill_in(&s);
  fill_in_bulking(&s);
  if (solid)
    fill_in_solid(&s);
  else
    fill_in_blocks(&s);
  *c = work;
  return LW_OK;
}
