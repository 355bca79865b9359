/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Do other people's numbers agree with lowwall's?   agree JSON-LINES RESULTS.csv
 * Both start with the first wall. Thrust, sliding, overturning and bearing of the base in the drained
 * situation are compared, and the largest difference is printed. Above 1e-9 of its size it fails. */
#include <jansson.h>
#include <math.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { COLUMNS = 4, LINE = 4096 };

static double has(const json_t *situation, const char *slug) {
  size_t i;
  json_t *check;
  json_array_foreach(json_object_get(situation, "checks"), i, check) {
    bool base = strcmp(json_string_value(json_object_get(check, "at")), "base") == 0;
    if (base && strcmp(json_string_value(json_object_get(check, "slug")), slug) == 0)
      return json_number_value(json_object_get(check, "has"));
  }
  return NAN;
}

static bool ours(const json_t *wall, double *value) {
  const json_t *situation = json_array_get(json_object_get(wall, "situations"), 0);
  const char *slug = json_string_value(json_object_get(situation, "slug"));
  if (slug == NULL || strcmp(slug, "drained") != 0) return false;
  value[0] = json_number_value(json_object_get(json_object_get(situation, "base"), "thrust_kn_per_m"));
  value[1] = has(situation, "sliding");
  value[2] = has(situation, "overturning");
  value[3] = has(situation, "bearing");
  return true;
}

static bool theirs(FILE *file, double *value) {
  char line[LINE];
  if (fgets(line, sizeof line, file) == NULL) return false;
  char *at = line;
  for (int k = 0; k < COLUMNS; k++) {
    value[k] = strtod(at, &at);
    at += *at == ',' ? 1 : 0;
  }
  return true;
}

int main(int argc, char **argv) {
  FILE *json = argc == 3 ? fopen(argv[1], "r") : NULL, *csv = json ? fopen(argv[2], "r") : NULL;
  char line[LINE];
  double largest = 0.0, one[COLUMNS], other[COLUMNS];
  int walls = 0;
  if (csv == NULL || fgets(line, sizeof line, csv) == NULL) return 1;
  for (json_t *wall; (wall = json_loadf(json, JSON_DISABLE_EOF_CHECK, NULL)) != NULL; json_decref(wall)) {
    if (!ours(wall, one) || !theirs(csv, other)) return 1;
    for (int k = 0; k < COLUMNS; k++) {
      double gap = fabs(one[k] - other[k]) / fmax(fabs(one[k]), 1e-3);
      if (!(gap <= 1e-9))
        printf("wall %d, column %d: %.12g, and by lowwall %.12g\n", walls + 1, k + 1, other[k], one[k]);
      largest = gap > largest || !isfinite(gap) ? gap : largest;
    }
    walls++;
  }
  if (walls == 0 || !(largest <= 1e-9)) return 1;
  printf("agrees with lowwall to %.0e of its size in %d walls\n", fmax(largest, 1e-12), walls);
  return 0;
}
