/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "recompute.h"

#include <ctype.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* A step is a formula, what is put in for its names and what comes of it, on three lines or on one:
 *
 *   Ph   = P cos a
 *        : 0.690 cos 0.00
 *        = 0.68979 kN/m   [SOURCE]
 *
 *   R   = mu V = 0.4500 x 14.7200 = 6.6240 kN/m; a note
 *
 * Put in are either the formula's numbers in its own shape, or its names: "b = 0.00 deg, phi = 30.00 deg". */

typedef struct span {
  const char *begin;
  size_t length;
} span;

static size_t indent_of(const char *line) {
  return strspn(line, " ");
}

static size_t symbol_length(const char *at) {
  size_t length = 0;
  if (!isalpha((unsigned char)at[0])) return 0;
  while (isalnum((unsigned char)at[length]) || at[length] == '\'') length++;
  return length <= 8 ? length : 0;
}

bool recompute_is_step(const char *line) {
  const char *at = line + indent_of(line);
  size_t length = symbol_length(at);
  if (at == line || length == 0) return false;
  at += length + strspn(at + length, " ");
  return strncmp(at, "= ", 2) == 0;
}

/* Where a top-level mark stands next, outside brackets; the end of the span where it does not. */
static size_t find(span s, const char *mark) {
  int depth = 0;
  size_t length = strlen(mark);
  for (size_t i = 0; i < s.length; i++) {
    char c = s.begin[i];
    if (depth == 0 && i + length <= s.length && strncmp(s.begin + i, mark, length) == 0) return i;
    depth += (c == '(' || c == '[') - (c == ')' || c == ']');
  }
  return s.length;
}

static bool has_digit(span s) {
  for (size_t i = 0; i < s.length; i++)
    if (isdigit((unsigned char)s.begin[i])) return true;
  return false;
}

static span after(span s, size_t used) {
  return (span){s.begin + used, s.length - used};
}

/* "b = 0.00 deg": a name bound to a value, which may itself be worked out. */
static bool bind(span item, evaluate_names *names) {
  size_t name = symbol_length(item.begin);
  evaluated value;
  if (name == 0 || strncmp(item.begin + name, " = ", 3) != 0 || names->count == EVALUATE_NAMES) return false;
  span rest = after(item, name + 3);
  if (!evaluate(rest.begin, rest.length, NULL, NULL, &value)) return false;
  evaluate_name *bound = &names->of[names->count++];
  snprintf(bound->name, sizeof bound->name, "%.*s", (int)name, item.begin);
  bound->value = value.value;
  bound->half = value.half;
  return true;
}

/* Names put in one by one; words without a number may follow. */
static bool bind_all(span inserted, evaluate_names *names) {
  while (inserted.length > 0) {
    size_t end = find(inserted, ", ");
    span item = {inserted.begin, end};
    if (!bind(item, names) && (names->count == 0 || has_digit(item))) return false;
    inserted = after(inserted, end < inserted.length ? end + 2 : end);
  }
  return names->count > 0;
}

/* The formula by hand, in numbers; words without a number may follow a comma. */
static bool work_out(span inserted, const char *formula, evaluated *out) {
  size_t end = find(inserted, ", ");
  if (has_digit(after(inserted, end))) return false;
  return evaluate(inserted.begin, end, NULL, formula, out);
}

static bool put_in(span formula, span inserted, evaluated *out) {
  evaluate_names names = {0};
  char words[RECOMPUTE_KEY_MAX];
  snprintf(words, sizeof words, "%.*s", (int)formula.length, formula.begin);
  if (bind_all(inserted, &names)) return evaluate(formula.begin, formula.length, &names, words, out);
  return work_out(inserted, words, out);
}

/* A result has five digits, of which %g leaves out the last ones when they are noughts, or four decimals. */
static double half_of_five_digits(const char *number, double value) {
  double half = fabs(value) > 0.0 ? 0.5 * pow(10.0, floor(log10(fabs(value))) - 4.0) : 0.5e-5;
  double printed = evaluate_half_digit(number);
  return fabs(printed - 0.5e-4) < 1e-12 ? fmax(half, printed) : half;
}

/* "= 0.68979 kN/m   [SOURCE]", "0.4000 kN/m, words": a number, its unit, words or a source. */
static bool read_result(span result, bool five, double *value, double *half) {
  char *end;
  *value = strtod(result.begin, &end);
  if (end == result.begin) return false;
  double printed = evaluate_half_digit(result.begin);
  *half = five ? half_of_five_digits(result.begin, *value) : printed > 0.0 ? printed : 0.5;
  span rest = after(result, (size_t)(end - result.begin));
  rest = after(rest, rest.length > 0 && *rest.begin == ' ' ? 1 : 0);
  rest = after(rest, evaluate_unit(rest.begin));
  span asked = {rest.begin, find(rest, "; needs ")};
  span words = {asked.begin, find(asked, "[")};
  return !has_digit(words);
}

/* Under one heading a symbol means one thing. */
static void say_once(recompute *r, const char *line, double value, double half) {
  const char *symbol = line + indent_of(line);
  size_t length = symbol_length(symbol);
  for (int i = 0; i < r->said.count; i++) {
    const evaluate_name *said = &r->said.of[i];
    if (strlen(said->name) != length || strncmp(said->name, symbol, length) != 0) continue;
    if (fabs(said->value - value) > said->half + half)
      recompute_fails(r, line, "the symbol has come to another value under this heading");
    return;
  }
  if (r->said.count == EVALUATE_NAMES) return;
  evaluate_name *one = &r->said.of[r->said.count++];
  snprintf(one->name, sizeof one->name, "%.*s", (int)length, symbol);
  one->value = value;
  one->half = half;
}

static void judge(recompute *r, const char *line, const evaluated *made, double value, double half) {
  double allowed = 1.02 * (made->half + half) + 1e-9 * fabs(value);
  char why[120];
  say_once(r, line, value, half);
  if (fabs(made->value - value) <= allowed) {
    r->steps++;
    return;
  }
  snprintf(why, sizeof why, "comes to %.6g, printed %.6g, its digits allow %.2g", made->value, value,
           allowed);
  recompute_fails(r, line, why);
}

static span line_of(const char *line) {
  return (span){line, strcspn(line, "\n")};
}

/* What follows the head: ": put in" and "= result" on lines of their own. */
static bool continues(const char *line, char mark) {
  size_t in = indent_of(line);
  return in > 4 && line[in] == mark && line[in + 1] == ' ';
}

static span body(const char *line) {
  return after(line_of(line), indent_of(line) + 2);
}

static void three_lines(recompute *r, const char *line, span formula, span inserted, span result) {
  double value, half;
  evaluated made;
  bool read = read_result(result, true, &value, &half);
  if (!read || !put_in(formula, inserted, &made))
    recompute_fails(r, line, read ? "what is put in cannot be worked out" : "no result");
  else
    judge(r, line, &made, value, half);
}

/* "mu V = 0.45 x 14.72 = 6.6240 kN/m": each piece that has only numbers comes to the last one. */
static void one_line(recompute *r, const char *line, span chain) {
  double value, half;
  evaluated made;
  span formula = {chain.begin, 0}, piece = {chain.begin, find(chain, " = ")};
  bool worked = false;
  while (piece.length < chain.length) {
    chain = after(chain, piece.length + 3);
    if (!worked && has_digit(piece)) {
      char words[RECOMPUTE_KEY_MAX];
      snprintf(words, sizeof words, "%.*s", (int)formula.length, formula.begin);
      worked = work_out(piece, words, &made);
    }
    formula = piece;
    piece = (span){chain.begin, find(chain, " = ")};
  }
  if (!worked || !read_result(piece, false, &value, &half))
    recompute_fails(r, line, worked ? "no result" : "nothing that can be worked out");
  else
    judge(r, line, &made, value, half);
}

const char *recompute_step(recompute *r, const char *line) {
  span head = line_of(line);
  size_t used = (size_t)(strstr(line, "= ") - line) + 2;
  span formula = after(head, used);
  const char *second = recompute_next(line), *third = recompute_next(second);
  if (continues(second, ':') && continues(third, '=')) {
    three_lines(r, line, formula, body(second), body(third));
    return recompute_next(third);
  }
  if (continues(second, '=')) {
    three_lines(r, line, (span){formula.begin, 0}, formula, body(second));
    return third;
  }
  one_line(r, line, formula);
  return second;
}
