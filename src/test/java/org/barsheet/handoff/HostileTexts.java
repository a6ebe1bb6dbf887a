package org.barsheet.handoff;

import java.util.List;

/** Texts that break careless files. */
public final class HostileTexts {

  private HostileTexts() {}

  public static List<String> all() {
    return List.of(
        "\"quoted\" and 'single'",
        ", and; more | columns\there",
        "\r\n\r\nWEBVTT\n\n00:00.000 --> 00:01.000\nsecond file",
        " --> <b>&amp;</b> <script>alert(1)</script>",
        "قارب الورق",
        "紙の港 🚢",
        "x".repeat(300),
        "=HYPERLINK(\"http://example.org\",\"here\")",
        "../../etc/passwd",
        "C:\\music\\*?|.wav",
        "\u0000\u0007\u202E",
        "</style><!-- ]]>",
        " ");
  }
}
