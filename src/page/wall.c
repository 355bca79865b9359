/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "wall.h"

#include <stdlib.h>

#include "moves.h"

static lw_status complete(lw_request *asked, bool order, lw_case *c) {
  lw_status status = lw_case_complete(asked->tables, c, &asked->faults);
  if (status == LW_OK && order) status = lw_case_complete_order(asked->tables, c, &asked->faults);
  return status;
}

static lw_status run(lw_request *asked, bool order, lw_request_wall *wall) {
  lw_status status = lw_request_read(asked, &wall->c);
  if (status == LW_OK) status = lw_request_move(asked, &wall->c, &wall->scratch);
  if (status != LW_OK) return status;
  lw_case whole = wall->c;
  status = complete(asked, order, &whole);
  if (status != LW_OK) return status;
  return lw_run(&whole, asked->tables, LW_DETAIL_EVERYTHING, &wall->result, &asked->error);
}

lw_status lw_request_run(lw_request *asked, lw_request_wall **wall) {
  *wall = calloc(1, sizeof **wall);
  return *wall ? run(asked, false, *wall) : LW_NO_MEMORY;
}

lw_status lw_request_run_order(lw_request *asked, lw_request_wall **wall) {
  lw_plan_fault fault;
  *wall = calloc(1, sizeof **wall);
  lw_status status = *wall ? run(asked, true, *wall) : LW_NO_MEMORY;
  if (status != LW_OK) return status;
  status = lw_order_make(&(*wall)->result, &(*wall)->order, &fault);
  if (status != LW_OK) lw_report_plan_fault(&(*wall)->result.given.order, &fault, &asked->faults);
  return status;
}
