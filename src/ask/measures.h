/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_ASK_MEASURES_H
#define LOWWALL_ASK_MEASURES_H

#include "put.h"

/* Measures with ";" between onto the sheet; false after noting what is wrong. */
bool lw_put_measures(const lw_put *put, const char *answer);

/* One measure of a question, from 0, by itself; false after noting what is wrong with it. */
bool lw_measure_try(const lw_asking_for *asking, int question, int measure, const char *answer,
                    lw_faults *faults);

/* Whether that measure of a question, from 0, may be left as not known. */
bool lw_measure_may_be_left(const lw_question_row *row, int index);

#endif
