/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../checks/support.h"
#include "../verdict/help.h"

/* A run to the checks writes little, so that many walls, or many looks at one, fit where memory is short. */

enum { MOST_BYTES = LW_SITUATION_COUNT * 8 * 1024, WALLS = 40 };

/* The tallest wall there is, checked in every situation: joints and their keys, pad, cap, slip. */
static const char tallest[] =
    "site behind=ground;site back=ground;course count=24;block height=100 mm;block depth=500 mm;setback=10 "
    "mm;"
    "cap height=50 mm;cap depth=300 mm;cap fixing=dry;people on cap=yes;pad width=900 mm;pad thickness=150 "
    "mm;"
    "ground slope=5 deg;soil 1 name=clean sand;soil 1 bottom=1 m;soil 2 name=silty sand;drain outlets=0;"
    "wall joints=open;ground drains=no;overflow below top=0 mm;drainable porosity=0.2;storm rain=80 mm;"
    "seismic horizontal=0.1;seismic vertical=0.05;trench depth=300 mm;trench distance=500 mm;"
    "fence height=1.8 m;fence place=behind;fence distance=0.5 m;wind pressure=0.6 kPa;key strength=9 kN/m";

/* What a run writes: what is neither of two paints any more. */
static size_t written(const lw_case *c, lw_detail detail, unsigned char *result, bool *touched) {
  memset(touched, 0, sizeof(lw_result));
  for (int paint = 0x55; paint <= 0xAA; paint += 0x55) {
    memset(result, paint, sizeof(lw_result));
    cr_assert_eq(lw_run(c, verdict_tables(), detail, (lw_result *)(void *)result, NULL), LW_OK);
    for (size_t i = 0; i < sizeof(lw_result); i++) touched[i] = touched[i] || result[i] != paint;
  }
  size_t bytes = 0;
  for (size_t i = 0; i < sizeof(lw_result); i++) bytes += touched[i];
  return bytes;
}

typedef struct paints {
  lw_result *result;
  bool *touched;
} paints;

static paints begin(void) {
  paints p = {malloc(sizeof(lw_result)), malloc(sizeof(lw_result))};
  cr_assert(p.result && p.touched);
  return p;
}

static void end(const paints *p) {
  free(p->result);
  free(p->touched);
}

Test(run, a_run_to_the_checks_writes_at_most_8_kb_a_situation_of_the_tallest_wall) {
  paints p = begin();
  lw_case c;
  verdict_case(tallest, &c);
  size_t checks = written(&c, LW_DETAIL_CHECKS, (unsigned char *)p.result, p.touched);
  const lw_situations *all = &p.result->situations;
  /* A bed is planted only where it is low. */
  cr_expect_eq(all->count, LW_SITUATION_COUNT - 1, "it is checked in %d situations", all->count);
  cr_expect_geq(all->situation[0].check_count, LW_CHECK_OF_JOINT_MAX * (LW_COURSE_MAX - 1) + 8);
  cr_expect_leq(checks, MOST_BYTES, "%zu bytes", checks);
  size_t everything = written(&c, LW_DETAIL_EVERYTHING, (unsigned char *)p.result, p.touched);
  cr_expect_gt(everything, MOST_BYTES, "%zu bytes: the paint tells nothing", everything);
  end(&p);
}

/* Nothing that belongs to a later detail is touched: whole checks and free bodies, studies, sentences. */
static void expect_untouched(const paints *p, const void *from, size_t size, const char *what) {
  size_t first = (size_t)((const char *)from - (const char *)p->result);
  for (size_t i = 0; i < size; i++) {
    cr_assert_not(p->touched[first + i], "%s: byte %zu of %zu", what, i, size);
  }
}

Test(run, what_belongs_to_a_later_detail_is_left_alone) {
  paints p = begin();
  lw_case c;
  verdict_case(tallest, &c);
  for (int detail = LW_DETAIL_VERDICT; detail <= LW_DETAIL_CHECKS; detail++) {
    (void)written(&c, (lw_detail)detail, (unsigned char *)p.result, p.touched);
    const lw_result *r = p.result;
    const lw_situation *s = &r->situations.situation[0];
    const char *stages = (const char *)&s->load_case;
    expect_untouched(&p, stages, (size_t)((const char *)(s + 1) - stages), "stages");
    expect_untouched(&p, &r->verdict.reasons, sizeof r->verdict.reasons, "reasons");
    expect_untouched(&p, &r->construction, sizeof r->construction, "building");
    expect_untouched(&p, &r->narrow, sizeof r->narrow, "narrow");
    expect_untouched(&p, &r->storm, sizeof r->storm, "storm");
  }
  end(&p);
}

/* Other walls write less than the tallest. */
Test(run, a_run_to_the_checks_writes_at_most_8_kb_a_situation_of_any_wall) {
  paints p = begin();
  dice d = {.state = 64};
  for (int i = 0; i < WALLS; i++) {
    char name[RANDOM_ITEMS * RANDOM_ITEM_BYTES];
    random_wall wall;
    random_wall_make(&d, &wall);
    random_wall_hurry(&wall, i);
    lw_case c = random_wall_case(&wall);
    size_t bytes = written(&c, LW_DETAIL_CHECKS, (unsigned char *)p.result, p.touched);
    cr_expect_leq(bytes, MOST_BYTES, "%zu bytes: %s", bytes, random_wall_name(&wall, name, sizeof name));
  }
  end(&p);
}
