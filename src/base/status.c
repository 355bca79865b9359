/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/base.h>

#include <stdarg.h>

#include "print.h"

/* The one list of the header, taken apart into slugs and sentences. */
#define SLUG(name, slug, sentence) slug,
#define SENTENCE(name, slug, sentence) sentence,

static const char *const status_slugs[] = {LW_STATUSES(SLUG)};
static const char *const status_sentences[] = {LW_STATUSES(SENTENCE)};
static const char *const reason_slugs[] = {LW_REASONS(SLUG)};
static const char *const reason_sentences[] = {LW_REASONS(SENTENCE)};

enum { STATUS_COUNT = sizeof status_slugs / sizeof *status_slugs };

const char *lw_status_slug(lw_status status) {
  return (size_t)status < STATUS_COUNT ? status_slugs[status] : "unknown";
}

const char *lw_status_sentence(lw_status status) {
  return (size_t)status < STATUS_COUNT ? status_sentences[status] : "unknown";
}

const char *lw_reason_slug(lw_reason reason) {
  return (size_t)reason < LW_REASON_COUNT ? reason_slugs[reason] : "unknown";
}

const char *lw_reason_sentence(lw_reason reason) {
  return (size_t)reason < LW_REASON_COUNT ? reason_sentences[reason] : "unknown";
}

lw_status lw_error_set(lw_error *error, lw_status status, lw_reason reason, const char *format, ...) {
  if (error == NULL) {
    return status;
  }
  error->status = status;
  error->reason = reason;
  va_list arguments;
  va_start(arguments, format);
  lw_print_list(error->text, sizeof error->text, format, arguments);
  va_end(arguments);
  return status;
}
