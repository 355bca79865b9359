/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/amount.h"
#include "base/print.h"
#include "base/tell.h"
#include "pressure_view.h"
#include "report/diagram_words.h"

/* Which line is what: a stroke of its pen, its letter, and what it comes to. */

static const double STROKE_MM = 9.0, WORDS_MM = 14.5;

lw_amount lw_pressure_push(const lw_pressure_view *v, double kn_per_m) {
  lw_units units = v->page->units;
  return lw_tell_amount(units, "kN/m", kn_per_m, units == LW_UNITS_US ? 0 : 2);
}

/* The name of at rest is its state. */
static void say_state(const lw_pressure_view *v, lw_way way, char *out, size_t size) {
  const lw_diagram_way *w = &v->d->way[way];
  bool rests = way == LW_WAY_AT_REST, cracked = w->thrust.water_kn_per_m > v->d->water_kn_per_m + 1e-9;
  char crack[100] = "";
  if (cracked)
    lw_print(crack, sizeof crack, " (and %s of water, its crack full)",
             lw_pressure_push(v, w->thrust.water_kn_per_m).text);
  if (!w->known)
    lw_print(out, size, "%s%snone: %s", rests ? "" : lw_state_title(w->state), rests ? "" : " ",
             w->error.text);
  else
    lw_print(out, size, "%s%s%s%s%s", rests ? "" : lw_state_title(w->state), rests ? "" : " ",
             lw_pressure_push(v, w->thrust.horizontal_kn_per_m).text,
             w->thrust.passive_unsafe ? " (UNSAFE: a plane, and the wall is rough)" : "", crack);
}

static double line(lw_pressure_view *v, double y_mm, lw_pen pen, const char *letter, const char *words) {
  double wide = v->s.width_mm - 2.0 * LW_MARGIN_MM - WORDS_MM, middle = y_mm + 0.55 * LW_LINE_MM;
  lw_xy_mm stroke[] = {{LW_MARGIN_MM, middle}, {LW_MARGIN_MM + STROKE_MM, middle}};
  lw_drawing_line(v->s.paper, pen, stroke, 2);
  lw_drawing_words(v->s.paper, (lw_xy_mm){LW_MARGIN_MM + STROKE_MM + 1.2, middle + 0.35 * LW_SMALL_MM},
                   LW_ANCHOR_START, LW_SMALL_MM, "%s", letter);
  lw_drawing_bold(v->s.paper);
  return lw_sketch_wrap(v->s.paper, (lw_xy_mm){LW_MARGIN_MM + WORDS_MM, y_mm}, wide, LW_SMALL_MM, false,
                        words);
}

/* A method and its namesake where the soil resists share a line. */
static double ways(lw_pressure_view *v, double y_mm) {
  static const char *const ADDED[] = {[LW_WAY_RANKINE] = ", upright plane",
                                      [LW_WAY_WEDGE] = ", in steps: what each strip of depth adds",
                                      [LW_WAY_AT_REST] = ", upright plane"};
  for (int i = LW_WAY_RANKINE; i <= LW_WAY_AT_REST; i++) {
    char active[300], passive[300] = "", words[700];
    const char *added = ADDED[i] != NULL ? ADDED[i] : "";
    say_state(v, (lw_way)i, active, sizeof active);
    if (i < LW_WAY_AT_REST) say_state(v, (lw_way)(i + LW_WAY_PASSIVE_RANKINE), passive, sizeof passive);
    lw_print(words, sizeof words, "%s%s: %s%s%s", lw_way_title((lw_way)i), added, active,
             passive[0] ? "; " : "", passive);
    y_mm = line(v, y_mm, lw_way_pen((lw_way)i), lw_way_letter((lw_way)i), words);
  }
  return y_mm;
}

static double loads(lw_pressure_view *v, double y_mm) {
  const lw_plane *back = &v->d->asked.back;
  const lw_diagram_way *coulomb = &v->d->way[LW_WAY_COULOMB];
  char words[200];
  if (back->surcharge_kpa > 0.0 && coulomb->known) {
    lw_print(words, sizeof words, "of the uniform load, by Coulomb: %s of its thrust, level",
             lw_pressure_push(v, coulomb->thrust.surcharge_kn_per_m * cos(coulomb->thrust.angle_rad)).text);
    y_mm = line(v, y_mm, LW_PEN_FINE, "q", words);
  }
  for (int i = 0; v->d->loads_by != LW_LOAD_PRESSURE_WEDGE && i < back->load_count; i++) {
    char letter[8], name[24];
    lw_load_letter(v->d, i, letter, sizeof letter);
    lw_print(words, sizeof words, "%s, %s: %s, %s above the foot",
             lw_diagram_load_name(v->d, i, name, sizeof name), lw_load_theory_title(v->d->loads_by),
             lw_pressure_push(v, v->d->loads.load[i].push_kn_per_m).text,
             lw_metres(v->page->units, v->d->loads.load[i].height_m, 2).text);
    y_mm = line(v, y_mm, lw_load_pen(i), letter, words);
  }
  if (back->water_depth_m < back->height_m) {
    lw_print(words, sizeof words, "water: %s", lw_pressure_push(v, v->d->water_kn_per_m).text);
    y_mm = line(v, y_mm, LW_PEN_FORCE, "w", words);
  }
  return y_mm;
}

double lw_pressure_legend(lw_pressure_view *v, double y_mm) {
  static const char ALL[] = "Each figure is the level part of a thrust, the area under its line%s. This "
                            "drawing is no design and no approval.%s";
  static const char WALL[] = " The wall is as built: no person, no earthquake, no rain on its way out, no "
                             "partial factor. Passive is what this ground would resist with if the wall were "
                             "pushed into it; no check counts that.";
  double wide = v->s.width_mm - 2.0 * LW_MARGIN_MM;
  const lw_seismic *quake = &v->d->asked.back.seismic;
  bool shaken = quake->horizontal > 0.0 || fabs(quake->vertical) > 0.0;
  char words[560];
  lw_print(words, sizeof words, ALL,
           shaken ? "; what the earthquake adds is in the figure and in no line" : "",
           v->page->headline[0] ? WALL : "");
  y_mm = ways(v, y_mm);
  y_mm = loads(v, y_mm + 1.0);
  return lw_sketch_wrap(v->s.paper, (lw_xy_mm){LW_MARGIN_MM, y_mm + 1.0}, wide, LW_SMALL_MM, false, words);
}
