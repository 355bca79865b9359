/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_STUDIES_NARROW_H
#define LOWWALL_STUDIES_NARROW_H

#include <lowwall/studies.h>

/** The published values for a narrow bed, and what a higher resultant would do.
 *  in    wall         as lw_wall_build made it
 *        situations   as run; the wall as built gives the overturning check
 *  out   narrow       shown only for a bed whose given width is less than the wedge's
 *  note  1 δ is the wall friction of the sheet, on both faces: smooth unless it is given.
 *  from  [JANSSEN1895 slices]; [HANDY1985 the arch in soil arching]; tested by tests/studies/narrow.c */
void lw_narrow_run(const lw_wall *wall, const lw_situations *situations, lw_narrow *narrow);

/** The working of a narrow bed that is shown.
 *  in    situations, narrow   as run */
void lw_narrow_write(const lw_situations *situations, const lw_narrow *narrow, const lw_working *working);

#endif
