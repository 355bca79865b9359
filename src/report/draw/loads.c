/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "base/print.h"
#include "sketch.h"

/* What stands on the ground behind and on the cap, by the number it has on the sheet. */

/* Arrows down on the ground, their feet on a line. */
static void rain(lw_sketch *s, double from_m, double to_m, double long_mm) {
  static const double EVERY_MM = 5.0;
  lw_xy_mm a = lw_sketch_at(s, from_m, lw_sketch_ground_behind(s, from_m));
  lw_xy_mm b = lw_sketch_at(s, to_m, lw_sketch_ground_behind(s, to_m));
  int gaps = (int)fmax(1.0, floor((b.x_mm - a.x_mm) / EVERY_MM));
  for (int i = 0; i <= gaps; i++) {
    double share = (double)i / gaps, x = from_m + share * (to_m - from_m);
    lw_xy_mm foot = lw_sketch_at(s, x, lw_sketch_ground_behind(s, x));
    lw_drawing_arrow(s->paper, LW_PEN_SEEN, (lw_xy_mm){foot.x_mm, foot.y_mm - long_mm}, foot);
  }
  lw_xy_mm tops[] = {{a.x_mm, a.y_mm - long_mm}, {b.x_mm, b.y_mm - long_mm}};
  lw_drawing_line(s->paper, LW_PEN_SEEN, tops, 2);
}

static void single(lw_sketch *s, double x_m, double y_m, double long_mm) {
  lw_xy_mm foot = lw_sketch_at(s, x_m, y_m);
  lw_drawing_arrow(s->paper, LW_PEN_FORCE, (lw_xy_mm){foot.x_mm, foot.y_mm - long_mm}, foot);
}

/* "load 2 (pallet)" */
static void name_of(const lw_sketch *s, const lw_site_load *load, char *name, size_t size) {
  const char *given = s->result->given.load[load->number - 1].name.text;
  lw_print(name, size, given[0] ? "load %d (%.40s)" : "load %d", load->number, given);
}

static void on_cap(lw_sketch *s, const lw_site_load *load, const char *name) {
  static const double SINGLE_MM = 9.0;
  const lw_section *section = &s->result->wall.section;
  lw_corner crest = section->crest;
  double x = 0.5 * (section->cap_front_m + crest.x_m), up = 5.5 / s->mm_per_m;
  if (load->force > 0.0) single(s, x, crest.y_m, SINGLE_MM);
  if (load->push > 0.0) {
    lw_xy_mm foot = lw_sketch_at(s, x, crest.y_m);
    lw_drawing_arrow(s->paper, LW_PEN_FORCE, foot, (lw_xy_mm){foot.x_mm - SINGLE_MM, foot.y_mm});
    lw_sketch_note(s, crest.x_m, crest.y_m + up, "%s on the cap, %s down and %s outward", name,
                   lw_sketch_amount(s, LW_KIND_LINE_LOAD, load->force, 1).text,
                   lw_sketch_figure(s, LW_KIND_LINE_LOAD, load->push, 2).text);
  } else {
    lw_sketch_note(s, crest.x_m, crest.y_m + up, "%s on the cap, %s", name,
                   lw_sketch_amount(s, LW_KIND_LINE_LOAD, load->force, 1).text);
  }
}

/* Its size and place, as the sheet has them. */
static void size_of(const lw_sketch *s, const lw_site_load *load, char *words, size_t size) {
  lw_kind kind = load->kind == LW_LOAD_POINT ? LW_KIND_FORCE : LW_KIND_LINE_LOAD;
  bool us = s->result->units == LW_UNITS_US; /* feet and inches are no figure with one unit behind it */
  lw_amount near =
      us ? lw_sketch_m(s, load->near_m, 2) : lw_sketch_figure(s, LW_KIND_LENGTH, load->near_m, 2);
  if (load->kind == LW_LOAD_STRIP)
    lw_print(words, size, "%s from %s to %s behind the top",
             lw_sketch_amount(s, LW_KIND_PRESSURE, load->pressure_kpa, 1).text, near.text,
             lw_sketch_m(s, load->far_m, 2).text);
  else
    lw_print(words, size, "%s, %s behind the top", lw_sketch_amount(s, kind, load->force, 1).text,
             lw_sketch_m(s, load->near_m, 2).text);
}

static void behind(lw_sketch *s, const lw_site_load *load, const char *name) {
  static const double STRIP_MM = 6.5, SINGLE_MM = 9.0;
  double crest = s->result->wall.section.crest.x_m, up = (STRIP_MM + 2.8) / s->mm_per_m;
  double near = crest + load->near_m, far = fmin(crest + load->far_m, s->right_m);
  char words[120];
  size_of(s, load, words, sizeof words);
  if (near >= s->right_m - 1e-6 && s->in_page) return;
  if (near >= s->right_m - 1e-6) {
    double edge = s->right_m - 1.0 / s->mm_per_m;
    lw_sketch_note(s, edge, lw_sketch_ground_behind(s, edge), "%s, %s: out of the picture", name, words);
    return;
  }
  if (load->kind == LW_LOAD_STRIP)
    rain(s, near, far, STRIP_MM);
  else
    single(s, near, lw_sketch_ground_behind(s, near), SINGLE_MM);
  lw_sketch_note(s, near, lw_sketch_ground_behind(s, near) + up, "%s, %s", name, words);
}

/* In the case that is drawn the person stands there, and not the load of the planted bed. */
static void person(lw_sketch *sketch) {
  const lw_wall_person *p = &sketch->result->wall.person;
  const lw_site_load load = {
      .kind = LW_LOAD_STRIP, .pressure_kpa = p->pressure_kpa, .near_m = p->near_m, .far_m = p->far_m};
  if (sketch->situation->name == LW_SITUATION_PERSON_AT_EDGE) behind(sketch, &load, "one person");
}

static double uniform_kpa(const lw_sketch *sketch) {
  const lw_wall *wall = &sketch->result->wall;
  bool stood_on = sketch->situation->name == LW_SITUATION_PERSON_AT_EDGE;
  return wall->site.surcharge_kpa - (stood_on ? wall->person.planted_kpa : 0.0);
}

void lw_sketch_loads(lw_sketch *sketch) {
  static const double UNIFORM_MM = 4.0;
  const lw_site *site = &sketch->result->wall.site;
  double uniform = uniform_kpa(sketch);
  double start = sketch->situation->base.back.ground_x_m, up = 6.6 / sketch->mm_per_m;
  person(sketch);
  if (uniform > 0.0) {
    double end = lw_sketch_pair_above(sketch) ? lw_sketch_pair_m(sketch) : sketch->right_m;
    if (end > start) rain(sketch, start, end, UNIFORM_MM);
    double x = end - fmin(8.0 / sketch->mm_per_m, 0.5 * (end - start));
    lw_sketch_note(sketch, x, lw_sketch_ground_behind(sketch, x) + up, "load all over the ground behind, %s",
                   lw_sketch_amount(sketch, LW_KIND_PRESSURE, uniform, 1).text);
  }
  for (int i = 0; i < site->load_count; i++) {
    char name[80];
    if (site->load[i].other_wall) continue; /* drawn as the wall that it is */
    name_of(sketch, &site->load[i], name, sizeof name);
    if (site->load[i].kind == LW_LOAD_CAP)
      on_cap(sketch, &site->load[i], name);
    else
      behind(sketch, &site->load[i], name);
  }
}
