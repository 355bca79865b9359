/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "construction.h"

#include "parts.h"

/* The wall while it is built, and the narrow bed, as figures. */

static const char INGOLD[] = "[INGOLD-1979 29(3)]";

void lw_figures_of_plant(const lw_figures *b, const lw_plant *p) {
  lw_figures_put(b, &(lw_figure_word){"mass_kg", "mass of the plant", "kg", ""}, p->mass_kg);
  lw_figures_put(b, &(lw_figure_word){"force_kn", "its dynamic force", "kN", ""}, p->force_kn);
  lw_figures_put(b, &(lw_figure_word){"width_m", "its contact along the wall", "m", ""}, p->width_m);
  lw_figures_put(b, &(lw_figure_word){"layer_m", "thickest layer that it compacts", "m", ""}, p->layer_m);
  lw_figures_put(b, &(lw_figure_word){"line_load_kn_per_m", "weight and force along the wall", "kN/m", ""},
                 p->line_load_kn_per_m);
}

static void of_check(const lw_figures *b, const char *name, const lw_check *check) {
  const struct {
    const char *tail, *label;
    lw_number value;
  } all[] = {{"has", "resistance over demand", check->has},
             {"needs", "what is asked", check->needs},
             {"ratio", "has over needs", check->ratio}};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++) {
    char tail[40];
    lw_print(tail, sizeof tail, "%s_%s", name, all[i].tail);
    lw_figures_put_number(b, &(lw_figure_word){tail, all[i].label, "", ""}, all[i].value, check->reason);
  }
}

void lw_figures_of_construction_course(const lw_figures *b, const lw_construction_course *c) {
  lw_figures_put(b, &(lw_figure_word){"fill_m", "fill against the course", "m", ""}, c->height_m);
  lw_figures_put(b, &(lw_figure_word){"push_kn_per_m", "push with the plant touching", "kN/m", INGOLD},
                 c->push.thrust_kn_per_m);
  lw_figures_put(b, &(lw_figure_word){"push_height_m", "height of that push", "m", INGOLD}, c->push.height_m);
  lw_figures_put(b, &(lw_figure_word){"earth_kn_per_m", "push of the layer of earth alone", "kN/m", ""},
                 c->earth.thrust_kn_per_m);
  of_check(b, "sliding", &c->sliding);
  of_check(b, "tilting", &c->tilting);
  if (c->has_lower) of_check(b, "lower", &c->lower);
}

static void of_stand_off(const lw_figures *b, const char *name, const lw_stand_off *s) {
  char tail[40];
  lw_print(tail, sizeof tail, "%sstand_off_m", name);
  lw_figures_put_number(b, &(lw_figure_word){tail, "distance at which it just holds", "m", ""}, s->distance_m,
                        s->reason);
  lw_print(tail, sizeof tail, "%skeep_m", name);
  lw_figures_put_number(b, &(lw_figure_word){tail, "distance to keep on site", "m", ""}, s->keep_m,
                        s->reason);
}

void lw_figures_of_construction_itself(const lw_figures *b, const lw_construction *g) {
  const lw_compaction_diagram *d = &g->course[g->worst].diagram;
  if (!g->studied) return;
  lw_figures_put(b, &(lw_figure_word){"coefficient", "coefficient of the fill", "", ""}, d->coefficient);
  lw_figures_put(b, &(lw_figure_word){"zc_m", "depth to which the pressure grows", "m", INGOLD}, d->zc_m);
  lw_figures_put(b, &(lw_figure_word){"hc_m", "depth from which the earth presses more", "m", INGOLD},
                 d->hc_m);
  lw_figures_put(b, &(lw_figure_word){"greatest_kpa", "pressure between the two", "kPa", INGOLD},
                 d->greatest_kpa);
  lw_figures_put(b, &(lw_figure_word){"layer_m", "layers to fill in", "m", ""}, g->layer_m);
  lw_figures_put(b, &(lw_figure_word){"layers", "layers to a course", "", ""}, (double)g->layers);
  lw_figures_put(b, &(lw_figure_word){"layer_most_m", "thickest layer for it here", "m", ""},
                 g->layer_most_m);
  lw_figures_put(b, &(lw_figure_word){"hand_layer_most_m", "thickest layer for the hand rammer", "m", ""},
                 g->hand_layer_most_m);
  of_stand_off(b, "", &g->stand_off);
  of_stand_off(b, "hand_", &g->hand_stand_off);
  lw_figures_put(
      b, &(lw_figure_word){"whole_kn_per_m", "on the whole wall, had nothing given way", "kN/m", INGOLD},
      g->whole.thrust_kn_per_m);
  lw_figures_put(b, &(lw_figure_word){"whole_height_m", "height of that push", "m", INGOLD},
                 g->whole.height_m);
  lw_figures_put(b, &(lw_figure_word){"settled_kn_per_m", "active earth alone, once it has", "kN/m", ""},
                 g->yielded.thrust_kn_per_m);
  if (!g->distance_m.known) return;
  lw_figures_put(b, &(lw_figure_word){"distance_m", "distance at which the plant will run", "m", ""},
                 g->distance_m.value);
  of_check(b, "distance", &g->at_distance);
}

void lw_figures_of_construction(const lw_figures *figures) {
  const lw_construction *g = &figures->result->construction;
  lw_figures b = lw_figures_below(figures, "building"), plant = lw_figures_below(&b, "plant");
  lw_figures hand = lw_figures_below(&b, "hand");
  lw_figures_of_plant(&plant, &g->plant);
  lw_figures_of_plant(&hand, &g->hand);
  lw_figures_of_construction_itself(&b, g);
  for (int i = 0; g->studied && i < g->course_count; i++) {
    char part[24];
    lw_print(part, sizeof part, "course-%d", i + 1);
    lw_figures of = lw_figures_below(&b, part);
    lw_figures_of_construction_course(&of, &g->course[i]);
  }
}

void lw_figures_of_narrow_value(const lw_figures *b, const lw_narrow_value *v) {
  const struct {
    lw_figure_word word;
    double value;
  } all[] = {{{"coefficient", "level over upright stress", "", ""}, v->coefficient},
             {{"foot_kpa", "pressure at the foot", "kPa", ""}, v->foot_kpa},
             {{"push_kn_per_m", "push of the soil's weight", "kN/m", ""}, v->push.thrust_kn_per_m},
             {{"push_height_m", "its height above the foot", "m", ""}, v->push.height_m},
             {{"share", "of the triangle with the same coefficient", "", ""}, v->share},
             {{"height_share", "its height over that of the wall", "", ""}, v->height_share}};
  for (size_t i = 0; i < sizeof all / sizeof *all; i++)
    lw_figures_put_number(b, &all[i].word, (lw_number){all[i].value, v->known}, v->reason);
}

void lw_figures_of_narrow_itself(const lw_figures *b, const lw_narrow *n) {
  if (!n->shown) return;
  lw_figures_put(b, &(lw_figure_word){"bed_width_m", "width of the bed", "m", ""}, n->bed_width_m);
  lw_figures_put(b, &(lw_figure_word){"wedge_width_m", "width that the ordinary wedge wants", "m", ""},
                 n->wedge_width_m);
  lw_figures_put(b, &(lw_figure_word){"height_m", "height of the soil", "m", ""}, n->height_m);
  lw_figures_put(b, &(lw_figure_word){"friction_deg", "friction of the weakest soil", "deg", ""},
                 n->friction_rad * LW_DEG_PER_RAD);
  lw_figures_put(b, &(lw_figure_word){"wall_friction_deg", "friction of both faces", "deg", ""},
                 n->wall_friction_rad * LW_DEG_PER_RAD);
  if (!n->raised_known) return;
  lw_figures_put(b, &(lw_figure_word){"raised_height_m", "the push of the soil put at 0.42 H", "m", ""},
                 n->raised_height_m);
  of_check(b, "overturning", &n->overturning);
  of_check(b, "raised", &n->raised);
}

void lw_figures_of_narrow(const lw_figures *figures) {
  const lw_narrow *n = &figures->result->narrow;
  lw_figures b = lw_figures_below(figures, "narrow");
  lw_figures_of_narrow_itself(&b, n);
  for (int i = 0; n->shown && i < LW_NARROW_COUNT; i++) {
    lw_figures of = lw_figures_below(&b, lw_narrow_slug((lw_narrow_method)i));
    lw_figures_of_narrow_value(&of, &n->value[i]);
  }
}
