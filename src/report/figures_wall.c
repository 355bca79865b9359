/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "figures.h"

#include <string.h>

/* Heights, the section and the site: what is the same in every situation. */

static const double DEGREES = 180.0 / 3.14159265358979323846;

static void heights(const lw_figures *figures) {
  const lw_verdict *v = &figures->result->verdict;
  lw_figures below = lw_figures_below(figures, "heights");
  for (int i = 0; i < LW_HEIGHT_KINDS; i++) {
    char tail[32];
    lw_print(tail, sizeof tail, "%s_m", lw_height_slug((lw_height_kind)i));
    for (char *c = tail; *c; c++) *c = *c == '-' ? '_' : *c;
    lw_figures_put(&below, &(lw_figure_word){tail, lw_height_sentence((lw_height_kind)i), "m", ""}, v->height_m[i]);
  }
  lw_figures_put(&below, &(lw_figure_word){"total_to_pad_m", "from the underside of the pad to the top", "m", ""},
                 v->total_to_pad_m);
}

static void section(const lw_figures *figures) {
  const lw_section *s = &figures->result->wall.section;
  lw_figures b = lw_figures_below(figures, "section");
  lw_figures_put(&b, &(lw_figure_word){"height_m", "height from the base to the top", "m", ""}, s->height_m);
  lw_figures_put(&b, &(lw_figure_word){"embedment_m", "depth of the base below the ground in front", "m", ""},
                 s->embedment_m);
  lw_figures_put_number(&b, &(lw_figure_word){"base_width_m", "width of the base", "m", ""},
                        (lw_number){s->base_width_m, s->known});
  if (!s->known) return;
  lw_figures_put(&b, &(lw_figure_word){"weight_kn_per_m", "weight of the wall", "kN/m", ""}, lw_section_weight(s));
  lw_figures_put(&b, &(lw_figure_word){"weight_moment_knm_per_m", "moment of the weight about the toe", "kN m/m", ""},
                 lw_section_moment(s));
  lw_figures_put(&b, &(lw_figure_word){"back_angle_deg", "angle of the back from the vertical", "deg", ""},
                 lw_section_back_angle(s) * DEGREES);
  lw_figures_put(&b, &(lw_figure_word){"joint_friction", "friction between courses", "", ""}, s->joint_friction);
}

static void site(const lw_figures *figures) {
  const lw_wall *w = &figures->result->wall;
  lw_figures b = lw_figures_below(figures, "site");
  lw_figures_put(&b, &(lw_figure_word){"ways_out", "ways out for water", "", ""}, lw_site_ways_out(&w->site));
  lw_figures_put(&b, &(lw_figure_word){"surcharge_kpa", "uniform load behind", "kPa", ""}, w->site.surcharge_kpa);
  lw_figures_put(&b, &(lw_figure_word){"wall_friction_deg", "friction of soil on the wall", "deg", ""},
                 w->wall_friction_rad * DEGREES);
  lw_figures_put(&b, &(lw_figure_word){"base_friction", "friction under the base, the weaker interface", "", ""},
                 w->site.base_friction);
  lw_figures_put(&b, &(lw_figure_word){"pad_friction", "friction of the pad on the ground", "", ""},
                 w->site.pad_friction);
  lw_figures_put_number(&b, &(lw_figure_word){"allowable_bearing_kpa", "bearing value of the ground", "kPa", ""},
                        (lw_number){w->site.allowable_bearing_kpa, w->site.allowable_bearing_kpa > 0.0});
}

void lw_figures_of_wall(const lw_figures *figures) {
  heights(figures);
  section(figures);
  site(figures);
}
