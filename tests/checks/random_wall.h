/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_CHECKS_RANDOM_WALL_H
#define LOWWALL_TESTS_CHECKS_RANDOM_WALL_H

#include <lowwall/result.h>

/* Walls by chance, the same ones in every run. */
typedef struct dice {
  unsigned long long state;
} dice;

/* A number from low to high. */
double dice_between(dice *d, double low, double high);
/* A whole number from 0 to below count. */
int dice_pick(dice *d, int count);

enum { RANDOM_ITEMS = 64, RANDOM_ITEM_BYTES = 64 };

/* The sanitizers make a build some ten times as slow, and look for faults of memory, not for numbers: such a
 * build takes a quarter of the walls of a long walk, and a sixteenth of one that takes seconds plain. */
#ifdef __SANITIZE_ADDRESS__
enum { RANDOM_SHARE = 4, LONG_SHARE = 16 };
#else
enum { RANDOM_SHARE = 1, LONG_SHARE = 1 };
#endif

/* A wall as `item=value` arguments. */
typedef struct random_wall {
  int count;
  char text[RANDOM_ITEMS][RANDOM_ITEM_BYTES];
} random_wall;

/* Add one item, printf-like. */
void random_wall_add(random_wall *wall, const char *format, ...) __attribute__((format(printf, 2, 3)));
/* Any wall, site and method that a sheet may hold without a fault. */
void random_wall_make(dice *d, random_wall *wall);
/* The search for slips takes most of the time of a wall: only every fourth keeps it. */
void random_wall_hurry(random_wall *wall, int number);
/* An upright stack without heel or steps; neither friction angle, slope, load nor water is given. */
void random_wall_plain(dice *d, random_wall *wall);
/* Complete; the test fails on a fault. */
lw_case random_wall_case(const random_wall *wall);
/* Run to everything; free() it. */
lw_result *random_wall_run(const random_wall *wall);
/* All items on one line, to name a wall in a failure. */
const char *random_wall_name(const random_wall *wall, char *out, size_t size);

#endif
