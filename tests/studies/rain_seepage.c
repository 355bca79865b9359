/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <stdlib.h>

#include "../checks/support.h"
#include "studies/rain_seepage.h"

/* Rain seeping to a drain that works. The form wants the drain on the plane of the push. */

static lw_rain_seepage seepage_behind(const char *stone) {
  lw_rain_seepage seepage;
  lw_result *r = RUN("wall kind=section", "wall height=0.8 m", "wall embedment=0 m", "top width=0.3 m",
                     "base width=0.6 m", "face batter=0 deg", "soil 1 name=loam", "ground slope=0 deg",
                     "drain outlets=1", "wall joints=open", "method pressure=rankine", stone);
  lw_rain_seepage_find(&r->wall, &seepage, NULL);
  free(r);
  return seepage;
}

/* The back falls 0.3 m from the rear of the top to that of the base, and Rankine's plane stands upright
 * there: stone as thick as that, or thicker, brings the drain to the plane; a centimetre less leaves soil. */
Test(rain_seepage, stone_that_fills_the_gap_brings_the_drain_to_the_plane) {
  cr_expect_eq(seepage_behind("stone width=0.3 m").status, LW_OK);
  cr_expect_eq(seepage_behind("stone width=0.5 m").status, LW_OK);
  lw_rain_seepage less = seepage_behind("stone width=0.29 m");
  cr_expect(less.looked_at && less.status != LW_OK && less.reason == LW_REASON_NO_SEEPAGE_FORM);
}
