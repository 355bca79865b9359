/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ORDER_H
#define LOWWALL_ORDER_H

#include <lowwall/plan.h>
#include <lowwall/result.h>

LW_PUBLIC_BEGIN

/* Lists and what counts them stand side by side. */
/* clang-format off */

/* What to order for a wall as it is given, and how it is set out. Nothing here says that it may be built.
 * A *stretch* is a chain of runs without a corner between them; a *row* is one course on one stretch, laid
 * at one go. A *module* is a piece and the gap after it. */

enum {
  LW_STRETCH_MAX = LW_RUN_MAX, LW_ROW_MAX = 512, LW_CUT_MAX = 128, LW_ORDER_LINE_MAX = 32,
  LW_ORDER_NOTE_MAX = 48, LW_PEG_MAX = 80, LW_LEVEL_MAX = 128, LW_PEG_CHECK_MAX = 32, LW_WORK_MAX = 40,
  LW_INVERT_MAX = 96, LW_STATION_MAX = 3,
  LW_ROW_UNITS = 4096
};

typedef enum lw_row_end {
  LW_ROW_FREE,     /* a free end: a whole unit and a half in alternate courses */
  LW_ROW_STEP,     /* the course runs into the ground here */
  LW_ROW_THROUGH,  /* at a corner: this row runs through to the outer face */
  LW_ROW_STOPPED,  /* at a corner: this row stops at the other run's end unit */
  LW_ROW_MITRED,   /* at a corner: cut on the mitre */
  LW_ROW_RING      /* a closed curve has no end */
} lw_row_end;

typedef struct lw_laid {
  int stretch, course;           /* course 0 is the lowest */
  double from_m, to_m;           /* on its own face, from the corner or end where its stretch begins */
  double module_sum_m;           /* what the modules below add up to */
  lw_row_end start, end;
  double first_m, last_m;        /* modules of the end pieces; 0: none */
  int before, after;             /* whole units between them, before and after the closers */
  int closer_count;
  double closer_m[2];            /* modules of the cut pieces that close the row */
  double slack_m;                /* what the joints take up: under 1 mm */
  bool below_known;              /* a row lies below it */
  double overlap_m;              /* least distance of its joints from those of the row below */
  double overlap_at_m;           /* where, from the beginning of the stretch on the lowest face */
} lw_laid;

/* A chain of runs without a corner between them. */
typedef struct lw_stretch {
  int first_run, run_count;        /* of a closed plan it may run past the last run: wrap around */
  int corner_before, corner_after; /* index into the corners; -1: a free end */
  bool ring;
  double from_m, length_m;         /* on the lowest face; from the plan's beginning */
  int start_bit, end_bit;          /* 0 or 1: what stands here in the lowest course */
} lw_stretch;

typedef enum lw_cut_kind {
  LW_CUT_CLOSER, LW_CUT_MITRED, LW_CUT_CAP, LW_CUT_CAP_MITRED,
  LW_CUT_CAP_WEDGE, /* of a curve: cut at both ends by half the turn of one cap */
  LW_CUT_HALF       /* a half unit, where none are sold */
} lw_cut_kind;
typedef struct lw_cut {
  lw_cut_kind kind;
  bool base_unit;                /* of the deeper units of the base courses */
  double long_m, short_m;        /* the same for a square cut */
  double saw_deg;                /* away from a square cut; 0: square */
  int count;
  double saw_other_deg;          /* of its other end; 0: square */
  double waste_long_m, waste_short_m;  /* edges of what falls off a whole one beyond the saw */
  double cap_depth_m;            /* of a cap; 0 of a block */
} lw_cut;

/* Whole ones that are sawn alike: what each gives, and what is left of it. */
typedef enum lw_stock { LW_STOCK_BLOCK, LW_STOCK_BASE_BLOCK, LW_STOCK_CAP } lw_stock;
enum { LW_SAWN_MAX = 6, LW_BLANK_MAX = 128 };
typedef struct lw_blank {
  lw_stock stock;
  int count, pieces;
  double piece_m[LW_SAWN_MAX], short_m[LW_SAWN_MAX];   /* long and short edges */
  double rest_m, far_m;          /* short and long edge of what is left */
  double mitre_deg;              /* at which it ends, away from a square cut */
  double cap_depth_m;            /* of a cap; 0 of a block */
} lw_blank;

/* Caps of one depth: each sort is bought for itself. */
typedef struct lw_cap_sort {
  double depth_m, mass_kg;
  int whole, sawn, sawn_again;   /* laid whole; sawn with every piece from a new one, with offcuts used */
} lw_cap_sort;

typedef struct lw_course_count {
  double offset_m;               /* behind the face of the lowest course */
  double face_m;                 /* length of the face to be covered */
  double covered_m;              /* of it by units and their joints, heads at corners included */
  int whole, half, closer, left, right, mitred;
  bool overlap_known;
  double overlap_m, overlap_at_m;
  int overlap_run;               /* run, from 1, where the least overlap stands */
} lw_course_count;

typedef enum lw_corner_made { LW_MADE_TURNED, LW_MADE_CUT, LW_MADE_HANDED } lw_corner_made;
/* Why caps meet at a corner in a butt joint, and how the next cap is cut against those that run through. */
typedef enum lw_butt { LW_BUTT_NONE, LW_BUTT_NO_MITRE, LW_BUTT_SHARP, LW_BUTT_LONG } lw_butt;
typedef enum lw_butt_cut { LW_BUTT_SQUARE, LW_BUTT_REAR, LW_BUTT_END } lw_butt_cut;
typedef struct lw_order_corner {
  int run;                       /* it stands at the end of this run, from 0 */
  double turn_rad;
  lw_corner_made made;
  bool first_through;            /* the run before it runs through in the lowest course */
  int left, right;               /* handed units, seen from the front */
  bool mitred;                   /* the cap is cut on the mitre here; otherwise a butt joint */
  double cap_angle_deg[2];       /* between the mitre and the long edge, before and after */
  double cap_saw_deg[2];         /* away from a square cut */
  double cap_extra_m[2];         /* long edge beyond the short one */
  double cap_mitre_m;            /* length of the cut */
  lw_butt butt;                  /* none when mitred or without a cap */
  lw_butt_cut butt_cut;
} lw_order_corner;

/* How the caps of a run are laid: modules of its end pieces and closers, 0: none, and whole ones between. */
typedef struct lw_cap_row {
  bool known;
  double first_m, closer_m[2], last_m, module_m, gap_m;
  int before, after;               /* whole ones before and after the closers */
  bool mitred[2];                  /* at its beginning and end */
  double base_from_m, base_to_m;   /* on the lowest face, from the run's beginning */
  double hidden_m;                 /* before that, by the run before at a butt joint */
  double zero_m, base_per_laid;    /* from laying to the lowest face */
} lw_cap_row;

/* Why no length is told that needs no cut. */
typedef enum lw_no_fit { LW_NO_FIT_NONE, LW_NO_FIT_SETBACK, LW_NO_FIT_CORNERS, LW_NO_FIT_RUNS_ON } lw_no_fit;
typedef struct lw_order_run {
  int run;
  double length_m, top_length_m; /* of the lowest and the highest course's face */
  double radius_m, least_radius_m;   /* of a curve; the least at the course where it is sharpest */
  bool radius_known, radius_kept;
  double curve_gap_m;            /* the gap that its sharpest course asks for */
  bool shorter_known, longer_known;
  double shorter_m, longer_m;    /* the two nearest lengths that need no cut */
  bool fits;                     /* as it is; the two are then the next ones */
  bool half_blocks;              /* which stand in it where no corner holds the bond, cut or sold */
  lw_no_fit no_fit;
  bool cap_joint_known;
  double cap_joint_m, cap_joint_at_m;  /* nearest joint of caps to one of blocks, and where on the run */
  lw_cap_row caps;
} lw_order_run;

/* What is bought, dug or carried, and the unit that it comes in. */
#define LW_LINE_UNITS(X) \
  X(PIECES, "pieces") X(BAGS, "bags") X(LITRES, "L") X(M, "m") X(M2, "m2") X(M3, "m3") X(TONNES, "t")
#define LW_ORDER_LINES(X) \
  X(BLOCKS, "blocks", PIECES) X(BASE_BLOCKS, "base-blocks", PIECES) \
  X(HALF_BLOCKS, "half-blocks", PIECES) X(BASE_HALF_BLOCKS, "base-half-blocks", PIECES) \
  X(LEFT_CORNERS, "left-corners", PIECES) X(BASE_LEFT_CORNERS, "base-left-corners", PIECES) \
  X(RIGHT_CORNERS, "right-corners", PIECES) X(BASE_RIGHT_CORNERS, "base-right-corners", PIECES) \
  X(MITRED_SPARES, "mitred-spares", PIECES) X(BASE_MITRED_SPARES, "base-mitred-spares", PIECES) \
  X(CAPS, "caps", PIECES) X(ADHESIVE, "adhesive", LITRES) X(WALL_STONE, "wall-stone", TONNES) \
  X(DIG, "dig", M3) X(SPOIL, "spoil", M3) X(PAD_STONE, "pad-stone", M3) \
  X(BEDDING_SAND, "bedding-sand", M3) X(CEMENT, "cement", BAGS) \
  X(DRAINAGE_STONE, "drainage-stone", M3) X(GEOTEXTILE, "geotextile", M2) X(DRAIN_PIPE, "drain-pipe", M) \
  X(SOIL, "soil", M3) X(LINING, "lining", M2) X(BLOCK_FILL, "block-fill", M3)
#define LW_LINE_UNIT_NAME(name, slug) LW_UNIT_##name,
typedef enum lw_line_unit { LW_LINE_UNITS(LW_LINE_UNIT_NAME) LW_LINE_UNIT_COUNT } lw_line_unit;
#define LW_ORDER_LINE_NAME(name, slug, unit) LW_LINE_##name,
typedef enum lw_line_kind { LW_ORDER_LINES(LW_ORDER_LINE_NAME) LW_LINE_COUNT } lw_line_kind;

/* Net, allowance and order, a line a thing to buy, dig or carry. */
typedef struct lw_order_line {
  lw_line_kind kind;
  double net;
  bool allowance_known;
  double allowance;              /* share, or pieces with `pieces` */
  bool pieces;
  double order;
  double mass_kg;                /* of what is ordered; 0: not counted as carried */
  double cap_depth_m;            /* of caps where they are of several depths; 0 otherwise */
  int sawn, sawn_again;          /* of blocks and caps: each piece from a new one, offcuts used */
  bool offcuts_used;             /* it is the second of these that is ordered */
  int kinds;                     /* of mitred units, each with so many spare ones: */
  double spare_each;
  double volume_m3, unit_weight_kn_per_m3;   /* of the stone of a solid wall */
  bool behind_pad;               /* drainage stone goes down behind the pad as well */
  bool between_tails;            /* fill goes between the tails of blocks that taper */
  char source[LW_SOURCE_MAX];    /* of the allowance or factor */
} lw_order_line;

/* What to mind about an order; the numbers of a note that the order does not hold elsewhere. */
#define LW_ORDER_NOTES(X) \
  X(NEARLY_CLOSED, "nearly-closed")      /* length: from the end of the runs to their beginning */ \
  X(CORNER_TURNED, "corner-turned")      /* number: run before; depth of blocks; length: lost to a mitre */ \
  X(CORNER_STAGGER, "corner-stagger")    /* length: overlap of turned blocks */ \
  X(CORNER_MITRE, "corner-mitre")        /* number: of corners */ \
  X(OVERLAP_SHORT, "overlap-short")      /* number: course */ \
  X(SHORT_RUN, "short-run")              /* number: run */ \
  X(STEP_SLIVER, "step-sliver")          /* number: course; step; length: of the piece */ \
  X(CURVE_TOO_SHARP, "curve-too-sharp")  /* number: run */ \
  X(CAP_BUTT_JOINT, "cap-butt-joint")    /* number: run before it */ \
  X(CAP_JOINT_NEAR, "cap-joint-near")    /* number: run */ \
  X(CAP_NARROW, "cap-narrow")            /* length: covered */ \
  X(HEAVY_UNIT, "heavy-unit")            /* mass: of the heaviest */ \
  X(GROUND_OVER_TOP, "ground-over-top")  /* where it comes to the top; length: over it at the end */ \
  X(NO_PAD, "no-pad")                    /* length: least that is usual; low: up to number courses */ \
  X(GRADED_FILTER, "graded-filter")      /* most of the 85 % size, least of the 15 % size */ \
  X(NO_FILTER, "no-filter") X(FILTER_NOT_TOLD, "filter-not-told") X(NO_STONE, "no-stone") \
  X(NO_OUTLET, "no-outlet") X(NO_SOIL, "no-soil") X(STONE_PAST_CENTRE, "stone-past-centre") /* run */ \
  X(PIPE_HIGH, "pipe-high")              /* length: below the soil behind */
#define LW_ORDER_NOTE_NAME(name, slug) LW_NOTE_##name,
typedef enum lw_order_note_kind { LW_ORDER_NOTES(LW_ORDER_NOTE_NAME) LW_NOTE_COUNT } lw_order_note_kind;
typedef struct lw_order_note {
  lw_order_note_kind kind;
  int number, step;              /* runs, courses and steps from 1 */
  double at_m, length_m, depth_m, mass_kg, at_most, at_least;
  bool low_wall;
} lw_order_note;

typedef enum lw_peg_kind { LW_PEG_BASE, LW_PEG_TOP, LW_PEG_CENTRE, LW_PEG_STEP } lw_peg_kind;
typedef struct lw_peg {
  lw_peg_kind kind;
  int number;                    /* from 1: of the corner, of the run of a centre, of the step */
  lw_spot at;
  double level_m;                /* underside of the lowest course there, or the top of the wall */
} lw_peg;
typedef enum lw_level_kind {
  LW_LEVEL_TOP, LW_LEVEL_UNDER_CAP, LW_LEVEL_GROUND, LW_LEVEL_UNDER_WALL, LW_LEVEL_UNDER_COURSE,
  LW_LEVEL_BEFORE_STEP, LW_LEVEL_AFTER_STEP,   /* under the blocks */
  LW_LEVEL_PAD_TOP, LW_LEVEL_DIG_BOTTOM,       /* where they are lowest */
  LW_LEVEL_STEP_PAD_TOP, LW_LEVEL_STEP_DIG_BOTTOM, /* of the upper ones at a step */
  LW_LEVEL_KINDS
} lw_level_kind;
typedef struct lw_level {
  lw_level_kind kind;
  int number;                    /* of the course or step */
  double level_m;
} lw_level;
typedef struct lw_peg_check {
  int from, to;                  /* pegs of the base line, from 1; to 0: the face, from the centre of a run */
  double distance_m, tolerance_m;
  double angle_deg;              /* what that tolerance is at the corner between; 0: of a curve, no corner */
} lw_peg_check;
/* Inside bottom of the drain pipe, from its high point to where it comes out. */
typedef enum lw_invert_kind {
  LW_INVERT_HIGH, LW_INVERT_CORNER, LW_INVERT_STEP, LW_INVERT_LEAVES, LW_INVERT_OUTLET
} lw_invert_kind;
typedef enum lw_step_side { LW_SIDE_LEVEL, LW_SIDE_BEFORE, LW_SIDE_AFTER } lw_step_side;
typedef struct lw_invert {
  lw_invert_kind kind;
  int number;                    /* of the corner or step */
  lw_step_side side;             /* where the pipe drops there */
  double along_m, level_m;
} lw_invert;
/* Where the batter is read after hand-over: plumb from the top of the face to its base. */
typedef struct lw_station { double along_m, height_m, reading_m, lean_alarm_m; } lw_station;
typedef struct lw_right_angle { int corner; double unit_m; } lw_right_angle;   /* legs 3 and 4 times unit_m */

typedef struct lw_setting_out {
  int peg_count; lw_peg peg[LW_PEG_MAX];
  int level_count; lw_level level[LW_LEVEL_MAX];
  int check_count; lw_peg_check check[LW_PEG_CHECK_MAX];
  int square_count; lw_right_angle square[LW_RUN_MAX];
  double base_offset_m;          /* of the base line in front of the top line */
  bool pipe_known;
  double pipe_fall, pipe_high_m, pipe_outlet_m;   /* invert levels */
  double pipe_length_m;          /* the longest way to daylight */
  double pipe_below_front_m;     /* the lowest outlet below the lowest ground in front */
  int outlet_count;              /* that have their place */
  int invert_count; lw_invert invert[LW_INVERT_MAX];
  int station_count; lw_station station[LW_STATION_MAX];
  double batter_reading_m;       /* plumb from the top of the face to its base, as built */
  double batter_alarm_m;         /* reading at which to act */
  double lean_alarm_m, joint_alarm_m;
} lw_setting_out;

/* The order of work; where it holds, stop and look before something is covered up. */
#define LW_WORK_STEPS(X) \
  X(SETTLED, true) X(DATUM, false) X(DIG, false) X(LOOK_AT_DIG, true) \
  X(PAD, false)            /* length: thickness */ \
  X(PAD_AT_STEPS, false)   /* length: under the upper one */ \
  X(LOOK_AT_PAD, true) \
  X(FIRST_COURSE, false)   /* length: out of level in a metre */ \
  X(LOOK_AT_FIRST, true) X(SETBACK, false) X(SETBACK_AT_STEPS, false) \
  X(COURSES, false)        /* length: layer of soil */ \
  X(SOLID, false) \
  X(SOLID_FILL, false)     /* length: layer of soil */ \
  X(NO_PLANT, false) \
  X(PLANT, false)          /* length: from the newest course */ \
  X(PIPE, false) X(LOOK_AT_PIPE, true) \
  X(LOOK_AT_STONE, true)   /* in its cloth */ \
  X(LOOK_AT_FILTER, true) X(LOOK_AT_BARE_STONE, true) X(CAPS, false) X(HAND_OVER, true) \
  X(READ_AGAIN, false)
#define LW_WORK_STEP_NAME(name, hold) LW_WORK_##name,
typedef enum lw_work_kind { LW_WORK_STEPS(LW_WORK_STEP_NAME) LW_WORK_COUNT } lw_work_kind;
typedef struct lw_work_step { lw_work_kind kind; bool hold; double length_m; } lw_work_step;

typedef struct lw_order {
  lw_plan plan; lw_units units;  /* what its reader measures in */
  int corner_count; lw_order_corner corner[LW_RUN_MAX];
  int stretch_count; lw_stretch stretch[LW_STRETCH_MAX];
  int row_count; lw_laid row[LW_ROW_MAX];
  lw_course_count course[LW_COURSE_MAX];
  int cut_count; lw_cut cut[LW_CUT_MAX];
  int blank_count; lw_blank blank[LW_BLANK_MAX];
  int sawn[3], sawn_again[3];    /* by stock: whole ones cut with every piece from a new one, offcuts used */
  lw_order_run run[LW_RUN_MAX];
  double overlap_needs_m;
  int overlap_fails_at;          /* lowest course, from 1, whose overlap is less; 0: none */
  bool has_cap;
  int cap_whole, cap_count;      /* whole ones laid; all to be bought before the allowance */
  int cap_sort_count; lw_cap_sort cap_sort[LW_RUN_MAX];
  double cap_gap_m;              /* open joint between two caps */
  double cap_joint_needs_m;
  double cap_line_m, cap_overhang_m, cap_wedge_deg;
  int line_count; lw_order_line line[LW_ORDER_LINE_MAX];
  double unit_mass_kg, base_unit_mass_kg, cap_mass_kg, lift_mass_kg;   /* heaviest of each; the limit */
  double carried_kg;             /* to the wall and away from it */
  double spoil_kg, loose_m3;     /* of it dug; loose volume of all that is loose */
  int barrows, skips, spoil_barrows;
  int pallets;
  double pallet_distance_m;      /* keep them at least so far behind the wall */
  int note_count; lw_order_note note[LW_ORDER_NOTE_MAX];
  lw_setting_out setting_out;
  int work_count; lw_work_step work[LW_WORK_MAX];
} lw_order;
/* clang-format on */

/** What to order and where to set it out.
 *  in    result   of a case completed by lw_case_complete and lw_case_complete_order
 *  out   order    some 120 KB: keep it static or on the heap
 *        fault    the first reason why there is none; lw_report_plan_fault has its words
 *  gives LW_OK · LW_FAULTS: a closed plan that does not close, steps that leave no wall, runs too long
 *  note  1 Quantities are for the wall as given; the verdict of the result is not changed by them. */
lw_status lw_order_make(const lw_result *result, lw_order *order, lw_plan_fault *fault);

/** The slug of a cut, a stock, a corner, a note, a line and its unit. */
const char *lw_cut_slug(lw_cut_kind kind);
const char *lw_stock_slug(lw_stock stock);
const char *lw_corner_slug(lw_corner_made made);
const char *lw_order_note_slug(lw_order_note_kind kind);
const char *lw_order_line_slug(lw_line_kind kind);
lw_line_unit lw_order_line_unit(lw_line_kind kind);
const char *lw_line_unit_slug(lw_line_unit unit);

LW_PUBLIC_END

#endif
