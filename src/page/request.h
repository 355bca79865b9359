/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_PAGE_REQUEST_H
#define LOWWALL_PAGE_REQUEST_H

#include <lowwall/report.h>

#include "core.h"
#include "report/json/set.h"

/* A request in hand, the reply that is made, and what every answer to it begins with: a wall from a sheet. */

typedef struct lw_request {
  const lw_tables *tables;
  lw_page_kept *kept;
  json_t *request, *reply;
  lw_error error; /* why there is no answer, where no fault of the sheet is the reason */
  lw_faults faults;
} lw_request;

/* What can be asked, one a name.
 * gives LW_OK, the reply filled · LW_FAULTS, either faults or an error · LW_NO_SOLUTION, the error ·
 * LW_NO_MEMORY */
typedef lw_status (*lw_reply_make)(lw_request *asked);

/** A text or a number of the request; "", or `otherwise`, where there is none. */
const char *lw_request_text_of(const lw_request *asked, const char *key);
double lw_request_number_of(const lw_request *asked, const char *key, double otherwise);
/** Refuse the request itself, printf-like. gives LW_FAULTS */
lw_status lw_request_refuse(lw_request *asked, const char *format, ...) __attribute__((format(printf, 2, 3)));

/** The sheet of the request into a case, then what the request sets: "set", as typed on a command line. */
lw_status lw_request_read(lw_request *asked, lw_case *c);
/** Put a text of any length under a key, and free it. */
void lw_reply_put(json_t *object, const char *key, lw_text *text);
/** A sheet of a case: what the page keeps. */
void lw_reply_put_sheet(json_t *object, const lw_case *c);

#endif
