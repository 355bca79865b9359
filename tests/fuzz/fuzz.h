/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_TESTS_FUZZ_H
#define LOWWALL_TESTS_FUZZ_H

#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <lowwall/report.h>
#include <lowwall/result.h>

/* What the programs for libFuzzer share. Each takes bytes that it makes up, and aborts where a promise
 * breaks; the sanitizers see to the rest. */

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count);

#define FUZZ_EXPECT(promise) \
  do { \
    if (!(promise)) { \
      fprintf(stderr, "%s:%d: broken: %s\n", __FILE__, __LINE__, #promise); \
      abort(); \
    } \
  } while (0)

/* The built-in tables, read once. */
static inline const lw_tables *fuzz_tables(void) {
  static lw_tables *tables;
  if (tables == NULL) {
    tables = calloc(1, sizeof *tables);
    FUZZ_EXPECT(tables != NULL && lw_tables_read(NULL, tables, NULL) == LW_OK);
  }
  return tables;
}

/* Bytes taken from the front as they are wanted; zeros when there are no more. */
typedef struct fuzz_bytes {
  const uint8_t *at;
  size_t left;
} fuzz_bytes;

static inline unsigned fuzz_byte(fuzz_bytes *from) {
  if (from->left == 0) return 0;
  from->left--;
  return *from->at++;
}

static inline unsigned fuzz_below(fuzz_bytes *from, unsigned count) {
  unsigned value = fuzz_byte(from) << 8;
  return (value | fuzz_byte(from)) % count;
}

/* Mostly from low to high, now and then an end of it, or anything at all. */
static inline double fuzz_double(fuzz_bytes *from, double low, double high) {
  double value;
  uint8_t raw[sizeof value];
  switch (fuzz_byte(from)) {
  case 0: return low;
  case 1: return high;
  case 2: return 0.0;
  case 3:
    for (size_t i = 0; i < sizeof raw; i++) raw[i] = (uint8_t)fuzz_byte(from);
    memcpy(&value, raw, sizeof value);
    return value;
  default: return low + (high - low) * fuzz_below(from, 65536) / 65535.0;
  }
}

#endif
