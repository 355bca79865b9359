/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_TEXT_LOADS_H
#define LOWWALL_REPORT_TEXT_LOADS_H

#include <lowwall/report.h>

/* Loads of limited width push on this free body beside its formula. */
bool lw_free_body_has_loads(const lw_free_body *body);
/* Whose theory such loads are carried by; "" without them. From memory, all of them. */
const char *lw_loads_source(const lw_result *result);
/* "half space", "doubled", "curves"; "uniform", "strip" ... */
const char *lw_load_theory_word(lw_load_pressure by);
const char *lw_load_kind_word(lw_load_kind kind);

#endif
