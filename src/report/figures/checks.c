/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "figures.h"

#include <string.h>

/* Units as they end a key. */
static const struct {
  const char *unit, *key;
} key_units[] = {{"kN/m", "kn_per_m"}, {"kN m/m", "knm_per_m"}, {"kPa", "kpa"}, {"m", "m"}, {"deg", "deg"},
               {"kN/m3", "kn_per_m3"}};

const char *lw_figures_key_unit(const char *unit) {
  for (size_t i = 0; i < sizeof key_units / sizeof *key_units; i++) {
    if (strcmp(key_units[i].unit, unit) == 0) return key_units[i].key;
  }
  return "number";
}

void lw_figures_of_check(const lw_figures *figures, const lw_check *check) {
  char at[24], part[48], demand[32], resistance[32];
  lw_check_print_at(check, at, sizeof at);
  lw_print(part, sizeof part, "%s.%s", at, lw_check_slug(check->kind));
  lw_print(demand, sizeof demand, "demand_%s", lw_figures_key_unit(check->unit));
  lw_print(resistance, sizeof resistance, "resistance_%s", lw_figures_key_unit(check->unit));
  lw_figures b = lw_figures_below(figures, part);
  const char *source = check->by ? check->by->from.source : "";
  const struct {
    lw_figure_word word;
    lw_number value;
  } all[] = {{{demand, "demand", check->unit, ""}, check->demand},
             {{resistance, "resistance", check->unit, ""}, check->resistance},
             {{"has", "resistance over demand", "", ""}, check->has},
             {{"needs", "what is asked", "", source}, check->needs},
             {{"ratio", "has over needs", "", ""}, check->ratio}};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++) {
    lw_figures_put_number(&b, &all[i].word, all[i].value, check->reason);
  }
}

/* "remedy.second-outlet+lower-wall.lower-wall_m" */
static void of_remedy(const lw_figures *figures, const lw_remedy *remedy) {
  char part[64];
  lw_print(part, sizeof part, "remedy.%s", remedy->slug);
  lw_figures b = lw_figures_below(figures, part);
  for (int i = 0; i < remedy->part_count; i++) {
    const lw_remedy_part *p = &remedy->part[i];
    char key[64];
    lw_print(key, sizeof key, "%s_%s", p->slug, lw_figures_key_unit(p->unit));
    lw_figures_put(&b, &(lw_figure_word){key, "what it comes to", p->unit, ""}, p->value);
  }
  lw_figures_put_number(&b, &(lw_figure_word){"ratio", "has over needs of what governs then", "", ""},
                        remedy->ratio, LW_REASON_NONE);
}

void lw_figures_of_advice(const lw_figures *figures) {
  const lw_result *r = figures->result;
  for (int i = 0; i < r->remedy_count; i++) of_remedy(figures, &r->remedy[i]);
  for (int i = 0; i < r->asking_count; i++) {
    char part[32];
    lw_print(part, sizeof part, "asking-%d", i + 1);
    lw_figures b = lw_figures_below(figures, part);
    lw_figures_put_number(
        &b, &(lw_figure_word){"ratio_then", "has over needs were the answer favourable", "", ""},
        r->asking[i].ratio_then, LW_REASON_NONE);
  }
}
