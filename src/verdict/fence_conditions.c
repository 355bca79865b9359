/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "fence_conditions.h"

#include <math.h>

lw_so lw_fence_closes_bed(const lw_facts *facts, lw_finding *found) {
  if (facts->c->site.back.origin == LW_ASSUMED) return lw_open_by(found, "site back");
  if (!lw_facts_back_is(facts, LW_BACK_FENCE)) return LW_SO_NOT;
  const lw_fence *fence = facts->fence;
  const double *ratio = fence->ratio[LW_FENCE_DRY];
  if (fence->back && fence->status == LW_OK)
    lw_tell(found,
            "soil over the wind it was built for: boards %.2f, push %.2f, moment at the ground %.2f, at the "
            "hole's bottom %.2f",
            ratio[LW_FENCE_BOARD], ratio[LW_FENCE_SHEAR], ratio[LW_FENCE_GROUND], ratio[LW_FENCE_HOLE]);
  else
    lw_tell(found, "%s", "give the bed a side of its own there");
  return LW_SO_YES;
}

/* The item that leaves open whether a fence is near, or where it stands. */
static const char *left_out(const lw_case *c, bool on_wall) {
  if (c->fence.height.origin == LW_ASSUMED) return "fence height";
  if (c->fence.place.origin == LW_ASSUMED && c->fence.distance.origin != LW_GIVEN) return "fence place";
  return !on_wall && c->fence.distance.origin == LW_ASSUMED ? "fence distance" : NULL;
}

/* The distance to keep grows with the wall's height, of which a part may only be assumed. */
static double certain_keep_off(const lw_facts *facts) {
  const lw_span *total = &facts->height[LW_HEIGHT_TOTAL];
  return facts->fence->on.keep_off_m - (total->taken_m - total->certain_m);
}

lw_so lw_fence_leans(const lw_facts *facts, lw_finding *found) {
  const lw_fence_wind *wind = &facts->fence->on;
  const lw_quantity *height = &facts->c->fence.height;
  const char *item = left_out(facts->c, wind->on_wall);
  if (height->origin != LW_ASSUMED && facts->fence_m <= 0.0) return LW_SO_NOT;
  if (item) return lw_open_by(found, item);
  if (!wind->on_wall && wind->distance_m >= wind->stone_off_m) return LW_SO_NOT;
  bool certain = wind->on_wall || wind->distance_m < certain_keep_off(facts);
  if (!certain) return lw_open_by(found, facts->height[LW_HEIGHT_TOTAL].left_out);
  if (!found->detail) return LW_SO_YES;
  const lw_apart apart = lw_metres_apart(facts->units, wind->distance_m, wind->stone_off_m, 2);
  lw_tell(found, "%s high", lw_metres(facts->units, height->si, 2).text);
  if (!wind->on_wall)
    lw_tell(found, ", %s behind the wall, nearer than %s", apart.one.text, apart.other.text);
  return LW_SO_YES;
}

lw_so lw_fence_stands_near(const lw_facts *facts, lw_finding *found) {
  const lw_fence_wind *wind = &facts->fence->on;
  if (facts->fence_m <= 0.0 || wind->on_wall || left_out(facts->c, false)) return LW_SO_NOT;
  if (wind->distance_m < wind->stone_off_m) return LW_SO_NOT;
  if (wind->distance_m >= certain_keep_off(facts))
    return lw_open_by(found, facts->height[LW_HEIGHT_TOTAL].left_out);
  if (!found->detail) return LW_SO_YES;
  const lw_apart apart = lw_metres_apart(facts->units, wind->distance_m, wind->keep_off_m, 2);
  lw_tell(found, "%s high, %s behind the wall, within its height of %s",
          lw_metres(facts->units, facts->c->fence.height.si, 2).text, apart.one.text, apart.other.text);
  return LW_SO_YES;
}
