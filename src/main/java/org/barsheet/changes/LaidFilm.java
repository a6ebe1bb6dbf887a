package org.barsheet.changes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.align.places.Kept;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.revision.HeldReturn;
import org.barsheet.revision.ScoreNotes;
import org.barsheet.timing.LaidPanel;

/**
 * What one run laid down, as {@code timing.json} keeps it: what the next run is compared with.
 *
 * @param title of the film
 * @param rate of the film
 * @param firstFrame label of film frame 0
 * @param lengthFrames of the film
 * @param inputs the files it was made from
 * @param music the notes it was made from; nothing where a file from before they were kept is read
 * @param bars in order
 * @param cues in order of time
 * @param shots in story order
 * @param asks every place the plan asked for
 * @param appearances of performers, in order of shot
 * @param meant the music that places meant which were not yet put right for the music of this run
 * @param headSeconds whole seconds that the sound files begin before film frame 0
 * @param issues what was sent out under names
 * @param photographs what each photograph showed, in the order of work: name to likeness; none
 *     where a file from before they were kept is read
 */
public record LaidFilm(
    String title,
    FrameRate rate,
    Timecode firstFrame,
    long lengthFrames,
    List<LaidInput> inputs,
    Optional<ScoreNotes> music,
    List<LaidBar> bars,
    List<LaidCue> cues,
    List<LaidShot> shots,
    List<LaidAsk> asks,
    List<LaidAppearance> appearances,
    List<LaidMusic> meant,
    int headSeconds,
    LaidIssues issues,
    Map<String, String> photographs) {

  public LaidFilm {
    inputs = List.copyOf(inputs);
    bars = List.copyOf(bars);
    cues = List.copyOf(cues);
    shots = List.copyOf(shots);
    asks = List.copyOf(asks);
    appearances = List.copyOf(appearances);
    meant = List.copyOf(meant);
    photographs = Collections.unmodifiableMap(new LinkedHashMap<>(photographs));
  }

  /** The score it was made from, which stands behind the plan. */
  Optional<LaidInput> score() {
    return inputs.size() > 1 ? Optional.of(inputs.get(1)) : Optional.empty();
  }

  /** Its music, and what its plan asked of it. */
  public LaidMusic heard() {
    Map<String, List<String>> called = new LinkedHashMap<>();
    for (LaidAppearance seen : appearances) {
      List<String> there = called.computeIfAbsent(seen.panel(), panel -> new ArrayList<>());
      if (!there.contains(seen.performer())) {
        there.add(seen.performer());
      }
    }
    return new LaidMusic(music, cues, asks, called);
  }

  /**
   * Every place the plan asked for with the music it meant: that of this run, or that of the
   * earlier one where the plan was not yet put right.
   */
  public List<LaidMusic> standpoints() {
    List<LaidMusic> all = new ArrayList<>(meant);
    List<LaidAsk> own =
        asks.stream()
            .filter(
                ask ->
                    meant.stream().flatMap(music -> music.asks().stream()).noneMatch(ask::isSame))
            .toList();
    LaidMusic heard = heard();
    all.add(new LaidMusic(heard.notes(), heard.cues(), own, heard.called()));
    return List.copyOf(all);
  }

  /** The same film on music that places of its plan still mean. */
  public LaidFilm meaning(LaidMusic other) {
    return new LaidFilm(
        title,
        rate,
        firstFrame,
        lengthFrames,
        inputs,
        other.notes(),
        bars,
        other.cues(),
        shots,
        other.asks(),
        appearances,
        List.of(),
        headSeconds,
        LaidIssues.NONE,
        Map.of());
  }

  /** Everything that was sent out under a name up to this run, in the order made. */
  public List<LaidIssue> issued() {
    List<LaidIssue> all = new ArrayList<>(issues.earlier());
    if (!issues.name().isEmpty()) {
      all.add(new LaidIssue(issues.name(), meaning(heard())));
    }
    return List.copyOf(all);
  }

  /** What a later run may not move: the frames of every shot and of every reveal. */
  public Kept kept() {
    Map<String, FrameSpan> frames = new LinkedHashMap<>();
    List<Kept.Run> runs = new ArrayList<>();
    for (LaidShot shot : shots) {
      frames.putIfAbsent(shot.panel(), shot.frames());
      for (LaidReveal reveal : shot.reveals()) {
        runs.add(
            new Kept.Run(
                shot.panel(), reveal.opening(), reveal.firstGapFrame(), reveal.landsFrame()));
      }
    }
    return new Kept(frames, runs);
  }

  /** The cue of an id, if it has one. */
  Optional<LaidCue> cue(String id) {
    return cues.stream().filter(cue -> cue.id().equals(id)).findFirst();
  }

  /** Printed number of the bar in which a frame lies. */
  int barAt(long frame) {
    int number = bars.isEmpty() ? 0 : bars.get(0).number();
    for (LaidBar bar : bars) {
      number = bar.startFrame() <= frame ? bar.number() : number;
    }
    return number;
  }

  /** Its shots, by the names of their panels. */
  Map<String, LaidShot> shotsByPanel() {
    Map<String, LaidShot> byPanel = new LinkedHashMap<>();
    shots.forEach(shot -> byPanel.putIfAbsent(shot.panel(), shot));
    return byPanel;
  }

  /** Its panels, in story order. */
  public List<LaidPanel> panels() {
    Map<String, LaidCue> byId = new HashMap<>();
    cues.forEach(cue -> byId.put(cue.id(), cue));
    List<LaidPanel> panels = new ArrayList<>();
    for (LaidShot shot : shots) {
      String cue = Optional.ofNullable(byId.get(shot.cue())).map(LaidCue::words).orElse(shot.cue());
      List<LaidPanel.Landing> landings =
          shot.reveals().stream()
              .map(reveal -> new LaidPanel.Landing(reveal.opening(), reveal.landsFrame()))
              .toList();
      panels.add(new LaidPanel(shot.panel(), shot.cue(), cue, shot.frames(), landings));
    }
    return List.copyOf(panels);
  }

  /**
   * A file the run read.
   *
   * @param file name without folders
   * @param sha256 64 lower-case hexadecimal digits
   */
  public record LaidInput(String file, String sha256) {}

  /**
   * A bar.
   *
   * @param number printed bar number
   * @param startFrame film frame it begins on
   */
  public record LaidBar(int number, long startFrame) {}

  /**
   * A cue.
   *
   * @param id permanent name within the film
   * @param kind {@code occurrence}, {@code mark} …
   * @param name motif or mark it is of, or ""
   * @param number which return of the motif, from 1; else 0
   * @param bar printed bar number
   * @param beat felt beat within the bar, from 1
   * @param at exact time from tick 0 of the score
   * @param frame film frame
   * @param form how a return is changed against its motif: {@code inverted, augmented}; else ""
   * @param held the notes it is made of, for a return; nothing where they were not kept
   */
  public record LaidCue(
      String id,
      String kind,
      String name,
      int number,
      int bar,
      BigDecimal beat,
      Seconds at,
      long frame,
      String form,
      Optional<HeldReturn> held) {

    public LaidCue {
      beat = beat.stripTrailingZeros();
    }

    /** {@code glimmer 5, bar 33}, {@code mark B, bar 9}, {@code bar 12 beat 3}. */
    public String words() {
      if (name.isEmpty()) {
        return "bar "
            + bar
            + (beat.compareTo(BigDecimal.ONE) == 0 ? "" : " beat " + beat.toPlainString());
      }
      return title() + ", bar " + bar;
    }

    /** {@code glimmer 5}, {@code mark B}. */
    public String title() {
      if (isOccurrence()) {
        return number > 0 ? name + " " + number : name + " (possible)";
      }
      return kind + " " + name;
    }

    /** Whether it is a return or a mark, which is there whatever the plan asks for. */
    boolean isLasting() {
      return !name.isEmpty() && (isOccurrence() || kind.equals("mark"));
    }

    /** Whether it stands on the same beat of a bar of the same number. */
    boolean hasPlaceOf(LaidCue other) {
      return bar == other.bar && beat.compareTo(other.beat) == 0;
    }

    /** Whether it is a return of a motif. */
    public boolean isOccurrence() {
      return kind.equals("return");
    }
  }

  /**
   * A performer seen in an opening.
   *
   * @param performer who
   * @param opening where
   * @param panel name of the panel
   * @param frames film frames
   * @param part name of the part they play, or ""
   */
  public record LaidAppearance(
      String performer, String opening, String panel, FrameSpan frames, String part) {

    /** Whether it is of the same performer in the same opening of the same panel. */
    boolean isOf(LaidAppearance other) {
      return performer.equals(other.performer)
          && opening.equals(other.opening)
          && panel.equals(other.panel);
    }
  }

  /**
   * A shot.
   *
   * @param panel name of its panel
   * @param cue id of the cue it sits on
   * @param frames its film frames
   * @param reveals in order of layer
   */
  public record LaidShot(String panel, String cue, FrameSpan frames, List<LaidReveal> reveals) {
    public LaidShot {
      reveals = List.copyOf(reveals);
    }
  }

  /**
   * A reveal.
   *
   * @param opening what moves
   * @param model what is under the camera
   * @param layer from 1
   * @param accentFrame frame of the sounding accent
   * @param landsFrame frame of the landing photograph
   * @param firstGapFrame frame of the first moved photograph
   * @param exposures from the shot's first frame to its last
   */
  public record LaidReveal(
      String opening,
      String model,
      int layer,
      long accentFrame,
      long landsFrame,
      long firstGapFrame,
      List<LaidExposure> exposures) {
    public LaidReveal {
      exposures = List.copyOf(exposures);
    }
  }

  /**
   * A photograph shown for a run of frames.
   *
   * @param frames film frames, at least one
   * @param photograph its permanent name
   * @param progress share of the movement done in it, 0 to 1
   */
  public record LaidExposure(FrameSpan frames, String photograph, BigDecimal progress) {
    public LaidExposure {
      progress = progress.stripTrailingZeros();
    }
  }
}
