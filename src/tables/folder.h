/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_FOLDER_H
#define LOWWALL_TABLES_FOLDER_H

#include <lowwall/tables.h>

/* A folder of tables that stand in for the built-in ones: all that the library reads from files. */

/** Add the bytes of a folder's table.
 *  out   found   false: the folder has none of that name, and nothing is added */
lw_status lw_folder_read(const char *directory, const char *name, lw_text *text, bool *found,
                         lw_error *error);
/** Whether it is one, and holds tables only. */
lw_status lw_folder_check(const char *directory, lw_error *error);

#endif
