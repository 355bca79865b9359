/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdio_ext.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* Loaded before the C library (LD_PRELOAD), it lets one call of a program fail: of those that ask for memory
 * (FAULT_KIND=memory, ENOMEM) or of those that write a file (FAULT_KIND=write, ENOSPC), the FAULT_AT-th after
 * main has begun. FAULT_AT=0 lets none fail. How many there were goes to the file FAULT_COUNT. */

enum kind { NOTHING, MEMORY, WRITING };

static enum kind kind = NOTHING;
static long at, counted;
static const char *count_file;

static bool fails(enum kind of) {
  if (of != kind) return false;
  bool now = __atomic_add_fetch(&counted, 1, __ATOMIC_RELAXED) == at;
  if (now) errno = of == MEMORY ? ENOMEM : ENOSPC;
  return now;
}

/* The C library's own names for these, so that no search for a symbol asks for memory in its turn. */
void *__libc_malloc(size_t size);
void *__libc_calloc(size_t count, size_t size);
void *__libc_realloc(void *old, size_t size);

void *malloc(size_t size) {
  return fails(MEMORY) ? NULL : __libc_malloc(size);
}

void *calloc(size_t count, size_t size) {
  return fails(MEMORY) ? NULL : __libc_calloc(count, size);
}

void *realloc(void *old, size_t size) {
  return fails(MEMORY) ? NULL : __libc_realloc(old, size);
}

void gsl_set_error_handler_off(void);

/* What the name stands for in the library behind this one. ISO C has no way from an object to a function. */
#define NEXT(name) \
  __typeof__(&name) next; \
  *(void **)&next = dlsym(RTLD_NEXT, #name)

size_t fwrite(const void *from, size_t size, size_t count, FILE *file) {
  NEXT(fwrite);
  return fails(WRITING) ? 0 : next(from, size, count, file);
}

int fputs(const char *text, FILE *file) {
  NEXT(fputs);
  return fails(WRITING) ? EOF : next(text, file);
}

int fflush(FILE *file) {
  NEXT(fflush);
  return __fpending(file) > 0 && fails(WRITING) ? EOF : next(file);
}

int fclose(FILE *file) {
  NEXT(fclose);
  bool failing = fails(WRITING);
  int ended = next(file);
  return failing ? EOF : ended;
}

FILE *fopen(const char *name, const char *mode) {
  NEXT(fopen);
  return mode[0] != 'r' && fails(WRITING) ? NULL : next(name, mode);
}

FILE *fdopen(int handle, const char *mode) {
  NEXT(fdopen);
  return fails(WRITING) ? NULL : next(handle, mode);
}

int mkstemp(char *name) {
  NEXT(mkstemp);
  return fails(WRITING) ? -1 : next(name);
}

int fchmod(int handle, mode_t mode) {
  NEXT(fchmod);
  return fails(WRITING) ? -1 : next(handle, mode);
}

int fsync(int handle) {
  NEXT(fsync);
  return fails(WRITING) ? -1 : next(handle);
}

int rename(const char *from, const char *to) {
  NEXT(rename);
  return fails(WRITING) ? -1 : next(from, to);
}

/* Before main nothing counts: how libraries begin is not ours. The first thing that main does is this. */
void gsl_set_error_handler_off(void) {
  const char *word = getenv("FAULT_KIND"), *which = getenv("FAULT_AT");
  NEXT(gsl_set_error_handler_off);
  next();
  count_file = getenv("FAULT_COUNT");
  at = which != NULL ? strtol(which, NULL, 10) : 0;
  if (word != NULL) kind = strcmp(word, "memory") == 0 ? MEMORY : WRITING;
}

/* After all else has ended. */
__attribute__((destructor)) static void tell(void) {
  kind = NOTHING;
  FILE *file = count_file != NULL ? fopen(count_file, "w") : NULL;
  if (file == NULL) return;
  fprintf(file, "%ld\n", counted);
  fclose(file);
}
