/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "forms.h"

#include "grid.h"
#include "markup.h"

/* What was kept of a page as HTML: headings, paragraphs, lists, names with what belongs to them, steps and
 * tables. A list or a step stays open until something comes that is none of it. */

typedef enum open_kind { OPEN_NOTHING, OPEN_LIST, OPEN_NAMES, OPEN_STEP } open_kind;

typedef struct html {
  lw_text *out;
  open_kind open;
} html;

static const char *const classes[] = {
    [LW_TONE_PLAIN] = "", [LW_TONE_STRONG] = "strong", [LW_TONE_GOOD] = "good", [LW_TONE_BAD] = "bad"};

/* Each run of blanks is one. */
static void add_words(lw_text *out, lw_span words) {
  words = lw_span_trim(words);
  for (size_t i = 0; i < words.length; i++) {
    char c = words.at[i];
    bool again = c == ' ' && words.at[i - 1] == ' ', mark = c == LW_CELL_BEGINS || c == LW_CELL_ENDS;
    if (!again && !mark) lw_markup_add_bytes(out, &c, 1);
  }
}

static void between(html *h, const char *before, lw_span words, const char *after) {
  lw_text_add(h->out, before);
  add_words(h->out, words);
  lw_text_add(h->out, after);
}

static void open_one(html *h, open_kind kind) {
  static const char *const ends[] = {[OPEN_NOTHING] = "",
                                     [OPEN_LIST] = "</li>\n</ul>\n",
                                     [OPEN_NAMES] = "</div>\n</dl>\n",
                                     [OPEN_STEP] = "</div>\n"};
  lw_text_add(h->out, ends[h->open]);
  h->open = kind;
}

/* An element of that tone around words. */
static void toned(html *h, const char *element, lw_tone tone, lw_span words) {
  const char *name = classes[tone];
  lw_text_addf(h->out, "<%s%s%s%s>", element, name[0] ? " class=\"" : "", name, name[0] ? "\"" : "");
  between(h, tone == LW_TONE_PLAIN ? "" : "<strong>", words, tone == LW_TONE_PLAIN ? "" : "</strong>");
  lw_text_addf(h->out, "</%s>\n", element);
}

/* A list of dashes has the browser's marks; another mark says something and stays. */
static void item(html *h, const lw_kept *entry) {
  lw_span mark = lw_span_trim(entry->prefix);
  bool dash = mark.length == 1 && *mark.at == '-';
  if (h->open == OPEN_LIST) {
    lw_text_add(h->out, "</li>\n");
  } else {
    open_one(h, OPEN_LIST);
    lw_text_add(h->out, dash ? "<ul>\n" : "<ul class=\"m\">\n");
  }
  lw_text_add(h->out, "<li>");
  if (!dash) between(h, "<b>", mark, "</b> ");
  add_words(h->out, entry->text);
}

static void name(html *h, const lw_kept *entry) {
  if (h->open == OPEN_NAMES) {
    lw_text_add(h->out, "</div>\n");
  } else {
    open_one(h, OPEN_NAMES);
    lw_text_add(h->out, "<dl>\n");
  }
  between(h, "<div><dt>", entry->prefix, "</dt>");
  between(h, "<dd>", entry->text, "</dd>");
}

/* "Ka = formula", and below it what goes on. */
static void step(html *h, const lw_kept *entry) {
  lw_span symbol = lw_span_trim(entry->prefix);
  symbol.length--;
  open_one(h, OPEN_STEP);
  between(h, "<div class=\"step\"><p><var>", symbol, "</var> = ");
  between(h, "", entry->text, "</p>\n");
}

static void more(html *h, const lw_kept *entry) {
  if (h->open != OPEN_STEP) open_one(h, OPEN_NOTHING);
  between(h, "<p>", entry->prefix, " ");
  between(h, "", entry->text, "</p>\n");
}

/* Far in, below an item or a name, it belongs to it. */
static void paragraph(html *h, const lw_kept *entry) {
  bool below = lw_kept_indent(entry) >= LW_FAR_IN && entry->tone == LW_TONE_PLAIN;
  if (below && h->open == OPEN_NAMES) {
    between(h, "<dd>", entry->text, "</dd>");
    return;
  }
  if (!(below && h->open == OPEN_LIST)) open_one(h, OPEN_NOTHING);
  toned(h, "p", entry->tone, entry->text);
}

static void say(html *h, const lw_kept *entry) {
  switch (lw_kept_lead(entry)) {
  case LW_LEAD_ITEM: item(h, entry); break;
  case LW_LEAD_NAME: name(h, entry); break;
  case LW_LEAD_STEP: step(h, entry); break;
  case LW_LEAD_MORE: more(h, entry); break;
  case LW_LEAD_NONE: paragraph(h, entry); break;
  }
}

/* A line that stands in goes with the item above it. */
static void line(html *h, const lw_kept *entry) {
  bool within = entry->text.length > 0 && entry->text.at[0] == ' ';
  if (h->open != OPEN_LIST || !within) open_one(h, OPEN_NOTHING);
  between(h, within ? "<p class=\"line\">" : "<p>", entry->text, "</p>\n");
}

static void head_cells(html *h, const lw_grid *grid, const lw_kept *entry) {
  lw_text_add(h->out, "<tr>");
  for (int i = 0; i < grid->columns; i++) {
    lw_cell cell = lw_grid_cell(grid, entry, i);
    bool empty = cell.words.length == 0 || (i == 0 && entry->kind == LW_KEPT_TITLED);
    if (!grid->used[i]) continue;
    if (empty)
      lw_text_add(h->out, "<td></td>");
    else
      between(h, cell.ends ? "<th scope=\"col\" class=\"n\">" : "<th scope=\"col\">", cell.words, "</th>");
  }
  lw_text_add(h->out, "</tr>\n");
}

static void cells(html *h, const lw_grid *grid, const lw_kept *entry) {
  const char *tone = classes[entry->tone];
  lw_text_addf(h->out, tone[0] ? "<tr class=\"%s\">" : "<tr>", tone);
  for (int i = 0; i < grid->columns; i++) {
    lw_cell cell = lw_grid_cell(grid, entry, i);
    if (!grid->used[i]) continue;
    if (i == 0 && entry->kind == LW_KEPT_ROW)
      between(h, "<th scope=\"row\">", cell.words, "</th>");
    else
      between(h, cell.ends ? "<td class=\"n\">" : "<td>", cell.words, "</td>");
  }
  lw_text_add(h->out, "</tr>\n");
}

static void note(html *h, const lw_grid *grid, const lw_kept *entry) {
  bool heads = entry->kind == LW_KEPT_PART;
  lw_text_addf(h->out,
               heads ? "<tr><th scope=\"rowgroup\" colspan=\"%d\">" : "<tr><td class=\"x\" colspan=\"%d\">",
               grid->used_count);
  between(h, "", entry->text, heads ? "</th></tr>\n" : "</td></tr>\n");
}

static void table(html *h, lw_span *cursor) {
  lw_grid grid;
  lw_kept entry;
  bool in_head = true;
  lw_grid_find(cursor, &grid);
  lw_span rows = grid.rows, first = rows;
  open_one(h, OPEN_NOTHING);
  lw_kept_next(&first, &entry);
  if (entry.kind == LW_KEPT_TITLED) between(h, "<h2>", lw_grid_cell(&grid, &entry, 0).words, "</h2>\n");
  bool headed = lw_kept_heads(&entry);
  lw_text_addf(h->out, "<div class=\"w\" tabindex=\"0\"><table>\n%s", headed ? "<thead>\n" : "<tbody>\n");
  while (lw_kept_next(&rows, &entry)) {
    bool head = lw_kept_heads(&entry);
    if (headed && in_head && !head) lw_text_add(h->out, "</thead>\n<tbody>\n");
    in_head = in_head && head;
    if (head)
      head_cells(h, &grid, &entry);
    else if (entry.kind == LW_KEPT_ROW || entry.kind == LW_KEPT_NUMBERS)
      cells(h, &grid, &entry);
    else
      note(h, &grid, &entry);
  }
  lw_text_addf(h->out, "%s</table></div>\n", headed && in_head ? "</thead>\n" : "</tbody>\n");
}

static void put(html *h, const lw_kept *entry) {
  if (entry->kind == LW_KEPT_SAY) {
    say(h, entry);
    return;
  }
  if (entry->kind == LW_KEPT_LINE) {
    line(h, entry);
    return;
  }
  open_one(h, OPEN_NOTHING);
  if (entry->kind == LW_KEPT_HEADLINE) toned(h, "h1", entry->tone, entry->text);
  if (entry->kind == LW_KEPT_HEADING) between(h, "<h2>", entry->text, "</h2>\n");
  if (entry->kind == LW_KEPT_PART) between(h, "<h3>", entry->text, "</h3>\n");
}

void lw_kept_html(lw_span entries, lw_text *out) {
  html h = {.out = out, .open = OPEN_NOTHING};
  lw_span before = entries;
  lw_kept entry;
  while (lw_kept_next(&entries, &entry)) {
    if (entry.kind >= LW_KEPT_ROW) {
      entries = before;
      table(&h, &entries);
    } else {
      put(&h, &entry);
    }
    before = entries;
  }
  open_one(&h, OPEN_NOTHING);
}
