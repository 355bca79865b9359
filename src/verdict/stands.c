/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <ctype.h>
#include <math.h>

#include "backfill.h"
#include "moves.h"
#include "parts.h"
#include "telling.h"

static const char HERE[] = "[LOWWALL verdict]";

static void refuse(lw_reaching *to, lw_origin origin, lw_reason reason, const char *text) {
  to->verdict->stands = LW_CANNOT_SHOW;
  lw_reasons_add(
      to,
      &(lw_because){
          .answer = LW_ANSWER_STANDS, .origin = origin, .slug = lw_reason_slug(reason), .source = HERE},
      text);
  lw_reasons_add(to,
                 &(lw_because){.answer = LW_ANSWER_WHO,
                               .who = LW_WHO_ENGINEER,
                               .origin = origin,
                               .slug = lw_reason_slug(reason),
                               .source = HERE},
                 text);
}

static void refuse_backfill(const lw_facts *f, lw_reaching *to) {
  char text[480];
  lw_backfill_tell(f, text, sizeof text);
  refuse(to, lw_backfill_left_out(f) ? LW_ASSUMED : LW_GIVEN, LW_REASON_REFUSED_BACKFILL, text);
}

/* Wind on a fence on the wall, beside what the wall holds by its own weight. */
static void refuse_fence(const lw_facts *f, lw_reaching *to) {
  const lw_quantity *fence = &f->c->fence.height;
  const lw_fence_wind *wind = &f->fence->on;
  char text[480], holds[80] = "";
  if (wind->wall_moment_knm_per_m.known)
    lw_print(holds, sizeof holds, ", where its own weight holds %s",
             lw_amount_again(f->units, LW_KIND_MOMENT, wind->wall_moment_knm_per_m.value, 2).text);
  lw_print(
      text, sizeof text,
      "A fence %s%s high%s loads the wall with %s of wind, %s about its toe%s: a fence on a dry wall is not "
      "checked further. Give it posts and footings of its own, %s behind or more.",
      fence->origin == LW_ASSUMED ? "(not known, so taken as there) " : "",
      lw_metres(f->units, fence->si, 2).text,
      f->c->fence.place.origin == LW_ASSUMED ? ", taken as on the wall," : "",
      lw_amount_of(f->units, LW_KIND_LINE_LOAD, wind->force_kn_per_m, 2).text,
      lw_moment(f->units, wind->toe_moment_knm_per_m, 2).text, holds,
      lw_metres(f->units, wind->keep_off_m, 2).text);
  refuse(to, fence->origin == LW_GIVEN ? f->c->fence.place.origin : fence->origin, LW_REASON_FENCE_ON_WALL,
         text);
}

static void refusals(const lw_facts *f, lw_reaching *to) {
  if (f->wall->site.backfill_refused) refuse_backfill(f, to);
  if (lw_facts_back_is(f, LW_BACK_BUILDING)) {
    refuse(
        to, f->c->site.back.origin, LW_REASON_BUILDING_BEHIND,
        "A building is to carry the soil, and a building is not a retaining wall: its wall was not built to "
        "be bent, soil against it keeps it damp, and termites come in behind it unseen. Build a fourth side "
        "that stands by itself, with a drained gap and air between it and the building: then a wall is at "
        "the back of the bed, and no building.");
  }
  if (f->fence->on.present && f->fence->on.on_wall) refuse_fence(f, to);
}

static void capital(char *text) {
  text[0] = (char)toupper((unsigned char)text[0]);
}

/* By likely values it need not. */
static void tell_short(const lw_check *check, const lw_situation *s, const lw_verdict *v, char *out,
                       size_t size) {
  const char *by = v->grade == LW_GRADE_MAY_MOVE && lw_check_would_move(check) ? "by cautious values " : "";
  char clause[LW_CLAUSE_MAX];
  lw_telling_check(check, s, clause, sizeof clause);
  capital(clause);
  lw_print(out, size, "%s: %s%s.", clause, by, lw_telling_meaning(check));
}

static void tell_holds(const lw_check *check, const lw_situation *s, char *out, size_t size) {
  char words[48], numbers[64] = "nothing pushes this way";
  lw_check_words(check, words, sizeof words);
  if (check->has.known && check->needs.known)
    lw_print(numbers, sizeof numbers, "it has %s and needs %s", lw_two_decimals(check->has.value).text,
             lw_two_decimals(check->needs.value).text);
  lw_print(out, size, "Every deciding check holds; the nearest to its limit is %s, %s: %s.", words,
           lw_situation_sentence(s->name), numbers);
}

static void tell_unknown(const lw_check *check, const lw_situation *s, char *out, size_t size) {
  char clause[LW_CLAUSE_MAX];
  lw_telling_check(check, s, clause, sizeof clause);
  capital(clause);
  lw_print(out, size, "%s.", clause);
}

static lw_check told(const lw_situations *situations, const lw_verdict *v) {
  return lw_situation_check(&situations->situation[v->told_situation], v->told_check);
}

/* The reason of the check that is told of, its sentence still to come. */
static lw_verdict_reason *by_governing(const lw_situations *situations, lw_reaching *to) {
  const lw_check check = told(situations, to->verdict);
  bool unknown = check.holds == LW_CANNOT_SHOW;
  return lw_reasons_new(
      to, &(lw_because){.answer = LW_ANSWER_STANDS,
                        .origin = LW_GIVEN,
                        .slug = unknown ? lw_reason_slug(check.reason) : lw_holds_slug(check.holds),
                        .source = check.by ? check.by->from.source : HERE});
}

void lw_verdict_tell_stands(const lw_situations *situations, const lw_verdict *v, lw_verdict_reason *reason) {
  const lw_situation *s = &situations->situation[v->told_situation];
  const lw_check check = told(situations, v);
  if (check.holds == LW_HOLDS)
    tell_holds(&check, s, reason->text, sizeof reason->text);
  else if (check.holds == LW_FALLS_SHORT)
    tell_short(&check, s, v, reason->text, sizeof reason->text);
  else
    tell_unknown(&check, s, reason->text, sizeof reason->text);
}

/* A trench that goes deeper than the base: the heights that laws speak of stay those of the finished wall. */
static void tell_trench(const lw_facts *facts, lw_reaching *to) {
  const lw_trench *t = facts->trench;
  char text[480], inside[80] = "";
  if (!t->thrust_times.known) return;
  if (t->undermines)
    lw_print(inside, sizeof inside, ", inside the line at %.4g degrees from its front edge",
             atan(lw_known_value(facts->tables, LW_THRESHOLD_TRENCH_LINE)) * LW_DEG_PER_RAD);
  lw_print(text, sizeof text,
           "The trench in front goes %s below the base%s. Were the ground down to its floor to be held as "
           "well, the soil would push %.1f times as hard and turn %.1f times as much: push grows with the "
           "square of the height, its moment with the cube.",
           lw_metres(facts->units, -t->floor_m, 2).text, inside, t->thrust_times.value,
           t->moment_times.value);
  lw_reasons_add(to,
                 &(lw_because){.answer = LW_ANSWER_STANDS,
                               .origin = facts->c->ground.trench_depth.origin,
                               .slug = "trench-below-base",
                               .source = "[LOWWALL trench]"},
                 text);
}

lw_verdict_reason *lw_verdict_stands(const lw_facts *facts, const lw_situations *situations,
                                     lw_reaching *to) {
  lw_verdict_reason *reason = NULL;
  lw_verdict *verdict = to->verdict;
  verdict->governed = situations->governed;
  verdict->governing_situation = situations->governing_situation;
  verdict->governing_check = situations->governing_check;
  verdict->stands = situations->stands;
  lw_verdict_choose_told(situations, verdict);
  int before = to->reasons->count;
  refusals(facts, to);
  if (verdict->governed) {
    reason = by_governing(situations, to);
  } else if (!facts->wall->section.known) {
    verdict->stands = LW_CANNOT_SHOW;
    lw_reasons_add(to,
                   &(lw_because){.answer = LW_ANSWER_STANDS,
                                 .origin = LW_GIVEN,
                                 .slug = lw_reason_slug(LW_REASON_NO_DEPTH),
                                 .source = HERE},
                   "The block depth or base width is not known, and there is no guess for it.");
  } else if (verdict->stands == LW_CANNOT_SHOW && to->reasons->count == before) {
    lw_reasons_add(to,
                   &(lw_because){.answer = LW_ANSWER_STANDS,
                                 .origin = LW_GIVEN,
                                 .slug = lw_reason_slug(LW_REASON_NO_REQUIREMENT),
                                 .source = HERE},
                   "The set of factors asks for nothing here.");
  }
  tell_trench(facts, to);
  return reason;
}
