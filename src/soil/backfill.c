/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "backfill.h"

#include <math.h>

#include "sheet/values.h"
#include "tables/known.h"

/* A depth met exactly in decimal millimetres is met, whatever its binary digits. */
static const double ROUNDING_M = 1e-9;

/* How far a layer reaches below the surface of the soil, no deeper than the bed is. */
static double reaches_down(const lw_case *c, int index) {
  double bottom = lw_si_or(&c->ground.soil[index].bottom, INFINITY);
  return fmin(bottom - lw_si_or(&c->ground.soil_below_top, 0.0), lw_held_m(c));
}

static lw_refused plant_soil(const lw_case *c, const lw_tables *tables) {
  double most = lw_known_value(tables, LW_THRESHOLD_PLANT_SOIL_HELD) + ROUNDING_M;
  if (!lw_choice_is(&c->site.behind, LW_BEHIND_BED)) return LW_REFUSED_OUTSIDE_BED;
  return lw_held_m(c) > most ? LW_REFUSED_TOO_HIGH : LW_REFUSED_NOT;
}

lw_refused lw_backfill_refused(const lw_case *c, int index, const lw_soil_row *row, const lw_tables *tables) {
  /* A soil without a friction angle cannot be computed with: its row gave none on purpose. */
  if (c->ground.soil[index].friction.origin == LW_ABSENT) return LW_REFUSED_BY_TABLE;
  if (!row || row->use == LW_BACKFILL_GOOD || row->use == LW_BACKFILL_FILTER) return LW_REFUSED_NOT;
  if (row->use == LW_BACKFILL_REFUSED || row->use == LW_BACKFILL_WEIGHT_ONLY) return LW_REFUSED_BY_TABLE;
  lw_refused refused = plant_soil(c, tables);
  if (refused != LW_REFUSED_NOT || row->use == LW_BACKFILL_BED) return refused;
  double most = lw_known_value(tables, LW_THRESHOLD_COMPOST_DEPTH) + ROUNDING_M;
  return reaches_down(c, index) > most ? LW_REFUSED_DEEP_COMPOST : LW_REFUSED_NOT;
}
