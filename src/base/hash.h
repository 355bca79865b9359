/* SPDX-License-Identifier: GPL-3.0-or-later */
#ifndef LOWWALL_BASE_HASH_H
#define LOWWALL_BASE_HASH_H

#include <lowwall/base.h>

typedef struct lw_hash {
  uint32_t state[8];
  uint64_t bytes;
  unsigned char block[64];
} lw_hash;

/** Start; add bytes, as often as wanted; end, which gives 64 hexadecimal digits.
 *  from  [FIPS180-4 6.2]; tested by the examples of the same standard */
void lw_hash_start(lw_hash *hash);
void lw_hash_add(lw_hash *hash, const void *bytes, size_t count);
void lw_hash_end(lw_hash *hash, char hex[LW_HASH_HEX]);

#endif
