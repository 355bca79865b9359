/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

/* How water gets out from behind the wall, way by way, and where it ends. */

typedef struct ways {
  char counted[160], others[260];
} ways;

static void add(ways *w, bool counts, const char *words) {
  if (counts)
    lw_block_join(w->counted, sizeof w->counted, words);
  else
    lw_block_join(w->others, sizeof w->others, words);
}

/* To outlets and ground the water has to be led: all of them that are there count, or none. */
static ways ways_of(const lw_site *site) {
  ways w = {"", ""};
  char outlets[48];
  bool drain = site->drain_outlets > 0, ground = site->ground_drains;
  bool led = site->ways_found > (site->joints_open ? 1 : 0);
  lw_print(outlets, sizeof outlets, "the drain (%d outlet%s)", site->drain_outlets,
           site->drain_outlets == 1 ? "" : "s");
  add(&w, drain && led,
      drain                  ? outlets
      : site->outlets_buried ? "outlets that lie below the ground in front"
                             : "a drain, of which no outlet is told");
  add(&w, site->joints_open, site->joints_open ? "open joints" : "joints, sealed, lined or not known");
  add(&w, ground && led, ground ? "ground that drains" : "ground that does not drain, or is not known to");
  if ((drain || ground) && !led)
    lw_block_join(w.others, sizeof w.others, "neither soil nor stone leads it there");
  return w;
}

static void ways_out(const lw_blocks *b) {
  const lw_site *site = &b->result->wall.site;
  ways w = ways_of(site);
  bool as_one = site->ways_out < site->ways_found;
  lw_block_say(b, LW_BLOCK_FACT, "ways out", "%d counted%s%s%s", site->ways_out,
               as_one ? ", for want of a filter all as one" : "", w.counted[0] ? ": " : "", w.counted);
  if (w.others[0]) lw_block_say(b, LW_BLOCK_FACT, "none by", "%s", w.others);
}

static void rain(const lw_blocks *b) {
  static const char *const ENDS[] = {[LW_RAIN_OWN_GROUND] = "on the plot's own ground",
                                     [LW_RAIN_STREET] = "in the street or its drain",
                                     [LW_RAIN_SOAKAWAY] = "in a soakaway",
                                     [LW_RAIN_EASEMENT] = "in an easement",
                                     [LW_RAIN_NEXT_DOOR] = "on a neighbour's land"};
  const lw_choice *to = &b->result->given.officer.rain_to;
  if (to->origin == LW_GIVEN)
    lw_block_say(b, LW_BLOCK_FACT, "outlet", "ends %s, as given; see that it may", ENDS[to->value]);
  else
    lw_block_say(b, LW_BLOCK_FACT, "outlet", "must end where it lawfully may; the sheet does not say where");
}

void lw_blocks_water(const lw_blocks *b) {
  lw_block_say(b, LW_BLOCK_HEADING, "", "Water");
  ways_out(b);
  rain(b);
}
