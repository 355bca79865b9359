/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_REPORT_PRECHECK_WHO_H
#define LOWWALL_REPORT_PRECHECK_WHO_H

#include <lowwall/result.h>

/** Who must see it, the law's answer alone, without a full stop: "the council, before work starts". What it
 *  rests on where that is not known, and that it is not to be built so, go with it. */
void lw_precheck_who(const lw_verdict *verdict, char *out, size_t size);

#endif
