package org.barsheet.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class HtmlTest {

  @Test
  void elements_stand_inside_one_another() {
    Html html = new Html();
    html.open("tr", "id", "lamp").element("td", "30", "class", "hand").empty("br").close().line();
    assertThat(html).hasToString("<tr id=\"lamp\"><td class=\"hand\">30</td><br/></tr>\n");
  }

  @Test
  void an_attribute_without_a_value_is_left_out() {
    Html html = new Html().element("td", "", "class", "", "id", "lamp");
    assertThat(html).hasToString("<td id=\"lamp\"></td>");
  }

  /** The characters that the HTML standard (WHATWG, 13.3) escapes in text and attributes. */
  @Test
  void texts_and_attributes_stay_texts() {
    Html html = new Html().element("p", "<b>&\u202e\n", "id", "\"><script>'");
    assertThat(html).hasToString("<p id=\"&quot;&gt;&lt;script&gt;&#39;\">&lt;b&gt;&amp; </p>");
  }

  @Test
  void a_page_holds_its_parts() {
    Html part = new Html().list(List.of("one"));
    Html page = Html.page().close().line().open("body").add(part).close().close();
    assertThat(page.toString())
        .startsWith("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n")
        .endsWith("</head>\n<body><ul>\n<li>one</li>\n</ul>\n</body></html>");
  }

  @Test
  void an_element_without_an_end_is_no_page() {
    assertThatThrownBy(() -> new Html().open("p").toString())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("p");
  }
}
