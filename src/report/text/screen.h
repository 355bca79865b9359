/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_SCREEN_H
#define LOWWALL_REPORT_TEXT_SCREEN_H

#include "pieces.h"

/* The parts of the first screen, in their order. Each adds its pieces, none where it has nothing to say. */
void lw_screen_answer(lw_screen *screen, const lw_result *result);
void lw_screen_remedies(lw_screen *screen, const lw_result *result);
void lw_screen_checks(lw_screen *screen, const lw_result *result);
void lw_screen_costs(lw_screen *screen, const lw_result *result);
void lw_screen_asking(lw_screen *screen, const lw_result *result);
void lw_screen_assumed(lw_screen *screen, const lw_result *result);
void lw_screen_cautions(lw_screen *screen, const lw_result *result);
void lw_screen_unchecked(lw_screen *screen, const lw_result *result);
void lw_screen_read_on(lw_screen *screen, const lw_result *result);

#endif
