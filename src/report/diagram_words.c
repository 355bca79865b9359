/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "diagram_words.h"

#include <assert.h>
#include <math.h>

#include "base/print.h"
#include "base/tell.h"
#include "difference.h"

/* What is said of each method beside the others. */

const char *lw_way_title(lw_way way) {
  static const char *const TITLES[LW_WAY_COUNT] = {
      [LW_WAY_RANKINE] = "Rankine",
      [LW_WAY_COULOMB] = "Coulomb",
      [LW_WAY_WEDGE] = "trial wedges",
      [LW_WAY_LOG_SPIRAL] = "log spiral",
      [LW_WAY_ANNEX_C] = "EN 1997-1 C.2",
      [LW_WAY_AT_REST] = "at rest",
      [LW_WAY_PASSIVE_RANKINE] = "Rankine",
      [LW_WAY_PASSIVE_COULOMB] = "Coulomb",
      [LW_WAY_PASSIVE_WEDGE] = "trial wedges",
      [LW_WAY_PASSIVE_LOG_SPIRAL] = "log spiral",
      [LW_WAY_PASSIVE_ANNEX_C] = "EN 1997-1 C.2",
  };
  assert((size_t)way < LW_WAY_COUNT);
  return TITLES[way];
}

const char *lw_state_title(lw_earth_state state) {
  static const char *const TITLES[] = {
      [LW_ACTIVE] = "active", [LW_PASSIVE] = "passive", [LW_AT_REST] = "at rest"};
  return TITLES[state];
}

const char *lw_load_theory_title(lw_load_pressure by) {
  switch (by) {
  case LW_LOAD_PRESSURE_DOUBLED: return "elastic, doubled";
  case LW_LOAD_PRESSURE_CURVES: return "curves of stiff walls";
  case LW_LOAD_PRESSURE_WEDGE: return "the wedge alone";
  case LW_LOAD_PRESSURE_OWN:
  case LW_LOAD_PRESSURE_HALF_SPACE: break;
  }
  return "elastic half-space";
}

static void say(lw_text *out, size_t begun, const char *words) {
  if (out->length > begun) lw_text_add(out, " ");
  lw_text_add(out, words);
}

static bool has_cohesion(const lw_plane *plane) {
  for (int i = 0; i < plane->layer_count; i++)
    if (plane->layer[i].cohesion_kpa > 0.0) return true;
  return false;
}

static bool is_broken(const lw_plane *plane) {
  return fabs(plane->slope_rad) > 1e-12 && isfinite(plane->slope_run_m);
}

static bool is_wedge(lw_way way) {
  return way == LW_WAY_WEDGE || way == LW_WAY_PASSIVE_WEDGE;
}

/* An upright plane behind a back that is rough or leans. */
static void say_of_rankine(const lw_diagram *d, lw_way way, lw_text *out, size_t begun) {
  const lw_plane *back = &d->asked.back;
  bool rough = fabs(back->wall_friction_rad - back->slope_rad) > 1e-9, leans = fabs(back->batter_rad) > 1e-12;
  if ((rough || leans) && way == LW_WAY_RANKINE)
    say(out, begun,
        leans ? "On an upright plane: it knows no batter and no friction of the back."
              : "It knows no friction of the back: its thrust lies along the ground.");
  if (way == LW_WAY_PASSIVE_RANKINE && back->slope_rad > 1e-12)
    say(out, begun, "Its passive value falls as the ground rises: it does not apply to a slope.");
}

static void say_of_rest(const lw_diagram *d, lw_text *out, size_t begun) {
  if (has_cohesion(&d->asked.upright))
    say(out, begun, "Given for soil without cohesion: the cohesion is left out.");
  if (d->asked.upright.load_count > 0 && d->asked.loads_by == LW_LOAD_PRESSURE_OWN)
    say(out, begun, "Loads at a distance doubled: the face does not yield.");
}

/* What a closed formula leaves out of this ground. */
static void say_of_formulas(const lw_diagram *d, lw_way way, lw_text *out, size_t begun) {
  const lw_plane *plane = d->way[way].upright ? &d->asked.upright : &d->asked.back;
  if (is_broken(plane)) say(out, begun, "It takes the slope as endless.");
  if (d->way[way].state != LW_PASSIVE && plane->load_count > 0 && d->asked.loads_by == LW_LOAD_PRESSURE_WEDGE)
    say(out, begun, "Loads at a distance are left to the wedge and not in it.");
}

static void say_of_curves(const lw_diagram *d, lw_way way, lw_text *out, size_t begun) {
  bool passive = d->way[way].state == LW_PASSIVE, leans = d->asked.back.batter_rad > 1e-12;
  bool spiral = way == LW_WAY_LOG_SPIRAL || way == LW_WAY_PASSIVE_LOG_SPIRAL;
  if (passive && spiral && d->asked.back.wall_friction_rad > 1e-9)
    say(out, begun, "An upper bound: 2 % high with a half-rough wall, 3 to 10 % with one as rough as soil.");
  if (passive && !spiral && !has_cohesion(&d->asked.back))
    say(out, begun, "Stresses that the soil can bear: on the low, cautious side.");
  if (!passive && !spiral && leans)
    say(out, begun, "On a back that soil lies on it may be a little low: set the wedge beside it.");
  if (!spiral && has_cohesion(&d->asked.back) && fabs(d->asked.back.wall_friction_rad) > 1e-9)
    say(out, begun,
        "Its cohesion sticks to the wall as well, as far as friction does; the other methods' does not.");
}

/* A crack that may fill stands in no row: each way has its own depth of it. */
static void say_of_crack(const lw_diagram *d, lw_way way, lw_units units, lw_text *out, size_t begun) {
  const lw_thrust *t = &d->way[way].thrust;
  char words[160];
  if (!(t->water_kn_per_m > d->water_kn_per_m + 1e-9)) return;
  lw_print(words, sizeof words, "Its crack, %s deep, full of water: with it all water sends %s, level.",
           lw_tell_amount(units, "m", t->crack_depth_m, 3).text,
           lw_tell_amount(units, "kN/m", t->water_kn_per_m, 3).text);
  say(out, begun, words);
}

static void say_of_wedge(const lw_diagram *d, lw_way way, lw_text *out, size_t begun) {
  const char *why = lw_difference_words(d->back_differs);
  char words[240];
  if (why[0] == '\0') return;
  lw_print(words, sizeof words, "It may differ from the formulas for %s.", why);
  if (way == LW_WAY_WEDGE || d->back_differs != LW_DIFFER_LOADS) say(out, begun, words);
}

void lw_way_notes(const lw_diagram *diagram, lw_way way, lw_units units, lw_text *out) {
  const lw_diagram_way *w = &diagram->way[way];
  size_t begun = out->length;
  if (!w->known) {
    char words[280];
    lw_print(words, sizeof words, "No answer: %s.", w->error.text);
    say(out, begun, words);
    return;
  }
  if (w->thrust.passive_unsafe)
    say(out, begun,
        "UNSAFE: a plane overrates it where wall friction exceeds a third of the soil's angle; use a curve.");
  if (way == LW_WAY_RANKINE || way == LW_WAY_PASSIVE_RANKINE) say_of_rankine(diagram, way, out, begun);
  if (way == LW_WAY_AT_REST) say_of_rest(diagram, out, begun);
  if (w->routine == lw_passive_routine_of(LW_PASSIVE_LOG_SPIRAL) ||
      w->routine == lw_passive_routine_of(LW_PASSIVE_ANNEX_C))
    say_of_curves(diagram, way, out, begun);
  if (is_wedge(way))
    say_of_wedge(diagram, way, out, begun);
  else
    say_of_formulas(diagram, way, out, begun);
  say_of_crack(diagram, way, units, out, begun);
}

const char *lw_diagram_load_name(const lw_diagram *diagram, int load, char *out, size_t size) {
  int number = diagram->asked.load_number[load];
  if (number > 0)
    lw_print(out, size, "load %d", number);
  else
    lw_print(out, size, "wall above");
  return out;
}

void lw_plane_load_words(lw_units units, const lw_plane_load *load, char *out, size_t size) {
  static const double ENDLESS_M = 500.0;
  char below[60] = "";
  if (load->below_m > 0.0)
    lw_print(below, sizeof below, ", %s below the ground", lw_tell_amount(units, "m", load->below_m, 2).text);
  if (load->pressure_kpa > 0.0 && load->far_m > ENDLESS_M)
    lw_print(out, size, "strip %s, from %s behind on%s",
             lw_tell_amount(units, "kPa", load->pressure_kpa, 1).text,
             lw_tell_amount(units, "m", load->near_m, 2).text, below);
  else if (load->pressure_kpa > 0.0)
    lw_print(out, size, "strip %s, %.2f to %s behind%s",
             lw_tell_amount(units, "kPa", load->pressure_kpa, 1).text, lw_tell_in(units, "m", load->near_m),
             lw_tell_amount(units, "m", load->far_m, 2).text, below);
  else if (load->force_kn_per_m > 0.0)
    lw_print(out, size, "%s %s, %s behind%s", load->point ? "point" : "line",
             lw_tell_amount(units, load->point ? "kN" : "kN/m", load->force_kn_per_m, 2).text,
             lw_tell_amount(units, "m", load->near_m, 2).text, below);
  else
    lw_print(out, size, "level push %s on the ground, %s behind%s",
             lw_tell_amount(units, "kN/m", load->push_kn_per_m, 2).text,
             lw_tell_amount(units, "m", load->near_m, 2).text, below);
}
