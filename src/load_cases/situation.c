/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation.h"

#include "base/working.h"
#include "standards/factors.h"
#include "load_cases.h"
#include "person.h"
#include "balance/place.h"
#include "balance/free_body.h"

/* A situation that was run: its steps, and one joint of it in full. */

/* The steps to the push that is shown. */
static void tell_push(const lw_wall *wall, const lw_factor_set *factor_set, const lw_situation *situation,
                      const lw_working *working) {
  lw_load_case load_case = situation->load_case;
  lw_stack base = {&wall->section, 0.0};
  lw_push push;
  lw_working_heading(working, "Push on the base");
  if (situation->name == LW_SITUATION_PERSON_AT_EDGE) lw_person_tell(wall, working);
  lw_load_case_mobilized(wall, factor_set, &load_case, working);
  lw_push_find(wall, &load_case.ground, &base, NULL, &push, working);
}

/* Where the push is that of the situation before, nothing new is said. */
void lw_situations_tell(const lw_wall *wall, const lw_tables *tables, const lw_situations *situations,
                        const lw_working *working) {
  for (int i = 0; i < situations->count; i++) {
    const lw_situation *s = &situations->situation[i], *before = s - 1;
    lw_factor_set factor_set;
    lw_factor_set_read_of(tables, s->load_case.set, &factor_set);
    lw_working_heading(working, lw_situation_sentence(s->name));
    bool same = i > 0 && s->load_case.set == before->load_case.set &&
                lw_load_cases_push_alike(&factor_set, before, s);
    if (wall->section.known && !same) tell_push(wall, &factor_set, s, working);
  }
}

/* The free body above a contact, in the load case that is shown. */
static void load_at(const lw_wall *wall, const lw_situation *situation, const lw_check *there,
                    lw_free_body *body, const lw_working *working) {
  lw_section above;
  lw_place place;
  lw_push push;
  lw_place_of_check(wall, there, &above, &place);
  lw_push_find(wall, &situation->load_case.ground, &place.stack, NULL, &push, NULL);
  lw_place_load(wall, &situation->load_case, &place, &push, body, working);
  lw_free_body_show(&push, body);
}

void lw_situation_tell(const lw_wall *wall, const lw_situation *situation, lw_at at, int joint,
                       const lw_working *working) {
  const lw_check there = {.at = at, .joint = joint};
  lw_free_body body;
  load_at(wall, situation, &there, &body, working);
}

void lw_situation_joint(const lw_wall *wall, const lw_situation *situation, int joint, lw_free_body *body) {
  const lw_check there = {.at = LW_AT_JOINT, .joint = joint};
  load_at(wall, situation, &there, body, NULL);
}
