/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdlib.h>

#include <lowwall/report.h>

#include "say.h"
#include "crew.h"
#include "output.h"
#include "progress.h"

/* A schedule: rows are read into batches, a crew checks them, and what comes of them is written in the order
 * of the rows. The memory is that of the crew's batches, however long the schedule is. */

/* A row with --json takes milliseconds and its object is long: each goes alone. */
enum { PIECE = 4096, ROWS_OF_JSON = 1 };

typedef struct schedule_run {
  const lw_check_asked *asked;
  lw_crew *crew;
  lw_schedule *schedule;
  lw_batch *batch; /* that is being filled, NULL before the first row */
  lw_output output;
  lw_progress progress;
  bool begun; /* the header of the results is written */
  int gravest;
} schedule_run;

static void note(schedule_run *run, int exit_status) {
  run->gravest = lw_graver(run->gravest, exit_status);
}

static void write_text(schedule_run *run, const lw_text *text) {
  if (!lw_output_add(&run->output, text)) note(run, LW_EXIT_OTHER);
}

/* Nothing is written before the first row shows that the header is sound. */
static void begin(schedule_run *run) {
  lw_text header = {0};
  if (!run->begun && !run->asked->json) {
    lw_report_row_header(&header);
    write_text(run, &header);
    lw_text_free(&header);
  }
  run->begun = true;
}

static void say(schedule_run *run, const char *words, size_t length) {
  /* Lines and rows keep their order on a terminal. */
  if (run->output.name == NULL) fflush(run->output.file);
  lw_progress_hide(&run->progress);
  fwrite(words, 1, length, stderr);
}

/* The share of a text from one end to another. */
static lw_text part_of(const lw_text *text, size_t from, size_t to) {
  char *data = text->data != NULL ? text->data + from : NULL;
  return (lw_text){.data = data, .length = to - from, .failed = text->failed};
}

static void write_batch(schedule_run *run, const lw_batch *batch) {
  size_t text = 0, row_text = 0, said = 0;
  begin(run);
  for (int i = 0; i < batch->count && !run->output.failed; i++) {
    const lw_batch_row *row = &batch->row[i];
    if (row->said_end > said) {
      lw_text before = part_of(&batch->text, text, row_text);
      write_text(run, &before);
      say(run, batch->said.data + said, row->said_end - said);
      text = row_text;
      said = row->said_end;
    }
    row_text = row->text_end;
  }
  lw_text rest = part_of(&batch->text, text, row_text);
  write_text(run, &rest);
  note(run, batch->gravest);
}

/* The oldest batch, once it is checked. false when none is left */
static bool write_oldest(schedule_run *run) {
  const lw_batch *batch = lw_crew_oldest(run->crew);
  if (batch == NULL) return false;
  if (!run->output.failed) write_batch(run, batch);
  lw_progress_step(&run->progress, batch->count);
  lw_crew_give_back(run->crew);
  return true;
}

static void hand_in(schedule_run *run) {
  if (run->batch == NULL || run->batch->count == 0) return;
  lw_crew_hand_in(run->crew);
  run->batch = NULL;
}

static void take_row(void *context, int row, const lw_case *c, const lw_faults *faults) {
  schedule_run *run = context;
  run->progress.read++;
  while (!run->output.failed &&
         (run->batch == NULL || !lw_batch_add(run->batch, run->schedule, row, c, faults))) {
    hand_in(run);
    while ((run->batch = lw_crew_empty(run->crew)) == NULL) write_oldest(run);
  }
  if (run->batch != NULL && run->batch->text.failed) {
    note(run, lw_cli_no_memory());
    run->output.failed = true;
  }
  if (run->asked->json && run->batch != NULL && run->batch->count == ROWS_OF_JSON) hand_in(run);
}

/* In small pieces, so that the progress knows how far it is. gives LW_OK · LW_FAULTS of the file */
static lw_status feed(schedule_run *run, lw_schedule *schedule, const lw_input *input) {
  lw_status status = LW_OK;
  for (size_t at = 0; at < input->length && status == LW_OK && !run->output.failed; at += PIECE) {
    size_t length = input->length - at < PIECE ? input->length - at : PIECE;
    run->progress.fed += (double)length;
    status = lw_schedule_feed(schedule, input->block + at, length);
  }
  return status;
}

/* gives LW_OK · LW_FAULTS of the file · LW_NO_MEMORY */
static lw_status read_rows(schedule_run *run, lw_input *input, lw_faults *header_faults) {
  lw_schedule *schedule = run->schedule = lw_schedule_open(take_row, run, header_faults);
  if (schedule == NULL) return LW_NO_MEMORY;
  lw_status status = LW_OK;
  while (status == LW_OK && input->length > 0 && !run->output.failed) {
    status = feed(run, schedule, input);
    if (status == LW_OK) status = lw_input_next(input, header_faults);
  }
  if (status == LW_OK && !run->output.failed) status = lw_schedule_finish(schedule);
  hand_in(run);
  while (!run->output.failed && write_oldest(run)) {
  }
  return status;
}

static void check_rows(schedule_run *run, lw_input *input, lw_faults *header_faults) {
  if (!lw_output_open(&run->output, run->asked->wall.output)) {
    note(run, LW_EXIT_OTHER);
    return;
  }
  lw_progress_open(&run->progress, input->file, run->output.file);
  lw_status status = read_rows(run, input, header_faults);
  lw_progress_hide(&run->progress);
  if (status == LW_FAULTS) {
    if (run->output.name == NULL) fflush(run->output.file);
    note(run, lw_cli_print_faults(header_faults));
  } else if (status != LW_OK) {
    note(run, lw_cli_no_memory());
  }
  if (!lw_output_close(&run->output, status == LW_OK) && status == LW_OK) note(run, LW_EXIT_OTHER);
}

int lw_check_schedule(const lw_check_asked *asked, lw_one_wall *wall) {
  schedule_run run = {.asked = asked, .gravest = LW_EXIT_DONE};
  lw_wall_override(&asked->wall, &wall->c, &wall->faults);
  run.crew = lw_crew_open(asked->jobs, &(lw_crew_job){asked, wall->tables, &wall->c, wall->faults.file});
  if (run.crew == NULL) return lw_cli_no_memory();
  check_rows(&run, &wall->input, &wall->faults);
  lw_crew_close(run.crew);
  /* Batches are unpacked by it. */
  lw_schedule_close(run.schedule);
  return run.gravest;
}
