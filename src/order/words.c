/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/order.h>

/* The slugs of what an order holds; its sentences are the report's. */

#define SLUG_OF(name, slug) slug,
#define LINE_SLUG_OF(name, slug, unit) slug,
#define LINE_UNIT_OF(name, slug, unit) LW_UNIT_##unit,

const char *lw_cut_slug(lw_cut_kind kind) {
  static const char *const slugs[] = {"closer", "mitred-unit", "cap", "mitred-cap", "wedge-cap", "half"};
  return slugs[kind];
}

const char *lw_stock_slug(lw_stock stock) {
  static const char *const slugs[] = {"block", "base-block", "cap"};
  return slugs[stock];
}

const char *lw_corner_slug(lw_corner_made made) {
  static const char *const slugs[] = {"turned", "cut", "handed"};
  return slugs[made];
}

const char *lw_order_note_slug(lw_order_note_kind kind) {
  static const char *const slugs[] = {LW_ORDER_NOTES(SLUG_OF)};
  return slugs[kind];
}

const char *lw_order_line_slug(lw_line_kind kind) {
  static const char *const slugs[] = {LW_ORDER_LINES(LINE_SLUG_OF)};
  return slugs[kind];
}

lw_line_unit lw_order_line_unit(lw_line_kind kind) {
  static const lw_line_unit units[] = {LW_ORDER_LINES(LINE_UNIT_OF)};
  return units[kind];
}

const char *lw_line_unit_slug(lw_line_unit unit) {
  static const char *const slugs[] = {LW_LINE_UNITS(SLUG_OF)};
  return slugs[unit];
}
