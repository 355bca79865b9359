/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PRECHECK_PARTS_H
#define LOWWALL_REPORT_PRECHECK_PARTS_H

#include "blocks.h"

/* Parts of the sheet, each a few headings. */
void lw_blocks_works(const lw_blocks *blocks);      /* who must see it, the headline, which works */
void lw_blocks_ground(const lw_blocks *blocks);     /* loads, soil, water, method */
void lw_blocks_water(const lw_blocks *blocks);      /* its ways out, and where it ends */
void lw_blocks_checks(const lw_blocks *blocks);     /* what is checked, and as large what is not */
void lw_blocks_special(const lw_blocks *blocks);    /* another wall, a fence, water, a trench */
void lw_blocks_limits(const lw_blocks *blocks);     /* those on file, each with its figure and source */
void lw_blocks_neighbours(const lw_blocks *blocks); /* how far to what is near, the fall, digging */
/* What an officer asks besides, a line each: the neighbour's leave, what is not told. */
void lw_blocks_consent(const lw_blocks *blocks);
void lw_blocks_untold(const lw_blocks *blocks);
void lw_blocks_inputs(const lw_blocks *blocks); /* assumed with its question, table, given */

#endif
