/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "hash.h"

#include <lowwall/base.h>

#include <string.h>

/* SHA-256, [FIPS180-4 6.2]: words of 32 bits, blocks of 64 bytes. */

enum { ROUNDS = 64, BLOCK = 64, LENGTH_AT = 56 };

/* [FIPS180-4 4.2.2] */
static const uint32_t CONSTANT[ROUNDS] = {
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

static uint32_t turn(uint32_t word, int bits) {
  return word >> bits | word << (32 - bits);
}

static void schedule(const unsigned char *block, uint32_t *word) {
  for (int i = 0; i < 16; i++)
    word[i] = (uint32_t)block[4 * i] << 24 | (uint32_t)block[4 * i + 1] << 16 |
              (uint32_t)block[4 * i + 2] << 8 | block[4 * i + 3];
  for (int i = 16; i < ROUNDS; i++) {
    uint32_t near = word[i - 15], far = word[i - 2];
    word[i] = word[i - 16] + (turn(near, 7) ^ turn(near, 18) ^ near >> 3) + word[i - 7] +
              (turn(far, 17) ^ turn(far, 19) ^ far >> 10);
  }
}

static void compress(lw_hash *hash, const unsigned char *block) {
  uint32_t word[ROUNDS], s[8];
  schedule(block, word);
  memcpy(s, hash->state, sizeof s);
  for (int i = 0; i < ROUNDS; i++) {
    uint32_t choice = (s[4] & s[5]) ^ (~s[4] & s[6]),
             majority = (s[0] & s[1]) ^ (s[0] & s[2]) ^ (s[1] & s[2]);
    uint32_t first =
        s[7] + (turn(s[4], 6) ^ turn(s[4], 11) ^ turn(s[4], 25)) + choice + CONSTANT[i] + word[i];
    uint32_t second = (turn(s[0], 2) ^ turn(s[0], 13) ^ turn(s[0], 22)) + majority;
    memmove(s + 1, s, 7 * sizeof *s);
    s[4] += first;
    s[0] = first + second;
  }
  for (int i = 0; i < 8; i++) hash->state[i] += s[i];
}

void lw_hash_start(lw_hash *hash) {
  *hash = (lw_hash){.state = {0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c,
                              0x1f83d9ab, 0x5be0cd19}};
}

void lw_hash_add(lw_hash *hash, const void *bytes, size_t count) {
  const unsigned char *from = bytes;
  for (size_t i = 0; i < count; i++) {
    hash->block[hash->bytes++ % BLOCK] = from[i];
    if (hash->bytes % BLOCK == 0) compress(hash, hash->block);
  }
}

void lw_hash_end(lw_hash *hash, char hex[LW_HASH_HEX]) {
  static const char DIGITS[] = "0123456789abcdef";
  uint64_t bits = hash->bytes * 8;
  lw_hash_add(hash, "\x80", 1);
  while (hash->bytes % BLOCK != LENGTH_AT) lw_hash_add(hash, "", 1);
  for (int i = 7; i >= 0; i--) lw_hash_add(hash, &(unsigned char){(unsigned char)(bits >> (8 * i))}, 1);
  for (int i = 0; i < 64; i++) hex[i] = DIGITS[hash->state[i / 8] >> (28 - 4 * (i % 8)) & 15u];
  hex[64] = '\0';
}
