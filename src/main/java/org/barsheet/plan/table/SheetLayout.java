package org.barsheet.plan.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.barsheet.plan.source.PlanKey;
import org.barsheet.plan.source.PlanKeys;

/**
 * What one worksheet of a plan holds.
 *
 * @param sheet its name
 * @param kind how its rows are read
 * @param root keys from the plan to what it holds
 * @param name heading of the column that begins a new thing; "setting" in a sheet of settings
 * @param columns all columns but that one; in a sheet of settings, its rows
 */
public record SheetLayout(
    String sheet, Kind kind, List<String> root, String name, List<TableColumn> columns) {

  /** How the rows of a worksheet are read. */
  public enum Kind {
    /** A setting and its value on each row. */
    SETTINGS,
    /** A thing with a name on each row. */
    NAMED,
    /** An item of a list on each row; the name is one of its values. */
    LISTED
  }

  public static final String SETTING = "setting";
  public static final String VALUE = "value";

  private static final Map<String, TableColumn.TimeOfDay> TIMES =
      Map.ofEntries(
          Map.entry("first-frame", TableColumn.TimeOfDay.TIMECODE),
          Map.entry("cue", TableColumn.TimeOfDay.TIMECODE),
          Map.entry("cut", TableColumn.TimeOfDay.TIMECODE),
          Map.entry("lands-on", TableColumn.TimeOfDay.TIMECODE),
          Map.entry("place", TableColumn.TimeOfDay.TIMECODE),
          Map.entry("music-starts", TableColumn.TimeOfDay.SECONDS),
          Map.entry("recording-starts", TableColumn.TimeOfDay.TIMECODE),
          Map.entry("tail", TableColumn.TimeOfDay.SECONDS),
          Map.entry("pop", TableColumn.TimeOfDay.SECONDS),
          Map.entry("length", TableColumn.TimeOfDay.SECONDS),
          Map.entry("at", TableColumn.TimeOfDay.SECONDS),
          Map.entry("start", TableColumn.TimeOfDay.TIMECODE),
          Map.entry("deadline", TableColumn.TimeOfDay.DAY),
          Map.entry("starts", TableColumn.TimeOfDay.DAY));

  static final SheetLayout FILM = film();
  static final SheetLayout PANELS = panels();

  /** Every worksheet, in the order they are written. */
  public static final List<SheetLayout> ALL =
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
          settings("Deliver", "deliver", PlanKeys.DELIVER, Set.of()),
          settings("Camera", "camera", PlanKeys.CAMERA, Set.of()),
          settings("Shoot", "shoot", PlanKeys.SHOOT, Set.of()),
          settings("Hand", "hand", PlanKeys.HAND, Set.of()),
          settings("Tolerances", "tolerances", PlanKeys.TOLERANCES, Set.of()));

  public SheetLayout {
    root = List.copyOf(root);
    columns = columns.stream().map(SheetLayout::timed).toList();
  }

  private static TableColumn timed(TableColumn column) {
    return column.withTime(TIMES.getOrDefault(column.key().name(), TableColumn.TimeOfDay.MISTAKEN));
  }

  private static SheetLayout film() {
    List<TableColumn> rows = new ArrayList<>();
    rows.add(TableColumn.own(PlanKeys.ROOT.get(0), "title"));
    rows.add(TableColumn.own(PlanKeys.ROOT.get(1), "score"));
    PlanKeys.FILM.forEach(key -> rows.add(TableColumn.own(key, "film", key.name())));
    rows.add(TableColumn.own(PlanKeys.ROOT.get(3), "contact"));
    rows.add(TableColumn.own(PlanKeys.ROOT.get(2), "clips"));
    return new SheetLayout("Film", Kind.SETTINGS, List.of("film"), SETTING, rows);
  }

  private static SheetLayout settings(
      String sheet, String root, List<PlanKey> keys, Set<String> elsewhere) {
    List<TableColumn> rows =
        keys.stream()
            .filter(key -> !elsewhere.contains(key.name()))
            .map(key -> TableColumn.own(key, root, key.name()))
            .toList();
    return new SheetLayout(sheet, Kind.SETTINGS, List.of(root), SETTING, rows);
  }

  private static SheetLayout table(
      String sheet, Kind kind, List<String> root, String name, List<TableColumn> columns) {
    return new SheetLayout(sheet, kind, root, name, columns);
  }

  private static List<TableColumn> own(List<PlanKey> keys, String butNot) {
    return keys.stream()
        .filter(key -> !key.name().equals(butNot))
        .map(key -> TableColumn.own(key, key.name()))
        .toList();
  }

  private static List<TableColumn> motifs() {
    List<TableColumn> columns = new ArrayList<>();
    for (PlanKey key : PlanKeys.HEARD_AT) {
      columns.add(TableColumn.own(key, "heard-at", key.name()).alsoInGroup("also"));
    }
    for (PlanKey key : PlanKeys.MOTIF) {
      switch (key.name()) {
        case "heard-at", "also" -> {}
        case "notes" -> columns.add(TableColumn.own(key, "notes").alsoInGroup("also"));
        default -> columns.add(TableColumn.own(key, key.name()));
      }
    }
    return columns;
  }

  private static List<TableColumn> performers() {
    List<TableColumn> columns = new ArrayList<>(own(PlanKeys.PERFORMER, "clap"));
    columns.add(TableColumn.own(PlanKeys.CLAP.get(0), "clap", "at").headed("clap-at"));
    columns.add(TableColumn.own(PlanKeys.CLAP.get(1), "clap", "clip-frame").headed("clap-frame"));
    return columns;
  }

  private static SheetLayout panels() {
    List<TableColumn> columns = new ArrayList<>(own(PlanKeys.PANEL, "panel"));
    columns.removeIf(column -> Set.of("reveals", "appears").contains(column.heading()));
    PlanKeys.REVEAL.forEach(key -> columns.add(TableColumn.inGroup("reveals", key)));
    columns.add(TableColumn.inGroup("appears", PlanKeys.APPEARS.get(0)));
    columns.add(TableColumn.inGroup("appears", PlanKeys.APPEARS.get(1)).headed("seen-in"));
    return table("Panels", Kind.LISTED, List.of("panels"), "panel", columns);
  }

  public Optional<TableColumn> column(String heading) {
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
