/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "paired.h"

#include "sheet/values.h"

const lw_soil_row *lw_paired_row(const lw_result *result) {
  bool counts = result->wall.site.paired.cohesion_kpa > 0.0;
  return counts ? lw_footing_row(&result->given, result->tables) : NULL;
}

static void say_slips(const lw_result *result, lw_text *out) {
  double asked = result->wall.site.paired.slip_without;
  for (int i = 0; i < result->situations.count; i++) {
    const lw_situation *s = &result->situations.situation[i];
    if (!s->slip_bare_has.known) continue;
    lw_text_addf(out, " With none of it a slip has %.2f %s%s; it needs %.2f then.", s->slip_bare_has.value,
                 lw_situation_short(s->name), s->slip_bare ? ", and that governs" : "", asked);
  }
}

void lw_paired_say(const lw_result *result, lw_text *out) {
  const lw_soil_row *row = lw_paired_row(result);
  const lw_paired *paired = &result->wall.site.paired;
  if (!row) return;
  lw_text_addf(
      out,
      "%.1f kPa of the %.0f kPa of cohesion that goes with its low angle %s counts in slips and in "
      "bearing by theory, from %.1f m below the ground in front; by likely values all of it does, and %.1f "
      "kPa above there. Nothing else takes it; `footing soil cohesion=0` leaves it out.",
      paired->cohesion_kpa, paired->likely_kpa, row->paired_from.source, paired->depth_m,
      paired->likely_shallow_kpa);
  say_slips(result, out);
}
