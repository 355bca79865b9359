/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_NARROW_H
#define LOWWALL_NARROW_H

#include <lowwall/lateral.h>
#include <lowwall/checks.h>

LW_PUBLIC_BEGIN

/* A bed between two faces nearer than the ordinary wedge reaches. The wedge stays what the wall is checked
 * with; what stands here is for a student, and nothing of it is ever counted. */

#define LW_NARROW_METHODS(X) \
  X(AT_REST, "at-rest", "slices with the coefficient at rest, faces that do not yield", \
    "[JANSSEN1895 slices]; [JAKY1944 1 - sin phi]") \
  X(ACTIVE, "active", "slices with the active coefficient", \
    "[JANSSEN1895 slices]; [RANKINE1857 level ground]") \
  X(FRYDMAN_KEISSAR, "frydman-keissar", "slices with the stress beside a rough face that yields", \
    "[JANSSEN1895 slices]; [FRYDMAN1987 stress at a rough face]") \
  X(HANDY, "handy", "slices with the coefficient of an arch", \
    "[JANSSEN1895 slices]; [HANDY1985 the arch in soil arching]")
typedef enum lw_narrow_method {
#define LW_NARROW_NAME(name, slug, title, source) LW_NARROW_##name,
  LW_NARROW_METHODS(LW_NARROW_NAME)
#undef LW_NARROW_NAME
  LW_NARROW_COUNT
} lw_narrow_method;

typedef struct lw_narrow_value {
  bool known;
  lw_reason reason;           /* why not */
  double coefficient;
  double foot_kpa;            /* at the foot of the wall */
  lw_lateral push;            /* of the soil's weight, without load */
  double share;               /* of the triangle K γ H²/2 with the same K */
  double height_share;        /* height of the push ÷ H */
} lw_narrow_value;

typedef struct lw_narrow {
  bool shown;                 /* false: nothing below is there */
  double bed_width_m;         /* clear, as given */
  double wedge_width_m;       /* H tan(45° - φ/2): what the ordinary wedge wants */
  double height_m;            /* H */
  double friction_rad, wall_friction_rad, unit_weight_kn_per_m3;   /* of the weakest soil behind */
  lw_narrow_value value[LW_NARROW_COUNT];
  bool raised_known;
  double raised_height_m;     /* 0.42 H */
  lw_check overturning;       /* as the wall is checked, drained */
  lw_check raised;            /* the same with the push of the soil at 0.42 H */
} lw_narrow;

/** Slug, words and source of a method, for the reports. */
const char *lw_narrow_slug(lw_narrow_method method);
const char *lw_narrow_title(lw_narrow_method method);
const char *lw_narrow_source(lw_narrow_method method);

/** The published values alone, of one soil between two faces.
 *  in    narrow   bed width, height, friction, wall friction and unit weight: > 0, wall friction from 0 to φ
 *  out   narrow   wedge_width_m and value[]; each says whether it is known
 *  from  [JANSSEN1895 slices]; tested by tests/studies/narrow.c */
void lw_narrow_solve(lw_narrow *narrow, const lw_working *working);

/** The published values for a narrow bed, and what a higher resultant would do.
 *  in    wall         as lw_wall_build made it
 *        situations   as run; the wall as built gives the overturning check
 *  out   narrow       shown only for a bed whose given width is less than the wedge's
 *  note  1 δ is the wall friction of the sheet, on both faces: smooth unless it is given.
 *  from  [JANSSEN1895 slices]; [HANDY1985 the arch in soil arching]; tested by tests/studies/narrow.c */
void lw_narrow_run(const lw_wall *wall, const lw_situations *situations, lw_narrow *narrow);

/** The working of a narrow bed that is shown.
 *  in    situations, narrow   as run */
void lw_narrow_write(const lw_situations *situations, const lw_narrow *narrow, const lw_working *working);

LW_PUBLIC_END

#endif
