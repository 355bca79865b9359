/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "help.h"

/* Heights are set through four courses of equal blocks, nothing buried, so that every definition is one
 * figure. */
static lw_verdict of_height(double height_m, const char *more) {
  char changes[240];
  snprintf(changes, sizeof changes, "wall embedment=0 mm;block height=%.6g mm%s%s", height_m * 250.0,
           more[0] ? ";" : "", more);
  return verdict_of(changes, LW_HOLDS);
}

typedef struct step {
  double height_m;
  const char *more;
  lw_who who;
} step;

/* Each row of the default, at its figure and a millimetre past it. */
Test(verdict, default_limits_at_their_figures) {
  static const step steps[] = {
      {0.3, "", LW_WHO_BUILDER},
      {0.5, "", LW_WHO_BUILDER},
      {0.501, "", LW_WHO_COUNCIL},
      {0.6, "", LW_WHO_COUNCIL},
      {0.601, "", LW_WHO_COUNCIL},
      {1.0, "", LW_WHO_COUNCIL},
      {1.001, "", LW_WHO_ENGINEER},
      {1.5, "", LW_WHO_ENGINEER},
      {1.501, "", LW_WHO_ENGINEER},
      {0.6, "load 1 kind=uniform;load 1 pressure=5 kPa", LW_WHO_COUNCIL},
      {0.601, "load 1 kind=uniform;load 1 pressure=5 kPa", LW_WHO_ENGINEER},
      {0.601, "load 1 kind=uniform;load 1 pressure=2.5 kPa", LW_WHO_COUNCIL},
  };
  for (size_t i = 0; i < sizeof steps / sizeof *steps; i++) {
    lw_verdict v = of_height(steps[i].height_m, steps[i].more);
    cr_expect_eq(v.who, steps[i].who, "%g m %s: %s (%s)", steps[i].height_m, steps[i].more,
                 lw_who_slug(v.who), v.headline);
  }
}

Test(verdict, past_one_and_a_half_metres_no_small_wall_rule_holds) {
  lw_verdict at = of_height(1.5, ""), past = of_height(1.501, "");
  cr_expect_null(verdict_reason(&at, LW_ANSWER_WHO, "limit-design"));
  cr_expect_not_null(verdict_reason(&past, LW_ANSWER_WHO, "limit-design"));
}

Test(verdict, level_is_up_to_one_in_twenty) {
  lw_verdict level = of_height(0.4, "ground slope=1:20"), steep = of_height(0.4, "ground slope=1:19");
  cr_expect_eq(level.who, LW_WHO_BUILDER);
  cr_expect_eq(steep.who, LW_WHO_ENGINEER);
  cr_expect_not_null(verdict_reason(&steep, LW_ANSWER_WHO, "sloping-ground"));
}

typedef struct cause {
  const char *changes, *slug;
} cause;

static void expect_cause(const cause *rows, size_t count, lw_who who) {
  for (size_t i = 0; i < count; i++) {
    lw_verdict v = verdict_of(rows[i].changes, LW_HOLDS);
    const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_WHO, rows[i].slug);
    cr_expect_eq(v.who, who, "%s: %s", rows[i].changes, lw_who_slug(v.who));
    cr_expect_not_null(r, "%s: no %s", rows[i].changes, rows[i].slug);
    if (!r) continue;
    cr_expect_eq(r->who, who, "%s", rows[i].changes);
    cr_expect_neq(r->source[0], '\0', "%s has no source", r->slug);
    cr_expect_neq(r->text[0], '\0');
  }
}

/* What means an engineer whatever the height, each alone. */
Test(verdict, each_condition_alone_means_an_engineer) {
  static const cause rows[] = {
      {"site behind=ground;building distance=0.39 m", "supports-building"},
      {"vehicle access=yes", "vehicle-load"},
      {"water held behind=yes", "water-held"},
      {"pool barrier distance=0 m", "water-held"},
      {"other wall distance=0.59 m", "other-wall-near"},
      {"ground slope=1:19", "sloping-ground"},
      {"front slope=1:19", "sloping-ground"},
      {"boundary distance=0.39 m", "boundary"},
      {"public way distance=0.39 m", "public-way"},
      {"mapped land=yes", "mapped-land"},
      {"reactive soil=yes", "reactive-soil"},
      {"fence height=0.1 m;fence place=on the wall", "fence-load"},
      {"fence height=1.8 m;fence distance=0.39 m", "fence-load"},
      {"course count=12;site above=household", "barrier-needed"},
      {"drain outlets=0;wall joints=sealed;ground drains=no", "no-outlet"},
      {"water depth=0.2 m", "no-outlet"},
      {"soil 1 name=organic soil", "bad-fill"},
      {"soil 1 name=topsoil;course count=9", "bad-fill"},
      {"soil 1 name=compost;course count=6", "bad-fill"},
      {"footing soil name=organic soil", "bad-fill"},
      {"works=moved", "wall-that-moved"},
      {"works=raised", "wall-that-moved"},
      {"service distance=0.09 m", "digs-below-footing"},
      {"strong earthquakes=yes", "earthquake"},
      {"shaken ground=yes", "vibrating-load"},
      {"water sent next door=yes", "drains-next-door"},
      {"rain water to=next door", "drains-next-door"},
      {"flood land=yes", "mapped-land"},
      {"bushfire land=yes", "mapped-land"},
      {"coast land=yes", "mapped-land"},
  };
  expect_cause(rows, sizeof rows / sizeof *rows, LW_WHO_ENGINEER);
}

/* Outlets, open joints and ground that drains: each alone lets the water out. */
Test(verdict, one_way_out_of_three_is_enough) {
  static const char *const ways[] = {"drain outlets=1;wall joints=sealed;ground drains=no",
                                     "drain outlets=0;wall joints=open;ground drains=no",
                                     "drain outlets=0;wall joints=sealed;ground drains=yes"};
  for (size_t i = 0; i < sizeof ways / sizeof *ways; i++) {
    lw_verdict v = verdict_of(ways[i], LW_HOLDS);
    cr_expect_null(verdict_reason(&v, LW_ANSWER_WHO, "no-outlet"), "%s", ways[i]);
  }
}

Test(verdict, each_missed_clearance_alone_means_the_council) {
  static const cause rows[] = {
      {"boundary distance=0.99 m", "clearance-boundary"},
      {"building distance=1.49 m", "clearance-building"},
      {"other wall distance=1.99 m", "clearance-other-wall"},
      {"load 1 kind=strip;load 1 pressure=5 kPa;load 1 near edge=1.49 m;load 1 far edge=3 m",
       "clearance-load"},
      {"service distance=0.99 m", "clearance-service"},
      {"waterbody distance=39.9 m", "clearance-waterbody"},
      {"public way distance=3.65 m", "clearance-public-way"},
      {"pool barrier distance=0.89 m", "clearance-pool-barrier"},
      {"other wall side=above;other wall height=1.1 m;other wall distance=2.1 m", "upper-wall-taller"},
      {"site back=fence", "fence-carries-soil"},
      {"course count=6;fence height=1.8 m;fence distance=0.46 m", "fence-near"},
      {"building distance=0.09 m", "digs-beside-building"},
      {"rain water to=street", "rain-led-away"},
      {"rain water to=easement", "rain-led-away"},
      {"rain water to=soakaway", "rain-soakaway"},
      {"easement=beside", "easement"},
      {"easement=under", "easement"},
      {"protected trees=yes", "protected-trees"},
      {"sight lines=yes", "sight-lines"},
      {"other works=building", "other-works"},
      {"other works=pool", "other-works"},
      {"other works=paving", "other-works"},
      {"other works=earthworks", "other-works"},
      {"other works=other", "other-works"},
  };
  expect_cause(rows, sizeof rows / sizeof *rows, LW_WHO_COUNCIL);
}

Test(verdict, clearances_just_kept_leave_it_to_the_builder) {
  lw_verdict v = verdict_of("boundary distance=1 m;building distance=1.5 m;other wall distance=2 m;"
                            "service distance=1 m;waterbody distance=40 m;public way distance=3.66 m;"
                            "pool barrier distance=0.9 m",
                            LW_HOLDS);
  cr_expect_eq(v.who, LW_WHO_BUILDER, "%s", v.headline);
  cr_expect_eq(v.exit_status, 0);
}

/* A drop that people reach is asked about from 0.6 m; where nobody is above it is not. */
Test(verdict, a_fall_is_asked_about) {
  lw_verdict people = of_height(0.6, "site above=household"), nobody = of_height(0.6, "site above=nobody");
  cr_expect_not_null(verdict_reason(&people, LW_ANSWER_WHO, "limit-barrier"));
  cr_expect_null(verdict_reason(&nobody, LW_ANSWER_WHO, "limit-barrier"));
  cr_expect_eq(people.who, LW_WHO_COUNCIL);
}

/* Every condition of the table has its answer here, or is one that no item asks for. */
Test(verdict, every_row_of_conditions_is_answered) {
  static const char *const answered[] = {
      "supports-building", "vehicle-load",   "water-held",           "other-wall-near",
      "sloping-ground",    "boundary",       "public-way",           "mapped-land",
      "reactive-soil",     "fence-load",     "barrier-needed",       "no-outlet",
      "bad-fill",          "earthquake",     "wall-that-moved",      "digs-below-footing",
      "heritage",          "vibrating-load", "fence-carries-soil",   "load-inside-influence",
      "drains-next-door",  "fence-near",     "digs-beside-building", "rain-led-away",
      "rain-soakaway",     "easement",       "protected-trees",      "flood-land",
      "bushfire-land",     "coast-land",     "neighbour-consent",    "sight-lines",
      "other-works",       "owner-builds"};
  const lw_tables *tables = verdict_tables();
  cr_expect_eq((size_t)tables->condition_count, sizeof answered / sizeof *answered);
  for (size_t i = 0; i < sizeof answered / sizeof *answered; i++) {
    cr_expect_not_null(lw_tables_condition(tables, answered[i]), "%s", answered[i]);
  }
}

/* An answer left out is a question for the council, by its name and its words. */
Test(verdict, an_answer_left_out_is_a_question) {
  lw_verdict v = verdict_of("boundary distance=unknown", LW_HOLDS);
  const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_WHO, "clearance-boundary");
  cr_assert_not_null(r);
  cr_expect(r->assumed);
  cr_expect_str_eq(r->left_out, "boundary distance");
  cr_expect_not_null(strstr(r->text, "How far is the nearest boundary?"), "%s", r->text);
  cr_expect_eq(v.who, LW_WHO_COUNCIL);
  cr_expect_not_null(strstr(v.headline, "boundary distance"), "%s", v.headline);
}

/* What stands there is told before a vehicle that may come, and what is known before what is not. */
Test(verdict, the_heavy_load_that_is_known_is_the_one_told) {
  static const struct {
    const char *changes, *told;
    bool assumed;
  } rows[] = {
      {"vehicle access=unknown;load 1 kind=strip;load 1 pressure=5 kPa;load 1 near edge=1.2 m;"
       "load 1 far edge=3 m",
       "1.20 m", false},
      {"vehicle access=unknown;load 1 kind=strip;load 1 pressure=5 kPa;load 1 near edge=6 m;"
       "load 1 far edge=7 m",
       "leaves out vehicle access", true},
      {"vehicle access=unknown", "leaves out vehicle access", true},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_verdict v = verdict_of(rows[i].changes, LW_HOLDS);
    const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_WHO, "clearance-load");
    cr_assert_not_null(r, "%s", rows[i].changes);
    cr_expect_eq(r->assumed, rows[i].assumed, "%s: %s", rows[i].changes, r->text);
    cr_expect_not_null(strstr(r->text, rows[i].told), "%s: %s", rows[i].changes, r->text);
    cr_expect_eq(r->left_out != NULL, rows[i].assumed, "%s", r->text);
  }
}

/* A known place has its own figures; what is nowhere mild stays grave. */
Test(verdict, a_known_place_has_its_own_height) {
  lw_verdict nz = of_height(1.4, "place=new-zealand"), past = of_height(1.501, "place=new-zealand");
  cr_expect(nz.place_known);
  cr_expect_neq(nz.who, LW_WHO_ENGINEER, "%s", nz.headline);
  cr_expect_neq(past.who, LW_WHO_BUILDER);
  lw_verdict slope = of_height(0.3, "place=new-zealand;ground slope=1:4");
  cr_expect_eq(slope.who, LW_WHO_ENGINEER);
}

Test(verdict, below_and_above_in_new_south_wales) {
  lw_verdict at = of_height(0.6, "place=NSW"), past = of_height(0.601, "place=NSW");
  cr_expect_eq(at.who, LW_WHO_BUILDER, "%s", at.headline);
  cr_expect_not_null(strstr(at.headline, "New South Wales"));
  cr_expect_not_null(strstr(at.headline, "confirm with the authority"));
  cr_expect_neq(past.who, LW_WHO_BUILDER);
  cr_expect_not_null(verdict_reason(&past, LW_ANSWER_WHO, "limit-exemption"));
}

Test(verdict, a_place_without_a_height_of_its_own_falls_back_on_the_default) {
  lw_verdict v = of_height(0.55, "place=scotland");
  cr_expect_not(v.place_known);
  cr_expect_eq(v.who, LW_WHO_COUNCIL);
}

/* A council changes one cell. */
Test(verdict, one_cell_of_limits_changes_the_verdict) {
  lw_tables *tables = verdict_tables_copy();
  const char *wall = "place=NSW;wall embedment=0 mm;block height=150 mm";
  cr_expect_eq(verdict_with(tables, wall, LW_HOLDS).exit_status, 0);
  verdict_limit(tables, "AU-NSW-01")->height_m = 0.45;
  cr_expect_eq(verdict_with(tables, wall, LW_HOLDS).exit_status, 3);
  verdict_limit(tables, "AU-NSW-01")->trigger = LW_ENGINEER_ABOVE;
  cr_expect_eq(verdict_with(tables, wall, LW_HOLDS).exit_status, 5);
  free(tables);
}

Test(verdict, one_cell_of_conditions_changes_who_is_called) {
  lw_tables *tables = verdict_tables_copy();
  for (int i = 0; i < tables->condition_count; i++) {
    lw_condition_row *row = &tables->condition[i];
    if (strcmp(row->slug, "reactive-soil") == 0) row->for_engineer = !(row->for_council = true);
  }
  cr_expect_eq(verdict_with(tables, "reactive soil=yes", LW_HOLDS).who, LW_WHO_COUNCIL);
  cr_expect_eq(verdict_of("reactive soil=yes", LW_HOLDS).who, LW_WHO_ENGINEER);
  free(tables);
}

/* A row unsure of itself calls for the council at most. */
Test(verdict, a_row_of_low_confidence_only_asks) {
  lw_tables *tables = verdict_tables_copy();
  lw_limit_row *row = verdict_limit(tables, "AU-NSW-03");
  const char *wall = "place=NSW;wall embedment=0 mm;block height=160 mm;cut depth=0.64 m;fill depth=0 m";
  cr_expect_eq(verdict_with(tables, wall, LW_HOLDS).who, LW_WHO_ENGINEER);
  row->unsure = true;
  cr_expect_eq(verdict_with(tables, wall, LW_HOLDS).who, LW_WHO_COUNCIL);
  free(tables);
}

Test(verdict, tiers_add_up_where_the_row_says_so) {
  lw_verdict alone = of_height(0.6, "place=south-australia;other wall height=0.6 m");
  lw_verdict both = of_height(0.6, "place=south-australia;other wall height=0.6 m;other wall distance=1.9 m");
  cr_expect_null(verdict_reason(&alone, LW_ANSWER_WHO, "limit-approval"), "%s", alone.headline);
  cr_expect_not_null(verdict_reason(&both, LW_ANSWER_WHO, "limit-approval"));
}

/* For the cautious default no wall on a clear site is treated more mildly than where a limit is on file
 * and low. */
Test(verdict, the_default_never_falls_behind_with_height) {
  lw_who before = LW_WHO_BUILDER;
  for (int mm = 100; mm <= 1800; mm += 50) {
    lw_verdict v = of_height(mm / 1000.0, "");
    cr_expect_geq(v.who, before, "%d mm", mm);
    before = v.who;
  }
}

/* A plant soil may be in a bed for all that the sheet tells: that is asked, and calls no engineer. */
Test(verdict, plant_soil_that_may_be_in_a_bed_is_a_question) {
  static const char *const named[] = {"soil 1 name=topsoil", "soil 1 name=planting mix",
                                      "soil 1 name=compost"};
  char changes[160];
  for (int i = 0; i < 3; i++) {
    snprintf(changes, sizeof changes, "%s;site behind=unknown", named[i]);
    lw_verdict open = verdict_of(changes, LW_HOLDS);
    cr_expect_eq(open.stands, LW_CANNOT_SHOW, "%s", changes);
    cr_expect_eq(open.who, LW_WHO_COUNCIL, "%s", changes);
    snprintf(changes, sizeof changes, "%s;wall embedment=unknown;block height=unknown;course count=5",
             named[i]);
    cr_expect_neq(verdict_of(changes, LW_HOLDS).who, LW_WHO_ENGINEER, "%s", changes);
    cr_expect_eq(verdict_of(named[i], LW_HOLDS).stands, LW_HOLDS, "%s in a bed", named[i]);
  }
}
