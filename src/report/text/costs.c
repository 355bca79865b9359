/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "remedies/costs.h"
#include "parts.h"

/* The two looks, and what each caution costs. */

void lw_text_looks(const lw_page *page, const lw_result *result) {
  char words[200], line[240];
  if (result->verdict.grade == LW_GRADE_HOLDS) return;
  if (lw_looks_words(&result->looks, words, sizeof words)[0] == '\0') return;
  lw_print(line, sizeof line, "W%s.", words + 1);
  lw_page_say(page, "  ", line);
}

/* "1.46 and needs 1.50 (sliding on its base, as built)" */
static void print_check(lw_number has, lw_number ratio, const lw_check *check, lw_situation_name situation,
                        char *out, size_t size) {
  char now[24], words[48], needs[40] = "";
  lw_check_words(check, words, sizeof words);
  lw_page_number(has, now, sizeof now);
  if (ratio.known && ratio.value > 0.0)
    lw_print(needs, sizeof needs, " and needs %.2f", has.value / ratio.value);
  lw_print(out, size, "%s%s (%s, %s)", now, needs, words, lw_situation_short(situation));
}

/* Of a wall that moves by low values, in times what just holds it, as the sentence above has it; and where
 * what governs then cannot be shown. */
static bool in_times(const lw_result *result, const lw_cost *cost) {
  return (lw_costs_in_times(result) || !cost->has.known) && cost->least.known;
}

static void then_words(const lw_result *result, const lw_cost *cost, char *out, size_t size) {
  const lw_check check = {.kind = cost->kind, .at = cost->at, .joint = cost->joint};
  lw_number now = result->looks.cautious.has;
  char had[40] = "";
  if (now.known && !result->looks.bare) lw_print(had, sizeof had, ", in place of %.2f", now.value);
  if (in_times(result, cost))
    lw_print(out, size, "%.2f times what just holds it%s", cost->least.value, had);
  else
    print_check(cost->has, cost->ratio, &check, cost->situation, out, size);
}

/* "soil 1 friction angle" as it is said: "the friction angle of soil 1". */
static void print_name(const char *item, char *out, size_t size) {
  static const struct {
    const char *item, *said;
  } SAID[] = {{"wall friction", "friction between soil and wall"},
              {"base friction", "friction under the wall"},
              {"allowable bearing", "allowable bearing of the ground"}};
  static const char *const OWNER[] = {"soil ", "load ", "footing soil "};
  for (size_t i = 0; i < sizeof SAID / sizeof *SAID; i++)
    if (strcmp(item, SAID[i].item) == 0) item = SAID[i].said;
  for (size_t i = 0; i < sizeof OWNER / sizeof *OWNER; i++) {
    size_t owner = strlen(OWNER[i]);
    if (strncmp(item, OWNER[i], owner) != 0) continue;
    owner += strspn(item + owner, "0123456789 ");
    lw_print(out, size, "The %s of %s%.*s", item + owner, strncmp(item, "footing", 7) ? "" : "the ",
             (int)owner - 1, item);
    return;
  }
  lw_print(out, size, "The %s", item);
}

/* What would be otherwise: a choice is told by its question. */
static void print_value(const lw_cost *cost, bool values, char *out, size_t size) {
  char name[80];
  print_name(cost->item, name, sizeof name);
  if (strcmp(cost->item, "reactive soil") == 0)
    lw_print(out, size, "Ground that does not crack in dry seasons");
  else if (values)
    lw_print(out, size, "%s, %s in place of %s", name, cost->likely, cost->cautious);
  else
    lw_print(out, size, "%s, as it usually is", name);
}

void lw_text_cost(const lw_page *page, const lw_result *result, const lw_cost *cost, bool values) {
  char then[160], value[200];
  then_words(result, cost, then, sizeof then);
  print_value(cost, values, value, sizeof value);
  lw_page_sayf(page, "  - ", "%s: %s%s.%s%s", value, then, cost->worse ? ", which is less" : "",
               cost->question[0] ? " " : "", cost->question);
}

bool lw_text_cost_has(const lw_result *result, const lw_cost *cost) {
  return in_times(result, cost) || (!lw_costs_in_times(result) && cost->has.known);
}

/* Of a wall that has less margin what governs now; one that moves has the sentence of both looks. */
static void say_now(const lw_page *page, const lw_result *result) {
  char now[160];
  lw_check check;
  if (lw_costs_in_times(result) || !lw_verdict_governing(result, &check) || !check.has.known) return;
  const lw_situation *s = &result->situations.situation[result->verdict.governing_situation];
  print_check(check.has, check.ratio, &check, s->name, now, sizeof now);
  lw_page_sayf(page, "  ", "Now it has %s.", now);
}

/* A wall that holds by its low values asks nobody what they cost. */
void lw_text_costs(const lw_page *page, const lw_result *result) {
  if (result->cost_count == 0 || result->verdict.grade == LW_GRADE_HOLDS) return;
  lw_page_heading(page, "What each caution costs: one usual value alone in place of the low one");
  lw_text_looks(page, result);
  say_now(page, result);
  for (int i = 0; i < result->cost_count; i++)
    if (lw_text_cost_has(result, &result->cost[i])) lw_text_cost(page, result, &result->cost[i], true);
  lw_page_say(page, "  ", LW_COSTS_RARE ". They decide all the same: nobody knows which of them is there.");
}
