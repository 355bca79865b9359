/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_SAID_H
#define LOWWALL_REPORT_TEXT_SAID_H

#include <lowwall/report.h>

/* "holds", "falls short by 12 %", "cannot be shown", "not checked". */
void lw_check_outcome(const lw_check *check, char *out, size_t size);
/* Whether any check of a situation that decides says that it would move. */
bool lw_result_would_move(const lw_result *result);
/* Whether what it needs is read from memory or a proposal, in this kind of situation. */
lw_seen lw_check_seen(const lw_check *check, lw_situation_kind kind);
/* The check that the sentences tell of, see lw_verdict, and its situation; NULL: nothing governs. */
const lw_situation *lw_result_told(const lw_result *result, lw_check *check);

/* Of the limits that are past, and call for the same person, one is reason enough: all of them are listed. */
bool lw_reason_said_before(const lw_verdict *v, int index);

/* What no page of ours leaves out. */
#define LW_CERTIFIES_NOTHING \
  "It certifies nothing, has not seen the place and replaces no engineer, no council and no look at the " \
  "ground: whoever builds, answers for it."

#endif
