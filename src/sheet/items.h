/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_SHEET_ITEMS_H
#define LOWWALL_SHEET_ITEMS_H

#include <math.h>
#include <stddef.h>
#include <string.h>

#include <lowwall/sheet.h>

#include "tables/fold.h"

/* The one table of items stands in items_*.c, a file a few parts of the vocabulary. These words keep a row
 * short: what the item is and where it lies in lw_case. */
#define QUANTITY(k, field) .type = LW_ITEM_QUANTITY, .kind = (k), .offset = offsetof(lw_case, field)
#define COUNT(field) QUANTITY(LW_KIND_COUNT, field)
#define NUMBER(field) QUANTITY(LW_KIND_NUMBER, field)
#define SHARE(field) QUANTITY(LW_KIND_SHARE, field)
#define LENGTH(field) QUANTITY(LW_KIND_LENGTH, field)
#define ANGLE(field) QUANTITY(LW_KIND_ANGLE, field)
#define PRESSURE(field) QUANTITY(LW_KIND_PRESSURE, field)
#define WEIGHT(field) QUANTITY(LW_KIND_UNIT_WEIGHT, field)
#define CHOICE(field, list) .type = LW_ITEM_CHOICE, .words = (list), .offset = offsetof(lw_case, field)
#define WORDS(field) .type = LW_ITEM_WORDS, .offset = offsetof(lw_case, field)
#define YES_NO(field) CHOICE(field, "no=n=false|yes=y=true")
#define EACH_SOIL .stride = sizeof(lw_case_soil), .repeats = LW_SOIL_MAX
#define EACH_LOAD .stride = sizeof(lw_case_load), .repeats = LW_LOAD_MAX
#define EACH_POINT .stride = sizeof(lw_case_point), .repeats = LW_POINT_MAX

#define RANGE(from, to) .low = (from), .high = (to)
#define DEGREES(d) ((d)*3.14159265358979323846 / 180.0)
#define MOST_FRICTION DEGREES(75)

typedef struct lw_item_group {
  const lw_item *item;
  size_t count;
} lw_item_group;

/* Through all items, in the order of the vocabulary: of what a schedule does to each row this is the most. */
typedef struct lw_item_walk {
  size_t group, index;
} lw_item_walk;

extern const lw_item_group lw_items_site;    /* heading, site */
extern const lw_item_group lw_items_officer; /* what an officer asks besides */
extern const lw_item_group lw_items_fence;   /* fence, wind, posts, boards */
extern const lw_item_group lw_items_wet;     /* storm and trench */
extern const lw_item_group lw_items_wall;    /* wall, courses, section, pad */
extern const lw_item_group lw_items_ground;  /* ground, soil n, footing, water */
extern const lw_item_group lw_items_load;    /* load n */
extern const lw_item_group lw_items_seismic;
extern const lw_item_group lw_items_construction; /* building it */
extern const lw_item_group lw_items_method;
extern const lw_item_group lw_items_order; /* plan, order */
extern const lw_item_group lw_items_saw;   /* order: cuts and carrying */

enum { LW_ITEM_NAME_MAX = LW_FOLDED_MAX, LW_ITEM_GROUPS = 12 };
extern const lw_item_group *const lw_item_groups[LW_ITEM_GROUPS];

/* NULL after the last */
static inline const lw_item *lw_item_next(lw_item_walk *walk) {
  for (; walk->group < LW_ITEM_GROUPS; walk->group++, walk->index = 0) {
    const lw_item_group *group = lw_item_groups[walk->group];
    if (walk->index < group->count) {
      return &group->item[walk->index++];
    }
  }
  return NULL;
}

/* Where a value lies in its case; number: n of a repeated part, else 0. */
static inline size_t lw_item_offset(const lw_item *item, int number) {
  return item->offset + (number > 1 ? item->stride * (size_t)(number - 1) : 0);
}

static inline void *lw_item_place(const lw_item *item, int number, lw_case *c) {
  return (char *)c + lw_item_offset(item, number);
}

/* The item that lies at this offset of a case, of one group or of all; NULL: none. */
const lw_item *lw_item_in(const lw_item_group *group, size_t offset, int *number);
const lw_item *lw_item_at_offset(size_t offset, int *number);

/* Of the plan and the order, which lw_case_complete leaves alone. */
static inline bool lw_item_is_of_order(const lw_item *item) {
  return item->part == LW_ABOUT_PLAN || item->part == LW_ABOUT_ORDER;
}

/* One value, by sizes that the compiler knows: a schedule copies each three times. */
static inline void lw_item_copy_value(const lw_item *item, void *to, const void *from) {
  switch (item->type) {
  case LW_ITEM_QUANTITY: memcpy(to, from, sizeof(lw_quantity)); break;
  case LW_ITEM_CHOICE: memcpy(to, from, sizeof(lw_choice)); break;
  case LW_ITEM_WORDS: memcpy(to, from, sizeof(lw_words)); break;
  }
}

/* A length, a load, a weight that the sheet tells, and not nothing: nothing is nothing in any unit. */
bool lw_is_measured(const lw_quantity *q);

/* The item nearest to what stood there, its number put in; false when nothing is near. */
bool lw_item_nearest(const char *stood, char *out, size_t size);

/* The value of a choice's word, folded, or -1. */
int lw_item_word_value(const lw_item *item, const char *folded);

/* How many words a choice has. */
int lw_item_word_count(const lw_item *item);

/* The words of a choice, for a sentence: "courses, section". */
void lw_item_list_words(const lw_item *item, char *out, size_t size);

/* May the item be this? Its range, a share's own, and whole numbers where it counts. */
bool lw_item_takes_value(const lw_item *item, lw_kind kind, double si);

/** The item's value of one case into another, with where it came from. */
void lw_item_copy(const lw_item *item, int number, const lw_case *from, lw_case *to);

#endif
