/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_UTF8_H
#define LOWWALL_BASE_UTF8_H

#include <stdbool.h>
#include <stddef.h>

/* Bytes of the UTF-8 character that begins here, with this many bytes left; 0 if it is none. Overlong forms
 * and surrogates are none. */
size_t lw_utf8_length(const unsigned char *at, size_t left);
bool lw_is_utf8(const char *text, size_t length);

#endif
