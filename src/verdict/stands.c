/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/trench.h>

#include "parts.h"

static const char HERE[] = "[LOWWALL verdict]";

static void refuse(lw_verdict *v, lw_origin origin, lw_reason reason, const char *text) {
  v->stands = LW_CANNOT_SHOW;
  lw_reasons_add(
      v,
      &(lw_because){
          .answer = LW_ANSWER_STANDS, .origin = origin, .slug = lw_reason_slug(reason), .source = HERE},
      text);
  lw_reasons_add(v,
                 &(lw_because){.answer = LW_ANSWER_WHO,
                               .who = LW_WHO_ENGINEER,
                               .origin = origin,
                               .slug = lw_reason_slug(reason),
                               .source = HERE},
                 text);
}

/* The soil that is refused, and what its row says to do about it. */
static void refuse_backfill(const lw_facts *f, lw_verdict *v) {
  char text[480];
  for (int i = 0; i < f->wall->site.soil_count; i++) {
    const lw_words *name = &f->c->soil[i].name;
    const lw_soil_row *row = name->origin == LW_ABSENT ? NULL : lw_tables_soil(f->tables, name->text);
    if (!row || (row->use != LW_BACKFILL_REFUSED && row->use != LW_BACKFILL_WEIGHT_ONLY)) continue;
    lw_print(text, sizeof text, "The soil behind (%s) is refused as backfill. %s", row->name, row->note);
    refuse(v, name->origin, LW_REASON_REFUSED_BACKFILL, text);
    return;
  }
  refuse(v, LW_GIVEN, LW_REASON_REFUSED_BACKFILL,
         "The soil behind is refused as backfill: no friction angle may be given for it.");
}

static void refusals(const lw_facts *f, lw_verdict *v) {
  const lw_quantity *fence = &f->c->fence_height;
  if (f->wall->site.backfill_refused) refuse_backfill(f, v);
  if (lw_facts_back_is(f, LW_BACK_BUILDING)) {
    refuse(v, f->c->site_back.origin, LW_REASON_BUILDING_BEHIND,
           "A building is to carry the soil, and a building is not a retaining wall: leave a drained gap and "
           "build a "
           "fourth side.");
  }
  if (fence->origin != LW_ABSENT && fence->si > 0.0) {
    char text[240];
    lw_print(text, sizeof text,
             "A fence %s%.2f m high loads the wall with wind, and that is not checked here: give it posts "
             "and footings "
             "of its own, clear of the wall.",
             fence->origin == LW_ASSUMED ? "(not known, so taken as there) " : "", fence->si);
    refuse(v, fence->origin, LW_REASON_FENCE_ON_WALL, text);
  }
}

/* What a ratio below one means to people; the share in compression and an allowable pressure have margin
 * in them. */
static const char *meaning_of(const lw_check *check) {
  bool moves = check->has.value < 1.0 && !check->factored;
  switch (check->kind) {
  case LW_CHECK_SLIDING:
    if (moves) return "it would slide";
    break;
  case LW_CHECK_OVERTURNING:
  case LW_CHECK_TILTING:
    if (moves) return "it would tip";
    break;
  case LW_CHECK_SLIP:
    if (moves) return "wall and ground would slip together";
    break;
  case LW_CHECK_BEARING:
    if (moves) return "the ground is pressed harder than it may be";
    break;
  case LW_CHECK_COMPRESSION: break;
  }
  return "it stands on paper with less margin than asked";
}

static void tell_short(const lw_check *check, const lw_situation *s, char *out, size_t size) {
  char words[48];
  lw_check_words(check, words, sizeof words);
  if (!check->has.known || !check->ratio.known) {
    lw_print(out, size, "Falls short: %s, with %s: %s.", words, lw_situation_sentence(s->name),
             lw_reason_sentence(check->reason));
    return;
  }
  double percent = 100.0 * (1.0 - check->ratio.value);
  lw_print(out, size,
           percent < 1.0 ? "Falls short by %.1f %%: %s, %s, has %.2f and needs %.2f; %s."
                         : "Falls short by %.0f %%: %s, %s, has %.2f and needs %.2f; %s.",
           percent, words, lw_situation_sentence(s->name), check->has.value,
           check->needs.known ? check->needs.value : 1.0, meaning_of(check));
}

static void tell_holds(const lw_check *check, const lw_situation *s, char *out, size_t size) {
  char words[48], numbers[64] = "nothing pushes this way";
  lw_check_words(check, words, sizeof words);
  if (check->has.known && check->needs.known)
    lw_print(numbers, sizeof numbers, "it has %.2f and needs %.2f", check->has.value, check->needs.value);
  lw_print(out, size, "Every deciding check holds; the nearest to its limit is %s, %s: %s.", words,
           lw_situation_sentence(s->name), numbers);
}

static void tell_unknown(const lw_check *check, const lw_situation *s, char *out, size_t size) {
  char words[48];
  lw_check_words(check, words, sizeof words);
  lw_print(out, size, "It cannot be shown to stand (%s, %s): %s.", words, lw_situation_sentence(s->name),
           lw_reason_sentence(check->reason));
}

static void tell_governing(const lw_situations *situations, lw_verdict *v) {
  const lw_situation *s = &situations->situation[v->governing_situation];
  const lw_check *check = &s->check[v->governing_check];
  char text[480];
  const char *slug = lw_holds_slug(check->holds);
  if (check->holds == LW_HOLDS) {
    tell_holds(check, s, text, sizeof text);
  } else if (check->holds == LW_FALLS_SHORT) {
    tell_short(check, s, text, sizeof text);
  } else {
    tell_unknown(check, s, text, sizeof text);
    slug = lw_reason_slug(check->reason);
  }
  lw_reasons_add(v,
                 &(lw_because){.answer = LW_ANSWER_STANDS,
                               .origin = LW_GIVEN,
                               .slug = slug,
                               .source = check->by ? check->by->from.source : HERE},
                 text);
}

/* A trench that goes deeper than the base: the heights that laws speak of stay those of the finished wall. */
static void tell_trench(const lw_facts *facts, lw_verdict *v) {
  lw_trench t;
  char text[480];
  lw_trench_find(facts->wall, facts->tables, &t);
  if (!t.thrust_times.known) return;
  lw_print(
      text, sizeof text,
      "The trench in front goes %.2f m below the base%s. Were the ground down to its floor to be held as "
      "well, the soil would push %.1f times as hard and turn %.1f times as much: push grows with the "
      "square of the height, its moment with the cube.",
      -t.floor_m, t.undermines ? ", inside the line at 45 degrees from its front edge" : "",
      t.thrust_times.value, t.moment_times.value);
  lw_reasons_add(v,
                 &(lw_because){.answer = LW_ANSWER_STANDS,
                               .origin = facts->c->trench_depth.origin,
                               .slug = "trench-below-base",
                               .source = "[LOWWALL trench]"},
                 text);
}

void lw_verdict_stands(const lw_facts *facts, const lw_situations *situations, lw_verdict *verdict) {
  verdict->stands = lw_situations_stand(situations);
  verdict->governed =
      lw_situations_governing(situations, &verdict->governing_situation, &verdict->governing_check);
  int before = verdict->reason_count;
  refusals(facts, verdict);
  if (verdict->governed) {
    tell_governing(situations, verdict);
  } else if (!facts->wall->section.known) {
    verdict->stands = LW_CANNOT_SHOW;
    lw_reasons_add(
        verdict,
        &(lw_because){.answer = LW_ANSWER_STANDS,
                      .origin = LW_GIVEN,
                      .slug = lw_reason_slug(LW_REASON_NO_DEPTH),
                      .source = HERE},
        "It cannot be shown that it stands: the block depth or base width is not known, and there is no "
        "guess for it.");
  } else if (verdict->stands == LW_CANNOT_SHOW && verdict->reason_count == before) {
    lw_reasons_add(verdict,
                   &(lw_because){.answer = LW_ANSWER_STANDS,
                                 .origin = LW_GIVEN,
                                 .slug = lw_reason_slug(LW_REASON_NO_REQUIREMENT),
                                 .source = HERE},
                   "It cannot be shown that it stands: the set of factors asks for nothing here.");
  }
  tell_trench(facts, verdict);
}
