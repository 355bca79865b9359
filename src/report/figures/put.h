/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_FIGURES_PUT_H
#define LOWWALL_REPORT_FIGURES_PUT_H

#include <lowwall/report.h>

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
/* A list of them at once; what has no finite value is left out. */
typedef struct lw_figure_row {
  const char *tail, *label, *unit;
  double value;
} lw_figure_row;
void lw_figures_put_rows(const lw_figures *figures, const lw_figure_row *row, size_t count);
#define LW_FIGURES_PUT(figures, rows) lw_figures_put_rows(figures, rows, sizeof(rows) / sizeof *(rows))

/* The same figures under a longer prefix. */
lw_figures lw_figures_below(const lw_figures *figures, const char *part);

/* "kN m/m" as the end of a key: "knm_per_m". */
const char *lw_figures_key_unit(const char *unit);

#endif
