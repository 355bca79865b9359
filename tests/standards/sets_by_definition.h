/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_STANDARDS_SETS_BY_DEFINITION_H
#define LOWWALL_TESTS_STANDARDS_SETS_BY_DEFINITION_H

#include <lowwall/result.h>

#include "../checks/random_wall.h"

/* The figures of one set as its code prints them; pairs are favourable, unfavourable. */
typedef struct code_set {
  const char *format;
  double strength, undrained; /* divide tan φ, and the strength of clay without friction */
  double wall[2], soil[2], push[2];
  double variable, people;
  double sliding, bearing; /* multiply resistances */
  double of_weight;        /* the most that clay without friction holds, of the weight on it */
  bool overturning;        /* asked for: what tips then has ratio 0 */
} code_set;
enum { CODE_SET_COUNT = 7, CODE_LEANINGS = 64 };
extern const code_set CODE_SETS[CODE_SET_COUNT];

/* A solid section with one dry soil behind, and its numbers. */
typedef struct code_wall {
  bool coulomb;
  double height_m, base_m, weight; /* of the whole section */
  double lean, face;               /* shares of the base that the batters of back and face take */
  double buried_m;
  double phi_deg, delta_deg, gamma, slope_deg, load_kpa;
  double friction, footing_deg, clay_kpa, adhesion_kpa;
} code_wall;

void code_wall_make(dice *d, code_wall *w);
/* On clay that is taken without friction. */
void code_wall_on_clay(dice *d, code_wall *w);
/* As items of a sheet, tan φ and every friction divided by strength already, clay by undrained. */
void code_wall_items(const code_wall *w, double strength, double undrained, random_wall *items);
double code_design_angle(double angle_deg, double strength);
/* The caller frees. */
lw_result *code_run(const random_wall *items, const char *format);

/* Favourable or not, source by source. */
typedef struct code_leaning {
  bool wall_heavy, soil_heavy, pushes_less, no_load, on_heel, nobody_down;
} code_leaning;
int code_leanings(const code_set *s, code_leaning all[CODE_LEANINGS]);
double code_factor_of(const code_set *s, const code_leaning *as, lw_force_kind kind);

/* Sums about the toe. */
typedef struct code_balance {
  double down, level, holds, tips, pressed, effective_m;
  bool inside;
} code_balance;
code_balance code_balance_of(const code_set *s, const code_leaning *as, const lw_free_body *plain);

/* The check of that kind at the base has what the definition says. */
void code_expect(const lw_situation *s, lw_check_kind kind, double wanted, const char *what);

#endif
