/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_PRINT_H
#define LOWWALL_BASE_PRINT_H

#include <stdarg.h>
#include <stddef.h>

/* vsnprintf and strtod with `.` as the decimal mark whatever locale the host program has chosen. The
 * thread's locale is put aside for the call and put back; the process's locale is never touched. */
int lw_print_list(char *out, size_t size, const char *format, va_list arguments);
double lw_read_double(const char *string, char **end);

#endif
