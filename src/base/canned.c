/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "canned.h"

#include <string.h>

/* A stretch of a sentence: plain words, or a measure in both units. */
typedef struct stretch {
  const char *words[2]; /* by lw_units; of plain words both are the same */
  size_t length[2];
  bool measure;
} stretch;

static const char EQUALS[] = " = ";
enum { EQUALS_LENGTH = sizeof EQUALS - 1 };

/* The pair at a brace, and where it ends; NULL: there is none. */
static const char *pair_at(const char *brace, stretch *pair) {
  if (*brace != '{') return NULL;
  const char *metric = brace + 1, *end = metric + strcspn(metric, "{}"), *equals = strstr(metric, EQUALS);
  if (*end != '}' || equals == NULL || equals >= end) return NULL;
  const char *us = equals + EQUALS_LENGTH;
  *pair = (stretch){{metric, us}, {(size_t)(equals - metric), (size_t)(end - us)}, true};
  return pair->length[0] > 0 && pair->length[1] > 0 ? end + 1 : NULL;
}

/* The stretch that begins there, and where it ends. */
static const char *next(const char *at, stretch *is) {
  const char *end = pair_at(at, is);
  if (end != NULL) return end;
  size_t length = *at == '{' ? 1 : strcspn(at, "{"); /* a brace of no pair is a word like any other */
  *is = (stretch){{at, at}, {length, length}, false};
  return at + length;
}

size_t lw_canned_pair(const char *brace) {
  stretch pair;
  const char *end = pair_at(brace, &pair);
  return end != NULL ? (size_t)(end - brace) : 0;
}

const char *lw_canned_told(lw_units units, const char *sentence, char *out, size_t size) {
  size_t used = 0;
  out[0] = '\0';
  for (stretch is; *sentence != '\0' && used + 1 < size;) {
    sentence = next(sentence, &is);
    used += (size_t)lw_print(out + used, size - used, "%.*s", (int)is.length[units], is.words[units]);
  }
  return out;
}

const char *lw_canned_both(const char *sentence, char *out, size_t size) {
  size_t used = 0;
  out[0] = '\0';
  for (stretch is; *sentence != '\0' && used + 1 < size;) {
    sentence = next(sentence, &is);
    used += (size_t)lw_print(out + used, size - used, is.measure ? "%.*s (%.*s)" : "%.*s", (int)is.length[0],
                             is.words[0], (int)is.length[1], is.words[1]);
  }
  return out;
}

void lw_canned_add_both(const char *sentence, lw_text *out) {
  for (stretch is; *sentence != '\0';) {
    sentence = next(sentence, &is);
    lw_text_addf(out, is.measure ? "%.*s (%.*s)" : "%.*s", (int)is.length[0], is.words[0], (int)is.length[1],
                 is.words[1]);
  }
}
