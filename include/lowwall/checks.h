/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECKS_H
#define LOWWALL_CHECKS_H

#include <lowwall/tables.h>
#include <lowwall/forces.h>
#include <lowwall/ground.h>
#include <lowwall/lateral.h>
#include <lowwall/pressure.h>
#include <lowwall/wall.h>

LW_PUBLIC_BEGIN

/* Where on a wall a check is made: on its base, under its pad, in a joint between two courses, under its cap,
 * or in the ground as a whole. */
typedef enum lw_at { LW_AT_BASE, LW_AT_PAD, LW_AT_JOINT, LW_AT_CAP, LW_AT_GROUND } lw_at;
enum { LW_AT_COUNT = LW_AT_GROUND + 1 };

/* The kinds of check, in the order in which a place has them, and where each is made: that sizes all lists of
 * checks. The rest of each row stands in src/load_cases/kinds.c. */
#define LW_CHECK_KINDS(X) /* base pad joint cap ground */ \
  X(SLIDING, 1, 1, 1, 1, 1) \
  X(OVERTURNING, 1, 0, 0, 0, 0) \
  X(TILTING, 0, 0, 1, 1, 0) \
  X(COMPRESSION, 1, 0, 1, 0, 0) \
  X(BEARING, 1, 1, 0, 0, 0) \
  X(KEY, 0, 0, 1, 0, 0) \
  X(SLIP, 0, 0, 0, 0, 1)

typedef enum lw_check_kind {
#define LW_CHECK_NAME(name, base, pad, joint, cap, ground) LW_CHECK_##name,
  LW_CHECK_KINDS(LW_CHECK_NAME)
#undef LW_CHECK_NAME
} lw_check_kind;

#define LW_CHECK_ONE(name, base, pad, joint, cap, ground) +1
#define LW_CHECK_OF_A_JOINT(name, base, pad, joint, cap, ground) +(joint)
#define LW_CHECK_OF_ANOTHER(name, base, pad, joint, cap, ground) +(base) + (pad) + (cap) + (ground)
enum {
  LW_CHECK_KIND_COUNT = 0 LW_CHECK_KINDS(LW_CHECK_ONE),
  LW_CHECK_OF_JOINT_MAX = 0 LW_CHECK_KINDS(LW_CHECK_OF_A_JOINT),
  LW_CHECK_OF_OTHERS_MAX = 0 LW_CHECK_KINDS(LW_CHECK_OF_ANOTHER)
};
#undef LW_CHECK_ONE
#undef LW_CHECK_OF_A_JOINT
#undef LW_CHECK_OF_ANOTHER

/** Its word in keys and on the command line. */
const char *lw_check_slug(lw_check_kind kind);

/* One check, whole and as a result keeps it. */

typedef enum lw_holds { LW_HOLDS, LW_FALLS_SHORT, LW_CANNOT_SHOW } lw_holds;

/* In which of its situation's load cases a check was made: enough to make that load case again. */
typedef struct lw_load_case_name {
  const lw_factor_row *set; /* a row of the set of factors; NULL: it has none */
  signed char way;          /* of an earthquake, from 0 */
  signed char leaning;      /* which factors on what acts, of those the set has, from 0 */
  bool people_down;         /* the downward part of people is there */
  bool cap_load;            /* the weight of loads of kind cap is on; their push always is */
  double divided_by;        /* every strength, where a factor on all of them is searched; 0: it is not */
} lw_load_case_name;

/* One failure mode at one place: has = resistance / demand, needs = the has required, ratio = has / needs.
 * has is the factor of safety; under partial factors it is design resistance over design effect. */
typedef struct lw_check {
  lw_check_kind kind;
  lw_at at;
  int joint; /* 1 is the lowest; 0 elsewhere */
  lw_number demand, resistance, has, needs, ratio;
  const char *unit; /* of demand and resistance */
  lw_holds holds;
  lw_reason reason;        /* whenever something is missing */
  bool counts;             /* false: printed, but no requirement or not checked (relies on its bond) */
  bool factored;           /* demand and resistance are design values: partial factors are in them */
  const lw_factor_row *by; /* set of factors and clause of needs; NULL when none */
  lw_load_case_name made_in;
} lw_check;

/* What a kept check knows, and is. */
enum {
  LW_KEPT_DEMAND = 1,
  LW_KEPT_RESISTANCE = 2,
  LW_KEPT_HAS = 4,
  LW_KEPT_NEEDS = 8,
  LW_KEPT_RATIO = 16,
  LW_KEPT_COUNTS = 32,
  LW_KEPT_FACTORED = 64,
  LW_KEPT_ASKED = 128 /* its row is that of the need */
};
/* Which loads are there, and by what every strength is divided: by 1, by what the check has, or not. */
enum { LW_KEPT_PEOPLE_DOWN = 1, LW_KEPT_CAP_LOAD = 2, LW_KEPT_FULL_STRENGTH = 4, LW_KEPT_BY_HAS = 8 };

/* A check as a result keeps it, a third as large: lw_situation_check has it whole again. */
typedef struct lw_kept_check {
  double demand, resistance, has, needs;
  const lw_factor_row *row; /* of the need; where nothing is asked, of the set; NULL: it has none */
  uint8_t kind, at, joint, holds, reason;
  uint8_t marks;           /* LW_KEPT_ ... */
  uint8_t way_and_leaning; /* of the load case: leaning, and 32 times the way */
  uint8_t loads;           /* of it: LW_KEPT_PEOPLE_DOWN ... */
} lw_kept_check;

/* Rankine or Coulomb for the whole wall on the plane that is its own, beside trial wedges. */
typedef struct lw_compared {
  const char *slug, *title, *source;
  bool known, wedge_known;
  lw_reason reason;   /* why it is not */
  double coefficient; /* of the lowest soil */
  double formula_kn_per_m, wedge_kn_per_m;
  double loads_kn_per_m;      /* of loads at a distance, level, beside the formula */
  double by_formula_kn_per_m; /* both along the thrust: what the wedge is set beside */
  lw_difference difference;
} lw_compared;
enum { LW_COMPARED = 2 }; /* Rankine, Coulomb */

/* One contact in one situation with the thrust on it and its recheck. */
typedef struct lw_free_body {
  lw_status status; /* not LW_OK: nothing below holds, reason says why */
  lw_reason reason;
  lw_back_plane back;
  lw_thrust thrust;                   /* as used: the larger of formula and wedge */
  const lw_pressure_routine *formula; /* NULL: none was asked for */
  double formula_kn_per_m;            /* the formula's own thrust, of soil and uniform load */
  double rain_kn_per_m;               /* what rain that seeps to a drain adds to it, along the thrust */
  lw_elastic elastic;          /* beside it, of the loads of limited width; used unless the wedge governs */
  lw_load_pressure elastic_by; /* half-space, doubled or curves; wedge: left to the wedge */
  double by_formula_kn_per_m;  /* formula and elastic along the thrust: what the wedge is set beside */
  lw_difference difference;    /* why the wedge may differ from it */
  lw_trial_wedge wedge;
  bool wedge_known; /* false at rest, or when the wedge has no answer */
  bool wedge_governs;
  bool faulty;             /* a fault of the program, as lw_check_faulty has it; reason says which */
  double passive_kn_per_m; /* counted, share included */
  lw_forces forces;
  lw_contact contact;
} lw_free_body;

/* What the ground under a contact bears by theory, as the footing that is checked. */
typedef struct lw_borne {
  bool known; /* false: presumptive values, the resultant outside, or no answer */
  lw_strip strip;
  lw_bearing bearing;
} lw_borne;

/* What of a joint the reports need; its forces in full only where asked for. */
typedef struct lw_joint {
  lw_status status;
  lw_reason reason;
  double height_m;                           /* of the joint above the base */
  double thrust_kn_per_m, thrust_height_m;   /* above the joint */
  double elastic_kn_per_m, elastic_height_m; /* of loads at a distance, as used */
  double wedge_kn_per_m;
  bool wedge_known, faulty;
  lw_contact contact;
} lw_joint;

#define LW_SITUATIONS(X) \
  X(DRAINED, "drained", "as built", "as built, water leaving") \
  X(SOAKED, "soaked", "soaked", "rain seeping through the soil to its way out") \
  X(OUTLET_BLOCKED, "outlet-blocked", "outlet blocked", "the outlet blocked, water standing behind") \
  X(STORM, "storm", "storm", "a storm on a bed that cannot drain") \
  X(PERSON_AT_EDGE, "person-at-edge", "one at the edge", "one person at the edge of a planted bed") \
  X(PEOPLE_SITTING, "people-sitting", "sitting on it", "people sitting along the top") \
  X(PEOPLE_LEANING, "people-leaning", "leaning on it", "people leaning on the top") \
  X(EARTHQUAKE, "earthquake", "an earthquake", "an earthquake, as a steady push") \
  X(TRENCH, "trench", "trench in front", "a trench open in front of the toe") \
  X(WIND, "wind", "wind on fence", "wind on the fence behind")
typedef enum lw_situation_name {
#define LW_SITUATION_NAME(name, slug, words, sentence) LW_SITUATION_##name,
  LW_SITUATIONS(LW_SITUATION_NAME)
#undef LW_SITUATION_NAME
      LW_SITUATION_COUNT
} lw_situation_name;

/* Why a situation decides, or does not. A figure in braces is that row's. */
#define LW_SITUATION_WHYS(X) \
  X(AS_BUILT, "the wall as built must stand") \
  X(NO_WAY_OUT, "no way out for water is known, so a wet bed is the usual state") \
  X(BURIED, "the outlets lie below the ground in front, where no water comes out, so a wet bed is the " \
            "usual state") \
  X(NOT_REACHED, "this soil does not drain, and no drainage stone {thresholds/stone-width as mm} wide or " \
                 "more leads its water out, so a wet bed is the usual state") \
  X(ONE_WAY_OUT, "there is one way out for water, and it will block one day") \
  X(AS_ONE, "without a filter between soil and stone all ways out silt up together and count as one, and " \
            "it will block one day") \
  X(OPEN_JOINTS, "its joints are open from base to top and cannot hold water to its crest, while neither " \
                 "dirt nor frost closes them: {thresholds/open-joints-hold} of the height is taken") \
  X(WAYS_OUT, "there are two or more ways out for water, so all of them blocked is printed and does not " \
              "decide") \
  X(KNOWN_SEEP, "water is known behind it, so soaked soil is the usual state") \
  X(FROM_SLOPE, "water runs down to it from the slope behind, so soaked soil is the usual state") \
  X(FINE_SOIL, "this soil takes in no more than {thresholds/fine-soil} of rain and is soaked in any wet " \
               "week") \
  X(UNNAMED_SOIL, "nobody named a soil behind it, so it is taken to let water through slowly and to be " \
                  "soaked in any wet week") \
  X(HEAVY_RAIN, "this soil does not drain by itself, and a long heavy rain soaks it") \
  X(NEVER_WORSE, "it is never worse than the outlet blocked, which stands above") \
  X(WEEDING, "somebody weeds what is only planted") \
  X(SITTING, "people sit on a wall of this height") \
  X(GUARD, "the top stands so far above the ground behind that people lean on it as on a guard") \
  X(NO_GUARD, "the top is low above the ground behind; nobody leans on it as on a guard") \
  X(EARTHQUAKE, "earthquake coefficients are given") \
  X(DIGGING, "somebody will dig there, and the wall must stand meanwhile") \
  X(POSTS_PUSH, "the posts of the fence behind push the ground that the wall holds")
typedef enum lw_situation_why {
#define LW_SITUATION_WHY(name, sentence) LW_WHY_##name,
  LW_SITUATION_WHYS(LW_SITUATION_WHY)
#undef LW_SITUATION_WHY
      LW_WHY_COUNT
} lw_situation_why;

/* One load case of a wall: everything that a balance of forces takes besides wall and site. */
typedef struct lw_load_case {
  lw_situation_name situation;
  lw_situation_kind kind;
  const lw_factor_row *set; /* a row of the set of factors; NULL: it has none */
  lw_ground ground;         /* design strengths beside the wall's own, water, earthquake, what is dug */
  lw_actions actions;
} lw_load_case;

enum { LW_CHECK_MAX = LW_CHECK_OF_OTHERS_MAX + LW_CHECK_OF_JOINT_MAX * (LW_COURSE_MAX - 1) };

/* What follows the checks is filled in from LW_DETAIL_EVERYTHING on. */
typedef struct lw_situation {
  lw_situation_name name;
  lw_situation_kind kind;
  bool decides;
  lw_situation_why why; /* it decides or does not */
  double water_depth_m; /* below the top of the wall, in this situation; INFINITY: dry */
  bool seeping; /* soaked, and the push is that of rain on its way to a drain: the water leaves at the foot */
  double people_down_kn_per_m, people_out_kn_per_m; /* on the front edge of the top; 0: nobody */
  bool slip_known; /* a circle was searched; slip.status says whether there is an answer */
  lw_slip slip;
  bool slip_light; /* weights in it took their favourable factors, which was the worse */
  bool slip_bare;  /* it is the one with none of the cohesion paired with the clay's angle */
  lw_number slip_bare_has, slip_bare_needs; /* what a slip has so, where such a cohesion counts, and needs */
  const lw_factor_row *slip_set;            /* a row of the set of factors it was found under; NULL: none */
  int check_count;
  lw_kept_check kept[LW_CHECK_MAX]; /* the worst of all load cases: see lw_situation_check */

  lw_load_case load_case; /* in which the free bodies stand here: of several sets of factors the one that
                               governs, all loads there */
  lw_load_case_name shown_in;
  lw_free_body base, pad; /* pad.status is not LW_OK with reason no-pad when there is none */
  lw_borne base_bears, pad_bears;
  int joint_count;
  lw_joint joint[LW_COURSE_MAX];
  lw_compared compared[LW_COMPARED]; /* strengths of the site, water and earthquake of the situation */
} lw_situation;

typedef struct lw_situations {
  int count;
  /* The check that governs, among those that count in the situations that decide: the least ratio of those
   * that fall short; if none does, one that cannot be shown; else the least ratio. */
  bool governed; /* false: nothing counts, and the next two mean nothing */
  int governing_situation, governing_check;
  lw_holds stands; /* what it says; where none governs LW_HOLDS, or LW_CANNOT_SHOW when the set asks
                               for nothing at all */
  lw_situation situation[LW_SITUATION_COUNT];
} lw_situations;

/* The least of the checks that tell of movement, count, and are made in a situation that decides: sliding,
 * tipping, the key, slips, bearing. A share in compression tells of none. */
typedef struct lw_least {
  lw_number has;               /* times what just holds it; not known: nothing pushes */
  bool not_shown;              /* one of them cannot be shown */
  lw_reason reason;            /* of the first of those */
  bool outside;                /* a resultant is outside its contact */
  lw_number pressed;           /* the least of an allowable pressure, times its reserve */
  lw_situation_name situation; /* of the check that has it, where has is known */
  lw_check_kind kind;
  lw_at at;
  int joint;
} lw_least;

/** A check of a situation, whole.
 *  in    number   0 or more, below check_count
 *  gives all of it but the row that names its set of factors, which may be another of the same set */
lw_check lw_situation_check(const lw_situation *situation, int number);

/** What a check is called when one speaks to people: "sliding on its base", "tipping above course 1". */
void lw_check_words(const lw_check *check, char *out, size_t size);
/** Why a check is asked for more than on good ground, as its row in the set of factors has it; LW_DOUBT_NONE
 *  where it is not.
 *  in    wall    that the check was made on */
lw_doubt lw_check_doubt(const lw_wall *wall, const lw_check *check);
/** The doubt as a slug and as a sentence without its full stop; of none the sentence is empty. */
const char *lw_doubt_slug(lw_doubt doubt);
const char *lw_doubt_words(lw_doubt doubt);
/** Why a situation decides or does not, as a sentence without its full stop.
 *  in    tables   whose figures it names, in these units; out has `size` bytes */
void lw_situation_why_words(lw_situation_why why, const lw_tables *tables, lw_units units, char *out,
                            size_t size);
enum { LW_SITUATION_WHY_MAX = 200 };
/** "as built", "outlet blocked", "sitting on it" */
const char *lw_situation_short(lw_situation_name name);
/** "base", "pad", "joint-1", "cap" */
void lw_check_print_at(const lw_check *check, char *out, size_t size);
const char *lw_situation_slug(lw_situation_name name);
const char *lw_situation_sentence(lw_situation_name name);
const char *lw_situation_kind_slug(lw_situation_kind kind); /* usual · unusual · extreme · what-if */

/** The free body above one joint in full (for the working): as lw_situation.base is of the base.
 *  in    joint   of a wall of courses: 1 to its course_count - 1, from the lowest up */
void lw_situation_joint(const lw_wall *wall, const lw_situation *situation, int joint, lw_free_body *body);

/** The cross-section that a slip is looked for in, water as in the situation, strengths by the set's.
 *  in    situation   for its water and kind
 *  out   ground      for lw_slip_search and lw_slip_of_circle
 *  note  1 In front of the toe and below the base is the ground under the footing; layers behind end at the
 *          base. Only embedment that was given is there. Water free in front is left away.
 *        2 An upper wall is a step of the ground behind, as heavy as the heavier of it and its soil. */
void lw_situation_slip_ground(const lw_wall *wall, const lw_tables *tables, const lw_situation *situation,
                              lw_slip_ground *ground);

LW_PUBLIC_END

#endif
