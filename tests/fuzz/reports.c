/* SPDX-License-Identifier: GPL-3.0-or-later */
#include <jansson.h>

#include <lowwall/report.h>

#include "sound.h"

/* A sheet through everything, with every form of report that needs no paper. */

static lw_result result, scratch;
static lw_order order;

static void is_json(const lw_text *text) {
  json_t *value = json_loadb(text->data, text->length, 0, NULL);
  FUZZ_EXPECT(value != NULL);
  json_decref(value);
}

/* No control of a terminal, and nothing that is no character of XML. */
static void is_clean(const lw_text *text) {
  const char *at = text->data;
  FUZZ_EXPECT(at != NULL && strlen(at) == text->length);
  for (; *at != '\0'; at++) FUZZ_EXPECT((unsigned char)*at >= 0x20 || *at == '\n' || *at == '\t');
  FUZZ_EXPECT(strstr(text->data, "\xEF\xBF\xBE") == NULL && strstr(text->data, "\xE2\x80\xAE") == NULL);
}

/* As a document of that form. */
static void write_form(lw_as as, lw_text *text) {
  const lw_text_style style = {.columns = 80, .as = as};
  lw_text_clear(text);
  lw_report_begin(&style, result.given.about.title.text, text);
  FUZZ_EXPECT(lw_report_screen(&result, &style, text) == LW_OK);
  FUZZ_EXPECT(lw_report_text(&result, &style, text) == LW_OK);
  FUZZ_EXPECT(lw_report_working(&result, &style, text) == LW_OK);
  lw_report_end(&style, text);
  is_clean(text);
}

static void write_pages(lw_text *text) {
  lw_text_style style = {.columns = 80};
  FUZZ_EXPECT(lw_report_screen(&result, &(lw_text_style){0}, text) == LW_OK);
  is_clean(text);
  lw_text_clear(text);
  FUZZ_EXPECT(lw_report_text(&result, &style, text) == LW_OK);
  FUZZ_EXPECT(lw_report_working(&result, &style, text) == LW_OK);
  lw_report_row(&result, 2, text);
  is_clean(text);
  write_form(LW_AS_MARKDOWN, text);
  write_form(LW_AS_HTML, text);
  lw_text_clear(text);
  FUZZ_EXPECT(lw_report_json(&result, 0, text) == LW_OK);
  is_json(text);
  lw_text_clear(text);
  FUZZ_EXPECT(lw_precheck_html(&result, "0123456789abcdef", text) == LW_OK);
  is_clean(text);
}

static void draw(lw_status (*view)(const lw_result *, const lw_order *, double, lw_drawing *, lw_error *),
                 lw_text *text) {
  lw_drawing drawing = {0};
  lw_error error = {0};
  lw_text_clear(text);
  lw_status status = view ? view(&result, &order, 180.0, &drawing, &error)
                          : lw_draw_section(&result, 180.0, &drawing, &error);
  if (status == LW_OK) {
    FUZZ_EXPECT(lw_drawing_svg(&drawing, text) == LW_OK);
    is_clean(text);
    FUZZ_EXPECT(strstr(text->data, "nan") == NULL && strstr(text->data, "inf,") == NULL);
  }
  lw_drawing_free(&drawing);
}

static void list(lw_text *text) {
  lw_text_style style = {.columns = 80};
  for (int page = LW_PAGE_ORDER; page <= LW_PAGE_PEGS; page++) {
    lw_text_clear(text);
    FUZZ_EXPECT(lw_report_order_text(&result, &order, (lw_order_page)page, &style, text) == LW_OK);
    is_clean(text);
    lw_text_clear(text);
    FUZZ_EXPECT(lw_report_order_json(&result, &order, (lw_order_page)page, 0, text) == LW_OK);
    is_json(text);
    lw_text_clear(text);
    FUZZ_EXPECT(lw_report_order_csv(&result, &order, (lw_order_page)page, text) == LW_OK);
  }
  draw(lw_draw_elevation, text);
  draw(lw_draw_plan, text);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t count) {
  static lw_case c;
  static lw_faults faults;
  lw_plan_fault fault;
  lw_text text = {0};
  faults.count = 0;
  if (lw_sheet_read((const char *)bytes, count, &c, &faults) != LW_OK) return 0;
  if (c.method.slip.origin == LW_ABSENT) c.method.slip = (lw_choice){LW_SLIP_NOT, LW_GIVEN, 0, 0};
  if (lw_case_complete(fuzz_tables(), &c, &faults) != LW_OK) return 0;
  bool planned = lw_case_complete_order(fuzz_tables(), &c, &faults) == LW_OK;
  if (lw_run(&c, fuzz_tables(), LW_DETAIL_EVERYTHING, &result, NULL) != LW_OK) return 0;
  if (count % 8 == 0) lw_remedies_find(&result, &scratch); /* they take their time */
  lw_water_find(&result, &scratch);
  write_pages(&text);
  draw(NULL, &text);
  if (planned && lw_order_make(&result, &order, &fault) == LW_OK)
    list(&text);
  else if (planned)
    lw_report_plan_fault(&result.given.order, &fault, &faults);
  lw_text_free(&text);
  return 0;
}
