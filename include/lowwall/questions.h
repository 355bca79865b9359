/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_QUESTIONS_H
#define LOWWALL_QUESTIONS_H

#include <lowwall/report.h>

LW_PUBLIC_BEGIN

/* The questions of tables/questions.csv, asked one by one: by a page, in a terminal, on paper. What was
 * answered so far is the text of an upright sheet and nothing else: to stop is to keep the sheet, to go on is
 * to open it. A question is answered when its items stand on the sheet, `not known` being an answer too. */

/* Where the asking stands. Nothing is kept between calls. */
typedef struct lw_asking_for {
  const lw_tables *tables;
  const char *sheet; /* the answers so far, an upright sheet; NULL: none yet */
  size_t length;
  bool us;            /* measures without a unit are in inches and feet, else in mm and m; words likewise */
  lw_result *scratch; /* two, to run the wall in; NULL: no question is left out for want of an effect */
} lw_asking_for;

typedef enum lw_asked_state {
  LW_ASKED_OPEN,
  LW_ASKED_ANSWERED,
  LW_ASKED_NOT_KNOWN,  /* the answer was: I do not know */
  LW_ASKED_NOT_NEEDED, /* this wall does not have it, or no answer can change what is said of it */
  LW_ASKED_STATES
} lw_asked_state;

typedef struct lw_asked {
  int count; /* of questions, as tables->question_count */
  lw_asked_state state[LW_QUESTION_ROWS];
  int next;     /* the first that is open; -1: none */
  int left;     /* how many are open, of the first part */
  int answered; /* of the first part, not known included */
  int runs;     /* of the wall, to find out which are needed */
} lw_asked;

/** Which questions are answered, which are open, and which of them comes next.
 *  in    asking   its sheet need not be whole
 *  out   asked    unchanged on faults
 *        faults   of the sheet
 *  gives LW_OK · LW_FAULTS when the sheet cannot be read · LW_NO_MEMORY
 *  note  1 A question whose `when` is not so is not needed. One with a mildest and a gravest answer on file
 *          is tried, if asking->scratch is there: see docs/questions.md. Where what stands, its grade and who
 *          must see it are the same each time, it is not needed. A run takes some 2 ms at most.
 *        2 What was answered stays answered as long as the wall has the question. */
lw_status lw_questions_look(const lw_asking_for *asking, lw_asked *asked, lw_faults *faults);

/** The sheet with one more answer in it, its items in the order of the vocabulary.
 *  in    key      of the question
 *        answer   of a choice: the number of its row, from 1, or its key; of several: such numbers with
 *                 blanks or commas between, or "none"; of measures: each with its unit, or without, in the
 *                 order of the question's items, ";" between; of words: the words. "not known" for all of
 *                 it or for one measure; in a list of several a "?" behind a number
 *  out   sheet    appended to; left alone on faults
 *        faults   what was wrong with the answer, and the cure; its item is the question's key, its row is 0
 *  gives LW_OK · LW_FAULTS · LW_NO_MEMORY
 *  note  1 What else stands on the sheet stays as it was typed, notes too. Only items of the question change.
 *        2 An answer that contradicts another one is refused: the sheet always reads without fault. */
lw_status lw_question_answer(const lw_asking_for *asking, const char *key, const char *answer, lw_text *sheet,
                             lw_faults *faults);

/** The sheet without the answer to one question.
 *  in    key      as above
 *  out   sheet    appended to; left alone on faults
 *  gives as above; LW_OK too where it was not answered */
lw_status lw_question_take_back(const lw_asking_for *asking, const char *key, lw_text *sheet,
                                lw_faults *faults);

/** All that a page or a form shows: each question with words, why, kind, choices, units, what not knowing
 *  counts as, hand test, state and answer so far; which is next, and how many are left: docs/questions.md.
 *  gives as lw_questions_look */
lw_status lw_questions_json(const lw_asking_for *asking, lw_text *out, lw_faults *faults);

/** The small picture of a choice, by the marks of a drawing: no words in it.
 *  in    choice     of the question's rows in tables/choices.csv   0 or more; past the last there is none
 *        width_mm   10 or more; it is three quarters as high
 *  out   drawing    empty before; to be freed by the caller
 *  gives LW_OK · LW_NO_SOLUTION where there is no such choice, or it has no picture · LW_NO_MEMORY */
lw_status lw_question_picture(const lw_tables *tables, const char *key, int choice, double width_mm,
                              lw_drawing *drawing);

/** How the wall stands so far, in the three lines that stand on every page: what it is, whether it stands,
 *  who must see it, the gravest first.
 *  out   out   nothing where the sheet does not say enough yet
 *  gives LW_OK · LW_FAULTS · LW_NO_MEMORY · LW_NO_SOLUTION where there is no scratch to run in */
lw_status lw_questions_verdict(const lw_asking_for *asking, lw_text *out);

/* The questions of the first part and of the order as two pages to fill in with a pencil, and behind them one
 * of what an officer asks. */
enum { LW_FORM_PAGES = 3 };
/* What their measures are written in: units to ring, or one alone. */
typedef enum lw_form_units { LW_FORM_IN_BOTH, LW_FORM_IN_METRIC, LW_FORM_IN_US } lw_form_units;

/** On paper.
 *  out   page    empty before; each to be freed by the caller
 *        count   how many are filled: 2 where no question is an officer's; unchanged on failure
 *  gives LW_OK · LW_NO_MEMORY · LW_TOO_MANY when their pages do not hold them in letters of 7 pt */
lw_status lw_questions_form_pages(const lw_tables *tables, lw_paper paper, lw_form_units units,
                                  lw_drawing page[LW_FORM_PAGES], int *count, lw_error *error);

/** As one HTML page, which asks for nothing from elsewhere.
 *  gives LW_OK · LW_NO_MEMORY */
lw_status lw_questions_form_html(const lw_tables *tables, lw_form_units units, lw_text *out);

/** A row by its key; -1: none. And the rows of its choices: the first, and how many.
 *  in    question   from 0 to below tables->question_count */
int lw_question_find(const lw_tables *tables, const char *key);
int lw_question_choices(const lw_tables *tables, int question, int *first);

LW_PUBLIC_END

#endif
