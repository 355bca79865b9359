/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include <dirent.h>
#include <errno.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include <lowwall/report.h>

#include "report/precheck/index.h"
#include "report/precheck/file_names.h"
#include "output.h"
#include "precheck_asked.h"
#include "say.h"
#include "wall_rows.h"

/* A pre-check a row of a schedule, and the page before them. The folder is there as a whole or not at all:
 * it is new or empty, so that nothing of anybody else's is overwritten, and what was begun is taken away. */

typedef struct foldering {
  const lw_precheck_asked *asked;
  lw_one_wall *wall;
  lw_file_names names;
  lw_precheck_index index;
  bool made;   /* the folder is this command's own */
  bool failed; /* nothing more is written, and all is taken away */
  int exit_status;
} foldering;

static void fail(foldering *f, int exit_status) {
  f->failed = true;
  f->exit_status = exit_status;
}

static void path_of(const foldering *f, const char *name, lw_text *path) {
  const char *folder = f->asked->wall.output;
  size_t length = strlen(folder);
  bool slash = length > 0 && folder[length - 1] == '/';
  lw_text_addf(path, "%s%s%s", folder, slash ? "" : "/", name);
}

/* Hidden files of a system do not count. gives 0 where it is there and empty, else why it cannot be used */
static int look_into(const char *folder) {
  DIR *open = opendir(folder);
  int why = 0;
  if (open == NULL) return errno;
  for (const struct dirent *entry; (entry = readdir(open)) != NULL;)
    if (entry->d_name[0] != '.') why = ENOTEMPTY;
  closedir(open);
  return why;
}

static void make_folder(foldering *f) {
  const char *folder = f->asked->wall.output;
  f->made = mkdir(folder, 0777) == 0;
  int why = f->made ? 0 : errno;
  if (why == EEXIST) why = look_into(folder);
  if (why == ENOTEMPTY)
    fail(f,
         lw_cli_refuse("precheck",
                       "bad-option: %.200s holds files already, and none is overwritten; give a new folder "
                       "or an empty one",
                       folder));
  else if (why != 0)
    fail(f, lw_output_not_written(folder, lw_output_why(why)));
}

static bool write_file(foldering *f, const char *name, lw_text *text) {
  lw_text path = {0};
  path_of(f, name, &path);
  if (path.failed) {
    lw_text_free(text);
    fail(f, lw_cli_no_memory());
  } else if (lw_output_write_new(path.data, text, LW_EXIT_DONE) != LW_EXIT_DONE) {
    fail(f, LW_EXIT_OTHER);
  }
  lw_text_free(&path);
  return !f->failed;
}

static void take_away(const foldering *f) {
  for (size_t i = 0; i < f->index.count; i++) {
    lw_text path = {0};
    path_of(f, f->index.entry[i].file, &path);
    if (f->index.entry[i].file[0] && !path.failed) unlink(path.data);
    lw_text_free(&path);
  }
  if (f->made) rmdir(f->asked->wall.output);
}

static void refuse_row(foldering *f, int row) {
  fflush(stdout);
  lw_cli_print_faults(&f->wall->faults);
  f->exit_status = LW_EXIT_BAD_INPUT;
  lw_precheck_index_add_faults(&f->index, &f->wall->c, row, &f->wall->faults);
}

static void write_row(foldering *f, int row) {
  char hash[LW_HASH_HEX] = "", name[LW_FILE_NAME];
  lw_one_wall *wall = f->wall;
  lw_text text = {0};
  lw_error error = {0};
  lw_status status = lw_precheck_bytes(f->asked, wall, hash, &text, &error);
  if (status != LW_OK) {
    lw_text_free(&text);
    fail(f, lw_cli_fail("precheck", status, &error));
    return;
  }
  lw_file_names_make(&f->names, wall->c.about.mark.text, row, f->asked->html ? ".html" : ".pdf", name);
  if (write_file(f, name, &text)) lw_precheck_index_add(&f->index, &wall->result, row, name);
}

static bool take_row(void *context, int row, lw_one_wall *wall) {
  foldering *f = context;
  if (f->index.count == 0) make_folder(f);
  if (f->failed) return false;
  if (wall->faults.count > 0)
    refuse_row(f, row);
  else
    write_row(f, row);
  if (f->index.failed || f->index.words.failed || f->names.failed) fail(f, lw_cli_no_memory());
  return !f->failed;
}

static void write_index(foldering *f) {
  lw_text page = {0};
  if (lw_precheck_index_html(&f->index, f->asked->wall.sheet, f->wall->tables, &page) == LW_OK) {
    write_file(f, "index.html", &page);
  } else {
    lw_text_free(&page);
    fail(f, lw_cli_no_memory());
  }
}

int lw_precheck_folder(const lw_precheck_asked *asked, lw_one_wall *wall) {
  foldering f = {.asked = asked, .wall = wall, .exit_status = LW_EXIT_DONE};
  lw_status status = lw_wall_each_row(&asked->wall, wall, take_row, &f);
  if (status != LW_OK) fail(&f, status == LW_FAULTS ? LW_EXIT_BAD_INPUT : LW_EXIT_OTHER);
  if (!f.failed) write_index(&f);
  if (f.failed) take_away(&f);
  lw_file_names_free(&f.names);
  lw_precheck_index_free(&f.index);
  return f.exit_status;
}
