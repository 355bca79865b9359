/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "pdf_parts.h"

#include "pdf_language.h"

#ifdef LW_HAVE_QPDF

#include <stdlib.h>
#include <string.h>

#include <qpdf/qpdf-c.h>

/* Deeper than document, table, row and cell is no tree of ours. */
enum { DEEPEST = 8 };

static bool went_well(QPDF_ERROR_CODE code) {
  return (code & QPDF_ERRORS) == 0;
}

static bool open_pdf(qpdf_data q, const lw_text *pdf) {
  qpdf_silence_errors(q);
  qpdf_set_suppress_warnings(q, QPDF_TRUE);
  return pdf->length > 0 && went_well(qpdf_read_memory(q, "the PDF", pdf->data, pdf->length, NULL));
}

/* An error that nobody asks for is printed. */
static void close_pdf(qpdf_data *q) {
  if (qpdf_has_error(*q)) qpdf_get_error(*q);
  qpdf_cleanup(q);
}

/* The same bytes each time, and readable as cairo wrote them. */
static lw_status write_back(qpdf_data q, lw_text *pdf) {
  if (qpdf_has_error(q) || !went_well(qpdf_init_write_memory(q))) return LW_NO_MEMORY;
  qpdf_set_deterministic_ID(q, QPDF_TRUE);
  qpdf_set_object_stream_mode(q, qpdf_o_disable);
  if (!went_well(qpdf_write(q))) return LW_NO_MEMORY;
  lw_text_clear(pdf);
  lw_text_add_bytes(pdf, (const char *)qpdf_get_buffer(q), qpdf_get_buffer_length(q));
  return pdf->failed ? LW_NO_MEMORY : LW_OK;
}

static void set(qpdf_data q, qpdf_oh dictionary, const char *key, qpdf_oh value) {
  qpdf_oh_replace_key(q, dictionary, key, value);
}

static bool is_element(qpdf_data q, qpdf_oh node, const char *tag) {
  return qpdf_oh_is_dictionary(q, node) &&
         qpdf_oh_is_name_and_equals(q, qpdf_oh_get_key_if_dict(q, node, "/S"), tag);
}

/* A row of heads has what stands below them; a head beside cells has its row. */
static void set_scope(qpdf_data q, qpdf_oh row) {
  qpdf_oh cells = qpdf_oh_get_key(q, row, "/K");
  int count = qpdf_oh_is_array(q, cells) ? qpdf_oh_get_array_n_items(q, cells) : 0, heads = 0;
  for (int i = 0; i < count; i++) heads += is_element(q, qpdf_oh_get_array_item(q, cells, i), "/TH") ? 1 : 0;
  for (int i = 0; i < count; i++) {
    qpdf_oh head = qpdf_oh_get_array_item(q, cells, i), about = qpdf_oh_new_dictionary(q);
    if (!is_element(q, head, "/TH")) continue;
    set(q, about, "/O", qpdf_oh_new_name(q, "/Table"));
    set(q, about, "/Scope", qpdf_oh_new_name(q, heads > 1 ? "/Column" : "/Row"));
    set(q, head, "/A", about);
  }
}

static void walk(qpdf_data q, qpdf_oh node, const char *alt, int depth) {
  if (depth == DEEPEST || !qpdf_oh_is_dictionary(q, node)) return;
  if (is_element(q, node, "/Figure")) set(q, node, "/Alt", qpdf_oh_new_unicode_string(q, alt));
  if (is_element(q, node, "/TR")) set_scope(q, node);
  qpdf_oh below = qpdf_oh_get_key(q, node, "/K");
  if (!qpdf_oh_is_array(q, below)) {
    walk(q, below, alt, depth + 1);
    return;
  }
  for (int i = 0; i < qpdf_oh_get_array_n_items(q, below); i++)
    walk(q, qpdf_oh_get_array_item(q, below, i), alt, depth + 1);
}

static void dress(qpdf_data q, const char *alt) {
  qpdf_oh root = qpdf_get_root(q), view = qpdf_oh_new_dictionary(q);
  set(q, root, "/Lang", qpdf_oh_new_unicode_string(q, "en"));
  set(q, view, "/DisplayDocTitle", qpdf_oh_new_bool(q, QPDF_TRUE));
  set(q, root, "/ViewerPreferences", view);
  walk(q, qpdf_oh_get_key(q, root, "/StructTreeRoot"), alt, 0);
}

bool lw_pdf_has_parts(void) {
  return true;
}

lw_status lw_pdf_dress(lw_text *pdf, const char *alt) {
  qpdf_data q = qpdf_init();
  lw_status status = open_pdf(q, pdf) ? LW_OK : LW_NO_MEMORY;
  if (status == LW_OK) dress(q, alt);
  if (status == LW_OK) status = write_back(q, pdf);
  close_pdf(&q);
  return status;
}

static qpdf_oh new_stream(qpdf_data q, const lw_text *bytes) {
  qpdf_oh stream = qpdf_oh_new_stream(q), none = qpdf_oh_new_null(q), size = qpdf_oh_new_dictionary(q);
  const char *data = bytes->data ? bytes->data : "";
  qpdf_oh_replace_stream_data(q, stream, (const unsigned char *)data, bytes->length, none, none);
  qpdf_oh about = qpdf_oh_get_dict(q, stream);
  set(q, size, "/Size", qpdf_oh_new_integer(q, (long long)bytes->length));
  set(q, about, "/Type", qpdf_oh_new_name(q, "/EmbeddedFile"));
  set(q, about, "/Subtype", qpdf_oh_new_name(q, "/text/csv"));
  set(q, about, "/Params", size);
  return stream;
}

static qpdf_oh new_file(qpdf_data q, const char *name, const char *about, const lw_text *bytes) {
  qpdf_oh file = qpdf_oh_new_dictionary(q), holds = qpdf_oh_new_dictionary(q);
  set(q, holds, "/F", new_stream(q, bytes));
  set(q, file, "/Type", qpdf_oh_new_name(q, "/Filespec"));
  set(q, file, "/F", qpdf_oh_new_unicode_string(q, name));
  set(q, file, "/UF", qpdf_oh_new_unicode_string(q, name));
  set(q, file, "/Desc", qpdf_oh_new_unicode_string(q, about));
  set(q, file, "/AFRelationship", qpdf_oh_new_name(q, "/Source"));
  set(q, file, "/EF", holds);
  return qpdf_make_indirect_object(q, file);
}

/* In the catalogue twice: by its name, and as what the document was made of. */
static void attach(qpdf_data q, const char *name, qpdf_oh file) {
  qpdf_oh root = qpdf_get_root(q), names = qpdf_oh_new_dictionary(q), files = qpdf_oh_new_dictionary(q);
  qpdf_oh list = qpdf_oh_new_array(q), of = qpdf_oh_new_array(q);
  qpdf_oh_append_item(q, list, qpdf_oh_new_unicode_string(q, name));
  qpdf_oh_append_item(q, list, file);
  qpdf_oh_append_item(q, of, file);
  set(q, files, "/Names", list);
  set(q, names, "/EmbeddedFiles", files);
  set(q, root, "/Names", names);
  set(q, root, "/AF", of);
}

lw_status lw_pdf_attach(lw_text *pdf, const char *name, const char *about, const lw_text *bytes,
                        lw_error *error) {
  qpdf_data q = qpdf_init();
  lw_status status = open_pdf(q, pdf) ? LW_OK : LW_NO_MEMORY;
  if (status == LW_OK) attach(q, name, new_file(q, name, about, bytes));
  if (status == LW_OK) status = write_back(q, pdf);
  close_pdf(&q);
  return status == LW_OK ? LW_OK
                         : lw_error_set(error, status, LW_REASON_NONE, "the sheet could not be attached");
}

static void add_string(qpdf_data q, qpdf_oh string, lw_text *out) {
  if (qpdf_oh_is_string(q, string)) lw_text_add(out, qpdf_oh_get_utf8_value(q, string));
}

static bool add_bytes(qpdf_data q, qpdf_oh stream, lw_text *out) {
  unsigned char *bytes = NULL;
  size_t length = 0;
  QPDF_BOOL filtered = QPDF_FALSE;
  if (!qpdf_oh_is_stream(q, stream)) return false;
  bool well = went_well(qpdf_oh_get_stream_data(q, stream, qpdf_dl_generalized, &filtered, &bytes, &length));
  if (well && length > 0) lw_text_add_bytes(out, (const char *)bytes, length);
  free(bytes);
  return well && filtered && length > 0;
}

/* Names and files by turns; one level, as attach() leaves them. */
static bool find(qpdf_data q, const char *name, lw_text *about, lw_text *bytes) {
  qpdf_oh names = qpdf_oh_get_key_if_dict(q, qpdf_get_root(q), "/Names");
  qpdf_oh list = qpdf_oh_get_key_if_dict(q, qpdf_oh_get_key_if_dict(q, names, "/EmbeddedFiles"), "/Names");
  int count = qpdf_oh_is_array(q, list) ? qpdf_oh_get_array_n_items(q, list) : 0;
  for (int i = 0; i + 1 < count; i += 2) {
    qpdf_oh key = qpdf_oh_get_array_item(q, list, i), file = qpdf_oh_get_array_item(q, list, i + 1);
    if (!qpdf_oh_is_string(q, key) || strcmp(qpdf_oh_get_utf8_value(q, key), name) != 0) continue;
    add_string(q, qpdf_oh_get_key_if_dict(q, file, "/Desc"), about);
    return add_bytes(q, qpdf_oh_get_key_if_dict(q, qpdf_oh_get_key_if_dict(q, file, "/EF"), "/F"), bytes);
  }
  return false;
}

lw_status lw_pdf_attached(const lw_text *pdf, const char *name, lw_text *about, lw_text *bytes,
                          lw_error *error) {
  qpdf_data q = qpdf_init();
  bool read = open_pdf(q, pdf), found = read && find(q, name, about, bytes);
  close_pdf(&q);
  if (about->failed || bytes->failed)
    return lw_error_set(error, LW_NO_MEMORY, LW_REASON_NONE, "no memory left");
  if (found) return LW_OK;
  return lw_error_set(error, LW_NOT_READ, LW_REASON_NONE,
                      read ? "no %s is attached: made by another program, without libqpdf, or damaged"
                           : "it is no PDF that can be read%.0s",
                      name);
}

#else

static lw_status without(lw_error *error) {
  return lw_error_set(error, LW_NO_SOLUTION, LW_REASON_NONE,
                      "this lowwall was built without libqpdf, and attaches no sheet to a PDF; install "
                      "libqpdf-dev and build it again");
}

bool lw_pdf_has_parts(void) {
  return false;
}

lw_status lw_pdf_dress(lw_text *pdf, const char *alt) {
  (void)alt;
  lw_pdf_add_language(pdf);
  return pdf->failed ? LW_NO_MEMORY : LW_OK;
}

lw_status lw_pdf_attach(lw_text *pdf, const char *name, const char *about, const lw_text *bytes,
                        lw_error *error) {
  (void)pdf;
  (void)name;
  (void)about;
  (void)bytes;
  return without(error);
}

lw_status lw_pdf_attached(const lw_text *pdf, const char *name, lw_text *about, lw_text *bytes,
                          lw_error *error) {
  (void)pdf;
  (void)name;
  (void)about;
  (void)bytes;
  return without(error);
}

#endif
