/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

#include "base/angles.h"
#include "base/working.h"
#include "soil/strength.h"

static const double steepest_rad = 50.0 * LW_PI / 180.0;

static double prandtl_q(double friction_rad) {
  double root = tan(LW_PI / 4.0 + friction_rad / 2.0);
  return lw_soil_is_frictionless(friction_rad) ? 1.0 : exp(LW_PI * tan(friction_rad)) * root * root;
}

void lw_bearing_prandtl(const bearing_work *work) {
  lw_bearing *b = work->found;
  double phi = work->strip->friction_rad;
  bool none = lw_soil_is_frictionless(phi);
  b->nq = prandtl_q(phi);
  b->nc = none ? LW_PI + 2.0 : (b->nq - 1.0) / tan(phi);
  lw_bearing_write(work, "Nq", "exp(pi tan phi) tan^2(45 + phi/2)", b->nq);
  lw_bearing_write(work, "Nc", none ? "pi + 2" : "(Nq - 1) cot phi", b->nc);
}

double lw_bearing_depth_ratio(const bearing_work *work) {
  double ratio = work->strip->depth_m / work->strip->width_m;
  double k = work->way->depth_ratio = ratio <= 1.0 ? ratio : atan(ratio);
  lw_bearing_write(work, "k", ratio <= 1.0 ? "Df/B" : "atan(Df/B) pi/180", k);
  return k;
}

double lw_bearing_share_left(const bearing_work *work, const bearing_share *share) {
  const lw_strip *strip = work->strip;
  double width = work->found->effective_width_m;
  double held = strip->vertical_kn_per_m + width * strip->cohesion_kpa / tan(strip->friction_rad);
  double left = 1.0 - share->of_horizontal * strip->horizontal_kn_per_m / held;
  double factor = left > 0.0 ? pow(left, share->power) : 0.0;
  lw_bearing_write_inclination(work, share->symbol, left > 0.0 ? share->formula : "0", factor);
  return factor;
}

double lw_bearing_cohesion_left(const bearing_work *work, const char *formula, double value) {
  lw_bearing_write_inclination(work, "ic", value > 0.0 ? formula : "0", fmax(value, 0.0));
  return fmax(value, 0.0);
}

double lw_bearing_left_by_cohesion(const bearing_work *work) {
  double held = work->found->effective_width_m * work->strip->cohesion_kpa,
         h = work->strip->horizontal_kn_per_m;
  return h < held ? 1.0 - h / held : 0.0;
}

/* An author's Nγ: the formula with the name that Prandtl's Nq has on the page. */
typedef struct gamma_words {
  const char *formula, *source;
} gamma_words;

static const gamma_words GAMMA_WORDS[] = {
    [LW_N_GAMMA_MEYERHOF] = {"(%s - 1) tan(1.4 phi)", "[MEYERHOF-1963 general equation]"},
    [LW_N_GAMMA_HANSEN] = {"1.5 (%s - 1) tan phi", "[HANSEN-1970 general equation]"},
    [LW_N_GAMMA_VESIC] = {"2 (%s + 1) tan phi", "[VESIC-1973 general equation]"},
    [LW_N_GAMMA_EN1997] = {"2 (%s - 1) tan phi", "[EN1997-1 annex D]"},
};

static double n_gamma_of(lw_n_gamma asked, double nq, double phi) {
  switch (asked) {
  case LW_N_GAMMA_MEYERHOF: return (nq - 1.0) * tan(1.4 * phi);
  case LW_N_GAMMA_HANSEN: return 1.5 * (nq - 1.0) * tan(phi);
  case LW_N_GAMMA_VESIC: return 2.0 * (nq + 1.0) * tan(phi);
  default: return 2.0 * (nq - 1.0) * tan(phi);
  }
}

static void write_n_gamma(const bearing_work *work, const gamma_words *words, double nq) {
  char formula[64];
  bool own = !(fabs(work->found->nq - nq) > 0.0);
  if (work->working == NULL) return;
  work->way->nq_prandtl = nq;
  if (!own) lw_bearing_write(work, "Nqp", "exp(pi tan phi) tan^2(45 + phi/2)", nq);
  lw_print(formula, sizeof formula, words->formula, own ? "Nq" : "Nqp");
  lw_bearing_write_from(work, "Ngamma", formula, work->found->n_gamma, words->source);
}

/* Whoever's Nq the author has, a formula for Nγ goes with Prandtl's. */
static void find_n_gamma(const bearing_work *work) {
  lw_n_gamma asked = work->strip->n_gamma == LW_N_GAMMA_OWN ? work->author->n_gamma : work->strip->n_gamma;
  double nq = prandtl_q(work->strip->friction_rad);
  if (asked == LW_N_GAMMA_OWN) return;
  if (asked == LW_N_GAMMA_GIVEN) {
    work->found->n_gamma = work->strip->n_gamma_value;
    const lw_step given = {.symbol = "Ngamma", .formula = "", .value = work->found->n_gamma, .unit = ""};
    lw_working_step(work->working, &given, "%.5g, as given", given.value);
    return;
  }
  work->found->n_gamma = n_gamma_of(asked, nq, work->strip->friction_rad);
  write_n_gamma(work, &GAMMA_WORDS[asked], nq);
}

static lw_status refuse(lw_error *error, lw_reason reason, const char *text) {
  return lw_error_set(error, LW_NO_SOLUTION, reason, "%s", text);
}

static bool is_finite_strip(const lw_strip *s) {
  const double all[] = {
      s->width_m,      s->eccentricity_m,        s->depth_m,           s->overburden_kpa,     s->friction_rad,
      s->cohesion_kpa, s->unit_weight_kn_per_m3, s->vertical_kn_per_m, s->horizontal_kn_per_m};
  for (size_t i = 0; i < sizeof all / sizeof all[0]; i++)
    if (!isfinite(all[i])) return false;
  return true;
}

static lw_status accept(const lw_strip *strip, lw_error *error) {
  if (!is_finite_strip(strip) || strip->friction_rad < 0.0 || strip->friction_rad > steepest_rad + 1e-9)
    return refuse(error, LW_REASON_ANGLE_OUT_OF_RANGE, "bearing theory covers friction from 0 to 50 degrees");
  if (!(strip->width_m > 2.0 * fabs(strip->eccentricity_m)))
    return refuse(error, LW_REASON_OUTSIDE_BASE, "the load acts outside the footing: no width bears it");
  double v = strip->vertical_kn_per_m, h = strip->horizontal_kn_per_m;
  if (v < 0.0 || (h > 0.0 && !(v > 0.0)))
    return refuse(error, LW_REASON_NO_WEIGHT, "a horizontal load needs a vertical one to go with it");
  return LW_OK;
}

static void find_width(const bearing_work *work) {
  const lw_strip *strip = work->strip;
  work->found->effective_width_m = strip->width_m - 2.0 * strip->eccentricity_m;
  lw_bearing_write_from(work, "B'", "B - 2 e", work->found->effective_width_m, "");
}

/* What friction and cohesion of the ground itself hold under the footing. */
static bool slides(const bearing_work *work) {
  const lw_strip *strip = work->strip;
  double held = strip->vertical_kn_per_m * tan(strip->friction_rad) +
                work->found->effective_width_m * strip->cohesion_kpa;
  bool more = strip->horizontal_kn_per_m > held;
  if (!more || strip->inclination_factors == LW_NONE) return more;
  lw_working_heading(work->working,
                     "H is more than the ground's own strength holds: it slides before it bears");
  lw_bearing_write_from(work, "Hg", "V tan phi + B' c", held, "");
  return true;
}

/* No author's factors are meant for a load that the ground below cannot hold from sliding. */
static void incline(const bearing_work *work) {
  lw_bearing *b = work->found;
  if (!(work->strip->horizontal_kn_per_m > 0.0)) return;
  b->slides = slides(work);
  if (work->strip->inclination_factors != LW_OWN) return;
  if (!b->slides) {
    work->author->inclination(work);
    return;
  }
  b->ic = b->iq = b->i_gamma = 0.0;
  lw_bearing_write(work, "iq", "0", b->iq);
  lw_bearing_write(work, "ic", "0", b->ic);
  lw_bearing_write(work, "igamma", "0", b->i_gamma);
}

static void sum_up(const bearing_work *work) {
  const lw_strip *strip = work->strip;
  lw_bearing *b = work->found;
  b->ultimate_kpa =
      strip->cohesion_kpa * b->nc * b->dc * b->ic + strip->overburden_kpa * b->nq * b->dq * b->iq +
      0.5 * strip->unit_weight_kn_per_m3 * b->effective_width_m * b->n_gamma * b->d_gamma * b->i_gamma;
  b->net_kpa = b->ultimate_kpa - strip->overburden_kpa;
  lw_bearing_write(work, "qu", "c Nc dc ic + q' Nq dq iq + gamma B' Ngamma dgamma igamma/2", b->ultimate_kpa);
  lw_bearing_write_from(work, "qnet", "qu - q'", b->net_kpa, "");
}

/* A footing next to no width wide overflows what is divided by it. */
static bool is_finite_answer(const lw_bearing *b) {
  return isfinite(b->nc + b->nq + b->n_gamma + b->dc + b->dq + b->d_gamma + b->ic + b->iq + b->i_gamma +
                  b->ultimate_kpa + b->net_kpa);
}

lw_status lw_bearing_by(const bearing_author *author, const lw_strip *strip, lw_bearing *bearing,
                        lw_error *error, const lw_working *working) {
  lw_strip pushed = *strip; /* to which side it pushes and stands makes no difference to a level strip */
  lw_bearing b = {.dc = 1.0, .dq = 1.0, .d_gamma = 1.0, .ic = 1.0, .iq = 1.0, .i_gamma = 1.0};
  bearing_way way = {0};
  const bearing_work work = {author, &pushed, &b, &way, working};
  pushed.horizontal_kn_per_m = fabs(strip->horizontal_kn_per_m);
  pushed.eccentricity_m = fabs(strip->eccentricity_m);
  lw_status status = accept(&pushed, error);
  if (status != LW_OK) return status;
  lw_working_heading(working, author->routine->title);
  find_width(&work);
  author->capacity(&work);
  find_n_gamma(&work);
  if (author->depth != NULL && strip->depth_factors == LW_OWN) author->depth(&work);
  incline(&work);
  sum_up(&work);
  if (!is_finite_answer(&b))
    return refuse(error, LW_REASON_OUT_OF_RANGE, "no footing is so narrow, so deep or so loaded");
  *bearing = b;
  return LW_OK;
}

void lw_bearing_power_inclination(const bearing_work *work) {
  static const bearing_share by_depth = {"iq", "(1 - H/(V + B' c cot phi))^2", 1.0, 2.0},
                             by_weight = {"igamma", "(1 - H/(V + B' c cot phi))^3", 1.0, 3.0};
  lw_bearing *b = work->found;
  b->iq = lw_bearing_share_left(work, &by_depth);
  b->i_gamma = lw_bearing_share_left(work, &by_weight);
  b->ic = lw_bearing_cohesion_left(work, "iq - (1 - iq)/(Nc tan phi)",
                                   b->iq - (1.0 - b->iq) / (b->nc * tan(work->strip->friction_rad)));
}
