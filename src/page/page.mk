# SPDX-License-Identifier: GPL-3.0-or-later
# The page: the core as WebAssembly in one HTML file, a manifest and a service worker beside it.

PAGE      := $(BUILD)/page
PAGE_FROM := $(PAGE)/from
WASM      := $(PAGE)/core.wasm
PAGE_HTML := $(BUILD)/lowwall.html
PAGE_FILES := $(PAGE_HTML) $(BUILD)/lowwall.webmanifest $(BUILD)/lowwall-worker.js

PAGE_CC   ?= $(if $(findstring ccache,$(CC)),ccache) clang-14
PAGE_LINK := clang-14
PAGE_AR   ?= llvm-ar-14
# Without -O the driver leaves the module to the linker alone; a program beside it might rewrite it else.
PAGE_LINKING := --target=wasm32-wasi -mexec-model=reactor -Wl,--strip-all -Wl,--gc-sections \
                -Wl,-z,stack-size=4194304 -Wl,--stack-first
PAGE_TARGET  := --target=wasm32-wasi -O2 -std=c17 -ffp-contract=off -ffunction-sections -fdata-sections
# The system's own headers would win over those of the target: only the library's are named.
PAGE_COMPILE  = $(PAGE_CC) $(PAGE_TARGET) $(filter-out -mstringop-strategy=%,$(WARN)) -Iinclude -Isrc \
                -isystem $(PAGE_FROM)/include

PAGE_GSL := err/strerror roots/brent roots/convergence roots/fsolver min/fsolver min/brent min/golden \
            min/convergence min/bracketing sys/fcmp sys/infnan sys/coerce
PAGE_JANSSON := dump error hashtable load memory strbuffer strconv utf value
PAGE_OTHERS  := $(PAGE_GSL:%=$(PAGE)/others/gsl/%.o) $(PAGE)/others/libcsv/libcsv.o \
                $(PAGE_JANSSON:%=$(PAGE)/others/jansson/src/%.o)
PAGE_OBJECTS := $(patsubst %.c,$(PAGE)/obj/%.o,$(filter-out src/cli/%,$(SOURCES))) $(PAGE)/obj/tables_data.o

# In the order in which they use each other.
PAGE_MODULES := $(patsubst %,src/page/%.js,inflate core dom state answer files question plain advice parts main)
PAGE_PARTS   := src/page/page.html src/page/page.css $(PAGE_MODULES)

run-page: $(PAGE_FILES)

$(PAGE_FROM)/fetched.done: src/page/sources.sh src/page/gsl_config.h
	$(call SAY,fetch)sh src/page/sources.sh $(PAGE_FROM)
	@touch $@

$(PAGE)/obj/%.o: %.c $(PAGE_FROM)/fetched.done src/page/page.mk
	@mkdir -p $(@D)
	$(call SAY,wasm)$(PAGE_COMPILE) -MMD -MP -c $< -o $@
$(PAGE)/obj/tables_data.o: $(BUILD)/tables_data.c $(PAGE_FROM)/fetched.done src/page/page.mk
	@mkdir -p $(@D)
	$(call SAY,wasm)$(PAGE_COMPILE) -MMD -MP -c $< -o $@
# Not ours to warn about.
$(PAGE)/others/%.o: $(PAGE_FROM)/fetched.done src/page/page.mk
	@mkdir -p $(@D)
	$(call SAY,wasm)$(PAGE_CC) $(PAGE_TARGET) -w -DHAVE_CONFIG_H -DHAVE_STDINT_H -I$(PAGE_FROM)/include \
	    -c $(PAGE_FROM)/$*.c -o $@

# From an archive the linker takes what is asked for, and no more.
$(PAGE)/core.a: $(PAGE_OBJECTS) $(PAGE_OTHERS) $(BUILD)/list-lib
	@rm -f $@
	@$(PAGE_AR) rcs $@ $(PAGE_OBJECTS) $(PAGE_OTHERS)
$(WASM): $(PAGE)/obj/src/page/wasm.o $(PAGE)/core.a
	$(call SAY,link)$(PAGE_LINK) $(PAGE_LINKING) $^ -lm -o $@

$(PAGE_HTML): src/page/join.sh $(WASM) $(PAGE_PARTS)
	$(call SAY,join)sh src/page/join.sh $(WASM) $(PAGE_PARTS) > $@
$(BUILD)/lowwall.webmanifest: src/page/manifest.json
	@cp $< $@
$(BUILD)/lowwall-worker.js: src/page/worker.js.in $(PAGE_HTML)
	@sed "s/@KEY@/$$(cksum < $(PAGE_HTML) | tr ' ' '-')/" $< > $@

# What the module is held against: the same requests, answered natively.
PAGE_NATIVE := $(PAGE)/native
$(PAGE_NATIVE): $(PAGE_NATIVE_OBJECT) $(TEST_OBJECTS) $(STATIC) $(BUILD)/list-tests
	$(call SAY,link)$(COMPILE) $(LDFLAGS) $(filter %.o %.a,$^) $(LIBS) -lcriterion -o $@

-include $(PAGE_OBJECTS:.o=.d) $(PAGE)/obj/src/page/wasm.d
