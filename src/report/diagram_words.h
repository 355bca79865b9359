/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DIAGRAM_WORDS_H
#define LOWWALL_REPORT_DIAGRAM_WORDS_H

#include <lowwall/diagram.h>

/* The name of a way's method, without its state; and that of its state. */
const char *lw_way_title(lw_way way);
const char *lw_state_title(lw_earth_state state);
/* What the level pushes of loads at a distance are found by. */
const char *lw_load_theory_title(lw_load_pressure by);

/* Where a method does not apply to this plane, or on which side it errs, as sentences; nothing added where
 * there is nothing to say. Why a way has no answer is one of them. */
void lw_way_notes(const lw_diagram *diagram, lw_way way, lw_units units, lw_text *out);

/* A load of limited width by its number on the sheet: "load 2"; what no item gave is the wall above. */
const char *lw_diagram_load_name(const lw_diagram *diagram, int load, char *out, size_t size);
/* A load of limited width in words: "strip 10.0 kPa, 0.50 to 1.50 m behind". */
void lw_plane_load_words(lw_units units, const lw_plane_load *load, char *out, size_t size);

#endif
