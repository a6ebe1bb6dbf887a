package org.barsheet.desk;

import java.nio.file.Path;
import java.util.List;
import org.barsheet.input.Problem;
import org.barsheet.text.Html;

/**
 * What stands in the browser while a plan has no film yet: what is wrong, until that is put right.
 */
final class WrongPlanPage {

  private static final String PAGE =
"""
<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'">
<meta http-equiv="refresh" content="2">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>%s</title>
</head>
<body>
<h1>%s</h1>
<p>The film can't be laid yet. Put this right in the plan and save it; this page goes on by itself.</p>
<ul>
%s</ul>
</body>
</html>
""";

  private WrongPlanPage() {}

  static String of(Path plan, List<Problem> problems) {
    String name = Html.escaped(String.valueOf(plan.getFileName()));
    StringBuilder items = new StringBuilder();
    for (Problem problem : problems) {
      String place = problem.position().isEmpty() ? "" : problem.position() + ": ";
      String remedy = problem.remedy().isEmpty() ? "" : ". To do: " + problem.remedy();
      items.append("<li>").append(Html.escaped(place + problem.sentence() + remedy));
      items.append("</li>\n");
    }
    return PAGE.formatted(name, name, items);
  }
}
