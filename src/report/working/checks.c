/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "working.h"
#include "report/text/said.h"
#include "run/again.h"

/* The checks as they are held against what is asked, and from the sums of a contact to its pressures. */

static void contact_heading(void *context, const char *title) {
  lw_page_say(context, "  ", title);
}

static void contact_step(void *context, const lw_step *step) {
  lw_working_say(context, step);
}

static void contact_line(void *context, const lw_step *step) {
  lw_working_brief(context, "  ", step, "");
}

void lw_working_contact(const lw_page *page, const lw_result *result, const lw_situation *s,
                        const lw_free_body *body, lw_shown shown) {
  lw_page to = *page;
  lw_working working = {.context = &to,
                        .heading = contact_heading,
                        .step = contact_step,
                        .line = contact_line,
                        .units = page->units};
  if (body->contact.area_m2 < body->contact.width_m)
    lw_page_sayf(page, "  ", "The blocks taper: %.4f of the run bears in front, %.4f at the rear.",
                 body->contact.taper.front, body->contact.taper.rear);
  lw_again_contact(result, s, shown.at, shown.joint, &working);
  if (!body->contact.inside)
    lw_page_sayf(page, "  ", "The resultant falls outside the contact of %s: it stands on nothing.",
                 lw_tell_amount(page->units, "m", body->contact.width_m, 3).text);
}

/* As many decimals as leave a blank before it in its column. */
static void number(lw_number n, int decimals, int columns, char *out, size_t size) {
  lw_print(out, size, "-");
  for (; n.known && decimals >= 0; decimals--) {
    lw_number_print(out, size, n.value, decimals);
    if ((int)strlen(out) < columns) return;
  }
  /* A circle kilometres wide drives more than a column holds. */
  enum { EXPONENT = 7 };
  if (n.known && columns >= EXPONENT) lw_print(out, size, "%.*e", columns - EXPONENT, n.value);
}

static lw_number told(const lw_page *page, const lw_check *c, lw_number n) {
  return (lw_number){lw_tell_in(page->units, c->unit, n.value), n.known};
}

/* The table has no room for the whole: "short by 12 %". */
static const char FALLS[] = "falls ";

static void check_line(const lw_page *page, const lw_wall *wall, const lw_check *c) {
  bool us = page->units == LW_UNITS_US;
  lw_tell_name unit = lw_tell_unit(page->units, c->unit);
  char words[40], outcome[40], demand[24], resistance[24], has[24], needs[24];
  lw_check_words(c, words, sizeof words);
  lw_check_outcome(c, outcome, sizeof outcome);
  number(told(page, c, c->demand), 3, us ? 9 : 8, demand, sizeof demand);
  number(told(page, c, c->resistance), 3, us ? 9 : 8, resistance, sizeof resistance);
  number(c->has, 3, us ? 6 : 7, has, sizeof has);
  number(c->needs, 2, 5, needs, sizeof needs);
  bool bad = c->counts && c->holds != LW_HOLDS, falls = strncmp(outcome, FALLS, strlen(FALLS)) == 0;
  lw_page_rowf(page, bad ? LW_TONE_BAD : LW_TONE_PLAIN,
               us ? "|%-27s|%9s|%9s |%-8s|%6s|%5s |%s" : "|%-27s|%8s|%8s |%-6s|%7s|%5s |%s", words,
               resistance, demand, unit.text, has, needs, falls ? outcome + strlen(FALLS) : outcome);
  if (c->reason != LW_REASON_NONE) lw_page_sayf(page, "      ", "%s", lw_reason_sentence(c->reason));
  lw_doubt doubt = lw_check_doubt(wall, c);
  if (doubt != LW_DOUBT_NONE) lw_page_sayf(page, "      ", "%s: %s", c->by->quantity, lw_doubt_words(doubt));
}

/* What is needed may follow several sets of one code, a check each. */
static void say_sets(const lw_page *page, const lw_result *result, const lw_situation *s) {
  const lw_factor_row *by = NULL;
  char sets[240] = "";
  int count = 0;
  for (int i = 0; i < s->check_count; i++) {
    const lw_factor_row *row = lw_situation_check(s, i).by;
    if (!row || (by && strcmp(row->factor_set, by->factor_set) == 0)) continue;
    size_t used = strlen(sets);
    by = row;
    if (strstr(sets, row->factor_set) && count > 1) continue;
    lw_print(sets + used, sizeof sets - used, "%s%s", used ? ", " : "", row->factor_set);
    count++;
  }
  if (count == 1)
    lw_page_sayf(page, "  ", "What is needed follows the format %s: %s.", by->factor_set, by->title);
  else if (count > 1)
    lw_page_sayf(page, "  ", "What is needed follows the format %s, each check by the worst of its sets: %s.",
                 result->wall.factor_set, sets);
}

void lw_working_checks(const lw_page *page, const lw_result *result, const lw_situation *s) {
  lw_page_blank(page);
  lw_page_part(page, "Checks: has = holds / pushes, and must reach needs");
  bool us = page->units == LW_UNITS_US;
  lw_page_headf(page, us ? "|%-27s|%9s|%9s |%-8s|%5s |%5s |%s" : "|%-27s|%8s|%8s |%-6s|%6s |%5s |%s", "",
                "holds", "pushes", "", "has", "needs", "");
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    check_line(page, &result->wall, &check);
  }
  say_sets(page, result, s);
}

/* Where the storm's water comes from. */
void lw_working_storm(const lw_page *page, const lw_storm *s) {
  lw_page_sayf(page, "  dh  = ", "R/n = %.4f / %.4f = %s of water", lw_tell_in(page->units, "m", s->rain_m),
               s->porosity, lw_tell_amount(page->units, "m", s->rise_m, 4).text);
  lw_page_sayf(page, "  ", "It rises from %s below the top%s.",
               lw_tell_amount(page->units, "m", s->from_depth_m, 4).text,
               s->spills ? ", as far as the soil or the overflow lets it" : "");
}
