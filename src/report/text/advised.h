/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_ADVISED_H
#define LOWWALL_REPORT_TEXT_ADVISED_H

#include <lowwall/report.h>

/* Remedies and answers worth finding out, as every form of report says them. */

/* What would come of the answer most worth finding out, without the last full stop. */
void lw_asking_then(const lw_result *result, char *out, size_t size);
/* What was taken in place of an answer; of the first what would come of the favourable one, too: of the
 * others it would bury that. item_too: with the name of the item. */
void lw_asking_words(const lw_result *result, int index, bool item_too, lw_text *out);

/* What stands above the remedies; true of what was found. */
const char *lw_remedies_title(const lw_result *result);
/* The same before they are looked for; true of the wall as it is. */
const char *lw_remedies_title_before(const lw_result *result);
/* What stands in their place where they were looked for and nothing helps; else "". */
const char *lw_remedies_none(const lw_result *result);
/* What stands in their place wherever there is none, whatever the reason; else nothing. */
void lw_remedies_instead(const lw_result *result, lw_text *out);

#endif
