/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "replies.h"
#include "wall.h"
#include "base/amount.h"
#include "report/order/report.h"

/* The order as a list to tick off, the pegs with their levels and the order of work; both as a page, too. */

enum { COLUMNS = 80 };

/* Pieces and bags are counted, all else is measured; what is sold by the volume is weighed by the tonne. */
static void put_quantity(json_t *entry, lw_units units, const lw_order_line *line) {
  lw_line_unit unit = lw_order_line_unit(line->kind);
  lw_kind kind = lw_line_unit_kind(unit);
  char quantity[48], mass[48] = "";
  bool whole = unit == LW_UNIT_PIECES || unit == LW_UNIT_BAGS;
  if (unit == LW_UNIT_TONNES && units == LW_UNITS_US)
    lw_print(quantity, sizeof quantity, "%s",
             lw_amount_of(units, LW_KIND_MASS, line->order * 1000.0, 0).text);
  else if (kind == LW_KIND_COUNT)
    lw_print(quantity, sizeof quantity, whole ? "%.0f %s" : "%.2f %s", line->order, lw_line_unit_slug(unit));
  else
    lw_print(quantity, sizeof quantity, "%s", lw_amount_of(units, kind, line->order, 2).text);
  if (line->mass_kg > 0.0 && unit == LW_UNIT_M3 && units == LW_UNITS_METRIC)
    lw_print(mass, sizeof mass, "%.2f t", line->mass_kg / 1000.0);
  else if (line->mass_kg > 0.0)
    lw_print(mass, sizeof mass, "%s", lw_amount_of(units, LW_KIND_MASS, line->mass_kg, 0).text);
  lw_json_set_text(entry, "quantity", quantity);
  lw_json_set_text(entry, "mass", mass);
}

static void put_lines(json_t *reply, const lw_order *order) {
  json_t *list = lw_json_list(reply, "lines");
  for (int i = 0; i < order->line_count; i++) {
    char name[LW_LINE_NAME], note[LW_LINE_NOTE];
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "name", lw_order_line_name(&order->line[i], order->units, name));
    lw_json_set_text(entry, "note", lw_order_line_note(&order->line[i], order->units, note));
    put_quantity(entry, order->units, &order->line[i]);
  }
}

static void put_notes(json_t *reply, const lw_order *order) {
  json_t *list = lw_json_list(reply, "notes");
  for (int i = 0; i < order->note_count; i++) {
    char words[LW_ORDER_SENTENCE];
    lw_json_append(list, json_string(lw_order_note_words(order, &order->note[i], words)));
  }
}

static lw_amount place(lw_units units, double length_m) {
  return lw_metres(units, lw_order_level(length_m), 3);
}

static void put_pegs(json_t *reply, lw_units units, const lw_setting_out *setting_out) {
  char name[LW_SPOT_NAME], words[160];
  json_t *pegs = lw_json_list(reply, "pegs"), *levels = lw_json_list(reply, "levels");
  for (int i = 0; i < setting_out->peg_count; i++) {
    const lw_peg *peg = &setting_out->peg[i];
    json_t *entry = lw_json_entry(pegs);
    lw_json_set_text(entry, "peg", lw_peg_name(peg, name));
    lw_print(words, sizeof words, "%s along, %s towards the soil, level %s", place(units, peg->at.x_m).text,
             place(units, peg->at.y_m).text, place(units, peg->level_m).text);
    lw_json_set_text(entry, "words", words);
  }
  for (int i = 0; i < setting_out->level_count; i++) {
    json_t *entry = lw_json_entry(levels);
    lw_json_set_text(entry, "level", place(units, setting_out->level[i].level_m).text);
    lw_json_set_text(entry, "words", lw_level_name(&setting_out->level[i], name));
  }
}

static void put_work(json_t *reply, const lw_result *result, const lw_order *order) {
  json_t *list = lw_json_list(reply, "work");
  for (int i = 0; i < order->work_count; i++) {
    char words[LW_ORDER_SENTENCE];
    json_t *entry = lw_json_entry(list);
    lw_json_set_text(entry, "words",
                     lw_work_words(order, &order->work[i], result->construction.plant.name, words));
    lw_json_set_text(entry, "stop", order->work[i].hold ? "Stop and look" : "");
  }
}

static lw_status make(lw_request *asked, lw_order_page page) {
  const lw_request_wall *wall;
  lw_text text = {0};
  lw_text_style style = {.columns = COLUMNS};
  lw_status status = lw_request_run_order(asked, &wall);
  if (status == LW_OK) status = lw_report_order_text(&wall->result, &wall->order, page, &style, &text);
  if (status == LW_OK && page == LW_PAGE_ORDER) put_lines(asked->reply, &wall->order);
  if (status == LW_OK && page == LW_PAGE_PEGS) {
    put_pegs(asked->reply, wall->result.units, &wall->order.setting_out);
    put_work(asked->reply, &wall->result, &wall->order);
  }
  if (status == LW_OK) put_notes(asked->reply, &wall->order);
  lw_reply_put(asked->reply, "text", &text);
  return status;
}

lw_status lw_reply_order(lw_request *asked) {
  return make(asked, LW_PAGE_ORDER);
}

lw_status lw_reply_pegs(lw_request *asked) {
  return make(asked, LW_PAGE_PEGS);
}
