/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <getopt.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "sheet/faults.h"
#include "cli.h"
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

static int of_items(int argc, char **argv, int first, const lw_pressure_asked *asked) {
  lw_pressure_question *question = calloc(1, sizeof *question);
  if (question == NULL) return lw_cli_no_memory();
  int exit_status;
  if (!lw_pressure_question_read(argc, argv, first, asked->units, question))
    exit_status = lw_formula_refuse(&question->given, "pressure");
  else if (asked->drawn || asked->csv)
    exit_status = answer_plain(asked, question);
  else
    exit_status = asked->json ? answer_json(asked, question) : answer_text(asked, question);
  free(question);
  return exit_status;
}

/* A sheet is a file that is there, or what is named like one; anything else is an item with a fault. */
static bool has_sheet(int argc, char **argv, int first) {
  for (int i = first; i < argc; i++) {
    const char *equals = strchr(argv[i], '=');
    bool item = equals != NULL && memchr(argv[i], '/', (size_t)(equals - argv[i])) == NULL;
    bool named = lw_cli_ends_in(argv[i], ".csv") || strcmp(argv[i], "-") == 0;
    if (!item && argv[i][0] != '\0' && (named || access(argv[i], F_OK) == 0)) return true;
  }
  return false;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, lw_pressure_asked *asked) {
  static const struct option options[] = {{"json", no_argument, NULL, 'j'},
                                          {"csv", no_argument, NULL, 'c'},
                                          {"working", no_argument, NULL, 'g'},
                                          {"width", required_argument, NULL, 'w'},
                                          {"tables", required_argument, NULL, 't'},
                                          {"output", required_argument, NULL, 'o'},
                                          {"units", required_argument, NULL, 'u'},
                                          {"help", no_argument, NULL, 'h'},
                                          {0}};
  optind = 0; /* glibc: begin anew, whatever was read before */
  opterr = 0;
  for (int option; (option = getopt_long(argc, argv, ":o:h", options, NULL)) != -1;) {
    bool well = true;
    switch (option) {
    case 'j': asked->json = true; break;
    case 'c': asked->csv = true; break;
    case 'g': asked->working = true; break;
    case 'w': well = lw_cli_take_once("pressure", "--width", optarg, &asked->width); break;
    case 'u': well = lw_cli_take_once("pressure", "--units", optarg, &asked->units); break;
    case 't': well = lw_cli_take_once("pressure", "--tables", optarg, &asked->tables); break;
    case 'o': well = lw_cli_take_once("pressure", "--output", optarg, &asked->output); break;
    case 'h': lw_pressure_question_help(); return 1;
    default: return lw_cli_refuse_option("pressure", argv, option) + 1;
    }
    if (!well) return LW_EXIT_BAD_INPUT + 1;
  }
  return lw_pressure_asked_hold(asked) ? 0 : LW_EXIT_BAD_INPUT + 1;
}

int lw_cli_pressure(int argc, char **argv) {
  lw_pressure_asked asked = {0};
  int ended = read_options(argc, argv, &asked);
  if (ended > 0) return ended - 1;
  if (has_sheet(argc, argv, optind)) return lw_pressure_of_wall(argc, argv, optind, &asked);
  if (asked.tables != NULL)
    return lw_cli_refuse("pressure", "bad-option: --tables: tables are for a sheet; items alone need none");
  return of_items(argc, argv, optind, &asked);
}
