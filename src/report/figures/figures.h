/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_FIGURES_H
#define LOWWALL_REPORT_FIGURES_FIGURES_H

#include "report/parts.h"

/* Figures on their way to a taker, under a prefix of their keys: "drained.base". */
typedef struct lw_figures {
  lw_figure_taker taker;
  void *context;
  const lw_result *result;
  char prefix[56];
} lw_figures;

/* A figure before its prefix. The tail carries the unit: "thrust_kn_per_m". */
typedef struct lw_figure_word {
  const char *tail, *label, *unit, *source;
} lw_figure_word;

void lw_figures_put(const lw_figures *figures, const lw_figure_word *word, double value);
/* reason: why, should the value not be known. */
void lw_figures_put_number(const lw_figures *figures, const lw_figure_word *word, lw_number value,
                           lw_reason reason);
/* The same figures under a longer prefix. */
lw_figures lw_figures_below(const lw_figures *figures, const char *part);

/* "kN m/m" as the end of a key: "knm_per_m". */
const char *lw_figures_key_unit(const char *unit);

void lw_figures_of_wall(const lw_figures *figures);
void lw_figures_of_site(const lw_figures *figures);
void lw_figures_of_situation(const lw_figures *figures, const lw_situation *situation);
void lw_figures_of_stage(const lw_figures *figures, const lw_stage *stage);
/* Its plane and its thrust alone. */
void lw_figures_of_push(const lw_figures *figures, const lw_stage *stage);
void lw_figures_of_profile(const lw_figures *figures, const lw_stage *stage);
void lw_figures_of_joint(const lw_figures *figures, const lw_joint *joint);
void lw_figures_of_forces(const lw_figures *figures, const lw_stage *stage);
/* One of them with its arms and moments; its prefix is that of the figures. */
void lw_figures_of_force(const lw_figures *figures, const lw_stage *stage, int index);
/* What the number of a force in a stage is called, "course-2", "water-2"; joint: the stage is of what stands
 * above it; 0: of the whole wall. */
void lw_force_name(const lw_result *result, const lw_stage *stage, int joint, int index, char *out,
                   size_t size);
void lw_figures_of_bearing(const lw_figures *figures, const lw_situation *s, const lw_stage *stage, lw_at at);
void lw_figures_of_check(const lw_figures *figures, const lw_check *check);
void lw_figures_of_building(const lw_figures *figures);
void lw_figures_of_plant(const lw_figures *figures, const lw_plant *plant);
void lw_figures_of_building_itself(const lw_figures *figures, const lw_building *building);
void lw_figures_of_building_course(const lw_figures *figures, const lw_building_course *course);
void lw_figures_of_narrow(const lw_figures *figures);
void lw_figures_of_narrow_itself(const lw_figures *figures, const lw_narrow *narrow);
void lw_figures_of_narrow_value(const lw_figures *figures, const lw_narrow_value *value);
void lw_figures_of_water(const lw_figures *figures);
void lw_figures_of_trench(const lw_figures *figures);
void lw_figures_of_formats(const lw_figures *figures);
void lw_figures_of_loads(const lw_figures *figures, const lw_stage *stage);
void lw_figures_of_influence(const lw_figures *figures);
void lw_figures_of_fence(const lw_figures *figures);
void lw_figures_of_advice(const lw_figures *figures);

#endif
