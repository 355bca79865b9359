/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pressure_view.h"

#include <math.h>
#include <stdlib.h>

#include "base/amount.h"
#include "base/angles.h"
#include "base/print.h"
#include "report/diagram_words.h"

/* The page of pressures: head, panels side by side or in two rows, legend. */

static const double GAP_MM = 4.0, DEPTHS_MM = 9.0, BELOW_MM = 11.0, ONE_ROW_FROM_MM = 140.0, TITLE_MM = 5.0;

/* How the width is shared out: all panels in one row, or two in each of two. */
typedef struct shares {
  bool one_row;
  double ground_mm, active_mm, loads_mm, passive_mm;
} shares;

static shares shares_of(const lw_pressure_view *v) {
  bool one = v->s.width_mm >= ONE_ROW_FROM_MM;
  double room = v->s.width_mm - 2.0 * LW_MARGIN_MM - DEPTHS_MM - (one ? 3.0 : 1.0) * GAP_MM;
  return one ? (shares){true, 0.28 * room, 0.28 * room, 0.2 * room, 0.24 * room}
             : (shares){false, 0.44 * room, 0.56 * room, 0.46 * room, 0.54 * room};
}

/* How far behind the plane the loads reach, as far as a picture may follow them. */
static double loads_reach(const lw_diagram *d) {
  double reach = 0.0;
  for (int i = 0; i < d->asked.back.load_count; i++)
    reach = fmax(reach, fmin(d->asked.back.load[i].far_m, d->asked.back.load[i].near_m + 1.0));
  return reach;
}

/* The largest of the scales in use at which the plane fits. */
static bool choose_scale(lw_pressure_view *v) {
  static const int SCALES[] = {1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 500, 1000, 2000};
  static const double HIGHEST_MM = 72.0, LEAST_MM = 42.0;
  double high = v->d->asked.back.height_m - fmin(v->d->depth[0].depth_m, 0.0);
  for (size_t i = 0; i < sizeof SCALES / sizeof *SCALES && v->s.scale == 0; i++) {
    if (high * 1000.0 / SCALES[i] > HIGHEST_MM) continue;
    v->s.scale = SCALES[i];
    v->s.mm_per_m = 1000.0 / SCALES[i];
  }
  /* What is lower than a hand is drawn larger than it is, to leave room for letters. */
  if (v->s.scale == 1) v->s.mm_per_m = fmax(v->s.mm_per_m, LEAST_MM / high);
  return v->s.scale > 0;
}

/* The ground is drawn narrower than it is where a back that leans far, or a load, would be out of sight. */
static void choose_squeeze(lw_pressure_view *v) {
  static const double LEAST = 0.4;
  const lw_plane *back = &v->d->asked.back;
  double lean = 1.4 * fabs(tan(back->batter_rad)) * back->height_m, reach = 1.1 * loads_reach(v->d);
  double wanted = fmax(lean, reach) * v->s.mm_per_m, room = shares_of(v).ground_mm;
  v->squeeze = wanted > room ? fmax(room / wanted, fmin(LEAST, room / (lean * v->s.mm_per_m + 1e-9))) : 1.0;
}

/* "1:25 when printed 180 mm wide" */
static void say_scale(const lw_pressure_view *v, char *out, size_t size) {
  if (v->s.mm_per_m > 1000.5)
    lw_print(out, size, "larger than it is");
  else
    lw_print(out, size, "1:%d when printed %s wide", v->s.scale,
             lw_millimetres(v->page->units, v->s.width_mm / 1000.0).text);
}

/* What is drawn in a panel of its own and is in no method's line. */
static const char *on_top_of(const lw_diagram *d) {
  bool wet = d->asked.back.water_depth_m<d->asked.back.height_m, loaded = d->asked.back.load_count> 0;
  if (wet && loaded) return "; what loads at a distance and the water send is drawn beside and comes on top";
  if (wet) return "; what the water sends is drawn beside and comes on top";
  return loaded ? "; what loads at a distance send is drawn beside and comes on top" : "";
}

static double head(lw_pressure_view *v) {
  double wide = v->s.width_mm - 2.0 * LW_MARGIN_MM, y = LW_MARGIN_MM - 1.0;
  char words[480], scale[60], narrow[60] = "";
  say_scale(v, scale, sizeof scale);
  if (v->squeeze < 1.0) lw_print(narrow, sizeof narrow, "; the ground's widths at %.2f of that", v->squeeze);
  if (v->page->headline[0])
    y = lw_sketch_wrap(v->s.paper, (lw_xy_mm){LW_MARGIN_MM, y}, wide, LW_BODY_MM, true, v->page->headline);
  lw_print(words, sizeof words,
           "%s%sEarth pressure against depth, %s%s. Level pressure over the height of the plane, of soil and "
           "uniform load%s.",
           v->page->title, v->page->title[0] ? ". " : "", scale, narrow, on_top_of(v->d));
  y = lw_sketch_wrap(v->s.paper, (lw_xy_mm){LW_MARGIN_MM, y + 1.0}, wide, LW_SMALL_MM, false, words);
  lw_sketch_take(&v->s, (lw_box){0.0, 0.0, v->s.width_mm, y});
  return y;
}

/* A panel's share of its row. */
static lw_panel panel_at(double left_mm, double width_mm, double top_mm, const char *title) {
  return (lw_panel){.left_mm = left_mm, .width_mm = width_mm, .top_mm = top_mm, .title = title};
}

static void keep_off(lw_pressure_view *v, const lw_panel *p) {
  double foot = p->top_mm + v->d->asked.back.height_m * v->s.mm_per_m;
  lw_sketch_take(&v->s, (lw_box){p->left_mm - 1.0, p->top_mm - TITLE_MM, p->left_mm + p->width_mm, foot});
}

static void draw_panel(lw_pressure_view *v, lw_panel *p, const lw_curves *curves) {
  keep_off(v, p);
  lw_panel_draw(v, p, curves);
}

/* Depths, ground and what yields; gives where the next panel of the row may begin. */
static double draw_ground(lw_pressure_view *v, double top_mm, const shares *w, lw_curves *curves) {
  lw_panel ground = panel_at(LW_MARGIN_MM + DEPTHS_MM, w->ground_mm, top_mm, "");
  lw_panel active = panel_at(ground.left_mm + w->ground_mm + GAP_MM, w->active_mm, top_mm, "active, at rest");
  const lw_plane *back = &v->d->asked.back;
  double overhang = fmax(-tan(back->batter_rad), 0.0) * back->height_m * v->s.mm_per_m * v->squeeze;
  v->s.origin = (lw_xy_mm){ground.left_mm + overhang, top_mm};
  lw_sketch_take(&v->s, (lw_box){0.0, top_mm - TITLE_MM, ground.left_mm - 0.2,
                                 top_mm + v->d->asked.back.height_m * v->s.mm_per_m + BELOW_MM});
  lw_panel_depths(v, &ground);
  lw_curves_active(v->d, curves);
  draw_panel(v, &active, curves);
  lw_pressure_ground(v, &ground);
  return active.left_mm + w->active_mm + GAP_MM;
}

static void draw_rest(lw_pressure_view *v, double left_mm, double top_mm, const shares *w,
                      lw_curves *curves) {
  lw_panel loads = panel_at(left_mm, w->loads_mm, top_mm, "loads, water");
  lw_panel passive = panel_at(left_mm, w->passive_mm, top_mm, "passive");
  lw_curves_loads(v->d, curves);
  if (curves->count > 0) {
    draw_panel(v, &loads, curves);
    passive.left_mm += w->loads_mm + GAP_MM;
  } else {
    passive.width_mm += w->loads_mm + GAP_MM;
  }
  lw_curves_passive(v->d, curves);
  draw_panel(v, &passive, curves);
}

/* gives y below the panels */
static double panels(lw_pressure_view *v, double y_mm, lw_curves *curves) {
  double high = v->d->asked.back.height_m * v->s.mm_per_m;
  shares w = shares_of(v);
  double top = y_mm + TITLE_MM + lw_pressure_sky(v, w.ground_mm), below = top + high + BELOW_MM;
  double next = draw_ground(v, top, &w, curves);
  if (w.one_row) {
    draw_rest(v, next, top, &w, curves);
    return below;
  }
  double above = -fmin(v->d->depth[0].depth_m, 0.0) * v->s.mm_per_m;
  lw_panel depths = panel_at(LW_MARGIN_MM + DEPTHS_MM, 0.0, below + TITLE_MM + above, "");
  lw_panel_depths(v, &depths);
  draw_rest(v, depths.left_mm, depths.top_mm, &w, curves);
  return depths.top_mm + high + BELOW_MM;
}

static void describe(lw_pressure_view *v) {
  lw_text *out = &v->s.paper->description;
  lw_text_addf(&v->s.paper->title, "Earth pressure against depth%s%s", v->page->title[0] ? ": " : "",
               v->page->title);
  if (v->page->headline[0]) lw_text_addf(out, "%s ", v->page->headline);
  for (int i = 0; i < v->s.note_count; i++) lw_text_addf(out, "%d: %s. ", i + 1, v->s.note[i].words);
  for (int i = 0; i < LW_WAY_COUNT; i++)
    if (v->d->way[i].known)
      lw_text_addf(out, "%s, %s: %s level. ", lw_way_title((lw_way)i), lw_state_title(v->d->way[i].state),
                   lw_pressure_push(v, v->d->way[i].thrust.horizontal_kn_per_m).text);
  v->s.paper->failed = v->s.paper->failed || v->s.paper->title.failed || out->failed;
}

static void draw(lw_pressure_view *v, lw_curves *curves) {
  double wide = v->s.width_mm - 2.0 * LW_MARGIN_MM;
  double y = panels(v, head(v), curves);
  y = lw_sketch_legend(&v->s, (lw_xy_mm){LW_MARGIN_MM, y}, wide);
  v->s.paper->height_mm = lw_pressure_legend(v, y + 2.0) + LW_MARGIN_MM;
  v->s.paper->width_mm = v->s.width_mm;
  describe(v);
}

lw_status lw_draw_pressure(const lw_pressure_page *page, double width_mm, lw_drawing *drawing,
                           lw_error *error) {
  lw_pressure_view *v = calloc(1, sizeof *v);
  lw_curves *curves = calloc(1, sizeof *curves);
  lw_status status = v != NULL && curves != NULL ? LW_OK : LW_NO_MEMORY;
  if (status == LW_OK) {
    v->s.paper = drawing;
    v->s.width_mm = width_mm;
    v->page = page;
    v->d = page->diagram;
    if (v->d->depth_count > 0 && choose_scale(v))
      choose_squeeze(v);
    else
      status =
          lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NONE, "the plane is too high to be drawn, or none");
  }
  if (status == LW_OK) {
    lw_drawing_begin(drawing, LW_ROLE_FIGURE);
    draw(v, curves);
    status = drawing->failed ? LW_NO_MEMORY : LW_OK;
  }
  free(v);
  free(curves);
  return status;
}
