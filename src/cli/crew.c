/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _XOPEN_SOURCE 700
#include "crew.h"

/* POSIX threads rather than C11's: the thread sanitizer follows only these. */
#include <pthread.h>
#include <signal.h>
#include <stdlib.h>
#include <string.h>

#include "sheet/likely.h"

typedef struct ring_place {
  lw_batch batch;
  bool checked; /* guarded by the crew's lock */
} ring_place;

typedef struct worker {
  lw_crew *crew;
  lw_hand hand;
  pthread_t thread;
} worker;

struct lw_crew {
  pthread_mutex_t lock;
  pthread_cond_t handed_in, checked;
  /* How many batches were ever handed in, begun and taken back; the place is that number modulo the size of
   * the ring. A batch between is touched by who filled it, then who checks it, then who takes it back. */
  unsigned long filled, begun, taken;
  bool over;
  int places, workers; /* workers: the first is the thread that opened the crew */
  ring_place *ring;
  worker *worker;
  lw_named *override;
};

/* Check the next batch handed in; the lock is held before and after. */
static void check_next(lw_crew *crew, lw_hand *hand) {
  ring_place *place = &crew->ring[crew->begun++ % (unsigned long)crew->places];
  pthread_mutex_unlock(&crew->lock);
  lw_batch_check(&place->batch, hand);
  pthread_mutex_lock(&crew->lock);
  place->checked = true;
  pthread_cond_signal(&crew->checked);
}

static void *work(void *context) {
  worker *self = context;
  lw_crew *crew = self->crew;
  pthread_mutex_lock(&crew->lock);
  while (!crew->over) {
    if (crew->begun < crew->filled)
      check_next(crew, &self->hand);
    else
      pthread_cond_wait(&crew->handed_in, &crew->lock);
  }
  pthread_mutex_unlock(&crew->lock);
  return NULL;
}

/* Threads may take what memory there is but for this: sheet, batches and what is written want some later. */
enum { ROOM_LEFT = 32 << 20 };

static bool room_is_left(void) {
  void *volatile room = malloc(ROOM_LEFT); /* or the compiler leaves out a request that nothing uses */
  free(room);
  return room != NULL;
}

/* Signals are for the thread that reads and writes. */
static void start_the_others(lw_crew *crew, int threads) {
  sigset_t all, before;
  sigfillset(&all);
  pthread_sigmask(SIG_SETMASK, &all, &before);
  for (crew->workers = 1; crew->workers < threads; crew->workers++) {
    worker *next = &crew->worker[crew->workers];
    if (!room_is_left() || pthread_create(&next->thread, NULL, work, next) != 0) break;
  }
  pthread_sigmask(SIG_SETMASK, &before, NULL);
}

/* The names of the command line's items are looked up once. */
static int find_overrides(lw_crew *crew, const lw_crew_job *job) {
  int count = 0;
  const char *argument;
  for (int i = 0; (argument = lw_wall_item(&job->asked->wall, i)) != NULL; i++) {
    lw_named *one = &crew->override[count];
    size_t length = strcspn(argument, "="), stem = lw_likely_stem(argument, length);
    one->item = lw_item_find(argument, stem, &one->number);
    one->likely = stem < length;
    count += one->item != NULL ? 1 : 0;
  }
  return count;
}

static void brief(lw_crew *crew, worker *one, const lw_crew_job *job, int overrides) {
  one->crew = crew;
  one->hand.asked = job->asked;
  one->hand.tables = job->tables;
  one->hand.overrides = job->overrides;
  one->hand.override = crew->override;
  one->hand.override_count = overrides;
  lw_defaults_gather(job->tables, &one->hand.defaults);
  lw_print(one->hand.faults.file, sizeof one->hand.faults.file, "%s", job->file);
}

/* With others at work, enough that none waits while the oldest batch is written. */
static int places_for(int threads) {
  return threads == 1 ? 1 : 2 * threads + 2;
}

static void free_crew(lw_crew *crew) {
  free(crew->ring);
  free(crew->worker);
  free(crew->override);
  free(crew);
}

lw_crew *lw_crew_open(int threads, const lw_crew_job *job) {
  lw_crew *crew = calloc(1, sizeof *crew);
  const lw_wall_asked *wall = &job->asked->wall;
  if (crew == NULL) return NULL;
  crew->places = places_for(threads);
  crew->ring = calloc((size_t)crew->places, sizeof *crew->ring);
  crew->worker = calloc((size_t)threads, sizeof *crew->worker);
  crew->override = calloc((size_t)(wall->item_count + wall->option_item_count) + 1, sizeof *crew->override);
  if (crew->ring == NULL || crew->worker == NULL || crew->override == NULL) {
    free_crew(crew);
    return NULL;
  }
  int overrides = find_overrides(crew, job);
  pthread_mutex_init(&crew->lock, NULL);
  pthread_cond_init(&crew->handed_in, NULL);
  pthread_cond_init(&crew->checked, NULL);
  for (int i = 0; i < threads; i++) brief(crew, &crew->worker[i], job, overrides);
  start_the_others(crew, threads);
  return crew;
}

/* filled and taken change in the opening thread only, so it may read them without the lock. */
lw_batch *lw_crew_empty(lw_crew *crew) {
  if (crew->filled - crew->taken == (unsigned long)crew->places) return NULL;
  return &crew->ring[crew->filled % (unsigned long)crew->places].batch;
}

void lw_crew_hand_in(lw_crew *crew) {
  pthread_mutex_lock(&crew->lock);
  crew->filled++;
  pthread_cond_signal(&crew->handed_in);
  pthread_mutex_unlock(&crew->lock);
}

lw_batch *lw_crew_oldest(lw_crew *crew) {
  if (crew->filled == crew->taken) return NULL;
  ring_place *place = &crew->ring[crew->taken % (unsigned long)crew->places];
  pthread_mutex_lock(&crew->lock);
  while (!place->checked) {
    if (crew->begun < crew->filled)
      check_next(crew, &crew->worker[0].hand);
    else
      pthread_cond_wait(&crew->checked, &crew->lock);
  }
  pthread_mutex_unlock(&crew->lock);
  return &place->batch;
}

void lw_crew_give_back(lw_crew *crew) {
  ring_place *place = &crew->ring[crew->taken++ % (unsigned long)crew->places];
  place->checked = false;
  lw_batch_clear(&place->batch);
}

void lw_crew_close(lw_crew *crew) {
  if (crew == NULL) return;
  pthread_mutex_lock(&crew->lock);
  crew->over = true;
  pthread_cond_broadcast(&crew->handed_in);
  pthread_mutex_unlock(&crew->lock);
  for (int i = 1; i < crew->workers; i++) pthread_join(crew->worker[i].thread, NULL);
  for (int i = 0; i < crew->places; i++) lw_batch_free(&crew->ring[i].batch);
  pthread_cond_destroy(&crew->checked);
  pthread_cond_destroy(&crew->handed_in);
  pthread_mutex_destroy(&crew->lock);
  free_crew(crew);
}
