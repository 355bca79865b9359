/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include "interrupt.h"

#include <pthread.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* A handler can be told of things by globals only. A path that is longer is left behind. */
static char file[4096];
static volatile sig_atomic_t line_to_wipe;

static const int watched[] = {SIGINT, SIGTERM, SIGHUP};
enum { WATCHED = sizeof watched / sizeof watched[0] };

/* Only what may be called in a handler. The signal is held until this returns, and then ends the program. */
static void tidy(int number) {
  static const char wipe[] = "\r\033[K";
  if (file[0] != '\0') unlink(file);
  if (line_to_wipe && write(STDERR_FILENO, wipe, sizeof wipe - 1) < 0) line_to_wipe = 0;
  signal(number, SIG_DFL);
  raise(number);
}

/* What is ignored from the start, as in a background job, stays ignored. */
void lw_interrupt_watch(void) {
  struct sigaction ours = {.sa_handler = tidy}, before;
  sigfillset(&ours.sa_mask);
  for (int i = 0; i < WATCHED; i++)
    if (sigaction(watched[i], NULL, &before) == 0 && before.sa_handler == SIG_DFL)
      sigaction(watched[i], &ours, NULL);
}

static sigset_t hold(void) {
  sigset_t held, before;
  sigemptyset(&held);
  for (int i = 0; i < WATCHED; i++) sigaddset(&held, watched[i]);
  pthread_sigmask(SIG_BLOCK, &held, &before);
  return before;
}

int lw_interrupt_make_file(char *path) {
  sigset_t before = hold();
  int handle = mkstemp(path);
  size_t length = strlen(path);
  if (handle >= 0 && length < sizeof file) memcpy(file, path, length + 1);
  pthread_sigmask(SIG_SETMASK, &before, NULL);
  return handle;
}

void lw_interrupt_forget_file(void) {
  sigset_t before = hold();
  file[0] = '\0';
  pthread_sigmask(SIG_SETMASK, &before, NULL);
}

void lw_interrupt_wipe_line(bool wipe) {
  line_to_wipe = wipe;
}
