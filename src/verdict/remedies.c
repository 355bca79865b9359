/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "changes.h"

#include <math.h>
#include <string.h>

#include "asking.h"

/* What would make the wall stand, each change alone. All are searched over lw_run itself, so that a remedy
 * is what a sheet with that value would say. */

enum { LOAD_STEPS_MOST = 60, HEIGHT_STEPS_MOST = 200 };
static const double DEPTH_STEP_M = 0.01, DEPTH_MOST_M = 1.2, DEPTH_LEAST_M = 0.1;
static const double HEIGHT_LEAST_M = 0.1, SECTION_HEIGHT_STEP_M = 0.05, SETBACK_STEP_M = 0.005,
                    LOAD_STEP_M = 0.1;
static const double SETBACK_MOST_SHARE = 0.25; /* of the block's depth: more leaves too little to stand on */
static const double QUARTER_PI = 0.78539816339744830962;

/* A remedy to be tried. The value it tells is `told_from` + `told_sign` x the value found. */
typedef struct lw_attempt {
  const char *slug;
  lw_change change;
  lw_steps steps;
  double told_from, told_sign;
  const char *tells; /* printf format of that value, in metres x tells_times */
  double tells_times;
} lw_attempt;

static void tell(const lw_attempt *a, const lw_result *now, const lw_result *then, lw_remedy *r) {
  char what[160], ratio[40] = "";
  lw_print(what, sizeof what, a->tells, r->value.value * a->tells_times);
  lw_trial_governs(then, r->governs, sizeof r->governs);
  r->ratio = lw_trial_ratio(then);
  if (r->ratio.known) lw_print(ratio, sizeof ratio, " with %.2f times what is asked", r->ratio.value);
  lw_print(r->text, sizeof r->text,
           r->enough ? "%s: then it stands; %s governs%s.%s"
                     : "%s: this alone is not enough; %s governs%s.%s",
           what, r->governs, ratio,
           now->verdict.who == LW_WHO_ENGINEER ? " The engineer decides all the same." : "");
}

static void attempt(const lw_attempt *a, lw_result *result, lw_result *scratch) {
  lw_trial trial = {.now = result, .scratch = scratch, .change = a->change};
  if (a->steps.most < 1 || result->remedy_count >= LW_REMEDY_MAX) return;
  int steps = lw_trial_least(&trial, &a->steps);
  double found = a->steps.from + (steps > 0 ? steps : a->steps.most) * a->steps.step;
  if (!lw_trial_run(&trial, found)) return;
  lw_remedy *r = &result->remedy[result->remedy_count++];
  *r = (lw_remedy){.enough = steps > 0, .value = {a->told_from + a->told_sign * found, true}, .unit = "m"};
  lw_print(r->slug, sizeof r->slug, "%s", a->slug);
  tell(a, result, scratch, r);
}

static double whole_steps(double value, double step) {
  return floor(value / step + 1e-6) * step;
}

static int count_to(double from, double to, double step) {
  return (int)floor((to - from) / step + 1e-6);
}

static void deeper(lw_result *result, lw_result *scratch) {
  double now = lw_change_depth_now(&result->given);
  double from = now > 0.0 ? whole_steps(now, DEPTH_STEP_M) : DEPTH_LEAST_M - DEPTH_STEP_M;
  bool courses = result->given.wall_kind.value == LW_WALL_COURSES;
  attempt(&(lw_attempt){.slug = "deeper-blocks",
                        .change = lw_change_deeper,
                        .steps = {from, DEPTH_STEP_M, count_to(from, DEPTH_MOST_M, DEPTH_STEP_M)},
                        .told_sign = 1.0,
                        .tells = courses ? "Blocks %.0f mm deep" : "A base %.0f mm wide",
                        .tells_times = 1000.0},
          result, scratch);
}

/* The lowest wall worth trying leaves one course, or one step, above the ground. */
static void lower(lw_result *result, lw_result *scratch) {
  bool courses = result->given.wall_kind.value == LW_WALL_COURSES;
  double exposed = result->verdict.height_m[LW_HEIGHT_EXPOSED];
  double step = courses ? result->given.block_height.si : SECTION_HEIGHT_STEP_M;
  int most = count_to(0.0, exposed - HEIGHT_LEAST_M, step);
  if (courses && most > (int)lround(result->given.course_count.si) - 1) {
    most = (int)lround(result->given.course_count.si) - 1;
  }
  attempt(&(lw_attempt){.slug = "lower-wall",
                        .change = lw_change_lower,
                        .steps = {0.0, step, most < HEIGHT_STEPS_MOST ? most : HEIGHT_STEPS_MOST},
                        .told_from = exposed,
                        .told_sign = -1.0,
                        .tells_times = 1000.0,
                        .tells = "A wall at most %.0f mm high above the ground in front"},
          result, scratch);
}

static void second_outlet(lw_result *result, lw_result *scratch) {
  const lw_threshold_row *row = lw_known_threshold(result->tables, LW_THRESHOLD_STONE_WIDTH);
  if (!row || lw_site_ways_out(&result->wall.site) >= 2) return;
  attempt(&(lw_attempt){.slug = "second-outlet",
                        .change = lw_change_outlets,
                        .steps = {0.0, row->value, 1},
                        .told_sign = 1.0,
                        .tells = "Two outlets, and drainage stone %.0f mm wide behind the wall",
                        .tells_times = 1000.0},
          result, scratch);
}

/* Stone counts only where it fills the whole critical wedge, found with its own angle. */
static void stone_wedge(lw_result *result, lw_result *scratch) {
  const lw_soil_row *stone = lw_change_stone_row(result->tables);
  if (!stone) return;
  double run = tan(QUARTER_PI - stone->friction_rad / 2.0), rise = tan(result->wall.site.slope_rad);
  if (run * rise >= 1.0) return;
  double reach = run * result->verdict.total_to_pad_m / (1.0 - run * rise);
  double width = ceil(reach / DEPTH_STEP_M - 1e-6) * DEPTH_STEP_M;
  attempt(
      &(lw_attempt){.slug = "stone-wedge",
                    .change = lw_change_stone,
                    .steps = {0.0, width, 1},
                    .told_sign = 1.0,
                    .tells = "Crushed rock through the whole wedge, %.0f mm wide behind the wall at the top",
                    .tells_times = 1000.0},
      result, scratch);
}

/* Leaning further back need not help all the way: the first step that stands, or else the best. */
static int best_setback(const lw_trial *trial, double from, int most) {
  int best = 1;
  double best_ratio = -1.0;
  for (int steps = 1; steps <= most; steps++) {
    if (lw_trial_stands(trial, from + steps * SETBACK_STEP_M)) return steps;
    lw_number ratio = lw_trial_ratio(trial->scratch);
    if (ratio.known && ratio.value > best_ratio) {
      best = steps;
      best_ratio = ratio.value;
    }
  }
  return best;
}

static void more_setback(lw_result *result, lw_result *scratch) {
  const lw_case *c = &result->given;
  if (c->wall_kind.value != LW_WALL_COURSES || c->course_count.si < 2.0) return;
  double from = whole_steps(c->setback.origin == LW_ABSENT ? 0.0 : c->setback.si, SETBACK_STEP_M);
  int most = count_to(from, SETBACK_MOST_SHARE * lw_change_depth_now(c), SETBACK_STEP_M);
  if (most < 1) return;
  lw_trial trial = {.now = result, .scratch = scratch, .change = lw_change_setback};
  int steps = best_setback(&trial, from, most);
  attempt(&(lw_attempt){.slug = "more-setback",
                        .change = lw_change_setback,
                        .steps = {from + (steps - 1) * SETBACK_STEP_M, SETBACK_STEP_M, 1},
                        .told_sign = 1.0,
                        .tells = "Each course set back %.0f mm",
                        .tells_times = 1000.0},
          result, scratch);
}

static void load_back(lw_result *result, lw_result *scratch) {
  attempt(&(lw_attempt){.slug = "load-back",
                        .change = lw_change_load,
                        .steps = {0.0, LOAD_STEP_M, LOAD_STEPS_MOST},
                        .told_sign = 1.0,
                        .tells = "No load nearer than %.1f m behind the wall",
                        .tells_times = 1.0},
          result, scratch);
}

/* What is refused as engineering has no remedy of this kind. */
static bool is_refused(const lw_result *result) {
  const lw_verdict *v = &result->verdict;
  for (int i = 0; i < v->reason_count; i++) {
    const lw_verdict_reason *r = &v->reason[i];
    bool refusal = strcmp(r->slug, lw_reason_slug(LW_REASON_REFUSED_BACKFILL)) == 0 ||
                   strcmp(r->slug, lw_reason_slug(LW_REASON_BUILDING_BEHIND)) == 0 ||
                   strcmp(r->slug, lw_reason_slug(LW_REASON_FENCE_ON_WALL)) == 0;
    if (r->answer == LW_ANSWER_STANDS && refusal) return true;
  }
  return false;
}

void lw_remedies_find(lw_result *result, lw_result *scratch) {
  result->remedy_count = 0;
  lw_fence_clear(&result->situations, &result->fence.on);
  lw_asking_find(result, scratch);
  if (result->verdict.stands == LW_HOLDS || is_refused(result)) return;
  deeper(result, scratch);
  if (!result->wall.section.known) return;
  lower(result, scratch);
  second_outlet(result, scratch);
  stone_wedge(result, scratch);
  more_setback(result, scratch);
  load_back(result, scratch);
}
