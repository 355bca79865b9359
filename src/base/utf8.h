/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_UTF8_H
#define LOWWALL_BASE_UTF8_H

#include <stdbool.h>
#include <stddef.h>

/* Bytes of the UTF-8 character that begins here, with this many bytes left; 0 if it is none. Overlong forms
 * and surrogates are none. */
size_t lw_utf8_length(const unsigned char *at, size_t left);
bool lw_is_utf8(const char *text, size_t length);

/* Make a text fit to be shown, in place, never longer: the end of a line is a blank, as is a blank at which
 * no line may end; what a terminal takes for a command, what is no character, or no UTF-8, is '?'; what turns
 * the direction of writing around, also of the words behind it, goes. The controls of ASCII are left to the
 * other: they may show where a value went wrong. */
void lw_utf8_tame(char *text);

void lw_utf8_tame_ascii(char *text, char instead);

/* Only from blank to tilde: nothing to be tamed. */
bool lw_utf8_is_plain(const char *text, size_t length);

#endif
