/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _POSIX_C_SOURCE 200809L
#include <criterion/criterion.h>
#include <jansson.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* One plane by `lowwall pressure` and the same plane behind a wall by `lowwall check`: what both have is
 * called the same in both, and is the same number. */

static json_t *output_of(const char *arguments) {
  char command[1400];
  const char *lowwall = getenv("LOWWALL");
  cr_assert_not_null(lowwall, "the environment has no LOWWALL");
  snprintf(command, sizeof command, "'%s' %s 2>&1", lowwall, arguments);
  FILE *pipe = popen(command, "r");
  cr_assert_not_null(pipe);
  json_error_t error;
  json_t *value = json_loadf(pipe, 0, &error);
  pclose(pipe);
  cr_assert_not_null(value, "%s: %s", command, error.text);
  return value;
}

/* Numbers of `pressure` alone: a curve and Rankine beside a plane, the working, what was given. */
static bool is_its_own(const char *key) {
  return strncmp(key, "log_spiral", 10) == 0 || strncmp(key, "rankine", 7) == 0;
}

/* gives how many numbers both have */
static int expect_same(const json_t *one, const json_t *other, const char *where) {
  const char *key;
  json_t *value;
  int count = 0;
  json_object_foreach((json_t *)(void *)(size_t)one, key, value) {
    if (!json_is_real(value) || is_its_own(key)) continue;
    const json_t *same = json_object_get(other, key);
    cr_expect(json_is_number(same), "%s.%s is not in `check`", where, key);
    double a = json_real_value(value), b = json_number_value(same);
    cr_expect(fabs(a - b) <= 1e-9 * fmax(fabs(a), 1.0), "%s.%s: %.12g, in `check` %.12g", where, key, a, b);
    count++;
  }
  return count;
}

#define SOIL "'wall friction=15 deg' 'ground slope=5 deg' "
#define WALL \
  "check --json 'course count=4' 'block height=250 mm' 'block depth=900 mm' 'wall embedment=0 m' 'site " \
  "behind=bed' 'soil 1 friction angle=33 deg' 'soil 1 unit weight=18 kN/m3' 'soil 1 saturated unit " \
  "weight=20 kN/m3' 'soil 1 cohesion=0 kPa' 'people on cap=no' 'method slip=not' "

Test(report, pressure_and_check_name_a_thrust_alike) {
  static const char *const pairs[][2] = {
      {"pressure --json 'method=coulomb' 'friction angle=33 deg' 'unit weight=18 kN/m3' 'wall height=1 m' "
       "'surcharge=3 kPa' " SOIL,
       WALL SOIL "'method pressure=coulomb' 'load 1 kind=uniform' 'load 1 pressure=3 kPa'"},
      {"pressure --json method=rankine 'friction angle=33 deg' 'unit weight=18 kN/m3' 'saturated unit "
       "weight=20 kN/m3' "
       "'wall "
       "height=1 m' 'water depth=0.4 m'",
       WALL "'method pressure=rankine' 'load 1 kind=none' 'water depth=0.4 m' 'ground slope=0 deg'"}};
  for (int i = 0; i < 2; i++) {
    json_t *pressure = output_of(pairs[i][0]), *check = output_of(pairs[i][1]);
    json_t *drained = json_array_get(json_object_get(check, "situations"), 0);
    cr_expect_lt(8, expect_same(pressure, json_object_get(drained, "base"), "base"));
    json_decref(pressure);
    json_decref(check);
  }
}

Test(report, pressure_and_check_name_plant_and_narrow_beds_alike) {
  json_t *pressure = output_of(
      "pressure --json 'method=coulomb' 'friction angle=33 deg' 'unit weight=18 kN/m3' 'wall friction=15 "
      "deg' 'wall height=1 m' 'bed width=0.3 m' 'plant load=20 kN/m'");
  json_t *check =
      output_of(WALL "'wall friction=15 deg' 'ground slope=0 deg' 'load 1 kind=none' 'bed width=0.3 "
                     "m' 'plant force=0 kN' 'plant width=1 m'");
  const json_t *mine = json_object_get(pressure, "narrow"), *its = json_object_get(check, "narrow");
  cr_expect_lt(1, expect_same(mine, its, "narrow"));
  for (size_t i = 0; i < json_array_size(json_object_get(mine, "values")); i++) {
    const json_t *a = json_array_get(json_object_get(mine, "values"), i);
    const json_t *b = json_array_get(json_object_get(its, "values"), i);
    cr_expect_lt(4, expect_same(a, b, "narrow.values"));
    cr_expect_str_eq(json_string_value(json_object_get(a, "slug")),
                     json_string_value(json_object_get(b, "slug")));
  }
  /* The diagram on the whole height here, on a course there: the names alone. */
  const json_t *plant = json_object_get(pressure, "compaction"),
               *building = json_object_get(check, "building");
  const json_t *course = json_array_get(json_object_get(building, "courses"), 0);
  static const char *const of_course[] = {"push_kn_per_m", "push_height_m", "earth_kn_per_m"};
  static const char *const of_building[] = {"coefficient", "zc_m", "hc_m", "greatest_kpa"};
  for (int i = 0; i < 3; i++)
    cr_expect(json_object_get(plant, of_course[i]) && json_object_get(course, of_course[i]), "%s",
              of_course[i]);
  for (int i = 0; i < 4; i++)
    cr_expect(json_object_get(plant, of_building[i]) && json_object_get(building, of_building[i]), "%s",
              of_building[i]);
  json_decref(pressure);
  json_decref(check);
}
