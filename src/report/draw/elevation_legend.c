/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>
#include <string.h>

#include "base/print.h"
#include "elevation.h"
#include "hatch.h"

/* What the elevation's pieces and lines mean, and the list of cuts. */

static const double SAMPLE_MM = 8.0, HIGH_MM = 3.2;

/* The words beside a sample. gives y below both */
static double said(lw_elevation *e, double y_mm, const char *words) {
  double left = LW_MARGIN_MM + SAMPLE_MM + 2.0;
  double y = lw_sketch_wrap(e->s.paper, (lw_xy_mm){left, y_mm}, e->s.width_mm - left - LW_MARGIN_MM,
                            LW_SMALL_MM, false, words);
  return fmax(y, y_mm + HIGH_MM) + 0.9;
}

static lw_box sample_box(double y_mm) {
  return (lw_box){LW_MARGIN_MM, y_mm, LW_MARGIN_MM + SAMPLE_MM, y_mm + HIGH_MM};
}

/* As it is sawn: two from one block. */
static double half_length(const lw_elevation *e) {
  const lw_plan *plan = &e->order->plan;
  const lw_case_order *o = &e->s.result->given.order;
  double kerf = o->half_unit.value == LW_HALF_CUT ? o->saw_kerf.si : 0.0;
  return fmin(plan->module_m / 2.0 - plan->gap_m, 0.5 * (plan->unit_m - kerf));
}

static double pieces(lw_elevation *e, double y_mm) {
  static const char *const WORDS[] = {
      [LW_PIECE_WHOLE] = "whole block",
      [LW_PIECE_HALF] = "half block",
      [LW_PIECE_CUT] = "cut piece; its letter stands in the list below",
      [LW_PIECE_MITRED] = "block cut on the mitre of a corner; its letter stands in the list below",
      [LW_PIECE_HANDED] = "left or right unit of a corner",
      [LW_PIECE_HEAD] = "end of the other run's block at a corner"};
  const lw_plan *plan = &e->order->plan;
  bool cut_told = false;
  for (int kind = 0; kind <= LW_PIECE_HEAD; kind++) {
    bool cut = kind == LW_PIECE_CUT || kind == LW_PIECE_MITRED;
    char words[120];
    if (!e->seen[kind] || (cut && cut_told)) continue;
    cut_told = cut_told || cut;
    lw_box box = sample_box(y_mm);
    lw_elevation_piece(e->s.paper, (lw_piece_kind)kind, &box);
    double length = kind == LW_PIECE_HALF ? half_length(e) : plan->unit_m;
    lw_print(words, sizeof words, "%s", WORDS[kind]);
    if (kind <= LW_PIECE_HALF)
      lw_print(words, sizeof words, "%s, %s long", WORDS[kind], lw_sketch_mm(&e->s, length).text);
    y_mm = said(e, y_mm, words);
  }
  return y_mm;
}

static double band(lw_elevation *e, double y_mm, lw_hatch hatch, lw_fill fill, const char *words) {
  lw_box b = sample_box(y_mm);
  lw_xy_mm c[] = {
      {b.left_mm, b.top_mm}, {b.right_mm, b.top_mm}, {b.right_mm, b.bottom_mm}, {b.left_mm, b.bottom_mm}};
  lw_drawing_area(e->s.paper, LW_PEN_NONE, fill, c, 4);
  lw_drawing_hatch(e->s.paper, hatch, c, 4);
  lw_drawing_area(e->s.paper, LW_PEN_SEEN, LW_FILL_NONE, c, 4);
  return said(e, y_mm, words);
}

static double ground(lw_elevation *e, double y_mm) {
  const lw_plan *plan = &e->order->plan;
  bool steps = plan->step_count > 0 && !plan->falls;
  lw_xy_mm line[] = {{LW_MARGIN_MM, y_mm + 0.5 * HIGH_MM}, {LW_MARGIN_MM + SAMPLE_MM, y_mm + 0.5 * HIGH_MM}};
  char words[160];
  lw_drawing_line(e->s.paper, LW_PEN_CUT, line, 2);
  lw_print(words, sizeof words, "ground in front, %s above the lowest base%s",
           lw_sketch_mm(&e->s, e->ground_m).text,
           plan->falls ? " at its low end"
           : steps     ? "; where the base is raised its level is not given, and not drawn"
                       : "");
  return said(e, y_mm, words);
}

static double layers(lw_elevation *e, double y_mm) {
  char words[120];
  if (e->cap_m > 0.0) {
    lw_print(words, sizeof words, "caps, %s high%s", lw_sketch_mm(&e->s, e->cap_m).text,
             e->cap_cut ? "; the hatched ones are sawn: `lowwall order` has their lengths and mitres" : "");
    y_mm = band(e, y_mm, LW_HATCH_NONE, LW_FILL_PAPER, words);
  }
  if (e->bedding_m > 0.0) {
    lw_print(words, sizeof words, "bedding, %s", lw_sketch_mm(&e->s, e->bedding_m).text);
    y_mm = band(e, y_mm, LW_HATCH_SAND, LW_FILL_PAPER, words);
  }
  if (e->pad_m > 0.0) {
    lw_print(words, sizeof words, "compacted stone pad, %s", lw_sketch_mm(&e->s, e->pad_m).text);
    y_mm = band(e, y_mm, LW_HATCH_PAD, LW_FILL_PAPER, words);
  }
  return ground(e, y_mm);
}

static void cut_words(const lw_sketch *s, const lw_cut *c, char *words, size_t size) {
  const char *base = c->base_unit ? ", base unit" : "";
  if (c->kind == LW_CUT_CLOSER)
    lw_print(words, size, "%s: %d%s", lw_sketch_mm(s, c->long_m).text, c->count, base);
  else
    lw_print(words, size, "long edge %s, short edge %s, saw %.1f deg: %d%s", lw_sketch_mm(s, c->long_m).text,
             lw_sketch_mm(s, c->short_m).text, c->saw_deg, c->count, base);
}

/* Each where the words before it end, or on a new line: name, length, how many. */
static double cuts(lw_elevation *e, double y_mm) {
  static const double NAME_MM = 5.5, APART_MM = 4.0, UP_MM = 0.214; /* words on the line of the name */
  double x = LW_MARGIN_MM, right = e->s.width_mm - LW_MARGIN_MM;
  int letter = 0;
  for (int i = 0; i < e->order->cut_count; i++) {
    const lw_cut *c = &e->order->cut[i];
    char name[4], words[160];
    if (!lw_elevation_is_lettered(c)) continue;
    if (letter == 0)
      y_mm = lw_sketch_wrap(e->s.paper, (lw_xy_mm){x, y_mm}, right - x, LW_SMALL_MM, false,
                            "Cut pieces, each with its length and how many:");
    lw_elevation_letter(letter++, name);
    cut_words(&e->s, c, words, sizeof words);
    double wide = NAME_MM + lw_drawing_text_width(words, LW_SMALL_MM) + APART_MM;
    if (x > LW_MARGIN_MM && x + wide > right) {
      x = LW_MARGIN_MM;
      y_mm += LW_LINE_MM;
    }
    lw_drawing_words(e->s.paper, (lw_xy_mm){x, y_mm + 2.3}, LW_ANCHOR_START, LW_SMALL_MM, "%s", name);
    lw_drawing_bold(e->s.paper);
    double low = lw_sketch_wrap(e->s.paper, (lw_xy_mm){x + NAME_MM, y_mm - UP_MM}, right - x - NAME_MM,
                                LW_SMALL_MM, false, words);
    y_mm = fmax(y_mm, low + UP_MM - LW_SMALL_MM * LW_LINE_MM / LW_BODY_MM);
    x += wide;
  }
  return letter > 0 ? y_mm + LW_LINE_MM + 0.9 : y_mm;
}

/* Every course whose joints stand too near those below, and the least of them. */
static double overlap(lw_elevation *e, double y_mm) {
  const lw_order *o = e->order;
  lw_text words = {0}, which = {0};
  int worst = o->overlap_fails_at - 1, count = 0;
  if (worst < 0) return y_mm;
  for (int i = worst; i < o->plan.courses; i++) {
    const lw_course_count *c = &o->course[i];
    if (!c->overlap_known || c->overlap_m > o->overlap_needs_m - 0.001) continue;
    lw_text_addf(&which, " %d", i + 1);
    count++;
    if (c->overlap_m < o->course[worst].overlap_m) worst = i;
  }
  lw_text_addf(
      &words,
      "Joints stand too near those below in course%s%s: %s of overlap in course %d on run %d; %s are wanted.",
      count == 1 ? "" : "s", which.data ? which.data : "",
      lw_sketch_mm(&e->s, o->course[worst].overlap_m).text, worst + 1, o->course[worst].overlap_run,
      lw_sketch_mm(&e->s, o->overlap_needs_m).text);
  if (words.failed || which.failed)
    e->s.paper->failed = true;
  else
    y_mm = lw_sketch_wrap(e->s.paper, (lw_xy_mm){LW_MARGIN_MM, y_mm}, e->s.width_mm - 2.0 * LW_MARGIN_MM,
                          LW_SMALL_MM, true, words.data);
  lw_text_free(&which);
  lw_text_free(&words);
  return y_mm + 0.9;
}

double lw_elevation_legend(lw_elevation *e, double y_mm) {
  y_mm = lw_elevation_untold(e, y_mm);
  if (e->order->plan.solid)
    y_mm = band(e, y_mm, LW_HATCH_NONE, LW_FILL_PAPER,
                "face of the wall: stone or concrete, no blocks are counted");
  y_mm = pieces(e, y_mm);
  y_mm = layers(e, y_mm);
  y_mm = cuts(e, y_mm);
  return overlap(e, y_mm);
}
