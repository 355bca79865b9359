/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_RESULT_H
#define LOWWALL_RESULT_H

#include <lowwall/building.h>
#include <lowwall/formats.h>
#include <lowwall/narrow.h>
#include <lowwall/fence.h>
#include <lowwall/influence.h>
#include <lowwall/sheet.h>
#include <lowwall/trench.h>
#include <lowwall/verdict.h>
#include <lowwall/water.h>

LW_PUBLIC_BEGIN

/* Everything known of one wall. Every form of report is made from this and nothing else. */
typedef struct lw_result {
  const lw_working *working;    /* set before a run to LW_DETAIL_WORKING: who is told of each step */
  const lw_tables *tables;      /* those in effect; they must outlive the result */
  lw_detail detail;             /* what lies beyond it holds nothing */
  lw_case given;                /* settled: each value with its origin */
  lw_wall wall;
  lw_situations situations;
  lw_building building;         /* the wall while it is built */
  lw_narrow narrow;             /* published values for a bed narrower than its wedge */
  lw_fence fence;
  lw_storm storm;
  lw_rain_seepage seepage;        /* this and the next by lw_water_find only */
  lw_water_limits water_limits;
  lw_trench trench;
  lw_influence influence;       /* loads behind the wall against the line up from its base */
  lw_verdict verdict;
  lw_formats formats;           /* empty unless asked for: see lw_formats_compare */
  bool remedies_sought;
  int remedy_count;
  lw_remedy remedy[LW_REMEDY_MAX];
  int asking_count;
  lw_asking asking[LW_ASKING_MAX];
} lw_result;

/** One wall, from its case to its verdict.
 *  in    c        as read, or settled; &result->given runs a result again in its place
 *        tables   in effect; kept by address in the result
 *        detail   how far: see note 1
 *        result   working, at LW_DETAIL_WORKING; nothing of it is read otherwise
 *  out   result   filled as far as detail; remedies, questions and sets of factors are left empty: see
 *                 lw_remedies_find, lw_formats_compare
 *  gives LW_OK · LW_FAULTS when the case contradicts itself (error holds the first fault; lw_case_settle
 *        before gives them all)
 *  note  1 LW_DETAIL_VERDICT: a slip, the dearest check, is searched only as far as it may govern
 *          (lw_slip_search_below), and is no check of a situation where it cannot. What stands, who must see
 *          it, what governs and its figures are those of any other detail: tests/verdict/governing.c.
 *        2 LW_DETAIL_VERDICT: a case that is settled is taken as settling left it. Any other detail holds it
 *          once more against what a sheet may say.
 *        3 Allocates nothing, opens nothing, prints nothing. */
lw_status lw_run(const lw_case *c, const lw_tables *tables, lw_detail detail, lw_result *result,
                 lw_error *error);

/** The three answers, from measured levels and distances and the checks.
 *  in    result   given, tables, wall, situations, fence, trench and influence, as lw_run fills them
 *        detail   before LW_DETAIL_EVERYTHING no sentence is made but those of the headline
 *  out   result   verdict */
void lw_verdict_reach(lw_result *result, lw_detail detail);

/** The check that governs, whole, at every detail.
 *  out   check   unchanged when false
 *  gives false where none governs */
bool lw_verdict_governing(const lw_result *result, lw_check *check);

/** What would make every deciding check hold, each change by itself or, where one is not enough, two
 *  together; and the unknown answers worth asking.
 *  Fills result->remedy and result->asking. scratch is a second result to run in.
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
