/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* A storm on the bed, and digging in front of the toe. */

static void storm(const lw_figures *figures, const lw_storm *s) {
  lw_figures b = lw_figures_below(figures, "water.storm");
  if (s->rain_m <= 0.0) return;
  lw_figures_put(&b, &(lw_figure_word){"rain_m", "rain of the storm", "m", ""}, s->rain_m);
  lw_figures_put(&b, &(lw_figure_word){"porosity", "share of the soil that rain fills", "", ""}, s->porosity);
  lw_figures_put(&b, &(lw_figure_word){"rise_m", "rise of the water in the bed", "m", ""}, s->rise_m);
  lw_figures_put(&b, &(lw_figure_word){"from_depth_m", "water before, below the top of the wall", "m", ""},
                 s->from_depth_m);
  lw_figures_put(&b, &(lw_figure_word){"water_depth_m", "water after, below the top of the wall", "m", ""},
                 s->water_depth_m);
}

/* One figure a check: the level at which it falls short, or up to which it stands. */
static void limit(const lw_figures *figures, const lw_water_limit *l) {
  char at[24], part[64];
  const lw_check check = {.kind = l->kind, .at = l->at, .joint = l->joint};
  lw_check_print_at(&check, at, sizeof at);
  lw_print(part, sizeof part, "water.%s.%s", at, lw_check_slug(l->kind));
  lw_figures b = lw_figures_below(figures, part);
  if (l->depth_m.known)
    lw_figures_put_number(
        &b, &(lw_figure_word){"depth_m", "stands with water up to here, below the top", "m", ""}, l->depth_m,
        LW_REASON_NO_DEMAND);
  lw_figures_put_number(&b, &(lw_figure_word){"ratio", "has over needs with the water there", "", ""},
                        l->ratio, l->reason);
}

static void seepage(const lw_figures *figures, const lw_rain_seepage *of) {
  static const char DRY[] = "[RANKINE1857 level and sloping ground]", WET[] = "[GRAY1958 vertical drain]";
  lw_figures b = lw_figures_below(figures, "water.seepage");
  const lw_seepage *p = &of->push;
  if (!of->looked_at || of->status != LW_OK) return;
  lw_figures_put(&b, &(lw_figure_word){"dry_kn_per_m", "level push, dry", "kN/m", DRY}, p->dry_kn_per_m);
  lw_figures_put(&b,
                 &(lw_figure_word){"seeping_kn_per_m", "level push, rain seeping to the drain", "kN/m", WET},
                 p->seeping_kn_per_m);
  lw_figures_put(&b, &(lw_figure_word){"blocked_kn_per_m", "level push, water up to the ground", "kN/m", DRY},
                 p->blocked_kn_per_m);
  lw_figures_put(&b, &(lw_figure_word){"dry_k", "coefficient, dry", "", DRY}, p->dry_k);
  lw_figures_put(&b, &(lw_figure_word){"seeping_k", "coefficient, rain seeping", "", WET}, p->seeping_k);
  lw_figures_put(&b, &(lw_figure_word){"blocked_k", "coefficient, water up to the ground", "", DRY},
                 p->blocked_k);
  lw_figures_put(&b, &(lw_figure_word){"plane_angle_deg", "critical plane while it seeps", "deg", ""},
                 p->plane_angle_rad * LW_DEG_PER_RAD);
  lw_figures_put(&b,
                 &(lw_figure_word){"pore_force_kn_per_m", "force of the seeping water on it", "kN/m", WET},
                 p->pore_force_kn_per_m);
}

static void trench(const lw_figures *figures, const lw_trench *t) {
  lw_figures b = lw_figures_below(figures, "digging.trench");
  if (t->depth_m <= 0.0) return;
  lw_figures_put(&b, &(lw_figure_word){"depth_m", "trench, below the ground in front", "m", ""}, t->depth_m);
  lw_figures_put(&b, &(lw_figure_word){"distance_m", "trench, from the toe", "m", ""}, t->distance_m);
  lw_figures_put(&b, &(lw_figure_word){"floor_m", "floor of the trench, above the base", "m", ""},
                 t->floor_m);
  if (!t->thrust_times.known) return;
  lw_figures_put_number(&b,
                        &(lw_figure_word){"thrust_times", "push with the trench's depth held too", "", ""},
                        t->thrust_times, LW_REASON_NO_DEMAND);
  lw_figures_put_number(&b, &(lw_figure_word){"moment_times", "its moment likewise", "", ""}, t->moment_times,
                        LW_REASON_NO_DEMAND);
}

static void keep_out(const lw_figures *figures, const lw_trench *t) {
  lw_figures b = lw_figures_below(figures, "digging.keep_out");
  lw_figures_put(&b, &(lw_figure_word){"depth_m", "nobody digs deeper below the ground in front", "m", ""},
                 t->keep_out_depth_m);
  lw_figures_put(&b, &(lw_figure_word){"distance_m", "nearer than this to the toe", "m", ""},
                 t->keep_out_distance_m);
}

void lw_figures_of_water(const lw_figures *figures) {
  const lw_water_limits *limits = &figures->result->water_limits;
  storm(figures, &figures->result->storm);
  for (int i = 0; i < limits->count; i++) limit(figures, &limits->limit[i]);
  seepage(figures, &figures->result->seepage);
}

void lw_figures_of_trench(const lw_figures *figures) {
  trench(figures, &figures->result->trench);
  keep_out(figures, &figures->result->trench);
}
