/* SPDX-License-Identifier: GPL-3.0-or-later */
/* What stands beside the wall is drawn or named, by its number on the sheet, at either width. */
#include "../checks/random_wall.h"
#include "on_paper.h"
#include "walls.h"

#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <stdio.h>
#include <string.h>

static const double WIDTHS_MM[] = {95.0, 180.0};

/* The drawing knows no slips, and the search for them takes most of a wall's time. */
#define WALL \
  "course count=5;block height=220 mm;block depth=500 mm;wall embedment=200 mm;setback=15 mm;" \
  "method slip=not;"
#define OTHER "other wall height=700 mm;other wall side="

static const struct {
  const char *items, *said, *not_said;
} rows[] = {
    {WALL "load 1 kind=uniform;load 1 pressure=2.5 kPa;load 2 kind=strip;load 2 pressure=12 kPa;load 2 near "
          "edge=1 m;load 2 far edge=2.8 m",
     "load 2, 12.0 kPa from 1.00 to 2.80 m", "load 1,"},
    {WALL "load 1 kind=none;load 2 kind=line;load 2 force=4 kN/m;load 2 distance=9 m",
     "load 2, 4.0 kN/m, 9.00 m behind the top: out of the picture", NULL},
    {WALL "load 1 kind=none;load 2 name=pallet", "load 2 (pallet), ", NULL},
    {WALL "load 1 kind=cap;load 1 force=0.5 kN/m;load 1 push=0.74 kN/m",
     "load 1 on the cap, 0.5 kN/m down and 0.74 outward", NULL},
    {WALL "other wall distance=1.2 m;" OTHER "above", "face of the other wall, 0.70 m high and 1.20 m away",
     "1000.00 m"},
    {WALL "other wall distance=1.2 m;" OTHER "below", "the other wall, 0.70 m high, stands here, 1.20 m away",
     "out of the picture"},
    {WALL "other wall distance=20 m;" OTHER "below", "20.00 m away on this side, below", NULL},
    {WALL "fence height=1.5 m;fence place=behind;fence distance=0.4 m", "fence, 1.50 m high, 0.40 m behind",
     NULL},
    {WALL "fence height=0.3 m", "fence, 0.30 m high, on the wall", "broken off"},
    {WALL "fence height=1.7 m;fence place=behind;fence distance=30 m", "1.70 m high is further behind", NULL},
    {WALL "water depth=0.7 m;front water depth=0.8 m", "water in front, 0.80 m below the top", NULL},
    {WALL "soil 1 name=clay", "the forces cannot be shown", "it tips about this edge"}};

static bool says(const lw_drawing *d, const char *words) {
  return strstr(d->description.data, words) != NULL;
}

Test(drawing, what_stands_beside_the_wall_is_told) {
  for (size_t i = 0; i < sizeof rows / sizeof *rows; i++)
    for (size_t w = i % 2; w<sizeof WIDTHS_MM / sizeof *WIDTHS_MM; w += RANDOM_SHARE> 1 ? 2 : 1) {
      lw_drawing d = {0};
      lw_error error = {0};
      cr_assert_eq(lw_draw_section(wall_of(rows[i].items), WIDTHS_MM[w], &d, &error), LW_OK, "%s",
                   error.text);
      expect_on_paper(&d, rows[i].items);
      cr_expect(says(&d, rows[i].said), "%s: %s", rows[i].items, d.description.data);
      if (rows[i].not_said) cr_expect_not(says(&d, rows[i].not_said), "%s", rows[i].items);
      lw_drawing_free(&d);
    }
}

/* What else a section may show. */
static const char *const MORE[] = {
    WALL "stone width=300 mm;stone filter=cloth;drain outlets=2;outlet level=50 mm;boundary distance=0.9 m",
    WALL "stone width=300 mm;stone filter=graded;drain outlets=1;pad thickness=150 mm;pad width=800 mm;"
         "bedding thickness=30 mm;boundary distance=9 m",
    WALL "pad thickness=150 mm;cap height=60 mm;cap depth=400 mm;load 1 kind=cap;load 1 force=0.5 kN/m",
    WALL "site behind=bed;bed width=1700 mm;stone width=250 mm;stone filter=cloth;load 1 kind=point;"
         "load 1 force=2 kN;load 1 distance=0.6 m",
    WALL "fence height=1.5 m;fence place=behind;fence distance=0.2 m;wind pressure=1.2 kPa"};

static void expect_us(const char *items, double width_mm) {
  char all[400];
  lw_drawing d = {0};
  lw_error error = {0};
  snprintf(all, sizeof all, "%s;units=us", items);
  cr_assert_eq(lw_draw_section(wall_of(all), width_mm, &d, &error), LW_OK, "%s", error.text);
  expect_on_paper(&d, all);
  expect_no_metric(&d, all);
  lw_drawing_free(&d);
}

Test(drawing, what_stands_beside_the_wall_is_told_in_feet_and_pounds) {
  static const double US_WIDTHS_MM[] = {80.0, 100.0, 180.0};
  for (size_t i = 0; i<sizeof rows / sizeof *rows; i += RANDOM_SHARE> 1 ? 3 : 1)
    expect_us(rows[i].items, US_WIDTHS_MM[i % 3]);
  for (size_t i = 0; i < sizeof MORE / sizeof *MORE; i++) expect_us(MORE[i], US_WIDTHS_MM[i % 3]);
}
