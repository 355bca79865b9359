/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pdf_language.h"

#include <stdlib.h>
#include <string.h>

/* cairo writes the tree of tags but does not say in which language the words are. That stands in the
 * catalogue, so a second one is added behind the file as [ISO32000-1 7.5.6] has it for a changed
 * object: nothing of what cairo wrote moves. A file that looks otherwise stays as it is. */

/* The last place of a word in the file, or NULL; the file is bytes, with NULs among them. */
static const char *last(const lw_text *pdf, const char *word) {
  size_t length = strlen(word);
  for (size_t i = pdf->length < length ? 0 : pdf->length - length + 1; i > 0; i--)
    if (memcmp(pdf->data + i - 1, word, length) == 0) return pdf->data + i - 1;
  return NULL;
}

static bool number_after(const char *place, const char *word, long *number) {
  const char *at = place ? strstr(place, word) : NULL;
  if (!at) return false;
  char *end;
  *number = strtol(at + strlen(word), &end, 10);
  return end != at + strlen(word) && *number > 0;
}

void lw_pdf_add_language(lw_text *pdf) {
  long size, root, info, start;
  const char *trailer = last(pdf, "trailer\n"), *catalogue = last(pdf, "<< /Type /Catalog");
  const char *close = catalogue ? strstr(catalogue, "\n>>\n") : NULL;
  bool known = number_after(trailer, "/Size ", &size) && number_after(trailer, "/Root ", &root) &&
               number_after(trailer, "/Info ", &info) && number_after(trailer, "startxref\n", &start);
  if (!known || !close || strstr(catalogue, "/Lang")) return;
  lw_text entries = {0};
  lw_text_add_bytes(&entries, catalogue, (size_t)(close - catalogue));
  size_t object_at = pdf->length;
  lw_text_addf(pdf,
               "%ld 0 obj\n%s\n   /Lang (en)\n"
               "   /ViewerPreferences << /DisplayDocTitle true >>\n>>\nendobj\n",
               root, entries.data ? entries.data : "");
  size_t table_at = pdf->length;
  lw_text_addf(pdf,
               "xref\n%ld 1\n%010zu 00000 n \ntrailer\n<< /Size %ld\n   /Root %ld 0 R\n   /Info %ld 0 R\n"
               "   /Prev %ld\n>>\nstartxref\n%zu\n%%%%EOF\n",
               root, object_at, size, root, info, start, table_at);
  pdf->failed = pdf->failed || entries.failed;
  lw_text_free(&entries);
}
