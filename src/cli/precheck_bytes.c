/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <string.h>

#include <lowwall/report.h>

#include "report/precheck/pdf.h"
#include "precheck_asked.h"

lw_status lw_precheck_bytes(const lw_precheck_asked *asked, lw_one_wall *wall, char *hash, lw_text *out,
                            lw_error *error) {
  bool letter = asked->paper && strcmp(asked->paper, "letter") == 0;
  lw_status status = lw_precheck_hash(&wall->result.given, asked->wall.tables, hash, error);
  if (status != LW_OK) return status;
  lw_water_find(&wall->result, &wall->scratch);
  if (asked->html) return lw_precheck_html(&wall->result, hash, out);
  return lw_precheck_pdf(&wall->result, hash, letter ? LW_PAPER_LETTER : LW_PAPER_A4, out, error);
}
