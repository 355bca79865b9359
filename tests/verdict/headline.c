/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <ctype.h>
#include <stdlib.h>
#include <string.h>

#include "../checks/random_wall.h"
#include "../sheet/support.h"

/* What no headline does, whatever the wall: say a thing twice. */

enum { WALLS = 360 / RANDOM_SHARE, WORDS_MAX = 240, WORD_BYTES = 40, SAME_WORDS = 4, STANDS_BYTES = 320 };

typedef struct words {
  int count;
  char word[WORDS_MAX][WORD_BYTES];
} words;

static words words_of(const char *text) {
  static words all;
  all.count = 0;
  while (*text != '\0' && all.count < WORDS_MAX) {
    size_t length = 0;
    for (; *text != '\0' && *text != ' '; text++) {
      bool kept = isalnum((unsigned char)*text) || (*text == '.' && isdigit((unsigned char)text[1]));
      if (kept && length + 1 < WORD_BYTES)
        all.word[all.count][length++] = (char)tolower((unsigned char)*text);
    }
    all.word[all.count][length] = '\0';
    if (length > 0) all.count++;
    while (*text == ' ') text++;
  }
  return all;
}

static bool same_run(const words *all, int a, int b) {
  for (int i = 0; i < SAME_WORDS; i++)
    if (strcmp(all->word[a + i], all->word[b + i]) != 0) return false;
  return true;
}

static void expect_no_clause_twice(const char *headline, const char *name) {
  const words all = words_of(headline);
  for (int a = 0; a + SAME_WORDS <= all.count; a++)
    for (int b = a + 1; b + SAME_WORDS <= all.count; b++)
      cr_expect_not(same_run(&all, a, b), "\"%s %s %s %s\" twice: %s: %s", all.word[a], all.word[a + 1],
                    all.word[a + 2], all.word[a + 3], headline, name);
}

static const char *next_sentence(const char *at) {
  for (; *at != '\0'; at++)
    if (at[0] == '.' && at[1] == ' ' && isupper((unsigned char)at[2])) return at + 2;
  return at;
}

static int count_of(const char *text, const char *end, const char *what) {
  int count = 0;
  for (const char *at = strstr(text, what); at != NULL && at < end; at = strstr(at + 1, what)) count++;
  return count;
}

static void expect_sentences(const char *headline, const char *name) {
  for (const char *s = headline, *end; *s != '\0'; s = end) {
    end = next_sentence(s);
    cr_expect(isupper((unsigned char)*s), "%s: %s", headline, name);
    cr_expect(count_of(s, end, ": ") <= 1, "two colons: %s: %s", headline, name);
  }
  size_t length = strlen(headline);
  bool one_stop = length > 1 && headline[length - 1] == '.' &&
                  (isalnum((unsigned char)headline[length - 2]) || headline[length - 2] == ')');
  cr_expect(one_stop, "%s: %s", headline, name);
}

/* How much is missing follows from what it has and needs, or stands in both looks: one of the three. */
static void expect_one_measure(const lw_verdict *v, const char *name) {
  const char *h = v->headline, *end = h + strlen(h);
  int measures = count_of(h, end, " and needs ") + count_of(h, end, "times what just holds it") +
                 count_of(h, end, "falls short by");
  int moves = count_of(h, end, "would move") + count_of(h, end, "would slide") +
              count_of(h, end, "would tip") + count_of(h, end, "may move");
  bool grave = v->grade == LW_GRADE_WOULD_MOVE || v->grade == LW_GRADE_MAY_MOVE;
  cr_expect(measures <= 1, "%s: %s", h, name);
  if (v->who < LW_WHO_ENGINEER) cr_expect(moves == (grave ? 1 : 0), "%s: %s", h, name);
}

static bool refused(const lw_verdict *v) {
  for (int i = 0; i < v->reasons.count; i++)
    if (strlen(v->reasons.reason[i].text) > STANDS_BYTES / 2 &&
        strstr(v->headline, v->reasons.reason[i].text))
      return true;
  return false;
}

static void hold(const lw_verdict *v, const char *name) {
  expect_no_clause_twice(v->headline, name);
  expect_sentences(v->headline, name);
  expect_one_measure(v, name);
  cr_expect(strlen(v->headline) < sizeof v->headline - 1);
  if (v->stands != LW_HOLDS && v->who < LW_WHO_ENGINEER && !refused(v))
    cr_expect(strlen(v->headline) <= STANDS_BYTES, "%zu: %s: %s", strlen(v->headline), v->headline, name);
}

/* Where nothing else is near, or where nobody said so. */
static void add_site(dice *d, random_wall *wall) {
  static const char CLEAR[] = "site back=wall;level difference=0 m;boundary distance=60 m;"
                              "building distance=60 m;other wall distance=60 m;other wall height=300 mm;"
                              "other wall side=below;public way distance=60 m;service distance=60 m;"
                              "waterbody distance=600 m;pool barrier distance=60 m;fence height=0 m;"
                              "site above=nobody;vehicle access=no;water held behind=no;"
                              "heritage=no;strong earthquakes=no;shaken ground=no;"
                              "water sent next door=no;reactive soil=no;works=new;"
                              "ground slope=0 deg;front slope=0 deg;people on cap=no;"
                              "soil 1 name=clean sand;footing soil name=clean sand;drain outlets=2;"
                              "stone width=300 mm;stone filter=cloth;wall joints=open;"
                              "load 1 kind=uniform;load 1 pressure=1 kPa;";
  bool clear = dice_pick(d, 2) == 1;
  random_wall_add(wall, "site behind=%s", clear || dice_pick(d, 2) ? "bed" : "ground");
  random_wall_add(wall, "mapped land=no");
  for (const char *at = CLEAR; clear && *at != '\0'; at += strcspn(at, ";") + 1)
    random_wall_add(wall, "%.*s", (int)strcspn(at, ";"), at);
  random_wall_add(wall, "block depth=%d mm", 150 + 50 * dice_pick(d, 12));
  if (clear) return;
  if (dice_pick(d, 2)) random_wall_add(wall, "people on cap=no");
  if (dice_pick(d, 2)) random_wall_add(wall, "soil 1 name=clean sand");
  if (dice_pick(d, 2)) random_wall_add(wall, "footing soil name=clean sand");
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "drain outlets=2");
  if (dice_pick(d, 3) == 0) random_wall_add(wall, "stone width=300 mm");
  if (dice_pick(d, 6) == 0) random_wall_add(wall, "site back=building");
}

/* A small wall of courses, so that every grade comes up. */
static void small(dice *d, random_wall *wall) {
  wall->count = 0;
  random_wall_add(wall, "course count=%d", 2 + dice_pick(d, 4));
  random_wall_add(wall, "block height=%d mm", 100 + 50 * dice_pick(d, 3));
  random_wall_add(wall, "wall embedment=%d mm", 50 * dice_pick(d, 3));
  if (dice_pick(d, 6) == 0)
    random_wall_add(wall, "method format=%s", dice_pick(d, 2) ? "en1997-da2" : "en1997-da1-2");
  add_site(d, wall);
}

Test(headline, says_nothing_twice_whatever_the_wall) {
  lw_result *result = calloc(1, sizeof *result);
  int seen[LW_GRADE_COUNT][LW_WHO_ENGINEER + 1] = {{0}};
  dice d = {41};
  cr_assert_not_null(result);
  for (int i = 0; i < WALLS; i++) {
    char name[1600];
    random_wall wall;
    if (i % 2)
      random_wall_make(&d, &wall);
    else
      small(&d, &wall);
    random_wall_hurry(&wall, i / 2);
    random_wall_name(&wall, name, sizeof name);
    lw_case c = random_wall_case(&wall);
    cr_assert_eq(lw_run(&c, sheet_test_tables(), LW_DETAIL_EVERYTHING, result, NULL), LW_OK, "%s", name);
    hold(&result->verdict, name);
    seen[result->verdict.grade][result->verdict.who]++;
  }
  for (int grade = 0; grade < LW_GRADE_COUNT; grade++) {
    int all = 0;
    for (int who = 0; who <= LW_WHO_ENGINEER; who++) all += seen[grade][who];
    cr_expect(all > 0 || RANDOM_SHARE > 1, "no wall of the grade %s", lw_grade_slug((lw_grade)grade));
  }
  cr_expect(seen[LW_GRADE_HOLDS][LW_WHO_BUILDER] > 0 || RANDOM_SHARE > 1, "none is left to the builder");
  free(result);
}
