/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_RESULT_H
#define LOWWALL_RESULT_H

#include <lowwall/sheet.h>
#include <lowwall/studies.h>

LW_PUBLIC_BEGIN

#define LW_WHATS(X) \
  X(TIER, "tier", "a tier: another wall stands too close for this one to be alone") \
  X(RETAINING_WALL, "retaining-wall", "a retaining wall") \
  X(BED_ON_SLOPE, "bed-on-slope", "a bed on a slope") \
  X(BED_AGAINST_BUILDING, "bed-against-building", "a bed against a building") \
  X(BED_AGAINST_FENCE, "bed-against-fence", "a bed against a fence") \
  X(BED, "bed", "a free-standing garden bed")
typedef enum lw_what {
#define LW_WHAT_NAME(name, slug, sentence) LW_WHAT_##name,
  LW_WHATS(LW_WHAT_NAME)
#undef LW_WHAT_NAME
} lw_what;

/* From the least grave on. */
typedef enum lw_who { LW_WHO_BUILDER, LW_WHO_COUNCIL, LW_WHO_ENGINEER } lw_who;

/* The answer a reason belongs to. */
typedef enum lw_answer { LW_ANSWER_WHAT, LW_ANSWER_STANDS, LW_ANSWER_WHO } lw_answer;

enum {
  LW_REASONS_MAX = 64,
  LW_CAUTION_MAX = 10,
  LW_REMEDY_MAX = 10,
  LW_ASKING_MAX = 8,
  LW_COST_MAX = 12,
  LW_LIMIT_HIT_MAX = 24
};

typedef struct lw_verdict_reason {
  lw_answer answer;
  lw_who who;                /* whom it calls for, of a who reason */
  bool assumed;              /* it rests on an answer that is not known */
  const char *slug, *source; /* of the code or of the tables */
  const char *left_out;      /* the item of the sheet that would tell; NULL: none */
  char text[480];            /* one plain sentence */
} lw_verdict_reason;

/* Why, for whoever reads a report, and what to look out for. */
typedef struct lw_reasons {
  int count, caution_count;
  int told; /* the reason that tells of the check told of; -1: none */
  const lw_hazard_row *caution[LW_CAUTION_MAX];
  lw_verdict_reason reason[LW_REASONS_MAX];
} lw_reasons;

/* A row of tables/limits.csv held against this wall. */
typedef struct lw_limit_hit {
  const lw_limit_row *row;
  double height_m; /* of this wall, by the row's definition */
  bool past;       /* on the wrong side of the figure */
  bool clears;     /* below it a wall may be left to the builder */
  bool kept;       /* it is below it, and all that the row asks for besides is so for certain */
} lw_limit_hit;

/* What falling short means, from the least grave on: less margin than asked; design values that do not stand,
 * with margin in them; movement. */
typedef enum lw_short { LW_SHORT_OF_MARGIN, LW_SHORT_BY_DESIGN, LW_SHORT_MOVES } lw_short;

/* How a wall stands by both looks, from the least grave on; what cannot be shown stands last. */
#define LW_GRADES(X) \
  X(HOLDS, "holds", "every check that decides holds") \
  X(LESS_MARGIN, "less-margin", "it has less margin than asked") \
  X(MAY_MOVE, "may-move", "it may move; do not build it so") \
  X(WOULD_MOVE, "would-move", "it would move") \
  X(CANNOT_BE_SHOWN, "cannot-be-shown", "nobody can say that it stands")
typedef enum lw_grade {
#define LW_GRADE_NAME(name, slug, sentence) LW_GRADE_##name,
  LW_GRADES(LW_GRADE_NAME)
#undef LW_GRADE_NAME
      LW_GRADE_COUNT
} lw_grade;

/* What a check has by likely values. */
typedef struct lw_likely_check {
  double has;
  uint8_t kind, at, joint;
  bool known;
} lw_likely_check;

typedef struct lw_likely_situation {
  lw_situation_name name;
  int check_count;
  lw_likely_check check[LW_CHECK_MAX];
} lw_likely_situation;

/* The wall by cautious values, which decide, and by likely ones. Under a set of partial factors both are
 * strengths and loads as they are, under the set lowwall: design values have margin in them. */
typedef struct lw_looks {
  bool looked; /* false: the likely look was not run, and nothing below `bare` holds */
  bool bare;   /* the set in use has partial factors: cautious is of a run without them */
  lw_least cautious;
  lw_least likely;
  int situation_count; /* below LW_DETAIL_EVERYTHING that of the check that governs: see lw_looks_has */
  lw_likely_situation situation[LW_SITUATION_COUNT];
} lw_looks;

typedef struct lw_verdict {
  double height_m[LW_HEIGHT_KINDS]; /* by every definition that laws use */
  lw_what what;
  lw_holds stands;
  lw_grade grade; /* what would move by cautious values counts as would-move until the likely look is run */
  lw_who who;
  double total_to_pad_m; /* to the underside of the pad */
  bool place_known;
  bool called_for_certain; /* a reason that is known calls for who */
  const char *rests_on;    /* else the item left out that the first of them rests on, or "" */
  bool governed;           /* a check governs */
  int governing_situation, governing_check;
  lw_short falls;                 /* of the check told of, where it falls short */
  int told_situation, told_check; /* the worst that would move, else the one that governs */
  int exit_status;                /* 0, 3, 4 or 5 */
  int limit_count;
  char headline[1280];
  lw_limit_hit limit[LW_LIMIT_HIT_MAX];
  lw_reasons reasons; /* from LW_DETAIL_EVERYTHING on */
} lw_verdict;

/* Items as they are typed, `item=value`, on the command line or into a sheet. */
enum { LW_TYPED_MAX = 20, LW_TYPED_BYTES = 48 };
typedef struct lw_typed {
  int count;
  char item[LW_TYPED_MAX][LW_TYPED_BYTES];
  lw_units units; /* that measures are typed in */
} lw_typed;

/* One of the changes of a remedy.
 * slug: deeper-blocks · lower-wall · filter · drain · wider-stone · stone-wedge · more-setback · load-back ·
 * lower-soil · filled-hollows · wider-pad */
typedef struct lw_remedy_part {
  const char *slug, *unit;
  double value; /* the least block depth, the greatest height ..., SI */
} lw_remedy_part;

/* Whether the wall that then stands is still the one that was asked for. */
typedef enum lw_remedy_kind {
  LW_REMEDY_CURE,
  LW_REMEDY_LOWER_JOB, /* it holds up much less */
  LW_REMEDY_OTHER_WALL /* of blocks deeper than hands lay */
} lw_remedy_kind;

/* What would make every deciding check hold: one change or, where that is not enough, two together. */
typedef struct lw_remedy {
  lw_remedy_kind kind;
  char slug[48]; /* of two: theirs, with "+" between */
  char text[480];
  int part_count;
  lw_remedy_part part[2];
  lw_typed items;   /* typed in as they stand, all of them, they give `holds` */
  lw_number ratio;  /* of the governing check then */
  char governs[80]; /* "sliding at base, outlet-blocked" */
} lw_remedy;

/* What a favourable answer is good for: it changes how the wall stands or who sees it; or it gives the checks
 * more; or it only leaves fewer reasons to ask. */
typedef enum lw_helps { LW_HELPS_VERDICT, LW_HELPS_MARGIN, LW_HELPS_REASONS } lw_helps;

/* An unknown answer whose favourable value would be worth having. */
typedef struct lw_asking {
  char item[64];
  char question[200];
  char assumed[48], favourable[48];
  lw_holds stands_then;
  lw_who who_then;
  lw_number ratio_then;
  int exit_then;
  lw_helps helps;
} lw_asking;

/* What one caution costs: the wall by cautious values, but for this one that is the likely one. */
typedef struct lw_cost {
  char item[64];
  const char *question;          /* that settles it; "" where nobody is asked */
  char cautious[48], likely[48]; /* the two values, as one would write them */
  lw_number has, ratio;          /* of the check that governs then */
  lw_number least;               /* as lw_looks.cautious then */
  lw_situation_name situation;   /* of that check, where has is known */
  lw_check_kind kind;
  lw_at at;
  int joint;
  bool worse; /* the wall has less by the likely value */
} lw_cost;

/* What is to be said of them all together. */
#define LW_COSTS_RARE "All these low values at once are rarer than one in twenty"

/** The limit to name for a wall: of those passed the first that asks for whoever must see it, else the one
 *  that it comes nearest to, of those that may clear it; NULL: none. */
const lw_limit_hit *lw_verdict_limit(const lw_verdict *verdict);

/** Whether a check that falls short says that the wall, or its ground, would move. */
bool lw_check_would_move(const lw_check *check);

/* Slugs and sentences, for the reports. */
const char *lw_what_slug(lw_what what);
const char *lw_what_sentence(lw_what what);
const char *lw_who_slug(lw_who who);       /* builder · council · engineer */
const char *lw_holds_slug(lw_holds holds); /* holds · falls-short · cannot-be-shown */
const char *lw_grade_slug(lw_grade grade); /* holds · less-margin · may-move · would-move · cannot-be-shown */
const char *lw_grade_sentence(lw_grade grade);
/* total · exposed · retained · natural · with-fence · greatest */
const char *lw_height_slug(lw_height_kind kind);
const char *lw_height_sentence(lw_height_kind kind);

/* Everything known of one wall. Every form of report is made from this and nothing else. */
typedef struct lw_result {
  const lw_working *working; /* set before a run to LW_DETAIL_WORKING: who is told of each step */
  const lw_tables *tables;   /* those in effect; they must outlive the result */
  lw_detail detail;          /* what lies beyond it holds nothing */
  lw_case given;             /* complete: each value with its origin */
  lw_units units;            /* those that its reader measures in: lw_case_units */
  lw_wall wall;
  lw_situations situations;
  lw_construction construction; /* the wall while it is built */
  lw_narrow narrow;             /* published values for a bed narrower than its wedge */
  lw_fence fence;
  lw_storm storm;
  lw_rain_seepage seepage; /* this and the next by lw_water_find only */
  lw_water_limits water_limits;
  lw_trench trench;
  lw_influence influence; /* loads behind the wall against the line up from its base */
  lw_verdict verdict;
  lw_looks looks;
  lw_factor_sets factor_sets; /* empty unless asked for: see lw_factor_sets_compare */
  bool remedies_sought;
  int remedy_count;
  lw_remedy remedy[LW_REMEDY_MAX];
  int asking_count;
  lw_asking asking[LW_ASKING_MAX];
  int cost_count;
  lw_cost cost[LW_COST_MAX]; /* what helps most first */
} lw_result;

/** One wall, from its case to its verdict.
 *  in    c        as read, or complete; &result->given runs a result again in its place
 *        tables   in effect; kept by address in the result
 *        detail   how far: see note 1
 *        result   working, at LW_DETAIL_WORKING; nothing of it is read otherwise
 *  out   result   filled as far as detail; remedies, questions and sets of factors are left empty: see
 *                 lw_remedies_find, lw_factor_sets_compare
 *  gives LW_OK · LW_FAULTS when the case contradicts itself (error holds the first fault; lw_case_complete
 *        before gives them all)
 *  note  1 LW_DETAIL_VERDICT: a slip, the dearest check, is searched only as far as it may govern
 *          (lw_slip_search_below), and is no check of a situation where it cannot. What stands, who must see
 *          it, what governs and its figures are those of any other detail: tests/verdict/governing.c.
 *        2 LW_DETAIL_VERDICT: a complete case is taken as it is. Any other detail holds it
 *          once more against what a sheet may say.
 *        3 Allocates nothing, opens nothing, prints nothing. */
lw_status lw_run(const lw_case *c, const lw_tables *tables, lw_detail detail, lw_result *result,
                 lw_error *error);

/** The wall by likely values, beside the cautious ones: fills result->looks, and reaches the verdict anew
 *  with its grade. From LW_DETAIL_EVERYTHING on lw_run has done so already.
 *  in    result    run to LW_DETAIL_VERDICT or further; of look LW_LOOK_CAUTIOUS
 *        scratch   a second result to run in */
void lw_looks_find(lw_result *result, lw_result *scratch);

/** What a check of a result has by likely values.
 *  in    situation   of the result; below LW_DETAIL_EVERYTHING that in which the check that governs does
 *        check       likewise: that check
 *  gives not known where the likely look has no such check, or no number for it */
lw_number lw_looks_has(const lw_result *result, const lw_situation *situation, const lw_check *check);

/** The grade of one check: as of the wall, were it the only one.
 *  gives LW_GRADE_COUNT of a check that does not count */
lw_grade lw_check_grade(const lw_result *result, const lw_situation *situation, const lw_check *check);

/** The two looks in one sentence, without its full stop: "with soil and loads as they usually are it has 1.2
 *  times what just holds it; with poor but possible ones 0.9".
 *  gives "" where the likely look was not run, or nothing pushes in either */
const char *lw_looks_words(const lw_looks *looks, char *out, size_t size);

/** The check that governs, whole, at every detail.
 *  out   check   unchanged when false
 *  gives false where none governs */
bool lw_verdict_governing(const lw_result *result, lw_check *check);

/** What would make every deciding check hold, each change by itself or, where one is not enough, two
 *  together; the unknown answers worth asking; and what each caution costs, of the quantities that are not
 *  given or have a likely value beside them.
 *  Fills result->remedy, result->asking and result->cost. scratch is a second result to run in.
 *  note  1 Sizes are such as can be bought or built: depths and widths by 50 mm, whole courses, setbacks by
 *          5 mm from 10.
 *        2 A remedy is found by typing its items into the case: what is told holds as it is printed. None
 *          calls for more than the wall as it is does. */
void lw_remedies_find(lw_result *result, lw_result *scratch);

/** The water level at which each check falls short, and the push of seeping rain, for a report: fills
 *  result->water_limits and result->seepage.
 *  scratch is a second result to run in. */
void lw_water_find(lw_result *result, lw_result *scratch);

LW_PUBLIC_END

#endif
