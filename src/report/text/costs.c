/* SPDX-License-Identifier: GPL-3.0-or-later */
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

/* Of a wall that moves by low values, in times what just holds it, as the sentence above has it; of another
 * the check that governs then. */
void lw_text_cost(const lw_page *page, const lw_result *result, const lw_cost *cost) {
  char then[160];
  const lw_check check = {.kind = cost->kind, .at = cost->at, .joint = cost->joint};
  if (lw_costs_in_times(result))
    lw_print(then, sizeof then, "%.2f times what just holds it", cost->least.value);
  else
    print_check(cost->has, cost->ratio, &check, cost->situation, then, sizeof then);
  lw_page_sayf(page, "  - ", "%s %s in place of %s: then %s%s.%s%s", cost->item, cost->likely, cost->cautious,
               then, cost->worse ? ", which is less" : "", cost->question[0] ? " " : "", cost->question);
}

bool lw_text_cost_has(const lw_result *result, const lw_cost *cost) {
  return lw_costs_in_times(result) ? cost->least.known : cost->has.known;
}

/* Of a wall that has less margin what governs now; one that moves has the sentence of both looks. */
static void say_now(const lw_page *page, const lw_result *result) {
  char now[160];
  lw_check check;
  if (lw_costs_in_times(result) || !lw_verdict_governing(result, &check)) return;
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
    if (lw_text_cost_has(result, &result->cost[i])) lw_text_cost(page, result, &result->cost[i]);
  lw_page_say(page, "  ", LW_COSTS_RARE ". They decide all the same: nobody knows which of them is there.");
}
