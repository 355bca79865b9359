/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fit.h"

#include <math.h>
#include <stdlib.h>

#include "sheet/faults.h"
#include "sheet/values.h"
#include "type.h"

/* A gap or an overlap of so much is taken up by bedding, as in a sheet that gives heights and courses. */
static const double HEIGHT_SLACK_M = 0.001 + 1e-9;

static bool enter(const lw_fit_wall *wall, const lw_typed *typed, lw_case *c) {
  *c = *wall->read;
  c->complete = false;
  c->about.units = (lw_choice){.value = (int)wall->units, .origin = LW_GIVEN};
  return lw_typed_enter(typed, c);
}

lw_status lw_fit_hold(const lw_fit_wall *wall, const lw_yard *yard, lw_fit_room *room, lw_faults *faults) {
  lw_faults found = {.count = 0};
  lw_typed typed;
  bool typed_in = lw_fit_type(wall, &yard->block[0], &typed) && enter(wall, &typed, &room->c);
  if (!typed_in || lw_case_complete(wall->tables, &room->c, &found) != LW_OK) return LW_OK;
  lw_case_complete_order(wall->tables, &room->c, &found);
  for (int i = 0; i < found.count; i++) {
    const lw_fault *f = &found.fault[i];
    if (f->slug == LW_FAULT_MISSING_ITEM)
      lw_faults_add(faults, f->slug, (lw_cell_place){f->row, f->column}, f->item, f->stood, "%s", f->wanted);
  }
  return faults->count > 0 ? LW_FAULTS : LW_OK;
}

static bool keep_fault(lw_fit *fit, const lw_faults *faults) {
  fit->kind = LW_FIT_FAULT;
  if (faults->count > 0) fit->fault = faults->fault[0];
  return false;
}

/* Buried as deep as the sheet says, the wall is as high as its courses make it. */
static bool makes_the_height(const lw_fit_wall *wall, lw_fit *fit) {
  const lw_case *c = wall->read;
  double cap = c->courses.cap_height.origin == LW_GIVEN ? c->courses.cap_height.si : 0.0;
  if (c->wall.embedment.origin != LW_GIVEN) return true;
  double block = fit->block->height_m, courses = (wall->height_m + c->wall.embedment.si - cap) / block;
  if (fabs(round(courses) - courses) * block <= HEIGHT_SLACK_M && courses > 0.5) return true;
  fit->kind = LW_FIT_HEIGHT;
  fit->courses_below = (int)fmax(floor(courses), 0.0);
  fit->below_m = fit->courses_below * block + cap - c->wall.embedment.si;
  fit->above_m = fit->below_m + block;
  if (fit->below_m < HEIGHT_SLACK_M) fit->courses_below = 0;
  return false;
}

/* The least greater setback with which it holds, typed in; as it was where none helps. */
static void try_setbacks(const lw_fit_wall *wall, lw_fit_room *room, lw_fit *fit) {
  lw_trial trial = {.now = &room->now, .scratch = &room->then};
  if (fit->block->setback_given || room->now.verdict.stands == LW_HOLDS) return;
  if (!lw_trial_add(&trial, &lw_change_setback) || !lw_trial_alone(&trial)) return;
  lw_typed before = fit->items;
  bool typed = lw_typed_put_mm(&fit->items, "setback", lw_trial_value(&trial, 0));
  if (!typed || !enter(wall, &fit->items, &room->c)) fit->items = before;
}

/* The case in the room completed and run. */
static bool run(const lw_fit_wall *wall, lw_detail detail, lw_fit_room *room, lw_fit *fit) {
  lw_faults faults = {.count = 0};
  if (!enter(wall, &fit->items, &room->c)) {
    lw_faults_add(&faults, LW_FAULT_OUT_OF_RANGE, (lw_cell_place){0, 0}, "", "",
                  "a cap, a pad and a bed that leave room for blocks so deep");
    return keep_fault(fit, &faults);
  }
  if (lw_case_complete(wall->tables, &room->c, &faults) != LW_OK) return keep_fault(fit, &faults);
  if (lw_case_complete_order(wall->tables, &room->c, &faults) != LW_OK) return keep_fault(fit, &faults);
  if (lw_run(&room->c, wall->tables, detail, &room->now, NULL) == LW_OK) return true;
  return keep_fault(fit, &faults);
}

static void tell(const lw_result *result, lw_fit *fit) {
  const lw_verdict *v = &result->verdict;
  const lw_case *c = &result->given;
  fit->kind = LW_FIT_LAID;
  fit->courses = (int)lround(c->courses.count.si);
  fit->setback_m = lw_si_or(&c->courses.setback, 0.0);
  fit->embedment_m = c->wall.embedment.si;
  fit->grade = v->grade;
  fit->who = v->who;
  fit->exit_status = v->exit_status;
  lw_print(fit->headline, sizeof fit->headline, "%s", v->headline);
  fit->ratio = lw_trial_ratio(result);
  lw_trial_governs(result, fit->governs, sizeof fit->governs);
  fit->nearest[0] = '\0';
  lw_trial_name(result, fit->nearest, sizeof fit->nearest);
}

static void count(const lw_order *order, lw_fit *fit) {
  for (int i = 0; i < order->line_count; i++) {
    const lw_order_line *line = &order->line[i];
    int pieces = (int)lround(line->order);
    if (line->kind > LW_LINE_BASE_MITRED_SPARES) continue;
    if (line->kind == LW_LINE_BLOCKS)
      fit->whole += pieces;
    else
      fit->other += pieces;
    fit->mass_kg += line->mass_kg;
  }
  fit->unit_mass_kg = order->unit_mass_kg;
  fit->lift_mass_kg = order->lift_mass_kg;
  fit->cost = (fit->whole + fit->other) * fit->block->price;
}

static void try_block(const lw_fit_wall *wall, const lw_yard_block *block, lw_fit_room *room, lw_fit *fit) {
  lw_faults none = {.count = 0};
  *fit = (lw_fit){.block = block};
  if (!lw_fit_type(wall, block, &fit->items)) {
    lw_faults_add(&none, LW_FAULT_TOO_MANY, (lw_cell_place){0, 0}, "", "", "fewer items of the block");
    keep_fault(fit, &none);
    return;
  }
  if (!makes_the_height(wall, fit) || !run(wall, LW_DETAIL_VERDICT, room, fit)) return;
  try_setbacks(wall, room, fit);
  if (!run(wall, LW_DETAIL_EVERYTHING, room, fit)) return;
  if (lw_order_make(&room->now, &room->order, &fit->plan) != LW_OK) {
    fit->kind = LW_FIT_NO_PLAN;
    return;
  }
  tell(&room->now, fit);
  count(&room->order, fit);
}

static int compare(const void *a, const void *b) {
  const lw_fit *x = a, *y = b;
  if (x->kind != LW_FIT_LAID || y->kind != LW_FIT_LAID) {
    bool same = x->kind != LW_FIT_LAID && y->kind != LW_FIT_LAID;
    if (!same) return x->kind == LW_FIT_LAID ? -1 : 1;
  } else if (x->grade != y->grade) {
    return x->grade < y->grade ? -1 : 1;
  } else if (fabs(x->cost - y->cost) > 0.0) {
    return x->cost < y->cost ? -1 : 1;
  }
  return x->block->row - y->block->row;
}

void lw_fit_find(const lw_fit_wall *wall, const lw_yard *yard, lw_fit_room *room, lw_fit *fit) {
  for (int i = 0; i < yard->count; i++) try_block(wall, &yard->block[i], room, &fit[i]);
  qsort(fit, (size_t)yard->count, sizeof *fit, compare);
}
