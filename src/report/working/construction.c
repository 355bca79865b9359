/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "run/again.h"
#include "working.h"

/* The working of the wall while it is built, and of the narrow bed. */

static void number(lw_number n, char *out, size_t size) {
  lw_page_number(n, out, size);
}

static void course_row(const lw_page *page, const lw_construction_course *c) {
  char slides[24], tilts[24], lower[24] = "-", at[24] = "", kind[24] = "";
  number(c->sliding.has, slides, sizeof slides);
  number(c->tilting.has, tilts, sizeof tilts);
  if (c->has_lower) {
    number(c->lower.has, lower, sizeof lower);
    lw_check_print_at(&c->lower, at, sizeof at);
    lw_print(kind, sizeof kind, "%s", lw_check_slug(c->lower.kind));
  }
  lw_page_rowf(page, LW_TONE_PLAIN, "  |%6d|%9.3f|%9.3f|%8.3f|%9s|%9s|%9s  |%s |%s", c->course,
               lw_tell_in(page->units, "m", c->height_m),
               lw_tell_in(page->units, "kN/m", c->push.thrust_kn_per_m),
               lw_tell_in(page->units, "m", c->push.height_m), slides, tilts, lower, at, kind);
}

static void courses(const lw_page *page, const lw_construction *g) {
  char slides[24], tilts[24];
  lw_page_blank(page);
  lw_page_part(page, "Each course newly laid, the plant touching; below it the worst of the older contacts");
  bool us = page->units == LW_UNITS_US;
  lw_page_headf(page, "  |%6s|%9s|%9s|%8s|%9s|%9s|%9s  |%s |%s", "course", us ? "fill ft" : "fill m",
                us ? "P lb/ft" : "P kN/m", us ? "at ft" : "at m", "sliding", "tilting", "below", "", "");
  for (int i = 0; i < g->course_count; i++) course_row(page, &g->course[i]);
  number(g->course[g->worst].sliding.needs, slides, sizeof slides);
  number(g->course[g->worst].tilting.needs, tilts, sizeof tilts);
  lw_page_sayf(page, "  ", "Asked, as of an unusual case: %s on sliding, %s on tilting.", slides, tilts);
}

static void stand_off(const lw_page *page, const char *name, const lw_stand_off *s) {
  if (s->distance_m.known)
    lw_page_sayf(page, "  ", "It just holds with the %s at xp = %s; on site %s.", name,
                 lw_tell_amount(page->units, "m", s->distance_m.value, 3).text,
                 lw_tell_amount(page->units, "m", s->keep_m.value, 2).text);
  else
    lw_page_sayf(page, "  ", "%s: %s.", name, lw_reason_sentence(s->reason));
}

static void stand_offs(const lw_page *page, const lw_construction *g) {
  stand_off(page, g->plant.name[0] ? g->plant.name : "plant", &g->stand_off);
  stand_off(page, g->hand.name, &g->hand_stand_off);
}

void lw_working_construction(const lw_page *page, const lw_result *result) {
  const lw_construction *g = &result->construction;
  if (!g->studied) return;
  lw_page_heading(page, "While it is built");
  lw_page to = *page;
  lw_working working = lw_page_working(&to);
  lw_again_study(result, LW_STUDY_CONSTRUCTION, &working);
  courses(page, g);
  stand_offs(page, g);
  lw_page_sayf(
      page, "  ",
      "What compaction leaves on the whole wall, beyond the earth that has yielded, is not added to the "
      "wall's push: a wall that gives way by %s has shed it [LR946 abstract].",
      page->units == LW_UNITS_US ? "a fiftieth of an inch" : "half a millimetre");
}

static void narrow_row(const lw_page *page, lw_narrow_method method, const lw_narrow_value *v) {
  if (!v->known)
    lw_page_sayf(page, "  ", "%s: %s.", lw_narrow_slug(method), lw_reason_sentence(v->reason));
  else
    lw_page_rowf(page, LW_TONE_PLAIN, "  |%-18s|%8.4f|%10.3f|%10.3f|%9.3f|%9.3f", lw_narrow_slug(method),
                 v->coefficient, lw_tell_in(page->units, "kPa", v->foot_kpa),
                 lw_tell_in(page->units, "kN/m", v->push.thrust_kn_per_m), v->share, v->height_share);
}

void lw_working_narrow(const lw_page *page, const lw_result *result) {
  const lw_narrow *n = &result->narrow;
  bool us = page->units == LW_UNITS_US;
  lw_page to = *page;
  lw_working working = lw_page_working(&to);
  if (!n->shown) return;
  lw_page_heading(page, "The narrow bed: published values, never counted");
  lw_page_sayf(page, "  ",
               "The bed is Bn = %s wide between its faces; the wedge wants hn tan(45 - phi/2) = %s.",
               lw_tell_amount(page->units, "m", n->bed_width_m, 3).text,
               lw_tell_amount(page->units, "m", n->wedge_width_m, 3).text);
  lw_again_study(result, LW_STUDY_NARROW, &working);
  lw_page_headf(page, "  |%-18s|%8s|%10s|%10s|%9s|%9s", "what comes of them", "K",
                us ? "foot psf" : "foot kPa", us ? "P lb/ft" : "P kN/m", "share", "at hn");
  for (int i = 0; i < LW_NARROW_COUNT; i++) narrow_row(page, (lw_narrow_method)i, &n->value[i]);
  if (!n->raised_known) return;
  lw_page_sayf(page, "  ",
               "Arching can bring the push up to 0.42 of the height [HANDY1985 abstract]: at %s "
               "overturning, as built, has "
               "%.2f instead of %.2f. It does not decide.",
               lw_tell_amount(page->units, "m", n->raised_height_m, 3).text, n->raised.has.value,
               n->overturning.has.value);
}
