/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "value.h"

double lw_ordering_value(const lw_tables *tables, const char *slug, double otherwise) {
  const lw_ordering_row *row = lw_tables_ordering(tables, slug);
  return row != NULL ? row->value : otherwise;
}
