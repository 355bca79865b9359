/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "asking.h"

#include <math.h>
#include <string.h>

#include "base/amount.h"
#include "load_cases/least.h"
#include "verdict/verdict.h"
#include "trial.h"

/* What a favourable answer to each question would be, as a sheet has it. Good ordinary values, not the
 * best there are: they only rank what is worth finding out. */
typedef struct lw_favourable {
  const char *item, *value;
} lw_favourable;

static const lw_favourable favourable[] = {
    {"vehicle access", "no"},
    {"water held behind", "no"},
    {"works", "new"},
    {"drain outlets", "2"},
    {"wall joints", "open"},
    {"ground drains", "yes"},
    {"stone width", "300 mm"},
    {"stone filter", "cloth"},
    {"site behind", "bed"},
    {"site back", "wall"},
    {"bed use", "planted"},
    {"ground slope", "0 deg"},
    {"front slope", "0 deg"},
    {"level difference", "0 m"},
    {"fence height", "0 m"},
    {"boundary distance", "50 m"},
    {"building distance", "50 m"},
    {"other wall distance", "50 m"},
    {"public way distance", "50 m"},
    {"service distance", "50 m"},
    {"waterbody distance", "500 m"},
    {"pool barrier distance", "50 m"},
    {"mapped land", "no"},
    {"reactive soil", "no"},
    {"heritage", "no"},
    {"strong earthquakes", "no"},
    {"shaken ground", "no"},
    {"water sent next door", "no"},
    {"rain water to", "own ground"},
    {"easement", "none"},
    {"protected trees", "no"},
    {"flood land", "no"},
    {"bushfire land", "no"},
    {"coast land", "no"},
    {"neighbour consent", "yes"},
    {"sight lines", "no"},
    {"other works", "none"},
    {"site above", "nobody"},
    {"people on cap", "no"},
    {"cap fixing", "bonded"},
    {"soil 1 name", "clean sand"},
    {"footing soil name", "clean sand"},
    {"allowable bearing", "100 kPa"},
    {"base friction", "0.45"},
    {"setback", "20 mm"},
    {"block unit weight", "23 kN/m3"},
    {"wall unit weight", "24 kN/m3"},
    {"block height", "150 mm"},
    {"wall embedment", "200 mm"},
    {"soil below top", "50 mm"},
};

enum { FAVOURABLE = sizeof favourable / sizeof *favourable };

/* From the least grave on: 0, 3, 4, 5. */
static int grave(const lw_verdict *v) {
  return v->exit_status;
}

static int how_it_stands(lw_holds stands) {
  return stands == LW_HOLDS ? 2 : stands == LW_FALLS_SHORT ? 1 : 0;
}

/* A wall without a ratio to print has none to gain: its place is the end of the scale. */
static double ratio_of(const lw_result *result) {
  lw_number ratio = lw_trial_ratio(result);
  if (ratio.known) return fmin(ratio.value, 9.0);
  return result->verdict.stands == LW_HOLDS ? 9.0 : 0.0;
}

static double least_of(const lw_result *result) {
  lw_number least = lw_situations_least(&result->situations).has;
  return least.known ? fmin(least.value, 9.0) : 0.0;
}

static int calling(const lw_verdict *v, lw_who who) {
  int count = 0;
  for (int i = 0; i < v->reasons.count; i++) {
    count += v->reasons.reason[i].answer == LW_ANSWER_WHO && v->reasons.reason[i].who >= who ? 1 : 0;
  }
  return count;
}

static lw_asking_gain gain_of(const lw_result *now, const lw_result *then) {
  const lw_verdict *a = &now->verdict, *b = &then->verdict;
  return (lw_asking_gain){
      .exit = grave(a) - grave(b),
      .stands = how_it_stands(b->stands) - how_it_stands(a->stands),
      .ratio = ratio_of(then) - ratio_of(now),
      .least = then->verdict.stands == LW_HOLDS ? 0.0 : least_of(then) - least_of(now),
      .reasons = a->who == LW_WHO_BUILDER ? 0 : calling(a, a->who) - calling(b, a->who),
  };
}

static const double RATIO_WORTH_SAYING = 0.01;

static lw_helps helps_by(const lw_asking_gain *g) {
  if (g->exit > 0 || g->stands > 0) return LW_HELPS_VERDICT;
  bool margin = g->ratio > RATIO_WORTH_SAYING || g->least > RATIO_WORTH_SAYING;
  return margin ? LW_HELPS_MARGIN : LW_HELPS_REASONS;
}

/* Nothing got worse and something got better. The answer that was taken anyway makes one question less: that
 * counts where it changes who is asked. */
static bool is_gain(const lw_asking_gain *g, bool as_taken) {
  lw_helps helps = helps_by(g);
  if (g->exit < 0 || g->stands < 0) return false;
  if (helps == LW_HELPS_VERDICT) return true;
  if (g->ratio < -RATIO_WORTH_SAYING) return false;
  return helps == LW_HELPS_MARGIN || (g->reasons > 0 && !as_taken);
}

static bool better(const lw_asking_gain *a, const lw_asking_gain *b) {
  if (a->exit != b->exit) return a->exit > b->exit;
  if (a->stands != b->stands) return a->stands > b->stands;
  if (fabs(a->ratio - b->ratio) > RATIO_WORTH_SAYING) return a->ratio > b->ratio;
  if (fabs(a->least - b->least) > RATIO_WORTH_SAYING) return a->least > b->least;
  return a->reasons > b->reasons;
}

static const lw_item *item_of(const lw_favourable *f, int *number) {
  return lw_item_find(f->item, strlen(f->item), number);
}

static void tell_quantity(const lw_item *item, const lw_quantity *q, lw_units units, char *out, size_t size) {
  if (lw_units_differ(units, q->kind)) {
    lw_print(out, size, "%s", lw_value_of(units, q->kind, q->si).text);
    return;
  }
  const lw_unit *unit = lw_unit_find(item->kind, item->unit, strlen(item->unit));
  char number[32];
  lw_print(number, sizeof number, "%.6g", unit ? q->si / unit->to_si : q->si);
  lw_print(out, size, "%s%s%s", number, item->unit[0] ? " " : "", item->unit);
}

/* What was taken in place of the answer; false when it was given, or plays no part in this wall. */
static bool assumed_value(const lw_item *item, int number, lw_result *result, char *out, size_t size) {
  lw_case *c = &result->given;
  if (item->type == LW_ITEM_CHOICE) {
    const lw_choice *choice = lw_item_choice(item, number, c);
    lw_item_word(item, choice->value, out, size);
    return choice->origin == LW_ASSUMED;
  }
  if (item->type == LW_ITEM_QUANTITY) {
    const lw_quantity *q = lw_item_quantity(item, number, c);
    tell_quantity(item, q, result->units, out, size);
    return q->origin == LW_ASSUMED;
  }
  /* A soil that nobody named is the assumed one, if nobody gave its angle either. */
  const lw_case_soil *soil = strncmp(item->name, "footing", 7) == 0 ? &c->ground.footing : &c->ground.soil[0];
  lw_print(out, size, "friction angle %.0f deg", soil->friction.si * LW_DEG_PER_RAD);
  return lw_item_words(item, number, c)->origin != LW_GIVEN && soil->friction.origin == LW_ASSUMED;
}

static bool answer(const lw_favourable *f, const lw_result *result, lw_result *scratch) {
  char argument[96];
  lw_case c = result->given;
  lw_faults faults = {.count = 0};
  lw_print(argument, sizeof argument, "%s=%s", f->item, f->value);
  if (lw_sheet_override(argument, 1, &c, &faults) != LW_OK) return false;
  if (lw_run(&c, result->tables, LW_DETAIL_VERDICT, scratch, NULL) != LW_OK) return false;
  /* The gain is counted by all reasons who must see the wall, not the headline's alone. */
  lw_verdict_reach(scratch, LW_DETAIL_EVERYTHING);
  return true;
}

/* As the assumed one is told. */
static void favourable_value(const lw_favourable *f, const lw_item *item, int number, lw_result *then,
                             char *out, size_t size) {
  if (item->type == LW_ITEM_QUANTITY)
    tell_quantity(item, lw_item_quantity(item, number, &then->given), then->units, out, size);
  else
    lw_print(out, size, "%s", f->value);
}

static void note(const lw_item *item, int number, const lw_result *then, lw_helps helps, lw_asking *asking) {
  lw_item_print_name(item, number, asking->item, sizeof asking->item);
  lw_print(asking->question, sizeof asking->question, "%s", item->question);
  asking->helps = helps;
  asking->stands_then = then->verdict.stands;
  asking->who_then = then->verdict.who;
  asking->ratio_then = lw_trial_ratio(then);
  asking->exit_then = then->verdict.exit_status;
}

/* Insert by gain; of equal gains the earlier question first. The last one falls off a full list. */
static void insert(lw_result *result, lw_asking_gain *gains, const lw_asking *asking,
                   const lw_asking_gain *gain) {
  int at = result->asking_count;
  while (at > 0 && better(gain, &gains[at - 1])) at--;
  if (at >= LW_ASKING_MAX) return;
  int last = result->asking_count < LW_ASKING_MAX ? result->asking_count++ : LW_ASKING_MAX - 1;
  for (int i = last; i > at; i--) {
    result->asking[i] = result->asking[i - 1];
    gains[i] = gains[i - 1];
  }
  result->asking[at] = *asking;
  gains[at] = *gain;
}

void lw_asking_begin(lw_asking_search *search, lw_result *result) {
  result->asking_count = 0;
  search->at = 0;
}

bool lw_asking_next(lw_asking_search *search, lw_result *result, lw_result *scratch, bool *tried) {
  *tried = false;
  if (search->at >= FAVOURABLE) return false;
  const lw_favourable *f = &favourable[search->at++];
  int number = 0;
  lw_asking asking = {0};
  const lw_item *item = item_of(f, &number);
  bool asked = item && item->question[0] != '\0' &&
               assumed_value(item, number, result, asking.assumed, sizeof asking.assumed);
  if (!asked) return true;
  *tried = true;
  if (!answer(f, result, scratch)) return true;
  lw_asking_gain gain = gain_of(result, scratch);
  favourable_value(f, item, number, scratch, asking.favourable, sizeof asking.favourable);
  if (!is_gain(&gain, strcmp(asking.assumed, asking.favourable) == 0)) return true;
  note(item, number, scratch, helps_by(&gain), &asking);
  insert(result, search->gain, &asking, &gain);
  return true;
}
