/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_TELLING_H
#define LOWWALL_VERDICT_TELLING_H

#include <lowwall/result.h>

/* What is said of the check that is told of. */

/* "sliding on its base has 0.79 and needs 1.33 (rain seeping through the soil to its way out)": a clause that
 * does not say what follows from it. size: LW_CLAUSE_MAX will do */
void lw_telling_check(const lw_check *check, const lw_situation *situation, char *out, size_t size);
/* "sliding on its base (rain seeping ...)": for a sentence that has its numbers already. */
void lw_telling_name(const lw_check *check, const lw_situation *situation, char *out, size_t size);
/* What falling short of it means, a clause. */
const char *lw_telling_meaning(const lw_check *check);

#endif
