/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_WORKING_H
#define LOWWALL_BASE_WORKING_H

#include <lowwall/base.h>

/** Begin a part of the working. */
void lw_working_heading(const lw_working *working, const char *title);
/** Record a step; `inserted` is a printf format for the numbers put in. Cheap when working is NULL. */
void lw_working_step(const lw_working *working, const lw_step *step, const char *inserted, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 3, 4)))
#endif
    ;

/** The same for a step whose formula, numbers and value fit on one line. */
void lw_working_line(const lw_working *working, const lw_step *step, const char *inserted, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 3, 4)))
#endif
    ;

/** Record a row of a table, its head included: 78 columns at most. */
void lw_working_row(const lw_working *working, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 2, 3)))
#endif
    ;

#endif
