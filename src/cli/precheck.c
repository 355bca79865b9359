/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <ctype.h>
#include <string.h>
#include <sys/stat.h>

#include <lowwall/report.h>

#include "cli.h"
#include "options.h"
#include "output.h"
#include "precheck_asked.h"
#include "precheck_file.h"

static const char help[] =
    "lowwall precheck [--paper a4|letter] [--date DAY] [--units metric|us] [--tables DIR]\n"
    "                 -o FILE [SHEET] [ITEM=VALUE ...]\n"
    "lowwall precheck [--as pdf|html] [--paper a4|letter] [--date DAY] [--units metric|us] [--tables DIR]\n"
    "                 -o FOLDER/ SCHEDULE [ITEM=VALUE ...]\n"
    "lowwall precheck --verify HASH [--date DAY] [--tables DIR] [SHEET] [ITEM=VALUE ...]\n"
    "lowwall precheck --verify FILE.pdf [--tables DIR]\n"
    "\n"
    "Make the pages that a council can file: who must see it, heights, the drawn section, what was given "
    "and\n"
    "assumed, every check with what it asks and has, what is not checked, limits with their clauses, and a "
    "hash\n"
    "of what went in. FILE ends in .pdf or .html. It certifies nothing.\n"
    "\n"
    "Of a schedule each wall has a file in FOLDER, named by its mark as far as a file can be, and index.html "
    "lists\n"
    "them by who must see them, the gravest first, a row with faults as not checked. FOLDER is new or empty: "
    "no\n"
    "file of anybody's is overwritten, and where something fails none is left.\n"
    "\n"
    "  --as pdf|html       of a schedule: what the files in FOLDER are; pdf if not given\n"
    "  --paper a4|letter   the paper of a PDF; a4 if not given\n"
    "  --date YYYY-MM-DD   the day of issue, as the item date; no clock is read\n"
    "  --verify HASH       say whether this sheet, these tables and this version are those of a pre-check;\n"
    "                      HASH is whole, or its first digits as at the foot of a page\n"
    "  --verify FILE.pdf   the same of the sheet that is attached to it, and whether its pages are made of "
    "it\n"
    "  --units metric|us   what it is written in; left out, as most of the sheet is measured\n"
    "  --tables DIR        values of your own: each CSV file in DIR replaces the table of its name\n"
    "  -o, --output FILE   write there, the whole of it or nothing\n"
    "  -h, --help          this page\n"
    "\n"
    "Exit status: 0 done, or the hash belongs; 1 it does not, or anything else; 2 bad input or bad "
    "options,\n"
    "of a schedule also where a row has faults.\n";

/* By its last letter, or because it is one. */
static bool is_folder(const char *name) {
  struct stat there;
  if (name == NULL || name[0] == '\0') return false;
  return name[strlen(name) - 1] == '/' || (stat(name, &there) == 0 && S_ISDIR(there.st_mode));
}

static bool is_file(const char *name) {
  return lw_cli_ends_in(name, ".pdf") || lw_cli_ends_in(name, ".html");
}

static bool agree(lw_precheck_asked *asked) {
  const char *name = asked->wall.output;
  asked->folder = is_folder(name);
  bool html = asked->as && strcmp(asked->as, "html") == 0;
  asked->html = asked->folder ? html : lw_cli_ends_in(name, ".html");
  if (asked->verify && name)
    lw_cli_refuse("precheck", "bad-option: --verify writes nothing; leave out -o");
  else if (!asked->verify && (!name || (!asked->folder && !is_file(name))))
    lw_cli_refuse("precheck", "bad-option: -o FILE is wanted, and FILE ends in .pdf or .html; of a schedule "
                              "-o FOLDER/");
  else if (asked->as && !asked->folder)
    lw_cli_refuse("precheck", "bad-option: --as is for the files in a folder; a file says it by its name");
  else
    return true;
  return false;
}

/* The foot of each page has so many digits of the hash, its last page all of them. */
enum { SHORT_HASH = 8, FULL_HASH = LW_HASH_HEX - 1 };

/* As people read it off paper: blanks and the size of letters do not count. The digits, or 0: it is no
 * hash. */
static size_t digits_of(const char *typed, char digits[LW_HASH_HEX]) {
  size_t count = 0;
  for (; *typed != '\0'; typed++) {
    if (isspace((unsigned char)*typed)) continue;
    if (!isxdigit((unsigned char)*typed) || count >= FULL_HASH) return 0;
    digits[count++] = (char)tolower((unsigned char)*typed);
  }
  digits[count] = '\0';
  return count >= SHORT_HASH ? count : 0;
}

/* false after saying what is wrong */
static bool is_hash(const char *typed) {
  char digits[LW_HASH_HEX];
  if (digits_of(typed, digits) > 0) return true;
  lw_cli_refuse("precheck",
                "bad-option: --verify %.70s: that is no hash of a pre-check, which has %d digits (0 to 9, "
                "a to f), or the first %d or more of them; nor a FILE.pdf",
                typed, FULL_HASH, SHORT_HASH);
  return false;
}

/* A PDF brings its sheet along, and its day of issue. gives as read_options */
static int take_file(const lw_arguments *arguments, const lw_precheck_asked *asked) {
  bool alone = arguments->count == 0 && !asked->wall.output && !asked->wall.units;
  if (alone && !asked->date && !asked->paper && !asked->as) return 0;
  return lw_cli_refuse("precheck",
                       "bad-option: --verify %.200s takes the sheet that is attached to it, and no other",
                       asked->verify) +
         1;
}

/* gives 0 to go on, else the exit status + 1 */
static int read_options(int argc, char **argv, lw_precheck_asked *asked) {
  const lw_option options[] = {
      LW_OPTION_PAPER(&asked->paper),        {"verify", .text = &asked->verify},
      {"date", .text = &asked->date},        {"as", .text = &asked->as, .words = "pdf or html"},
      LW_OPTION_UNITS(&asked->wall.units),   LW_OPTION_TABLES(&asked->wall.tables),
      LW_OPTION_OUTPUT(&asked->wall.output), {0},
  };
  lw_arguments rest;
  int ended = lw_options_read(options, help, argc, argv, &rest);
  if (ended > 0) return ended;
  if (asked->verify && lw_cli_ends_in(asked->verify, ".pdf")) return take_file(&rest, asked);
  if (asked->verify && !is_hash(asked->verify)) return LW_EXIT_BAD_INPUT + 1;
  if (!lw_wall_take_arguments(&rest, &asked->wall) || !agree(asked)) return LW_EXIT_BAD_INPUT + 1;
  lw_wall_add_item(&asked->wall, "date", asked->date);
  return 0;
}

/* Another sheet's hash shares one digit in sixteen; one that is mistyped all but a few. A digit too many or
 * too few shifts the rest, so that both ends are compared. */
static bool mistyped(const char *typed, size_t count, const char *hash) {
  size_t same = 0, head = 0, tail = 0;
  size_t whole = count == FULL_HASH - 1 ? FULL_HASH : count;
  for (size_t i = 0; i < count; i++) same += typed[i] == hash[i] ? 1 : 0;
  while (head < count && typed[head] == hash[head]) head++;
  while (tail < count - head && typed[count - 1 - tail] == hash[whole - 1 - tail]) tail++;
  return 4 * same >= 3 * count || head + tail + 3 > whole;
}

/* The first digit that is another, from 1. */
static int first_wrong(const char *typed, const char *hash) {
  int at = 0;
  while (typed[at] == hash[at] && typed[at] != '\0') at++;
  return at + 1;
}

static int say_wrong(const char *typed, size_t count, const char *hash) {
  lw_text text = {0};
  bool near = mistyped(typed, count, hash);
  if (near)
    lw_text_addf(&text,
                 "The hash is mistyped, or nearly that of this sheet by chance: digit %d is \"%.1s\" on its "
                 "paper.\n",
                 first_wrong(typed, hash), hash + first_wrong(typed, hash) - 1);
  else
    lw_text_addf(&text, "The hash does NOT belong to this sheet with these tables and lowwall %s.\n",
                 LW_VERSION);
  lw_text_addf(&text, "Theirs is %s\n", hash);
  return lw_output_write(NULL, &text, near ? LW_EXIT_BAD_INPUT : LW_EXIT_OTHER);
}

static int verify(const lw_precheck_asked *asked, const char *hash) {
  char typed[LW_HASH_HEX];
  size_t count = digits_of(asked->verify, typed);
  if (strncmp(typed, hash, count) != 0) return say_wrong(typed, count, hash);
  lw_text text = {0};
  lw_text_addf(&text, "The hash belongs to this sheet, these tables and lowwall %s%s.\n", LW_VERSION,
               count < FULL_HASH ? ", by its first digits" : "");
  return lw_output_write(NULL, &text, LW_EXIT_DONE);
}

static int make(const lw_precheck_asked *asked, lw_one_wall *wall) {
  char hash[LW_HASH_HEX] = "";
  lw_error error = {0};
  lw_text out = {0};
  lw_status status = asked->verify ? lw_precheck_hash(&wall->result.given, asked->wall.tables, hash, &error)
                                   : lw_precheck_bytes(asked, wall, hash, &out, &error);
  if (status == LW_OK && asked->verify) return verify(asked, hash);
  if (status == LW_OK) return lw_output_write(asked->wall.output, &out, LW_EXIT_DONE);
  lw_text_free(&out);
  return lw_cli_fail("precheck", status, &error);
}

/* One wall in one file, many in a folder; an empty file is neither, and is told so when it is read.
 * gives 0 to go on, else the exit status + 1 */
static int refuse_other(const lw_precheck_asked *asked, const lw_one_wall *wall) {
  const char *sheet = asked->wall.sheet ? asked->wall.sheet : "these items";
  bool empty = asked->wall.sheet && wall->input.length == 0;
  if (asked->verify || empty || wall->many == asked->folder) return 0;
  if (wall->many)
    return lw_cli_refuse(
               "precheck",
               "bad-option: %.200s is a schedule; give it a folder, as in -o prechecks/, for a file a "
               "wall",
               sheet) +
           1;
  return lw_cli_refuse("precheck",
                       "bad-option: %.200s: a folder is for a schedule; of one wall give the file", sheet) +
         1;
}

int lw_cli_precheck(int argc, char **argv) {
  lw_precheck_asked asked = {.wall = {.command = "precheck"}};
  int ended = read_options(argc, argv, &asked), exit_status = LW_EXIT_OTHER;
  if (ended > 0) return ended - 1;
  if (asked.verify && lw_cli_ends_in(asked.verify, ".pdf"))
    return lw_precheck_verify_file(&asked.wall, asked.verify);
  lw_one_wall *wall = lw_wall_open(&asked.wall, &exit_status);
  if (wall == NULL) return exit_status;
  ended = refuse_other(&asked, wall);
  if (ended == 0 && asked.folder) {
    exit_status = lw_precheck_folder(&asked, wall);
  } else {
    if (ended == 0) ended = lw_wall_run(&asked.wall, wall);
    exit_status = ended > 0 ? ended - 1 : make(&asked, wall);
  }
  lw_wall_close(wall);
  return exit_status;
}
