/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "sheet/faults.h"
#include "cli.h"
#include "one_wall.h"
#include "options.h"
#include "output.h"
#include "pressure_asked.h"
#include "pressure_question.h"
#include "pressure_side.h"
#include "pressure_wall.h"

/* Earth pressure on a plane that items make, or on those behind the wall of a sheet. */

static int refuse_no_solution(lw_formula_given *given, const lw_pressure_run *run) {
  lw_faults_add(&given->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){0, 0}, "", "",
                "other values: %s (%s)", run->error.text, lw_reason_slug(run->error.reason));
  return lw_formula_refuse(given, "pressure");
}

static lw_status make_json(const lw_pressure_question *question, json_t *steps, lw_text *text) {
  enum { INDENT = 2 };
  const lw_pressure_run *run = &question->run;
  json_t *out = json_object();
  lw_json_set_text(out, "method", run->routine->slug);
  lw_json_set_text(out, "title", run->routine->title);
  lw_json_set_text(out, "state", run->state_word);
  lw_json_set_text(out, "source", lw_pressure_run_source(run));
  lw_formula_given_json(&question->given, lw_json_object(out, "given"));
  lw_pressure_run_json(run, out);
  lw_json_put(out, "working", steps);
  return lw_json_write_exact(out, INDENT, text);
}

static int answer_json(const lw_pressure_asked *asked, lw_pressure_question *question) {
  json_t *steps = json_array();
  lw_text text = {0};
  lw_working working = lw_formula_json_working(steps);
  if (lw_pressure_compute(&question->run, &working, asked->working) != LW_OK) {
    json_decref(steps);
    return refuse_no_solution(&question->given, &question->run);
  }
  if (make_json(question, steps, &text) != LW_OK) text.failed = true;
  return lw_output_write(asked->output, &text, LW_EXIT_DONE);
}

static int answer_text(const lw_pressure_asked *asked, lw_pressure_question *question) {
  lw_text steps = {0}, text = {0};
  lw_working working = lw_formula_text_working(&steps);
  working.units = question->given.units;
  if (lw_pressure_compute(&question->run, &working, asked->working) != LW_OK) {
    lw_text_free(&steps);
    return refuse_no_solution(&question->given, &question->run);
  }
  lw_pressure_run_text(&question->run, question->given.units, &text);
  lw_text_add(&text, "\nWorking\n");
  lw_text_add(&text, steps.data != NULL ? steps.data : "");
  text.failed = text.failed || steps.failed;
  lw_text_free(&steps);
  return lw_output_write(asked->output, &text, LW_EXIT_DONE);
}

static int answer_plain(const lw_pressure_asked *asked, lw_pressure_question *question) {
  lw_text text = {0};
  if (lw_pressure_compute(&question->run, NULL, false) != LW_OK)
    return refuse_no_solution(&question->given, &question->run);
  const lw_pressure_page page = {&question->run.diagram, "", "", question->given.units};
  if (asked->drawn) return lw_pressure_draw(asked, &page);
  lw_pressure_depths_csv(&question->run.diagram, &text);
  return lw_output_write(asked->output, &text, LW_EXIT_DONE);
}

static int of_items(const lw_arguments *items, const lw_pressure_asked *asked) {
  lw_pressure_question *question = calloc(1, sizeof *question);
  if (question == NULL) return lw_cli_no_memory();
  int exit_status;
  if (!lw_pressure_question_read(items, asked->units, question))
    exit_status = lw_formula_refuse(&question->given, "pressure");
  else if (asked->drawn || asked->csv)
    exit_status = answer_plain(asked, question);
  else
    exit_status = asked->json ? answer_json(asked, question) : answer_text(asked, question);
  free(question);
  return exit_status;
}

/* A sheet is a file that is there, or what is named like one; anything else is an item with a fault. */
static bool has_sheet(const lw_arguments *arguments) {
  for (int i = 0; i < arguments->count; i++) {
    const char *one = arguments->at[i];
    bool named = lw_cli_ends_in(one, ".csv") || strcmp(one, "-") == 0;
    if (!lw_wall_is_item(one) && one[0] != '\0' && (named || access(one, F_OK) == 0)) return true;
  }
  return false;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, lw_pressure_asked *asked, lw_arguments *rest) {
  const lw_option options[] = {
      {"json", .flag = &asked->json},       {"csv", .flag = &asked->csv},
      {"working", .flag = &asked->working}, {"width", .text = &asked->width},
      LW_OPTION_UNITS(&asked->units),       LW_OPTION_TABLES(&asked->tables),
      LW_OPTION_OUTPUT(&asked->output),     {0},
  };
  int ended = lw_options_read(options, NULL, argc, argv, rest);
  if (ended == LW_OPTIONS_HELP) return lw_pressure_question_help() + 1;
  if (ended > 0) return ended;
  return lw_pressure_asked_hold(asked) ? 0 : LW_EXIT_BAD_INPUT + 1;
}

int lw_cli_pressure(int argc, char **argv) {
  lw_pressure_asked asked = {0};
  lw_arguments rest;
  int ended = read_options(argc, argv, &asked, &rest);
  if (ended > 0) return ended - 1;
  if (has_sheet(&rest)) return lw_pressure_of_wall(&rest, &asked);
  if (asked.tables != NULL)
    return lw_cli_refuse("pressure", "bad-option: --tables: tables are for a sheet; items alone need none");
  return of_items(&rest, &asked);
}
