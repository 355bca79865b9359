/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "limit_dates.h"

#include <string.h>

#include "base/canned.h"
#include "tables/known.h"

/* When the text of a limit is from, where it was seen and when. No clock is read: who holds the page
 * compares. */

void lw_limit_ask_again(const lw_tables *tables, const lw_limit_row *row, char month[LW_MONTH_BYTES]) {
  month[0] = '\0';
  if (row->read[0] == '\0') return;
  int year = 0;
  for (int i = 0; i < 4; i++) year = 10 * year + (row->read[i] - '0');
  year += (int)lw_known_value(tables, LW_THRESHOLD_ASK_AGAIN);
  lw_print(month, LW_MONTH_BYTES, "%d%s", year, row->read + 4);
}

static const char *status_words(const lw_limit_row *row) {
  static const struct {
    const char *status, *words;
  } each[] = {{"law", "seen in the law"},
              {"authority", "seen on the authority's page"},
              {"second-hand", "seen second-hand"},
              {"memory", "from memory"}};
  for (size_t i = 0; i < sizeof each / sizeof *each; i++)
    if (strcmp(row->status, each[i].status) == 0) return each[i].words;
  return "";
}

const char *lw_limit_print_words(const lw_limit_hit *hit, lw_units units, char *out, size_t size) {
  const lw_limit_row *row = hit->row;
  char told[sizeof row->conditions];
  bool exempt = !hit->past && row->trigger == LW_EXEMPT_BELOW,
       narrowed = hit->past && row->only_if[0] != '\0';
  bool said = (exempt || narrowed) && row->conditions[0] != '\0';
  lw_print(out, size, "%s%s",
           !said    ? ""
           : exempt ? ". Only if: "
                    : ". It says: ",
           said ? lw_canned_told(units, row->conditions, told, sizeof told) : "");
  return out;
}

void lw_limit_print_dates(const lw_tables *tables, const lw_limit_row *row, char *out, size_t size) {
  const char *status = status_words(row), *text = row->as_of;
  char again[LW_MONTH_BYTES];
  lw_limit_ask_again(tables, row, again);
  if (status[0] == '\0')
    lw_print(out, size, "%s", text);
  else if (strcmp(row->status, "memory") == 0)
    lw_print(out, size, "%s, %s: ask", text, status);
  else if (again[0] != '\0')
    lw_print(out, size, "%s, %s, read %s; ask again after %s", text, status, row->read, again);
  else
    lw_print(out, size, "%s, %s on a day not on file: ask again", text, status);
}
