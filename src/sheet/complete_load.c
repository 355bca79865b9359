/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete.h"
#include "complete_load_name.h"

static bool load_given(const lw_case_load *load) {
  return load->kind.origin == LW_GIVEN || load->name.origin == LW_GIVEN || lw_given(&load->pressure) ||
         lw_given(&load->force) || lw_given(&load->push) || lw_given(&load->near_edge) ||
         lw_given(&load->far_edge) || lw_given(&load->distance) || lw_given(&load->below_ground) ||
         lw_given(&load->height);
}

static const void *place_of_load(const lw_case_load *load) {
  const lw_quantity *values[] = {&load->pressure,  &load->force,    &load->push,
                                 &load->near_edge, &load->far_edge, &load->distance};
  if (load->kind.origin != LW_GIVEN && load->name.origin == LW_GIVEN) {
    return &load->name;
  }
  for (size_t i = 0; i < sizeof values / sizeof *values && load->kind.origin != LW_GIVEN; i++) {
    if (lw_given(values[i])) {
      return values[i];
    }
  }
  return &load->kind;
}

/* A pressure without a kind is uniform, or a strip when it has edges; a push is on the cap. A force could be
 * one of three. */
static bool complete_load_kind(lw_completing *s, lw_case_load *load) {
  if (load->name.origin == LW_GIVEN) {
    return lw_complete_load_name(s, load);
  }
  if (load->kind.origin == LW_GIVEN && load->kind.row != LW_WORKED_OUT_ROW) {
    return true;
  }
  if (lw_given(&load->push) && !lw_given(&load->pressure)) {
    load->kind = (lw_choice){.value = LW_LOAD_CAP, .origin = LW_GIVEN, .row = LW_WORKED_OUT_ROW};
    return true;
  }
  if (!lw_given(&load->pressure)) {
    lw_complete_missing(s, &load->kind, &load->pressure, "what kind of load it is");
    return false;
  }
  bool strip = lw_given(&load->near_edge) || lw_given(&load->far_edge);
  load->kind = (lw_choice){
      .value = strip ? LW_LOAD_STRIP : LW_LOAD_UNIFORM, .origin = LW_GIVEN, .row = LW_WORKED_OUT_ROW};
  return true;
}

static void need(lw_completing *s, const lw_quantity *q, const char *why) {
  if (q->origin == LW_ABSENT) {
    lw_complete_missing(s, q, NULL, why);
  }
}

static void refuse(lw_completing *s, const lw_quantity *q, const char *kind) {
  if (lw_given(q)) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, q, "this item left out: a load of kind %s has none", kind);
  }
}

static void need_force(lw_completing *s, const lw_case_load *load, lw_kind kind) {
  need(s, &load->force, "the force of the load");
  if (lw_given(&load->force) && load->force.kind != kind) {
    lw_complete_fault(s, LW_FAULT_WRONG_UNIT, &load->force,
                      kind == LW_KIND_FORCE ? "a force, in kN or lb: the load is a point"
                                            : "a force a metre run, in kN/m or lb/ft");
  }
}

/* What only some kinds have. */
static void hold_extras(lw_completing *s, const lw_case_load *load, const char *name) {
  bool behind = load->kind.value == LW_LOAD_STRIP || load->kind.value == LW_LOAD_LINE ||
                load->kind.value == LW_LOAD_POINT;
  if (load->kind.value != LW_LOAD_CAP) {
    refuse(s, &load->push, name);
  }
  if (!behind) {
    refuse(s, &load->below_ground, name);
  }
  if (lw_given(&load->height) && !lw_load_by_the_metre(s, load)) {
    lw_complete_fault(
        s, LW_FAULT_CONTRADICTION, &load->height,
        "this item left out: only a named load whose row gives a pressure a metre has a height");
  }
}

static void hold_load(lw_completing *s, const lw_case_load *load) {
  static const char *const names[] = {"none", "uniform", "strip", "line", "point", "cap"};
  const char *name = names[load->kind.value];
  bool pressure = load->kind.value == LW_LOAD_UNIFORM || load->kind.value == LW_LOAD_STRIP;
  bool strip = load->kind.value == LW_LOAD_STRIP;
  bool at_distance = load->kind.value == LW_LOAD_LINE || load->kind.value == LW_LOAD_POINT;
  bool force = at_distance || load->kind.value == LW_LOAD_CAP;
  if (pressure && !lw_load_by_the_metre(s, load)) {
    need(s, &load->pressure, "the pressure of the load");
  } else if (!pressure) {
    refuse(s, &load->pressure, name);
  }
  bool pushes_only =
      load->kind.value == LW_LOAD_CAP && load->push.origin != LW_ABSENT && load->force.origin == LW_ABSENT;
  hold_extras(s, load, name);
  if (pushes_only) {
    /* A push at the cap need not weigh anything. */
  } else if (force) {
    need_force(s, load, load->kind.value == LW_LOAD_POINT ? LW_KIND_FORCE : LW_KIND_LINE_LOAD);
  } else {
    refuse(s, &load->force, name);
  }
  if (strip) {
    need(s, &load->near_edge, "where the strip begins");
    need(s, &load->far_edge, "where the strip ends");
  } else {
    refuse(s, &load->near_edge, name);
    refuse(s, &load->far_edge, name);
  }
  if (at_distance) {
    need(s, &load->distance, "how far behind the wall the load stands");
  } else {
    refuse(s, &load->distance, name);
  }
  if (strip && load->near_edge.origin != LW_ABSENT && lw_given(&load->far_edge) &&
      load->far_edge.si <= load->near_edge.si) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &load->far_edge, "an edge beyond the near one, %s",
                      lw_complete_exactly(s, LW_KIND_LENGTH, load->near_edge.si, "m").text);
  }
}

/* The garden load, when nothing is said of what stands behind: a load on the cap does not say it, and a named
 * one of limited width says what it is and not what else may come. */
static bool says_what_stands_behind(const lw_case_load *load) {
  bool wide = load->kind.value == LW_LOAD_NONE || load->kind.value == LW_LOAD_UNIFORM;
  return load->kind.value != LW_LOAD_CAP && (wide || load->name.origin != LW_GIVEN);
}

void lw_complete_loads(lw_completing *s) {
  int gap = -1;
  bool nothing_said = true;
  s->load_count = 0;
  for (int i = 0; i < LW_LOAD_MAX; i++) {
    lw_case_load *load = &s->c->load[i];
    bool given = load_given(load);
    if (given && gap >= 0) {
      lw_complete_fault(s, LW_FAULT_GAP_IN_NUMBERING, place_of_load(load), "load %d first", gap + 1);
      return;
    }
    gap = given || gap >= 0 ? gap : i;
    if (!given) {
      continue;
    }
    s->load_count = i + 1;
    if (complete_load_kind(s, load)) {
      hold_load(s, load);
      nothing_said = nothing_said && !says_what_stands_behind(load);
    } else {
      nothing_said = false;
    }
  }
  s->load_untold = nothing_said;
}
