package org.barsheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What one worksheet of a plan holds.
 *
 * @param sheet its name
 * @param kind how its rows are read
 * @param root keys from the plan to what it holds
 * @param name heading of the column that begins a new thing; "setting" in a sheet of settings
 * @param columns all columns but that one; in a sheet of settings, its rows
 */
record SheetLayout(String sheet, Kind kind, List<String> root, String name, List<Column> columns) {

  /** How the rows of a worksheet are read. */
  enum Kind {
    /** A setting and its value on each row. */
    SETTINGS,
    /** A thing with a name on each row. */
    NAMED,
    /** An item of a list on each row; the name is one of its values. */
    LISTED
  }

  static final String SETTING = "setting";
  static final String VALUE = "value";

  private static final Map<String, Column.TimeOfDay> TIMES =
      Map.ofEntries(
          Map.entry("first-frame", Column.TimeOfDay.TIMECODE),
          Map.entry("cue", Column.TimeOfDay.TIMECODE),
          Map.entry("cut", Column.TimeOfDay.TIMECODE),
          Map.entry("lands-on", Column.TimeOfDay.TIMECODE),
          Map.entry("place", Column.TimeOfDay.TIMECODE),
          Map.entry("music-starts", Column.TimeOfDay.SECONDS),
          Map.entry("recording-starts", Column.TimeOfDay.TIMECODE),
          Map.entry("tail", Column.TimeOfDay.SECONDS),
          Map.entry("pop", Column.TimeOfDay.SECONDS),
          Map.entry("length", Column.TimeOfDay.SECONDS),
          Map.entry("at", Column.TimeOfDay.SECONDS),
          Map.entry("start", Column.TimeOfDay.TIMECODE),
          Map.entry("starts", Column.TimeOfDay.DAY));

  static final SheetLayout FILM = film();
  static final SheetLayout PANELS = panels();

  /** Every worksheet, in the order they are written. */
  static final List<SheetLayout> ALL =
      List.of(
          FILM,
          settings("Music", "music", PlanKeys.MUSIC, Set.of("pins")),
          table("Pins", Kind.LISTED, List.of("music", "pins"), "bar", own(PlanKeys.PIN, "bar")),
          table("Motifs", Kind.NAMED, List.of("motifs"), "motif", motifs()),
          settings("Artwork", "artwork", PlanKeys.ARTWORK, Set.of("models")),
          table(
              "Models", Kind.NAMED, List.of("artwork", "models"), "model", own(PlanKeys.MODEL, "")),
          table("Openings", Kind.NAMED, List.of("openings"), "opening", own(PlanKeys.OPENING, "")),
          table("Performers", Kind.NAMED, List.of("performers"), "performer", performers()),
          PANELS,
          table("Clips", Kind.NAMED, List.of("clips"), "performer", own(PlanKeys.CLIP, "")),
          settings("Camera", "camera", PlanKeys.CAMERA, Set.of()),
          settings("Shoot", "shoot", PlanKeys.SHOOT, Set.of()),
          settings("Hand", "hand", PlanKeys.HAND, Set.of()));

  SheetLayout {
    root = List.copyOf(root);
    columns = columns.stream().map(SheetLayout::timed).toList();
  }

  private static Column timed(Column column) {
    return column.withTime(TIMES.getOrDefault(column.key().name(), Column.TimeOfDay.MISTAKEN));
  }

  private static SheetLayout film() {
    List<Column> rows = new ArrayList<>();
    rows.add(Column.own(PlanKeys.ROOT.get(0), "title"));
    rows.add(Column.own(PlanKeys.ROOT.get(1), "score"));
    PlanKeys.FILM.forEach(key -> rows.add(Column.own(key, "film", key.name())));
    rows.add(Column.own(PlanKeys.ROOT.get(2), "clips"));
    return new SheetLayout("Film", Kind.SETTINGS, List.of("film"), SETTING, rows);
  }

  private static SheetLayout settings(
      String sheet, String root, List<PlanKey> keys, Set<String> elsewhere) {
    List<Column> rows =
        keys.stream()
            .filter(key -> !elsewhere.contains(key.name()))
            .map(key -> Column.own(key, root, key.name()))
            .toList();
    return new SheetLayout(sheet, Kind.SETTINGS, List.of(root), SETTING, rows);
  }

  private static SheetLayout table(
      String sheet, Kind kind, List<String> root, String name, List<Column> columns) {
    return new SheetLayout(sheet, kind, root, name, columns);
  }

  private static List<Column> own(List<PlanKey> keys, String butNot) {
    return keys.stream()
        .filter(key -> !key.name().equals(butNot))
        .map(key -> Column.own(key, key.name()))
        .toList();
  }

  private static List<Column> motifs() {
    List<Column> columns = new ArrayList<>();
    for (PlanKey key : PlanKeys.HEARD_AT) {
      columns.add(Column.own(key, "heard-at", key.name()).alsoInGroup("also"));
    }
    for (PlanKey key : PlanKeys.MOTIF) {
      switch (key.name()) {
        case "heard-at", "also" -> {}
        case "notes" -> columns.add(Column.own(key, "notes").alsoInGroup("also"));
        default -> columns.add(Column.own(key, key.name()));
      }
    }
    return columns;
  }

  private static List<Column> performers() {
    List<Column> columns = new ArrayList<>(own(PlanKeys.PERFORMER, "clap"));
    columns.add(Column.own(PlanKeys.CLAP.get(0), "clap", "at").headed("clap-at"));
    columns.add(Column.own(PlanKeys.CLAP.get(1), "clap", "clip-frame").headed("clap-frame"));
    return columns;
  }

  private static SheetLayout panels() {
    List<Column> columns = new ArrayList<>(own(PlanKeys.PANEL, "panel"));
    columns.removeIf(column -> Set.of("reveals", "appears").contains(column.heading()));
    PlanKeys.REVEAL.forEach(key -> columns.add(Column.inGroup("reveals", key)));
    columns.add(Column.inGroup("appears", PlanKeys.APPEARS.get(0)));
    columns.add(Column.inGroup("appears", PlanKeys.APPEARS.get(1)).headed("seen-in"));
    return table("Panels", Kind.LISTED, List.of("panels"), "panel", columns);
  }

  Optional<Column> column(String heading) {
    return columns.stream().filter(column -> column.heading().equals(heading)).findFirst();
  }

  /** Every heading or setting it may have. */
  List<String> headings() {
    List<String> headings = new ArrayList<>();
    if (kind != Kind.SETTINGS) {
      headings.add(name);
    }
    columns.forEach(column -> headings.add(column.heading()));
    return headings;
  }

  static Optional<SheetLayout> named(String sheet) {
    return ALL.stream()
        .filter(layout -> layout.sheet().equalsIgnoreCase(sheet.strip()))
        .findFirst();
  }

  /** A heading as people write it, in the way keys are written. */
  static String plainHeading(String typed) {
    return typed.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s\\h_]+", "-");
  }
}
