/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_RUN_LOOKS_H
#define LOWWALL_RUN_LOOKS_H

#include <lowwall/result.h>

/** The likely look in the place of the result itself, before it is run: its case and wall are there again
 *  afterwards.
 *  out   result   looks, with what each check has; situations are overwritten */
void lw_looks_before(lw_result *result);

/** Complete a case anew as it looks with the values of one look.
 *  gives whether it could be; c is half filled in if not */
bool lw_looks_complete(lw_case *c, lw_look look, const lw_tables *tables);

/** Whether what the wall has is looked at without the factors of its set: see lw_looks.bare. */
bool lw_looks_bare(const lw_result *result);
/** As lw_looks_find, where the likely case is complete already.
 *  in    result    not bare
 *        scratch   given: complete, of look LW_LOOK_LIKELY */
void lw_looks_take(lw_result *result, lw_result *scratch);

#endif
