/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "batch.h"

#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

#include "run/looks.h"
#include "sheet/faults.h"
#include "sheet/items.h"
#include "sheet/schedule.h"
#include "sheet/complete.h"
#include "say.h"

/* From the least grave on. */
static int gravity(int exit_status) {
  static const int order[] = {0, 3, 4, 5, 2, 1};
  int rank = 0;
  while (rank < 5 && order[rank] != exit_status) rank++;
  return rank;
}

int lw_graver(int one, int other) {
  return gravity(other) > gravity(one) ? other : one;
}

/* Room for the rows of a batch; how long one is shows with the first. */
static bool has_room(lw_batch *batch, const lw_schedule *schedule) {
  batch->schedule = schedule;
  if (batch->packed == NULL) batch->packed = malloc(lw_schedule_row_size(schedule) * LW_BATCH_ROWS + 1);
  return batch->packed != NULL;
}

static unsigned char *packed_row(const lw_batch *batch, int number) {
  return batch->packed + lw_schedule_row_size(batch->schedule) * (size_t)number;
}

bool lw_batch_add(lw_batch *batch, const lw_schedule *schedule, int row, const lw_case *c,
                  const lw_faults *faults) {
  if (batch->count == LW_BATCH_ROWS || batch->fault_count + faults->count > LW_FAULT_MAX) return false;
  if (!has_room(batch, schedule)) {
    batch->text.failed = true;
    return true;
  }
  lw_schedule_pack(schedule, c, packed_row(batch, batch->count));
  lw_batch_row *added = &batch->row[batch->count++];
  added->row = row;
  added->fault_count = faults->count;
  memcpy(&batch->fault[batch->fault_count], faults->fault, (size_t)faults->count * sizeof faults->fault[0]);
  batch->fault_count += faults->count;
  return true;
}

void lw_batch_free(lw_batch *batch) {
  free(batch->packed);
  lw_text_free(&batch->text);
  lw_text_free(&batch->said);
}

void lw_batch_clear(lw_batch *batch) {
  batch->count = batch->fault_count = 0;
  batch->gravest = LW_EXIT_DONE;
  lw_text_clear(&batch->text);
  lw_text_clear(&batch->said);
}

static void override_likely(lw_hand *hand, const lw_named *one, int row, lw_case *c) {
  char name[LW_ITEM_NAME_MAX];
  const lw_quantity *q = lw_item_likely(one->item, one->number, hand->overrides);
  if (q == NULL || lw_item_set_likely(one->item, one->number, q, c) == LW_OK) return;
  lw_named_print(one, name, sizeof name);
  lw_faults_add(&hand->faults, LW_FAULT_TOO_MANY, (lw_cell_place){row, 0}, name, "",
                "at most %d likely values", LW_LIKELY_MAX);
}

static void override(lw_hand *hand, int row, lw_case *c) {
  for (int i = 0; i < hand->override_count; i++) {
    const lw_named *one = &hand->override[i];
    if (one->likely)
      override_likely(hand, one, row, c);
    else
      lw_item_copy(one->item, one->number, hand->overrides, c);
  }
}

static void write_faults(lw_batch *batch, const lw_hand *hand, int row, const lw_case *c) {
  lw_faults_print(&hand->faults, &batch->said);
  batch->gravest = lw_graver(batch->gravest, LW_EXIT_BAD_INPUT);
  if (!hand->asked->json)
    lw_report_row_faults(c, &hand->faults, row, &batch->text);
  else if (lw_report_row_faults_json(c, &hand->faults, &batch->text) != LW_OK)
    batch->text.failed = true;
}

/* Rows that hold are not looked at twice, unless the column is asked for. */
static bool wants_likely(const lw_hand *hand) {
  const lw_verdict *v = &hand->result.verdict;
  if (hand->result.detail >= LW_DETAIL_EVERYTHING) return false;
  return hand->asked->likely || v->stands == LW_FALLS_SHORT || v->grade == LW_GRADE_WOULD_MOVE;
}

/* The row is completed anew with what the hand has at hand; the sheet's faults are told by now. */
static void look_likely(lw_batch *batch, int number, lw_hand *hand) {
  lw_result *scratch = &hand->scratch;
  lw_case *c = &scratch->given;
  if (lw_looks_bare(&hand->result)) {
    lw_looks_find(&hand->result, scratch);
    return;
  }
  lw_schedule_unpack(batch->schedule, packed_row(batch, number), c);
  override(hand, batch->row[number].row, c);
  c->look = LW_LOOK_LIKELY;
  if (lw_case_complete_in_place(hand->tables, &hand->defaults, c, &hand->faults) == LW_OK)
    lw_looks_take(&hand->result, scratch);
  hand->faults.count = 0;
}

static void write_result(lw_batch *batch, int row, lw_hand *hand) {
  lw_result *result = &hand->result;
  batch->gravest = lw_graver(batch->gravest, result->verdict.exit_status);
  if (!hand->asked->json) {
    lw_report_row(result, row, &batch->text);
    return;
  }
  lw_remedies_find(result, &hand->scratch);
  lw_water_find(result, &hand->scratch);
  if (lw_report_json(result, 0, &batch->text) != LW_OK) batch->text.failed = true;
}

static void check_row(lw_batch *batch, int number, lw_hand *hand) {
  lw_detail detail = hand->asked->json ? LW_DETAIL_EVERYTHING : LW_DETAIL_VERDICT;
  lw_error error = {0};
  lw_batch_row *row = &batch->row[number];
  lw_case *c = &hand->result.given;
  lw_schedule_unpack(batch->schedule, packed_row(batch, number), c);
  override(hand, row->row, c);
  lw_status completed = lw_case_complete_in_place(hand->tables, &hand->defaults, c, &hand->faults);
  if (completed == LW_OK && hand->faults.count == 0 &&
      lw_run(c, hand->tables, detail, &hand->result, &error) != LW_OK)
    lw_faults_add(&hand->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){row->row, 0}, "", "", "%s",
                  error.text);
  if (hand->faults.count > 0) {
    write_faults(batch, hand, row->row, c);
  } else {
    if (wants_likely(hand)) look_likely(batch, number, hand);
    write_result(batch, row->row, hand);
  }
  row->text_end = batch->text.length;
  row->said_end = batch->said.length;
}

void lw_batch_check(lw_batch *batch, lw_hand *hand) {
  const lw_fault *fault = batch->fault;
  for (int i = 0; i < batch->count; i++) {
    const lw_batch_row *row = &batch->row[i];
    hand->faults.count = row->fault_count;
    memcpy(hand->faults.fault, fault, (size_t)row->fault_count * sizeof *fault);
    fault += row->fault_count;
    check_row(batch, i, hand);
  }
  if (batch->said.failed) batch->text.failed = true;
}
