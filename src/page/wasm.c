/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <stdio.h>
#include <stdlib.h>
#include <sys/types.h>

#include "core.h"
#include "tables/folder.h"

/* The way into the core from the page, and stand-ins for what reaches beyond it: files, the clock, a way to
 * end the process. So the module asks its host for nothing at all. Left out of every other build. */

#define SHOWN(name) __attribute__((export_name(name)))

static lw_tables *tables; /* once they are read */
static lw_page_kept kept;
static lw_text answer;
static char *request;

static lw_tables *read_tables(void) {
  lw_tables *fresh = malloc(sizeof *fresh);
  if (fresh && lw_tables_read(NULL, fresh, NULL) == LW_OK) return fresh;
  free(fresh);
  return NULL;
}

/** Room for the bytes of a request; NULL without memory. */
SHOWN("room") char *lw_wasm_room(size_t length) {
  free(request);
  request = malloc(length + 1);
  return request;
}

/** Answer what stands in that room. gives where the answer begins, NULL without memory */
SHOWN("answer") const char *lw_wasm_answer(size_t length) {
  lw_text_free(&answer);
  answer = (lw_text){0};
  if (!tables) tables = read_tables();
  if (!tables || !request || lw_page_answer(tables, &kept, request, length, &answer) != LW_OK) return NULL;
  return answer.data;
}

/** The bytes of that answer. */
SHOWN("length") size_t lw_wasm_length(void) {
  return answer.length;
}

/* --- what is not here --- */

lw_status lw_folder_read(const char *directory, const char *name, lw_text *text, bool *found,
                         lw_error *error) {
  (void)directory, (void)name, (void)text, (void)error;
  *found = false;
  return LW_OK;
}

lw_status lw_folder_check(const char *directory, lw_error *error) {
  return lw_error_set(error, LW_NOT_READ, LW_REASON_NONE, "there are no files here: %.60s", directory);
}

/* An assertion that fails ends the module: the page says so and begins it anew. */
_Noreturn void __assert_fail(const char *expression, const char *file, int line, const char *function) {
  (void)expression, (void)file, (void)line, (void)function;
  __builtin_trap();
}
_Noreturn void abort(void) {
  __builtin_trap();
}

char *getenv(const char *name) {
  (void)name;
  return NULL;
}

/* What libraries would read, write and print, were there a system below them. */
FILE *fopen(const char *restrict path, const char *restrict mode) {
  (void)path, (void)mode;
  return NULL;
}
int fclose(FILE *file) {
  (void)file;
  return EOF;
}
size_t __stdio_write(FILE *file, const unsigned char *bytes, size_t count);
size_t __stdio_write(FILE *file, const unsigned char *bytes, size_t count) {
  (void)file, (void)bytes, (void)count;
  return 0;
}
off_t __stdio_seek(FILE *file, off_t offset, int whence);
off_t __stdio_seek(FILE *file, off_t offset, int whence) {
  (void)file, (void)offset, (void)whence;
  return -1;
}
int __stdio_close(FILE *file);
int __stdio_close(FILE *file) {
  (void)file;
  return EOF;
}

/* GSL's own would print and end the process; what it is told of, its caller is told as well. */
void gsl_error(const char *reason, const char *file, int line, int number);
void gsl_error(const char *reason, const char *file, int line, int number) {
  (void)reason, (void)file, (void)line, (void)number;
}

/* Keys of objects come in the order in which they were put, so that the seed need not be a secret. */
extern volatile uint32_t hashtable_seed;
volatile uint32_t hashtable_seed = 1;
void json_object_seed(size_t seed);
void json_object_seed(size_t seed) {
  (void)seed;
}
