/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SOIL_BACKFILL_H
#define LOWWALL_SOIL_BACKFILL_H

#include <lowwall/wall.h>

/** Why a soil behind is refused, if it is.
 *  in    c        a complete case
 *        index    of the soil, from 0
 *        row      of tables/soils.csv; NULL: it is not named
 *        tables   for the heights that plant soil is accepted to
 *  gives LW_REFUSED_NOT or the reason
 *  note  1 Plant soil counts inside a bed only: what holds it up there is low, and nothing else falls. */
lw_refused lw_backfill_refused(const lw_case *c, int index, const lw_soil_row *row, const lw_tables *tables);

#endif
