/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "water_limits.h"

#include <lowwall/studies.h>

#include <math.h>

#include "base/solve.h"
#include "load_cases/basis.h"
#include "load_cases/situations_run.h"
#include "balance/weigh.h"
#include "soil/site.h"

/* How high water may stand behind before each check falls short: one contact at a time, first by a scan of
 * levels that all its checks share, then by a root of ratio - 1 between two of them. */

enum { LEVELS = 8, HALVINGS = 40, KINDS = LW_CHECK_KIND_COUNT };
static const double TOLERANCE_M = 1e-10, ROOT_OF_RATIO = 1e-6;
static const double BY_FAR = 9.0;  /* a check that nothing pushes: it holds, whatever its ratio */
static const double LEAST = 1e-12; /* what holds exactly stands on the holding side */

typedef struct search {
  const lw_wall *wall;
  const lw_tables *tables;
  const lw_factor_set_family *family;
  lw_situation_plan plan; /* of the blocked outlet; its water is what is searched */
  lw_situation *scratch;
  const lw_check *check; /* the one in hand */
} search;

static bool same_check(const lw_situation *s, const lw_check *check, lw_check *there) {
  for (int i = 0; i < s->check_count; i++) {
    *there = lw_situation_check(s, i);
    if (there->kind == check->kind && there->at == check->at && there->joint == check->joint) return true;
  }
  return false;
}

/* The place of the check in hand, with the water at a level. */
static void run_at(const search *s, double depth_m) {
  lw_situation_plan plan = s->plan;
  plan.water_depth_m = depth_m;
  lw_situation_start(&plan, s->scratch);
  lw_situation_at(s->wall, s->family, s->check, s->scratch);
}

/* Where nothing there answers to it, one that cannot be shown, for no reason. */
static lw_check at_depth(const search *s, double depth_m) {
  lw_check there;
  run_at(s, depth_m);
  return same_check(s->scratch, s->check, &there) ? there : (lw_check){.holds = LW_CANNOT_SHOW};
}

static bool holds(const lw_check *check) {
  return check->holds == LW_HOLDS;
}

/* Inside the core the share in compression is 1, however far inside: the root wants to know how far. */
static double beyond_whole(const search *s, const lw_check *check) {
  lw_basis basis;
  if (!lw_check_basis(s->wall, s->tables, s->scratch, check, &basis)) return 0.0;
  const lw_contact *c = &basis.body.contact;
  double half = 0.5 * c->width_m, front = (half - c->eccentricity_m) / (half - c->kern_m);
  return fmin(front, (half + c->eccentricity_m) / (half - c->kern_behind_m)) - 1.0;
}

static double margin(double depth_m, const void *context) {
  const search *s = context;
  lw_check check = at_depth(s, depth_m);
  if (check.holds == LW_CANNOT_SHOW) return NAN;
  if (check.holds != LW_HOLDS) return check.ratio.known ? fmin(check.ratio.value - 1.0, -LEAST) : -1.0;
  if (!check.ratio.known) return BY_FAR;
  bool whole = check.kind == LW_CHECK_COMPRESSION && check.ratio.value < 1.0 + LEAST;
  return fmax(whole ? beyond_whole(s, &check) : check.ratio.value - 1.0, LEAST);
}

/* Where the ratio has gaps: halving on whether it holds. */
static double halve(const search *s, double wet_m, double dry_m) {
  for (int i = 0; i < HALVINGS; i++) {
    double middle = 0.5 * (wet_m + dry_m);
    lw_check check = at_depth(s, middle);
    if (holds(&check))
      dry_m = middle;
    else
      wet_m = middle;
  }
  return dry_m;
}

static void find_between(const search *s, double wet_m, double dry_m, lw_water_limit *limit) {
  double depth;
  if (lw_solve_root(margin, s, wet_m, dry_m, TOLERANCE_M, &depth) != LW_OK) depth = halve(s, wet_m, dry_m);
  limit->state = LW_WATER_FALLS_AT;
  limit->depth_m = lw_known(depth);
  limit->ratio = at_depth(s, depth).ratio;
  limit->jumps = !limit->ratio.known || fabs(limit->ratio.value - 1.0) > ROOT_OF_RATIO;
}

/* Levels from dry to full: the water that is there anyway, the foot of the contact, then evenly up. */
typedef struct levels {
  double depth_m[LEVELS + 2];
  bool holds[LEVELS + 2][KINDS];
} levels;

static double foot_depth(const lw_wall *wall, const lw_check *check) {
  const lw_section *section = &wall->section;
  if (check->at == LW_AT_BASE) return section->height_m;
  if (check->at == LW_AT_PAD) return section->height_m + wall->site.pad.thickness_m;
  int joint = check->at == LW_AT_CAP ? section->course_count : check->joint;
  return section->height_m - section->part[joint].bottom_m;
}

static void scan(const search *s, double full_m, levels *all) {
  double anyway = s->wall->site.water_depth_m, foot = fmin(foot_depth(s->wall, s->check), anyway);
  foot = fmax(foot, full_m);
  for (int i = 0; i < LEVELS + 2; i++) {
    all->depth_m[i] = i == 0 ? anyway : foot + (full_m - foot) * (i - 1) / LEVELS;
    run_at(s, all->depth_m[i]);
    for (int k = 0; k < s->scratch->check_count; k++) {
      lw_check check = lw_situation_check(s->scratch, k);
      all->holds[i][check.kind] = holds(&check);
    }
  }
}

static void find_limit(search *s, const levels *all, lw_water_limit *limit) {
  int first = 0;
  while (first < LEVELS + 2 && all->holds[first][s->check->kind]) first++;
  *limit = (lw_water_limit){.kind = s->check->kind, .at = s->check->at, .joint = s->check->joint};
  if (first == 0) {
    lw_check dry = at_depth(s, all->depth_m[0]);
    limit->state = dry.holds == LW_CANNOT_SHOW ? LW_WATER_NOT_SHOWN : LW_WATER_FALLS_DRY;
    limit->reason = dry.reason;
    limit->ratio = dry.ratio;
  } else if (first == LEVELS + 2) {
    limit->state = LW_WATER_STANDS_FULL;
    limit->depth_m = lw_known(all->depth_m[LEVELS + 1]);
    limit->ratio = s->check->ratio;
  } else if (first == 1) {
    /* Water at the foot alone: the ground under it is buoyant from then on. */
    limit->state = LW_WATER_FALLS_AT;
    limit->depth_m = lw_known(all->depth_m[1]);
    limit->ratio = at_depth(s, all->depth_m[1]).ratio;
    limit->jumps = true;
  } else {
    find_between(s, all->depth_m[first], all->depth_m[first - 1], limit);
  }
}

static bool same_contact(const lw_check *a, const lw_check *b) {
  return a->at == b->at && a->joint == b->joint;
}

/* The checks of a situation stand together by contact: those of one share a scan. */
void lw_water_limits_find(const lw_wall *wall, const lw_tables *tables, const lw_situation *blocked,
                          lw_situation *scratch, lw_water_limits *limits) {
  lw_factor_set_family family;
  levels all;
  lw_check check, scanned = {0};
  bool any = false;
  lw_factor_set_read(tables, wall->factor_set, &family);
  search s = {.wall = wall, .tables = tables, .family = &family, .scratch = scratch};
  s.plan = (lw_situation_plan){
      .name = blocked->name, .kind = blocked->kind, .decides = blocked->decides, .why = blocked->why};
  *limits = (lw_water_limits){.found = true};
  for (int i = 0; i < blocked->check_count; i++) {
    check = lw_situation_check(blocked, i);
    s.check = &check;
    /* A slip is searched, and its factor has kinks: no level is told of it. */
    if (!check.counts || check.at == LW_AT_GROUND) continue;
    if (!any || !same_contact(&scanned, &check)) scan(&s, blocked->water_depth_m, &all);
    scanned = check;
    any = true;
    find_limit(&s, &all, &limits->limit[limits->count++]);
  }
}

static int gravity(const lw_water_limit *limit) {
  switch (limit->state) {
  case LW_WATER_FALLS_DRY: return 3;
  case LW_WATER_FALLS_AT: return 2;
  case LW_WATER_NOT_SHOWN: return 1;
  case LW_WATER_STANDS_FULL: return 0;
  }
  return 0;
}

bool lw_water_limit_graver(const lw_water_limit *a, const lw_water_limit *b) {
  int first = gravity(a), second = gravity(b);
  if (first != second) return first > second;
  if (a->state == LW_WATER_FALLS_AT) return a->depth_m.value > b->depth_m.value;
  return a->ratio.known && b->ratio.known && a->ratio.value < b->ratio.value;
}

#define SLUG(name, slug, sentence) slug,
#define SENTENCE(name, slug, sentence) sentence,

const char *lw_water_state_slug(lw_water_state state) {
  static const char *const words[] = {LW_WATER_STATES(SLUG)};
  return words[state];
}

const char *lw_water_state_sentence(lw_water_state state) {
  static const char *const words[] = {LW_WATER_STATES(SENTENCE)};
  return words[state];
}
