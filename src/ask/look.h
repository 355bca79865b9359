/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_LOOK_H
#define LOWWALL_ASK_LOOK_H

#include "question.h"

/* lw_questions_look of answers that were read already. */
void lw_look_at(const lw_asking_for *asking, const lw_answers *answers, lw_asked *asked);

#endif
