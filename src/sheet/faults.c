/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "faults.h"

#include <lowwall/sheet.h>

#include <stdarg.h>
#include <string.h>

#include "base/print.h"
#include "base/utf8.h"

#define SLUG(name, slug, sentence) slug,
#define SENTENCE(name, slug, sentence) sentence,

static const char *const slugs[] = {LW_FAULT_SLUGS(SLUG)};
static const char *const sentences[] = {LW_FAULT_SLUGS(SENTENCE)};

const char *lw_fault_slug_name(lw_fault_slug slug) {
  return (size_t)slug < LW_FAULT_SLUG_COUNT ? slugs[slug] : "unknown";
}

const char *lw_fault_slug_sentence(lw_fault_slug slug) {
  return (size_t)slug < LW_FAULT_SLUG_COUNT ? sentences[slug] : "unknown";
}

/* What stood there, fit for one line of a terminal: cut at a whole character, and tamed. */
static void copy_clean(char *out, size_t size, const char *text) {
  size_t used = strlen(text);
  if (used >= size) {
    used = size - 4;
    while (used > 0 && ((unsigned char)text[used] & 0xC0) == 0x80) {
      used--;
    }
  }
  memcpy(out, text, used);
  memcpy(out + used, text[used] == '\0' ? "" : "...", text[used] == '\0' ? 1 : 4);
  lw_utf8_tame(out);
  lw_utf8_tame_ascii(out, '?');
}

void lw_faults_add(lw_faults *faults, lw_fault_slug slug, lw_cell_place place, const char *item,
                   const char *stood, const char *wanted_format, ...) {
  if (faults->count >= LW_FAULT_MAX) {
    lw_fault *last = &faults->fault[LW_FAULT_MAX - 1];
    last->slug = LW_FAULT_NO_ROOM;
    last->item[0] = '\0';
    last->stood[0] = '\0';
    lw_print(last->wanted, sizeof last->wanted, "the first %d faults put right, then the rest shows",
             LW_FAULT_MAX - 1);
    return;
  }
  lw_fault *fault = &faults->fault[faults->count++];
  fault->slug = slug;
  fault->row = place.row;
  fault->column = place.column;
  copy_clean(fault->item, sizeof fault->item, item);
  copy_clean(fault->stood, sizeof fault->stood, stood);
  va_list arguments;
  va_start(arguments, wanted_format);
  lw_print_list(fault->wanted, sizeof fault->wanted, wanted_format, arguments);
  va_end(arguments);
}

bool lw_faults_more(const lw_faults *faults, int before) {
  return faults->count > before || faults->count >= LW_FAULT_MAX;
}

static void print_place(const lw_fault *fault, lw_text *out) {
  if (fault->row > 0 && fault->column > 0) {
    lw_text_addf(out, ": row %d, column %d", fault->row, fault->column);
  } else if (fault->row > 0) {
    lw_text_addf(out, ": row %d", fault->row);
  } else if (fault->column > 0) {
    lw_text_addf(out, ": item %d of the command line", fault->column);
  }
}

void lw_faults_print(const lw_faults *faults, lw_text *out) {
  for (int i = 0; i < faults->count; i++) {
    const lw_fault *fault = &faults->fault[i];
    lw_text_add(out, faults->file[0] != '\0' ? faults->file : "sheet");
    print_place(fault, out);
    lw_text_addf(out, ": %s: ", lw_fault_slug_name(fault->slug));
    if (fault->item[0] != '\0') {
      lw_text_addf(out, "%s: ", fault->item);
    }
    lw_text_add(out, lw_fault_slug_sentence(fault->slug));
    if (fault->stood[0] != '\0') {
      lw_text_addf(out, "; stood: \"%s\"", fault->stood);
    }
    if (fault->wanted[0] != '\0') {
      lw_text_addf(out, "; wanted: %s", fault->wanted);
    }
    lw_text_add(out, "\n");
  }
}
