/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include "parts.h"

/* Heights and the section: what is the same in every situation. */

static void heights(const lw_figures *figures) {
  const lw_verdict *v = &figures->result->verdict;
  lw_figures below = lw_figures_below(figures, "heights");
  for (int i = 0; i < LW_HEIGHT_KINDS; i++) {
    char tail[32];
    lw_print(tail, sizeof tail, "%s_m", lw_height_slug((lw_height_kind)i));
    for (char *c = tail; *c; c++) *c = *c == '-' ? '_' : *c;
    lw_figures_put(&below, &(lw_figure_word){tail, lw_height_sentence((lw_height_kind)i), "m", ""},
                   v->height_m[i]);
  }
  lw_figures_put(&below,
                 &(lw_figure_word){"total_to_pad_m", "from the underside of the pad to the top", "m", ""},
                 v->total_to_pad_m);
}

/* Area and centroid; moments of area are about the toe. */
static void area(const lw_figures *b, const lw_section *s) {
  double area_m2 = 0.0, of_x = 0.0, of_y = 0.0;
  for (int i = 0; i < s->part_count; i++) {
    area_m2 += s->part[i].area_m2;
    of_x += s->part[i].area_m2 * s->part[i].x_m;
    of_y += s->part[i].area_m2 * s->part[i].y_m;
  }
  if (area_m2 <= 0.0) return;
  lw_figures_put(b, &(lw_figure_word){"area_m2", "area of the section", "m2", ""}, area_m2);
  lw_figures_put(b, &(lw_figure_word){"centroid_x_m", "centre of the section behind the toe", "m", ""},
                 of_x / area_m2);
  lw_figures_put(b, &(lw_figure_word){"centroid_y_m", "centre of the section above the base", "m", ""},
                 of_y / area_m2);
}

static void section(const lw_figures *figures) {
  const lw_section *s = &figures->result->wall.section;
  lw_figures b = lw_figures_below(figures, "section");
  lw_figures_put(&b, &(lw_figure_word){"height_m", "height from the base to the top", "m", ""}, s->height_m);
  lw_figures_put(&b, &(lw_figure_word){"embedment_m", "depth of the base below the ground in front", "m", ""},
                 s->embedment_m);
  lw_figures_put_number(&b, &(lw_figure_word){"base_width_m", "width of the base", "m", ""},
                        (lw_number){s->base_width_m, s->known}, LW_REASON_NO_DEPTH);
  if (!s->known) return;
  area(&b, s);
  lw_figures_put(&b, &(lw_figure_word){"weight_kn_per_m", "weight of the wall", "kN/m", ""},
                 figures->result->wall.weight_kn_per_m);
  lw_figures_put(
      &b, &(lw_figure_word){"weight_moment_knm_per_m", "moment of the weight about the toe", "kN m/m", ""},
      figures->result->wall.weight_moment_knm_per_m);
  lw_figures_put(&b, &(lw_figure_word){"back_angle_deg", "angle of the back from the vertical", "deg", ""},
                 s->back_rad * LW_DEG_PER_RAD);
  lw_figures_put(&b, &(lw_figure_word){"joint_friction", "friction between courses", "", ""},
                 s->joint_friction);
}

void lw_figures_of_wall(const lw_figures *figures) {
  heights(figures);
  section(figures);
}
