/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>
#include <criterion/new/assert.h>

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "../sheet/support.h"
#include "sheet/faults.h"
#include "every_wall.h"
#include "support.h"

/* docs/results.md and the JSON hold the same keys. A key of the document is the first cell of a row. */

enum { KEYS_MAX = 1000, KEY_BYTES = 96 };

typedef struct keys {
  int count;
  char key[KEYS_MAX][KEY_BYTES]; /* in order: each of some thousand paths of a wall is looked for in them */
  bool met[KEYS_MAX];
} keys;

static int by_name(const void *a, const void *b) {
  return strcmp(a, b);
}

static int find_key(const keys *all, const char *key) {
  const char(*at)[KEY_BYTES] = bsearch(key, all->key, (size_t)all->count, KEY_BYTES, by_name);
  return at != NULL ? (int)(at - all->key) : -1;
}

static void put_in_order(keys *all) {
  int count = 0;
  qsort(all->key, (size_t)all->count, KEY_BYTES, by_name);
  for (int i = 0; i < all->count; i++)
    if (i == 0 || strcmp(all->key[i], all->key[count - 1]) != 0)
      memmove(all->key[count++], all->key[i], KEY_BYTES);
  all->count = count;
}

static void read_row(const char *line, keys *all) {
  size_t length = strcspn(line + 3, "`\n");
  if (strncmp(line, "| `", 3) != 0 || line[3 + length] != '`') return;
  cr_assert(all->count < KEYS_MAX && length < KEY_BYTES);
  snprintf(all->key[all->count++], KEY_BYTES, "%.*s", (int)length, line + 3);
}

/* Read when first asked for, by which the keys met by one wall are kept for the next. */
static keys *documented(void) {
  static keys all;
  if (all.count > 0) return &all;
  lw_text text = sheet_test_file("docs/results.md");
  for (const char *line = text.data; line != NULL; line = strchr(line, '\n')) {
    line += line > text.data ? 1 : 0;
    read_row(line, &all);
  }
  lw_text_free(&text);
  put_in_order(&all);
  cr_assert(all.count > 200, "docs/results.md has %d keys", all.count);
  return &all;
}

static void meet(keys *all, const char *key, const char *said) {
  int at = find_key(all, key);
  cr_expect(at >= 0, "docs/results.md lacks %s (%s)", key, said);
  if (at >= 0) all->met[at] = true;
}

/* In the document "fence.board.ratio" is "fence.MEASURE.ratio", "fence.wind_post.has" is
 * "fence.LOAD_post.has". */
static void name_of_fence(char *key, size_t size) {
  static const char *const measures[] = {"board", "shear", "ground", "hole"};
  static const char fence[] = "fence.", end[] = "_post";
  char rest[128];
  if (strncmp(key, fence, sizeof fence - 1) != 0) return;
  const char *part = key + sizeof fence - 1;
  size_t length = strcspn(part, ".");
  bool load = length > sizeof end - 1 && strncmp(part + length - (sizeof end - 1), end, sizeof end - 1) == 0;
  snprintf(rest, sizeof rest, "%s", part + length);
  for (size_t i = 0; i < sizeof measures / sizeof measures[0]; i++) {
    if (strlen(measures[i]) != length || strncmp(part, measures[i], length) != 0) continue;
    char *unit = strstr(rest, "_k");
    if (unit != NULL) snprintf(unit, sizeof rest - (size_t)(unit - rest), "_UNIT");
    snprintf(key, size, "fence.MEASURE%s", rest);
  }
  if (load) snprintf(key, size, "fence.LOAD_post%s", rest);
}

/* A joint, and a contact in another load case, have the keys of the base beside their own. */
static void as_the_base(const keys *all, char *key, size_t size) {
  static const char *const like[] = {"situations[].joints[].", "situations[].load_cases[]."};
  char rest[128];
  for (size_t i = 0; i < sizeof like / sizeof *like; i++) {
    if (strncmp(key, like[i], strlen(like[i])) != 0 || find_key(all, key) >= 0) continue;
    snprintf(rest, sizeof rest, "%s", key + strlen(like[i]));
    snprintf(key, size, "situations[].base.%s", rest);
  }
}

/* The items of a sheet stand for each other, and so do base and pad. */
static void meet_path(void *context, const json_t *parent, const char *path, const json_t *value) {
  static const char given[] = "given.", pad[] = "situations[].pad.";
  char key[256];
  const char *rest =
      strncmp(path, given, sizeof given - 1) == 0 ? strchr(path + sizeof given - 1, '.') : NULL;
  (void)parent;
  if (path[0] == '\0' || json_is_array(value)) return;
  if (strncmp(path, given, sizeof given - 1) == 0) {
    snprintf(key, sizeof key, "given.KEY%s", rest != NULL ? rest : "");
  } else if (strncmp(path, pad, sizeof pad - 1) == 0) {
    snprintf(key, sizeof key, "situations[].base.%s", path + sizeof pad - 1);
  } else {
    snprintf(key, sizeof key, "%s", path);
  }
  name_of_fence(key, sizeof key);
  as_the_base(context, key, sizeof key);
  meet(context, key, path);
}

/* A figure's key in pieces. */
typedef struct pieces {
  int count;
  char piece[4][64];
} pieces;

static pieces split(const char *key) {
  pieces p = {0};
  for (const char *at = key; *at != '\0' && p.count < 4;) {
    size_t length = strcspn(at, ".");
    snprintf(p.piece[p.count++], sizeof p.piece[0], "%.*s", (int)length, at);
    at += length + (at[length] == '.' ? 1 : 0);
  }
  return p;
}

static bool is_one_of(const char *word, const char *const *list) {
  for (size_t i = 0; list[i] != NULL; i++) {
    if (strcmp(word, list[i]) == 0) return true;
  }
  return false;
}

static void number_to_n(char *piece) {
  char *dash = strrchr(piece, '-');
  if (dash != NULL && isdigit((unsigned char)dash[1])) snprintf(dash, 3, "-N");
}

static const char *const contacts[] = {"base", "pad", NULL};
static const char *const methods[] = {"rankine", "coulomb", NULL};

static bool is_check(const char *word) {
  for (int i = 0; i < LW_CHECK_KIND_COUNT; i++)
    if (strcmp(word, lw_check_slug((lw_check_kind)i)) == 0) return true;
  return false;
}

static void end_of_check(const char *end, char *out, size_t size) {
  bool demand = strncmp(end, "demand_", 7) == 0, resistance = strncmp(end, "resistance_", 11) == 0;
  snprintf(out, size, "SITUATION.AT.CHECK.%s", demand ? "demand_UNIT" : resistance ? "resistance_UNIT" : end);
}

/* As the document writes the key of a figure of a situation. */
static void name_in_situation(const pieces *p, char *out, size_t size) {
  const char *contact = is_one_of(p->piece[1], contacts) ? "base" : "joints[]";
  bool profile = strncmp(p->piece[2], "profile-", 8) == 0, strip = strcmp(p->piece[2], "strip") == 0;
  if (strcmp(p->piece[1], "factors") == 0) {
    snprintf(out, size, "SITUATION.factors.%s", p->piece[2]);
  } else if (p->count == 2) {
    snprintf(out, size, "situations[].%s", p->piece[1]);
  } else if (p->count == 4 && is_check(p->piece[2])) {
    end_of_check(p->piece[3], out, size);
  } else if (strcmp(p->piece[1], "slip") == 0) {
    bool shown = strncmp(p->piece[2], "shown_", 6) == 0;
    if (p->count == 4)
      snprintf(out, size, "situations[].slip.shown[].%s", p->piece[3]);
    else
      snprintf(out, size, "%s.slip.%s", shown ? "SITUATION" : "situations[]", p->piece[2]);
  } else if (p->count == 4) {
    snprintf(out, size, "SITUATION.CONTACT.%s.%s",
             profile ? "profile-N"
             : strip ? "strip"
                     : "FORCE",
             p->piece[3]);
  } else if (is_one_of(p->piece[1], methods)) {
    snprintf(out, size, "SITUATION.METHOD.%s", p->piece[2]);
  } else {
    snprintf(out, size, "situations[].%s.%s", contact, p->piece[2]);
  }
}

static bool is_situation(const char *word) {
  for (int i = 0; i < LW_SITUATION_COUNT; i++) {
    if (strcmp(word, lw_situation_slug((lw_situation_name)i)) == 0) return true;
  }
  return false;
}

static void name_figure(const char *key, char *out, size_t size) {
  pieces p = split(key);
  for (int i = 0; i < p.count; i++) number_to_n(p.piece[i]);
  bool site = strcmp(p.piece[0], "site") == 0, remedy = strcmp(p.piece[0], "remedy") == 0;
  bool soil = site && (strcmp(p.piece[1], "soil-N") == 0 || strcmp(p.piece[1], "footing") == 0);
  bool course = strcmp(p.piece[0], "building") == 0 && strcmp(p.piece[1], "course-N") == 0;
  bool narrow = strcmp(p.piece[0], "narrow") == 0 && p.count == 3;
  if (remedy && p.count == 3 && strcmp(p.piece[2], "ratio") != 0) {
    const char *unit = strrchr(p.piece[2], '_');
    cr_assert(unit != NULL, "%s", key);
    snprintf(out, size, "remedy.SLUG.PART_UNIT");
  } else if (course || narrow) {
    snprintf(out, size, "%s.%s[].%s", p.piece[0], course ? "courses" : "values", p.piece[2]);
  } else if (p.count == 4 && strcmp(p.piece[0], "water") == 0) {
    snprintf(out, size, "water.AT.CHECK.%s", p.piece[3]);
  } else if (strcmp(p.piece[0], "formats") == 0) {
    snprintf(out, size, "formats.FORMAT.%s", p.piece[2]);
  } else if (is_situation(p.piece[0])) {
    name_in_situation(&p, out, size);
  } else if (p.count == 2) {
    snprintf(out, size, "%s.%s", p.piece[0], p.piece[1]);
  } else {
    snprintf(out, size, "%s.%s.%s", p.piece[0], soil ? "SOIL" : remedy ? "SLUG" : p.piece[1], p.piece[2]);
  }
}

static void meet_figure(void *context, const lw_figure *figure) {
  char key[256];
  name_figure(figure->key, key, sizeof key);
  name_of_fence(key, sizeof key);
  meet(context, key, figure->key);
}

/* A remedy after which nothing pushes any more has no ratio. */
static void meet_remedy_without_ratio(keys *all) {
  static lw_result result;
  result = *report_test_named("nothing governs");
  result.remedy_count = 1;
  result.remedy[0] = (lw_remedy){
      .slug = "load-back", .part_count = 1, .part[0] = {.slug = "load-back", .unit = "m", .value = 0.5}};
  json_t *root = report_test_json(&result);
  report_test_walk(root, NULL, "", meet_path, all);
  json_decref(root);
}

/* An answer that is no value. */
static void meet_not_known(keys *all) {
  static lw_result result;
  result = *report_test_named("nothing governs");
  result.given.told = (lw_case_said){
      .count = 1, .said[0] = {.kind = LW_SAID_NOT_KNOWN, .offset = offsetof(lw_case, water.storm_rain)}};
  json_t *root = report_test_json(&result);
  report_test_walk(root, NULL, "", meet_path, all);
  json_decref(root);
}

static void meet_faults(keys *all) {
  lw_case c = {0};
  lw_faults faults = {.file = "-"};
  lw_text text = {0};
  lw_faults_add(&faults, LW_FAULT_NO_UNIT, (lw_cell_place){1, 2}, "wall height", "9", "a unit");
  cr_assert(eq(int, lw_report_row_faults_json(&c, &faults, &text), LW_OK));
  json_t *root = json_loads(text.data, 0, NULL);
  report_test_walk(root, NULL, "", meet_path, all);
  json_decref(root);
  lw_text_free(&text);
}

int every_key_is_documented(const every_wall *wall) {
  report_test_walk(wall->json, NULL, "", meet_path, documented());
  lw_figures_each(wall->result, meet_figure, documented());
  return 1;
}

void every_documented_key_is_there(void) {
  keys *all = documented();
  meet_remedy_without_ratio(all);
  meet_not_known(all);
  meet_faults(all);
  for (int i = LW_REASON_NONE + 1; i < LW_REASON_COUNT; i++) {
    meet(all, lw_reason_slug((lw_reason)i), "a reason");
  }
  for (int i = 0; i < all->count; i++) {
    cr_expect(all->met[i], "no wall has the documented %s", all->key[i]);
  }
}
