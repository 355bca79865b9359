/* SPDX-License-Identifier: GPL-3.0-or-later */

/* What gzip packed, unpacked (RFC 1951): older phones have no way of their own. A stream that is not whole
 * throws. */

const LENGTHS = [3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15, 17, 19, 23, 27, 31, 35, 43, 51, 59, 67, 83, 99, 115, 131, 163, 195, 227, 258];
const LENGTH_BITS = [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 4, 4, 5, 5, 5, 5, 0];
const DISTANCES = [1, 2, 3, 4, 5, 7, 9, 13, 17, 25, 33, 49, 65, 97, 129, 193, 257, 385, 513, 769, 1025, 1537, 2049, 3073, 4097, 6145,
  8193, 12289, 16385, 24577];
const DISTANCE_BITS = [0, 0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 8, 8, 9, 9, 10, 10, 11, 11, 12, 12, 13, 13];
const ORDER = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];
const LONGEST = 15;

/* A canonical code: how many symbols have each length, and the symbols by length. */
function codeOf(lengths) {
  const count = new Array(LONGEST + 1).fill(0);
  for (const length of lengths) count[length] += 1;
  count[0] = 0;
  const at = [0, 0];
  for (let i = 1; i < LONGEST; i++) at[i + 1] = at[i] + count[i];
  const symbol = [];
  lengths.forEach((length, i) => { if (length > 0) symbol[at[length]++] = i; });
  return { count, symbol };
}

class Bits {
  constructor(bytes, at) {
    this.bytes = bytes;
    this.at = at;
    this.held = 0;
    this.holds = 0;
  }

  take(count) {
    while (this.holds < count) {
      if (this.at >= this.bytes.length) throw new Error("the packed module is cut short");
      this.held |= this.bytes[this.at++] << this.holds;
      this.holds += 8;
    }
    const value = this.held & ((1 << count) - 1);
    this.held >>>= count;
    this.holds -= count;
    return value;
  }

  symbolOf(code) {
    let value = 0, first = 0, index = 0;
    for (let length = 1; length <= LONGEST; length++) {
      value |= this.take(1);
      const count = code.count[length];
      if (value - count < first) return code.symbol[index + (value - first)];
      index += count;
      first = (first + count) << 1;
      value <<= 1;
    }
    throw new Error("the packed module is broken");
  }
}

const FIXED = [codeOf([...new Array(144).fill(8), ...new Array(112).fill(9), ...new Array(24).fill(7), ...new Array(8).fill(8)]),
  codeOf(new Array(30).fill(5))];

function dynamic(bits) {
  const literals = bits.take(5) + 257, distances = bits.take(5) + 1, given = bits.take(4) + 4;
  const small = new Array(19).fill(0);
  for (let i = 0; i < given; i++) small[ORDER[i]] = bits.take(3);
  const code = codeOf(small), lengths = [];
  while (lengths.length < literals + distances) {
    const symbol = bits.symbolOf(code);
    if (symbol < 16) lengths.push(symbol);
    else if (symbol === 16) lengths.push(...new Array(3 + bits.take(2)).fill(lengths[lengths.length - 1]));
    else lengths.push(...new Array(symbol === 17 ? 3 + bits.take(3) : 11 + bits.take(7)).fill(0));
  }
  return [codeOf(lengths.slice(0, literals)), codeOf(lengths.slice(literals))];
}

function inflateBlock(bits, [literal, distance], out, at) {
  for (;;) {
    const symbol = bits.symbolOf(literal);
    if (symbol === 256) return at;
    if (symbol < 256) {
      out[at++] = symbol;
      continue;
    }
    const length = LENGTHS[symbol - 257] + bits.take(LENGTH_BITS[symbol - 257]);
    const far = bits.symbolOf(distance);
    const back = DISTANCES[far] + bits.take(DISTANCE_BITS[far]);
    for (let i = 0; i < length; i++, at++) out[at] = out[at - back];
  }
}

function stored(bits, out, at) {
  bits.held = 0;
  bits.holds = 0;
  const length = bits.bytes[bits.at] | (bits.bytes[bits.at + 1] << 8);
  out.set(bits.bytes.subarray(bits.at + 4, bits.at + 4 + length), at);
  bits.at += 4 + length;
  return at + length;
}

/* A member of gzip without a name, as `gzip -n` writes it from a pipe: ten bytes of head, the stream, eight of
 * foot, the last four of which are the length. */
export function gunzip(packed) {
  const foot = new DataView(packed.buffer, packed.byteOffset + packed.length - 4, 4);
  const out = new Uint8Array(foot.getUint32(0, true));
  const bits = new Bits(packed, 10);
  let at = 0, last = 0;
  while (!last) {
    last = bits.take(1);
    const kind = bits.take(2);
    if (kind === 3) throw new Error("the packed module is broken");
    at = kind === 0 ? stored(bits, out, at) : inflateBlock(bits, kind === 1 ? FIXED : dynamic(bits), out, at);
  }
  if (at !== out.length) throw new Error("the packed module is not whole");
  return out;
}
