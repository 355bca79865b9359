/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "wall_rows.h"

#include <string.h>

#include "sheet/faults.h"
#include "say.h"

typedef struct row_by_row {
  const lw_wall_asked *asked;
  lw_one_wall *wall;
  lw_wall_row each;
  void *context;
  bool enough;
} row_by_row;

static void take_row(void *context, int row, const lw_case *c, const lw_faults *faults) {
  row_by_row *r = context;
  lw_one_wall *wall = r->wall;
  lw_error error = {0};
  if (r->enough) return;
  wall->c = *c;
  wall->faults.count = faults->count;
  memcpy(wall->faults.fault, faults->fault, (size_t)faults->count * sizeof faults->fault[0]);
  lw_wall_override(r->asked, &wall->c, &wall->faults);
  lw_wall_complete(r->asked, wall);
  if (wall->faults.count == 0 &&
      lw_run(&wall->c, wall->tables, LW_DETAIL_EVERYTHING, &wall->result, &error) != LW_OK)
    lw_faults_add(&wall->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){row, 0}, "", "", "%s", error.text);
  r->enough = !r->each(r->context, row, wall);
}

static lw_status read_rows(row_by_row *r, lw_faults *file_faults) {
  lw_input *input = &r->wall->input;
  lw_schedule *schedule = lw_schedule_open(take_row, r, file_faults);
  if (schedule == NULL) return LW_NO_MEMORY;
  lw_status status = LW_OK;
  while (status == LW_OK && input->length > 0 && !r->enough) {
    status = lw_schedule_feed(schedule, input->block, input->length);
    if (status == LW_OK) status = lw_input_next(input, file_faults);
  }
  if (status == LW_OK && !r->enough) status = lw_schedule_finish(schedule);
  lw_schedule_close(schedule);
  return status;
}

lw_status lw_wall_each_row(const lw_wall_asked *asked, lw_one_wall *wall, lw_wall_row each, void *context) {
  row_by_row r = {.asked = asked, .wall = wall, .each = each, .context = context};
  lw_faults file_faults = wall->faults;
  lw_wall_override(asked, &wall->c, &file_faults);
  lw_status status = file_faults.count > 0 ? LW_FAULTS : read_rows(&r, &file_faults);
  if (r.enough) return LW_OK;
  if (status == LW_FAULTS) lw_cli_print_faults(&file_faults);
  if (status == LW_NO_MEMORY) lw_cli_no_memory();
  return status;
}
