/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "likely.h"

static bool is_gap(char c) {
  return c == ' ' || c == '\t' || c == '-' || c == '_';
}

static bool is_letter(char c, char lower) {
  return c == lower || c == lower - 'a' + 'A';
}

size_t lw_likely_stem(const char *name, size_t length) {
  static const char word[] = "likely";
  const size_t of_word = sizeof word - 1;
  size_t end = length;
  while (end > 0 && is_gap(name[end - 1])) end--;
  if (end <= of_word || !is_gap(name[end - of_word - 1])) return length;
  for (size_t i = 0; i < of_word; i++)
    if (!is_letter(name[end - of_word + i], word[i])) return length;
  return end - of_word - 1;
}

/* Read by no check, wherever they stand among items that are. */
static const size_t UNREAD[] = {
    offsetof(lw_case, site.level_difference),      offsetof(lw_case, site.boundary_distance),
    offsetof(lw_case, site.building_distance),     offsetof(lw_case, site.public_way_distance),
    offsetof(lw_case, site.service_distance),      offsetof(lw_case, site.waterbody_distance),
    offsetof(lw_case, site.pool_barrier_distance), offsetof(lw_case, fence.soil_height),
    offsetof(lw_case, fence.post_spacing),         offsetof(lw_case, fence.post_depth),
    offsetof(lw_case, fence.post_width),           offsetof(lw_case, fence.post_moment),
    offsetof(lw_case, fence.post_section),         offsetof(lw_case, fence.board_thickness),
    offsetof(lw_case, fence.board_span),           offsetof(lw_case, fence.permanent_factor),
    offsetof(lw_case, ground.cut_depth),           offsetof(lw_case, ground.fill_depth),
    offsetof(lw_case, construction.bed_width),     offsetof(lw_case, method.influence_line),
};

bool lw_likely_is_read(const lw_item *item) {
  if (item->type != LW_ITEM_QUANTITY || item->part == LW_ABOUT_BUILDING) return false;
  /* Whether an outlet is buried, and what blocks lie on, are of the order and of the checks. */
  if (lw_item_is_of_order(item))
    return item->offset == offsetof(lw_case, order.outlet_length) ||
           item->offset == offsetof(lw_case, order.bedding_thickness);
  for (size_t i = 0; i < sizeof UNREAD / sizeof *UNREAD; i++)
    if (item->offset == UNREAD[i]) return false;
  return true;
}

/* Where it stands in the list; the count where it does not. */
static int find(const lw_item *item, int number, const lw_case *c) {
  size_t offset = lw_item_offset(item, number);
  int i = 0;
  while (i < c->likely.count && c->likely.value[i].offset != offset) i++;
  return i;
}

const lw_quantity *lw_item_likely(const lw_item *item, int number, const lw_case *c) {
  int at = find(item, number, c);
  return at < c->likely.count ? &c->likely.value[at].value : NULL;
}

static void forget(int at, lw_case *c) {
  if (at >= c->likely.count) return;
  c->likely.count--;
  for (int i = at; i < c->likely.count; i++) c->likely.value[i] = c->likely.value[i + 1];
}

lw_status lw_item_set_likely(const lw_item *item, int number, const lw_quantity *value, lw_case *c) {
  int at = find(item, number, c);
  if (value->origin == LW_ABSENT) {
    forget(at, c);
  } else {
    if (at >= LW_LIKELY_MAX) return LW_TOO_MANY;
    if (at == c->likely.count) c->likely.count++;
    c->likely.value[at] = (lw_likely_value){lw_item_offset(item, number), *value};
  }
  c->complete = false;
  return LW_OK;
}

void lw_likely_print_name(const lw_item *item, int number, char *out, size_t size) {
  char name[LW_ITEM_NAME_MAX];
  lw_item_print_name(item, number, name, sizeof name);
  lw_print(out, size, "%s" LW_LIKELY_SUFFIX, name);
}

/* The unit stays last. */
void lw_likely_print_key(const lw_item *item, int number, char *out, size_t size) {
  char name[LW_ITEM_NAME_MAX], key[LW_ITEM_NAME_MAX + 16];
  lw_item_print_name(item, number, name, sizeof name);
  lw_item_print_key(item, number, key, sizeof key);
  size_t stem = strlen(name);
  lw_print(out, size, "%.*s_likely%s", (int)stem, key, key + stem);
}

void lw_likely_put(lw_case *c) {
  for (int i = 0; i < c->likely.count; i++) {
    const lw_likely_value *one = &c->likely.value[i];
    *(lw_quantity *)(void *)((char *)c + one->offset) = one->value;
  }
}
