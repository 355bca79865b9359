/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_ORDER_WORDS_H
#define LOWWALL_REPORT_ORDER_WORDS_H

#include <lowwall/order.h>

/* The words for what an order holds as slugs and numbers. */
enum { LW_LINE_NAME = 64, LW_LINE_NOTE = 200, LW_SPOT_NAME = 64, LW_NOTE_SLUG = 32, LW_ORDER_SENTENCE = 360 };

/* The name of a line; of caps of several depths with the depth. */
const char *lw_order_line_name(const lw_order_line *line, lw_units units, char out[LW_LINE_NAME]);
/* What is said below a line; "" when nothing is. */
const char *lw_order_line_note(const lw_order_line *line, lw_units units, char out[LW_LINE_NOTE]);

/* What a line's unit measures; LW_KIND_COUNT for what is counted, and for tonnes. */
lw_kind lw_line_unit_kind(lw_line_unit unit);

/* "B1" first corner of the base line, "T1" of the top line, "C2" centre of a curve, "S1" step. */
const char *lw_peg_name(const lw_peg *peg, char out[LW_SPOT_NAME]);
const char *lw_peg_check_name(const lw_peg_check *check, char out[LW_SPOT_NAME]);
const char *lw_level_name(const lw_level *level, char out[LW_SPOT_NAME]);
const char *lw_invert_name(const lw_invert *invert, char out[LW_SPOT_NAME]);

/* Why no length is told that needs no cut; why caps meet in a butt joint; "" when there is no reason. */
const char *lw_no_fit_words(lw_no_fit why);
const char *lw_butt_words(lw_butt why);

/* What to mind, in a sentence or two. A run too short has a slug of its own. */
const char *lw_order_note_name(const lw_order_note *note, char out[LW_NOTE_SLUG]);
const char *lw_order_note_words(const lw_order *order, const lw_order_note *note,
                                char out[LW_ORDER_SENTENCE]);

/* A step of the work; `plant` is what compacts behind the wall, "" when the sheet names none. */
const char *lw_work_words(const lw_order *order, const lw_work_step *step, const char *plant,
                          char out[LW_ORDER_SENTENCE]);

#endif
