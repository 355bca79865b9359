/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#include "ask/measures.h"
#include "ask/question.h"
#include "ask_end.h"
#include "ask_print.h"
#include "ask_show.h"
#include "cli.h"
#include "input.h"
#include "options.h"
#include "output.h"

static const char help[] =
    "lowwall ask [-o FILE] [--units metric|us] [--tables DIR] [SHEET]\n"
    "\n"
    "Ask about one wall, a question at a time, and write the answers as a sheet. A question that can no "
    "longer\n"
    "change what is said of the wall, nor what is ordered for it, is not asked. After each answer stands "
    "what is\n"
    "known so far; at the end the first screen, as lowwall check has it.\n"
    "\n"
    "Type an answer and press Enter. Besides, at any time:\n"
    "  back     the question before         ?        why it is asked, and how to find out with bare hands\n"
    "  skip     leave it for later          d        I do not know: the unfavourable value counts\n"
    "  stop     go on another day           us, metric  units of the measures\n"
    "\n"
    "The sheet is kept after each answer. To go on, give it: lowwall ask wall.csv.\n"
    "\n"
    "  -o, --output FILE   keep the answers there; wall.csv, or SHEET, if not given. A file that exists is "
    "left\n"
    "                      as it is, but for SHEET\n"
    "  --units metric|us   units of measures that are typed without one, and of all that is said; left out, "
    "as\n"
    "                      SHEET is written\n"
    "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n"
    "  -h, --help          this page\n"
    "\n"
    "Exit status: 0 done or stopped; 2 bad input or bad options; 1 anything else.\n";

typedef struct ask_asked {
  const char *output, *tables, *units, *sheet;
} ask_asked;

static bool agree(const ask_asked *asked) {
  if (asked->output && strcmp(asked->output, "-") == 0)
    lw_cli_refuse("ask", "bad-option: -o -: the questions stand on standard output; give the sheet a file");
  else if (asked->sheet && strcmp(asked->sheet, "-") == 0)
    lw_cli_refuse("ask", "bad-option: -: the answers come on standard input; give the sheet as a file");
  else if (lw_output_is_table(asked->output ? asked->output : asked->sheet, asked->tables))
    lw_cli_refuse("ask", "bad-option: %.200s is a table in use; give the sheet another name",
                  asked->output ? asked->output : asked->sheet);
  else
    return true;
  return false;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, ask_asked *asked) {
  const lw_option options[] = {
      LW_OPTION_UNITS(&asked->units),
      LW_OPTION_TABLES(&asked->tables),
      LW_OPTION_OUTPUT(&asked->output),
      {0},
  };
  lw_arguments rest;
  int ended = lw_options_read(options, help, argc, argv, &rest);
  if (ended > 0) return ended;
  if (rest.count > 1)
    return lw_cli_refuse("ask", "bad-option: one sheet at a time; \"%.80s\" is too much", rest.at[1]) + 1;
  asked->sheet = rest.at[0];
  return agree(asked) ? 0 : LW_EXIT_BAD_INPUT + 1;
}

/* The file to keep the answers in is the sheet that was opened, or one that is not there yet. */
static bool choose_file(const ask_asked *asked, lw_ask_session *session) {
  bool same = asked->sheet && (!asked->output || strcmp(asked->output, asked->sheet) == 0);
  session->kept = same;
  session->file = same ? asked->sheet : asked->output ? asked->output : "wall.csv";
  struct stat there;
  if (same || stat(session->file, &there) != 0) return true;
  if (S_ISDIR(there.st_mode)) {
    lw_cli_refuse("ask", "bad-option: -o %.200s: it is a folder; a name for the file in it is wanted",
                  session->file);
    return false;
  }
  lw_cli_refuse(
      "ask", "bad-option: %.200s is there already; lowwall ask %.200s goes on with it, -o takes another name",
      session->file, session->file);
  return false;
}

/* What the sheet that was opened is written in. */
static bool is_us(lw_ask_session *session) {
  lw_result *scratch = &session->asking.scratch[0];
  session->again.count = 0;
  return lw_sheet_read(session->sheet.data, session->sheet.length, &scratch->given, &session->again) ==
             LW_OK &&
         lw_case_units(&scratch->given) == LW_UNITS_US;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_sheet(const ask_asked *asked, lw_ask_session *session) {
  lw_input *input = calloc(1, sizeof *input);
  if (!input) return lw_cli_no_memory() + 1;
  lw_status status = lw_input_open(input, asked->sheet, &session->faults);
  bool many = status == LW_OK && lw_sheet_is_schedule(input->block, input->length);
  if (status == LW_OK && !many) status = lw_input_rest(input, &session->sheet, &session->faults);
  lw_input_close(input);
  free(input);
  if (many)
    return lw_cli_refuse("ask", "bad-option: %.200s is a schedule; this is for one wall", asked->sheet) + 1;
  session->asking.sheet = session->sheet.data;
  session->asking.length = session->sheet.length;
  if (status == LW_OK) status = lw_questions_look(&session->asking, &session->look, &session->faults);
  if (status == LW_OK && !asked->units) session->asking.us = is_us(session);
  if (status == LW_OK) return 0;
  return (status == LW_NO_MEMORY ? lw_cli_no_memory() : lw_cli_print_faults(&session->faults)) + 1;
}

/* The sheet with one answer more, kept in its file. gives the exit status */
static int keep(lw_ask_session *session, lw_text *sheet) {
  lw_text copy = {0};
  lw_text_free(&session->sheet);
  session->sheet = *sheet;
  *sheet = (lw_text){0};
  session->asking.sheet = session->sheet.data;
  session->asking.length = session->sheet.length;
  lw_text_add_bytes(&copy, session->sheet.data, session->sheet.length);
  int exit_status =
      (session->kept ? lw_output_write : lw_output_write_new)(session->file, &copy, LW_EXIT_DONE);
  session->kept = session->kept || exit_status == LW_EXIT_DONE;
  return exit_status;
}

/* What one question comes to: an exit status + 1, or one of these. */
enum { GO_ON = 0, GO_BACK = -1, GO_STOP = -2, ASK_AGAIN = -3, TAKEN = -4 };

static int take_answer(lw_ask_session *session, int question, const char *answer) {
  lw_text sheet = {0};
  session->faults.count = 0;
  lw_status status = lw_question_answer(&session->asking, session->asking.tables->question[question].key,
                                        answer, &sheet, &session->faults);
  if (status == LW_NO_MEMORY) {
    lw_text_free(&sheet);
    return lw_cli_no_memory() + 1;
  }
  if (status == LW_FAULTS) {
    lw_ask_show_faults(session);
    return ASK_AGAIN;
  }
  int exit_status = keep(session, &sheet);
  if (exit_status != LW_EXIT_DONE) return exit_status + 1;
  session->skipped[question] = false;
  lw_ask_show_so_far(session);
  return GO_ON;
}

/* A line that is no answer. */
static int take_word(lw_ask_session *session, int question, lw_ask_heard heard) {
  switch (heard) {
  case LW_HEARD_BACK: return GO_BACK;
  case LW_HEARD_STOP: return GO_STOP;
  case LW_HEARD_SKIP: session->skipped[question] = true; return GO_ON;
  case LW_HEARD_WHY: lw_ask_show_why(session, question); return ASK_AGAIN;
  case LW_HEARD_METRIC:
  case LW_HEARD_US:
    session->asking.us = heard == LW_HEARD_US;
    lw_ask_say(session, "Measures without a unit are now in %s.",
               session->asking.us ? "inches and feet" : "mm and m");
    return ASK_AGAIN;
  case LW_HEARD_NOTHING:
  case LW_HEARD_ANSWER: break;
  }
  lw_ask_say(session, "Nothing was typed. An answer is wanted, or one of: back, skip, stop, ?, d.");
  return ASK_AGAIN;
}

static int ask_line(lw_ask_session *session, int question) {
  char line[LW_ASK_LINE];
  lw_ask_heard heard = lw_ask_read(session, line);
  return heard == LW_HEARD_ANSWER ? take_answer(session, question, line)
                                  : take_word(session, question, heard);
}

/* Enter keeps what the sheet has; of what stands behind the first measure it says that it is not known. */
static bool take_enter(lw_ask_session *session, int question, int measure, char line[LW_ASK_LINE]) {
  if (lw_ask_now(session, question, measure, line)) return true;
  if (measure == 0 || !lw_measure_may_be_left(&session->asking.tables->question[question], measure))
    return false;
  lw_print(line, LW_ASK_LINE, "not known");
  return true;
}

/* One measure, asked again until it reads: what was right before it is not asked anew.
 * gives TAKEN, line filled, or what a word comes to */
static int ask_measure(lw_ask_session *session, int question, int measure, char line[LW_ASK_LINE]) {
  for (;;) {
    lw_ask_heard heard = lw_ask_read(session, line);
    bool kept = heard == LW_HEARD_NOTHING && take_enter(session, question, measure, line);
    session->faults.count = 0;
    bool all = measure == 0 && strchr(line, ';');
    if (kept || (heard == LW_HEARD_ANSWER &&
                 (all || lw_measure_try(&session->asking, question, measure, line, &session->faults))))
      return TAKEN;
    bool again = heard == LW_HEARD_ANSWER || heard == LW_HEARD_NOTHING || heard == LW_HEARD_WHY;
    int outcome = ASK_AGAIN;
    if (heard == LW_HEARD_ANSWER)
      lw_ask_show_faults(session);
    else
      outcome = take_word(session, question, heard);
    if (!again) return outcome;
    lw_ask_show_measure(session, question, measure);
  }
}

/* All of a question at once may be typed with ; between. */
static int ask_measures(lw_ask_session *session, int question) {
  char line[LW_ASK_LINE];
  lw_text answer = {0};
  for (int i = 0; lw_ask_show_measure(session, question, i); i++) {
    int outcome = ask_measure(session, question, i, line);
    if (outcome != TAKEN) {
      lw_text_free(&answer);
      return outcome;
    }
    lw_text_addf(&answer, "%s%s", i > 0 ? ";" : "", line);
    if (i == 0 && strchr(line, ';')) break;
  }
  int outcome = take_answer(session, question, answer.data ? answer.data : "");
  lw_text_free(&answer);
  return outcome;
}

/* One question until it is answered, left, or given up. */
static int ask_one(lw_ask_session *session, int question) {
  bool measures = session->asking.tables->question[question].kind == LW_QUESTION_MEASURE;
  int outcome;
  lw_ask_show_question(session, question);
  while ((outcome = (measures ? ask_measures : ask_line)(session, question)) == ASK_AGAIN)
    if (!measures) lw_ask_show_prompt(session);
  return outcome;
}

/* The first that is open and was not put off; -1: none. */
static int next_open(lw_ask_session *session) {
  for (int i = 0; i < session->look.count; i++)
    if (session->look.state[i] == LW_ASKED_OPEN && !session->skipped[i]) return i;
  return -1;
}

static int go_back(lw_ask_session *session) {
  session->asked_count--;
  if (session->asked_count > 0)
    session->asked_count--;
  else
    lw_ask_say(session, "This is the first question.");
  return session->asked[session->asked_count];
}

/* Where the next part begins it is said what it is for: only the first is needed for the answer. */
static void tell_of_part(lw_ask_session *session, int last, int question) {
  const lw_question_row *row = session->asking.tables->question;
  if (last < 0 || row[question].part == row[last].part || row[question].part == LW_QUESTION_FIRST) return;
  lw_ask_say(session, "\n%s%s: what follows may be left out, by stop.",
             row[last].part == LW_QUESTION_FIRST ? "That is all for the answer. " : "",
             lw_question_part_title(row[question].part));
}

/* Look again; no memory ends it. */
static bool look(lw_ask_session *session) {
  session->faults.count = 0;
  if (lw_questions_look(&session->asking, &session->look, &session->faults) != LW_OK)
    session->no_memory = true;
  return !session->no_memory;
}

/* gives GO_ON when all is asked, GO_STOP, or an exit status + 1 */
static int ask_all(lw_ask_session *session) {
  enum { MOST = sizeof session->asked / sizeof *session->asked };
  int outcome = GO_ON, last = -1;
  for (int question = next_open(session); question >= 0 && (outcome == GO_ON || outcome == GO_BACK);) {
    if (session->asked_count == MOST) session->asked_count = 0;
    tell_of_part(session, last, question);
    session->asked[session->asked_count++] = last = question;
    outcome = ask_one(session, question);
    if (!look(session)) return lw_cli_no_memory() + 1;
    question = outcome == GO_BACK ? go_back(session) : next_open(session);
  }
  return outcome;
}

static int how_it_ended(const lw_ask_session *session) {
  if (session->no_memory) return lw_cli_no_memory();
  if (!session->not_written) return LW_EXIT_DONE;
  /* A reader that has seen enough is no news. */
  if (session->not_written != EPIPE) lw_output_not_written(NULL, strerror(session->not_written));
  return LW_EXIT_OTHER;
}

static int run(const ask_asked *asked, lw_ask_session *session) {
  int ended = choose_file(asked, session) ? 0 : LW_EXIT_BAD_INPUT + 1;
  lw_print(session->faults.file, sizeof session->faults.file, "%s",
           asked->sheet ? asked->sheet : "lowwall ask");
  if (ended == 0 && asked->sheet) ended = read_sheet(asked, session);
  if (ended > 0) return ended - 1;
  if (!look(session)) return lw_cli_no_memory();
  lw_ask_show_greeting(session);
  int outcome = ask_all(session);
  if (outcome > 0) return outcome - 1;
  lw_ask_show_end(session, outcome == GO_STOP);
  return how_it_ended(session);
}

int lw_cli_ask(int argc, char **argv) {
  ask_asked asked = {0};
  int ended = read_options(argc, argv, &asked), exit_status = LW_EXIT_OTHER;
  if (ended > 0) return ended - 1;
  lw_tables *tables = lw_cli_tables(asked.tables, &exit_status);
  if (tables == NULL) return exit_status;
  lw_ask_session *session = calloc(1, sizeof *session);
  lw_result *scratch = calloc(2, sizeof *scratch);
  if (session && scratch) {
    session->asking = (lw_asking_for){
        .tables = tables, .scratch = scratch, .us = asked.units && strcmp(asked.units, "us") == 0};
    exit_status = run(&asked, session);
    lw_text_free(&session->sheet);
  } else {
    exit_status = lw_cli_no_memory();
  }
  free(scratch);
  free(session);
  free(tables);
  return exit_status;
}
