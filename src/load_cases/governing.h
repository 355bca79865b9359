/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_LOAD_CASES_GOVERNING_H
#define LOWWALL_LOAD_CASES_GOVERNING_H

#include <lowwall/checks.h>

/** The check that governs, among those that count in the situations that decide: the least ratio of those
 *  that fall short; if none does, one that cannot be shown; else the least ratio. False: nothing counts. */
bool lw_situations_governing(const lw_situations *situations, int *situation, int *check);

/** Over the deciding situations: what the governing check says; where none governs LW_HOLDS, or
 *  LW_CANNOT_SHOW when the format asks for nothing at all. */
lw_holds lw_situations_stand(const lw_situations *situations);

#endif
