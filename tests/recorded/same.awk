# SPDX-License-Identifier: GPL-3.0-or-later
# Are two records the same?   awk -f same.awk RECORDED TODAY
# Byte for byte, except below a command line with --json: there a number may differ by 1e-9 of its size.
function number_at(text) {
  return match(text, /-?[0-9]+(\.[0-9]+)?([eE][-+]?[0-9]+)?/)
}
function close_enough(a, b,    size, gap) {
  size = a < 0 ? -a : a
  gap = a < b ? b - a : a - b
  return gap <= 1e-9 * (size > 1 ? size : 1)
}
function same_but_for_last_bits(a, b,    start_a, length_a, number_a) {
  while (number_at(a)) {
    start_a = RSTART; length_a = RLENGTH; number_a = substr(a, start_a, length_a)
    if (!number_at(b) || RSTART != start_a) return 0
    if (substr(a, 1, start_a - 1) != substr(b, 1, start_a - 1)) return 0
    if (!close_enough(number_a + 0, substr(b, RSTART, RLENGTH) + 0)) return 0
    a = substr(a, start_a + length_a)
    b = substr(b, RSTART + RLENGTH)
  }
  return a == b
}
FNR == 1 { file++ }
file == 1 { recorded[FNR] = $0; count = FNR; next }
{
  if ($0 ~ /^\$ /) json = ($0 ~ /--json/)
  if (FNR > count) exit bad = 1
  if ($0 != recorded[FNR] && !(json && same_but_for_last_bits(recorded[FNR], $0))) exit bad = 1
  seen = FNR
}
END { exit bad || seen != count }
