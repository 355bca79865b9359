/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete.h"
#include "said.h"

/* What an officer asks besides. Nobody was asked what the sheet leaves out, and nothing is taken for it; who
 * was asked and does not know leaves the gravest open. */

static const struct {
  size_t offset;
  int gravest;
} ASKED[] = {{offsetof(lw_case, officer.rain_to), LW_RAIN_NEXT_DOOR},
             {offsetof(lw_case, officer.easement), LW_EASEMENT_UNDER},
             {offsetof(lw_case, officer.protected_trees), LW_YES},
             {offsetof(lw_case, officer.flood_land), LW_YES},
             {offsetof(lw_case, officer.bushfire_land), LW_YES},
             {offsetof(lw_case, officer.coast_land), LW_YES},
             {offsetof(lw_case, officer.neighbour_consent), LW_NO},
             {offsetof(lw_case, officer.sight_lines), LW_YES},
             {offsetof(lw_case, officer.other_works), LW_OTHER_WORKS_OTHER},
             {offsetof(lw_case, officer.built_by), LW_BUILT_BY_OWNER}};
_Static_assert(sizeof ASKED / sizeof *ASKED == sizeof(lw_case_officer) / sizeof(lw_choice), "each of them");

void lw_complete_officer(lw_completing *s) {
  for (int i = 0; i < s->c->told.count; i++) {
    size_t offset = s->c->told.said[i].offset;
    for (size_t k = 0; k < sizeof ASKED / sizeof *ASKED; k++) {
      lw_choice *choice = (void *)((char *)s->c + offset);
      if (ASKED[k].offset != offset || choice->origin != LW_ABSENT) continue;
      *choice = (lw_choice){.value = ASKED[k].gravest, .origin = LW_ASSUMED};
    }
  }
}
