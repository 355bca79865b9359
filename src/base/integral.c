/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "integral.h"

#include <lowwall/base.h>

double lw_gauss_integral(lw_function f, const void *context, double low, double high) {
  static const double at[] = {0.1488743389816312, 0.4333953941292472, 0.6794095682990244, 0.8650633666889845,
                              0.9739065285171717};
  static const double weight[] = {0.2955242247147529, 0.2692667193099963, 0.2190863625159821,
                                  0.1494513491505806, 0.0666713443086881};
  double middle = 0.5 * (low + high), half = 0.5 * (high - low), sum = 0.0;
  for (size_t i = 0; i < sizeof at / sizeof at[0]; i++)
    sum += weight[i] * (f(middle - half * at[i], context) + f(middle + half * at[i], context));
  return half * sum;
}
