/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_TITLES_H
#define LOWWALL_TABLES_TITLES_H

/** What docs/sources.md says that a key is, as it was when the library was built.
 *  in    key   without its locator   any
 *  gives NULL for what is no key there */
const char *lw_source_title(const char *key);

#endif
