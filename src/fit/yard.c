/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "yard.h"

#include <math.h>
#include <string.h>

#include "remedies/typed.h"
#include "sheet/cells.h"
#include "sheet/complete_note.h"
#include "sheet/entry.h"
#include "sheet/schedule.h"
#include "sheet/taper.h"
#include "tables/fold.h"

/* The list of a yard: cells to blocks, every fault with its cell and the cure. */

const char *const lw_yard_items[LW_YARD_ITEMS] = {
    "block length", "block height",      "block depth",          "block mass",
    "setback",      "block tail length", "face shell thickness", "fill unit weight",
    "joint shear",  "key strength",      "joint friction",
};
enum { NEEDED_ITEMS = 4 }; /* the first of them */

typedef enum heading { NOTHING, NAME, PRICE, CURRENCY, ITEM } heading;
typedef struct column {
  heading heading;
  const lw_item *item;
  const lw_unit *unit;
} column;
enum { COLUMN_MAX = 64 };

typedef struct reading {
  lw_cells cells;
  const lw_tables *tables;
  lw_yard *yard;
  lw_faults *faults;
  bool has_header, bad_header, row_has_cells;
  int column_count, faults_before; /* the row */
  column column[COLUMN_MAX];
  lw_case c; /* of the row in hand */
  lw_yard_block block;
  bool priced;
} reading;

static const lw_item price_item = {.name = "price",
                                   .type = LW_ITEM_QUANTITY,
                                   .kind = LW_KIND_NUMBER,
                                   .low = 0.0,
                                   .high = 1e9,
                                   .unit = "",
                                   .example = "6.50"};

static void note(reading *r, lw_fault_slug slug, int row, int at, const char *stood, const char *wanted) {
  lw_faults_add(r->faults, slug, (lw_cell_place){row, at}, "", stood, "%s", wanted);
}

/* Yards write "depth" and "weight" for block depth and block mass. */
static const lw_item *item_of(const char *name, size_t length) {
  char folded[LW_FOLDED_MAX], whole[2 * LW_FOLDED_MAX];
  int number = 0;
  const lw_item *item = lw_item_find(name, length, &number);
  lw_fold(name, length, folded);
  lw_print(whole, sizeof whole, "block %s", strcmp(folded, "weight") == 0 ? "mass" : folded);
  if (item == NULL) item = lw_item_find(whole, strlen(whole), &number);
  for (int i = 0; item != NULL && i < LW_YARD_ITEMS; i++)
    if (strcmp(item->name, lw_yard_items[i]) == 0) return item;
  return NULL;
}

static int column_of(const reading *r, heading what, const lw_item *item) {
  for (int i = 0; i < r->column_count; i++)
    if (r->column[i].heading == what && r->column[i].item == item) return i + 1;
  return 0;
}

static heading heading_of(const char *name, size_t length) {
  char folded[LW_FOLDED_MAX];
  lw_fold(name, length, folded);
  if (strcmp(folded, "name") == 0 || strcmp(folded, "block") == 0) return NAME;
  if (strcmp(folded, "price") == 0) return PRICE;
  return strcmp(folded, "currency") == 0 ? CURRENCY : NOTHING;
}

static void take_currency(reading *r, const char *text, int row, int at) {
  if (r->yard->currency[0] == '\0')
    lw_print(r->yard->currency, sizeof r->yard->currency, "%s", text);
  else if (strncmp(r->yard->currency, text, sizeof r->yard->currency - 1) != 0)
    lw_faults_add(r->faults, LW_FAULT_CONTRADICTION, (lw_cell_place){row, at}, "currency", text,
                  "%s as before: prices in two currencies cannot be compared", r->yard->currency);
}

static void resolve(reading *r, const char *text, size_t length, int row, int at, column *col) {
  char unit[64];
  size_t name = lw_header_split(text, length, unit, sizeof unit);
  col->heading = heading_of(text, name);
  if (col->heading == PRICE && unit[0] != '\0') take_currency(r, unit, row, at);
  if (col->heading == NOTHING) {
    col->item = item_of(text, name);
    col->heading = col->item != NULL ? ITEM : NOTHING;
    if (col->item == NULL)
      note(r, LW_FAULT_UNKNOWN_ITEM, row, at, text,
           "name, length [mm], height [mm], depth [mm], mass [kg], price [currency], or setback and the like "
           "of a block");
    else
      lw_entry_unit(col->item, unit, row, at, &col->unit, r->faults);
  }
  if (col->heading != NOTHING && column_of(r, col->heading, col->item) > 0)
    note(r, LW_FAULT_DUPLICATE_ITEM, row, at, text, "one column of it");
}

static void header_cell(reading *r, const char *text, size_t length, int row, int at) {
  column col = {0};
  if (at > COLUMN_MAX) {
    note(r, LW_FAULT_TOO_MANY, row, at, text != NULL ? text : "", "at most 64 columns");
    return;
  }
  if (text != NULL && length > 0) resolve(r, text, length, row, at, &col);
  r->column[at - 1] = col;
  r->column_count = at;
}

static lw_entry entry_of(const reading *r, const column *col, const char *text, int row, int at) {
  return (lw_entry){.item = col->heading == PRICE ? &price_item : col->item,
                    .value = text,
                    .length = strlen(text),
                    .unit = col->unit,
                    .comma_is_decimal = r->cells.comma_is_decimal,
                    .row = row,
                    .column = at};
}

static void take_price(reading *r, const lw_entry *entry) {
  lw_measured price = {0};
  char wanted[200] = "";
  lw_fault_slug slug = lw_measure(entry, &price, wanted, sizeof wanted);
  r->priced = true;
  r->block.price = price.si;
  if (slug == LW_FAULT_SLUG_COUNT) return;
  bool number = slug == LW_FAULT_DECIMAL_COMMA;
  lw_faults_add(r->faults, slug, (lw_cell_place){entry->row, entry->column}, "price", entry->value, "%s",
                number ? wanted
                       : "a number from 0 on, as in 6.50; the currency stands in the header: price [AUD]");
}

static void take_value(reading *r, const column *col, const char *text, int row, int at) {
  lw_entry entry = entry_of(r, col, text, row, at);
  switch (col->heading) {
  case NAME: lw_print(r->block.name, sizeof r->block.name, "%s", text); break;
  case PRICE: take_price(r, &entry); break;
  case CURRENCY: take_currency(r, text, row, at); break;
  case ITEM: lw_entry_store(&entry, &r->c, r->faults); break;
  case NOTHING:
    note(r, LW_FAULT_CELL_COUNT, row, at, text,
         "nothing under a column without a name; a comma inside a cell needs quotation marks around it");
  }
}

static void take_cell(void *context, const char *text, size_t length, int row, int at) {
  static const column none = {0};
  reading *r = context;
  if (!r->has_header) {
    header_cell(r, text, length, row, at);
  } else if (!r->bad_header && (text == NULL || length > 0)) {
    if (!r->row_has_cells) r->faults_before = r->faults->count;
    r->row_has_cells = true;
    if (text != NULL) take_value(r, at <= r->column_count ? &r->column[at - 1] : &none, text, row, at);
  }
}

/* Without these nothing can be counted, weighed or paid for. */
static void hold_header(reading *r, int row) {
  bool there = column_of(r, NAME, NULL) > 0 && column_of(r, PRICE, NULL) > 0;
  for (int i = 0; i < NEEDED_ITEMS; i++)
    there = there && column_of(r, ITEM, item_of(lw_yard_items[i], strlen(lw_yard_items[i]))) > 0;
  if (!there)
    note(r, LW_FAULT_HEADER, row, 1, "",
         "a header with name, length [mm], height [mm], depth [mm], mass [kg] and price [currency]");
}

static lw_quantity *quantity(reading *r, int i, const lw_item **item) {
  *item = item_of(lw_yard_items[i], strlen(lw_yard_items[i]));
  return lw_item_quantity(*item, 0, &r->c);
}

/* A cell that could not be read has its fault already. */
static void needs(reading *r, lw_cell_place at, const char *item, const char *wanted) {
  for (int i = r->faults_before; i < r->faults->count; i++)
    if (r->faults->fault[i].row == at.row && r->faults->fault[i].column == at.column) return;
  lw_faults_add(r->faults, LW_FAULT_NO_VALUE, at, item, "", "%s", wanted);
}

static void hold_needed(reading *r, int row) {
  const lw_item *item;
  if (r->block.name[0] == '\0')
    needs(r, (lw_cell_place){row, column_of(r, NAME, NULL)}, "name", "the name to ask the yard for it by");
  for (int i = 0; i < NEEDED_ITEMS; i++) {
    char wanted[64];
    if (quantity(r, i, &item)->origin == LW_GIVEN) continue;
    lw_print(wanted, sizeof wanted, "a value, as in %s", item->example);
    needs(r, (lw_cell_place){row, column_of(r, ITEM, item)}, item->name, wanted);
  }
  if (!r->priced) needs(r, (lw_cell_place){row, column_of(r, PRICE, NULL)}, "price", "what one block costs");
}

/* What blocks are made of weighs no less than the lightest material on file and no more than the heaviest. */
static void weights_of_materials(const lw_tables *tables, double *low, double *high) {
  *low = INFINITY;
  *high = 0.0;
  for (int i = 0; i < tables->material_count; i++) {
    *low = fmin(*low, tables->material[i].unit_weight_low_kn_per_m3);
    *high = fmax(*high, tables->material[i].unit_weight_high_kn_per_m3);
  }
}

/* Metric ends of a range have the unit of the weight before them. */
static lw_amount end_of(lw_units units, double kn_per_m3) {
  lw_amount end = lw_complete_weight(units, kn_per_m3);
  if (units == LW_UNITS_METRIC) lw_print(end.text, sizeof end.text, "%.4g", kn_per_m3);
  return end;
}

/* A slip in a measure, or in its unit, shows in what a cubic metre would weigh. */
static void hold_mass(reading *r, int row) {
  const lw_unit *heavy = lw_unit_find(LW_KIND_UNIT_WEIGHT, "kg/m3", 5);
  const lw_item *item;
  const lw_quantity *mass = quantity(r, 3, &item);
  double weight = mass->si / lw_case_block_m3(&r->c, r->c.courses.block_depth.si) * heavy->to_si, low, high;
  weights_of_materials(r->tables, &low, &high);
  if (weight >= low && weight <= high) return;
  lw_faults_add(
      r->faults, LW_FAULT_OUT_OF_RANGE, (lw_cell_place){row, mass->column}, item->name, "",
      "a mass that fits the measures: so the block is of %s, and what is on file weighs %s to %s; look "
      "at mass, measures and units",
      lw_complete_weight(mass->in, weight).text, end_of(mass->in, low).text, end_of(mass->in, high).text);
}

/* What is tried is what is printed: each measure by the digits that a person would type. */
static void type_items(reading *r) {
  lw_yard_block *block = &r->block;
  const lw_item *item;
  for (int i = 0; i < LW_YARD_ITEMS; i++) {
    const lw_quantity *q = quantity(r, i, &item);
    const lw_unit *unit = lw_unit_find(item->kind, item->unit, strlen(item->unit));
    if (q->origin != LW_GIVEN) continue;
    block->items.units = q->in;
    if (q->in == LW_UNITS_US && q->kind == LW_KIND_LENGTH)
      lw_typed_put_mm(&block->items, item->name, q->si);
    else if (q->in == LW_UNITS_US)
      lw_typed_put_amount(&block->items, item->name, q->kind, q->si);
    else
      lw_typed_put(&block->items, item->name, item->unit[0] != '\0' ? "%.6g %s" : "%.6g%s",
                   q->si / (unit != NULL ? unit->to_si : 1.0), item->unit);
  }
  block->height_m = r->c.courses.block_height.si;
  block->depth_m = r->c.courses.block_depth.si;
  block->setback_given = r->c.courses.setback.origin == LW_GIVEN;
}

static void keep(reading *r, int row) {
  hold_needed(r, row);
  if (!lw_faults_more(r->faults, r->faults_before)) hold_mass(r, row);
  if (lw_faults_more(r->faults, r->faults_before)) return;
  if (r->yard->count >= LW_YARD_MAX) {
    lw_faults_add(r->faults, LW_FAULT_TOO_MANY, (lw_cell_place){row, 1}, "", r->block.name,
                  "at most %d blocks", LW_YARD_MAX);
    return;
  }
  type_items(r);
  r->block.row = row;
  r->yard->block[r->yard->count++] = r->block;
}

static void end_row(void *context, int row, int cells) {
  reading *r = context;
  if (!r->has_header) {
    r->has_header = cells > 0;
    if (r->has_header && r->faults->count == 0) hold_header(r, row);
    r->bad_header = r->faults->count > 0;
    return;
  }
  if (r->row_has_cells && !r->bad_header) keep(r, row);
  memset(&r->c, 0, sizeof r->c);
  r->block = (lw_yard_block){0};
  r->priced = r->row_has_cells = false;
}

lw_status lw_yard_read(const lw_tables *tables, const char *bytes, size_t length, lw_yard *yard,
                       lw_faults *faults) {
  reading r = {.tables = tables, .yard = yard, .faults = faults};
  r.cells.context = &r;
  r.cells.cell = take_cell;
  r.cells.row_end = end_row;
  r.cells.faults = faults;
  memset(yard, 0, sizeof *yard);
  lw_cells_open(&r.cells);
  lw_cells_feed(&r.cells, bytes, length);
  lw_cells_finish(&r.cells);
  lw_cells_close(&r.cells);
  if (faults->count == 0 && !r.has_header)
    note(&r, LW_FAULT_EMPTY, 1, 1, "", "a header and a row a block");
  else if (faults->count == 0 && yard->count == 0)
    note(&r, LW_FAULT_NO_ROWS, 0, 0, "", "a row a block");
  return faults->count > 0 ? LW_FAULTS : LW_OK;
}
