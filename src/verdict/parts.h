/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_VERDICT_PARTS_H
#define LOWWALL_VERDICT_PARTS_H

#include <lowwall/studies.h>

#include "facts.h"
#include "reasons.h"

/* The parts of a verdict, in the order they are reached; each adds its reasons. */
void lw_verdict_what(const lw_facts *facts, lw_reaching *to);
/* gives the reason of the check that governs, for lw_verdict_tell_stands once it is known who must see it;
 * NULL: no check governs, or the reason stands there already */
lw_verdict_reason *lw_verdict_stands(const lw_facts *facts, const lw_situations *situations, lw_reaching *to);
/* The sentence of that reason. */
void lw_verdict_tell_stands(const lw_situations *situations, const lw_verdict *verdict,
                            lw_verdict_reason *reason);
void lw_verdict_limits(const lw_facts *facts, lw_reaching *to); /* rows of the place, or of the default */
void lw_verdict_conditions(const lw_facts *facts,
                           lw_reaching *to); /* what means a professional at any height */
void lw_verdict_clearances(const lw_facts *facts,
                           lw_reaching *to); /* the default's, where a place has none */
void lw_verdict_cautions(const lw_facts *facts, lw_reaching *to);
/* After the study of building it, and after the rest. */
void lw_verdict_construction(const lw_construction *construction, lw_units units, lw_verdict *verdict);
void lw_verdict_headline(const lw_facts *facts, const lw_situations *situations, lw_reaching *to);

#endif
