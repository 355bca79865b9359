/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "moves.h"

#include <math.h>
#include <string.h>

#include "base/amount.h"
#include "remedies/changes.h"
#include "remedies/same_job.h"
#include "sheet/values.h"

/* How far a finger may move a wall; what comes of it is checked like any other. */
static const double TALLEST_M = 1.8, LOWEST_M = 0.1, DEEPEST_M = 1.2, SHALLOWEST_M = 0.1;
static const double METRIC_STEP_M = 0.05;

/* The values that a handle has: now, from, to, by steps. most 0: this wall has no such handle. */
typedef struct lw_span {
  double now, from, step;
  int most;
} lw_span;

typedef struct lw_handle {
  const char *slug, *words;
  lw_span (*span)(const lw_result *now);
  bool (*type)(const lw_changing *wall, double value, lw_typed *typed);
} lw_handle;

/* Of what is not laid in courses. */
static double step_of(const lw_result *now) {
  return now->units == LW_UNITS_US ? LW_INCH_M : METRIC_STEP_M;
}

/* The lowest value from which whole steps lead to what it is, so that nothing moves before a finger does. */
static double down_from(double is, double least, double step) {
  return is - lw_change_count(least, is, step) * step;
}

static bool of_courses(const lw_result *now) {
  return now->given.wall.kind.value == LW_WALL_COURSES;
}

static double exposed_m(const lw_result *now) {
  return now->wall.section.height_m - now->wall.section.embedment_m;
}

/* By whole courses: from what it is, down to one and up. */
static lw_span heights(const lw_result *now) {
  double step = of_courses(now) ? now->given.courses.block_height.si : step_of(now);
  double is = exposed_m(now);
  if (!now->wall.section.known || now->given.shape.point[0].x.origin != LW_ABSENT || !(step > 0.0))
    return (lw_span){0};
  int down = lw_change_count(LOWEST_M, is, step), up = lw_change_count(is, TALLEST_M, step);
  if (of_courses(now) && down > (int)lround(now->given.courses.count.si) - 1)
    down = (int)lround(now->given.courses.count.si) - 1;
  return (lw_span){.now = is, .from = is - down * step, .step = step, .most = down + up};
}

static bool type_height(const lw_changing *wall, double value, lw_typed *typed) {
  double less_m = exposed_m(wall->now) - value;
  return fabs(less_m) < 1e-6 || lw_change_lower.type(wall, less_m, typed);
}

static lw_span depths(const lw_result *now) {
  double is = lw_change_depth_now(&now->given), step = step_of(now);
  if (!of_courses(now) || !(is > 0.0)) return (lw_span){0};
  double from = down_from(is, fmin(is, SHALLOWEST_M), step);
  return (lw_span){.now = is, .from = from, .step = step, .most = lw_change_count(from, DEEPEST_M, step)};
}

/* Water stands as high as the ground behind, at most; at its lowest, the base, there is none. */
static lw_span waters(const lw_result *now) {
  double whole = now->wall.section.height_m, step = step_of(now);
  if (!now->wall.section.known) return (lw_span){0};
  double level = whole - lw_si_or(&now->given.water.depth, whole);
  return (lw_span){.now = fmax(0.0, level), .step = step, .most = lw_change_count(0.0, whole, step)};
}

static bool type_water(const lw_changing *wall, double value, lw_typed *typed) {
  double depth_m = wall->now->wall.section.height_m - value;
  if (value < 0.5 * step_of(wall->now)) return lw_typed_put(typed, "water depth", "%s", "unknown");
  return lw_typed_put_mm(typed, "water depth", fmax(0.0, depth_m));
}

static const lw_handle HANDLES[] = {
    {"height", "Height above the ground in front", heights, type_height},
    {"depth", "Depth of the blocks, front to back", depths, NULL},
    {"water", "Water standing behind, above the underside of the wall", waters, type_water}};
enum { HANDLE_COUNT = sizeof HANDLES / sizeof *HANDLES };

static bool type(const lw_handle *handle, const lw_changing *wall, double value, lw_typed *typed) {
  return (handle->type ? handle->type : lw_change_deeper.type)(wall, value, typed);
}

static const lw_handle *handle_of(const char *slug) {
  for (size_t i = 0; i < HANDLE_COUNT; i++)
    if (strcmp(HANDLES[i].slug, slug) == 0) return &HANDLES[i];
  return NULL;
}

static bool is_within(double value, const lw_span *span) {
  static const double ROUNDING_M = 1e-6;
  double to = span->from + span->most * span->step;
  return span->most > 0 && value > span->from - ROUNDING_M && value < to + ROUNDING_M;
}

static bool move(const lw_handle *handle, double value, const lw_result *now, lw_case *c) {
  lw_span span = handle->span(now);
  lw_changing wall = {.now = now, .c = &now->given};
  lw_typed typed = {.count = 0};
  return is_within(value, &span) && type(handle, &wall, value, &typed) && lw_typed_enter(&typed, c);
}

lw_status lw_request_move(lw_request *asked, const lw_result *now, lw_case *c) {
  json_t *asks = json_object_get(asked->request, "move");
  void *first = json_object_iter(asks);
  const char *slug = first ? json_object_iter_key(first) : "";
  const json_t *value = first ? json_object_iter_value(first) : NULL;
  const lw_handle *handle = handle_of(slug);
  if (!handle || json_object_size(asks) != 1 || !json_is_number(value))
    return lw_request_refuse(asked, "move: one of height, depth and water is wanted, and where to");
  if (!move(handle, json_number_value(value), now, c))
    return lw_request_refuse(asked, "move: this wall cannot be moved so: %s", slug);
  return LW_OK;
}

/* Each place where it can stand, and how that is said. */
static void put_steps(json_t *entry, lw_units units, const lw_span *span) {
  json_t *steps = lw_json_list(entry, "steps");
  for (int i = 0; i <= span->most; i++) {
    json_t *step = lw_json_entry(steps);
    (void)lw_json_set_double(step, "m", span->from + i * span->step);
    lw_json_set_text(step, "words", lw_millimetres(units, span->from + i * span->step).text);
  }
  lw_json_set_count(entry, "at", (int)lround((span->now - span->from) / span->step));
}

void lw_reply_put_handles(json_t *object, const lw_result *result) {
  json_t *list = lw_json_list(object, "handles");
  lw_json_set_text(object, "handles_none", "This wall's size is not known well enough yet to be moved.");
  for (size_t i = 0; i < HANDLE_COUNT; i++) {
    lw_span span = HANDLES[i].span(result);
    if (span.most == 0) continue;
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "handle", HANDLES[i].slug);
    lw_json_set_text(entry, "words", HANDLES[i].words);
    put_steps(entry, result->units, &span);
    (void)lw_json_set_double(entry, "now_m", span.now);
    (void)lw_json_set_double(entry, "from_m", span.from);
    (void)lw_json_set_double(entry, "step_m", span.step);
    lw_json_set_count(entry, "most", span.most);
  }
}
