/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_REPLACED_H
#define LOWWALL_TABLES_REPLACED_H

#include <lowwall/base.h>

/* Append "limits.csv (1 row changed, hash 1f00c0de)" to a list. A row that differs counts once, as does one
 * that was added or taken out. */
void lw_replaced_note(const char *name, const lw_text *file, const lw_text *built_in, char *note,
                      size_t size);

#endif
