/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CHECK_KINDS_H
#define LOWWALL_CHECK_KINDS_H

#include <lowwall/tables.h>

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

/* What is to be known of a kind of check without making one. */
typedef struct lw_check_about {
  const char *slug;
  const char *title;          /* in a word or two, whichever the place: "pressed share" */
  const char *unit;           /* of demand and resistance on a contact */
  const char *demand, *resistance;  /* what they are, for the documents */
  lw_need needs, or_needs;    /* what a set of factors asks of it: the one or, at times, the other */
  const char *at[LW_AT_COUNT];  /* what it is called there, %d: number of the joint; NULL: not made there */
  const char *below_one;      /* what it means that it has less than 1, no partial factor in it; NULL: nothing
                                 moves yet */
  bool of_pressure;           /* it measures what is pressed, and where the resultant is outside nothing is */
  const char *theory;         /* its heading in docs/theory.md */
} lw_check_about;

/** The row of a kind.
 *  in    kind   below LW_CHECK_KIND_COUNT */
const lw_check_about *lw_check_about_of(lw_check_kind kind);

/** Its word in keys and on the command line. */
const char *lw_check_slug(lw_check_kind kind);

LW_PUBLIC_END

#endif
