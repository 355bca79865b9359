/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "tables/shape.h"
#include "help.h"

static const char council[] = "wall embedment=0 mm;block height=200 mm"; /* 0.8 m, clear and level */

Test(verdict, exit_statuses_gravest_first) {
  cr_expect_eq(verdict_of("", LW_HOLDS).exit_status, 0);
  cr_expect_eq(verdict_of(council, LW_HOLDS).exit_status, 3);
  cr_expect_eq(verdict_of("", LW_FALLS_SHORT).exit_status, 4);
  cr_expect_eq(verdict_of("", LW_CANNOT_SHOW).exit_status, 4);
  cr_expect_eq(verdict_of(council, LW_FALLS_SHORT).exit_status, 4);
  cr_expect_eq(verdict_of("mapped land=yes", LW_HOLDS).exit_status, 5);
  cr_expect_eq(verdict_of("mapped land=yes", LW_FALLS_SHORT).exit_status, 5);
}

Test(verdict, stands_follows_the_checks) {
  lw_verdict holds = verdict_of("", LW_HOLDS), falls = verdict_of("", LW_FALLS_SHORT);
  lw_verdict unknown = verdict_of("", LW_CANNOT_SHOW);
  cr_expect_eq(holds.stands, LW_HOLDS);
  cr_expect_eq(falls.stands, LW_FALLS_SHORT);
  cr_expect_eq(unknown.stands, LW_CANNOT_SHOW);
  cr_expect_not_null(verdict_reason(&holds, LW_ANSWER_STANDS, "holds"));
  cr_expect_not_null(verdict_reason(&unknown, LW_ANSWER_STANDS, "no-wedge"));
  const lw_verdict_reason *r = verdict_reason(&falls, LW_ANSWER_STANDS, "falls-short");
  cr_assert_not_null(r);
  cr_expect_not_null(strstr(r->text, "Sliding on its base has 1.32 and needs 1.50 ("), "%s", r->text);
  cr_expect_not_null(strstr(r->text, "less margin than asked"), "%s", r->text);
}

typedef struct refusal {
  const char *changes, *slug;
} refusal;

/* Refused as engineering: it cannot be shown, and an engineer is called, even where every check holds. */
Test(verdict, what_is_refused_cannot_be_shown) {
  static const refusal rows[] = {
      {"soil 1 name=topsoil;site behind=ground", "refused-backfill"},
      {"soil 1 name=planting mix;course count=9", "refused-backfill"},
      {"soil 1 name=compost;course count=6", "refused-backfill"},
      {"soil 1 name=high-plasticity clay", "refused-backfill"},
      {"soil 1 name=organic soil", "refused-backfill"},
      {"soil 1 name=uncontrolled fill", "refused-backfill"},
      {"site back=building", "building-behind"},
      {"site back=building;site behind=ground", "building-behind"},
      {"fence height=0.4 m;fence place=on the wall", "fence-on-wall"},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_verdict v = verdict_of(rows[i].changes, LW_HOLDS);
    cr_expect_eq(v.stands, LW_CANNOT_SHOW, "%s", rows[i].changes);
    cr_expect_eq(v.who, LW_WHO_ENGINEER, "%s", rows[i].changes);
    cr_expect_eq(v.exit_status, 5, "%s", rows[i].changes);
    const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_STANDS, rows[i].slug);
    cr_expect_not_null(r, "%s", rows[i].changes);
    cr_expect(r && strlen(r->text) > 20);
  }
}

static bool begins(const char *text, const char *with) {
  return strncmp(text, with, strlen(with)) == 0;
}

Test(verdict, headline_of_each_kind) {
  lw_verdict engineer = verdict_of("mapped land=yes", LW_HOLDS);
  cr_expect(begins(engineer.headline, "This is past the simple garden-bed limit: a licensed engineer"), "%s",
            engineer.headline);
  cr_expect_not_null(strstr(engineer.headline, " must design it under the local code before work starts. "));
  lw_verdict ask = verdict_of(council, LW_HOLDS);
  cr_expect(begins(ask.headline, "Ask the council before building. "), "%s", ask.headline);
  lw_verdict below = verdict_of("", LW_HOLDS);
  cr_expect_not_null(strstr(below.headline, "below the limit on file for "), "%s", below.headline);
  cr_expect_not_null(strstr(below.headline, "confirm with the authority"));
  lw_verdict falls = verdict_of("", LW_FALLS_SHORT);
  cr_expect(
      begins(falls.headline, "It has less margin than asked. Sliding on its base has 1.32 and needs 1.50 ("),
      "%s", falls.headline);
  lw_verdict both = verdict_of(council, LW_FALLS_SHORT);
  cr_expect_not_null(strstr(both.headline, "Ask the council too"));
  lw_verdict unknown = verdict_of("", LW_CANNOT_SHOW);
  cr_expect(begins(unknown.headline,
                   "Nobody can say from this sheet that it stands. Sliding on its base cannot be shown, "),
            "%s", unknown.headline);
}

/* A known answer is given as the reason before one that is only assumed. */
Test(verdict, headline_prefers_what_is_known) {
  lw_verdict v = verdict_of("vehicle access=unknown;mapped land=yes", LW_HOLDS);
  cr_expect_not_null(strstr(v.headline, "mapped for"), "%s", v.headline);
}

/* Words that the tool never says. */
static bool says(const char *text, const char *word) {
  size_t length = strlen(word);
  for (const char *at = text; *at; at++) {
    bool before = at > text && isalpha((unsigned char)at[-1]);
    size_t same = 0;
    while (same < length && tolower((unsigned char)at[same]) == word[same]) same++;
    if (same == length && !before && !isalpha((unsigned char)at[length])) return true;
  }
  return false;
}

static void expect_modest(const char *text, const char *changes) {
  static const char *const never[] = {"no approval needed", "compliant", "safe", "safely",
                                      "complies",           "permitted"};
  for (size_t i = 0; i < sizeof never / sizeof *never; i++) {
    cr_expect_not(says(text, never[i]), "%s: says %s: %s", changes, never[i], text);
  }
}

Test(verdict, the_finder_of_words_finds_them) {
  cr_expect(says("It is Safe.", "safe"));
  cr_expect(says("no approval needed", "no approval needed"));
  cr_expect_not(says("a safeguard, unsafe", "safe"));
}

Test(verdict, words_that_are_never_said) {
  static const char *const walls[] = {
      "",
      council,
      "mapped land=yes;reactive soil=yes;vehicle access=unknown",
      "place=NSW",
      "place=new-zealand",
      "site behind=ground;course count=14;site above=public;ground slope=1:3;boundary distance=unknown",
      "site back=building",
      "site back=fence;fence height=1 m",
      "soil 1 name=topsoil;works=moved;site behind=ground",
      "water depth=0.1 m;drain outlets=0;wall joints=sealed;ground drains=no;pool barrier distance=0 m"};
  for (size_t i = 0; i < sizeof walls / sizeof *walls; i++) {
    for (int holds = LW_HOLDS; holds <= LW_CANNOT_SHOW; holds++) {
      lw_verdict v = verdict_of(walls[i], (lw_holds)holds);
      expect_modest(v.headline, walls[i]);
      for (int r = 0; r < v.reasons.count; r++) expect_modest(v.reasons.reason[r].text, walls[i]);
      for (int k = 0; k < v.reasons.caution_count; k++)
        expect_modest(v.reasons.caution[k]->caution, walls[i]);
    }
  }
}

/* The headline holds its whole sentence, whatever the reason is long. */
Test(verdict, headline_is_never_cut) {
  const lw_tables *tables = verdict_tables();
  static const char *const each[] = {"other wall distance=0.5 m",
                                     "ground slope=1:4",
                                     "building distance=0.2 m",
                                     "vehicle access=unknown",
                                     "water held behind=yes",
                                     "boundary distance=0.1 m",
                                     "reactive soil=unknown",
                                     "works=raised",
                                     "soil 1 name=topsoil;site behind=ground",
                                     "soil 1 name=topsoil;site behind=unknown",
                                     "soil 1 name=topsoil;course count=9",
                                     "soil 1 name=compost;course count=6"};
  cr_assert_gt(tables->condition_count, 0);
  for (size_t i = 0; i < sizeof each / sizeof *each; i++) {
    lw_verdict v = verdict_of(each[i], LW_HOLDS);
    size_t length = strlen(v.headline);
    cr_expect(length > 60 && v.headline[length - 1] == '.', "%s", v.headline);
    for (int r = 0; r < v.reasons.count; r++) {
      size_t end = strlen(v.reasons.reason[r].text);
      cr_expect(end > 0 && v.reasons.reason[r].text[end - 1] == '.', "%s", v.reasons.reason[r].text);
    }
  }
}

static bool cautioned(const lw_verdict *v, const char *cue) {
  for (int i = 0; i < v->reasons.caution_count; i++) {
    if (lw_tables_listed(v->reasons.caution[i]->when, cue)) return true;
  }
  return false;
}

Test(verdict, five_to_ten_cautions_each_once) {
  static const char *const walls[] = {
      "", council, "site behind=ground;course count=14;vehicle access=yes",
      "site back=fence;pool barrier distance=1.2 m;reactive soil=yes;works=moved;"
      "other wall distance=0.3 m;ground slope=1:4;cap height=50 mm"};
  for (size_t i = 0; i < sizeof walls / sizeof *walls; i++) {
    lw_verdict v = verdict_of(walls[i], LW_HOLDS);
    cr_expect(v.reasons.caution_count >= 5 && v.reasons.caution_count <= 10, "%d", v.reasons.caution_count);
    for (int a = 0; a < v.reasons.caution_count; a++) {
      for (int b = a + 1; b < v.reasons.caution_count; b++)
        cr_expect_neq(v.reasons.caution[a], v.reasons.caution[b]);
    }
  }
}

typedef struct cue {
  const char *changes, *cue;
} cue;

Test(verdict, cautions_fit_the_wall) {
  static const cue rows[] = {
      {"", "digging"},
      {"pool barrier distance=1.2 m", "pool"},
      {"site back=fence", "fence-behind"},
      {"vehicle access=yes", "vehicle"},
      {"other wall distance=0.3 m", "tier"},
      {"course count=12", "tall"},
      {"ground slope=1:4", "slope"},
      {"block depth=400 mm", "lifting"},
      {"works=moved", "works-moved"},
      {"public way distance=1 m", "public-way"},
      {"pad thickness=500 mm", "deep-dig"},
  };
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++) {
    lw_verdict v = verdict_of(rows[i].changes, LW_HOLDS);
    cr_expect(cautioned(&v, rows[i].cue), "%s: nothing on %s", rows[i].changes, rows[i].cue);
  }
  lw_verdict plain = verdict_of("block depth=100 mm", LW_HOLDS);
  static const char *const strange[] = {"pool", "vehicle", "tier", "tall", "seismic", "works-moved"};
  for (size_t i = 0; i < sizeof strange / sizeof *strange; i++) cr_expect_not(cautioned(&plain, strange[i]));
}

/* Behind and one wall height away a fence neither refuses the wall nor adds to its height. */
Test(verdict, a_fence_that_keeps_its_distance_is_none_of_the_walls) {
  lw_verdict v = verdict_of("fence height=1.8 m;fence place=behind;fence distance=0.4 m", LW_HOLDS);
  cr_expect_null(verdict_reason(&v, LW_ANSWER_STANDS, "fence-on-wall"));
  cr_expect_null(verdict_reason(&v, LW_ANSWER_WHO, "fence-load"));
  cr_expect_float_eq(v.height_m[LW_HEIGHT_FENCE], v.height_m[LW_HEIGHT_EXPOSED], 1e-9);
}

/* The numbers of the refusal: 0.6 kPa on 1.8 m at the top of a wall 0.4 m high; a building wants a gap. */
Test(verdict, refusals_carry_their_numbers_and_what_to_do) {
  lw_verdict v = verdict_of("fence height=1.8 m;wind pressure=0.6 kPa", LW_HOLDS);
  const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_STANDS, "fence-on-wall");
  cr_assert_not_null(r);
  cr_expect_not_null(strstr(r->text, "1.08 kN/m"), "%s", r->text);
  cr_expect_not_null(strstr(r->text, "1.40 kN m/m"), "%s", r->text);
  cr_expect_not_null(strstr(r->text, "holds 0.38"), "%s", r->text);
  v = verdict_of("site back=building", LW_HOLDS);
  r = verdict_reason(&v, LW_ANSWER_STANDS, "building-behind");
  cr_assert_not_null(r);
  cr_expect_not_null(strstr(r->text, "drained gap and air"), "%s", r->text);
}

/* Soil 0.3 m high, 18 kN/m3 at 30 degrees, beside 0.6 kPa on 1.8 m. */
Test(verdict, a_bed_against_a_fence_is_told_its_ratios) {
  lw_verdict v = verdict_of("site back=fence;fence height=1.8 m;fence place=behind;fence distance=1 m;"
                            "wind pressure=0.6 kPa;fence soil height=300 mm;soil 1 friction angle=30 deg;"
                            "soil 1 unit weight=18 kN/m3;load 1 kind=none",
                            LW_HOLDS);
  const lw_verdict_reason *r = verdict_reason(&v, LW_ANSWER_WHAT, "back-is-fence");
  cr_expect_eq(v.what, LW_WHAT_BED_AGAINST_FENCE);
  cr_assert_not_null(r);
  cr_expect_not_null(strstr(r->text, "4.50 of the wind"), "%s", r->text);
}
