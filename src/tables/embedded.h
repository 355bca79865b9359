/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TABLES_EMBEDDED_H
#define LOWWALL_TABLES_EMBEDDED_H

#include <stddef.h>

/* A CSV file as built into the library. */
typedef struct lw_embedded {
  const char *name;           /* "soils" */
  const unsigned char *bytes; /* not NUL-terminated */
  size_t length;
} lw_embedded;

/* A key of docs/sources.md as built into the library. */
typedef struct lw_embedded_source {
  const char *key, *title;
} lw_embedded_source;

/* Ends with a NULL key. */
extern const lw_embedded_source lw_embedded_sources[];

extern const lw_embedded lw_embedded_tables[];
extern const size_t lw_embedded_table_count;

#endif
