/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_PRESSURE_VIEW_H
#define LOWWALL_REPORT_DRAW_PRESSURE_VIEW_H

#include "base/amount.h"
#include "sketch.h"

/* Pressure against depth being drawn: panels side by side on one scale of depth. The sketch's origin is the
 * top of the back in the panel of the ground, y up from there. */
typedef struct lw_pressure_view {
  lw_sketch s;
  const lw_pressure_page *page;
  const lw_diagram *d;
  double squeeze; /* widths of the ground are drawn so much of the scale of the depths: 1 or less */
} lw_pressure_view;

/* A panel: its axis at left, and depth 0 at top. */
typedef struct lw_panel {
  double left_mm, width_mm, top_mm;
  double most_kpa, mm_per_kpa; /* of its scale */
  const char *title;
} lw_panel;

/* The line of one thing in a panel, from the top down. */
enum { LW_CURVE_MAX = 2 * LW_DIAGRAM_DEPTHS, LW_CURVES_MAX = 12 };
typedef struct lw_curve {
  lw_pen pen;
  char letter[8];
  int count;
  double depth_m[LW_CURVE_MAX], kpa[LW_CURVE_MAX];
} lw_curve;
typedef struct lw_curves {
  int count;
  lw_curve curve[LW_CURVES_MAX];
} lw_curves;

/* The pen and the letter of a way. */
lw_pen lw_way_pen(lw_way way);
const char *lw_way_letter(lw_way way);
lw_pen lw_load_pen(int load);
/* The number of a load on its sheet; "a" for the wall above. */
void lw_load_letter(const lw_diagram *d, int load, char *out, size_t size);

/* The curves of a panel: what yields and what does not move; what resists; what loads and water send. */
void lw_curves_active(const lw_diagram *d, lw_curves *curves);
void lw_curves_passive(const lw_diagram *d, lw_curves *curves);
void lw_curves_loads(const lw_diagram *d, lw_curves *curves);

/* Axes, boundaries and curves; the scale of pressure is chosen for them. */
void lw_panel_draw(lw_pressure_view *view, lw_panel *panel, const lw_curves *curves);
/* The same depths beside a panel's axis, in metres. */
void lw_panel_depths(lw_pressure_view *view, const lw_panel *panel);

/* How high the ground and what stands on it rise above the top of the back in a panel so wide. [mm] */
double lw_pressure_sky(const lw_pressure_view *view, double width_mm);
/* The ground, its numbers explained by the sketch's notes. */
void lw_pressure_ground(lw_pressure_view *view, const lw_panel *panel);

/* "2.01 kN/m"; pounds are never kips, for one figure is read beside the other. */
lw_amount lw_pressure_push(const lw_pressure_view *view, double kn_per_m);

/* Which line is what, and what it comes to. gives y below */
double lw_pressure_legend(lw_pressure_view *view, double y_mm);

#endif
