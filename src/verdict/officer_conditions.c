/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "officer_conditions.h"

#include "sheet/values.h"

bool lw_officer_told(const lw_facts *facts) {
  const lw_case_officer *o = &facts->c->officer;
  return o->rain_to.origin || o->easement.origin || o->protected_trees.origin || o->flood_land.origin ||
         o->bushfire_land.origin || o->coast_land.origin || o->neighbour_consent.origin ||
         o->sight_lines.origin || o->other_works.origin || o->built_by.origin;
}

static const lw_case_officer *of(const lw_facts *facts) {
  return &facts->c->officer;
}

/* Left out it is not so; not known it is open. */
static lw_so is(const lw_choice *choice, int value, const char *known, const char *item, lw_finding *found) {
  if (choice->origin == LW_ABSENT) return LW_SO_NOT;
  if (choice->origin == LW_ASSUMED) return lw_open_by(found, item);
  if (choice->value != value) return LW_SO_NOT;
  lw_tell(found, "%s", known);
  return LW_SO_YES;
}

/* The sentence of the table says all. */
static lw_so is_yes(const lw_choice *choice, const char *item, lw_finding *found) {
  return is(choice, LW_YES, "", item, found);
}

/* Where it ends is asked once, by what is gravest. */
static lw_so rain_ends(const lw_facts *facts, lw_rain_to where, const char *known, lw_finding *found) {
  const lw_choice *to = &of(facts)->rain_to;
  return to->origin == LW_ASSUMED ? LW_SO_NOT : is(to, (int)where, known, "rain water to", found);
}

lw_so lw_officer_rain_led_away(const lw_facts *facts, lw_finding *found) {
  lw_so street = rain_ends(facts, LW_RAIN_STREET, "it goes to the street", found);
  return street == LW_SO_YES ? street : rain_ends(facts, LW_RAIN_EASEMENT, "it goes to an easement", found);
}

lw_so lw_officer_rain_soaks_away(const lw_facts *facts, lw_finding *found) {
  return rain_ends(facts, LW_RAIN_SOAKAWAY, "", found);
}

lw_so lw_officer_rain_next_door(const lw_facts *facts, lw_finding *found) {
  return is(&of(facts)->rain_to, LW_RAIN_NEXT_DOOR, "that is where its rain water ends", "rain water to",
            found);
}

lw_so lw_officer_easement(const lw_facts *facts, lw_finding *found) {
  const lw_choice *easement = &of(facts)->easement;
  lw_so beside = is(easement, LW_EASEMENT_BESIDE, "beside the wall", "easement", found);
  return beside == LW_SO_NOT ? is(easement, LW_EASEMENT_UNDER, "under the wall or the dig", "easement", found)
                             : beside;
}

lw_so lw_officer_protected_trees(const lw_facts *facts, lw_finding *found) {
  return is_yes(&of(facts)->protected_trees, "protected trees", found);
}

lw_so lw_officer_flood_land(const lw_facts *facts, lw_finding *found) {
  return is_yes(&of(facts)->flood_land, "flood land", found);
}

lw_so lw_officer_bushfire_land(const lw_facts *facts, lw_finding *found) {
  return is_yes(&of(facts)->bushfire_land, "bushfire land", found);
}

lw_so lw_officer_coast_land(const lw_facts *facts, lw_finding *found) {
  return is_yes(&of(facts)->coast_land, "coast land", found);
}

/* What is not known is asked by the map's own row. */
lw_so lw_officer_named_maps(const lw_facts *facts, lw_finding *found) {
  const struct {
    const lw_choice *choice;
    const char *words;
  } maps[] = {{&of(facts)->flood_land, "floods"},
              {&of(facts)->bushfire_land, "bushfire"},
              {&of(facts)->coast_land, "the coast"}};
  lw_so so = LW_SO_NOT;
  for (size_t i = 0; i < sizeof maps / sizeof *maps; i++) {
    if (maps[i].choice->origin != LW_GIVEN || maps[i].choice->value != LW_YES) continue;
    lw_tell(found, "%s%s", so == LW_SO_YES ? ", " : "a map of ", maps[i].words);
    so = LW_SO_YES;
  }
  return so;
}

lw_so lw_officer_no_consent(const lw_facts *facts, lw_finding *found) {
  return is(&of(facts)->neighbour_consent, LW_NO, "", "neighbour consent", found);
}

lw_so lw_officer_sight_lines(const lw_facts *facts, lw_finding *found) {
  return is_yes(&of(facts)->sight_lines, "sight lines", found);
}

lw_so lw_officer_other_works(const lw_facts *facts, lw_finding *found) {
  static const char *const words[] = {[LW_OTHER_WORKS_NONE] = "",
                                      [LW_OTHER_WORKS_BUILDING] = "with it comes a building",
                                      [LW_OTHER_WORKS_POOL] = "with it comes a pool",
                                      [LW_OTHER_WORKS_PAVING] = "with it comes paving or a drive",
                                      [LW_OTHER_WORKS_EARTHWORKS] = "with it come earthworks",
                                      [LW_OTHER_WORKS_OTHER] = "with it come other works"};
  const lw_choice *other = &of(facts)->other_works;
  if (other->origin == LW_GIVEN && other->value == LW_OTHER_WORKS_NONE) return LW_SO_NOT;
  return is(other, other->value, words[other->value], "other works", found);
}

lw_so lw_officer_owner_builds(const lw_facts *facts, lw_finding *found) {
  const lw_choice *by = &of(facts)->built_by;
  if (by->origin == LW_GIVEN && by->value == LW_BUILT_BY_LICENSED) return LW_SO_NOT;
  return is(by, by->value, by->value == LW_BUILT_BY_OWNER ? "its owner builds it" : "unpaid helpers build it",
            "built by", found);
}
