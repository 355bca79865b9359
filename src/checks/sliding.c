/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sliding.h"

#include <math.h>

#include "balance/ground.h"
#include "balance/passive.h"
#include "base/angles.h"
#include "base/extremes.h"
#include "base/tell.h"
#include "base/working.h"
#include "soil/site.h"
#include "standards/factors.h"
#include "soil/strength.h"

/* Sliding on a contact: friction and what is bonded against the push. */

/* The width, or of blocks that taper the area, on which adhesion holds: what is in compression, or the
 * effective width once where the pressure is even over that (and so under a pad, whose contact is as wide as
 * its spread); 0 where the resultant is outside [EN1997-1 6.5.3], [DAS-PFE example 8.1]. */
static double held_m(const lw_method *method, const lw_contact *contact) {
  if (!contact->inside) return 0.0;
  if (method->base_pressure == LW_BASE_EFFECTIVE) return contact->effective_width_m;
  return contact->area_m2 * contact->share_in_compression;
}

/* What clay holds at most, however hard it is pressed; INFINITY: no limit. */
typedef struct limit {
  double of_weight_kn_per_m, share; /* where water or air can get between clay and a dry wall */
  double undrained_kn_per_m, strength_kpa, width_m;
  bool gives_way; /* it is pressed harder than it bears, until enough of it does */
} limit;

/* What holds by itself, passive apart: friction of what is in compression, and what is bonded. */
typedef struct grip {
  double friction, normal_kn_per_m; /* tan of the angle, and what presses there */
  double bond_kn_per_m;             /* adhesion of what is in contact, or the shear strength of a joint */
  double times;                     /* what the set leaves of the two */
  limit limit;
} grip;

static double unlimited(const grip *g) {
  return (g->friction * g->normal_kn_per_m + g->bond_kn_per_m) * g->times;
}

double lw_sliding_bond(const lw_method *method, const lw_strengths *design, const lw_contact *contact,
                       lw_at at) {
  if (at == LW_AT_BASE || at == LW_AT_PAD) return design->base_adhesion_kpa * held_m(method, contact);
  return at == LW_AT_JOINT && contact->vertical_kn_per_m > 0.0 ? design->joint_shear_kn_per_m : 0.0;
}

double lw_sliding_friction(const lw_strengths *design, lw_at at) {
  if (at == LW_AT_BASE) return design->base_friction;
  return at == LW_AT_PAD ? design->pad_friction : design->joint_friction;
}

static bool on_ground(const lw_check_context *context, lw_at at) {
  return at == LW_AT_PAD || (at == LW_AT_BASE && context->wall->site.pad.thickness_m <= 0.0);
}

/* What clay bears undrained, of its strength: pi + 2. */
static const double BEARS = LW_PI + 2.0;

/* Clay without friction, and clay in the short term, which keeps its undrained strength however hard it is
 * pressed: on what bears, the effective width [EN1997-1 6.5.3]. Pressed harder than it bears it gives way
 * until enough of it does; the check of bearing says that it does. */
static limit limit_of(const lw_check_context *context, const lw_contact *contact, lw_at at, double times) {
  const lw_strengths *design = &context->load_case->ground.design;
  lw_number share =
      lw_factor_value(context->factor_set->row[LW_FACTOR_UNDRAINED_SLIDING], context->load_case->kind);
  double cu = design->undrained_kpa;
  limit l = {.of_weight_kn_per_m = INFINITY, .undrained_kn_per_m = INFINITY};
  if (!on_ground(context, at)) return l;
  if (share.known && (cu > 0.0 || lw_soil_is_frictionless(design->footing.friction_rad))) {
    l.share = share.value;
    l.of_weight_kn_per_m = share.value * lw_larger(contact->vertical_kn_per_m, 0.0);
  }
  if (cu > 0.0) {
    l.strength_kpa = cu;
    l.width_m = contact->inside ? contact->effective_width_m : 0.0;
    double least = lw_larger(contact->vertical_kn_per_m, 0.0) / (cu * BEARS);
    l.gives_way = l.width_m < least;
    l.undrained_kn_per_m = times * cu * lw_larger(l.width_m, least);
  }
  return l;
}

static double most(const limit *l) {
  return lw_smaller(l->of_weight_kn_per_m, l->undrained_kn_per_m);
}

static double on_resistance(const lw_check_context *context) {
  return lw_factor_set_times(context->factor_set, context->load_case->kind, LW_FACTOR_SLIDING_RESISTANCE,
                             LW_FACTOR_SLIDING_RESISTANCE_TIMES);
}

double lw_sliding_most(const lw_check_context *context, const lw_contact *contact, lw_at at) {
  limit l = limit_of(context, contact, at, on_resistance(context));
  return most(&l);
}

static grip grip_of(const lw_check_context *context, const lw_contact *contact) {
  const lw_strengths *design = &context->load_case->ground.design;
  lw_at at = context->place->at;
  double times = on_resistance(context);
  return (grip){.friction = lw_sliding_friction(design, at),
                .normal_kn_per_m = lw_larger(contact->vertical_kn_per_m, 0.0),
                .bond_kn_per_m = lw_sliding_bond(&context->wall->method, design, contact, at),
                .times = times,
                .limit = limit_of(context, contact, at, times)};
}

/* What holds and what pushes, with so much of the ground in front counted; 0: none. */
typedef struct balance {
  grip grip;
  double in_front_kn_per_m;
  bool off_push; /* the ground in front is taken off the push */
  double holds_kn_per_m, push_kn_per_m;
} balance;

static balance balance_of(const lw_check_context *context, const lw_contact *contact,
                          double in_front_kn_per_m) {
  balance b = {.grip = grip_of(context, contact),
               .in_front_kn_per_m = in_front_kn_per_m,
               .off_push = lw_factor_set_passive_off_push(context->factor_set, &context->wall->method)};
  b.push_kn_per_m = contact->horizontal_kn_per_m - (b.off_push ? in_front_kn_per_m : 0.0);
  b.holds_kn_per_m = lw_smaller(unlimited(&b.grip), most(&b.grip.limit));
  if (!b.off_push) b.holds_kn_per_m += in_front_kn_per_m;
  return b;
}

/* A set may ask for more where the ground in front counts. */
static lw_check weigh(const lw_check_context *context, const balance *b, lw_check check) {
  const lw_factor_row *const *row = context->factor_set->row;
  lw_situation_kind kind = context->load_case->kind;
  bool asks_more = b->in_front_kn_per_m > 0.0 && row[LW_FACTOR_SLIDING_WITH_PASSIVE];
  check.demand = lw_known(lw_larger(b->push_kn_per_m, 0.0));
  check.resistance = lw_known(b->holds_kn_per_m);
  if (!lw_check_find_has(context, &check)) {
    lw_check_no_demand(&check, row[LW_FACTOR_SLIDING], kind);
    return check;
  }
  lw_check_weigh(&check, row[asks_more ? LW_FACTOR_SLIDING_WITH_PASSIVE : LW_FACTOR_SLIDING], kind);
  return check;
}

/* One line of the two that make a resistance: the grip, and what of it the clay lets count. */
static void tell_grip(const grip *g, const char *symbol, const lw_working *working) {
  bool bonds = g->bond_kn_per_m > 0.0, whole = fabs(g->times - 1.0) < 1e-12;
  lw_step step = {.symbol = symbol,
                  .formula = bonds ? (whole ? "mu V + bond" : "factor x (mu V + bond)")
                                   : (whole ? "mu V" : "factor x mu V"),
                  .value = unlimited(g),
                  .unit = "kN/m"};
  char numbers[96];
  lw_print(numbers, sizeof numbers, bonds ? "%.4f x %.4f + %.4f" : "%.4f x %.4f", g->friction,
           lw_tell(working, "kN/m", g->normal_kn_per_m), lw_tell(working, "kN/m", g->bond_kn_per_m));
  if (whole)
    lw_working_line(working, &step, "%s", numbers);
  else
    lw_working_line(working, &step, "%.4f (%s)", g->times, numbers);
}

static void tell_limit(const grip *g, const char *symbol, const lw_working *working) {
  const limit *l = &g->limit;
  double normal = lw_tell(working, "kN/m", g->normal_kn_per_m),
         strength = lw_tell(working, "kPa", l->strength_kpa), width = lw_tell(working, "m", l->width_m);
  lw_step step = {.symbol = symbol,
                  .formula = "share x V, the most that undrained clay holds",
                  .value = most(l),
                  .unit = "kN/m"};
  if (l->of_weight_kn_per_m <= l->undrained_kn_per_m) {
    lw_working_line(working, &step, "%.4f x %.4f", l->share, normal);
    return;
  }
  bool whole = fabs(g->times - 1.0) < 1e-12;
  step.source = "[EN1997-1 6.5.3]";
  if (l->gives_way) {
    step.formula = "factor x V/(pi + 2), of clay pressed harder than it bears undrained";
    lw_working_line(working, &step, "%.4f x %.4f/(pi + 2)", g->times, normal);
    return;
  }
  step.formula = whole ? "cu x B', the most that clay holds undrained"
                       : "factor x cu x B', the most that clay holds undrained";
  if (whole)
    lw_working_line(working, &step, "%.4f x %.4f", strength, width);
  else
    lw_working_line(working, &step, "%.4f x %.4f x %.4f", g->times, strength, width);
}

static void tell_in_front(const balance *b, double ground_kn_per_m, const lw_working *working) {
  lw_step sum = {
      .symbol = "R", .formula = "what holds below + in front", .value = b->holds_kn_per_m, .unit = "kN/m"};
  lw_step less = {
      .symbol = "H", .formula = "push - what holds in front", .value = b->push_kn_per_m, .unit = "kN/m"};
  double front = lw_tell(working, "kN/m", b->in_front_kn_per_m);
  if (b->off_push)
    lw_working_line(working, &less, "%.4f - %.4f", lw_tell(working, "kN/m", b->push_kn_per_m) + front, front);
  else
    lw_working_line(working, &sum, "%.4f + %.4f", lw_tell(working, "kN/m", ground_kn_per_m), front);
}

/* The friction to design with, where the set or a searched factor divides it. */
static void tell_friction(const lw_check_context *context, double design, const lw_working *working) {
  lw_ground own;
  lw_ground_own(context->wall, &own);
  double given = lw_sliding_friction(&own.design, context->place->at);
  lw_step step = {
      .symbol = "mu", .formula = "friction x factor, to design with", .value = design, .unit = ""};
  if (fabs(design - given) > 1e-12) lw_working_line(working, &step, "%.4f x %.4f", given, design / given);
}

static void tell(const lw_check_context *context, const balance *b, const lw_check *check,
                 const lw_working *working) {
  const grip *g = &b->grip;
  bool limited = most(&g->limit)<unlimited(g), passes = b->in_front_kn_per_m> 0.0 && !b->off_push;
  tell_friction(context, g->friction, working);
  tell_grip(g, limited || passes ? "Rg" : "R", working);
  if (limited) tell_limit(g, passes ? "Rm" : "R", working);
  if (b->in_front_kn_per_m > 0.0) tell_in_front(b, lw_smaller(unlimited(g), most(&g->limit)), working);
  bool every = context->factor_set->on_every_wedge > 0.0;
  lw_check_tell_has(check, every ? "F R / H, with F on every strength" : "R / H", working);
}

/* The ground in front as the set counts it. */
static double in_front_of(const lw_check_context *context, const lw_free_body *body) {
  return body->passive_kn_per_m * lw_factor_set_times(context->factor_set, context->load_case->kind,
                                                      LW_FACTOR_PASSIVE_RESISTANCE,
                                                      LW_FACTOR_PASSIVE_RESISTANCE_TIMES);
}

static void tell_passive(const lw_check_context *context, const lw_free_body *body,
                         const lw_working *working) {
  const lw_ground *ground = &context->load_case->ground;
  double counts = in_front_of(context, body), passive = body->passive_kn_per_m;
  lw_step step = {.symbol = "Rpd", .formula = "what the set leaves of Rp", .value = counts, .unit = "kN/m"};
  lw_working_heading(working, "in front, passive:");
  (void)lw_passive_resistance(context->wall, ground, context->place->stack.below_m, working);
  if (fabs(counts - passive) > 1e-12)
    lw_working_line(working, &step, "%.5f x %.4f", counts / passive, lw_tell(working, "kN/m", passive));
}

lw_check lw_check_sliding(const lw_check_context *context, const lw_free_body *body,
                          const lw_working *working) {
  lw_check check = lw_check_begin(context, body, LW_CHECK_SLIDING, "kN/m");
  if (body->status != LW_OK) return check;
  balance own = balance_of(context, &body->contact, 0.0);
  lw_check alone = weigh(context, &own, check);
  bool counted = body->passive_kn_per_m > 0.0;
  if (counted) {
    balance both = balance_of(context, &body->contact, in_front_of(context, body));
    lw_check with = weigh(context, &both, check);
    /* What holds by itself is no worse for the ground in front of it. */
    if (!with.counts || !lw_check_graver(&with, &alone)) {
      if (working) tell_passive(context, body, working);
      if (working) tell(context, &both, &with, working);
      return with;
    }
    lw_working_heading(working, "in front, passive: not counted, as the set asks for less without it");
  }
  if (working) tell(context, &own, &alone, working);
  return alone;
}
