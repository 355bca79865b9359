/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef TESTS_VERDICT_HELP_H
#define TESTS_VERDICT_HELP_H

#include <lowwall/result.h>

/** The built-in tables, read once a process. */
const lw_tables *verdict_tables(void);
/** The same to be changed, as a council would; read anew by each call. */
lw_tables *verdict_tables_copy(void);
/** A row of tables/limits.csv by its id. */
lw_limit_row *verdict_limit(lw_tables *tables, const char *id);

/** A low bed far from everything, answers all known, with the items of `changes` ("item=value;item=value")
 *  instead. Not complete. */
void verdict_case(const char *changes, lw_case *c);

/** Situations of one check, made by hand, so that the verdict is tested apart from the mechanics. */
void verdict_situations(lw_holds holds, lw_situations *situations);

/** The verdict on that bed with changes, its checks by hand. */
lw_verdict verdict_of(const char *changes, lw_holds holds);
lw_verdict verdict_with(const lw_tables *tables, const char *changes, lw_holds holds);

/** That bed with changes completed and built once, its checks by hand, for its verdict in many places. */
void verdict_wall_make(const lw_tables *tables, const char *changes, lw_holds holds, lw_result *made);
/** The same of the complete case that is there. */
void verdict_wall_build(const lw_tables *tables, lw_holds holds, lw_result *made);
/** Its verdict in a place; NULL: none is named. */
void verdict_in(lw_result *made, const char *place, lw_verdict *verdict);
/** That bed with changes, run with all that reports say of it. The caller frees. */
lw_result *verdict_run(const char *changes);
/** The i-th place of tables/limits.csv, each once; NULL past the last. */
const char *verdict_place_at(const lw_tables *tables, int i);

/** The reason with that slug, or NULL. */
const lw_verdict_reason *verdict_reason(const lw_verdict *verdict, lw_answer answer, const char *slug);

#endif
