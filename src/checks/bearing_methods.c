/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bearing_common.h"

#include <assert.h>

const lw_bearing_routine *lw_bearing_routine_of(lw_bearing_method method) {
  static const lw_bearing_routine *const routines[] = {
      [LW_BEARING_PRESUMPTIVE] = NULL,
      [LW_BEARING_TERZAGHI] = &lw_bearing_routine_terzaghi,
      [LW_BEARING_MEYERHOF] = &lw_bearing_routine_meyerhof,
      [LW_BEARING_HANSEN] = &lw_bearing_routine_hansen,
      [LW_BEARING_VESIC] = &lw_bearing_routine_vesic,
      [LW_BEARING_EN1997] = &lw_bearing_routine_en1997,
  };
  assert((size_t)method < sizeof routines / sizeof routines[0]);
  return routines[method];
}
