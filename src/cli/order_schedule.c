/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "order_schedule.h"

#include "base/text.h"
#include "output.h"
#include "say.h"
#include "wall_rows.h"

/* A list a wall, row by row of a schedule. A faulty row is reported and stands in the output with its mark;
 * the others are written. */
typedef struct listing {
  const lw_order_asked *asked;
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

static void write_faults(listing *l, int row, const lw_case *c, const lw_faults *faults) {
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
  else if (c->about.mark.text[0] != '\0')
    lw_text_addf(&l->text, "%s: no list, its row of the schedule has faults.\n", c->about.mark.text);
  else
    lw_text_addf(&l->text, "Row %d of the schedule: no list, it has faults.\n", row);
}

static bool list_row(void *context, int row, lw_one_wall *wall) {
  listing *l = context;
  lw_faults *faults = &wall->faults;
  begin(l);
  if (faults->count == 0) lw_order_fill(&wall->result, l->order, faults);
  if (faults->count > 0)
    write_faults(l, row, &wall->c, faults);
  else if (lw_order_report(l->asked, &wall->result, l->order, 0, &l->text) != LW_OK)
    l->text.failed = true;
  if (!lw_output_add(&l->output, &l->text)) note(l, LW_EXIT_OTHER);
  lw_text_clear(&l->text);
  return !l->output.failed;
}

int lw_order_schedule(const lw_order_asked *asked, lw_one_wall *wall, lw_order *order) {
  listing l = {.asked = asked, .order = order, .exit_status = LW_EXIT_DONE};
  if (!lw_output_open(&l.output, asked->wall.output)) return LW_EXIT_OTHER;
  lw_status status = lw_wall_each_row(&asked->wall, wall, list_row, &l);
  if (status != LW_OK) note(&l, status == LW_FAULTS ? LW_EXIT_BAD_INPUT : LW_EXIT_OTHER);
  if (!lw_output_close(&l.output, status == LW_OK)) note(&l, LW_EXIT_OTHER);
  lw_text_free(&l.text);
  return l.exit_status;
}
