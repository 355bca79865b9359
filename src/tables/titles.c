/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "titles.h"

#include <string.h>

#include "embedded.h"

const char *lw_source_title(const char *key) {
  for (const lw_embedded_source *s = lw_embedded_sources; s->key != NULL; s++)
    if (strcmp(s->key, key) == 0) return s->title;
  return NULL;
}
