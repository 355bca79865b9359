/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "contacts.h"
#include "json.h"
#include "report/text/said.h"

/* Whether something is null that has no reason yet. */
static bool set_numbers(json_t *entry, const lw_check *check) {
  bool all = lw_json_set_real(entry, "demand", check->demand);
  all = lw_json_set_real(entry, "resistance", check->resistance) && all;
  lw_json_set_text(entry, "unit", check->unit);
  all = lw_json_set_real(entry, "has", check->has) && all;
  all = lw_json_set_real(entry, "needs", check->needs) && all;
  return lw_json_set_real(entry, "ratio", check->ratio) && all;
}

static void set_holds(json_t *entry, const lw_check *check) {
  bool shown = check->holds != LW_CANNOT_SHOW;
  lw_json_put(entry, "holds", shown ? json_boolean(check->holds == LW_HOLDS) : json_null());
}

/* As the wall itself is graded, were this its only check. */
static void set_grade(json_t *entry, const lw_bases *bases, const lw_check *check) {
  lw_number likely = lw_looks_has(bases->result, bases->situation, check);
  lw_grade grade = lw_check_grade(bases->result, bases->situation, check);
  lw_json_set_flag(entry, "would_move", lw_check_would_move(check));
  lw_json_set_text(entry, "falls", grade == LW_GRADE_COUNT ? "" : lw_grade_slug(grade));
  if (likely.known) lw_json_set_real(entry, "likely", likely);
}

/* By which row it is asked, and why by that one. */
static void set_asked(json_t *entry, const lw_bases *bases, const lw_check *check) {
  lw_situation_kind kind = bases->situation->kind;
  lw_doubt doubt = lw_check_doubt(&bases->result->wall, check);
  lw_json_set_text(entry, "format", check->by ? check->by->factor_set : "");
  lw_json_set_text(entry, "quantity", check->by ? check->by->quantity : "");
  lw_json_set_text(entry, "needs_because", doubt != LW_DOUBT_NONE ? lw_doubt_slug(doubt) : "");
  lw_json_set_text(entry, "needs_because_text", lw_doubt_words(doubt));
  lw_json_set_text(entry, "clause", check->by ? check->by->clause : "");
  lw_json_set_text(entry, "source", check->by ? check->by->from.source : "");
  lw_json_set_text(entry, "needs_seen", check->by ? lw_seen_word(lw_check_seen(check, kind)) : "");
}

static void add_check(json_t *list, lw_bases *bases, const lw_check *check) {
  char at[24];
  lw_check_print_at(check, at, sizeof at);
  json_t *entry = lw_json_entry(list);
  lw_json_set_text(entry, "slug", lw_check_slug(check->kind));
  lw_json_set_text(entry, "at", at);
  bool all = set_numbers(entry, check);
  set_holds(entry, check);
  lw_json_set_flag(entry, "counts", check->counts);
  lw_json_set_flag(entry, "factored", check->factored);
  set_grade(entry, bases, check);
  lw_reason reason = check->reason;
  if (reason == LW_REASON_NONE && !all) reason = LW_REASON_NO_REQUIREMENT;
  if (reason != LW_REASON_NONE) {
    lw_json_set_text(entry, "reason", lw_reason_slug(reason));
    lw_json_set_text(entry, "reason_text", lw_reason_sentence(reason));
  }
  set_asked(entry, bases, check);
  lw_json_basis(bases, entry, check);
}

static void add_situation(json_t *list, const lw_result *result, const lw_situation *s) {
  json_t *entry = lw_json_entry(list);
  lw_json_set_text(entry, "slug", lw_situation_slug(s->name));
  lw_json_set_text(entry, "kind", lw_situation_kind_slug(s->kind));
  lw_json_set_flag(entry, "decides", s->decides);
  lw_json_set_text(entry, "sentence", lw_situation_sentence(s->name));
  char why[LW_SITUATION_WHY_MAX];
  lw_situation_why_words(s->why, result->tables, LW_UNITS_METRIC, why, sizeof why);
  lw_json_set_text(entry, "why", why);
  if (!lw_json_set_double(entry, "water_depth_m", s->water_depth_m))
    lw_json_set_text(entry, "reason", lw_reason_slug(LW_REASON_NO_DEMAND));
  if (s->name == LW_SITUATION_SOAKED) lw_json_set_flag(entry, "seeping", s->seeping);
  if (s->name == LW_SITUATION_PERSON_AT_EDGE) {
    const lw_wall_person *person = &result->wall.person;
    lw_json_set_double(entry, "person_kn", person->force_kn);
    lw_json_set_double(entry, "person_length_m", person->length_m);
    lw_json_set_double(entry, "person_kpa", person->pressure_kpa);
    lw_json_set_double(entry, "person_near_m", person->near_m);
    lw_json_set_double(entry, "person_far_m", person->far_m);
    lw_json_set_double(entry, "instead_of_kpa", person->planted_kpa);
  }
  if (s->people_down_kn_per_m > 0.0 || s->people_out_kn_per_m > 0.0) {
    lw_json_set_double(entry, "people_down_kn_per_m", s->people_down_kn_per_m);
    lw_json_set_double(entry, "people_out_kn_per_m", s->people_out_kn_per_m);
  }
  if (s->name == LW_SITUATION_EARTHQUAKE) {
    lw_json_set_double(entry, "seismic_horizontal", s->load_case.ground.seismic.horizontal);
    lw_json_set_double(entry, "seismic_vertical", s->load_case.ground.seismic.vertical);
  }
  lw_json_set_text(entry, "set", s->load_case.set ? s->load_case.set->factor_set : "");
  lw_json_contact(entry, "base", result, &s->base);
  lw_json_contact(entry, "pad", result, &s->pad);
  lw_json_joints(entry, result, s);
  lw_json_slip(entry, result, s);
  lw_bases bases = {.list = lw_json_list(entry, "load_cases"), .result = result, .situation = s};
  lw_json_lighter(&bases);
  json_t *checks = lw_json_list(entry, "checks");
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    add_check(checks, &bases, &check);
  }
}

void lw_json_situations(json_t *root, const lw_result *result) {
  json_t *list = lw_json_list(root, "situations");
  for (int i = 0; i < result->situations.count; i++)
    add_situation(list, result, &result->situations.situation[i]);
}
