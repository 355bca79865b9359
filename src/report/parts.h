/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PARTS_H
#define LOWWALL_REPORT_PARTS_H

#include "page.h"

/* What several forms of report say alike. */

/* A value of the case as its user would write it, and in the unit of its JSON key. */
typedef struct lw_echo {
  const lw_item *item;
  int number;
  lw_origin origin;
  int row, column;
  bool worked_out; /* from given items */
  char name[64], key[80];
  char words[160]; /* "900 mm", "courses" */
  lw_number value; /* of a quantity, in `unit` */
  const char *unit;
  char source[LW_SOURCE_MAX]; /* of a value from a table; "" otherwise */
} lw_echo;

typedef void (*lw_echo_taker)(void *context, const lw_echo *echo);
/** Every item of the case that is there: given, from a table, assumed. */
void lw_echo_each(const lw_result *result, lw_echo_taker taker, void *context);

/* Of the limits that are past, and call for the same person, one is reason enough: all of them are listed. */
bool lw_reason_said_before(const lw_verdict *v, int index);

/* The month after which a limit is asked about again; "" where none says when it was read. */
enum { LW_MONTH_BYTES = 16 };
void lw_limit_ask_again(const lw_tables *tables, const lw_limit_row *row, char month[LW_MONTH_BYTES]);
/* The date of its text, where that was seen, and when. */
void lw_limit_print_dates(const lw_tables *tables, const lw_limit_row *row, char *out, size_t size);

/* What is not checked, and said so. */
typedef struct lw_unchecked {
  const char *slug, *text;
} lw_unchecked;
typedef void (*lw_unchecked_taker)(void *context, const lw_unchecked *unchecked);
void lw_unchecked_each(const lw_result *result, lw_unchecked_taker taker, void *context);

/* "holds", "falls short by 12 %", "cannot be shown", "not checked". */
void lw_check_outcome(const lw_check *check, char *out, size_t size);
/* Whether any check of a situation that decides says that it would move. */
bool lw_result_would_move(const lw_result *result);
/* Whether what it needs is read from memory or a proposal, in this kind of situation. */
lw_seen lw_check_seen(const lw_check *check, lw_situation_kind kind);
/* The check that the sentences tell of, see lw_verdict, and its situation; NULL: nothing governs. */
const lw_situation *lw_result_told(const lw_result *result, lw_check *check);
/* What of this report fails beside the checks that decide, as the end of a sentence; false: nothing does. */
bool lw_result_fails_elsewhere(const lw_result *result, char *out, size_t size);

/* A force in words: "course 2", "push of the soil"; and in a key: "course-2", "thrust". */
void lw_force_label(const lw_result *result, const lw_force *force, char *out, size_t size);
void lw_force_slug(const lw_result *result, const lw_force *force, char *out, size_t size);
/* The level that moments of a stage are about: 0, or the underside of the pad. */
double lw_stage_foot(const lw_result *result, const lw_stage *stage);

/* Why formula and wedge differ; "" when they must agree. */
const char *lw_difference_words(lw_difference difference);
/* Where the formula of the thrust is from. */
const char *lw_thrust_source(const lw_result *result);

/* What to do while it is built, one or two sentences, without the last full stop. */
enum { LW_INSTRUCTION_MAX = 400 };
void lw_building_instruction(const lw_result *result, char *out, size_t size);
/* Why something is missing in the answer of a set of factors. */
lw_reason lw_format_answer_reason(const lw_format_answer *answer);
/* Loads of limited width push on this stage beside its formula. */
bool lw_stage_has_loads(const lw_stage *stage);
/* Whose theory such loads are carried by; "" without them. From memory, all of them. */
const char *lw_loads_source(const lw_result *result);
/* "half space", "doubled", "curves"; "uniform", "strip" ... */
const char *lw_load_theory_word(lw_load_pressure by);
const char *lw_load_kind_word(lw_load_kind kind);
/* Each heavy load that the sheet places, and the line of influence. */
void lw_text_influence(const lw_page *page, const lw_result *result);

/* The page's parts, in their order. */
void lw_text_headline(const lw_page *page, const lw_result *result);
void lw_text_verdict(const lw_page *page, const lw_result *result);
void lw_text_checks(const lw_page *page, const lw_result *result);
void lw_text_narrow(const lw_page *page, const lw_result *result);
void lw_text_building(const lw_page *page, const lw_result *result);
void lw_text_water(const lw_page *page, const lw_result *result);
/* Where nobody may dig in front: a line among the cautions. */
void lw_text_keep_out(const lw_page *page, const lw_result *result);
void lw_text_formats(const lw_page *page, const lw_result *result);
void lw_text_unchecked(const lw_page *page, const lw_result *result);
void lw_text_remedies(const lw_page *page, const lw_result *result);
void lw_text_fence(const lw_page *page, const lw_result *result);
void lw_text_heights(const lw_page *page, const lw_result *result);
/* The reasons that rest on answers nobody gave, where they did not fit at the head. */
void lw_text_resting(const lw_page *page, const lw_result *result);
void lw_text_assumed(const lw_page *page, const lw_result *result, bool all);
void lw_text_cautions(const lw_page *page, const lw_result *result);
void lw_text_sources(const lw_page *page, const lw_result *result);
/* Of a page that says where each of its numbers is from: those that it cites and no others. */
void lw_text_sources_cited(const lw_page *page, const lw_result *result);

#endif
