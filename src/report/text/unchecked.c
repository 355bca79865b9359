/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "unchecked.h"

#include <string.h>

/* What is not checked stands as plainly as what is. */

static const lw_unchecked always[] = {
    {"earthquake", "Earthquake: NOT CHECKED.", "earthquake"},
    {"settlement", "Settling, frost, roots and swelling soil: NOT CHECKED.",
     "settling, frost, roots and swelling soil"},
    {"ends-and-corners", "Ends, corners and curves: NOT CHECKED. The check is of one metre of straight wall.",
     "ends, corners and curves"},
};

/* Of a foot of it where the reader counts in feet. */
static const lw_unchecked FOOT = {
    "ends-and-corners", "Ends, corners and curves: NOT CHECKED. The check is of one foot of straight wall.",
    "ends, corners and curves"};

static const lw_unchecked *told(lw_units units, const lw_unchecked *what) {
  return units == LW_UNITS_US && strcmp(what->slug, FOOT.slug) == 0 ? &FOOT : what;
}

static void when(bool is_so, const lw_unchecked *unchecked, lw_unchecked_taker taker, void *context) {
  if (is_so) taker(context, unchecked);
}

static bool shaken(const lw_result *result) {
  return result->wall.seismic_horizontal > 0.0 || result->wall.seismic_vertical > 0.0;
}

/* Where only imported soil stands on level ground the joints and the base are what can give way. */
static void slip(const lw_result *result, lw_unchecked_taker taker, void *context) {
  bool level = result->wall.slip_cause == LW_SLIP_LEVEL_BED;
  when(level,
       &(lw_unchecked){
           "global-slip",
           "A slip of the whole bank, wall and ground together: NOT CHECKED. Only imported soil on "
           "level ground was told of, and no ground that is held up or falls away.",
           "a slip of the whole bank (level ground)"},
       taker, context);
  when(!level && (result->wall.method.slip == LW_SLIP_NOT || !result->wall.section.known),
       &(lw_unchecked){"global-slip", "A slip of the whole bank, wall and ground together: NOT CHECKED.",
                       "a slip of the whole bank"},
       taker, context);
}

void lw_unchecked_each(const lw_result *result, lw_unchecked_taker taker, void *context) {
  const lw_section *section = &result->wall.section;
  const lw_site *site = &result->wall.site;
  slip(result, taker, context);
  for (size_t i = 0; i < sizeof always / sizeof *always; i++)
    when(!(shaken(result) && strcmp(always[i].slug, "earthquake") == 0), told(result->units, &always[i]),
         taker, context);
  when(!result->construction.studied,
       &(lw_unchecked){"building-it",
                       "The state while it is built, and a compactor close behind the wall: NOT CHECKED.",
                       "the wall while it is built"},
       taker, context);
  when(section->has_cap && section->cap_bonded,
       &(lw_unchecked){"cap-bond", "The cap: NOT CHECKED. It relies on its bond, which nobody tested.",
                       "the cap, which relies on its bond"},
       taker, context);
  when(!section->known,
       &(lw_unchecked){"no-depth",
                       "Sliding, tipping, joints and ground: NOT CHECKED, because the depth of the blocks "
                       "or the width of the base is not known.",
                       "sliding, tipping, joints and ground, for want of a depth"},
       taker, context);
  when(site->pad.thickness_m <= 0.0 && section->known,
       &(lw_unchecked){"no-pad", "A pad of stone under the wall: none is given, so none is checked.",
                       "a pad of stone under the wall, for none is given"},
       taker, context);
  when(result->wall.method.passive_share > 0.0,
       &(lw_unchecked){"passive-stays",
                       "That nobody ever digs away the ground in front, whose resistance is counted "
                       "here: NOT CHECKED.",
                       "that nobody ever digs away the ground in front"},
       taker, context);
}
