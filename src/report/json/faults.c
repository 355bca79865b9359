/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "json.h"

enum { EXIT_BAD_INPUT = 2 };

static void add_fault(json_t *list, const lw_fault *fault) {
  json_t *entry = lw_json_entry(list);
  lw_json_set_text(entry, "slug", lw_fault_slug_name(fault->slug));
  lw_json_set_text(entry, "text", lw_fault_slug_sentence(fault->slug));
  lw_json_set_count(entry, "row", fault->row);
  lw_json_set_count(entry, "column", fault->column);
  lw_json_set_text(entry, "item", fault->item);
  lw_json_set_text(entry, "stood", fault->stood);
  lw_json_set_text(entry, "wanted", fault->wanted);
}

void lw_json_faults(json_t *root, const lw_faults *faults) {
  json_t *list = lw_json_list(root, "faults");
  for (int i = 0; i < faults->count; i++) add_fault(list, &faults->fault[i]);
}

static json_t *faults_object(const char *mark, const lw_faults *faults) {
  json_t *root = json_object();
  lw_json_set_text(root, "version", LW_VERSION);
  lw_json_set_count(root, "exit", EXIT_BAD_INPUT);
  lw_json_set_text(root, "file", faults->file);
  if (mark) lw_json_set_text(root, "mark", mark);
  lw_json_faults(root, faults);
  return root;
}

lw_status lw_report_faults_json(const lw_faults *faults, int indent, lw_text *out) {
  return lw_json_write(faults_object(NULL, faults), indent, out);
}

lw_status lw_report_row_faults_json(const lw_case *c, const lw_faults *faults, lw_text *out) {
  return lw_json_write(faults_object(c->about.mark.text, faults), 0, out);
}
