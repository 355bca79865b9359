/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>
#include <string.h>

#include "base/extremes.h"
#include "limit_held.h"
#include "limit_keeps.h"
#include "limit_own.h"

/* The rows of tables/limits.csv that are about this place, each held against the wall: its height by the
 * row's own definition, then what the row asks for besides. A row that says itself unsure calls for the
 * council at most. */

static const char *slug_of(lw_trigger trigger) {
  static const char *const slugs[] = {[LW_EXEMPT_BELOW] = "limit-exemption",
                                      [LW_APPROVAL_ABOVE] = "limit-approval",
                                      [LW_ENGINEER_ABOVE] = "limit-engineer",
                                      [LW_DESIGN_ABOVE] = "limit-design",
                                      [LW_BARRIER_ABOVE] = "limit-barrier"};
  return slugs[trigger];
}

static const char *meaning_of(const lw_limit_row *row) {
  static const char *const meanings[] = {[LW_EXEMPT_BELOW] = "stops leaving it to the builder",
                                         [LW_APPROVAL_ABOVE] = "asks for an approval",
                                         [LW_ENGINEER_ABOVE] = "asks for an engineer",
                                         [LW_DESIGN_ABOVE] = "asks for a design",
                                         [LW_BARRIER_ABOVE] = "asks about a barrier"};
  if (row->trigger == LW_DESIGN_ABOVE && row->of_standard) return "begins to apply";
  if (row->with_engineer && row->trigger != LW_ENGINEER_ABOVE)
    return "asks for an approval, with an engineer's certificate";
  return meanings[row->trigger];
}

static const char *manner_of(lw_height_kind kind) {
  static const char *const manners[LW_HEIGHT_KINDS] = {[LW_HEIGHT_TOTAL] = "high from underside to top",
                                                       [LW_HEIGHT_EXPOSED] = "high above the ground in front",
                                                       [LW_HEIGHT_RETAINED] = "of soil held up",
                                                       [LW_HEIGHT_NATURAL] = "of cut or fill",
                                                       [LW_HEIGHT_FENCE] = "high with its fence",
                                                       [LW_HEIGHT_GREATEST] = "high by its greatest height"};
  return manners[kind];
}

static void print_authority(const lw_facts *f, const lw_limit_row *row, char *out, size_t size) {
  if (!row->of_default)
    lw_print(out, size, "%s, %s,", row->instrument,
             strcmp(row->region, "national") == 0 ? row->country : row->region);
  else
    lw_print(out, size, "the cautious default for a place %s",
             f->c->about.place.origin == LW_ABSENT ? "not on file"
             : f->place_known                      ? "without an engineer's line on file"
                                                   : "without a line of its own on file");
}

static const char *comparison_of(const lw_limit_row *row) {
  return row->at_or_above ? "not below" : "past";
}

/* The wall's own height, even where what is left out could make it more. */
static double printed_height(const lw_facts *f, const lw_limit_row *row, const lw_span *height) {
  return isfinite(height->taken_m) ? height->taken_m : f->height_m[row->measured];
}

static void say_past(const lw_facts *f, const lw_limit_row *row, const lw_span *height,
                     lw_verdict_reason *r) {
  char authority[256];
  double printed = printed_height(f, row, height);
  lw_apart apart = lw_metres_apart(f->units, printed, row->height_m, 2);
  print_authority(f, row, authority, sizeof authority);
  if (row->height_m <= 0.0) {
    lw_print(r->text, sizeof r->text, "At any height %s %s.", authority, meaning_of(row));
    return;
  }
  if (row->at_or_above)
    apart = (lw_apart){lw_metres(f->units, printed, 2), lw_metres(f->units, row->height_m, 2)};
  lw_print(r->text, sizeof r->text, "It is %s %s%s, %s the %s%s where %s %s.", apart.one.text,
           row->cut_only ? "of cut" : manner_of(row->fence_counts ? LW_HEIGHT_FENCE : row->measured),
           lw_limit_adds_tier(f, row) ? " together with the other wall" : "", comparison_of(row),
           apart.other.text, lw_limit_own(f->units, row, " (", ")").text, authority, meaning_of(row));
}

/* Past it only if what is left out makes it so. */
static void ask_past(const lw_facts *f, const lw_limit_row *row, const char *left_out, lw_verdict_reason *r) {
  char authority[256], question[LW_CLAUSE_MAX];
  print_authority(f, row, authority, sizeof authority);
  lw_print(r->text, sizeof r->text, "It may be %s the %s%s where %s %s: %s.", comparison_of(row),
           lw_metres(f->units, row->height_m, 2).text, lw_limit_own(f->units, row, " (", ")").text, authority,
           meaning_of(row), lw_reasons_question(left_out, question, sizeof question));
}

static void tell_past(const lw_facts *f, const lw_limit_row *row, const lw_limit_held *held,
                      lw_reaching *to) {
  bool certain = held->about == LW_SO_YES && held->past == LW_SO_YES;
  const char *left_out = held->about == LW_SO_OPEN ? held->about_left_out : held->height.left_out;
  lw_verdict_reason *r = lw_reasons_new(to, &(lw_because){.answer = LW_ANSWER_WHO,
                                                          .who = lw_limit_calls_for(f, row),
                                                          .origin = certain ? LW_GIVEN : LW_ASSUMED,
                                                          .slug = slug_of(row->trigger),
                                                          .source = row->from.source,
                                                          .left_out = certain ? NULL : left_out,
                                                          .again = true});
  if (!r) return;
  if (r->left_out)
    ask_past(f, row, left_out, r);
  else
    say_past(f, row, &held->height, r);
}

/* What makes a row ask at any height, as the end of a sentence. */
static const char *any_height_words(lw_only_if by) {
  switch (by) {
  case LW_ONLY_IF_HERITAGE: return "on a heritage item or in a conservation area";
  case LW_ONLY_IF_MAPPED_LAND: return "on land that is mapped for a hazard";
  case LW_ONLY_IF_CHANGES_DRAINAGE: return "where water is sent next door";
  case LW_ONLY_IF_NOT_DRAINED: return "without a way out for its water";
  case LW_ONLY_IF_SLOPING_GROUND: return "where the ground slopes";
  case LW_ONLY_IF_OTHER_WALL_NEAR: return "near another wall";
  case LW_ONLY_IF_LIQUID_HELD: return "where a liquid is held";
  case LW_ONLY_IF_REACTIVE_SOIL:
  case LW_ONLY_IF_BAD_FILL: return "on problem soil";
  case LW_ONLY_IF_DRY_LAID: return "when it is laid dry";
  case LW_ONLY_IF_NOT_DRY_STONE: return "when it is not of dry stone";
  case LW_ONLY_IF_SUPPORTS_STRUCTURE: return "where it supports a structure";
  case LW_ONLY_IF_CROSSES_BOUNDARY:
  case LW_ONLY_IF_WEAKENS_ADJOINING: return "so near to a boundary";
  default: return "here";
  }
}

static void tell_any_height(const lw_facts *f, const lw_limit_row *row, const lw_limit_held *held,
                            lw_reaching *to) {
  bool certain = held->any_height == LW_SO_YES && held->about == LW_SO_YES;
  const char *left_out = certain                          ? NULL
                         : held->any_height == LW_SO_OPEN ? held->any_left_out
                                                          : held->about_left_out;
  lw_verdict_reason *r = lw_reasons_new(to, &(lw_because){.answer = LW_ANSWER_WHO,
                                                          .who = lw_limit_calls_for(f, row),
                                                          .origin = certain ? LW_GIVEN : LW_ASSUMED,
                                                          .slug = slug_of(row->trigger),
                                                          .source = row->from.source,
                                                          .left_out = left_out,
                                                          .again = true});
  if (!r) return;
  char authority[256], question[LW_CLAUSE_MAX] = "";
  print_authority(f, row, authority, sizeof authority);
  if (left_out) lw_reasons_question(left_out, question, sizeof question);
  lw_print(r->text, sizeof r->text, "At any height %s %s %s%s%s.", authority, meaning_of(row),
           any_height_words(held->any_by),
           certain    ? ""
           : left_out ? ": "
                      : ", which no sheet tells",
           question);
}

static bool clears(const lw_facts *f, const lw_limit_row *row) {
  return row->clears &&
         (row->of_default ? !f->place_known : row->place_row == f->place_row || row->clears_within);
}

static void hold(const lw_facts *f, const lw_limit_row *row, lw_reaching *to) {
  lw_limit_held held;
  lw_limit_hold(f, row, &held);
  if (held.about == LW_SO_NOT) return;
  double printed = printed_height(f, row, &held.height);
  bool past = held.past != LW_SO_NOT, any_height = !past && held.any_height != LW_SO_NOT;
  if (past) tell_past(f, row, &held, to);
  if (any_height) tell_any_height(f, row, &held, to);
  bool kept = lw_limit_keeps(f, row, &held.height, to);
  if (to->verdict->limit_count >= LW_LIMIT_HIT_MAX) return;
  to->verdict->limit[to->verdict->limit_count++] = (lw_limit_hit){.row = row,
                                                                  .height_m = printed,
                                                                  .past = lw_limit_is_past(row, printed),
                                                                  .clears = clears(f, row),
                                                                  .kept = kept && !any_height && !past};
}

/* Where no engineer's line is on file the default's holds, however well the rest of the place is known; of a
 * place that is not known all of the default's lines do. */
static bool asked_of_all(const lw_facts *f, const lw_limit_row *row) {
  if (!f->place_known) return false;
  bool engineer = row->trigger == LW_ENGINEER_ABOVE || row->trigger == LW_DESIGN_ABOVE;
  return row->of_default && engineer && !f->own_engineer;
}

void lw_verdict_limits(const lw_facts *facts, lw_reaching *to) {
  const lw_tables *tables = facts->tables;
  for (int i = 0; i < tables->limit_count; i++) {
    const lw_limit_row *row = &tables->limit[i];
    if (facts->places.at[tables->limit_place[i]] || asked_of_all(facts, row)) hold(facts, row, to);
  }
}
