/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_side.h"

#include <math.h>

#include "base/angles.h"
#include "base/print.h"
#include "base/tell.h"
#include "report/diagram_words.h"
#include "report/page.h"

/* All methods side by side, as text. */

lw_number lw_way_against_coulomb(const lw_diagram *diagram, lw_way way) {
  const lw_diagram_way *w = &diagram->way[way];
  const lw_diagram_way *c = &diagram->way[w->state == LW_PASSIVE ? LW_WAY_PASSIVE_COULOMB : LW_WAY_COULOMB];
  bool known = w->known && c->known && fabs(c->level_kn_per_m) > 1e-12;
  return (lw_number){known ? w->level_kn_per_m / c->level_kn_per_m - 1.0 : 0.0, known};
}

static void add_layer(const lw_plane *plane, int i, lw_units units, lw_text *text) {
  const lw_layer *layer = &plane->layer[i];
  double top = i > 0 ? plane->layer[i - 1].bottom_m : 0.0;
  lw_text_addf(text, "  soil %d           from %s: %.2f deg, ", i + 1,
               lw_tell_amount(units, "m", fmax(top, 0.0), 3).text, layer->friction_rad * LW_DEG_PER_RAD);
  if (layer->cohesion_kpa > 0.0)
    lw_text_addf(text, "cohesion %s, ", lw_tell_amount(units, "kPa", layer->cohesion_kpa, 2).text);
  lw_text_addf(text, "%s", lw_tell_amount(units, "kN/m3", layer->unit_weight_kn_per_m3, 2).text);
  if (plane->water_depth_m < plane->height_m)
    lw_text_addf(text, ", full of water %.2f",
                 lw_tell_in(units, "kN/m3", layer->saturated_unit_weight_kn_per_m3));
  lw_text_add(text, "\n");
}

void lw_pressure_ground_text(const lw_diagram *diagram, lw_units units, lw_text *text) {
  const lw_plane *back = &diagram->asked.back, *upright = &diagram->asked.upright;
  char words[160], name[24];
  lw_text_addf(text, "  back             %s high, batter %.2f deg, friction %.2f deg; ground %.2f deg\n",
               lw_tell_amount(units, "m", back->height_m, 3).text, back->batter_rad * LW_DEG_PER_RAD,
               back->wall_friction_rad * LW_DEG_PER_RAD, back->slope_rad * LW_DEG_PER_RAD);
  if (fabs(upright->height_m - back->height_m) > 1e-6)
    lw_text_addf(text, "  upright plane    %s high, for Rankine and at rest\n",
                 lw_tell_amount(units, "m", upright->height_m, 3).text);
  for (int i = 0; i < back->layer_count; i++) add_layer(back, i, units, text);
  if (back->water_depth_m < back->height_m)
    lw_text_addf(text, "  water            from %s, %s\n",
                 lw_tell_amount(units, "m", back->water_depth_m, 3).text,
                 lw_tell_amount(units, "kN/m3", back->water_unit_weight_kn_per_m3, 2).text);
  if (back->surcharge_kpa > 0.0)
    lw_text_addf(text, "  uniform load     %s\n", lw_tell_amount(units, "kPa", back->surcharge_kpa, 2).text);
  for (int i = 0; i < back->load_count; i++) {
    lw_plane_load_words(units, &back->load[i], words, sizeof words);
    lw_text_addf(text, "  %-16s %s\n", lw_diagram_load_name(diagram, i, name, sizeof name), words);
  }
}

static void add_way(const lw_diagram *d, lw_way way, lw_units units, lw_text *text) {
  const lw_diagram_way *w = &d->way[way];
  lw_number against = lw_way_against_coulomb(d, way);
  if (!w->known) {
    lw_text_addf(text, "  %-14s none: %s\n", lw_way_title(way), w->error.text);
    return;
  }
  if (w->mean_k.known)
    lw_text_addf(text, "  %-14s %8.4f", lw_way_title(way), w->mean_k.value);
  else
    lw_text_addf(text, "  %-14s %8s", lw_way_title(way), "-");
  lw_text_addf(text,
               units == LW_UNITS_US ? " %9.1f %7.2f %8.1f %9.1f %7.3f" : " %9.3f %7.2f %8.3f %9.3f %7.3f",
               lw_tell_in(units, "kN/m", w->thrust.total_kn_per_m), w->thrust.angle_rad * LW_DEG_PER_RAD,
               lw_tell_in(units, "kN/m", w->loads.push_kn_per_m),
               lw_tell_in(units, "kN/m", w->level_kn_per_m), lw_tell_in(units, "m", w->level_height_m));
  if (!against.known)
    lw_text_add(text, "        -\n");
  else
    lw_text_addf(text, " %+8.1f\n", fabs(against.value) < 5e-7 ? 0.0 : 100.0 * against.value);
}

static void add_notes(const lw_diagram *d, lw_units units, lw_text *text) {
  const lw_page page = {.out = text, .style = {.columns = 80}};
  for (int i = 0; i < LW_WAY_COUNT; i++) {
    lw_text notes = {0};
    char prefix[48];
    if (d->way[i].known) lw_way_notes(d, (lw_way)i, units, &notes);
    lw_print(prefix, sizeof prefix, "  %s%s%s: ", lw_way_title((lw_way)i), i == LW_WAY_AT_REST ? "" : ", ",
             i == LW_WAY_AT_REST ? "" : lw_state_title(d->way[i].state));
    lw_page_say_text(&page, prefix, &notes);
  }
}

/* A layer by itself, without cohesion: as the table of a book has it. */
static void add_layer_coefficients(const lw_diagram *d, lw_text *text) {
  const lw_plane *back = &d->asked.back;
  lw_text_add(text, "\nCoefficients, each soil by itself\n"
                    "           Rankine  Coulomb    wedge   spiral  annex C  at rest\n");
  for (int state = 0; state < 2; state++)
    for (int i = 0; i < back->layer_count; i++) {
      int first = state ? LW_WAY_PASSIVE_RANKINE : LW_WAY_RANKINE;
      lw_text_addf(text, "  %s %d", state ? "passive" : "active ", i + 1);
      for (int k = first; k < (state ? LW_WAY_COUNT : LW_WAY_PASSIVE_RANKINE); k++) {
        lw_number value = d->way[k].layer_k[i];
        if (value.known)
          lw_text_addf(text, " %8.4f", value.value);
        else
          lw_text_add(text, "        -");
      }
      lw_text_add(text, "\n");
    }
}

/* On a smooth wall they are Rankine's. */
static void add_published(const lw_diagram *d, lw_text *text) {
  bool rough = d->asked.back.wall_friction_rad > 1e-9;
  for (int i = 0; rough && i < d->asked.back.layer_count; i++) {
    if (!d->ufc_kp[i].known || !d->lancellotta_kp[i].known) continue;
    lw_text_addf(text,
                 "  Published besides, soil %d passive: %.4f, a fit to log spirals [UFC-3-220-20\n"
                 "  eq.4-12]; %.4f, a field of stress [LANCELLOTTA2002 closed form].\n",
                 i + 1, d->ufc_kp[i].value, d->lancellotta_kp[i].value);
  }
}

/* What each theory makes of each load: a student sees how far they lie apart. */
static void add_loads(const lw_diagram *d, lw_units units, lw_text *text) {
  static const lw_load_pressure THEORY[] = {LW_LOAD_PRESSURE_HALF_SPACE, LW_LOAD_PRESSURE_DOUBLED,
                                            LW_LOAD_PRESSURE_CURVES};
  const lw_plane *back = &d->asked.back;
  lw_elastic by[3];
  if (back->load_count == 0) return;
  for (int k = 0; k < 3; k++) by[k] = lw_elastic_push_on(back, THEORY[k]);
  bool us = units == LW_UNITS_US;
  lw_text_addf(text, "\nLoads at a distance, level push on the back, %s, and its height above the foot, %s\n",
               lw_tell_unit(units, "kN/m").text, lw_tell_unit(units, "m").text);
  lw_text_add(text, "                half-space         doubled          curves\n");
  for (int i = 0; i <= back->load_count; i++) {
    bool all = i == back->load_count;
    if (all && i < 2) break;
    char name[24];
    lw_text_addf(text, "  %-10s", all ? "all" : lw_diagram_load_name(d, i, name, sizeof name));
    for (int k = 0; k < 3; k++)
      lw_text_addf(text, us ? " %8.2f %6.3f" : " %8.3f %6.3f",
                   lw_tell_in(units, "kN/m", all ? by[k].push_kn_per_m : by[k].load[i].push_kn_per_m),
                   lw_tell_in(units, "m", all ? by[k].height_m : by[k].load[i].height_m));
    lw_text_add(text, "\n");
  }
  const lw_diagram_way *wedge = &d->way[LW_WAY_WEDGE];
  lw_text_addf(text, "  Used beside the active formulas: %s.", lw_load_theory_title(d->loads_by));
  if (wedge->known)
    lw_text_addf(text, " The wedge carries them itself: %s more.",
                 lw_tell_amount(units, "kN/m", wedge->loads.push_kn_per_m, 3).text);
  lw_text_add(text, "\n");
  lw_text_add(text, "  Where the soil resists none is counted: they may be gone by then.\n");
}

void lw_pressure_side_text(const lw_diagram *diagram, lw_units units, lw_text *text) {
  bool wet = diagram->asked.back.water_depth_m < diagram->asked.back.height_m;
  lw_text_addf(text,
               "\nAll methods side by side, %s\n"
               "                       K    thrust  at deg    loads level all  %6s Coulomb%%\n",
               lw_tell_unit(units, "kN/m").text, units == LW_UNITS_US ? "at, ft" : " at, m");
  for (int i = 0; i < LW_WAY_COUNT; i++) {
    if (i == LW_WAY_RANKINE) lw_text_add(text, "  active\n");
    if (i == LW_WAY_AT_REST) lw_text_add(text, "  it does not move\n");
    if (i == LW_WAY_PASSIVE_RANKINE) lw_text_add(text, "  passive\n");
    add_way(diagram, (lw_way)i, units, text);
  }
  lw_text_add(text, "  K: thrust over the stress of soil and uniform load summed down the plane. Level all:\n"
                    "  the level part of the thrust and the loads at a distance; Coulomb%: what it has more\n"
                    "  than Coulomb's of its state.");
  if (wet)
    lw_text_addf(text, " The water's %s, level, comes on top of each.",
                 lw_tell_amount(units, "kN/m", diagram->water_kn_per_m, 3).text);
  lw_text_add(text, "\n");
  if (diagram->asked.back.seismic.horizontal > 0.0 || fabs(diagram->asked.back.seismic.vertical) > 0.0)
    lw_text_add(
        text, "  The earthquake is a force of its own: in thrust and level all, in no K and in no depth.\n");
  add_notes(diagram, units, text);
  if (diagram->asked.back.layer_count > 1) add_layer_coefficients(diagram, text);
  add_published(diagram, text);
  add_loads(diagram, units, text);
}
