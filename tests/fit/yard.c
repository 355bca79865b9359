/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <criterion/criterion.h>

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "fit/yard.h"

#include "../sheet/support.h"

/* Faulty lists: each fault names its cell. Lists that differ in form only are the same list. */

#define HEAD "name,length [mm],height [mm],depth [mm],mass [kg],price [AUD]\n"

static lw_status read_list(const char *list, lw_yard *yard, lw_faults *faults) {
  *faults = (lw_faults){.count = 0};
  return lw_yard_read(sheet_test_tables(), list, strlen(list), yard, faults);
}

Test(yard, faults_name_their_cells) {
  static const struct {
    const char *list;
    lw_fault_slug slug;
    int row, column;
  } cases[] = {
      {"", LW_FAULT_EMPTY, 1, 1},
      {HEAD, LW_FAULT_NO_ROWS, 0, 0},
      {HEAD "\n,,,,,\n", LW_FAULT_NO_ROWS, 0, 0},
      {"name,price\nA,5\n", LW_FAULT_HEADER, 1, 1},
      {"name,colour\nA,grey\n", LW_FAULT_UNKNOWN_ITEM, 1, 2},
      {"name,length [mm],length [m]\n", LW_FAULT_DUPLICATE_ITEM, 1, 3},
      {"name,course count\n", LW_FAULT_UNKNOWN_ITEM, 1, 2},
      {"name,length [kg]\n", LW_FAULT_WRONG_UNIT, 1, 2},
      {HEAD "A,300,200,300,400,6\n", LW_FAULT_OUT_OF_RANGE, 2, 5},
      {HEAD "A,300,200,300,40,6\nB,300,200,300,1,6\n", LW_FAULT_OUT_OF_RANGE, 3, 5},
      {HEAD "A,,200,300,40,6\n", LW_FAULT_NO_VALUE, 2, 2},
      {HEAD ",300,200,300,40,6\n", LW_FAULT_NO_VALUE, 2, 1},
      {HEAD "A,300,200,300,40,\n", LW_FAULT_NO_VALUE, 2, 6},
      {HEAD "A,300,200,300,40,$6\n", LW_FAULT_NOT_A_NUMBER, 2, 6},
      {HEAD "A,300,200,300,40,-6\n", LW_FAULT_OUT_OF_RANGE, 2, 6},
      {HEAD "A,300,200 in,300,40,6\n", LW_FAULT_TWO_UNITS, 2, 3},
      {HEAD "A,300,200,thick,40,6\n", LW_FAULT_NOT_A_NUMBER, 2, 4},
      {HEAD "A,300,200,300,40,6,5\n", LW_FAULT_CELL_COUNT, 2, 7},
      {"name,length [mm],height [mm],depth [mm],mass [kg],price,currency\nA,300,200,300,40,6,AUD\n"
       "B,300,200,300,40,6,EUR\n",
       LW_FAULT_CONTRADICTION, 3, 7},
      {"name,length [mm],height [mm],depth [mm],mass [kg],price,currency\nA,300,200,300,40,6,AUD\n"
       "B,300,200,300,40,6,AED\n",
       LW_FAULT_CONTRADICTION, 3, 7},
      {HEAD "A,300,200,300,40,\"6\n", LW_FAULT_QUOTING, 2, 6},
  };
  lw_yard *yard = calloc(1, sizeof *yard);
  lw_faults faults;
  cr_assert_not_null(yard);
  for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
    cr_expect_eq(read_list(cases[i].list, yard, &faults), LW_FAULTS, "%s", cases[i].list);
    cr_expect_eq(faults.count, 1, "%s: %d faults", cases[i].list, faults.count);
    const lw_fault *f = &faults.fault[0];
    cr_expect(f->slug == cases[i].slug && f->row == cases[i].row && f->column == cases[i].column,
              "%s: %s at %d, %d", cases[i].list, lw_fault_slug_name(f->slug), f->row, f->column);
    cr_expect(f->wanted[0] != '\0');
  }
  free(yard);
}

/* Softwood weighs 3.5 kN/m3 and basalt up to 31 [EN1991-1-1 T.A.3, T.A.2]: no block is lighter or heavier. */
Test(yard, a_block_of_no_material_is_refused) {
  static const struct {
    double weight;
    lw_status status;
  } cases[] = {{2.0, LW_FAULTS}, {3.4, LW_FAULTS}, {3.6, LW_OK},
               {12.0, LW_OK},    {30.9, LW_OK},    {31.1, LW_FAULTS}};
  static const double KN_PER_KG = 0.00980665;
  lw_yard *yard = calloc(1, sizeof *yard);
  lw_faults faults;
  cr_assert_not_null(yard);
  for (size_t i = 0; i < sizeof cases / sizeof *cases; i++) {
    char list[160];
    lw_print(list, sizeof list, HEAD "A,400,200,300,%.3f,6\n", cases[i].weight * 0.4 * 0.2 * 0.3 / KN_PER_KG);
    cr_expect_eq(read_list(list, yard, &faults), cases[i].status, "%g kN/m3", cases[i].weight);
    if (cases[i].status == LW_OK) continue;
    cr_expect_eq(faults.fault[0].column, 5);
    cr_expect_not_null(strstr(faults.fault[0].wanted, "3.5 to 31"), "%s", faults.fault[0].wanted);
  }
  free(yard);
}

/* A row with any of its cells empty, as many rows as fill the list of faults and go on: no block is kept that
 * misses a measure, a mass, a name or a price. */
Test(yard, no_block_is_kept_that_misses_something) {
  static const char *const CELLS[] = {"A", "400", "200", "300", "50", "6"};
  enum { COUNT = sizeof CELLS / sizeof *CELLS, EVERY = 1 << COUNT, TIMES = 3 };
  lw_yard *yard = calloc(1, sizeof *yard);
  lw_text list = {0};
  lw_faults faults;
  cr_assert_not_null(yard);
  lw_text_add(&list, HEAD);
  for (int row = 0; row < TIMES * EVERY; row++)
    for (int i = 0; i < COUNT; i++)
      lw_text_addf(&list, "%s%s", row >> i & 1 ? CELLS[i] : "", i + 1 < COUNT ? "," : "\n");
  cr_expect_eq(read_list(list.data, yard, &faults), LW_FAULTS);
  cr_expect_eq(faults.count, LW_FAULT_MAX);
  for (int i = 0; i < yard->count; i++) {
    const lw_yard_block *b = &yard->block[i];
    cr_expect(b->name[0] != '\0' && b->height_m > 0.0 && b->depth_m > 0.0 && b->items.count == 4 &&
                  b->price > 0.0,
              "row %d is kept with %d items", b->row, b->items.count);
  }
  lw_text_free(&list);
  free(yard);
}

Test(yard, forms_of_one_list) {
  static const char *const lists[] = {
      HEAD "\"Block, grey\",300,200,450,63.5,11.25\n",
      "price [AUD],Block mass,block depth,height,length,name\r\n11.25,63.5 kg,45 cm,0.2 m,300 mm,\"Block, "
      "grey\"\r\n\r\n",
      "name;length [m];height [m];depth [m];mass [kg];price;currency\nBlock, "
      "grey;0,3;0,2;0,45;63,5;11,25;AUD\n",
      "Name,Length [mm],Height [mm],Depth [mm],Weight [kg],Price [AUD]\n\"Block, "
      "grey\",300,200,450,63.5,11.25\n",
  };
  lw_yard *first = calloc(2, sizeof *first), *yard = first + 1;
  lw_faults faults;
  cr_assert_not_null(first);
  cr_assert_eq(read_list(lists[0], first, &faults), LW_OK);
  cr_expect_str_eq(first->block[0].items.item[2], "block depth=450 mm");
  for (size_t i = 0; i < sizeof lists / sizeof *lists; i++) {
    cr_assert_eq(read_list(lists[i], yard, &faults), LW_OK, "%s: %s", lists[i], faults.fault[0].wanted);
    cr_assert_eq(yard->count, 1);
    cr_expect_str_eq(yard->currency, "AUD");
    cr_expect_str_eq(yard->block[0].name, "Block, grey");
    cr_expect(fabs(yard->block[0].price - 11.25) < 1e-12);
    cr_expect_eq(yard->block[0].items.count, first->block[0].items.count);
    for (int k = 0; k < yard->block[0].items.count; k++)
      cr_expect_str_eq(yard->block[0].items.item[k], first->block[0].items.item[k]);
  }
  free(first);
}
