/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "loads.h"
#include "parts.h"
#include "rows.h"
#include "said.h"
#include "balance/weigh.h"
#include "load_cases/kinds.h"
#include "pressure/given.h"
#include "report/difference.h"

/* The checks in full: the table, what falls short and by how much, the pushes, case by case. */

/* Where it tips nothing is in compression either: the tipping says it. */
static bool falls_by_itself(const lw_check *check) {
  bool follows = check->reason == LW_REASON_OUTSIDE_BASE && lw_check_about_of(check->kind)->of_pressure;
  return check->counts && check->holds == LW_FALLS_SHORT && !follows;
}

static void say_which(const lw_page *page, const lw_rows *rows, lw_row_says which, const char *beginning) {
  char list[640] = "";
  for (int i = 0; i < rows->count; i++) {
    const lw_check *check = &rows->row[i].check;
    char words[40], outcome[40];
    if (!falls_by_itself(check) || lw_row_says_of(&rows->row[i]) != which) continue;
    lw_check_words(check, words, sizeof words);
    lw_check_outcome(check, outcome, sizeof outcome);
    const char *by = strstr(outcome, " by ");
    size_t used = strlen(list);
    lw_print(list + used, sizeof list - used, "%s%s%s", used ? "; " : "", words, by ? by : "");
  }
  if (list[0]) lw_page_sayf(page, "  ", "%s: %s.", beginning, list);
}

static void say_unknown(const lw_page *page, const lw_rows *rows) {
  bool said[LW_REASON_COUNT] = {false};
  for (int i = 0; i < rows->count; i++) {
    const lw_check *check = &rows->row[i].check;
    bool bonded = check->reason == LW_REASON_RELIES_ON_BOND;
    if ((check->holds != LW_CANNOT_SHOW && !bonded) || said[check->reason]) continue;
    said[check->reason] = true;
    lw_page_sayf(page, "  ", "%s: %s.", bonded ? "Not checked" : "Cannot be shown",
                 lw_reason_sentence(check->reason));
  }
}

/* What handbooks ask of a base by name. It decides nothing here: the share in compression does. */
static void say_middle_third(const lw_page *page, const lw_rows *rows) {
  for (int i = 0; i < rows->count; i++) {
    const lw_check *check = &rows->row[i].check;
    const lw_contact *c = &rows->row[i].situation->base.contact;
    if (check->kind != LW_CHECK_COMPRESSION || check->at != LW_AT_BASE || !c->inside) continue;
    const lw_apart apart = lw_metres_apart(page->units, fabs(c->eccentricity_m), c->width_m / 6.0, 3);
    lw_page_sayf(page, "  ",
                 "The resultant on the base, %s, is %s %s the middle; the middle third ends at %s: it is %s. "
                 "That decides nothing here.",
                 lw_situation_short(rows->row[i].situation->name), apart.one.text,
                 c->eccentricity_m >= 0.0 ? "forward of" : "behind", apart.other.text,
                 lw_contact_of_third(c) <= 1.0 ? "inside" : "outside");
  }
}

static void say_doubts(const lw_page *page, const lw_result *result, const lw_rows *rows) {
  for (int i = 0; i < rows->count; i++) {
    const lw_check *check = &rows->row[i].check;
    lw_doubt doubt = lw_check_doubt(&result->wall, check);
    char words[40], needs[24];
    if (doubt == LW_DOUBT_NONE) continue;
    lw_check_words(check, words, sizeof words);
    lw_page_number(check->needs, needs, sizeof needs);
    lw_page_sayf(page, "  ", "Of the %s %s is asked, as %s.", words, needs, lw_doubt_words(doubt));
  }
}

/* False: nothing pushes. */
static bool worst_of(const lw_situation *s, lw_check *worst) {
  bool any = false;
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    if (!check.counts || (!check.ratio.known && check.holds == LW_HOLDS)) continue;
    if (!any || lw_check_graver(&check, worst)) *worst = check;
    any = true;
  }
  return any;
}

static void say_situation(const lw_page *page, const lw_tables *tables, const lw_situation *s) {
  char why[LW_SITUATION_WHY_MAX] = "", words[40] = "nothing pushes", outcome[40] = "holds", numbers[64] = "",
       needs[24], has[24], prefix[40];
  lw_check worst;
  if (worst_of(s, &worst)) {
    lw_check_words(&worst, words, sizeof words);
    lw_check_outcome(&worst, outcome, sizeof outcome);
    lw_row_print_has(&worst, has, sizeof has);
    lw_page_number(worst.needs, needs, sizeof needs);
    if (worst.has.known) lw_print(numbers, sizeof numbers, " (has %s, needs %s)", has, needs);
  }
  /* Why the wall as built decides needs no saying. */
  bool wet = s->name == LW_SITUATION_SOAKED || s->name == LW_SITUATION_OUTLET_BLOCKED;
  bool plain = s->decides && s->kind == LW_USUAL && !wet;
  if (!plain) lw_situation_why_words(s->why, tables, page->units, why, sizeof why);
  lw_print(prefix, sizeof prefix, "  %-16s", lw_situation_short(s->name));
  lw_page_sayf(page, prefix, "%s: %s %s%s%s%s", s->decides ? "decides" : "does not decide", words, outcome,
               numbers, plain ? "" : "; ", why);
}

/* "by Rankine": a routine's title up to where its thrust acts. */
static void method_words(const lw_pressure_routine *routine, char *out, size_t size) {
  bool own = strncmp(routine->title, "at rest", 7) == 0 || strncmp(routine->title, "by ", 3) == 0;
  lw_print(out, size, "%s%.*s", own ? "" : "by ", (int)strcspn(routine->title, ","), routine->title);
}

/* The push that all the rest follows from, with the recheck beside it. */
static void say_push(const lw_page *page, const lw_situation *s) {
  const lw_free_body *body = &s->base;
  char wedge[320], loads[96] = "";
  bool given = body->formula == lw_given_routine();
  lw_print(wedge, sizeof wedge, "%s",
           given ? "the coefficient is given as a number, and no wedge is set beside it"
                 : "at rest there is no wedge to set beside it");
  if (body->status != LW_OK) return;
  if (lw_free_body_has_loads(body))
    lw_print(loads, sizeof loads, ", and a level %s of loads at a distance (%s)",
             lw_amount_again(page->units, LW_KIND_LINE_LOAD, body->elastic.push_kn_per_m, 2).text,
             lw_load_theory_word(body->elastic_by));
  if (body->wedge_known) {
    char difference[24];
    const char *why = lw_difference_words(body->difference);
    double less = body->wedge.thrust_kn_per_m - body->by_formula_kn_per_m;
    lw_number_print(difference, sizeof difference, less, 2);
    bool differ = strcmp(difference, "0.00") != 0;
    lw_print(wedge, sizeof wedge, "%s by trial wedges, difference %s%s%s%s",
             lw_amount_again(page->units, LW_KIND_LINE_LOAD, body->wedge.thrust_kn_per_m, 2).text,
             lw_amount_again(page->units, LW_KIND_LINE_LOAD, differ ? less : 0.0, 2).text,
             differ && why[0] ? "; they differ by " : "", differ ? why : "",
             differ ? "; the larger is used" : "");
  }
  char by[64];
  method_words(body->formula, by, sizeof by);
  lw_page_sayf(page, "  ", "Push of the soil, %s: %s %s%s; %s.", lw_situation_short(s->name),
               lw_amount_of(page->units, LW_KIND_LINE_LOAD, body->formula_kn_per_m, 2).text, by, loads,
               wedge);
}

/* What water, rain or an earthquake is in it, or comes beside it. */
static void say_besides(const lw_page *page, const lw_situation *s) {
  const lw_free_body *body = &s->base;
  if (body->status != LW_OK) return;
  if (s->seeping)
    lw_page_sayf(page, "  ", "Rain seeping to its way out adds %s to it.",
                 lw_amount_of(page->units, LW_KIND_LINE_LOAD, body->rain_kn_per_m, 2).text);
  else if (s->name == LW_SITUATION_SOAKED || s->name == LW_SITUATION_OUTLET_BLOCKED)
    lw_page_sayf(page, "  ", "The water itself pushes another %s then, standing %s below the top.",
                 lw_amount_of(page->units, LW_KIND_LINE_LOAD, body->thrust.water_kn_per_m, 2).text,
                 lw_millimetres(page->units, s->water_depth_m).text);
  if (s->name == LW_SITUATION_EARTHQUAKE)
    lw_page_sayf(page, "  ", "Of it the earthquake adds %s, %s above the foot of its plane.",
                 lw_amount_of(page->units, LW_KIND_LINE_LOAD, body->thrust.seismic_kn_per_m, 2).text,
                 lw_metres(page->units, body->thrust.seismic_height_m, 2).text);
}

static void say_pushes(const lw_page *page, const lw_result *result) {
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    bool wet = s->name == LW_SITUATION_SOAKED || s->name == LW_SITUATION_OUTLET_BLOCKED;
    if (s->name != LW_SITUATION_DRAINED && !wet && s->name != LW_SITUATION_EARTHQUAKE) continue;
    say_push(page, s);
    say_besides(page, s);
  }
}

static void situations(const lw_page *page, const lw_result *result) {
  lw_page_heading(page, "Case by case, the nearest to its limit in each");
  for (int i = 0; i < result->situations.count; i++)
    say_situation(page, result->tables, &result->situations.situation[i]);
}

void lw_text_checks(const lw_page *page, const lw_result *result) {
  lw_rows rows;
  lw_rows_collect(result, &rows);
  lw_page_blank(page);
  lw_rows_put_head(page, "Checks, each at its worst", &rows);
  for (int i = 0; i < rows.count; i++) lw_row_put(page, &rows, i);
  say_which(page, &rows, LW_ROW_WOULD_MOVE, "These would move");
  say_which(page, &rows, LW_ROW_MAY_MOVE, "These may move, by cautious values and not by likely ones");
  say_which(page, &rows, LW_ROW_BY_DESIGN, "These do not stand by the design values, which hold the margin");
  say_which(page, &rows, LW_ROW_LESS_MARGIN, "These have less margin than asked");
  say_unknown(page, &rows);
  lw_rows_put_unshown(page, result, &rows);
  say_doubts(page, result, &rows);
  say_middle_third(page, &rows);
  lw_rows_put_legend(page, &rows);
  say_pushes(page, result);
  lw_text_influence(page, result);
  situations(page, result);
}
