/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "elevation.h"

#include <math.h>
#include <stdlib.h>

#include "base/print.h"

/* The page of the elevation: how many strips at which scale, one below the other, and the legend. */

static const double ABOVE_MM = 11.5, BELOW_MM = 14.0, RIGHT_MM = 3.0;

static void measure(lw_elevation *e) {
  const lw_order *o = e->order;
  const lw_case *c = &e->s.result->given;
  int first = 0;
  for (int i = 0; i < o->stretch_count; i++)
    if (o->stretch[i].first_run % o->plan.run_count == 0) first = i;
  for (int i = 0; i < o->stretch_count; i++) {
    int stretch = (first + i) % o->stretch_count;
    e->begins_m[stretch] = e->length_m;
    e->length_m += o->stretch[stretch].length_m;
  }
  bool pad = c->pad.thickness.origin == LW_GIVEN && c->pad.thickness.si > 0.0;
  e->pad_m = pad ? c->pad.thickness.si : 0.0;
  e->bedding_m = pad ? c->order.bedding_thickness.si : 0.0;
  e->cap_m = o->has_cap && c->courses.cap_height.origin != LW_ABSENT ? c->courses.cap_height.si : 0.0;
  e->ground_m = c->wall.embedment.si;
  e->bottom_m = -e->pad_m - e->bedding_m;
  e->top_m = o->plan.courses * o->plan.course_m + e->cap_m;
  e->both_ends = lw_elevation_ends_differ(e);
  lw_elevation_levels_room(e);
}

/* The end of a part of a stretch that is too long: it is broken off into equal ones, no sliver is left. */
static double broken_off(const lw_elevation *e, double at_m, double room_m) {
  double end = e->length_m;
  for (int i = 0; i < e->order->stretch_count; i++)
    if (lw_elevation_end(e, i) > at_m + 1e-6) end = fmin(end, lw_elevation_end(e, i));
  return at_m + (end - at_m) / ceil((end - at_m) / room_m - 1e-9);
}

/* Whole stretches as long as they fit, a long one broken off. gives their number, one too many if too long */
static int pack(lw_elevation *e, double room_m, int most) {
  double all = e->length_m, at = 0.0;
  int count = 0;
  while (at < all - 1e-6) {
    if (count == most) return most + 1;
    double end = fmin(at + room_m, all), whole = at;
    for (int i = 0; i < e->order->stretch_count; i++)
      if (lw_elevation_end(e, i) <= end + 1e-6) whole = fmax(whole, lw_elevation_end(e, i));
    end = whole > at + 1e-6 ? whole : broken_off(e, at, room_m);
    e->strip[count++] = (lw_face_strip){at, end};
    at = end;
  }
  return count;
}

/* Blocks at least so large on paper that a letter fits on a cut one; or any size. */
static bool choose(lw_elevation *e, double room_mm, bool any_size) {
  static const double LEAST_LONG_MM = 5.0, LEAST_HIGH_MM = 3.2;
  static const int SMALLEST = 2400;
  static const double HIGHEST_MM = 90.0;
  for (int most = 1; most <= LW_STRIP_MAX; most++)
    for (int i = 0, scale; (scale = lw_sketch_scale(&e->s, i)) > 0 && scale <= SMALLEST; i++) {
      double mm_per_m = 1000.0 / scale;
      bool small = e->order->plan.module_m * mm_per_m < LEAST_LONG_MM ||
                   e->order->plan.course_m * mm_per_m < LEAST_HIGH_MM;
      if (small && !any_size) break;
      if ((e->top_m - e->bottom_m) * mm_per_m > HIGHEST_MM) continue;
      e->strip_count = pack(e, room_mm / mm_per_m, most);
      if (e->strip_count > most) continue;
      e->s.scale = scale;
      e->s.mm_per_m = mm_per_m;
      return true;
    }
  return false;
}

static void describe(lw_elevation *e) {
  const lw_order *o = e->order;
  lw_drawing *paper = e->s.paper;
  const char *title = e->s.result->given.about.title.text;
  int cuts = 0;
  for (int i = 0; i < o->cut_count; i++)
    if (o->cut[i].kind == LW_CUT_CLOSER || o->cut[i].kind == LW_CUT_MITRED) cuts += o->cut[i].count;
  lw_text_addf(&paper->title, "Elevation of the wall%s%s", title[0] ? ": " : "", title);
  lw_text_addf(&paper->description, "%s ", e->s.result->verdict.headline);
  if (!o->plan.solid) lw_text_addf(&paper->description, "Courses: %d. ", o->plan.courses);
  lw_text_addf(&paper->description, "Runs: %d, %s along the lowest face.", o->plan.run_count,
               lw_sketch_m(&e->s, o->plan.length_m, 3).text);
  if (!o->plan.solid) lw_text_addf(&paper->description, " Cut pieces: %d.", cuts);
  paper->failed = paper->failed || paper->title.failed || paper->description.failed;
}

static void draw(lw_elevation *e) {
  char words[320];
  bool setback = e->order->plan.setback_m > 0.0 && !e->order->plan.solid;
  lw_print(words, sizeof words,
           "Elevation, %s when printed %s wide; lengths in %s. Seen from in front and unrolled, one "
           "run after another from left to right%s.%s",
           lw_sketch_scale_words(&e->s).text, lw_sketch_mm(&e->s, e->s.width_mm / 1000.0).text,
           lw_sketch_lengths_in(&e->s), e->strip_count > 1 ? ", in strips" : "",
           setback ? " Each course is drawn over the lowest one; the gaps at corners are the setbacks." : "");
  double y = lw_sketch_head(&e->s, words);
  for (int i = 0; i < e->strip_count; i++) {
    double left = LW_MARGIN_MM + e->levels_mm;
    y += ABOVE_MM;
    e->s.origin = (lw_xy_mm){left - e->strip[i].from_m * e->s.mm_per_m, y + e->top_m * e->s.mm_per_m};
    if (i == 0) lw_elevation_levels(e, LW_AT_BEGINNING);
    if (i + 1 == e->strip_count && e->both_ends) lw_elevation_levels(e, LW_AT_END);
    lw_elevation_strip(e, &e->strip[i]);
    y += (e->top_m - e->bottom_m) * e->s.mm_per_m + BELOW_MM;
  }
  y = lw_sketch_bar(&e->s, (lw_xy_mm){LW_MARGIN_MM, y}, e->s.width_mm - 2.0 * LW_MARGIN_MM);
  e->s.paper->width_mm = e->s.width_mm;
  e->s.paper->height_mm = lw_elevation_legend(e, y) + LW_MARGIN_MM;
  describe(e);
}

lw_status lw_draw_elevation(const lw_result *result, const lw_order *order, double width_mm,
                            lw_drawing *drawing, lw_error *error) {
  lw_elevation *e = calloc(1, sizeof *e);
  lw_piece *piece = calloc(LW_PIECE_MAX, sizeof *piece);
  bool fits = false;
  if (e && piece) {
    e->s = (lw_sketch){.paper = drawing, .result = result, .width_mm = width_mm};
    e->order = order;
    e->piece = piece;
    measure(e);
    double room = width_mm - 2.0 * LW_MARGIN_MM - e->levels_mm - (e->both_ends ? e->levels_mm : RIGHT_MM);
    fits = choose(e, room, false) || choose(e, room, true);
    if (fits) draw(e);
  }
  bool memory = e && piece && !drawing->failed;
  free(piece);
  free(e);
  if (!memory) return LW_NO_MEMORY;
  if (fits) return LW_OK;
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NONE,
                      "the wall is too long or too high to be drawn on this paper");
}
