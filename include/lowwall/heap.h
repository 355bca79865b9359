/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_HEAP_H
#define LOWWALL_HEAP_H

#include <lowwall/base.h>

LW_PUBLIC_BEGIN

/* For callers from another language, which do not read these headers: structs by name, on the heap, and what
 * they say as plain bytes. A program in C declares them itself. docs/library.md has an example of each. */

/** How large a struct is.
 *  in    type   its name, as "lw_case"
 *  gives bytes; 0 for a name that is none of lw_case, lw_tables, lw_faults, lw_error, lw_text, lw_result,
 *        lw_order, lw_plane, lw_thrust, lw_wedge, lw_strip, lw_bearing, lw_slip_ground, lw_slip */
size_t lw_size_of(const char *type);

/** A struct as a program in C would begin it: all zero, and begun by its _init where it has one.
 *  in    type   as above
 *  gives where it lies, NULL for another name and without memory; lw_delete gives it back */
void *lw_new(const char *type);
/** Give it back. What it owns goes first: lw_text_free for a text. */
void lw_delete(void *made);

/** What a text, or an error, says: its bytes up to a NUL, never NULL. They stay while it is left as it is. */
const char *lw_text_says(const lw_text *text);
const char *lw_error_says(const lw_error *error);

LW_PUBLIC_END

#endif
