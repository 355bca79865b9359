/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "parts.h"

#include <math.h>
#include <string.h>

#include "sheet/values.h"
#include "tables/quote.h"

/* Each question in turn; the gravest that is answered yes says what it is, and all that are yes are
 * reasons. */

static const char HERE[] = "[LOWWALL verdict]";

static const char *source_of(const lw_facts *f, lw_known_row threshold) {
  return lw_known_threshold(f->tables, threshold)->from.source;
}

static lw_verdict_reason *because(lw_reaching *to, lw_what what, lw_origin origin, const char *slug,
                                  const char *source) {
  if (what < to->verdict->what) to->verdict->what = what;
  return lw_reasons_new(
      to, &(lw_because){.answer = LW_ANSWER_WHAT, .origin = origin, .slug = slug, .source = source});
}

/* What the distance means for the sums. */
static void tier_band(const lw_facts *f, lw_verdict_reason *r) {
  const lw_tier *t = &f->wall->tier;
  size_t used = strlen(r->text), room = sizeof r->text - used;
  if (t->band == LW_TIER_ONE_WALL)
    lw_print(r->text + used, room,
             " Nearer than %s they are one wall %s high, and one that is not checked as two.",
             lw_metres(f->units, lw_known_value(f->tables, LW_THRESHOLD_TIER_ONE_WALL) * t->lower_m, 2).text,
             lw_metres(f->units, t->height_m + f->height_m[LW_HEIGHT_EXPOSED], 2).text);
  else if (t->band == LW_TIER_TOGETHER && t->above)
    lw_print(r->text + used, room,
             " The upper wall and its soil, %s from %s back, press on this one's wedge; its outlet "
             "must not let water out behind this wall.",
             lw_amount_of(f->units, LW_KIND_PRESSURE, t->pressure_kpa, 1).text,
             lw_metres(f->units, t->distance_m, 2).text);
  else if (t->band == LW_TIER_TOGETHER)
    lw_print(r->text + used, room,
             " This one loads the wall below, which has to be checked with it; its outlet must not let water "
             "out behind that wall.");
}

static void tier(const lw_facts *f, lw_reaching *to) {
  if (!f->other_wall_near) return;
  static const char apart[] = "thresholds/tier-apart as times";
  char times[LW_QUOTE_MAX] = "";
  lw_verdict_reason *r = because(to, LW_WHAT_TIER, f->c->site.other_wall_distance.origin, "other-wall-near",
                                 source_of(f, LW_THRESHOLD_TIER_APART));
  if (!r) return;
  lw_quote(f->tables, apart, sizeof apart - 1, times, sizeof times);
  const lw_quantity *distance = &f->c->site.other_wall_distance;
  const lw_apart said = lw_metres_apart(
      f->units, distance->si, lw_known_value(f->tables, LW_THRESHOLD_TIER_APART) * f->lower_wall_m, 2);
  lw_print(r->text, sizeof r->text,
           "Another wall stands %s: nearer than %s, %s the height of the lower of the two, so they "
           "act together.",
           lw_reasons_away(distance, &said.one).text, said.other.text, times);
  tier_band(f, r);
}

static void ground_behind(const lw_facts *f, lw_reaching *to) {
  const lw_choice *behind = &f->c->site.behind;
  if (lw_choice_is(behind, LW_BEHIND_BED)) return;
  lw_verdict_reason *r = because(to, LW_WHAT_RETAINING_WALL,
                                 behind->origin == LW_GIVEN ? LW_GIVEN : LW_ASSUMED, "ground-behind", HERE);
  if (!r) return;
  lw_print(r->text, sizeof r->text,
           behind->origin == LW_GIVEN
               ? "If the wall vanished, real ground or fill would move, not only imported bed soil."
               : "What stands behind is not known, so taken as real ground, which would move if the wall "
                 "vanished.");
}

static void level_difference(const lw_facts *f, lw_reaching *to) {
  const lw_quantity *d = &f->c->site.level_difference;
  double most = lw_known_value(f->tables, LW_THRESHOLD_LEVEL_DIFFERENCE);
  if (d->origin == LW_ABSENT || fabs(d->si) <= most + 1e-9) return;
  lw_verdict_reason *r = because(to, LW_WHAT_RETAINING_WALL, d->origin, "level-difference",
                                 source_of(f, LW_THRESHOLD_LEVEL_DIFFERENCE));
  if (!r) return;
  const lw_apart apart = lw_metres_apart(f->units, fabs(d->si), most, 2);
  lw_print(
      r->text, sizeof r->text, "The ground beyond differs from the ground in front by %s%s, more than %s.",
      d->origin == LW_ASSUMED ? "an amount not known, so taken as " : "", apart.one.text, apart.other.text);
}

static void back_is_ground(const lw_facts *f, lw_reaching *to) {
  if (!lw_facts_back_is(f, LW_BACK_GROUND)) return;
  lw_verdict_reason *r = because(to, LW_WHAT_RETAINING_WALL, f->c->site.back.origin, "back-is-ground", HERE);
  if (r)
    lw_print(r->text, sizeof r->text, "%s",
             "Real ground stands on the far side of the soil: it would move with it.");
}

/* Whatever lies between the wall and the line moves if the wall vanishes. */
static void in_wedge(const lw_facts *f, lw_reaching *to, const lw_quantity *distance, const char *slug,
                     const char *name) {
  lw_verdict_reason *r =
      because(to, LW_WHAT_RETAINING_WALL, distance->origin, slug, source_of(f, LW_THRESHOLD_REACH_LINE));
  if (!r) return;
  double angle_rad = atan2(1.0, lw_known_value(f->tables, LW_THRESHOLD_REACH_LINE));
  const lw_apart apart = lw_metres_apart(f->units, distance->si, f->reach.taken_m, 2);
  lw_print(r->text, sizeof r->text,
           "If the wall vanished, %s could move: %s, within the %s of a line drawn up and back at %.0f "
           "degrees from the bottom rear (the wedge itself reaches %s).",
           name, lw_reasons_away(distance, &apart.one).text, apart.other.text, angle_rad * LW_DEG_PER_RAD,
           lw_metres(f->units, f->influence->wedge_m, 2).text);
}

static bool reached(const lw_quantity *distance, const lw_span *within) {
  return lw_facts_nearer(distance, within->taken_m) == LW_SO_YES;
}

/* A building or fence that carries the far side is named for what it is, not by its distance. */
static void wedge(const lw_facts *f, lw_reaching *to) {
  const lw_case *c = f->c;
  if (!lw_facts_back_is(f, LW_BACK_BUILDING) && reached(&c->site.building_distance, &f->building))
    in_wedge(f, to, &c->site.building_distance, "wedge-building", "a building");
  if (!lw_facts_back_is(f, LW_BACK_FENCE) && reached(&c->site.boundary_distance, &f->reach))
    in_wedge(f, to, &c->site.boundary_distance, "wedge-boundary", "the ground at a boundary");
  if (reached(&c->site.public_way_distance, &f->reach))
    in_wedge(f, to, &c->site.public_way_distance, "wedge-public-way", "a street or public path");
}

static void slope_under(const lw_facts *f, lw_reaching *to) {
  double most = lw_known_value(f->tables, LW_THRESHOLD_BED_SLOPE);
  const lw_case *c = f->c;
  bool behind = tan(fabs(f->wall->site.slope_rad)) > most + 1e-9;
  if (!behind && tan(fabs(f->wall->site.front_slope_rad)) <= most + 1e-9) return;
  const lw_quantity *slope = behind ? &c->ground.slope : &c->ground.front_slope;
  lw_verdict_reason *r =
      because(to, LW_WHAT_BED_ON_SLOPE, slope->origin, "slope-under", source_of(f, LW_THRESHOLD_BED_SLOPE));
  if (!r) return;
  lw_print(r->text, sizeof r->text, "The ground %s slopes %s1 in %.3g, steeper than 1 in %.3g.",
           behind ? "behind" : "in front",
           slope->origin == LW_ASSUMED ? "by an amount not known, so taken as " : "",
           1.0 / tan(fabs(slope->si)), 1.0 / most);
}

/* What the soil comes to beside the wind that the fence was built for. */
static void tell_fence(const lw_facts *f, lw_verdict_reason *r) {
  const lw_fence *fence = f->fence;
  if (!fence->back || fence->status != LW_OK) return;
  const double *ratio = fence->ratio[LW_FENCE_DRY], *kept = fence->lasting_ratio[LW_FENCE_DRY];
  lw_print(r->text, sizeof r->text,
           "A fence closes the bed, and its posts were not made to carry soil: %s of it comes to %.2f of the "
           "wind it was built for on the boards, %.2f in push, %.2f in moment at the ground (%.2f of what is "
           "kept for good) and %.2f at the bottom of the hole. Build a fourth side, clear of it.",
           lw_metres(f->units, fence->bed.height_m, 2).text, ratio[LW_FENCE_BOARD], ratio[LW_FENCE_SHEAR],
           ratio[LW_FENCE_GROUND], kept[LW_FENCE_GROUND], ratio[LW_FENCE_HOLE]);
}

static void back_of_bed(const lw_facts *f, lw_reaching *to) {
  lw_origin origin = f->c->site.back.origin;
  const char *unknown =
      origin == LW_ASSUMED ? "What carries the far side is not known, so taken as a fence: " : "";
  if (lw_facts_back_is(f, LW_BACK_BUILDING)) {
    lw_verdict_reason *r = because(to, LW_WHAT_BED_AGAINST_BUILDING, origin, "back-is-building", HERE);
    if (r)
      lw_print(r->text, sizeof r->text,
               "A building closes the bed, and a building is not a retaining wall: "
               "leave a gap with drainage and air, and build a fourth side that stands by itself.");
  } else if (lw_facts_back_is(f, LW_BACK_FENCE)) {
    lw_verdict_reason *r = because(to, LW_WHAT_BED_AGAINST_FENCE, origin, "back-is-fence", HERE);
    if (r)
      lw_print(r->text, sizeof r->text,
               "%sa fence closes the bed, and its posts were not made to carry soil: "
               "build a fourth side.",
               unknown);
    if (r && !unknown[0]) r->text[0] = 'A';
    if (r) tell_fence(f, r);
  }
}

/* Distances that are left out make it no other thing than it is known to be: whether it is, is asked. */
static bool all_around_told(const lw_case_site *site) {
  const lw_quantity *around[] = {&site->building_distance, &site->boundary_distance,
                                 &site->public_way_distance, &site->other_wall_distance};
  for (size_t i = 0; i < sizeof around / sizeof *around; i++)
    if (around[i]->origin == LW_ASSUMED) return false;
  return true;
}

void lw_verdict_what(const lw_facts *facts, lw_reaching *to) {
  to->verdict->what = LW_WHAT_BED;
  tier(facts, to);
  ground_behind(facts, to);
  level_difference(facts, to);
  back_is_ground(facts, to);
  wedge(facts, to);
  slope_under(facts, to);
  back_of_bed(facts, to);
  if (to->verdict->what != LW_WHAT_BED) return;
  bool told = all_around_told(&facts->c->site);
  lw_reasons_add(to,
                 &(lw_because){.answer = LW_ANSWER_WHAT,
                               .origin = told ? LW_GIVEN : LW_ASSUMED,
                               .slug = "free-standing",
                               .source = HERE},
                 told ? "Only imported soil would move if the wall vanished, the ground is level across, and "
                        "the bed has four sides of its own."
                      : "As far as the sheet tells only imported soil would move if the wall vanished; how "
                        "far all that stands around it is, it does not tell.");
}
