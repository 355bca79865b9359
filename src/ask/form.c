/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "form.h"

#include <string.h>

#include "base/canned.h"

const char *lw_form_when(const char *when) {
  static const struct {
    const char *when, *words;
  } WORDS[] = {
      {"", ""},
      {"wall kind!=section", ""}, /* the paper is for walls of blocks */
      {"site behind=bed", "of a bed"},
      {"site behind=ground|not known", "of a terrace or a bank"},
      {"site behind=bed; site back=wall", "of a bed with four sides"},
      {"site behind=bed; site back=fence|building", "of a bed by a fence or a house"},
      {"site back=fence", "of a bed by a fence"},
      {"site back!=fence", "unless a fence closes the bed"},
      {"cap fixing=dry|bonded", "if it has caps"},
      {"boundary distance=near", "if it is near"},
      {"mapped land=yes|not known", "unless it is on none"},
      {"building distance=near", "if it is near"},
      {"other wall distance=near", "if it is near"},
      {"public way distance=near", "if it is near"},
      {"service distance=near", "if it is near"},
      {"pool barrier distance=near", "if it is near"},
      {"waterbody distance=near", "if it is near"},
      {"fence place=behind", "if it stands behind"},
      {"fence place=on the wall", "if it stands on the wall"},
  };
  for (size_t i = 0; i < sizeof WORDS / sizeof *WORDS; i++)
    if (strcmp(WORDS[i].when, when) == 0) return WORDS[i].words;
  return NULL;
}

typedef struct telling {
  lw_form_units units;
  lw_form_taker taker;
  void *context;
} telling;

static void tell(const telling *to, lw_form_kind kind, const char *label, const char *words, const char *of) {
  char said[LW_HAND_TEST_MAX];
  lw_units units = to->units == LW_FORM_IN_US ? LW_UNITS_US : LW_UNITS_METRIC;
  if (to->units == LW_FORM_IN_BOTH)
    lw_canned_both(words, said, sizeof said);
  else
    lw_canned_told(units, words, said, sizeof said);
  const lw_form_line line = {kind, label, said, of};
  to->taker(to->context, &line);
}

/* "mm  in" to ring one, or the one that is asked for. */
static void print_units(lw_form_units asked, const char *metric, const char *us, char *out, size_t size) {
  bool alike = strcmp(metric, us) == 0;
  if (asked == LW_FORM_IN_BOTH && !alike)
    lw_print(out, size, "%s  %s", metric, us);
  else
    lw_print(out, size, "%s", asked == LW_FORM_IN_US ? us : metric);
}

static void tell_measures(const telling *to, const lw_question_row *row) {
  int count = lw_ask_count(row->items, ';');
  for (int i = 0; i < count; i++) {
    char label[LW_NOTE_MAX], metric[LW_NAME_MAX], us[LW_NAME_MAX], units[2 * LW_NAME_MAX];
    const lw_ask_part words = lw_ask_nth(row->labels, ';', i), one = lw_ask_nth(row->units, ';', i),
                      other = lw_ask_nth(row->us_units, ';', i);
    lw_ask_copy(&one, metric, sizeof metric);
    lw_ask_copy(&other, us, sizeof us);
    print_units(to->units, metric, us, units, sizeof units);
    tell(to, LW_FORM_LINE, units, lw_ask_copy(&words, label, sizeof label), "");
  }
}

static void tell_question(const telling *to, const lw_tables *tables, int index, int number) {
  const lw_question question = lw_question_of(tables, index);
  const lw_question_row *row = question.row;
  char label[16];
  const char *of = lw_form_when(row->when);
  lw_print(label, sizeof label, "%d", number);
  tell(to, LW_FORM_QUESTION, label, row->words, of ? of : "");
  if (row->kind == LW_QUESTION_MEASURE)
    tell_measures(to, row);
  else if (row->kind == LW_QUESTION_WORDS)
    tell(to, LW_FORM_LINE, "", "", "");
  for (int i = 0; i < question.choice_count && row->kind != LW_QUESTION_MEASURE; i++)
    tell(to, LW_FORM_BOX, "", question.choice[i].words, "");
  if (row->kind == LW_QUESTION_SEVERAL) tell(to, LW_FORM_BOX, "", "None of these.", "");
  if (row->not_known[0] && row->kind != LW_QUESTION_MEASURE) tell(to, LW_FORM_BOX, "", "I do not know.", "");
}

/* gives how many were told so far */
static int tell_questions(const telling *to, const lw_tables *tables, bool officer, int number) {
  for (int i = 0; i < tables->question_count; i++)
    if ((tables->question[i].part == LW_QUESTION_OFFICER) == officer) tell_question(to, tables, i, ++number);
  return number;
}

/* What settles an answer, for who stands there with wet boots; the numbers are those of the questions. */
static void tell_tests(const telling *to, const lw_tables *tables) {
  int number = 0;
  tell(to, LW_FORM_PART, "", "How to find out by hand, on site", "");
  for (int i = 0; i < tables->question_count; i++) {
    const lw_question_row *row = &tables->question[i];
    char label[16], words[LW_HAND_TEST_MAX];
    int step_number = 0;
    lw_ask_part step;
    if (row->part == LW_QUESTION_OFFICER) continue;
    lw_print(label, sizeof label, "%d", ++number);
    if (row->hand_test[0]) tell(to, LW_FORM_QUESTION, label, row->words, "");
    for (const char *at = row->hand_test; lw_ask_next(&at, '|', &step);) {
      lw_print(label, sizeof label, "%d.", ++step_number);
      tell(to, LW_FORM_STEP, label, lw_ask_copy(&step, words, sizeof words), "");
    }
  }
}

static void tell_officer(const telling *to, const lw_tables *tables, int number) {
  char part[120];
  lw_print(part, sizeof part, "%s. What is left empty here was not asked.",
           lw_question_part_title(LW_QUESTION_OFFICER));
  tell(to, LW_FORM_PART, "", part, "");
  tell_questions(to, tables, true, number);
}

static bool any_of_officer(const lw_tables *tables) {
  for (int i = 0; i < tables->question_count; i++)
    if (tables->question[i].part == LW_QUESTION_OFFICER) return true;
  return false;
}

void lw_form_each(const lw_tables *tables, lw_form_units units, lw_form_taker taker, void *context) {
  const telling to = {units, taker, context};
  tell(&to, LW_FORM_TITLE, "", "A wall to be checked: what to ask and to measure on site", "");
  tell(&to, LW_FORM_WORDS, "",
       units == LW_FORM_IN_BOTH
           ? "Tick what is so; write a measure on its line and ring its unit. What is left empty counts as "
             "not "
             "known, and "
             "then the unfavourable answer counts. At home lowwall ask takes the answers in this order."
           : "Tick what is so; write a measure on its line, in the unit behind it. What is left empty counts "
             "as "
             "not known, and then the unfavourable answer counts. At home lowwall ask takes the answers in "
             "this "
             "order.",
       "");
  int number = tell_questions(&to, tables, false, 0);
  tell(&to, LW_FORM_SKETCH, "",
       "Sketch: the wall cut through and from above, with heights, distances and what stands near", "");
  if (any_of_officer(tables)) tell_officer(&to, tables, number);
  tell_tests(&to, tables);
}
