/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "every_wall.h"
#include "walls.h"

#include <criterion/criterion.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* The moment tables of the working, read back: what is printed adds up. */

static int count_of(const char *text, const char *words) {
  int count = 0;
  for (const char *at = strstr(text, words); at; at = strstr(at + 1, words)) count++;
  return count;
}

/* The last number of a line; and the one before it. */
static double last_number(const char *line, size_t length, double *before) {
  size_t begin = length;
  while (begin > 0 && line[begin - 1] != ' ') begin--;
  if (before) *before = last_number(line, strlen("  sums of this table") + 48, NULL);
  return strtod(line + begin, NULL);
}

/* Add the moments of one table's lines up to its sums; gives the difference to what holds less what tips. */
static double table_error(const char *table) {
  double sum = 0.0;
  const char *line = strchr(strchr(table, '\n') + 1, '\n') + 1;
  for (;;) {
    size_t length = strcspn(line, "\n");
    double tips;
    if (strncmp(line, "  sums of this table", 20) == 0) {
      double holds = last_number(line, length, &tips);
      return fabs(sum - (holds - tips));
    }
    if (strncmp(line, "      ", 6) != 0) sum += last_number(line, length, NULL);
    line += length + 1;
  }
}

/* A heading within a chapter stands one column in; a line goes on below it. */
int every_heading_heads_something(const every_wall *wall) {
  int headings = 0;
  for (const char *at = strstr(wall->working, "\n "); at; at = strstr(at + 1, "\n ")) {
    if (at[2] == ' ' || at[2] == '\n') continue;
    const char *end = strchr(at + 1, '\n');
    cr_expect(end && end[1] == ' ', "%s: nothing stands below %.60s", wall->name, at + 1);
    headings++;
  }
  return headings;
}

int every_moment_adds_up(const every_wall *wall) {
  static const char head[] = "  part                        area";
  int tables = 0;
  for (const char *at = strstr(wall->working, head); at; at = strstr(at + 1, head)) {
    double error = table_error(at);
    cr_expect(error < 40 * 0.5e-4, "%s: off by %g at %.120s", wall->name, error, at);
    tables++;
  }
  return tables;
}

/* The table's own sums and those that the checks used come by two ways and must be the same digits. */
int every_table_has_the_sums_of_the_checks(const every_wall *wall) {
  static const char sums[] = "  sums of this table";
  int compared = 0;
  for (const char *at = strstr(wall->working, sums); at; at = strstr(at + 1, sums)) {
    size_t length = strcspn(at, "\n");
    const char *used = at + length + 1;
    cr_expect_eq(strncmp(used, "  as used in the checks", 23), 0);
    cr_expect_eq(strcspn(used, "\n"), length);
    cr_expect_eq(strncmp(at + 24, used + 24, length - 24), 0, "%s: %.82s", wall->name, at);
    compared++;
  }
  return compared;
}

Test(report, working_shows_both_formulas_and_their_wedges) {
  lw_text working = wall_working(wall_of(wall_sorts[1]));
  cr_expect_not_null(strstr(working.data, "  Rankine, thrust on a vertical plane"));
  cr_expect_not_null(strstr(working.data, "  Coulomb, thrust on the back"));
  cr_expect_not_null(strstr(working.data, "Wedge of soil, by trial"));
  cr_expect_not_null(strstr(working.data, "[RANKINE1857 "));
  lw_text_free(&working);
}

Test(report, working_says_what_differs_from_its_wedge_and_why) {
  lw_text working = wall_working(wall_of(wall_sorts[7]));
  cr_expect_not_null(strstr(working.data, "differ by "));
  lw_text_free(&working);
}

Test(report, working_has_every_situation_and_every_joint) {
  const lw_result *result = wall_of(wall_sorts[1]);
  lw_text working = wall_working(result);
  cr_expect_eq(count_of(working.data, "\nBalance: "), result->situations.count);
  for (int j = 1; j < 5; j++) {
    char words[40];
    snprintf(words, sizeof words, "sliding above course %d", j);
    int limits = count_of(strstr(working.data, "\n How high the water may stand"), words);
    cr_expect_eq(count_of(working.data, words) - limits, result->situations.count, "%s", words);
    cr_expect_eq(limits, 1, "%s", words);
  }
  lw_text_free(&working);
}

Test(report, working_of_a_wall_without_depth_says_why_there_is_none) {
  lw_text working = wall_working(wall_of(wall_sorts[5]));
  cr_expect_not_null(strstr(working.data, "the block depth or base width is not known"));
  lw_text_free(&working);
}

Test(report, recording_changes_nothing) {
  const lw_result *result = wall_of(wall_sorts[3]);
  lw_text before = wall_json(result), working = wall_working(result), after = wall_json(result);
  cr_expect_str_eq(before.data, after.data);
  lw_text_free(&before);
  lw_text_free(&working);
  lw_text_free(&after);
}

/* Each check of base and pad that has a number is written out, or it is said why it is not. */
Test(report, checks_are_written_out) {
  lw_text working = wall_working(wall_of(
      "wall height=300 mm;wall embedment=100 mm;course count=1;block height=400 mm;block depth=600 mm;"
      "site behind=bed;soil 1 name=clean sand;footing soil name=stiff clay;base friction=0.45;drain "
      "outlets=2;"
      "stone width=300 mm;ground slope=0 deg;vehicle access=no"));
  cr_expect_not_null(strstr(working.data, "    R   = mu V = "));
  cr_expect_not_null(strstr(working.data, "    has = what holds / what tips = "));
  cr_expect_not_null(strstr(working.data, "    has = allowable / greatest pressure = "));
  cr_expect_not_null(strstr(working.data, "without the load that presses down, which is the worse case:"));
  cr_expect_null(strstr(working.data, "with the strengths that the format divides"));
  lw_text_free(&working);
}

/* Above joint 1 stand courses 2 and up, and the cap is the cap. */
Test(report, courses_above_a_joint_keep_their_numbers) {
  lw_text working = wall_working(wall_of(wall_sorts[1]));
  const char *joint = strstr(working.data, "\n The joint above course 1, moments about its front edge\n");
  cr_assert_not_null(joint);
  const char *end = strstr(joint, "  sums of this table"), *two = strstr(joint, "  course 2 ");
  const char *one = strstr(joint, "  course 1 "), *cap = strstr(joint, "  cap ");
  cr_assert_not_null(end);
  cr_expect(two != NULL && two < end);
  cr_expect(cap != NULL && cap < end);
  cr_expect(one == NULL || one > end);
  lw_text_free(&working);
}

/* "R = mu V = a x b = c": the numbers printed give the number printed. */
int every_sliding_is_right_by_hand(const every_wall *wall) {
  static const char begin[] = "    R   = mu V = ";
  int lines = 0;
  for (const char *at = strstr(wall->working, begin); at; at = strstr(at + 1, begin)) {
    char *next;
    double mu = strtod(at + strlen(begin), &next);
    cr_assert_eq(strncmp(next, " x ", 3), 0, "%.80s", at);
    double vertical = strtod(next + 3, &next);
    cr_assert_eq(strncmp(next, " = ", 3), 0, "%.80s", at);
    double holds = strtod(next + 3, NULL);
    cr_expect(fabs(mu * vertical - holds) < 1e-4 + 0.5e-4 * vertical, "%.80s", at);
    lines++;
  }
  return lines;
}

/* The diagram's areas are the thrust. */
Test(report, areas_of_the_diagram_are_the_thrust) {
  const lw_result *result = wall_of(wall_sorts[1]);
  lw_text working = wall_working(result);
  const char *line = strstr(working.data, "  P    = sum of A\n");
  cr_assert_not_null(line);
  double printed = strtod(strstr(line, "\n       = ") + 10, NULL);
  double thrust = result->situations.situation[0].base.thrust.total_kn_per_m;
  cr_expect(fabs(printed - thrust) <= 0.51e-4 * thrust);
  lw_text_free(&working);
}

Test(report, uplift_is_worked_out_where_water_stands) {
  lw_text wet = wall_working(wall_of(wall_sorts[0]));
  cr_expect_not_null(strstr(wet.data, "  U    = gw "));
  lw_text_free(&wet);
}

Test(report, bearing_by_theory_shows_its_factors) {
  lw_text working = wall_working(wall_of(wall_sorts[6]));
  cr_expect_not_null(strstr(working.data, "  Nq   = "));
  cr_expect_not_null(strstr(working.data, "    has = ultimate / greatest pressure = "));
  lw_text_free(&working);
}

/* Four blocks 0.45 x 0.2 m of 21 kN/m3, set back 20 mm, phi 30, 18 kN/m3, 2.5 kPa, mu 0.5. By hand, from the
 * factors of [EN1997-1 T.A.2] and [EN1997-1 T.A.4]: Ka(24.79 deg) = 0.40913; push 0.40913 (5.76 + 1.3 x 2.0)
 * = 3.4203; friction 0.5/1.25 x 7.56 = 3.0240; loss of equilibrium 0.9 x 1.9278 over 1.1 x 0.6284 + 1.5 x
 * 0.3273. */
Test(report, checks_under_partial_factors_are_written_out) {
  static const char *const lines[] = {
      "    mu  = friction x factor, to design with = 0.5000 x 0.8000 = 0.4000",
      "    R   = mu V = 0.4000 x 7.5600 = 3.0240 kN/m",
      "    has = R / H = 3.0240 / 3.4203 = 0.884; needs 1.00: falls short by 12 %",
      "    at its own worst under another set of the format, en1997-equ: tan phi and\n"
      "    every friction x 0.8000; weight of the wall x 0.90, push of the soil x 1.10,\n"
      "    push of loads behind x 1.50",
      "  sums of this table                          6.8040   3.8197   1.1822    1.7350\n",
      "    has = what holds / what tips = 1.7350 / 1.1822 = 1.468; needs 1.00: holds",
      "under another set of the format, en1997-da1: every factor",
      "What is needed follows the format en1997-da1, each check by the worst of its\n  sets: "};
  lw_text working = wall_working(wall_of(
      "wall height=600 mm;wall embedment=200 mm;block height=200 mm;block depth=450 mm;setback=20 mm;"
      "block unit weight=21 kN/m3;soil 1 friction angle=30 deg;soil 1 unit weight=18 kN/m3;"
      "ground slope=0 deg;base friction=0.5;load 1 kind=uniform;load 1 pressure=2.5 kPa;people on cap=no;"
      "site behind=bed;allowable bearing=96 kPa;method format=en1997-da1;method pressure=rankine"));
  for (size_t i = 0; i < sizeof lines / sizeof *lines; i++)
    cr_expect_not_null(strstr(working.data, lines[i]), "%s", lines[i]);
  cr_expect_null(strstr(working.data, "has = what holds / what pushes"));
  lw_text_free(&working);
}

Test(report, the_set_of_a_slip_is_named_with_its_factor_on_what_holds) {
  lw_text working = wall_working(wall_of(
      "wall height=600 mm;wall embedment=200 mm;block height=200 mm;block depth=450 mm;site behind=ground;"
      "ground slope=0 deg;soil 1 name=clean sand;footing soil name=sandy loam;method format=en1997-da2"));
  const char *set = strstr(working.data, "  Strengths, loads and weights");
  cr_assert_not_null(set);
  const char *has = strstr(set, "has = ");
  cr_assert_not_null(has);
  cr_expect(strstr(set, "en1997-da2-geo.") != NULL && strstr(set, "en1997-da2-geo.") < has);
  cr_expect_not_null(strstr(has, " x 0.9091 = "), "1/1.1, [EN1997-1 T.A.14]");
  lw_text_free(&working);
}

Test(report, water_levels_and_seepage_have_their_working) {
  lw_text working = wall_working(wall_of(
      "wall height=600 mm;wall embedment=200 mm;block height=200 mm;block depth=450 mm;site behind=ground;"
      "ground slope=0 deg;soil 1 name=sandy loam;soil 1 friction angle=30 deg;soil 1 unit weight=18 kN/m3;"
      "soil 1 saturated unit weight=20 kN/m3;wall joints=open;drain outlets=2;load 1 kind=uniform;"
      "load 1 pressure=2.5 kPa;wall friction=0 deg"));
  const char *water = strstr(working.data, "\nWater behind the wall\n");
  cr_assert_not_null(water);
  cr_expect_not_null(strstr(water, "How high the water may stand"));
  const char *push = strstr(water, "  Ps   = (Ww sin(rho - phi) + Us sin phi)/cos(rho - phi - d)");
  cr_assert_not_null(push);
  const char *numbers = strstr(push, ": Ww = ");
  cr_assert_not_null(numbers);
  double weight = strtod(numbers + 7, NULL);
  double rho = strtod(strstr(numbers, "rho = ") + 6, NULL);
  double pore = strtod(strstr(numbers, "Us = ") + 5, NULL);
  double turn = (rho - 30.0) / 57.29577951308232;
  double thrust = (weight * sin(turn) + pore * 0.5) / cos(turn);
  double printed = strtod(strstr(numbers, "\n       = ") + 10, NULL);
  cr_expect_lt(fabs(thrust - printed), 2e-3, "%g and %g", thrust, printed);
  lw_text_free(&working);
}

/* Coulomb's passive coefficient at a third of 28 degrees is 3.6879; 0.2 m of 17 kN/m3 resist 1.2373 level and
 * lift with 0.2034, which costs 0.30 x 0.2034 under the base; half of what is left counts. */
Test(report, passive_in_front_has_its_working) {
  lw_text working = wall_working(wall_of(
      "wall height=600 mm;wall embedment=200 mm;block height=200 mm;block depth=450 mm;site behind=bed;"
      "footing soil friction angle=28 deg;footing soil unit weight=17 kN/m3;wall friction=20 deg;"
      "base friction=0.30;method pressure=coulomb;method passive=0.5;soil 1 friction angle=30 deg"));
  const char *front = strstr(working.data, "    in front, passive:");
  cr_assert_not_null(front);
  const char *kp = strstr(front, "= 3.6879 ");
  const char *lift = strstr(front, "1.2373 - 0.3000 x 0.2034\n       = 1.1763 kN/m");
  const char *share = strstr(front, "Rp  = share that counts x Pp = 0.500 x 1.1763 = 0.5881 kN/m");
  cr_expect(kp != NULL && lift != NULL && share != NULL && kp < lift && lift < share);
  lw_text_free(&working);
}
