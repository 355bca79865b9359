/* SPDX-License-Identifier: GPL-3.0-or-later */
/* Command lines that cannot be carried out: each is told the place and what to do instead. */
#include <criterion/criterion.h>

#include <string.h>

#include "support.h"

#define BED "docs/demo/bed.csv"
#define TERRACE "docs/demo/terrace.csv"
#define SCHEDULE "tests/faults/street.csv"

/* None of them writes anything, and none reads from a person. */
static const struct {
  const char *arguments, *says;
  int exit_status;
} lines[] = {
    {"check " BED " -- -o x", BED " and -o: one sheet at a time", 2},
    {"check - -", "- and -: one sheet at a time", 2},
    {"check ''", "an empty argument is neither", 2},
    {"check docs", "docs: unreadable", 2},
    {"check " BED " -o docs/", "docs/: it is a folder; a name for the file in it is wanted", 1},
    {"check " BED " -o no-such/x", "no-such/x: there is no such folder; make it first", 1},
    {"check " BED " -o no-such/", "no-such/: there is no such folder; make it first", 1},
    {"check " BED " -o " TERRACE "/x", "/x: a file stands where a folder is wanted", 1},
    {"check " BED " -o " BED, BED " is the sheet itself; give the output another name", 2},
    {"check " SCHEDULE " -o " SCHEDULE, SCHEDULE " is the sheet itself; give the output another name", 2},
    {"check " BED " --tables tables -o tables/soils.csv", "is a table in use; give the output another name",
     2},
    {"check " BED " -o /dev/full", "/dev/full: No space left on device", 1},
    {"check " SCHEDULE " -o /dev/full", "/dev/full: No space left on device", 1},
    {"check " BED " >/dev/full", "standard output: No space left on device", 1},
    {"order " TERRACE " -o " TERRACE, TERRACE " is the sheet itself", 2},
    {"draw " BED " --width 1e99", "--width 1e99: a number of millimetres from 90 to 400 is wanted", 2},
    {"draw " BED " --width '180 mm'", "as in --width 180", 2},
    {"draw " BED " -o bed.gif", "-o bed.gif: a name that ends in .svg, .pdf or .png is wanted", 2},
    {"draw " SCHEDULE, "is a schedule, and this is for one wall; give the sheet of one", 2},
    {"precheck " BED " -o -", "-o FILE is wanted, and FILE ends in .pdf or .html", 2},
    {"precheck " SCHEDULE " -o x.pdf", "is a schedule; give it a folder", 2},
    {"precheck " SCHEDULE " -o no-such/deep/", "no-such/deep/: there is no such folder; make it first", 1},
    {"precheck " SCHEDULE " -o " BED "/", BED "/: a file stands where a folder is wanted", 1},
    {"precheck " SCHEDULE " -o docs", "docs holds files already, and none is overwritten", 2},
    {"precheck --verify " BED, "--verify " BED ": that is no hash of a pre-check", 2},
    {"precheck --verify no-such.pdf", "no-such.pdf: unreadable: the file cannot be read; wanted: a pre-check",
     2},
    {"precheck --verify no-such.pdf --units us", "takes the sheet that is attached to it, and no other", 2},
    {"fit " BED " docs", "docs: unreadable: the file cannot be read; wanted: a list of blocks", 2},
    {"fit - -", "only one of sheet and list can be standard input", 2},
    {"fit " BED " " TERRACE " -o " TERRACE, TERRACE " is the list itself", 2},
    {"ask -o docs", "-o docs: it is a folder; a name for the file in it is wanted", 2},
    {"ask -o " BED, "is there already", 2},
    {"ask -o -", "give the sheet a file", 2},
    {"ask -", "give the sheet as a file", 2},
    {"form -o -", "-o FILE is wanted", 2},
    {"new bed -o " BED, BED ": the file is there already; give another name", 1},
    {"new bed ground", "one kind at a time; \"ground\" is too much", 2},
    {"list limits ''", "lowwall list places has those that are", 2},
    {"pressure " BED " " TERRACE, "one sheet at a time", 2},
    {"pressure " BED " -o " BED, "is the sheet itself", 2},
    {"bearing --units foot", "--units foot: metric or us is wanted", 2},
    {"slip --json=yes", "there is no option --json=yes, or it takes no value", 2},
    {"help check draw", "help takes one command, not \"draw\" too", 2},
    {"version now", "version takes nothing, not \"now\"", 2},
};

Test(refusals, name_the_place_and_the_cure) {
  for (size_t i = 0; i < sizeof lines / sizeof *lines; i++) {
    ran r = run_lowwall(lines[i].arguments);
    cr_expect(r.exit_status == lines[i].exit_status && strstr(r.said, lines[i].says), "%s: %d, %s",
              lines[i].arguments, r.exit_status, r.said);
  }
}
