/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "complete_load_name.h"

#include <string.h>

/* A load by name: its row gives the kind, the size and, where it is known, the width. What the sheet gives
 * itself stands. Where a named load stands is the worst place when nobody says: at the wall. */

static const struct {
  lw_load_kind kind;
  const char *word;
} KINDS[] = {
    [LW_LOAD_ROW_UNIFORM] = {LW_LOAD_UNIFORM, "uniform"},
    [LW_LOAD_ROW_STRIP] = {LW_LOAD_STRIP, "strip"},
    [LW_LOAD_ROW_LINE] = {LW_LOAD_LINE, "line"},
    [LW_LOAD_ROW_POINT] = {LW_LOAD_POINT, "point"},
    [LW_LOAD_ROW_CAP] = {LW_LOAD_CAP, "cap"},
    [LW_LOAD_ROW_PUSH] = {LW_LOAD_CAP, "cap"},
};

static bool absent(const lw_quantity *q) {
  return q->origin == LW_ABSENT;
}

/* True when the row may stand on a sheet and the kind given, if any, is its own. */
static bool complete_kind(lw_completing *s, const lw_load_row *row, lw_case_load *load) {
  lw_load_kind kind = KINDS[row->kind].kind;
  bool said = load->kind.origin == LW_GIVEN && load->kind.row != LW_WORKED_OUT_ROW;
  if (said && load->kind.value != (int)kind) {
    lw_complete_fault(s, LW_FAULT_CONTRADICTION, &load->kind, "%s, the kind of \"%s\", or no name",
                      KINDS[row->kind].word, row->slug);
    return false;
  }
  if (!said) {
    load->kind = (lw_choice){.value = (int)kind, .origin = LW_GIVEN, .row = LW_WORKED_OUT_ROW};
  }
  return true;
}

/* A row that gives a pressure a metre needs the height of what is stacked or held. */
static void complete_pressure(lw_completing *s, const lw_load_row *row, lw_case_load *load) {
  double value = row->value;
  if (!absent(&load->pressure)) {
    return;
  }
  if (strcmp(row->unit, "kPa/m") == 0) {
    if (!lw_given(&load->height)) {
      lw_complete_missing(s, &load->height, NULL, "how high it is stacked, or how deep the water stands");
      return;
    }
    value *= load->height.si;
  }
  load->pressure = lw_from_table(LW_KIND_PRESSURE, value, (int)(row - s->tables->load));
}

static void complete_edges(lw_completing *s, const lw_load_row *row, lw_case_load *load) {
  if (absent(&load->near_edge)) {
    load->near_edge = lw_assumed(LW_KIND_LENGTH, 0.0);
  }
  if (absent(&load->far_edge) && !isnan(row->width_m)) {
    load->far_edge =
        lw_from_table(LW_KIND_LENGTH, load->near_edge.si + row->width_m, (int)(row - s->tables->load));
  }
}

static void complete_force(lw_completing *s, const lw_load_row *row, lw_kind kind, lw_case_load *load) {
  int at = (int)(row - s->tables->load);
  if (row->kind == LW_LOAD_ROW_PUSH) {
    load->push = absent(&load->push) ? lw_from_table(LW_KIND_LINE_LOAD, row->value, at) : load->push;
    return;
  }
  if (absent(&load->force)) {
    load->force = lw_from_table(kind, row->value, at);
  }
  if (absent(&load->push) && !isnan(row->push_kn_per_m)) {
    load->push = lw_from_table(LW_KIND_LINE_LOAD, row->push_kn_per_m, at);
  }
}

bool lw_complete_load_name(lw_completing *s, lw_case_load *load) {
  const lw_load_row *row = lw_tables_load(s->tables, load->name.text);
  if (row == NULL) {
    lw_complete_unknown_row(s, &load->name, "loads");
    return false;
  }
  if (!complete_kind(s, row, load)) {
    return false;
  }
  bool at_distance = row->kind == LW_LOAD_ROW_LINE || row->kind == LW_LOAD_ROW_POINT;
  if (row->kind == LW_LOAD_ROW_UNIFORM || row->kind == LW_LOAD_ROW_STRIP) {
    complete_pressure(s, row, load);
  } else {
    complete_force(s, row, row->kind == LW_LOAD_ROW_POINT ? LW_KIND_FORCE : LW_KIND_LINE_LOAD, load);
  }
  if (row->kind == LW_LOAD_ROW_STRIP) {
    complete_edges(s, row, load);
  }
  if (at_distance && absent(&load->distance)) {
    load->distance = lw_assumed(LW_KIND_LENGTH, 0.0);
  }
  return true;
}

bool lw_load_by_the_metre(const lw_completing *s, const lw_case_load *load) {
  const lw_load_row *row = load->name.origin == LW_GIVEN ? lw_tables_load(s->tables, load->name.text) : NULL;
  return row != NULL && strcmp(row->unit, "kPa/m") == 0;
}
