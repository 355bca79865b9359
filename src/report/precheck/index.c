/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "index.h"

#include <stdlib.h>
#include <string.h>

#include <lowwall/base.h>
#include "report/markup.h"
#include "report/text/parts.h"
#include "report/text/said.h"
#include "verdict/reasons.h"
#include "who.h"

static const lw_index_group GROUP_OF[] = {[LW_WHO_BUILDER] = LW_INDEX_BUILDER,
                                          [LW_WHO_COUNCIL] = LW_INDEX_COUNCIL,
                                          [LW_WHO_ENGINEER] = LW_INDEX_ENGINEER};

/* Where the words begin; they move while their text grows. */
static size_t keep(lw_precheck_index *index, const char *words) {
  size_t at = index->words.length;
  lw_text_add_bytes(&index->words, words, strlen(words) + 1);
  return at;
}

static lw_index_entry *add(lw_precheck_index *index, const lw_case *c, int row) {
  if (index->count == index->room) {
    size_t room = index->room ? 2 * index->room : 64;
    lw_index_entry *more = realloc(index->entry, room * sizeof *more);
    index->failed = index->failed || !more;
    if (!more) return NULL;
    index->entry = more;
    index->room = room;
  }
  lw_index_entry *entry = &index->entry[index->count++];
  *entry = (lw_index_entry){.row = row};
  lw_print(entry->mark, sizeof entry->mark, "%s", c->about.mark.text);
  lw_print(entry->title, sizeof entry->title, "%s", c->about.title.text);
  return entry;
}

/* What calls for them; that nothing does. */
static const char *why(const lw_verdict *verdict, char *words, size_t size) {
  const lw_verdict_reason *first = lw_reasons_first(&verdict->reasons, LW_ANSWER_WHO, verdict->who);
  if (verdict->who != LW_WHO_BUILDER && first) return first->text;
  lw_precheck_who(verdict, words, size);
  return words;
}

void lw_precheck_index_add(lw_precheck_index *index, const lw_result *result, int row, const char *file) {
  char words[640];
  lw_index_entry *entry = add(index, &result->given, row);
  if (!entry) return;
  entry->group = GROUP_OF[result->verdict.who];
  entry->grade = result->verdict.grade;
  lw_print(entry->file, sizeof entry->file, "%s", file);
  entry->what = keep(index, lw_what_sentence(result->verdict.what));
  lw_text_answer_words(result, LW_ANSWER_STANDS, true, words, sizeof words);
  entry->does = keep(index, words);
  entry->why = keep(index, why(&result->verdict, words, sizeof words));
}

/* Each by its row, its column and its cure. */
void lw_precheck_index_add_faults(lw_precheck_index *index, const lw_case *c, int row,
                                  const lw_faults *faults) {
  lw_index_entry *entry = add(index, c, row);
  if (!entry) return;
  entry->group = LW_INDEX_NOT_CHECKED;
  entry->what = entry->why = keep(index, "");
  entry->does = index->words.length;
  for (int i = 0; i < faults->count; i++) {
    const lw_fault *f = &faults->fault[i];
    lw_text_addf(&index->words, "%sRow %d", i > 0 ? " " : "", f->row > 0 ? f->row : row);
    if (f->column > 0) lw_text_addf(&index->words, ", column %d", f->column);
    if (f->item[0]) lw_text_addf(&index->words, ", %s", f->item);
    lw_text_addf(&index->words, ": %s", lw_fault_slug_sentence(f->slug));
    if (f->stood[0]) lw_text_addf(&index->words, " (\"%s\")", f->stood);
    lw_text_addf(&index->words, "; right would be: %s.", f->wanted);
  }
  lw_text_add_bytes(&index->words, "", 1);
}

/* The gravest first: who is called, then how it stands; then as the schedule has them. */
static int compare(const void *a, const void *b) {
  static const int GRAVE[] = {[LW_GRADE_WOULD_MOVE] = 0,
                              [LW_GRADE_MAY_MOVE] = 1,
                              [LW_GRADE_CANNOT_BE_SHOWN] = 2,
                              [LW_GRADE_LESS_MARGIN] = 3,
                              [LW_GRADE_HOLDS] = 4};
  const lw_index_entry *x = a, *y = b;
  if (x->group != y->group) return (int)x->group - (int)y->group;
  if (x->grade != y->grade) return GRAVE[x->grade] - GRAVE[y->grade];
  return x->row - y->row;
}

/* On a phone the cells of a row stand one below another. */
static const char HEAD[] =
    "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
    "<meta name=\"viewport\" content=\"width=device-width\"><title>Pre-checks</title>\n<style>"
    "body{font:16px/1.4 sans-serif;color:#000;background:#fff;max-width:70rem;margin:1rem auto;padding:0 "
    "1rem}"
    "h1{font-size:1.35rem}h2{font-size:1.05rem;margin:1.4em 0 .4em}a{color:#000}"
    "table{border-collapse:collapse;width:100%}tr{break-inside:avoid}"
    "th,td{text-align:left;vertical-align:top;padding:.25em .6em .25em 0;border-top:1px solid #000}"
    "thead th{border-top:0}td:first-of-type{min-width:6em}"
    "@media (max-width:40rem){thead{display:none}tr{border-top:1px solid #000}"
    "th,td{display:block;border:0;padding:.15em 0}th a{display:inline-block;padding:.8em 1em .8em 0}}"
    "@media print{body{font-size:11px;max-width:none}}"
    "</style></head><body>\n";

static void element(lw_text *out, const char *before, const char *words, const char *after) {
  lw_text_add(out, before);
  lw_markup_add(out, words);
  lw_text_add(out, after);
}

/* The mark leads to the pre-check. A name of a file has no letter that would have to be written otherwise. */
static void row(const lw_precheck_index *index, const lw_index_entry *entry, lw_text *out) {
  char number[24];
  const char *words = index->words.data;
  lw_print(number, sizeof number, "row %d", entry->row);
  lw_text_add(out, "<tr><th scope=\"row\">");
  if (entry->file[0]) lw_text_addf(out, "<a href=\"%s\">", entry->file);
  lw_markup_add(out, entry->mark[0] ? entry->mark : number);
  lw_text_add(out, entry->file[0] ? "</a></th>" : "</th>");
  element(out, "<td>", entry->title, "</td>");
  if (entry->group != LW_INDEX_NOT_CHECKED) element(out, "<td>", words + entry->what, "</td>");
  element(out, "<td>", words + entry->does, "</td>");
  if (entry->group != LW_INDEX_NOT_CHECKED) element(out, "<td>", words + entry->why, "</td>");
  lw_text_add(out, "</tr>\n");
}

static const struct {
  const char *anchor, *title, *few;
} GROUPS[LW_INDEX_GROUPS] = {
    {"faults", "Not checked, for faults in their rows", "not checked"},
    {"engineer", "A licensed engineer must see these, before work starts", "for a licensed engineer"},
    {"council", "The council must see these, before work starts", "for the council"},
    {"builder", "Nobody beyond who builds them, by the limits on file", "for nobody beyond who builds them"}};

static void table_head(lw_index_group group, lw_text *out) {
  lw_text_addf(out, "<h2 id=\"%s\">%s</h2>\n<table><thead><tr><th scope=\"col\">wall</th>",
               GROUPS[group].anchor, GROUPS[group].title);
  lw_text_add(out, "<th scope=\"col\">title</th>");
  lw_text_add(out, group == LW_INDEX_NOT_CHECKED
                       ? "<th scope=\"col\">what is wrong, and what would be right</th>"
                       : "<th scope=\"col\">what it is</th><th scope=\"col\">does it stand</th>"
                         "<th scope=\"col\">why they must see it, or need not</th>");
  lw_text_add(out, "</tr></thead><tbody>\n");
}

/* How many of each, which leads there. */
static void lead(const lw_precheck_index *index, const char *schedule, const lw_tables *tables,
                 lw_text *out) {
  size_t of[LW_INDEX_GROUPS] = {0};
  for (size_t i = 0; i < index->count; i++) of[index->entry[i].group]++;
  element(out, "<h1>Pre-checks of ", schedule, "</h1>\n");
  lw_text_addf(out, "<p>%zu wall%s, the gravest first", index->count, index->count == 1 ? "" : "s");
  const char *apart = ": ";
  for (int i = 0; i < LW_INDEX_GROUPS; i++) {
    if (of[i] == 0) continue;
    lw_text_addf(out, "%s<a href=\"#%s\">%zu %s</a>", apart, GROUPS[i].anchor, of[i], GROUPS[i].few);
    apart = ", ";
  }
  lw_text_add(out, ".</p>\n");
  if (tables->replaced[0])
    element(out, "<p>Made with replaced tables, not those that lowwall comes with: ", tables->replaced,
            ".</p>\n");
}

lw_status lw_precheck_index_html(lw_precheck_index *index, const char *schedule, const lw_tables *tables,
                                 lw_text *out) {
  if (index->failed || index->words.failed) return LW_NO_MEMORY;
  if (index->count > 0) qsort(index->entry, index->count, sizeof *index->entry, compare);
  lw_text_add(out, HEAD);
  lead(index, schedule, tables, out);
  for (size_t i = 0; i < index->count; i++) {
    const lw_index_entry *entry = &index->entry[i];
    if (i == 0 || entry->group != entry[-1].group) table_head(entry->group, out);
    row(index, entry, out);
    bool last = i + 1 == index->count || entry[1].group != entry->group;
    if (last) lw_text_add(out, "</tbody></table>\n");
  }
  lw_text_addf(out, "<p>lowwall %s. %s</p>\n</body></html>\n", LW_VERSION, LW_CERTIFIES_NOTHING);
  return out->failed ? LW_NO_MEMORY : LW_OK;
}

void lw_precheck_index_free(lw_precheck_index *index) {
  free(index->entry);
  lw_text_free(&index->words);
  *index = (lw_precheck_index){.count = 0};
}
