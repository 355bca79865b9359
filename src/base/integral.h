/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_INTEGRAL_H
#define LOWWALL_BASE_INTEGRAL_H

#include "solve.h"

/** The integral by Gauss and Legendre's rule of ten points, exact for polynomials up to degree 19.
 *  in    f, context   smooth over [low, high]: cut the range where it is not
 *  gives the integral; it knows no error, so it cannot fail and its caller answers for the cut */
double lw_gauss_integral(lw_function f, const void *context, double low, double high);

#endif
