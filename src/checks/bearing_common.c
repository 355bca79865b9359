/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <math.h>

static const double pi = 3.14159265358979323846;
static const double frictionless_rad = 1e-6;
static const double steepest_rad = 50.0 * 3.14159265358979323846 / 180.0;

bool lw_bearing_is_frictionless(double friction_rad) {
  return friction_rad < frictionless_rad;
}

void lw_bearing_prandtl(double friction_rad, lw_bearing *bearing) {
  if (lw_bearing_is_frictionless(friction_rad)) {
    bearing->nc = pi + 2.0;
    bearing->nq = 1.0;
    return;
  }
  double root = tan(pi / 4.0 + friction_rad / 2.0);
  bearing->nq = exp(pi * tan(friction_rad)) * root * root;
  bearing->nc = (bearing->nq - 1.0) / tan(friction_rad);
}

double lw_bearing_depth_ratio(const lw_strip *strip) {
  double ratio = strip->depth_m / strip->width_m;
  return ratio <= 1.0 ? ratio : atan(ratio);
}

double lw_bearing_share_left(const lw_strip *strip, double horizontal_share, double power) {
  double width = strip->width_m - 2.0 * fabs(strip->eccentricity_m);
  double held = strip->vertical_kn_per_m + width * strip->cohesion_kpa / tan(strip->friction_rad);
  double left = 1.0 - horizontal_share * strip->horizontal_kn_per_m / held;
  return left > 0.0 ? pow(left, power) : 0.0;
}

static lw_n_gamma n_gamma_asked(const bearing_author *author, const lw_strip *strip) {
  return strip->n_gamma == LW_N_GAMMA_OWN ? author->n_gamma : strip->n_gamma;
}

static double n_gamma_of(lw_n_gamma choice, const lw_strip *strip) {
  double friction_rad = strip->friction_rad;
  lw_bearing prandtl = {0};
  lw_bearing_prandtl(friction_rad, &prandtl);
  switch (choice) {
  case LW_N_GAMMA_MEYERHOF: return (prandtl.nq - 1.0) * tan(1.4 * friction_rad);
  case LW_N_GAMMA_HANSEN: return 1.5 * (prandtl.nq - 1.0) * tan(friction_rad);
  case LW_N_GAMMA_VESIC: return 2.0 * (prandtl.nq + 1.0) * tan(friction_rad);
  case LW_N_GAMMA_GIVEN: return strip->n_gamma_value;
  case LW_N_GAMMA_EN1997:
  case LW_N_GAMMA_OWN: break;
  }
  return 2.0 * (prandtl.nq - 1.0) * tan(friction_rad);
}

static const char *n_gamma_wording(lw_n_gamma choice, const bearing_author *author) {
  switch (choice) {
  case LW_N_GAMMA_MEYERHOF: return "(Nq - 1) tan(1.4 phi)";
  case LW_N_GAMMA_HANSEN: return "1.5 (Nq - 1) tan phi";
  case LW_N_GAMMA_VESIC: return "2 (Nq + 1) tan phi";
  case LW_N_GAMMA_EN1997: return "2 (Nq - 1) tan phi";
  case LW_N_GAMMA_GIVEN:
  case LW_N_GAMMA_OWN: break;
  }
  return author->capacity_wording.gamma;
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

static void record_n_gamma(const bearing_author *author, const lw_strip *strip, const lw_bearing *b,
                           const lw_working *working) {
  lw_n_gamma choice = n_gamma_asked(author, strip);
  lw_step step = {.symbol = "Ngamma", .formula = "given", .value = b->n_gamma, .unit = "", .source = ""};
  if (choice == LW_N_GAMMA_GIVEN) {
    lw_working_step(working, &step, "%.5g, as a number", b->n_gamma);
    return;
  }
  step.formula = n_gamma_wording(choice, author);
  step.source = author->routine->source;
  lw_working_step(working, &step, "phi = %.4g deg, Nq = %.5g", strip->friction_rad * 180.0 / pi, b->nq);
}

static void record_capacity(const bearing_author *author, const lw_strip *strip, const lw_bearing *b,
                            const lw_working *working) {
  double deg = strip->friction_rad * 180.0 / pi;
  const char *source = author->routine->source;
  lw_working_step(working,
                  &(lw_step){.symbol = "Nq",
                             .formula = author->capacity_wording.q,
                             .value = b->nq,
                             .unit = "",
                             .source = source},
                  "phi = %.4g deg", deg);
  lw_working_step(working,
                  &(lw_step){.symbol = "Nc",
                             .formula = author->capacity_wording.c,
                             .value = b->nc,
                             .unit = "",
                             .source = source},
                  "phi = %.4g deg, Nq = %.5g", deg, b->nq);
  record_n_gamma(author, strip, b, working);
}

static void record_depth(const bearing_author *author, const lw_strip *strip, const lw_bearing *b,
                         const lw_working *working) {
  if (author->depth == NULL || strip->depth_factors == LW_NONE) return;
  const struct {
    const char *symbol, *formula;
    double value;
  } rows[] = {
      {"dq", author->depth_wording.q, b->dq},
      {"dc", author->depth_wording.c, b->dc},
      {"dgamma", author->depth_wording.gamma, b->d_gamma},
  };
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
    lw_working_step(working,
                    &(lw_step){.symbol = rows[i].symbol,
                               .formula = rows[i].formula,
                               .value = rows[i].value,
                               .unit = "",
                               .source = author->routine->source},
                    "D = %.4g m, B = %.4g m", strip->depth_m, strip->width_m);
}

/* What friction and cohesion of the ground itself hold under the footing. */
static double held_by_ground(const lw_strip *strip, double width_m) {
  return strip->vertical_kn_per_m * tan(strip->friction_rad) + width_m * strip->cohesion_kpa;
}

static void record_sliding(const lw_strip *strip, const lw_bearing *b, const lw_working *working) {
  static const char WHY[] = "0, for H > V tan phi + B' c: it slides before it bears";
  lw_step step = {.symbol = "i", .formula = WHY, .unit = "", .source = ""};
  lw_working_step(working, &step, "H = %.4g kN/m, V tan phi + B' c = %.4g kN/m", strip->horizontal_kn_per_m,
                  held_by_ground(strip, b->effective_width_m));
}

static void record_inclination(const bearing_author *author, const lw_strip *strip, const lw_bearing *b,
                               const lw_working *working) {
  if (strip->inclination_factors == LW_NONE || !(strip->horizontal_kn_per_m > 0.0)) return;
  if (b->slides) {
    record_sliding(strip, b, working);
    return;
  }
  double angle = atan2(strip->horizontal_kn_per_m, strip->vertical_kn_per_m) * 180.0 / pi;
  const struct {
    const char *symbol, *formula;
    double value;
  } rows[] = {
      {"iq", author->inclination_wording.q, b->iq},
      {"ic", author->inclination_wording.c, b->ic},
      {"igamma", author->inclination_wording.gamma, b->i_gamma},
  };
  for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
    lw_working_step(working,
                    &(lw_step){.symbol = rows[i].symbol,
                               .formula = rows[i].formula,
                               .value = rows[i].value,
                               .unit = "",
                               .source = author->inclination_source},
                    "H = %.4g kN/m, V = %.4g kN/m, angle %.4g deg, B' = %.4g m", strip->horizontal_kn_per_m,
                    strip->vertical_kn_per_m, angle, b->effective_width_m);
}

static void record_sum(const bearing_author *author, const lw_strip *strip, const lw_bearing *b,
                       const lw_working *working) {
  lw_working_step(working,
                  &(lw_step){.symbol = "qu",
                             .value = b->ultimate_kpa,
                             .unit = "kPa",
                             .formula = "c Nc dc ic + q Nq dq iq + gamma B' Ngamma dgamma igamma/2",
                             .source = author->routine->source},
                  "%.4g x %.5g x %.4g x %.4g + %.4g x %.5g x %.4g x %.4g + "
                  "%.4g x %.4g x %.5g x %.4g x %.4g/2",
                  strip->cohesion_kpa, b->nc, b->dc, b->ic, strip->overburden_kpa, b->nq, b->dq, b->iq,
                  strip->unit_weight_kn_per_m3, b->effective_width_m, b->n_gamma, b->d_gamma, b->i_gamma);
  lw_working_step(
      working,
      &(lw_step){.symbol = "qnet", .formula = "qu - q", .value = b->net_kpa, .unit = "kPa", .source = ""},
      "%.5g - %.4g", b->ultimate_kpa, strip->overburden_kpa);
}

static void record(const bearing_author *author, const lw_strip *strip, const lw_bearing *b,
                   const lw_working *working) {
  lw_working_heading(working, author->routine->title);
  lw_working_step(
      working,
      &(lw_step){
          .symbol = "B'", .formula = "B - 2 e", .value = b->effective_width_m, .unit = "m", .source = ""},
      "%.4g - 2 x %.4g", strip->width_m, fabs(strip->eccentricity_m));
  record_capacity(author, strip, b, working);
  record_depth(author, strip, b, working);
  record_inclination(author, strip, b, working);
  record_sum(author, strip, b, working);
}

static double ultimate_of(const lw_strip *strip, const lw_bearing *b) {
  return strip->cohesion_kpa * b->nc * b->dc * b->ic + strip->overburden_kpa * b->nq * b->dq * b->iq +
         0.5 * strip->unit_weight_kn_per_m3 * b->effective_width_m * b->n_gamma * b->d_gamma * b->i_gamma;
}

/* No author's factors are meant for a load that the ground below cannot hold from sliding. */
static void incline(const bearing_author *author, const lw_strip *strip, lw_bearing *b) {
  if (b->slides)
    b->ic = b->iq = b->i_gamma = 0.0;
  else
    author->inclination(strip, b);
}

/* A footing next to no width wide overflows what is divided by it. */
static bool is_finite_answer(const lw_bearing *b) {
  return isfinite(b->nc + b->nq + b->n_gamma + b->dc + b->dq + b->d_gamma + b->ic + b->iq + b->i_gamma +
                  b->ultimate_kpa + b->net_kpa);
}

lw_status lw_bearing_by(const bearing_author *author, const lw_strip *strip, lw_bearing *bearing,
                        lw_error *error, const lw_working *working) {
  lw_strip pushed = *strip; /* which way it pushes makes no difference to a level strip */
  pushed.horizontal_kn_per_m = fabs(strip->horizontal_kn_per_m);
  lw_status status = accept(&pushed, error);
  if (status != LW_OK) return status;
  lw_bearing b = {.dc = 1.0, .dq = 1.0, .d_gamma = 1.0, .ic = 1.0, .iq = 1.0, .i_gamma = 1.0};
  b.effective_width_m = strip->width_m - 2.0 * fabs(strip->eccentricity_m);
  author->capacity(strip->friction_rad, &b);
  lw_n_gamma choice = n_gamma_asked(author, strip);
  if (choice != LW_N_GAMMA_OWN) b.n_gamma = n_gamma_of(choice, strip);
  if (author->depth != NULL && strip->depth_factors == LW_OWN) author->depth(&pushed, &b);
  bool inclined = pushed.horizontal_kn_per_m > 0.0;
  b.slides = inclined && pushed.horizontal_kn_per_m > held_by_ground(&pushed, b.effective_width_m);
  if (inclined && strip->inclination_factors == LW_OWN) incline(author, &pushed, &b);
  b.ultimate_kpa = ultimate_of(strip, &b);
  b.net_kpa = b.ultimate_kpa - strip->overburden_kpa;
  if (!is_finite_answer(&b))
    return refuse(error, LW_REASON_OUT_OF_RANGE, "no footing is so narrow, so deep or so loaded");
  record(author, &pushed, &b, working);
  *bearing = b;
  return LW_OK;
}

void lw_bearing_power_inclination(const lw_strip *strip, lw_bearing *bearing) {
  bearing->iq = lw_bearing_share_left(strip, 1.0, 2.0);
  bearing->i_gamma = lw_bearing_share_left(strip, 1.0, 3.0);
  bearing->ic = fmax(bearing->iq - (1.0 - bearing->iq) / (bearing->nc * tan(strip->friction_rad)), 0.0);
}
