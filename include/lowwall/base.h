/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_H
#define LOWWALL_BASE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

/* Every public header declares between these two: C linkage, and names that the shared library shows. What
 * is declared elsewhere is the library's own. */
#if defined(__GNUC__)
#define LW_SHOWN_FROM_HERE _Pragma("GCC visibility push(default)")
#define LW_SHOWN_TO_HERE _Pragma("GCC visibility pop")
#else
#define LW_SHOWN_FROM_HERE
#define LW_SHOWN_TO_HERE
#endif
#ifdef __cplusplus
/* clang-format off */
#define LW_PUBLIC_BEGIN extern "C" { LW_SHOWN_FROM_HERE
#define LW_PUBLIC_END LW_SHOWN_TO_HERE }
/* clang-format on */
#else
#define LW_PUBLIC_BEGIN LW_SHOWN_FROM_HERE
#define LW_PUBLIC_END LW_SHOWN_TO_HERE
#endif

LW_PUBLIC_BEGIN

#define LW_VERSION "0.1.0"

/* How far a run goes; each goes as far as those before it. */
typedef enum lw_detail {
  LW_DETAIL_VERDICT,    /* what stands, who must see it, the check that governs, the headline */
  LW_DETAIL_CHECKS,     /* every check in every situation */
  LW_DETAIL_EVERYTHING, /* all that a report says: reasons, forces, pressures, studies */
  LW_DETAIL_WORKING     /* and every step, told to a recorder */
} lw_detail;

/* The outcomes of a function that can fail: name, slug, sentence. */
#define LW_STATUSES(X) \
  X(OK, "ok", "done") \
  X(NO_SOLUTION, "no-solution", "the formula has no answer for these values") \
  X(FAULTS, "faults", "the input has faults") \
  X(TOO_MANY, "too-many", "more parts than lowwall has room for") \
  X(NO_MEMORY, "no-memory", "out of memory") \
  X(NOT_READ, "not-read", "the file could not be read") \
  X(NOT_WRITTEN, "not-written", "the output could not be written")

typedef enum lw_status {
#define LW_STATUS_NAME(name, slug, sentence) LW_##name,
  LW_STATUSES(LW_STATUS_NAME)
#undef LW_STATUS_NAME
} lw_status;

/* Why a number is missing or a check cannot be shown: name, slug, sentence.
 * One list for the code, the JSON and the documents. */
#define LW_REASONS(X) \
  X(NONE, "none", "") \
  X(NO_DEMAND, "no-demand", "nothing pushes this way") \
  X(NO_DEPTH, "no-depth", "the block depth or base width is not known, and nobody can guess it for you") \
  X(NO_WEIGHT, "no-weight", "no weight bears on this joint or base") \
  X(OUTSIDE_BASE, "outside-base", "the resultant falls outside the base or joint: it would tip") \
  X(STEEPER_THAN_FRICTION, "steeper-than-friction", \
    "the ground is steeper than the soil's own angle of friction") \
  X(NO_WEDGE, "no-wedge", "no wedge of soil is critical") \
  X(NO_SEISMIC_WEDGE, "no-seismic-wedge", \
    "in this earthquake the ground slides by itself: friction less slope is below the earthquake's angle") \
  X(ANGLE_OUT_OF_RANGE, "angle-out-of-range", "an angle is outside the range of the formula") \
  X(OUT_OF_RANGE, "out-of-range", "a value is outside the range of the formula") \
  X(FRONT_SLOPE, "front-slope", "the ground falls away in front, and bearing values are of level ground") \
  X(NO_BEARING_VALUE, "no-bearing-value", "no bearing value may be assumed for this ground") \
  X(REFUSED_BACKFILL, "refused-backfill", "this soil is refused as backfill") \
  X(BUILDING_BEHIND, "building-behind", "a building is not a retaining wall") \
  X(FENCE_ON_WALL, "fence-on-wall", "a fence on a dry block wall is not checked here") \
  X(FENCE_SOIL, "fence-soil", \
    "the ground rises towards the fence, and how high it stands there is not given") \
  X(RELIES_ON_BOND, "relies-on-bond", "not checked: relies on its bond") \
  X(NO_COURSES, "no-courses", "the wall is not laid course by course") \
  X(NO_STAND_OFF, "no-stand-off", "no distance is enough: a layer of earth alone moves the newest course") \
  X(NOT_FOR_DECISIONS, "not-for-decisions", "this set of factors is from memory and not for decisions") \
  X(PROPOSED_FACTORS, "proposed-factors", "this set of factors is a proposal and not for decisions") \
  X(PART_OF_FACTOR_SET, "part-of-format", \
    "this set is one part of its code: the other parts must hold as well") \
  X(NO_PAD, "no-pad", "no pad is given") \
  X(NO_REQUIREMENT, "no-requirement", "this set of factors asks for nothing here") \
  X(UNDERMINED, "undermined", "a trench in front is dug down beside or under the base") \
  X(NO_SEEPAGE_FORM, "no-seepage-form", \
    "the form on file is for level ground, one soil without cohesion and a drain on an upright plane") \
  X(WEDGE_DISAGREES, "wedge-disagrees", "formula and trial wedges disagree: do not use this result") \
  X(NOT_FINITE, "not-finite", "a value in it is no number: do not use this result") \
  X(NO_PUSH, "no-push", "soil stands behind and no push was found for it: do not use this result") \
  X(NO_WEDGE_AT_REST, "no-wedge-at-rest", "earth pressure at rest has no failure wedge to compare with") \
  X(NO_CIRCLE, "no-circle", "no circle below the wall has an answer") \
  X(GIVEN_NUMBER, "given-number", \
    "a number is given for a factor, and this set or this earthquake changes what it belongs to") \
  X(NO_WEDGE_GIVEN, "no-wedge-given", "a coefficient that is given has no failure wedge to compare with") \
  X(NO_LOADS_GIVEN, "no-loads-given", \
    "a coefficient that is given says nothing of loads at a distance by the wedge alone") \
  X(ONE_WALL, "one-wall", "the other wall stands so near that both are one wall, which is not checked as two")

typedef enum lw_reason {
#define LW_REASON_NAME(name, slug, sentence) LW_REASON_##name,
  LW_REASONS(LW_REASON_NAME)
#undef LW_REASON_NAME
      LW_REASON_COUNT
} lw_reason;

/** Slug and sentence of a status or reason, from the one list. */
const char *lw_status_slug(lw_status status);
const char *lw_status_sentence(lw_status status);
const char *lw_reason_slug(lw_reason reason);
const char *lw_reason_sentence(lw_reason reason);

/* What a failing function leaves behind for its caller. As with all structs that a caller begins, {0} is an
 * empty one: in C++ too, and so no enumeration stands first. */
typedef struct lw_error {
  char text[256]; /* one sentence, no newline */
  lw_status status;
  lw_reason reason;
} lw_error;

/** Fill an error, printf-like; error may be NULL. Returns status, so that a caller can write
 *  `return lw_error_set(error, LW_NOT_READ, LW_REASON_NONE, "...")`. */
lw_status lw_error_set(lw_error *error, lw_status status, lw_reason reason, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 4, 5)))
#endif
    ;

/* A growing text, the one thing in the library that owns memory. */
typedef struct lw_text {
  char *data; /* NUL-terminated; NULL while empty */
  size_t length;
  size_t capacity;
  bool failed; /* out of memory or over the ceiling: what follows is dropped */
} lw_text;

#define LW_TEXT_CEILING ((size_t)256 * 1024 * 1024)

/** Add to a text: a string, bytes, or printf-like. A text that has failed stays as it is. */
void lw_text_add(lw_text *text, const char *string);
void lw_text_add_bytes(lw_text *text, const char *bytes, size_t count);
void lw_text_addf(lw_text *text, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 2, 3)))
#endif
    ;
void lw_text_clear(lw_text *text); /* keeps the memory, and a failure */
void lw_text_free(lw_text *text);

/* Numbers as text, independent of the host's locale: so are lw_text_addf, lw_error_set, lw_working_step. */

/** snprintf with `.` as the decimal mark whatever the host's locale. gives the length wanted, or < 0 */
int lw_print(char *out, size_t size, const char *format, ...)
#if defined(__GNUC__)
    __attribute__((format(printf, 3, 4)))
#endif
    ;

/** Read one decimal number from bytes: sign, digits, `.`, exponent; the whole of it or nothing.
 *  in    bytes, length
 *  out   value        unchanged on failure
 *  gives true when all bytes form one finite number */
bool lw_number_read(const char *bytes, size_t length, double *value);

/** Print a number into out, `-0.00` as `0.00`, always with `.`.
 *  in    value      any; what is no number, or no finite one, is n/a
 *        decimals   0 to 9; others count as the nearer of these
 *  gives the length written, without the NUL */
size_t lw_number_print(char *out, size_t size, double value, int decimals);

/* Room for a SHA-256 in hexadecimal digits, and a NUL. */
enum { LW_HASH_HEX = 65 };

#define LW_DEG_PER_RAD (180.0 / 3.14159265358979323846)

/* What a number is. The SI unit that the library computes in is in brackets. */
typedef enum lw_kind {
  LW_KIND_NUMBER,         /* pure number */
  LW_KIND_COUNT,          /* whole number */
  LW_KIND_SHARE,          /* pure number or per cent */
  LW_KIND_LENGTH,         /* [m] */
  LW_KIND_ANGLE,          /* [rad]; deg, rad, or a slope rise:run */
  LW_KIND_ANGLE_OR_SHARE, /* [rad], or a share of another angle */
  LW_KIND_PRESSURE,       /* [kPa] */
  LW_KIND_LINE_LOAD,      /* [kN/m] */
  LW_KIND_FORCE,          /* [kN] */
  LW_KIND_UNIT_WEIGHT,    /* [kN/m3] */
  LW_KIND_MASS,           /* [kg] */
  LW_KIND_MOMENT,         /* [kN m/m], results only */
  LW_KIND_POST_MOMENT,    /* [kN m] of one post */
  LW_KIND_VOLUME,         /* [m3] */
  LW_KIND_AREA            /* [m2], results only */
} lw_kind;

/* What a person measures in. The library computes in SI whichever it is. */
typedef enum lw_units {
  LW_UNITS_METRIC,
  LW_UNITS_US /* feet and inches, pounds */
} lw_units;

typedef struct lw_unit {
  const char *name; /* as written on a sheet: mm, psf, lb/ft */
  lw_kind kind;
  double to_si; /* multiply by this; exact */
  lw_units of;  /* who measures in it; metric for what everybody uses: deg, % */
} lw_unit;

/** The unit of that name (case as written, blanks ignored), or NULL. 9.80665 m/s2 turns mass into weight. */
const lw_unit *lw_unit_find(lw_kind kind, const char *name, size_t length);
/** The i-th unit of all, or NULL past the end: to list them. */
const lw_unit *lw_unit_at(size_t index);
/** The SI unit's name, for reports ("m", "kPa", "" for pure numbers). */
const char *lw_kind_unit(lw_kind kind);

/* The recorder of the working: one step of a calculation, as a student would write it. */
typedef struct lw_step {
  const char *symbol;   /* "Ka" */
  const char *formula;  /* "(1 - sin phi)/(1 + sin phi)" */
  const char *inserted; /* "(1 - sin 30)/(1 + sin 30)" */
  double value;
  const char *unit;   /* "" for a pure number */
  const char *source; /* "[KEY locator]" or "" */
} lw_step;

/* A recorder hands each step on; the strings live only during the call. NULL recorder: nothing happens. */
typedef struct lw_working {
  void *context;
  void (*heading)(void *context, const char *title);
  void (*step)(void *context, const lw_step *step);
  void (*line)(void *context, const lw_step *step); /* one that is short; NULL: as any other */
  void (*row)(void *context, const char *text);     /* of a table, as it is printed */
  lw_units units;                                   /* those that steps and rows are told in */
} lw_working;

/* A number that may be missing; whoever leaves it out gives the reason beside it. */
typedef struct lw_number {
  double value;
  bool known;
} lw_number;

LW_PUBLIC_END

#endif
