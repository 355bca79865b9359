/* SPDX-License-Identifier: GPL-3.0-or-later */
/* The tables of what people are asked. What their cells mean is held by src/ask/. */
#include "shape.h"

static const lw_column question_columns[] = {
    LW_TEXT("key", lw_question_row, key),
    LW_WORD("part", lw_question_row, part, "first|order|officer"),
    LW_WORD("kind", lw_question_row, kind, "choice|several|measure|words"),
    LW_TEXT("items", lw_question_row, items),
    LW_SAID("words", lw_question_row, words),
    LW_TEXT_MAYBE("labels", lw_question_row, labels),
    LW_SAID("why", lw_question_row, why),
    LW_TEXT_MAYBE("units", lw_question_row, units),
    LW_TEXT_MAYBE("us_units", lw_question_row, us_units),
    LW_TEXT_MAYBE("when", lw_question_row, when),
    LW_SAID_MAYBE("not_known", lw_question_row, not_known),
    LW_TEXT_MAYBE("counts_as", lw_question_row, counts_as),
    LW_TEXT_MAYBE("mildest", lw_question_row, mildest),
    LW_TEXT_MAYBE("gravest", lw_question_row, gravest),
    LW_SAID_MAYBE("hand_test", lw_question_row, hand_test),
    LW_FROM(lw_question_row, from),
};

static const lw_column choice_columns[] = {
    LW_TEXT("question", lw_choice_row, question),
    LW_TEXT("key", lw_choice_row, key),
    LW_SAID("words", lw_choice_row, words),
    LW_TEXT_MAYBE("writes", lw_choice_row, writes),
    LW_TEXT_MAYBE("others", lw_choice_row, others),
    {"rank", LW_COLUMN_INTEGER, false, LW_AT(lw_choice_row, rank), 1, 1, 9, NULL},
    LW_TEXT_MAYBE("picture", lw_choice_row, picture),
};

const lw_shape lw_question_shapes[] = {
    LW_SHAPE("questions", question_columns, 1, lw_question_row, question, question_count),
    LW_SHAPE("choices", choice_columns, 2, lw_choice_row, choice, choice_count),
};

const size_t lw_question_shape_count = sizeof(lw_question_shapes) / sizeof(lw_question_shapes[0]);
