/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_CLI_ASK_SESSION_H
#define LOWWALL_CLI_ASK_SESSION_H

#include <lowwall/questions.h>

#include "say.h"

/* What `lowwall ask` has in hand. */
typedef struct lw_ask_session {
  lw_asking_for asking;
  lw_text sheet;    /* the answers so far */
  const char *file; /* where they are kept */
  bool kept;        /* the file is this command's own: opened by it, or written */
  bool ended;       /* the input has come to its end */
  bool no_memory;   /* for a page: nothing more is printed, and the command ends */
  int not_written;  /* why a page was not, as errno: likewise; 0: each was */
  bool skipped[LW_QUESTION_ROWS];
  int asked_count, asked[4 * LW_QUESTION_ROWS]; /* the questions shown, in their turn */
  lw_asked look;
  lw_faults faults;
  lw_faults again; /* of what was read before, when it is read again to be shown */
} lw_ask_session;

#endif
