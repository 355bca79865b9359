/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <math.h>

#include "sketch.h"
#include "report/text/said.h"

/* The section of a wall: what is shown of the ground, at which scale, and the page around it. */

static const double MARGIN_MM = LW_MARGIN_MM, PANEL_MM = 34.0, BESIDE_FROM_MM = 140.0;
static const double BELOW_BASE_MM = 24.0, BELOW_NOTHING_MM = 13.0, SKY_MM = 12.0;

/* The situation that governs, or the wall as built. */
static const lw_situation *situation_of(const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  return &result->situations.situation[v->governed ? v->governing_situation : 0];
}

/* The front of all that is built, and its rear: cap, pad and courses that lean back included. */
static void reach_of_wall(const lw_sketch *s, double *front_m, double *rear_m) {
  const lw_wall *w = &s->result->wall;
  double half = 0.5 * fmax(w->site.pad.width_m - w->section.base_width_m, 0.0);
  *front_m = fmin(-half, 0.0);
  *rear_m = fmax(w->section.base_width_m + half, s->situation->base.back.ground_x_m);
  for (int i = 0; i < w->section.part_count; i++) {
    *front_m = fmin(*front_m, w->section.part[i].front_m);
    *rear_m = fmax(*rear_m, w->section.part[i].rear_m);
  }
}

/* Half a height in front, and behind as far as the wedge reaches or what stands there, within reason. */
static void open_window(lw_sketch *s) {
  const lw_wall *w = &s->result->wall;
  const lw_free_body *base = &s->situation->base;
  double high = w->section.height_m, reach = 0.9 * high, front, rear;
  reach_of_wall(s, &front, &rear);
  if (base->wedge_known) reach = fmax(reach, base->back.top_x_m + base->wedge.reach_m - rear);
  for (int i = 0; i < w->site.load_count; i++)
    if (w->site.load[i].kind != LW_LOAD_CAP) reach = fmax(reach, w->site.load[i].near_m + 0.3 * high);
  double most = s->width_mm < BESIDE_FROM_MM ? 1.4 * high : 2.0 * high; /* what is farther is named only */
  reach = fmin(fmax(reach, w->site.stone_width_m + 0.3 * high), most);
  s->left_m = front - fmax(0.35 * high, 0.25);
  s->right_m = rear + reach;
  bool pair = lw_sketch_pair(s), above = lw_sketch_pair_above(s);
  if (above) s->right_m = fmax(s->right_m, lw_sketch_pair_m(s) + 0.3 * high);
  if (pair && !above) s->left_m = fmin(s->left_m, lw_sketch_pair_m(s) - 0.2 * high);
  s->top_m = fmax(high, fmax(lw_sketch_ground_behind(s, s->right_m), base->back.ground_y_m));
  double drop = pair && !above ? w->tier.height_m : 0.0;
  s->bottom_m = fmin(-lw_sketch_under(s), lw_sketch_ground_front(s, s->left_m) - drop);
}

/* The largest of the scales in use at which the window fits its room. */
static bool choose_scale(lw_sketch *s, double room_mm) {
  static const double HIGHEST_MM = 120.0;
  static const int SMALLEST = 300;
  for (int i = 0, scale; (scale = lw_sketch_scale(s, i)) > 0 && scale <= SMALLEST; i++) {
    double mm_per_m = 1000.0 / scale;
    if ((s->right_m - s->left_m) * mm_per_m > room_mm || (s->top_m - s->bottom_m) * mm_per_m > HIGHEST_MM)
      continue;
    s->scale = scale;
    s->mm_per_m = mm_per_m;
    return true;
  }
  return false;
}

static double head(lw_sketch *s, double y_mm) {
  const lw_result *r = s->result;
  double wide = s->width_mm - 2.0 * MARGIN_MM;
  char words[400], check[80] = "", outcome[48] = "";
  if (!s->in_page)
    y_mm = lw_sketch_wrap(s->paper, (lw_xy_mm){MARGIN_MM, y_mm}, wide, LW_BODY_MM, true, r->verdict.headline);
  y_mm = lw_sketch_replaced(s, y_mm);
  bool governed = r->verdict.governed;
  if (governed) {
    lw_check governs = lw_situation_check(s->situation, r->verdict.governing_check);
    lw_check_words(&governs, check, sizeof check);
    lw_check_outcome(&governs, outcome, sizeof outcome);
  }
  const char *title = s->in_page ? "" : r->given.about.title.text;
  lw_print(words, sizeof words, "%s%sSection, %s when printed %s wide; lengths in %s. Drawn: %s.%s%s%s%s",
           title, title[0] ? ". " : "", lw_sketch_scale_words(s).text,
           lw_sketch_mm(s, s->width_mm / 1000.0).text, lw_sketch_lengths_in(s),
           lw_situation_sentence(s->situation->name), governed ? " Governs: " : "", check,
           governed ? " " : "", outcome);
  return lw_sketch_wrap(s->paper, (lw_xy_mm){MARGIN_MM, y_mm + 1.0}, wide, LW_SMALL_MM, false, words);
}

static void describe(lw_sketch *s) {
  const lw_result *r = s->result;
  lw_text *out = &s->paper->description;
  lw_text_addf(&s->paper->title, "Section of the wall%s%s", r->given.about.title.text[0] ? ": " : "",
               r->given.about.title.text);
  lw_text_add(out, r->verdict.headline);
  for (int i = 0; i < s->note_count; i++) lw_text_addf(out, " %d: %s.", i + 1, s->note[i].words);
  s->paper->failed = s->paper->failed || s->paper->title.failed || out->failed;
}

/* Ground first, then the wall over it, then what acts, so that nothing that matters is covered. */
static void draw(lw_sketch *s) {
  bool beside = s->width_mm >= BESIDE_FROM_MM;
  double y = head(s, MARGIN_MM - 1.0);
  s->label[s->label_count++] = (lw_box){0.0, 0.0, s->width_mm, y};
  s->sky_mm = lw_sketch_sky(s);
  y += SKY_MM + s->sky_mm;
  double window = MARGIN_MM + lw_sketch_dimensions_wide(s);
  s->origin = (lw_xy_mm){window - s->left_m * s->mm_per_m, y + s->top_m * s->mm_per_m};
  double foot =
      lw_sketch_at(s, 0.0, s->bottom_m).y_mm + (lw_sketch_presses(s) ? BELOW_BASE_MM : BELOW_NOTHING_MM);
  lw_sketch_ground(s);
  lw_sketch_wall(s);
  lw_sketch_loads(s);
  lw_sketch_site(s);
  lw_sketch_dimensions(s);
  lw_sketch_forces(s);
  lw_xy_mm panel = {s->width_mm - MARGIN_MM - PANEL_MM + 4.0,
                    lw_sketch_at(s, 0.0, s->situation->base.back.foot_y_m).y_mm};
  if (!beside && lw_sketch_pushes(s)) {
    foot += s->situation->base.back.plane.height_m * s->mm_per_m + 6.0;
    panel = (lw_xy_mm){window, foot - 4.0};
    foot += 4.0;
  }
  lw_sketch_pressure(s, panel, PANEL_MM - 8.0);
  s->paper->height_mm =
      lw_sketch_legend(s, (lw_xy_mm){MARGIN_MM, foot}, s->width_mm - 2.0 * MARGIN_MM) + MARGIN_MM;
  s->paper->width_mm = s->width_mm;
  describe(s);
}

static lw_status draw_section(const lw_result *result, double width_mm, bool in_page, lw_drawing *drawing,
                              lw_error *error) {
  lw_sketch s = {.paper = drawing, .result = result, .situation = situation_of(result), .width_mm = width_mm};
  s.in_page = in_page;
  if (!result->wall.section.known)
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NO_DEPTH,
                        "the wall cannot be drawn: its depth is not given (block depth, or base width)");
  open_window(&s);
  double room = width_mm - 2.0 * MARGIN_MM - lw_sketch_dimensions_wide(&s) -
                (width_mm >= BESIDE_FROM_MM ? PANEL_MM : 0.0);
  if (!choose_scale(&s, room))
    return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NONE,
                        "the wall is too high to be drawn on this paper");
  draw(&s);
  return drawing->failed ? LW_NO_MEMORY : LW_OK;
}

lw_status lw_draw_section(const lw_result *result, double width_mm, lw_drawing *drawing, lw_error *error) {
  return draw_section(result, width_mm, false, drawing, error);
}

lw_status lw_draw_section_below(const lw_result *result, double width_mm, lw_drawing *drawing,
                                lw_error *error) {
  return draw_section(result, width_mm, true, drawing, error);
}
