/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_REPORT_EVERY_WALL_H
#define TESTS_REPORT_EVERY_WALL_H

#include <lowwall/report.h>

#include <jansson.h>

/* A wall with what is made of it. To make one is dear (remedies, water levels, sets of factors), so that it
 * is made
 * once, and every subject holds its own of it; each subject stands in the file that it belongs to. */
typedef struct every_wall {
  const char *name;
  const lw_result *result;
  const json_t *json;
  const char *page, *working;
} every_wall;

/* What holds of every wall; each gives how many things it has held: none may pass by finding nothing. */
int every_null_has_a_reason(const every_wall *wall);              /* json.c */
int every_json_is_whole(const every_wall *wall);                  /* json.c */
int every_figure_is_whole(const every_wall *wall);                /* figures.c */
int every_key_is_alone(const every_wall *wall);                   /* figures.c */
int every_row_says_what_the_verdict_says(const every_wall *wall); /* row.c */
int every_key_is_documented(const every_wall *wall);              /* results.c */
/* To be asked after the last wall. */
void every_documented_key_is_there(void); /* results.c */

int every_line_fits(const every_wall *wall); /* text_words.c */
int every_page_gives_no_leave_to_build(const every_wall *wall);
int every_page_begins_and_ends(const every_wall *wall);
int every_page_speaks_to_people(const every_wall *wall);   /* slugs.c */
int every_advice_has_a_true_title(const every_wall *wall); /* advised.c */
int every_page_says_what_is_not_checked(const every_wall *wall);
int every_number_on_the_page_is_carried(const every_wall *wall); /* text_numbers.c */
int every_number_on_the_screen_is_carried(const every_wall *wall);
int every_number_on_the_section_is_carried(const every_wall *wall);
int every_screen_keeps_its_size(const every_wall *wall); /* screen.c */
int every_moment_adds_up(const every_wall *wall);        /* working.c */
int every_heading_heads_something(const every_wall *wall);
int every_table_has_the_sums_of_the_checks(const every_wall *wall);
int every_sliding_is_right_by_hand(const every_wall *wall);
int every_key_cited_is_listed(const every_wall *wall);         /* cited.c */
int every_precheck_says_who_must_sign(const every_wall *wall); /* precheck.c */
int every_precheck_closes_what_it_opens(const every_wall *wall);
int every_precheck_speaks_one_units(const every_wall *wall); /* precheck_units.c */
int every_precheck_asks_once(const every_wall *wall);        /* precheck_said.c */
int every_form_says_the_same(const every_wall *wall);        /* forms.c */

#endif
