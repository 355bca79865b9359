/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/base.h>

#include <gsl/gsl_errno.h>
#include <gsl/gsl_integration.h>
#include <math.h>

typedef struct guard {
  lw_function f;
  const void *context;
  bool broken; /* f was not finite somewhere */
} guard;

static double guarded(double x, void *params) {
  guard *g = params;
  double y = g->f(x, g->context);
  if (isfinite(y)) return y;
  g->broken = true;
  return 0.0;
}

/* GSL reports a rough function through its handler, which aborts by default; asking for no more than the
 * rule's first two orders differ by keeps to its own error estimate instead. */
lw_status lw_solve_integral(lw_function f, const void *context, double low, double high, double *integral) {
  guard g = {.f = f, .context = context};
  gsl_function function = {guarded, &g};
  double value = 0.0, error = 0.0, size = fabs(guarded(low, &g)) + fabs(guarded(high, &g));
  size_t evaluations = 0;
  double allowed = 1e-6 * (size * (high - low) + 1e-300);
  if (!(low < high) || g.broken) return LW_NO_SOLUTION;
  if (gsl_integration_qng(&function, low, high, allowed, 1e-6, &value, &error, &evaluations) != GSL_SUCCESS)
    return LW_NO_SOLUTION;
  if (g.broken || !isfinite(value)) return LW_NO_SOLUTION;
  *integral = value;
  return LW_OK;
}

double lw_gauss_integral(lw_function f, const void *context, double low, double high) {
  static const double at[] = {0.1488743389816312, 0.4333953941292472, 0.6794095682990244,
                              0.8650633666889845, 0.9739065285171717};
  static const double weight[] = {0.2955242247147529, 0.2692667193099963, 0.2190863625159821,
                                  0.1494513491505806, 0.0666713443086881};
  double middle = 0.5 * (low + high), half = 0.5 * (high - low), sum = 0.0;
  for (size_t i = 0; i < sizeof at / sizeof at[0]; i++)
    sum += weight[i] * (f(middle - half * at[i], context) + f(middle + half * at[i], context));
  return half * sum;
}
