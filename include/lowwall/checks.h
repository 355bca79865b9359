/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_H
#define LOWWALL_CHECKS_H

#include <lowwall/ground.h>
#include <lowwall/check.h>
#include <lowwall/lateral.h>
#include <lowwall/pressure.h>
#include <lowwall/wall.h>

LW_PUBLIC_BEGIN

/* What acts on a wall or on the courses above a joint. */
typedef enum lw_force_kind {
  LW_FORCE_PART,            /* a part of the section; index is its number in section.part */
  LW_FORCE_SOIL_ON_WALL,    /* soil standing on heel, steps or a battered back */
  LW_FORCE_SURCHARGE_ON_WALL,
  LW_FORCE_THRUST,          /* of the soil */
  LW_FORCE_SURCHARGE_THRUST,
  LW_FORCE_LOADS_THRUST,    /* of loads at a distance: by elasticity, curves, or their part of the wedge */
  LW_FORCE_LEVEL_THRUST,    /* of what pushes the ground behind level */
  LW_FORCE_WATER,           /* on the real outline behind */
  LW_FORCE_FRONT_WATER,
  LW_FORCE_UPLIFT,
  LW_FORCE_PEOPLE,
  LW_FORCE_CAP_LOAD,
  LW_FORCE_SEISMIC_THRUST,  /* what an earthquake adds to the thrust */
  LW_FORCE_INERTIA,         /* of the wall (index 0), of what stands on it (1), of the pad (2) */
  LW_FORCE_SEISMIC_WATER    /* open water behind (index 0) and in front (1) */
} lw_force_kind;

/* Partial factors on what acts, by its source: both parts of one thrust, or of one weight, take the same. */
typedef struct lw_factors {
  bool factored;            /* false: everything acts as it is, and the numbers mean nothing */
  double wall_weight, soil_weight, earth_pressure, water, front_water;
  double variable;          /* thrust of loads on the ground behind */
  double level_push;        /* thrust of what pushes the ground level: its factor is on it at its source */
  double variable_on_wall;  /* people, loads on the cap */
  double surcharge_on_wall; /* what presses on a heel: it may be missing there while it pushes behind */
} lw_factors;

/* What a load case puts on the wall besides the soil, and by which factors everything acts. */
typedef struct lw_actions {
  double people_down_kn_per_m, people_out_kn_per_m; /* on the front edge of the top */
  bool cap_load; /* the weight of loads of kind cap is on; their push always is */
  lw_factors factors;
} lw_actions;

typedef struct lw_force {
  lw_force_kind kind;
  double factor;            /* is in the force already: 1 without partial factors */
  int index;                /* of a part; 0 otherwise */
  double area_m2;           /* where the force is a weight */
  double unit_weight_kn_per_m3;
  double moved_kn_per_m;        /* weight that an earthquake moves: of soil the heavy one, with its water */
  double horizontal_kn_per_m;   /* positive: pushes towards the front */
  double vertical_kn_per_m;     /* positive: presses down */
  double x_m, y_m;              /* where it acts */
} lw_force;

enum { LW_FORCE_MAX = LW_PART_MAX + 32 };

/* Forces gathered on one contact: the base, or a joint. Moments are about its front edge. */
typedef struct lw_forces {
  lw_factors factors;
  int count;
  lw_force force[LW_FORCE_MAX];
} lw_forces;

/* The contact in equilibrium. */
typedef struct lw_contact {
  double width_m, front_m;              /* its width, and x of its front edge */
  lw_taper taper;                       /* share of the run that bears at its front and at its rear */
  double area_m2;                       /* of a metre of run: less than the width under blocks that taper */
  double vertical_kn_per_m, horizontal_kn_per_m;
  double resisting_knm_per_m, overturning_knm_per_m;
  double resultant_m;                   /* from the front edge; meaningless when inside is false */
  double eccentricity_m;                /* from the middle, positive towards the front */
  double kern_m, kern_behind_m;         /* so far before and behind the middle it presses on all that bears */
  bool inside;                          /* V > 0 and the resultant inside the contact */
  double share_in_compression;          /* 0 to 1, of the area */
  double pressed_m;                     /* how long that is, from the edge that is pressed most */
  double front_kpa, rear_kpa;           /* edge pressures by method base pressure */
  double greatest_kpa;
  double effective_width_m;             /* B - 2|e|; of blocks that taper the area about the resultant */
  double uplift_kn_per_m;
} lw_contact;

/* Rankine or Coulomb for the whole wall on the plane that is its own, beside the numerical wedge. */
typedef struct lw_compared {
  const char *slug, *title, *source;
  bool known, wedge_known;
  lw_reason reason;             /* why it is not */
  double coefficient;           /* of the lowest soil */
  double formula_kn_per_m, wedge_kn_per_m;
  double loads_kn_per_m;        /* of loads at a distance, level, beside the formula */
  double by_formula_kn_per_m;   /* both along the thrust: what the wedge is set beside */
  lw_difference difference;
} lw_compared;
enum { LW_COMPARED = 2 };       /* Rankine, Coulomb */

/* One contact in one situation with the thrust on it and its recheck. */
typedef struct lw_stage {
  lw_status status;         /* not LW_OK: nothing below holds, reason says why */
  lw_reason reason;
  lw_back_plane back;
  lw_thrust thrust;         /* as used: the larger of formula and wedge */
  const lw_pressure_routine *formula;  /* NULL: none was asked for */
  double formula_kn_per_m;  /* the formula's own thrust, of soil and uniform load */
  lw_elastic elastic;       /* beside it, of the loads of limited width; used unless the wedge governs */
  lw_load_pressure elastic_by;  /* half-space, doubled or curves; wedge: left to the wedge */
  double by_formula_kn_per_m;   /* formula and elastic along the thrust: what the wedge is set beside */
  lw_difference difference;     /* why the wedge may differ from it */
  lw_wedge wedge;
  bool wedge_known;         /* false at rest, or when the wedge has no answer */
  bool wedge_governs;
  bool faulty;              /* a fault of the program, as lw_check_faulty has it; reason says which */
  double passive_kn_per_m;  /* counted, share included */
  lw_forces forces;
  lw_contact contact;
} lw_stage;

/* What of a joint the reports need; its forces in full only where asked for. */
typedef struct lw_joint {
  lw_status status;
  lw_reason reason;
  double height_m;          /* of the joint above the base */
  double thrust_kn_per_m, thrust_height_m;  /* above the joint */
  double elastic_kn_per_m, elastic_height_m;  /* of loads at a distance, as used */
  double wedge_kn_per_m;
  bool wedge_known, faulty;
  lw_contact contact;
} lw_joint;

#define LW_SITUATIONS(X) \
  X(DRAINED, "drained", "as built, water leaving") \
  X(OUTLET_BLOCKED, "outlet-blocked", "the outlet blocked, water standing behind") \
  X(STORM, "storm", "a storm on a bed that cannot drain") \
  X(PEOPLE_SITTING, "people-sitting", "people sitting along the top") \
  X(PEOPLE_LEANING, "people-leaning", "people leaning on the top") \
  X(EARTHQUAKE, "earthquake", "an earthquake, as a steady push") \
  X(TRENCH, "trench", "a trench open in front of the toe") \
  X(WIND, "wind", "wind on the fence behind")
typedef enum lw_situation_name {
#define LW_SITUATION_NAME(name, slug, sentence) LW_SITUATION_##name,
  LW_SITUATIONS(LW_SITUATION_NAME)
#undef LW_SITUATION_NAME
  LW_SITUATION_COUNT
} lw_situation_name;

/* One load case of a wall: everything that a balance of forces takes besides wall and site. */
typedef struct lw_load_case {
  lw_situation_name situation;
  lw_situation_kind kind;
  const lw_format_row *set; /* a row of the set of factors; NULL: it has none */
  lw_ground ground;         /* design strengths beside the wall's own, water, earthquake, what is dug */
  lw_actions actions;
} lw_load_case;

enum { LW_CHECK_MAX = LW_CHECK_OF_OTHERS_MAX + LW_CHECK_OF_JOINT_MAX * (LW_COURSE_MAX - 1) };

/* Whole checks and what follows them are filled in from LW_DETAIL_EVERYTHING on. */
typedef struct lw_situation {
  lw_situation_name name;
  lw_situation_kind kind;
  bool decides;
  const char *why;          /* why it decides or does not, one sentence */
  double water_depth_m;     /* below the top of the wall, in this situation; INFINITY: dry */
  double people_down_kn_per_m, people_out_kn_per_m; /* on the front edge of the top; 0: nobody */
  bool slip_known;          /* a circle was searched; slip.status says whether there is an answer */
  lw_slip slip;
  bool slip_light;               /* weights in it took their favourable factors, which was the worse */
  const lw_format_row *slip_set; /* a row of the set of factors it was found under; NULL: none */
  int check_count;
  lw_kept_check kept[LW_CHECK_MAX];   /* the worst of all load cases */

  lw_check check[LW_CHECK_MAX];       /* the same, whole */
  lw_load_case load_case;   /* in which the stages stand here: of several sets of factors the one that
                               governs, all loads there */
  lw_stage base, pad;       /* pad.status is not LW_OK with reason no-pad when there is none */
  int joint_count;
  lw_joint joint[LW_COURSE_MAX];
  lw_compared compared[LW_COMPARED];  /* strengths of the site, water and earthquake of the situation */
} lw_situation;

typedef struct lw_situations {
  int count;
  lw_situation situation[LW_SITUATION_COUNT];
} lw_situations;

/** The width, or of blocks that taper the area, on which adhesion holds.
 *  gives m: what is in compression, or the effective width once where the pressure is even over that (and so
 *        under a pad, whose contact is as wide as its spread); 0 where the resultant is outside
 *  from  [EN1997-1 6.5.3], [DAS-PFE example 8.1] */
double lw_contact_held(const lw_method *method, const lw_contact *contact);

/** One more check of a situation: kept, and not whole yet.
 *  in    check   at most LW_CHECK_MAX of a situation */
void lw_situation_keep(lw_situation *situation, const lw_check *check);
/** The checks that a situation keeps, whole: fills situation->check. */
void lw_situation_read_out(lw_situation *situation);

/** True where the program itself went wrong: a value is no number, soil has no push, or formula and wedge
 *  disagree. No verdict survives such a check, in whichever situation it stands. */
bool lw_check_faulty(const lw_check *check);

/** True when a is graver than b, by what a reader should see first: a fault of the program, what falls short,
 *  then what cannot be shown, then the lesser ratio; where nothing is asked, or of two checks of a kind that
 *  tip, the lesser has; what does not count comes last. */
bool lw_check_graver(const lw_check *a, const lw_check *b);
/** What a check is called when one speaks to people: "sliding on its base", "pressed share, joint 1". */
void lw_check_words(const lw_check *check, char *out, size_t size);
/** "as built", "outlet blocked", "people sitting" */
const char *lw_situation_short(lw_situation_name name);
/** "base", "pad", "joint-1", "cap" */
void lw_check_print_at(const lw_check *check, char *out, size_t size);
const char *lw_situation_slug(lw_situation_name name);
const char *lw_situation_sentence(lw_situation_name name);
const char *lw_situation_kind_slug(lw_situation_kind kind);   /* usual · unusual · extreme · what-if */

/** Run every situation on a wall.
 *  in    wall      as lw_wall_build made it
 *        tables    in effect
 *        detail    below LW_DETAIL_EVERYTHING no stage and no joint of a situation is filled in
 *  out   situations   each with its checks; a check that cannot be shown says why */
void lw_situations_run(const lw_wall *wall, const lw_tables *tables, lw_detail detail,
                       lw_situations *situations);

/** The steps to the push on the base in each situation that was run.
 *  in    situations   of lw_situations_run at LW_DETAIL_EVERYTHING
 *        working      takes the steps */
void lw_situations_tell(const lw_wall *wall, const lw_tables *tables, const lw_situations *situations,
                        const lw_working *working);

/** The stage of one joint in full (for the working): as lw_situation.base is of the base. */
void lw_situation_joint(const lw_wall *wall, const lw_situation *situation, int joint, lw_stage *stage);

/** The steps from the sums of one contact to its resultant and pressures, in the load case that is shown.
 *  in    at, joint   base, pad, joint (1 is the lowest) or cap, which the wall has
 *        working     takes them */
void lw_situation_tell(const lw_wall *wall, const lw_situation *situation, lw_at at, int joint,
                       const lw_working *working);

/** Passive resistance of the ground in front, as far as the method counts it: its level part, less the
 *  friction under base or pad that is lost where it turns up and lifts the wall.
 *  in    ground    of the load case
 *        below_m   below the base: the pad's thickness under the pad, else 0   m   0 or more
 *        working   its steps; NULL allowed
 *  gives kN/m, the share included; 0 when none is counted, or where it has no answer
 *  from  [RANKINE1857 level ground]; [COULOMB1776 general form] */
double lw_passive_resistance(const lw_wall *wall, const lw_ground *ground, double below_m,
                             const lw_working *working);

/** The ground as it is given: strengths of the sheet, the water that is usual, nothing shaken or dug. */
void lw_ground_own(const lw_wall *wall, lw_ground *ground);

/** The load case that a check was made in.
 *  in    situation   that the check stands in
 *        check       for its name of a load case */
void lw_load_case_of(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                     const lw_check *check, lw_load_case *load_case);

/* What a check rests on. */
typedef struct lw_basis {
  const lw_wall *wall;
  lw_load_case load_case;
  lw_stage stage;
  double on_friction;  /* tan φ and every friction were multiplied by this */
  double on_push;      /* and the strength of the soil that pushes by this as well */
  double wedges;       /* the factor of sliding that divides every strength, in on_friction too; 0: none */
  double on_sliding, on_passive;               /* and resistances by these */
  double friction;      /* of the contact, tan of the angle to design with */
  double bond_kn_per_m; /* adhesion of what is in contact, shear of a joint, for its key the strength */
  double ground_holds_kn_per_m;                /* from sliding at most, passive apart; INFINITY: no limit */
} lw_basis;

/** Load case and stage of a check, made again: a situation keeps only the stage that governs.
 *  in    check   one of the situation's, slip excepted
 *  gives false where the check has no numbers; out is then not to be used */
bool lw_check_basis(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                    const lw_check *check, lw_basis *out);

/** The steps of a check, written by the function that makes it.
 *  in    basis     of the check, by lw_check_basis
 *        working   takes them; the last has the symbol "has" */
void lw_check_tell(const lw_basis *basis, const lw_tables *tables, const lw_check *check,
                   const lw_working *working);

/** The strip footing that bearing by theory takes the base or the underside of the pad for, by the format's
 *  strengths; for the working, and for calling a bearing routine with.
 *  in    at   LW_AT_BASE, or LW_AT_PAD where there is one */
lw_strip lw_situation_strip(const lw_wall *wall, const lw_situation *situation, lw_at at);

/** How a bed's slide down the slope that it stands on was found.
 *  in    situation   as run; nothing is written where it has no such check */
void lw_situation_bed_write(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                            const lw_working *working);

/** The cross-section that a slip is looked for in, water as in the situation, strengths by the format's.
 *  in    situation   for its water and kind
 *  out   ground      for lw_slip_search and lw_slip_of_circle
 *  note  1 In front of the toe and below the base is the ground under the footing; layers behind end at the
 *          base. Only embedment that was given is there. Water free in front is left away.
 *        2 An upper wall is a step of the ground behind, as heavy as the heavier of it and its soil. */
void lw_situation_slip_ground(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                              lw_slip_ground *ground);

/** The check that governs, among those that count in the situations that decide: the least ratio of those
 *  that fall short; if none does, one that cannot be shown; else the least ratio. False: nothing counts. */
bool lw_situations_governing(const lw_situations *situations, int *situation, int *check);

/** Over the deciding situations: what the governing check says; where none governs LW_HOLDS, or
 *  LW_CANNOT_SHOW when the format asks for nothing at all. */
lw_holds lw_situations_stand(const lw_situations *situations);

LW_PUBLIC_END

#endif
