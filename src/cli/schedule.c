/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>

#include "check.h"
#include "cli.h"
#include "output.h"

/* A schedule, wall by wall: each result is written before the next row is read. */
typedef struct schedule_run {
  const lw_check_asked *asked;
  const lw_tables *tables;
  lw_output output;
  bool begun;              /* the header of the results is written */
  int gravest;
  lw_text text;            /* of one row, used again and again */
  lw_case overrides, c;
  lw_faults faults;        /* of the row in hand */
  lw_result result, scratch;
} schedule_run;

/* From the least grave on. */
static int gravity(int exit_status) {
  static const int order[] = {0, 3, 4, 5, 2, 1};
  int rank = 0;
  while (rank < 5 && order[rank] != exit_status) rank++;
  return rank;
}

static void note(schedule_run *run, int exit_status) {
  if (gravity(exit_status) > gravity(run->gravest)) run->gravest = exit_status;
}

static void copy_faults(const lw_faults *from, lw_faults *to) {
  memcpy(to->file, from->file, sizeof to->file);
  to->count = from->count;
  memcpy(to->fault, from->fault, (size_t)from->count * sizeof from->fault[0]);
}

/* The items of the command line were read once; their values replace those of the row. */
static void override(schedule_run *run) {
  for (int i = 0; i < run->asked->wall.item_count; i++) {
    const char *argument = run->asked->wall.item[i];
    int number;
    const lw_item *item = lw_item_find(argument, strcspn(argument, "="), &number);
    if (item == NULL) continue;
    switch (item->type) {
    case LW_ITEM_QUANTITY:
      *lw_item_quantity(item, number, &run->c) = *lw_item_quantity(item, number, &run->overrides);
      break;
    case LW_ITEM_CHOICE:
      *lw_item_choice(item, number, &run->c) = *lw_item_choice(item, number, &run->overrides);
      break;
    case LW_ITEM_WORDS:
      *lw_item_words(item, number, &run->c) = *lw_item_words(item, number, &run->overrides);
      break;
    }
  }
}

static void write_text(schedule_run *run) {
  if (!lw_output_add(&run->output, &run->text)) note(run, LW_EXIT_OTHER);
  lw_text_clear(&run->text);
}

/* Nothing is written before the first row shows that the header is sound. */
static void begin(schedule_run *run) {
  if (!run->begun && !run->asked->json) lw_report_row_header(&run->text);
  run->begun = true;
  write_text(run);
}

static void write_faults(schedule_run *run) {
  /* Lines and rows keep their order on a terminal. */
  if (run->output.name == NULL) fflush(run->output.file);
  lw_cli_print_faults(&run->faults);
  note(run, LW_EXIT_BAD_INPUT);
  if (run->asked->json) lw_report_row_faults_json(&run->c, &run->faults, &run->text);
  else lw_report_row_faults(&run->c, &run->faults, &run->text);
}

static void write_result(schedule_run *run) {
  if (run->asked->json) {
    lw_remedies_find(&run->result, &run->scratch);
    lw_water_find(&run->result, &run->scratch);
    lw_report_json(&run->result, 0, &run->text);
  } else {
    lw_report_row(&run->result, &run->text);
  }
  note(run, run->result.verdict.exit_status);
}

static void check_row(void *context, int row, const lw_case *c, const lw_faults *faults) {
  schedule_run *run = context;
  lw_error error = {0};
  if (run->output.failed) return;
  begin(run);
  run->c = *c;
  copy_faults(faults, &run->faults);
  override(run);
  if (lw_case_settle(run->tables, &run->c, &run->faults) == LW_OK && run->faults.count == 0 &&
      lw_run(&run->c, run->tables, &run->result, &error) != LW_OK)
    lw_faults_add(&run->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){row, 0}, "", "", "%s", error.text);
  if (run->faults.count > 0) write_faults(run);
  else write_result(run);
  write_text(run);
}

/* gives LW_OK · LW_FAULTS of the file · LW_NO_MEMORY */
static lw_status read_rows(schedule_run *run, lw_input *input, lw_faults *header_faults) {
  lw_schedule *schedule = lw_schedule_open(check_row, run, header_faults);
  if (schedule == NULL) return LW_NO_MEMORY;
  lw_status status = LW_OK;
  while (status == LW_OK && input->length > 0 && !run->output.failed) {
    status = lw_schedule_feed(schedule, input->block, input->length);
    if (status == LW_OK) status = lw_input_next(input, header_faults);
  }
  if (status == LW_OK && !run->output.failed) status = lw_schedule_finish(schedule);
  lw_schedule_close(schedule);
  return status;
}

static int check_rows(schedule_run *run, lw_input *input, lw_faults *header_faults) {
  lw_wall_override(&run->asked->wall, &run->overrides, header_faults);
  if (!lw_output_open(&run->output, run->asked->wall.output)) return LW_EXIT_OTHER;
  lw_status status = read_rows(run, input, header_faults);
  if (status == LW_FAULTS) {
    if (run->output.name == NULL) fflush(run->output.file);
    note(run, lw_cli_print_faults(header_faults));
  } else if (status != LW_OK) {
    note(run, lw_cli_no_memory());
  }
  if (!lw_output_close(&run->output, status == LW_OK) && status == LW_OK) note(run, LW_EXIT_OTHER);
  return run->gravest;
}

int lw_check_schedule(const lw_check_asked *asked, const lw_tables *tables, lw_input *input,
                      lw_faults *header_faults) {
  schedule_run *run = calloc(1, sizeof *run);
  if (run == NULL) return lw_cli_no_memory();
  run->asked = asked;
  run->tables = tables;
  int exit_status = check_rows(run, input, header_faults);
  lw_text_free(&run->text);
  free(run);
  return exit_status;
}
