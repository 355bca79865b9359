/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PAGE_GSL_CONFIG_H
#define LOWWALL_PAGE_GSL_CONFIG_H

/* What GSL's own configuring would find for WebAssembly. */
#define STDC_HEADERS 1
#define HAVE_INLINE 1
#define HAVE_C99_INLINE 1
#define HAVE_MEMCPY 1
#define HAVE_STRDUP 1
#define HAVE_DECL_ISNAN 1
#define HAVE_DECL_ISINF 1
#define HAVE_DECL_ISFINITE 1
#define HAVE_DECL_FINITE 0
#define HAVE_DECL_HYPOT 1
#define HAVE_DECL_EXPM1 1
#define HAVE_DECL_LOG1P 1
#define HAVE_DECL_ACOSH 1
#define HAVE_DECL_ASINH 1
#define HAVE_DECL_ATANH 1
#define HAVE_DECL_FREXP 1
#define HAVE_DECL_LDEXP 1
#define GSL_DISABLE_DEPRECATED 1
#define GSL_COERCE_DBL(x) (x)
#define RETURN_IF_NULL(x) \
  if (!x) { \
    return; \
  }

#endif
