/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "situation_run.h"
#include "tier.h"

#include <math.h>

/* Every situation of a wall, under every set of factors of its format and every way of an earthquake: those
 * with the same pushes follow one another. */

static void start(const lw_situation_plan *plan, lw_situation *situation) {
  situation->name = plan->name;
  situation->kind = plan->kind;
  situation->decides = plan->decides;
  situation->why = plan->why;
  situation->water_depth_m = plan->water_depth_m;
  situation->people_down_kn_per_m = plan->actions.people_down_kn_per_m;
  situation->people_out_kn_per_m = plan->actions.people_out_kn_per_m;
  situation->joint_count = situation->check_count = 0;
  situation->set = NULL;
  situation->factors = (lw_factors){0};
  situation->slip_known = false;
}

/* The ways in which an earthquake may act: weight made lighter or heavier, wet ground with its water or the
 * water by itself. Without one there is a single way, which is none. */
enum { WAYS = 4 };

static int ways_of(const lw_wall *wall, const lw_situation_plan *plan, lw_seismic way[WAYS]) {
  double up = plan->seismic_vertical, share = wall->method.seismic_height;
  bool shaken = plan->seismic_horizontal > 0.0 || up > 0.0;
  bool wet = plan->water_depth_m < wall->section.height_m + lw_site_under(&wall->site);
  int count = 0;
  way[count++] = shaken ? (lw_seismic){plan->seismic_horizontal, up, share, true} : (lw_seismic){0};
  if (shaken && up > 0.0) way[count++] = (lw_seismic){plan->seismic_horizontal, -up, share, true};
  for (int i = 0, dry = count; shaken && wet && i < dry; i++) {
    way[count] = way[i];
    way[count++].pervious = false;
  }
  return count;
}

static bool same_push(const lw_format *format, const lw_situation_plan *a, const lw_situation_plan *b) {
  bool same_water = a->water_depth_m <= b->water_depth_m && a->water_depth_m >= b->water_depth_m;
  bool shaken = a->name == LW_SITUATION_EARTHQUAKE || b->name == LW_SITUATION_EARTHQUAKE;
  bool windy = a->name == LW_SITUATION_WIND || b->name == LW_SITUATION_WIND;
  return same_water && !shaken && !windy && lw_format_same_ground(format, a->kind, b->kind);
}

/* What all sets of one run of situations share. */
typedef struct follow {
  const lw_wall *wall;
  const lw_contact_name *only;
  const lw_situation_plan *plan;
  int count;
  lw_situation *situation;
  lw_wall *now;                         /* the wall as it stands in the situation in hand */
  lw_check gravest[LW_SITUATION_COUNT]; /* of the sets before */
} follow;

/* The way that is shown comes last: its pushes are then at hand. */
static void follow_plan(follow *f, const lw_format *format, int i, lw_pushes *all, bool again, bool first) {
  const lw_situation_plan *plan = &f->plan[i];
  lw_wall *now = f->now;
  lw_check_context context = {now, format, plan->kind, isfinite(plan->water_depth_m)};
  lw_situation_run r = {.only = f->only,
                        .whole = f->wall,
                        .wall = now,
                        .context = &context,
                        .pushes = all,
                        .situation = &f->situation[i]};
  lw_seismic way[WAYS];
  for (int w = ways_of(f->wall, plan, way) - 1; w >= 0; w--) {
    r.situation->seismic = way[w];
    lw_situation_change(f->wall, format, r.situation, now, NULL);
    lw_format_mobilize(format, plan->kind, now, NULL);
    if (again) lw_pushes_find(now, f->only, all);
    lw_situation_check(&r, &plan->actions);
  }
  bool shown = f->wall->section.known && !f->wall->governing_only;
  if (!shown || (!first && !lw_check_graver(&r.gravest, &f->gravest[i]))) return;
  f->gravest[i] = r.gravest;
  lw_situation_record(&r, &plan->actions);
}

/* Situations with the same pushes one after another. */
static void follow_set(follow *f, const lw_format *format, lw_pushes *all, bool first) {
  bool done[LW_SITUATION_COUNT] = {false};
  for (int i = 0; i < f->count; i++) {
    if (done[i]) continue;
    for (int k = i; k < f->count; k++) {
      if (done[k] || (k > i && !same_push(format, &f->plan[i], &f->plan[k]))) continue;
      follow_plan(f, format, k, all, k == i, first);
      done[k] = true;
    }
  }
}

static void follow_all(follow *f, const lw_format_family *family) {
  lw_pushes all;
  bool first = true;
  lw_pushes_begin(&f->wall->section, f->only, &all);
  for (int i = 0; i < f->count; i++) start(&f->plan[i], &f->situation[i]);
  for (int i = 0; i < family->count; i++) {
    /* What asks for nothing is run only where nothing else is there. */
    if (family->count > 1 && !lw_format_asks(&family->set[i])) continue;
    follow_set(f, &family->set[i], &all, first);
    first = false;
  }
}

/* The steps to the push that is shown. Where it is that of the situation before, nothing new is said. */
static void tell_push(const lw_wall *wall, const lw_tables *tables, const lw_situation *s,
                      const lw_working *working) {
  lw_format format;
  lw_push push;
  lw_wall now;
  lw_format_read_of(tables, s->set, &format);
  lw_working_heading(working, "Push on the base");
  lw_situation_wall(wall, &format, s, &now, working);
  lw_format_mobilize(&format, s->kind, &now, working);
  lw_push_find(&now, &now.section, 0.0, NULL, &push, working);
}

static void tell_pushes(const lw_wall *wall, const lw_tables *tables, const lw_situation_plan *plan,
                        const lw_situations *situations, const lw_working *working) {
  for (int i = 0; i < situations->count; i++) {
    const lw_situation *s = &situations->situation[i], *before = s - 1;
    lw_format format;
    lw_format_read_of(tables, s->set, &format);
    lw_working_heading(working, lw_situation_sentence(s->name));
    bool same = i > 0 && s->set == before->set && same_push(&format, &plan[i - 1], &plan[i]);
    if (wall->section.known && !same) tell_push(wall, tables, s, working);
  }
}

void lw_situations_follow(const lw_wall *wall, const lw_tables *tables, const lw_situation_plan *plan,
                          lw_situations *situations, const lw_working *working) {
  lw_format_family family;
  lw_wall now;
  lw_section_copy(&wall->section, &now.section);
  follow f = {.wall = wall,
              .plan = plan,
              .count = situations->count,
              .situation = situations->situation,
              .now = &now};
  lw_format_read(tables, wall->format, &family);
  follow_all(&f, &family);
  lw_slips_check(wall, &family, situations);
  if (working) tell_pushes(wall, tables, plan, situations, working);
}

void lw_situation_contact(const lw_wall *wall, const lw_format_family *family, const lw_situation_plan *plan,
                          const lw_contact_name *only, lw_situation *situation) {
  lw_wall now;
  lw_section_copy(&wall->section, &now.section);
  follow f = {.wall = wall, .only = only, .plan = plan, .count = 1, .situation = situation, .now = &now};
  follow_all(&f, family);
}
