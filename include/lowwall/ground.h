/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_GROUND_H
#define LOWWALL_GROUND_H

#include <lowwall/wall.h>

LW_PUBLIC_BEGIN

/* How ground fails below a wall, and with it: the bearing of a strip footing, and slips along a circle or a
 * plane. */

/* A strip footing under an eccentric, inclined load. */
typedef struct lw_strip {
  double width_m, eccentricity_m; /* e from the middle; its sign does not matter */
  double depth_m;                 /* of the footing below the ground in front */
  double overburden_kpa;          /* effective, at its level */
  double friction_rad, cohesion_kpa;
  double unit_weight_kn_per_m3; /* effective, below the footing */
  double vertical_kn_per_m, horizontal_kn_per_m;
  lw_n_gamma n_gamma;   /* own: the method's own */
  double n_gamma_value; /* only where it is given, 0 or more */
  lw_own_or_none depth_factors, inclination_factors;
} lw_strip;

typedef struct lw_bearing {
  double nc, nq, n_gamma;
  double dc, dq, d_gamma;   /* depth factors, 1 when none */
  double ic, iq, i_gamma;   /* inclination factors, 1 when none, 0 where it slides */
  bool slides;              /* H > V tan φ + B' c: the ground slides before it bears */
  double effective_width_m; /* B - 2e */
  double ultimate_kpa;      /* gross, on the effective width */
  double net_kpa;           /* ultimate less the overburden */
} lw_bearing;

typedef lw_status (*lw_bearing_function)(const lw_strip *, lw_bearing *, lw_error *, const lw_working *);

typedef struct lw_bearing_routine {
  const char *slug; /* terzaghi · meyerhof · hansen · vesic · en1997 */
  const char *title;
  const char *source;
  lw_bearing_function ultimate;
} lw_bearing_routine;

/** The routine of a method.
 *  in    method
 *  gives its descriptor; NULL for presumptive values, which are no theory */
const lw_bearing_routine *lw_bearing_routine_of(lw_bearing_method method);

/** Ultimate bearing pressure of a strip footing by one author,
 *  qu = c Nc dc ic + q Nq dq iq + γ B' Nγ dγ iγ / 2 on the effective width B' = B - 2|e|.
 *  in    strip     width > 2|e|, 0 ≤ friction ≤ 50°; the signs of e and of the horizontal load do not matter
 *  out   bearing   factors, gross and net pressure; unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range (also when a value is not finite),
 *        outside-base or no-weight (a horizontal load without a vertical one)
 *  note  1 No shape factors: B against a wall's length is nothing. No factors for sloping ground or base.
 *        2 Depth factors take the full width B, not B'. They rely on the soil above the footing; leave
 *          them out where it may be dug away.
 *        3 Where H exceeds V tan φ + B' c the footing slides before it bears: inclination factors are 0
 *          then, and with them qu. A cohesion term never counts below 0.
 *        4 Frictionless soil (φ below 1e-6 rad) takes each author's own undrained form.
 *        5 With n_gamma not `own` only Nγ is another author's, or the number that is given.
 *        6 terzaghi: Nγ from a table of passive coefficients, 5° apart, interpolated in the logarithm; no
 *          depth factors. The theory knows vertical loads only: for others Meyerhof's factors stand in.
 *        7 meyerhof: between 0° and 10° his depth factor for q and γ is kept at 1.
 *        8 en1997: drained and undrained form of annex D, no partial factors, no depth factors.
 *  from  [TERZAGHI-1943 chapter 8]; [MEYERHOF-1963 general equation]; [HANSEN-1970 general equation];
 *        [VESIC-1973 general equation]; [EN1997-1 annex D]; tested by [BCF-WEB tables] */
lw_status lw_bearing_terzaghi(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                              const lw_working *working);
lw_status lw_bearing_meyerhof(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                              const lw_working *working);
lw_status lw_bearing_hansen(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                            const lw_working *working);
lw_status lw_bearing_vesic(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                           const lw_working *working);
lw_status lw_bearing_en1997(const lw_strip *strip, lw_bearing *bearing, lw_error *error,
                            const lw_working *working);

/* A slip of wall and ground together along a circle, by slices. x runs from the front towards the soil, y up.
 * A circle comes out of the ground in front (exit) and goes in behind (entry); what lies above it slides
 * towards the front. */

enum {
  LW_SLIP_GROUND_MAX = 16,
  LW_SLIP_LOAD_MAX = LW_LOAD_MAX + 3,
  LW_SLIP_STRIP_MAX = 2 * LW_SLIP_GROUND_MAX + LW_OUTLINE_MAX + 2 * LW_SLIP_LOAD_MAX + 8,
  LW_SLIP_SLICE_MAX = LW_SLIP_STRIP_MAX + 2 * (LW_SOIL_MAX + LW_SLIP_LOAD_MAX) + 80
};

typedef struct lw_slip_soil {
  double friction_rad, cohesion_kpa;
  double unit_weight_kn_per_m3, saturated_unit_weight_kn_per_m3;
  double bottom_y_m;      /* level of its underside; the last of a list lies on what is below */
  double spare_kn_per_m3; /* by how much it may be lighter: of the ground below, in front of layer_x_m, where
                              its weight helps */
} lw_slip_soil;

/* Per horizontal area between from and to, or a line load with from == to; below the ground at its front edge
 * it loads only what slips below it. */
typedef struct lw_slip_load {
  double from_x_m, to_x_m, pressure_kpa, force_kn_per_m;
  double below_m; /* 0: it stands on the ground */
} lw_slip_load;

/* The water's surface: level up to the front, straight from there to the rear, level behind. It presses in
 * the pores as deep as a point lies below it, or below the ground where that is lower. -INFINITY: no water on
 * that side. */
typedef struct lw_slip_water {
  double front_x_m, front_y_m, rear_x_m, rear_y_m, unit_weight_kn_per_m3;
} lw_slip_water;

/* Where circles are looked for: their exits and entries, in x. Half the trials lie within the half distances
 * of the near ends; 0: within a quarter of the way. */
typedef struct lw_slip_box {
  double exit_from_m, exit_to_m, entry_from_m, entry_to_m;
  double exit_half_m, entry_half_m;
} lw_slip_box;

/* A cross-section through wall and ground. */
typedef struct lw_slip_ground {
  int corner_count;
  lw_corner corner[LW_SLIP_GROUND_MAX]; /* of the surface, x never falling; two at one x are a step */
  int soil_count;                       /* layers behind layer_x_m, from the top down */
  lw_slip_soil soil[LW_SOIL_MAX];
  double layer_x_m;                    /* in front is only the ground below; INFINITY: everywhere */
  double raised_x_m, raised_kn_per_m3; /* behind it (INFINITY: nowhere), soil above raised_y_m is at least
                                           this heavy */
  double raised_y_m;
  lw_slip_soil below; /* everything under the layers, and in front of them */
  double paired_kpa;  /* and its cohesion besides, as deep as this below the ground in front; 0: none */
  double paired_depth_m;
  double shallow_kpa; /* and above that depth; only where there is one below it */
  lw_slip_water water;
  int load_count;
  lw_slip_load load[LW_SLIP_LOAD_MAX];
  int body_count; /* the wall: circles pass below it; 0: there is none */
  lw_corner body[LW_OUTLINE_MAX];
  double body_kn_per_m3;
  double pad_front_m, pad_rear_m, pad_y_m; /* the pad's underside, which circles pass below as well */
  double floor_y_m;                        /* no circle goes deeper; -INFINITY: no limit */
  double seismic_horizontal;               /* kh, pushing to the front; 0: none */
  double pore_ratio; /* ru: u is at least this share of the soil's weight above; 0: none */
  lw_slip_box box;
} lw_slip_ground;

/** A cross-section to fill in: no water, no layers, no wall, no floor, nothing that changes before a place
 *  or behind it; it still wants its corners, the soil below and, to be searched, its box. */
void lw_slip_ground_init(lw_slip_ground *ground);

typedef struct lw_slip_circle {
  double centre_x_m, centre_y_m, radius_m;
  double exit_x_m, exit_y_m, entry_x_m, entry_y_m;
} lw_slip_circle;

/* One slice, as a student lists it. */
typedef struct lw_slip_slice {
  double x_m, width_m;       /* of its middle */
  double base_y_m, length_m; /* of its base: the middle's level, the arc's length */
  double weight_kn_per_m;    /* with the loads on it */
  double sine, cosine;       /* of α, the base's slope, positive where it falls towards the front */
  double pore_kpa;           /* u at the middle of its base */
  double tan_friction, cohesion_kpa;
  double weight_y_m;              /* where its weight acts; matters to an earthquake only, found for one */
  double load_kn_per_m, load_y_m; /* the part of it that may be absent, and where */
  double spare_kn_per_m;          /* by how much it is lighter where that is worse */
} lw_slip_slice;

typedef struct lw_slip_slices {
  int count;
  lw_slip_slice slice[LW_SLIP_SLICE_MAX];
} lw_slip_slices;

/* The factors of one circle. */
typedef struct lw_slip {
  lw_slip_circle circle;
  lw_status status; /* not LW_OK: no circle has an answer, reason says why */
  lw_reason reason;
  double ordinary, bishop;     /* bishop is 0 where it has no answer (the search was by ordinary slices) */
  double driving_kn_per_m;     /* Σ W sin α, and the earthquake's part */
  int slice_count, iterations; /* of Bishop */
  int circles;                 /* tried in the search */
} lw_slip;

/** Bishop's simplified and the ordinary factor of one circle.
 *  in    ground   a cross-section with x never falling along its surface
 *        circle   its centre lies no lower than its entry
 *        slices   how many at least, 4 to 64; corners of ground and wall cut more
 *  out   slip     unchanged on failure
 *        list     the slices, from the front; may be NULL
 *  gives LW_OK · LW_NO_SOLUTION: it leaves the ground, cuts the wall, nothing drives it, or no iteration
 *        settles (m_alpha below 0.2 counts as that)
 *  note  1 Ordinary slices leave out the forces between slices: Σ [c l + (W cos α - u l) tan φ]/Σ W sin α;
 *          a negative effective force counts as none. Bishop keeps the level ones:
 *          Σ [c b + (W - u b) tan φ]/m_alpha /Σ W sin α, m_alpha = cos α + sin α tan φ/F.
 *        2 An earthquake adds kh W times its arm over R to what drives, and takes kh W sin α off the
 *          ordinary method's normal force.
 *        3 A load on the ground counts only where it drives, and not at all where its friction holds more
 *          than it drives: the worse of both is taken. Ground in front of which only the range of weight is
 *          known weighs the less in each slice that holds more than it drives.
 *  from  [FELLENIUS1936 circle]; [BISHOP1955 simplified]; [WHITMAN1967 m_alpha]; tested by
 *        tests/handbook/slip.csv and tests/slip/slip.c */
lw_status lw_slip_of_circle(const lw_slip_ground *ground, const lw_slip_circle *circle, int slices,
                            lw_slip *slip, lw_slip_slices *list);

/** The same from slices that are there already, a book's or one's own.
 *  in    list     weight, sine, cosine, width, length, pore pressure and strength of each
 *        circle   centre and radius for an earthquake's arm; NULL where there is none
 *        seismic  kh   1   0 ≤ kh < 1; 0: none
 *        method   LW_SLIP_ORDINARY: an answer need not be one by Bishop, which is then 0
 *  out   slip     unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION, as above
 *  from  [FELLENIUS1936 circle]; [BISHOP1955 simplified]; tested by tests/handbook/slip.csv */
lw_status lw_slip_of_slices(const lw_slip_slices *list, const lw_slip_circle *circle, double seismic,
                            lw_slip_method method, lw_slip *slip, const lw_working *working);

/* What one slice drives and holds; of all slices these add up to what their factors are made of. */
typedef struct lw_slip_forces {
  double driving_kn_per_m;         /* W sin α */
  double shaken_kn_per_m;          /* kh W times its arm over the radius */
  double ordinary_kn_per_m;        /* c l + (W cos α - kh W sin α - u l) tan φ, no normal force below 0 */
  double m_alpha, bishop_kn_per_m; /* [c b + (W - u b) tan φ]/m_alpha; 0 without a factor */
} lw_slip_forces;

/** The forces of one slice.
 *  in    slice    of a list that has a factor
 *        circle   for an earthquake's arm; NULL where there is none
 *        seismic  kh   1   0 or more; 0: none
 *        factor   Bishop's   1   0 or more; 0: it has none
 *  from  [FELLENIUS1936 circle]; [BISHOP1955 simplified]; tested by tests/report/slip_shown.c */
lw_slip_forces lw_slip_forces_of(const lw_slip_slice *slice, const lw_slip_circle *circle, double seismic,
                                 double factor);

/** The circle with the least factor: a grid of exits, entries and depths, then line searches from its best.
 *  in    ground   as above; its box holds the exits and entries to try
 *        method   the factor that is made least: Bishop's or the ordinary one
 *  out   slip     status LW_NO_SOLUTION with the reason no-circle when no circle has an answer
 *  note  1 A circle passes below every corner of the wall, of the pad and of the ground between its ends,
 *          does not overhang at its entry and stays above the floor.
 *        2 A refined circle is kept only when it is worse for the wall than the one it came from.
 *        3 A grid has gaps, and a hollow is gone down to a thousandth. tests/bench/slip.c sets it beside a
 *          dense search: of 700 cross-sections of garden walls and 700 on hillsides none lay 1 % above; of
 *          700 wild ones (heavy line loads, footings in the ground) 3 did, the worst by 10 %.
 *  from  [BISHOP1955 simplified]; tested by tests/handbook/slip.csv, tests/slip/slip.c
 *        and tests/slip/slip_class.c */
void lw_slip_search(const lw_slip_ground *ground, lw_slip_method method, lw_slip *slip);

/** Factor of a long straight slope against a slip parallel to it.
 *  in    soil        friction, cohesion, unit weight (of the whole slipping layer)
 *        slope_rad   β   rad   0 < β < π/2
 *        depth_m     vertical depth of the plane, z > 0
 *        water_kpa   uplift on it per horizontal area, γw m z, 0 or more; flow along the slope: γw m z cos²β
 *                    is u
 *  gives [c + (γ z - water) cos²β tan φ]/(γ z sin β cos β)
 *  from  [TAYLOR1948 infinite slope]; tested by tests/handbook/slip.csv */
double lw_slip_infinite(const lw_slip_soil *soil, double slope_rad, double depth_m, double water_kpa,
                        const lw_working *working);

/** Height at which a free face stands on its own, by a plane through its foot.
 *  in    soil       friction, cohesion, unit weight
 *        face_rad   slope of the face from the horizontal   rad   φ < face ≤ π/2
 *        factor     on cohesion and tan φ alike   1   > 0
 *  out   height_m   unchanged on failure
 *  gives LW_OK · LW_NO_SOLUTION with the reason angle-out-of-range where the face is no steeper than φ, or
 *        out-of-range for soil without weight
 *  note  1 4 c sin(face) cos φ/{γ [1 - cos(face - φ)]}. No crack, no water, level ground above: a real cut
 *          stands less high, and for a shorter time. Steep faces only; a circle is worse below about 60°.
 *  from  [CULMANN1866 free face]; tested by tests/handbook/slip.csv */
lw_status lw_free_face_height(const lw_slip_soil *soil, double face_rad, double factor, double *height_m,
                              lw_error *error);

LW_PUBLIC_END

#endif
