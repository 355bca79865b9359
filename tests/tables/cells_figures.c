/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The tables of single figures: thresholds, fences, ordering. */
#include "tables/shape.h"
#include "cells.h"

#include <criterion/criterion.h>

#include <string.h>

/* The wall that a figure shows on. A figure whose row stands in no list here shows on the first. */
typedef struct figure_wall {
  const char *slugs, *items;
  unsigned shown;
} figure_wall;

#define LOW "course count=3;block height=200 mm;block depth=300 mm;block length=300 mm;wall embedment=100 mm;"
#define BED LOW "site behind=bed;method slip=not;"
#define GROUND LOW "site behind=ground;method slip=not;"

#define HOLLOW \
  GROUND "face shell thickness=30 mm;course count=2;block depth=400 mm;block length=400 mm;" \
         "block unit weight=9 kN/m3;drain outlets=2;wall joints=open;stone filter=cloth;stone width=300 " \
         "mm;soil 1 name=clean sand;soil below " \
         "top=100 mm"

/* Less than 1 by cautious values, a little more than 1 by likely ones. */
#define SLENDER \
  "wall kind=section;wall height=750 mm;overflow below top=750 mm;wall embedment=0 m;top width=200 mm;" \
  "base width=200 mm;site behind=ground;ground slope=0 deg;front slope=0 deg;drain outlets=2;" \
  "people on cap=no;method slip=not;method pressure=coulomb;method plane=back;load 1 kind=uniform;" \
  "load 1 pressure=2 kPa;load 1 pressure likely=1 kPa;soil 1 friction angle=28 deg;" \
  "soil 1 friction angle likely=32 deg;wall friction=14 deg;wall friction likely=21 deg;" \
  "soil 1 unit weight=20 kN/m3;soil 1 unit weight likely=18 kN/m3;base friction=0.35;" \
  "base friction likely=0.45;wall unit weight=21 kN/m3;wall unit weight likely=22 kN/m3"

static const figure_wall thresholds[] = {
    {"level-ground", BED "front slope=1:15", CELLS_VERDICT},
    {"unknown-slope", GROUND "drain outlets=2", CELLS_CHECKS | CELLS_VERDICT},
    {"level-difference", BED "level difference=0.3 m", CELLS_VERDICT},
    {"bed-slope", BED "front slope=1:6", CELLS_VERDICT},
    {"stone-width", GROUND "stone width=400 mm;drain outlets=2", CELLS_CHECKS},
    {"open-joints-hold", GROUND "wall joints=open", CELLS_CHECKS},
    {"fine-soil", BED "wall joints=open;soil 1 name=loam", CELLS_JSON},
    {"lean-height", GROUND "wall height=1.2 m;course count=7;wall embedment=200 mm;soil below top=0.7 m",
     CELLS_CHECKS},
    {"compactor-distance|compactor-heights", BED "plant=small plate compactor", CELLS_TEXT},
    {"machine-distance|machine-mass", BED "plant mass=1600 kg;plant force=0 kN;plant width=4000 mm",
     CELLS_TEXT},
    {"hand-mass", BED "plant mass=30 kg;plant force=0 kN;plant width=300 mm", CELLS_TEXT},
    {"trench-depth", BED "course count=6;wall embedment=600 mm", CELLS_VERDICT},
    {"footing-depth", BED "building distance=0.05 m", CELLS_VERDICT},
    {"footing-line", GROUND "boundary distance=0.3 m;building distance=0.3 m", CELLS_VERDICT},
    {"movement-alarm|lift-mass", BED "run 1 length=3 m", CELLS_ORDER},
    {"tier-apart|tier-one-wall",
     GROUND "other wall distance=0.6 m;other wall height=0.6 m;other wall side=above",
     CELLS_VERDICT | CELLS_CHECKS},
    {"drainable-porosity", BED "storm rain=50 mm", CELLS_TEXT},
    {"keep-out-front", BED "", CELLS_TEXT},
    {"fill-that-counts|same-job|hand-laid-depth",
     HOLLOW ";course count=3;footing soil friction angle=38 deg;allowable bearing=150 kPa;ground slope=0 deg;"
            "people on cap=no;vehicle access=no",
     CELLS_TEXT | CELLS_REMEDIES},
    {"other-wall-height", BED "other wall distance=9 m", CELLS_VERDICT},
    {"trench-line", BED "trench depth=500 mm;trench distance=0.3 m", CELLS_CHECKS | CELLS_VERDICT},
    {"reach-line", GROUND "building distance=0.5 m;ground slope=0 deg", CELLS_VERDICT},
    {"dig-line", BED "service distance=0.09 m", CELLS_VERDICT},
    {"plant-soil-held", BED "course count=4;soil below top=50 mm;soil 1 name=topsoil", CELLS_VERDICT},
    {"compost-depth", BED "soil below top=150 mm;soil 1 name=compost", CELLS_VERDICT},
    {"likely-margin", SLENDER, CELLS_VERDICT},
    {"bearing-reserve", SLENDER ";base friction=2;allowable bearing=25 kPa", CELLS_VERDICT},
    {"likely-friction", GROUND, CELLS_LIKELY},
    {"likely-friction|likely-load", GROUND, CELLS_LIKELY},
    {"full-load-height", BED "vehicle access=no;course count=6", CELLS_CHECKS},
    {"person-side|person-distance|person-spread", BED "vehicle access=no;bed use=planted", CELLS_CHECKS},
    {"weak-ground", BED "allowable bearing=80 kPa", CELLS_CHECKS},
    {"slip-building",
     LOW "site behind=ground;building distance=1.5 m;soil 1 name=clean sand;footing soil name=clean sand;"
         "drain outlets=2;stone width=300 mm",
     CELLS_CHECKS},
    {"paired-cohesion-share|paired-cohesion-most|paired-cohesion-depth|paired-cohesion-shallow|slip-without-"
     "pair",
     "course count=6;block height=200 mm;block depth=900 mm;wall embedment=200 mm;site behind=ground;"
     "ground slope=1:4;soil 1 name=clean sand;footing soil name=stiff clay;reactive soil=no",
     CELLS_TEXT},
    {"likely-ground-face", BED "block depth=500 mm;footing soil name=firm clay", CELLS_CHECKS | CELLS_LIKELY},
    {"ask-again", BED "place=new-south-wales", CELLS_TEXT | CELLS_JSON},
    {NULL, BED, CELLS_TEXT}};

/* No item tells of a tree, nor how deep a footing lies: the cautions say these figures. */
static void say_cautions(const lw_tables *tables, lw_text *out) {
  for (int i = 0; i < tables->hazard_count; i++)
    lw_text_addf(out, "%s %s\n", tables->hazard[i].caution, tables->hazard[i].number);
}

static void look(const figure_wall *walls, const char *slug, const lw_tables *tables, lw_text *out) {
  while (walls->slugs && !lw_tables_listed(walls->slugs, slug)) walls++;
  cells_wall(tables, walls->items, walls->shown, out);
}

static void look_threshold(const lw_tables *tables, int row, lw_text *out) {
  const char *slug = cells_built_in()->threshold[row].slug;
  if (lw_tables_listed("root-radius|footing-line-deep", slug))
    say_cautions(tables, out);
  else
    look(thresholds, slug, tables, out);
}

static const cells_column of_thresholds[] = {
    {"slug", look_threshold, 0}, {"name", NULL, 0}, {"value", look_threshold, 0},
    {"unit", look_threshold, 0}, {"note", NULL, 0}, {"source", NULL, 0},
    {"seen", NULL, 0},           {NULL, NULL, 0}};

Test(cells, every_threshold_decides) {
  cells_expect("thresholds", of_thresholds);
}

#define CLOSED \
  BED "site back=fence;post spacing=2.4 m;post depth=700 mm;board thickness=16 mm;board span=0.8 m;"

static const figure_wall fences[] = {
    {"wind-sheltered", BED "fence height=1.8 m;wind exposure=sheltered", CELLS_TEXT | CELLS_VERDICT},
    {"wind-ordinary", BED "fence height=1.8 m;wind exposure=ordinary", CELLS_TEXT | CELLS_VERDICT},
    {"wind-exposed|run-end", BED "fence height=1.8 m;wind exposure=exposed", CELLS_TEXT | CELLS_VERDICT},
    {"unknown-height|unknown-boundary", BED "boundary distance=0.8 m", CELLS_TEXT | CELLS_VERDICT},
    {"unknown-spacing|unknown-hole|unknown-post-width|unknown-board|unknown-board-span",
     BED "site back=fence", CELLS_TEXT | CELLS_JSON},
    {"keep-off|post-clear", BED "fence height=1.8 m;fence place=behind;fence distance=0.5 m",
     CELLS_TEXT | CELLS_VERDICT},
    {"lateral-bearing|ground-factor|soil-factor|timber-strength|timber-gust|timber-material",
     CLOSED "post section=100 mm", CELLS_TEXT | CELLS_JSON},
    {NULL, CLOSED, CELLS_TEXT | CELLS_JSON}};

static void look_fence(const lw_tables *tables, int row, lw_text *out) {
  look(fences, cells_built_in()->fence[row].slug, tables, out);
}

static const cells_column of_fences[] = {{"slug", look_fence, 0}, {"name", NULL, 0}, {"value", look_fence, 0},
                                         {"unit", look_fence, 0}, {"note", NULL, 0}, {"source", NULL, 0},
                                         {"seen", NULL, 0},       {NULL, NULL, 0}};

Test(cells, every_figure_of_fences_decides) {
  cells_expect("fences", of_fences);
}

#define CORNER \
  BED "cap height=60 mm;cap depth=330 mm;cap length=450 mm;pad thickness=150 mm;run 1 length=5.3 m;" \
      "turn 1 angle=90 deg;run 2 length=3.2 m;drain outlets=2;stone width=300 mm;stone filter=cloth;"

static const figure_wall ordering[] = {
    {"curve-allowance", BED "run 1 length=4 m;run 1 radius=6 m", CELLS_ORDER},
    {"mitre-piece-least|mitre-point-least|cap-piece-least|cap-joint-least", CORNER "turn 1 angle=60 deg",
     CELLS_ORDER},
    {"pad-low-wall|low-wall-courses", BED "run 1 length=4 m", CELLS_ORDER},
    {"pad-high-wall", BED "course count=5;run 1 length=4 m", CELLS_ORDER},
    {"block-concrete", BED "face shell thickness=35 mm;fill unit weight=14 kN/m3;run 1 length=4 m",
     CELLS_ORDER},
    {"bulk-sand", BED "footing soil name=clean sand;run 1 length=4 m", CELLS_ORDER},
    {"bulk-loam", BED "footing soil name=loam;run 1 length=4 m", CELLS_ORDER},
    {"adhesive-bead|adhesive-allowance", CORNER "cap fixing=bonded", CELLS_ORDER},
    {"lining-allowance|settlement|soil-below-cap",
     CORNER "lining=yes;run 3 length=5.3 m;run 4 length=3.2 m;turn 2 angle=90 deg;turn 3 angle=90 deg;"
            "turn 4 angle=90 deg",
     CELLS_ORDER},
    {"filter-retains|filter-drains", BED "run 1 length=4 m;stone width=300 mm;stone filter=graded",
     CELLS_ORDER},
    {"cut-most", BED "run 1 length=4.28 m", CELLS_ORDER},
    {"step-under", CORNER "step 1 distance=2 m;step 1 courses=1", CELLS_ORDER},
    {NULL, CORNER, CELLS_ORDER}};

static void look_ordering(const lw_tables *tables, int row, lw_text *out) {
  look(ordering, cells_built_in()->ordering[row].slug, tables, out);
}

static const cells_column of_ordering[] = {
    {"slug", look_ordering, 0}, {"name", NULL, 0},   {"value", look_ordering, 0}, {"unit", look_ordering, 0},
    {"note", NULL, 0},          {"source", NULL, 0}, {"seen", NULL, 0},           {NULL, NULL, 0}};

Test(cells, every_figure_of_an_order_decides) {
  cells_expect("ordering", of_ordering);
}
