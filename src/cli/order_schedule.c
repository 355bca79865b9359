/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/text.h"
#include "sheet/faults.h"
#include "order_schedule.h"

#include <string.h>

#include "say.h"
#include "output.h"

/* A list a wall, row by row of a schedule. A faulty row is reported and stands in the output with its mark;
 * the others are written. */
typedef struct listing {
  const lw_order_asked *asked;
  lw_one_wall *wall;
  lw_order *order;
  lw_output output;
  lw_text text; /* of one wall, used again and again */
  int walls, exit_status;
} listing;

static void note(listing *l, int exit_status) {
  if (exit_status == LW_EXIT_OTHER || l->exit_status == LW_EXIT_DONE) l->exit_status = exit_status;
}

static void begin(listing *l) {
  l->walls++;
  if (l->asked->csv && l->walls == 1) lw_report_order_csv_header(l->asked->page, &l->text);
  bool paged = !l->asked->csv && !l->asked->json && l->walls > 1;
  if (paged) lw_text_add(&l->text, "\n================================\n\n");
}

static void write_faults(listing *l, const lw_case *c, const lw_faults *faults) {
  char mark[LW_WORDS_MAX * 2];
  size_t used = 0;
  for (const char *from = c->about.mark.text; *from != '\0'; from++) {
    if (*from == '"') mark[used++] = '"';
    mark[used++] = *from;
  }
  mark[used] = '\0';
  if (l->output.name == NULL) fflush(l->output.file);
  lw_cli_print_faults(faults);
  note(l, LW_EXIT_BAD_INPUT);
  if (l->asked->json)
    lw_report_row_faults_json(c, faults, &l->text);
  else if (l->asked->csv)
    lw_text_addf(&l->text, "\"%s%s\",fault,\"%s\"%s\n", lw_cell_runs(c->about.mark.text) ? "'" : "", mark,
                 lw_fault_slug_name(faults->fault[0].slug),
                 l->asked->page == LW_PAGE_ORDER ? ",,,,,,," : ",,,,,,");
  else
    lw_text_addf(&l->text, "%s: no list, its row of the schedule has faults.\n", c->about.mark.text);
}

static void list_row(void *context, int row, const lw_case *c, const lw_faults *faults) {
  listing *l = context;
  lw_one_wall *wall = l->wall;
  lw_error error = {0};
  if (l->output.failed) return;
  wall->c = *c;
  lw_faults *all = &wall->faults;
  memcpy(all->file, faults->file, sizeof all->file);
  all->count = faults->count;
  memcpy(all->fault, faults->fault, (size_t)faults->count * sizeof faults->fault[0]);
  begin(l);
  lw_wall_override(&l->asked->wall, &wall->c, all);
  if (lw_order_complete(wall->tables, &wall->c, all) == LW_OK && all->count == 0 &&
      lw_run(&wall->c, wall->tables, LW_DETAIL_EVERYTHING, &wall->result, &error) != LW_OK)
    lw_faults_add(all, LW_FAULT_CONTRADICTION, (lw_cell_place){row, 0}, "", "", "%s", error.text);
  if (all->count == 0) lw_order_fill(&wall->result, l->order, all);
  if (all->count > 0)
    write_faults(l, &wall->c, all);
  else if (lw_order_report(l->asked, &wall->result, l->order, 0, &l->text) != LW_OK)
    l->text.failed = true;
  if (!lw_output_add(&l->output, &l->text)) note(l, LW_EXIT_OTHER);
  lw_text_clear(&l->text);
}

/* gives LW_OK · LW_FAULTS of the file · LW_NO_MEMORY */
static lw_status read_rows(listing *l, lw_faults *header_faults) {
  lw_input *input = &l->wall->input;
  lw_schedule *schedule = lw_schedule_open(list_row, l, header_faults);
  if (schedule == NULL) return LW_NO_MEMORY;
  lw_status status = LW_OK;
  while (status == LW_OK && input->length > 0 && !l->output.failed) {
    status = lw_schedule_feed(schedule, input->block, input->length);
    if (status == LW_OK) status = lw_input_next(input, header_faults);
  }
  if (status == LW_OK && !l->output.failed) status = lw_schedule_finish(schedule);
  lw_schedule_close(schedule);
  return status;
}

int lw_order_schedule(const lw_order_asked *asked, lw_one_wall *wall, lw_order *order) {
  listing l = {.asked = asked, .wall = wall, .order = order, .exit_status = LW_EXIT_DONE};
  lw_faults header_faults = wall->faults;
  lw_wall_override(&asked->wall, &wall->c, &header_faults);
  if (header_faults.count > 0) return lw_cli_print_faults(&header_faults);
  if (!lw_output_open(&l.output, asked->wall.output)) return LW_EXIT_OTHER;
  lw_status status = read_rows(&l, &header_faults);
  if (status == LW_FAULTS)
    note(&l, lw_cli_print_faults(&header_faults));
  else if (status != LW_OK)
    note(&l, lw_cli_no_memory());
  if (!lw_output_close(&l.output, status == LW_OK)) note(&l, LW_EXIT_OTHER);
  lw_text_free(&l.text);
  return l.exit_status;
}
