/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <lowwall/questions.h>

#include "fuzz.h"

/* Answers to questions, a line each: a question's key, a blank, the answer; a line that begins with no key is
 * an answer to any question. Whatever is answered, the sheet that comes of it reads without a fault, and one
 * that is refused leaves none. */

enum { MOST_ANSWERS = 24, ANSWER_BYTES = 120 };

/* gives false when there is no more */
static bool take_line(fuzz_bytes *from, char *line) {
  size_t used = 0;
  if (from->left == 0) return false;
  for (unsigned c; from->left > 0 && (c = fuzz_byte(from)) != '\n';)
    if (c != '\0' && used + 1 < ANSWER_BYTES) line[used++] = (char)c;
  line[used] = '\0';
  return true;
}

/* The question of a line; what follows its key is the answer. */
static const char *key_of(const lw_tables *tables, const char **line) {
  unsigned sum = 0;
  for (int i = 0; i < tables->question_count; i++) {
    const char *key = tables->question[i].key;
    size_t length = strlen(key);
    if (strncmp(*line, key, length) != 0 || (*line)[length] != ' ') continue;
    *line += length + 1;
    return key;
  }
  for (const char *c = *line; *c != '\0'; c++) sum += (unsigned char)*c;
  return tables->question[sum % (unsigned)tables->question_count].key;
}

static void expect_whole(const lw_asking_for *asking) {
  static lw_case c;
  static lw_faults faults;
  static lw_asked asked;
  faults.count = 0;
  FUZZ_EXPECT(lw_questions_look(asking, &asked, &faults) == LW_OK);
  if (asking->length == 0) return;
  FUZZ_EXPECT(lw_sheet_read(asking->sheet, asking->length, &c, &faults) == LW_OK);
  lw_case_complete(asking->tables, &c, &faults);
  for (int i = 0; i < faults.count; i++) FUZZ_EXPECT(faults.fault[i].slug == LW_FAULT_MISSING_ITEM);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  static lw_faults faults;
  fuzz_bytes from = {bytes, count};
  lw_text sheet = {0};
  lw_asking_for asking = {.tables = fuzz_tables()};
  char line[ANSWER_BYTES];
  for (int i = 0; i < MOST_ANSWERS && from.left > 0; i++) {
    lw_text next = {0};
    faults.count = 0;
    asking.us = i % 2 == 1;
    if (!take_line(&from, line)) break;
    const char *answer = line, *key = key_of(asking.tables, &answer);
    lw_status status = answer[0] == '-' && answer[1] == '\0'
                           ? lw_question_take_back(&asking, key, &next, &faults)
                           : lw_question_answer(&asking, key, answer, &next, &faults);
    FUZZ_EXPECT(status == LW_OK || (status == LW_FAULTS && faults.count > 0 && next.length == 0));
    if (status == LW_OK) {
      lw_text_free(&sheet);
      sheet = next;
      asking.sheet = sheet.data;
      asking.length = sheet.length;
      expect_whole(&asking);
    }
  }
  lw_text_free(&sheet);
  return 0;
}
