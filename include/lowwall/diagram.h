/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_DIAGRAM_H
#define LOWWALL_DIAGRAM_H

#include <lowwall/lateral.h>

LW_PUBLIC_BEGIN

/* All methods side by side on one plane, and the pressure of each against depth. What is counted by each is
 * that of its own function in pressure.h and lateral.h; here they are only set beside each other. */

/* A method in one state, in the order of the pages. */
#define LW_WAYS(X) \
  X(RANKINE, "active-rankine") \
  X(COULOMB, "active-coulomb") \
  X(WEDGE, "active-wedge") \
  X(LOG_SPIRAL, "active-log-spiral") \
  X(ANNEX_C, "active-annex-c") \
  X(AT_REST, "at-rest") \
  X(PASSIVE_RANKINE, "passive-rankine") \
  X(PASSIVE_COULOMB, "passive-coulomb") \
  X(PASSIVE_WEDGE, "passive-wedge") \
  X(PASSIVE_LOG_SPIRAL, "passive-log-spiral") \
  X(PASSIVE_ANNEX_C, "passive-annex-c")
typedef enum lw_way {
#define LW_WAY_NAME(name, slug) LW_WAY_##name,
  LW_WAYS(LW_WAY_NAME)
#undef LW_WAY_NAME
      LW_WAY_COUNT
} lw_way;

/** The slug of a way.
 *  in    way   below LW_WAY_COUNT */
const char *lw_way_slug(lw_way way);

/* What is asked. Rankine and the state at rest act on an upright plane along the ground, the others on the
 * back with its friction. Both planes have their foot on one level; the upright one may begin higher, where
 * the ground has risen. */
typedef struct lw_diagram_asked {
  lw_plane back, upright;
  int load_number[LW_SITE_LOAD_MAX]; /* of each load of limited width on its sheet; 0: not given as a load */
  lw_load_pressure loads_by; /* the theory of loads of limited width; own: at rest doubled, else half-space;
                                wedge: the wedge alone carries them */
} lw_diagram_asked;

/* What one way makes of its plane. */
typedef struct lw_diagram_way {
  const lw_pressure_routine *routine;
  lw_earth_state state;
  bool upright, known;            /* on which plane; not known: error says why, and nothing below holds */
  lw_error error;                 /* text and reason */
  lw_thrust thrust;               /* of soil, uniform load and earthquake */
  lw_number layer_k[LW_SOIL_MAX]; /* of each layer by itself, without cohesion, load or water */
  lw_number mean_k; /* thrust over the effective stress summed down the plane; the earthquake left out */
  lw_elastic loads; /* of limited width, level: by elasticity; the wedge: what they add to it, no parts. None
                        where the soil resists: they may be gone by then */
  double level_kn_per_m, level_height_m; /* thrust and loads levelwise, above the foot; water apart */
} lw_diagram_way;

/* One depth. At a boundary there are two rows, above and below it. */
typedef struct lw_diagram_depth {
  double depth_m; /* below the back's top; below 0 where only the upright plane is */
  bool below;     /* the row of what lies below a boundary */
  int layer;
  double stress_kpa, pore_kpa, effective_kpa; /* on the back; upright, with the uniform load */
  lw_number soil_kpa[LW_WAY_COUNT];    /* level part, a metre of vertical depth: soil and uniform load; the
                                          wedge has a thrust and no pressure */
  lw_number uniform_kpa[LW_WAY_COUNT]; /* of it the uniform load */
  lw_number down_to_kn_per_m[LW_WAY_COUNT]; /* of the wedge: its level thrust on the plane as far as here */
  double load_kpa[LW_SITE_LOAD_MAX];        /* each load of limited width, level, on the back; 0 above it */
  double loads_kpa;                         /* all of them */
} lw_diagram_depth;

/* Room for rows, two a depth: even steps, and where a layer, the water, a load or a crack begins or ends. */
enum { LW_DIAGRAM_STEPS = 10, LW_DIAGRAM_DEPTHS = 640 };

typedef struct lw_diagram {
  lw_diagram_asked asked;
  lw_load_pressure loads_by; /* the theory in use on the back */
  lw_elastic loads;      /* level, on the back by that theory; nothing where the wedge alone carries them */
  double water_kn_per_m; /* of standing water, level; a crack full of it sends more, in its way's thrust */
  lw_difference back_differs, upright_differs; /* why formula and wedge may differ */
  lw_diagram_way way[LW_WAY_COUNT];
  lw_number ufc_kp[LW_SOIL_MAX], lancellotta_kp[LW_SOIL_MAX]; /* of each layer, where the back is upright and
                                                                  the ground level: published beside */
  int depth_count;
  lw_diagram_depth depth[LW_DIAGRAM_DEPTHS];
} lw_diagram;

/** What is asked of one plane by itself: the back as it is, and upright behind it a plane as high.
 *  in    back   a plane that is filled in; along_ground does not matter
 *  gives both planes; loads by the methods' own theory, numbered from 1 */
lw_diagram_asked lw_diagram_ask(const lw_plane *back);

/** Every way on its plane, and the pressure against depth.
 *  in    asked     planes as for lw_rankine_thrust
 *  out   diagram   filled; a way without an answer has its reason; without any depth where a plane is none
 *                  that a formula may be asked about
 *  note  1 The trapezia between rows are the level thrust of a way without an earthquake, but for cohesion
 *          under a slope by Rankine, whose diagram is curved.
 *        2 An earthquake adds a force at a height of its own, which is in the thrust and in no row.
 *        3 The wedge's rows are wedges through the plane's points one by one.
 *  from  [RANKINE1857 level and sloping ground]; [COULOMB1776 general form]; [JAKY1944 coefficient];
 *        [TERZAGHI-1943 spiral]; [EN1997-1 annex C.2]; tested by tests/pressure/diagram.c */
void lw_diagram_find(const lw_diagram_asked *asked, lw_diagram *diagram, const lw_working *working);

/** The level pressure of soil and uniform load by one way.
 *  in    way       of soil that has a pressure: not a wedge
 *        depth_m   below the back's top   m   any
 *        below     at a boundary: what holds below it
 *  gives kPa; not known where the way has no answer or there is no plane at that depth */
lw_number lw_diagram_soil_kpa(const lw_diagram *diagram, lw_way way, double depth_m, bool below);

LW_PUBLIC_END

#endif
