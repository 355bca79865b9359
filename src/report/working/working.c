/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "working.h"
#include "symbols.h"

#include <math.h>
#include <stdlib.h>

#include "balance/weigh.h"
#include "report/text/parts.h"
#include "run/again.h"

/* The working of a whole wall: a student follows it with a pencil. */

static void body(const lw_page *page, const lw_result *result, const lw_situation *s, const lw_free_body *of,
                 lw_shown place) {
  static const char *const titles[] = {
      [LW_AT_BASE] = "Base, moments about the toe",
      [LW_AT_PAD] = "Underside of the pad, moments about the front of the base, at the pad's underside",
      [LW_AT_JOINT] = "The joint above course %d, moments about its front edge",
      [LW_AT_CAP] = "Cap, moments about its front edge"};
  char title[96];
  lw_print(title, sizeof title, titles[place.at], place.joint);
  if (of->status != LW_OK) {
    if (of->reason != LW_REASON_NO_PAD)
      lw_page_sayf(page, "  ", "%s: %s.", title, lw_reason_sentence(of->reason));
    return;
  }
  lw_page_blank(page);
  lw_page_part(page, title);
  lw_working_moments(page, result, of, place);
  lw_working_contact(page, result, s, of, place);
  lw_working_written(page, result, s, of, place);
}

/* A working as it is written, and the symbols that it has used so far. */
typedef struct writing {
  const lw_page *page;
  size_t from; /* what stands behind it is not noted yet */
  lw_symbols_used symbols;
} writing;

/* Of the joints the one that matters most is worked out in full. */
static int worst_joint(const lw_situation *s) {
  lw_check worst = {.joint = 0};
  for (int i = 0; i < s->check_count; i++) {
    lw_check check = lw_situation_check(s, i);
    bool joint = check.at == LW_AT_JOINT && check.ratio.known;
    if (joint && (worst.joint == 0 || lw_check_graver(&check, &worst))) worst = check;
  }
  return worst.joint;
}

static void joint_in_full(const lw_page *page, const lw_result *result, const lw_situation *s, int joint) {
  const lw_section *section = &result->wall.section;
  bool under_cap = section->has_cap && joint == section->course_count;
  lw_free_body *full = malloc(sizeof *full);
  if (full == NULL) {
    page->out->failed = true;
    return;
  }
  lw_again_joint(result, s, joint, full);
  body(page, result, s, full, (lw_shown){under_cap ? LW_AT_CAP : LW_AT_JOINT, joint});
  free(full);
}

/* The one nearest to its limit, or every one and the cap. */
static void joints_in_full(const lw_page *page, const lw_result *result, const lw_situation *s) {
  int worst = worst_joint(s);
  for (int joint = 1; joint <= s->joint_count; joint++)
    if (page->style.every_joint || joint == worst) joint_in_full(page, result, s, joint);
}

/* With partial factors the forces below are design values. */
static void factors(const lw_page *page, const lw_situation *s) {
  const lw_factors *f = &s->load_case.actions.factors;
  const lw_factor_row *set = s->load_case.set;
  if (!f->factored) return;
  lw_page_blank(page);
  lw_page_sayf(
      page, "  ",
      "The set %s governs here (%s). Each force below is multiplied by the factor of its source: weight of "
      "the wall %.2f, soil standing on it %.2f, push of the soil %.2f, water behind and uplift %.2f, "
      "water in front %.2f, push of the load behind %.2f, load standing on the wall %.2f, people and "
      "loads on the cap %.2f.",
      set ? set->factor_set : "", set ? set->title : "", f->wall_weight, f->soil_weight, f->earth_pressure,
      f->water, f->front_water, f->variable, f->surcharge_on_wall, f->variable_on_wall);
}

/* What was put on the page since a place in it uses these symbols, in a part of the working. */
static void note(writing *w, lw_symbol_part part) {
  const lw_text *kept = w->page->out;
  if (kept->length > w->from)
    lw_symbols_note(&w->symbols, part, (lw_span){kept->data + w->from, kept->length - w->from});
  w->from = kept->length;
}

static void storm(writing *w, const lw_result *result) {
  note(w, LW_SYMBOLS_BODY);
  lw_working_storm(w->page, &result->storm);
  note(w, LW_SYMBOLS_STORM);
}

static void situation(writing *w, const lw_result *result, const lw_situation *s) {
  const lw_page *page = w->page;
  char title[160];
  lw_print(title, sizeof title, "Balance: %s (%s, %s)", lw_situation_sentence(s->name),
           lw_situation_kind_slug(s->kind), s->decides ? "decides" : "does not decide");
  lw_page_heading(page, title);
  char why[LW_SITUATION_WHY_MAX];
  lw_situation_why_words(s->why, result->tables, page->units, why, sizeof why);
  lw_page_sayf(page, "  ", "It %s: %s.", s->decides ? "decides" : "does not decide", why);
  if (s->seeping)
    lw_page_sayf(page, "  ",
                 "Rain seeps to a drain at the back; the water leaves at its foot, %s below the top.",
                 lw_tell_amount(page->units, "m", s->water_depth_m, 3).text);
  else if (isfinite(s->water_depth_m))
    lw_page_sayf(page, "  ", "Water stands %s below the top, behind.",
                 lw_tell_amount(page->units, "m", s->water_depth_m, 3).text);
  if (s->name == LW_SITUATION_PERSON_AT_EDGE) {
    const lw_wall_person *p = &result->wall.person;
    lw_page_sayf(page, "  ",
                 "One person of %s stands from %.2f to %s behind the top, in place of the %s of "
                 "the planted bed.",
                 lw_tell_amount(page->units, "kN", p->force_kn, 2).text,
                 lw_tell_in(page->units, "m", p->near_m), lw_tell_amount(page->units, "m", p->far_m, 2).text,
                 lw_tell_amount(page->units, "kPa", p->planted_kpa, 2).text);
  }
  if (s->name == LW_SITUATION_STORM) storm(w, result);
  factors(page, s);
  lw_working_governs(page, &s->base);
  body(page, result, s, &s->base, (lw_shown){LW_AT_BASE, 0});
  body(page, result, s, &s->pad, (lw_shown){LW_AT_PAD, 0});
  lw_working_joints(page, result, s);
  joints_in_full(page, result, s);
  note(w, LW_SYMBOLS_BODY);
  lw_working_slip(page, result, s);
  note(w, LW_SYMBOLS_SLIP);
  lw_working_checks(page, result, s);
  note(w, LW_SYMBOLS_BODY);
}

static void pushes(const lw_page *page, const lw_result *result) {
  lw_recorder recorder = {.page = *page};
  lw_working working = lw_recorder_working(&recorder);
  lw_again_pushes(result, &working);
  lw_recorder_print(&recorder, page);
  lw_recorder_free(&recorder);
}

/* What stands beside the situations, and decides nothing. */
static void studies(writing *w, const lw_result *result) {
  lw_working_water(w->page, result);
  note(w, LW_SYMBOLS_SEEPAGE);
  lw_working_construction(w->page, result);
  note(w, LW_SYMBOLS_BUILT);
  lw_working_narrow(w->page, result);
  note(w, LW_SYMBOLS_NARROW);
  lw_working_fence(w->page, result);
  note(w, LW_SYMBOLS_FENCE);
}

/* Kept in every form: what it uses is looked up before it is written. */
lw_status lw_report_working(const lw_result *result, const lw_text_style *style, lw_text *out) {
  lw_text kept = {0};
  const lw_page page = {.out = &kept, .style = *style, .units = result->units, .keeps = true};
  writing w = {.page = &page};
  lw_page_headline(&page, LW_TONE_STRONG, result->verdict.headline);
  lw_page_heading(&page, page.units == LW_UNITS_US ? "Working, for one foot run of wall"
                                                   : "Working, for one metre run of wall");
  lw_working_given(&page, result);
  pushes(&page, result);
  lw_working_compared(&page, result);
  note(&w, LW_SYMBOLS_PUSH);
  for (int i = 0; i < result->situations.count; i++) situation(&w, result, &result->situations.situation[i]);
  studies(&w, result);
  lw_text_unchecked(&page, result);
  lw_text_assumed(&page, result, true);
  lw_symbols_put(&page, &w.symbols);
  lw_text_sources_cited(&page, result);
  return lw_page_close(&page, out);
}
