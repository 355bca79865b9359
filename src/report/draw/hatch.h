/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_DRAW_HATCH_H
#define LOWWALL_REPORT_DRAW_HATCH_H

#include <lowwall/report.h>

typedef enum lw_hatch {
  LW_HATCH_NONE,
  LW_HATCH_BLOCK, /* lines at 45 degrees: masonry cut through */
  LW_HATCH_EARTH, /* groups of three short lines, this way and that: ground as it lies */
  LW_HATCH_FILL,  /* scattered dots and short dashes: soil placed */
  LW_HATCH_STONE, /* small open pebbles: clean stone */
  LW_HATCH_PAD,   /* lines both ways at 45 degrees: compacted stone */
  LW_HATCH_SAND,  /* dots close together: bedding */
  LW_HATCH_HALF,  /* level lines close together: a half block seen from in front */
  LW_HATCH_COUNT
} lw_hatch;

/** Fill an area with the lines of a hatch, clipped to it; its outline is not drawn. */
void lw_drawing_hatch(lw_drawing *drawing, lw_hatch hatch, const lw_xy_mm *spot, size_t count);

#endif
