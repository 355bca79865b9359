/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include "output.h"

#include <errno.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "interrupt.h"
#include "say.h"

int lw_output_not_written(const char *name, const char *why) {
  char said[256];
  lw_print(said, sizeof said, "%s", name != NULL ? name : "standard output");
  lw_cli_clean(said);
  fprintf(stderr, "lowwall: not-written: %s: %s\n", said, why);
  return LW_EXIT_OTHER;
}

const char *lw_output_why(int error) {
  if (error == ENOENT) return "there is no such folder; make it first";
  if (error == ENOTDIR) return "a file stands where a folder is wanted; give another name";
  return strerror(error);
}

/* A reader that closed its end of a pipe had enough: nothing to complain about, but not all was written. */
static bool fail(lw_output *output, const char *why) {
  bool reader_left = output->name == NULL && errno == EPIPE;
  if (!output->failed && !reader_left) lw_output_not_written(output->name, why);
  output->failed = true;
  return false;
}

/* A file that is there keeps its permissions; a new one gets the usual ones. */
static mode_t mode_for(const struct stat *there) {
  if (there != NULL) return there->st_mode & 0777;
  mode_t mask = umask(0);
  umask(mask);
  return 0666 & ~mask;
}

static char *beside(const char *target) {
  const char *slash = strrchr(target, '/');
  lw_text path = {0};
  lw_text_add_bytes(&path, target, slash != NULL ? (size_t)(slash - target) + 1 : 0);
  lw_text_add(&path, ".lowwall.XXXXXX");
  if (path.failed) lw_text_free(&path);
  return path.data;
}

static bool open_beside(lw_output *output, const struct stat *there) {
  output->target = there != NULL ? realpath(output->name, NULL) : strdup(output->name);
  output->beside = output->target != NULL ? beside(output->target) : NULL;
  if (output->beside == NULL) return fail(output, "out of memory");
  int handle = lw_interrupt_make_file(output->beside);
  if (handle < 0) {
    free(output->beside);
    output->beside = NULL;
    return fail(output, lw_output_why(errno));
  }
  output->file = fchmod(handle, mode_for(there)) == 0 ? fdopen(handle, "w") : NULL;
  if (output->file != NULL) return true;
  fail(output, strerror(errno));
  close(handle);
  return false;
}

static bool open_file(lw_output *output) {
  struct stat there;
  if (stat(output->name, &there) != 0)
    return errno == ENOENT ? open_beside(output, NULL) : fail(output, lw_output_why(errno));
  if (S_ISDIR(there.st_mode)) return fail(output, "it is a folder; a name for the file in it is wanted");
  if (access(output->name, W_OK) != 0) return fail(output, strerror(errno));
  if (S_ISREG(there.st_mode)) return open_beside(output, &there);
  /* To open it would wait for a reader, and half of it could be read before something failed. */
  if (S_ISFIFO(there.st_mode)) return fail(output, "it is a pipe; a file is wanted, or - and a pipe");
  output->file = fopen(output->name, "w");
  return output->file != NULL || fail(output, strerror(errno));
}

/* What was not put in its place is taken away. */
static void forget(lw_output *output) {
  if (output->beside != NULL) unlink(output->beside);
  lw_interrupt_forget_file();
  free(output->beside);
  free(output->target);
  output->beside = output->target = NULL;
}

bool lw_output_open(lw_output *output, const char *name) {
  bool standard = name == NULL || strcmp(name, "-") == 0;
  *output = (lw_output){.file = standard ? stdout : NULL, .name = standard ? NULL : name};
  if (standard || open_file(output)) return true;
  forget(output);
  return false;
}

bool lw_output_open_new(lw_output *output, const char *name) {
  struct stat there;
  bool standard = name == NULL || strcmp(name, "-") == 0;
  if (!standard && stat(name, &there) == 0 && S_ISREG(there.st_mode)) {
    *output = (lw_output){.name = name};
    return fail(output, "the file is there already; give another name, or take it away first");
  }
  return lw_output_open(output, name);
}

bool lw_output_is_table(const char *output, const char *directory) {
  struct stat out, table;
  const char *name;
  bool is = false;
  if (output == NULL || directory == NULL || stat(output, &out) != 0) return false;
  for (size_t i = 0; !is && (name = lw_tables_name_at(i)) != NULL; i++) {
    lw_text path = {0};
    lw_text_addf(&path, "%s/%s.csv", directory, name);
    is = !path.failed && stat(path.data, &table) == 0 && table.st_dev == out.st_dev &&
         table.st_ino == out.st_ino;
    lw_text_free(&path);
  }
  return is;
}

bool lw_output_add(lw_output *output, const lw_text *text) {
  if (output->failed) return false;
  if (text->failed) return fail(output, "out of memory");
  if (text->length > 0 && fwrite(text->data, 1, text->length, output->file) != text->length)
    return fail(output, strerror(errno));
  return true;
}

/* Only what goes beside has a disk behind it that can be waited for. */
static bool finish(lw_output *output) {
  if (fflush(output->file) != 0 || ferror(output->file)) return fail(output, strerror(errno));
  if (output->beside != NULL && fsync(fileno(output->file)) != 0) return fail(output, strerror(errno));
  return true;
}

static bool put_in_place(lw_output *output) {
  if (rename(output->beside, output->target) != 0) return fail(output, strerror(errno));
  free(output->beside);
  output->beside = NULL;
  return true;
}

bool lw_output_close(lw_output *output, bool keep) {
  if (output->file == NULL) return false;
  if (keep && !output->failed) finish(output);
  if (output->name != NULL && fclose(output->file) != 0) fail(output, strerror(errno));
  if (keep && !output->failed && output->beside != NULL) put_in_place(output);
  forget(output);
  output->file = NULL;
  return !output->failed;
}

static int write_and_free(lw_output *output, bool opened, lw_text *text, int done) {
  bool well = opened && lw_output_add(output, text);
  if (opened) well = lw_output_close(output, well) && well;
  lw_text_free(text);
  return well ? done : LW_EXIT_OTHER;
}

int lw_output_write(const char *name, lw_text *text, int done) {
  lw_output output;
  bool opened = lw_output_open(&output, name);
  return write_and_free(&output, opened, text, done);
}

int lw_output_write_new(const char *name, lw_text *text, int done) {
  lw_output output;
  bool opened = lw_output_open_new(&output, name);
  return write_and_free(&output, opened, text, done);
}

int lw_output_print(const char *page) {
  lw_text text = {0};
  lw_text_add(&text, page);
  return lw_output_write(NULL, &text, LW_EXIT_DONE);
}
