package org.barsheet.desk;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.nio.file.Path;
import org.barsheet.text.Html;
import org.barsheet.text.Sha256;

/**
 * What stands in the browser while a plan has no film yet: what is wrong, until that is put right
 * in the plan's file or by one of the fixes.
 */
final class WrongPlanPage {

  private static final String STYLE =
"""
body { font: 1rem/1.5 "Liberation Sans", Arial, sans-serif; max-width: 44rem; margin: 2rem auto; padding: 0 1rem; }
li { margin: 0 0 1.2rem; }
.place { font-weight: 700; }
button { font: inherit; display: block; margin: .4rem 0; padding: .4rem .8rem; min-height: 2rem; text-align: left; }
""";

  /** Takes a fix, and goes on to what comes of it or of a change of the file. */
  private static final String SCRIPT =
"""
const told = document.getElementById("told");
document.querySelectorAll("button").forEach((button) => button.addEventListener("click", async () => {
  const edits = JSON.parse(button.dataset.edits);
  const answer = await fetch("/.desk/do", {
    method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify({ edits }),
  });
  const { refused } = answer.ok ? await answer.json() : { refused: [{ sentence: await answer.text() }] };
  told.textContent = refused ? refused[0].sentence : "";
}));
new EventSource("/.desk/live").addEventListener("laid", ({ data }) => data !== document.body.dataset.version && location.reload());
""";

  private static final String PAGE =
"""
<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; connect-src 'self'; script-src '%s'; style-src '%s'; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>%s</title>
<style>%s</style>
</head>
<body data-version="%d">
<main>
<h1>%s</h1>
<p>The film can't be laid yet. Take a fix, or put this right in the plan and save it; this page goes on by itself.</p>
<ul>
%s</ul>
<p id="told" role="status"></p>
</main>
<script>%s</script>
</body>
</html>
""";

  private WrongPlanPage() {}

  /**
   * The page.
   *
   * @param version of the state it shows
   * @param problems as {@link Told#problems} tells them
   */
  static String of(Path plan, long version, JsonArray problems) {
    String name = Html.escaped(String.valueOf(plan.getFileName()));
    StringBuilder items = new StringBuilder();
    problems.forEach(problem -> items.append(item(problem.getAsJsonObject())));
    return PAGE.formatted(
        Sha256.policySource(SCRIPT),
        Sha256.policySource(STYLE),
        name,
        STYLE,
        version,
        name,
        items,
        SCRIPT);
  }

  private static String item(JsonObject problem) {
    String place = text(problem, "place");
    StringBuilder fixes = new StringBuilder();
    boolean any = false;
    for (JsonElement each : problem.has("fixes") ? problem.getAsJsonArray("fixes") : NONE) {
      JsonObject fix = each.getAsJsonObject();
      any |= fix.has("edits");
      fixes.append(fix.has("edits") ? button(fix) : "<br>" + text(fix, "words"));
    }
    String remedy = any ? fixes.toString() : "<br>" + text(problem, "remedy");
    return "<li>"
        + (place.isEmpty() ? "" : "<span class=\"place\">" + place + "</span>: ")
        + text(problem, "sentence")
        + remedy
        + "</li>\n";
  }

  private static final JsonArray NONE = new JsonArray();

  private static String button(JsonObject fix) {
    String edits = Html.escaped(fix.get("edits").toString());
    return "<button type=\"button\" data-edits=\""
        + edits
        + "\">"
        + text(fix, "words")
        + "</button>";
  }

  private static String text(JsonObject object, String key) {
    return Html.escaped(object.get(key).getAsString());
  }
}
