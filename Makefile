# SPDX-License-Identifier: GPL-3.0-or-later
# `make demo` and `make test` install what is missing, build and run; `make help` lists the rest.

VERSION   := $(shell sed -n 's/^.define LW_VERSION "\(.*\)"/\1/p' include/lowwall/base.h)
SOVERSION := 0

BUILD  ?= build
PREFIX ?= /usr/local
BINDIR     ?= $(PREFIX)/bin
LIBDIR     ?= $(PREFIX)/lib
INCLUDEDIR ?= $(PREFIX)/include
MANDIR     ?= $(PREFIX)/share/man
COMPDIR    ?= $(PREFIX)/share/bash-completion/completions
DOCDIR     ?= $(PREFIX)/share/doc/lowwall

# Parallel by default; `make JOBS=1` for one at a time. A make below another shares that one's jobs.
JOBS ?= $(shell getconf _NPROCESSORS_ONLN)
ifeq ($(MAKELEVEL),0)
MAKEFLAGS += -j$(JOBS)
endif

# A flavour is a set of flags with a build directory of its own. Assertions stay on in all of them.
FLAVOUR ?= release
# How long, and which, `make fuzz` runs, and the compiler that has libFuzzer.
SECONDS ?= 60
TARGET  ?= all
CLANG   ?= clang
FLAVOUR_release  := -O2 -g
FLAVOUR_sanitize := -O1 -g1 -fsanitize=address,undefined,float-divide-by-zero -fno-sanitize-recover=all \
                    -fno-omit-frame-pointer
FLAVOUR_cover    := -O0 -g --coverage
FLAVOUR_thread   := -O1 -g -fsanitize=thread
# By clang: libFuzzer sees which lines an input reaches, and the sanitizers what is wrong there.
FLAVOUR_fuzz     := -O1 -g1 -fsanitize=fuzzer-no-link,address,undefined,float-divide-by-zero \
                    -fno-sanitize-recover=all -fno-omit-frame-pointer
# Read for the compiler's warnings only; nothing is made.
FLAVOUR_glance   := -fsyntax-only

WARN := -Wall -Wextra -Wpedantic -Wconversion -Wshadow -Wvla -Wcast-qual -Wfloat-equal -Werror
# Criterion's macros put an int into a one-bit field; a test may ask for the very same number.
# Their own code need not be fast (the library's is what takes the time), and is a third of all code.
TEST_OPTIONS := -Wno-conversion -Wno-float-equal -O1 -g1
# What a function of the program has of its own on the stack; docs/library.md says what all of them need.
FRAME_release := -Wframe-larger-than=65536
LANGUAGE := -std=c17 $(WARN) -ffp-contract=off
# Left to itself GCC clears and copies structs of some hundred bytes by a string instruction of x86, which
# takes longer to start than the C library takes for the whole: by it a garden bed's row is about 7 % dearer.
STRUCTS := $(shell echo | $(CC) -mstringop-strategy=libcall -x c -fsyntax-only - 2>/dev/null \
                   && echo -mstringop-strategy=libcall)
OPTIONS := $(LANGUAGE) $(FLAVOUR_$(FLAVOUR)) $(STRUCTS) -Iinclude -Isrc -fPIC -fvisibility=hidden \
           -fno-semantic-interposition
COMPILE = $(CC) $(OPTIONS) $(CPPFLAGS) $(CFLAGS)
# PDF and PNG need cairo and pango; without them the drawings are SVG and HTML.
PAPER := $(shell pkg-config --exists pangocairo cairo 2>/dev/null && echo pangocairo cairo)
ifneq ($(PAPER),)
PAPER_FLAGS := -DLW_HAVE_CAIRO $(patsubst -I%,-isystem %,$(shell pkg-config --cflags $(PAPER)))
PAPER_LIBS  := $(shell pkg-config --libs $(PAPER))
endif
# By libqpdf a PDF says what its drawing shows, and carries its sheet.
PARTS := $(shell pkg-config --exists libqpdf 2>/dev/null && echo libqpdf)
ifneq ($(PARTS),)
PARTS_FLAGS := -DLW_HAVE_QPDF $(patsubst -I%,-isystem %,$(shell pkg-config --cflags $(PARTS)))
PAPER_LIBS  += $(shell pkg-config --libs $(PARTS))
endif
LIBS := -lgsl -lgslcblas -lcsv -ljansson $(PAPER_LIBS) -lm -pthread

# The way into the page has no native side.
SOURCES  := $(filter-out src/page/wasm.c,$(sort $(wildcard src/*/*.c src/*/*/*.c)))
TABLES   := $(sort $(wildcard tables/*.csv))
NOT_UNIT := $(foreach d,bench faults fuzz lint setup threads recorded,tests/$d/%)
TESTS    := $(sort $(filter-out $(NOT_UNIT),$(wildcard tests/*/*.c)))
BENCHES  := $(sort $(wildcard tests/bench/*.c))
THREADS  := $(sort $(wildcard tests/threads/*.c))
FUZZERS  := $(sort $(wildcard tests/fuzz/*.c))

object = $(patsubst %.c,$(BUILD)/obj/%.o,$1)
CLI_OBJECTS  := $(call object,$(filter src/cli/%,$(SOURCES)))
LIB_OBJECTS  := $(call object,$(filter-out src/cli/%,$(SOURCES))) $(BUILD)/obj/tables_data.o
TEST_OBJECTS := $(call object,$(TESTS))
VALIDATION_OBJECT := $(call object,tests/handbook/validation/main.c)
PAGE_NATIVE_OBJECT := $(call object,tests/page/native/main.c)
BENCH_PROGRAMS  := $(patsubst tests/bench/%.c,$(BUILD)/bench/%,$(BENCHES))
FUZZ_PROGRAMS   := $(patsubst tests/fuzz/%.c,$(BUILD)/targets/%,$(FUZZERS))
THREAD_PROGRAMS := $(patsubst tests/threads/%.c,$(BUILD)/threads/%,$(THREADS))
OBJECTS := $(LIB_OBJECTS) $(CLI_OBJECTS) $(TEST_OBJECTS) $(VALIDATION_OBJECT) $(PAGE_NATIVE_OBJECT) \
           $(call object,$(BENCHES) $(THREADS) $(FUZZERS))

# What a wall's run spends its time in, so that the sanitized tests take a sixth less.
ifeq ($(FLAVOUR),sanitize)
$(call object,$(filter src/slip/% src/balance/% src/pressure/% src/base/least.c,$(SOURCES))): CFLAGS += -O2
endif

COMMAND := $(BUILD)/lowwall
STATIC  := $(BUILD)/liblowwall.a
SONAME  := liblowwall.so.$(SOVERSION)
SHARED  := $(BUILD)/liblowwall.so.$(VERSION)
UNIT    := $(BUILD)/lowwall-tests
FAULT   := $(BUILD)/faults/preload.so

SUBMAKE = +@$(MAKE) --no-print-directory
# Terse unless V=1: what is made, not how.
SAY = $(if $(V),,@echo '  $1 $@';)

.PHONY: all help demo page test bench lint format tidy cover mutate install uninstall validation clean FORCE \
        run-demo run-page run-test run-bench run-lint test-programs thread-programs fuzz-programs fuzz objects
.DELETE_ON_ERROR:
.SUFFIXES:

all: $(COMMAND) $(STATIC) $(SHARED) $(BUILD)/lowwall.pc

help:
	@echo 'make            the command and the library, in $(BUILD)/'
	@echo 'make demo       install what is missing, build, check the demo walls'
	@echo 'make page       the page for a phone, $(PAGE_HTML): one file that works without a network'
	@echo 'make test       install what is missing, build, run every test (plain and sanitized)'
	@echo 'make lint       the rules that a compiler does not know, and clang on every file'
	@echo 'make install    below PREFIX ($(PREFIX)), under DESTDIR; make uninstall takes it away'
	@echo 'make bench      timings as ratios          make cover   lines and branches the tests reach'
	@echo 'make mutate     mistakes made on purpose, and whether a test notices: ROOM=wall NICE=10'
	@echo 'make fuzz       every reader and formula fed with what libFuzzer makes up: SECONDS=60 TARGET=all'
	@echo 'make format     clang-format, if present   make tidy    clang-tidy, if present'
	@echo 'make validation  writes docs/validation.md from tests/handbook/'
	@echo 'JOBS=N  BUILD=DIR  CC=clang  FLAVOUR=release|sanitize|cover|thread'

# --- what the two commands do: set up first, then a make of its own sees what was installed ---

demo:
	@sh tests/setup/setup.sh --install demo
	$(SUBMAKE) run-demo

test:
	@sh tests/setup/setup.sh --install test
	$(SUBMAKE) run-test

lint:
	@sh tests/setup/setup.sh --install lint
	$(SUBMAKE) run-lint

fuzz:
	@sh tests/setup/setup.sh --install fuzz
	$(SUBMAKE) CC='$(CLANG)' FLAVOUR=fuzz BUILD=$(BUILD)/fuzz fuzz-programs
	@mkdir -p $(BUILD)/results/fuzz
	@sh tests/fuzz/run.sh $(BUILD)/fuzz $(SECONDS) $(TARGET) $(BUILD)/results/fuzz/fuzz

bench:
	@sh tests/setup/setup.sh --install demo
	$(SUBMAKE) run-bench

page:
	@sh tests/setup/setup.sh --install page
	$(SUBMAKE) run-page

cover:
	@sh tests/setup/setup.sh --install test
	$(SUBMAKE) FLAVOUR=cover BUILD=$(BUILD)/cover test-programs
	@sh tests/setup/cover.sh $(BUILD)/cover

# A make of its own builds the copy: it is no part of this one's jobs.
mutate:
	@sh tests/setup/setup.sh --install test
	@mkdir -p $(BUILD)/results/mutate
	@CC='$(CC)' JOBS='$(JOBS)' MAKEFLAGS= MAKELEVEL=0 \
	    sh tests/mutations/run.sh $(BUILD) $(BUILD)/results/mutate/mutate $(ROOM)

run-demo: $(COMMAND)
	@sh tests/setup/demo.sh $(COMMAND)

run-test: all test-programs $(FAULT)
	$(SUBMAKE) FLAVOUR=sanitize BUILD=$(BUILD)/sanitize test-programs
ifneq ($(THREADS),)
	$(SUBMAKE) FLAVOUR=thread BUILD=$(BUILD)/thread THREAD_LIB=$(STATIC) thread-programs
endif
	@CC='$(CC)' CXX='$(CXX)' sh tests/setup/all.sh $(BUILD)

run-bench: $(COMMAND) $(BENCH_PROGRAMS)
	@LOWWALL=$(abspath $(COMMAND)) sh tests/bench/run.sh $(BUILD)/bench

run-lint: all
	$(SUBMAKE) CC=clang FLAVOUR=glance BUILD=$(BUILD)/clang objects
	@sh tests/lint/run.sh $(BUILD)

include src/page/page.mk

# --- building ---

test-programs: $(COMMAND) $(UNIT)
thread-programs: $(THREAD_PROGRAMS)
fuzz-programs: $(FUZZ_PROGRAMS) $(COMMAND)
objects: $(OBJECTS)

# Written anew only when its text changes: other flags or another list of files rebuild what they must.
define stamp
	@mkdir -p $(@D)
	@printf '%s\n' '$1' | cmp -s - $@ || printf '%s\n' '$1' > $@
endef

$(BUILD)/flags: FORCE
	$(call stamp,$(COMPILE) $(FRAME_$(FLAVOUR)) $(LDFLAGS) $(PAPER_FLAGS) $(PARTS_FLAGS) $(LIBS))
$(BUILD)/test-flags: FORCE
	$(call stamp,$(TEST_OPTIONS))
$(BUILD)/list-lib: FORCE
	$(call stamp,$(LIB_OBJECTS) $(CLI_OBJECTS))
$(BUILD)/list-tests: FORCE
	$(call stamp,$(TEST_OBJECTS))
$(BUILD)/list-tables: FORCE
	$(call stamp,$(TABLES))

# Once a build directory: name the missing packages rather than let the compiler stumble over a header.
$(BUILD)/prerequisites:
	@sh tests/setup/setup.sh --check demo
	@mkdir -p $(@D) && touch $@

OWN_OPTIONS = $(if $(filter tests/%,$<),$(TEST_OPTIONS),$(FRAME_$(FLAVOUR)))
MARK = $(if $(filter glance,$(FLAVOUR)), && touch $@)

$(BUILD)/obj/%.o: %.c $(BUILD)/flags | $(BUILD)/prerequisites
	@mkdir -p $(@D)
	$(call SAY,cc)$(COMPILE) $(OWN_OPTIONS) -MMD -MP -c $< -o $@$(MARK)

$(TEST_OBJECTS) $(PAGE_NATIVE_OBJECT): $(BUILD)/test-flags
$(BUILD)/obj/src/report/draw/paper.o $(BUILD)/obj/tests/report/picture.o: OPTIONS += $(PAPER_FLAGS)
$(BUILD)/obj/src/report/draw/pdf_parts.o: OPTIONS += $(PARTS_FLAGS)

$(BUILD)/obj/tables_data.o: $(BUILD)/tables_data.c $(BUILD)/flags | $(BUILD)/prerequisites
	@mkdir -p $(@D)
	$(call SAY,cc)$(COMPILE) -MMD -MP -c $< -o $@$(MARK)

$(BUILD)/tables_data.c: src/tables/embed.sh docs/sources.md $(TABLES) $(BUILD)/list-tables
	@mkdir -p $(@D)
	$(call SAY,embed)sh src/tables/embed.sh docs/sources.md $(TABLES) > $@

$(STATIC): $(LIB_OBJECTS) $(BUILD)/list-lib
	@rm -f $@
	@$(AR) rcs $@ $(LIB_OBJECTS)

$(SHARED): $(LIB_OBJECTS) $(BUILD)/list-lib
	$(call SAY,link)$(COMPILE) $(LDFLAGS) -shared -Wl,-soname,$(SONAME) -Wl,-z,defs $(LIB_OBJECTS) $(LIBS) -o $@
	@ln -sf $(@F) $(BUILD)/$(SONAME) && ln -sf $(SONAME) $(BUILD)/liblowwall.so

$(COMMAND): $(CLI_OBJECTS) $(STATIC)
	$(call SAY,link)$(COMPILE) $(LDFLAGS) $(CLI_OBJECTS) $(STATIC) $(LIBS) -o $@

$(UNIT): $(TEST_OBJECTS) $(STATIC) $(BUILD)/list-tests
	$(call SAY,link)$(COMPILE) $(LDFLAGS) $(TEST_OBJECTS) $(STATIC) $(LIBS) -lcriterion -o $@

$(BUILD)/validation: $(VALIDATION_OBJECT) $(TEST_OBJECTS) $(STATIC) $(BUILD)/list-tests
	$(call SAY,link)$(COMPILE) $(LDFLAGS) $(filter %.o %.a,$^) $(LIBS) -lcriterion -o $@

$(BUILD)/bench/%: $(BUILD)/obj/tests/bench/%.o $(STATIC)
	@mkdir -p $(@D)
	$(call SAY,link)$(COMPILE) $(LDFLAGS) $< $(STATIC) $(LIBS) -o $@

$(BUILD)/targets/%: $(BUILD)/obj/tests/fuzz/%.o $(STATIC)
	@mkdir -p $(@D)
	$(call SAY,link)$(COMPILE) -fsanitize=fuzzer $(LDFLAGS) $< $(STATIC) $(LIBS) -o $@

# Threads meet in the subcommands only: the library keeps nothing between calls, which lint sees to. So
# `make test` gives the ordinary library; without THREAD_LIB all of it is built with the thread sanitizer.
THREAD_LIB ?= $(STATIC)
$(BUILD)/threads/%: $(BUILD)/obj/tests/threads/%.o $(filter-out %/main.o,$(CLI_OBJECTS)) $(THREAD_LIB)
	@mkdir -p $(@D)
	$(call SAY,link)$(COMPILE) $(LDFLAGS) $(filter %.o,$^) $(THREAD_LIB) $(LIBS) -o $@

# Stands before the C library and lets a call fail: of its own, and never sanitized.
$(FAULT): tests/faults/preload.c $(BUILD)/flags
	@mkdir -p $(@D)
	$(call SAY,link)$(CC) $(LANGUAGE) $(TEST_OPTIONS) -fPIC -shared $(CPPFLAGS) $(CFLAGS) $(LDFLAGS) $< -o $@

$(BUILD)/lowwall.pc: src/lowwall.pc.in include/lowwall/base.h $(BUILD)/paths
	@sed -e 's|@PREFIX@|$(PREFIX)|' -e 's|@LIBDIR@|$(LIBDIR)|' -e 's|@INCLUDEDIR@|$(INCLUDEDIR)|' \
	    -e 's|@VERSION@|$(VERSION)|' -e 's|@LIBS@|$(LIBS)|' src/lowwall.pc.in > $@
$(BUILD)/paths: FORCE
	$(call stamp,$(PREFIX) $(LIBDIR) $(INCLUDEDIR) $(LIBS))

# --- the rest ---

validation: $(BUILD)/validation
	$< > docs/validation.md

install: all
	@install -d '$(DESTDIR)$(BINDIR)' '$(DESTDIR)$(LIBDIR)/pkgconfig' '$(DESTDIR)$(INCLUDEDIR)/lowwall' \
	    '$(DESTDIR)$(MANDIR)/man1' '$(DESTDIR)$(COMPDIR)'
	install -m 755 $(COMMAND) '$(DESTDIR)$(BINDIR)/lowwall'
	install -m 644 $(STATIC) '$(DESTDIR)$(LIBDIR)/liblowwall.a'
	install -m 755 $(SHARED) '$(DESTDIR)$(LIBDIR)/liblowwall.so.$(VERSION)'
	ln -sf liblowwall.so.$(VERSION) '$(DESTDIR)$(LIBDIR)/$(SONAME)'
	ln -sf $(SONAME) '$(DESTDIR)$(LIBDIR)/liblowwall.so'
	install -m 644 include/lowwall/*.h '$(DESTDIR)$(INCLUDEDIR)/lowwall/'
	install -m 644 $(BUILD)/lowwall.pc '$(DESTDIR)$(LIBDIR)/pkgconfig/lowwall.pc'
	install -m 644 docs/lowwall.1 '$(DESTDIR)$(MANDIR)/man1/lowwall.1'
	install -m 644 docs/lowwall.bash '$(DESTDIR)$(COMPDIR)/lowwall'
	@# The page goes along where `make page` made it.
	test ! -f $(PAGE_HTML) || { install -d '$(DESTDIR)$(DOCDIR)' && \
	    install -m 644 $(PAGE_FILES) '$(DESTDIR)$(DOCDIR)/'; }

uninstall:
	rm -f '$(DESTDIR)$(BINDIR)/lowwall' '$(DESTDIR)$(LIBDIR)/liblowwall.a' \
	    '$(DESTDIR)$(LIBDIR)'/liblowwall.so* '$(DESTDIR)$(LIBDIR)/pkgconfig/lowwall.pc' \
	    '$(DESTDIR)$(MANDIR)/man1/lowwall.1' '$(DESTDIR)$(COMPDIR)/lowwall'
	rm -rf '$(DESTDIR)$(INCLUDEDIR)/lowwall' '$(DESTDIR)$(DOCDIR)'

# The lint "format" names what this would change.
format:
	@command -v clang-format >/dev/null || { echo 'clang-format is not installed: nothing done'; exit 0; }; \
	find include src tests -name '*.[ch]' | xargs clang-format -i

tidy:
	@command -v clang-tidy >/dev/null || { echo 'clang-tidy is not installed: nothing done'; exit 0; }; \
	clang-tidy --quiet $(SOURCES) -- $(LANGUAGE) -Iinclude -Isrc

clean:
	rm -rf '$(BUILD)'

-include $(OBJECTS:.o=.d)
