package org.barsheet.motif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import org.barsheet.motif.ArrangementPlayer.Played;
import org.barsheet.motif.ComposedMotif.Tone;

/**
 * Invented music for six to fourteen parts with motifs planted in every form, straight, swung or
 * played by hand: bass, held chords, figures that go round, free lines, now and then drums.
 */
final class ComposedArrangement {

  private static final int BAR = 16;

  private static final List<String> FORMS =
      List.of(
          "exact",
          "doubled",
          "transposed",
          "parallel",
          "tonal_seq",
          "tonal_one",
          "one_note",
          "augmented",
          "diminished",
          "inverted",
          "retrograde",
          "missing",
          "passing",
          "trill",
          "turn",
          "lastcut",
          "handed",
          "hocket",
          "chordtop",
          "chordinner",
          "stretto");

  private static final String[] NAMES = {
    "Flute",
    "Oboe",
    "Clarinet",
    "Bassoon",
    "Horn",
    "Trumpet",
    "Trombone",
    "Harp",
    "Celesta",
    "Piano",
    "Violins I",
    "Violins II",
    "Violas",
    "Cellos"
  };

  private final SplittableRandom random;
  private final String timing;
  private final int key;
  private final boolean minor;
  private final int parts;
  private final int[] octaves;
  private final List<Integer> chords = new ArrayList<>();
  private final List<Played> notes = new ArrayList<>();
  private final Map<String, ComposedMotif> motifs = new LinkedHashMap<>();
  private final List<Arrangement.Planted> planted = new ArrayList<>();
  private final int[] home;

  private ComposedArrangement(long seed, String timing) {
    this.random = new SplittableRandom(seed);
    this.timing = timing;
    this.key = random.nextInt(-5, 7);
    this.minor = random.nextBoolean();
    this.parts = random.nextInt(6, 15);
    this.octaves = random.ints(parts, -1, 2).toArray();
    this.home = new int[3];
  }

  /** The piece of a seed. */
  static Arrangement of(long seed, String timing) {
    return new ComposedArrangement(seed, timing).composed(seed);
  }

  private Arrangement composed(long seed) {
    String[] names = {"alpha", "beta", "gamma"};
    int[] lengths = {1, 1, 2, 2, 2, 4, 4, 3, 6};
    for (int m = 0; m < random.nextInt(2, 4); m++) {
      motifs.put(names[m], ComposedMotif.compose(random, random.nextInt(5, 14), lengths));
      home[m] = random.nextInt(parts - 1);
    }
    int bars = plant();
    accompany(bars);
    decoys(bars);
    Map<String, List<MotifNote>> lines = new LinkedHashMap<>();
    motifs.forEach((name, motif) -> lines.put(name, motif.line(key, minor)));
    return new Arrangement(
        "composed " + seed + " " + timing,
        timing,
        new ArrangementPlayer(random, timing, parts).score(notes, NAMES),
        lines,
        planted,
        List.of());
  }

  /** Plants every form once and some twice; returns how many bars that takes. */
  private int plant() {
    double at = 4 * BAR;
    for (String motif : motifs.keySet()) {
      at = plant(motif, "first", at);
    }
    List<String> forms = new ArrayList<>(FORMS);
    forms.addAll(List.of("exact", "transposed", "tonal_seq", "doubled"));
    while (!forms.isEmpty()) {
      String form = forms.remove(random.nextInt(forms.size()));
      at = plant(new ArrayList<>(motifs.keySet()).get(random.nextInt(motifs.size())), form, at);
    }
    return (int) (at / BAR) + 2;
  }

  private double plant(String name, String form, double from) {
    ComposedMotif motif = Objects.requireNonNull(motifs.get(name));
    double at = from + 4 * random.nextInt(4);
    int part = form.equals("first") || random.nextInt(3) == 0 ? home(name) : random.nextInt(parts);
    int other = (part + 1 + random.nextInt(parts - 1)) % parts;
    int inner = 1 + random.nextInt(motif.size() - 2);
    int shift = random.nextInt(1, 5) * (random.nextBoolean() ? 1 : -1);
    int step = random.nextBoolean() ? 1 : -1;
    ComposedMotif sounding =
        switch (form) {
          case "transposed" -> motif.moved(0, shift + 1);
          case "tonal_seq" -> motif.moved(shift, 0);
          case "tonal_one" -> motif.stepped(i -> i >= inner ? step : 0);
          case "one_note" -> motif.stepped(i -> i == inner ? shift : 0);
          case "augmented" -> motif.stretched(2);
          case "diminished" -> motif.stretched(0.5);
          case "inverted" -> motif.inverted();
          case "retrograde" -> motif.retrograde();
          case "missing" -> motif.without(inner);
          case "passing" -> motif.passing();
          case "trill" -> motif.trilled();
          case "turn" -> motif.turned();
          case "lastcut" -> motif.with(motif.size() - 1, cut(motif.notes().get(motif.size() - 1)));
          default -> motif;
        };
    write(name, form, sounding, at, part, other);
    double next = at + sounding.length() + (form.equals("stretto") ? 4 : 0);
    return Math.ceil((next + 8) / BAR) * BAR;
  }

  private int home(String name) {
    return home[new ArrayList<>(motifs.keySet()).indexOf(name)];
  }

  private static Tone cut(Tone note) {
    return note.at(note.on(), note.length() / 3);
  }

  private void write(
      String name, String form, ComposedMotif sounding, double at, int part, int other) {
    boolean otherMode = form.equals("parallel") != minor;
    for (int i = 0; i < sounding.size(); i++) {
      Tone note = sounding.notes().get(i);
      boolean toOther =
          (form.equals("handed") && i >= sounding.size() / 2)
              || (form.equals("hocket") && i % 2 == 1);
      int pitch = note.pitch(key, form.equals("parallel") ? otherMode : minor);
      int handed = pitch + 12 * (toOther ? octaves[part] - octaves[other] : 0);
      add(toOther ? other : part, handed, at + note.on(), note.length());
      if (form.equals("doubled")) {
        add(other, pitch + 12 * (octaves[other] - octaves[part]), at + note.on(), note.length());
      } else if (form.startsWith("chord")) {
        int away = form.equals("chordtop") ? -1 : 1;
        add(part, pitch + away * (3 + note.step() % 2), at + note.on(), note.length());
        add(part, pitch - 7, at + note.on(), note.length());
      } else if (form.equals("stretto")) {
        add(other, pitch + 7, at + 4 + note.on(), note.length());
      }
    }
    double end = at + sounding.length();
    planted.add(planted(name, form, at, end, part));
    if (form.equals("stretto")) {
      planted.add(planted(name, form, at + 4, end + 4, other));
    }
  }

  private Arrangement.Planted planted(String name, String form, double at, double end, int part) {
    return new Arrangement.Planted(name, form, at / 4, end / 4, NAMES[part]);
  }

  private void add(int part, int pitch, double on, double length) {
    int moved = pitch + 12 * octaves[part];
    notes.add(new Played(part, Math.max(24, Math.min(108, moved)), on, on + 0.97 * length));
  }

  private boolean isFree(int part, double from, double to) {
    return notes.stream()
        .noneMatch(note -> note.part() == part && note.on() < to + 2 && note.off() > from - 2);
  }

  /** What sounds about the motifs, where a part has none: a kind of line every few bars. */
  private void accompany(int bars) {
    for (int bar = 0; bar < bars; bar++) {
      chords.add(bar % 8 == 0 ? 0 : random.nextInt(7));
    }
    List<Played> around = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      for (int bar = 0; bar < bars; ) {
        int kind = random.nextInt(6);
        int length = Math.min(bars - bar, random.nextInt(2, 7));
        int[] figure = random.ints(8, 0, 4).toArray();
        for (int b = bar; b < bar + length; b++) {
          if (isFree(part, b * BAR, (b + 1) * BAR)) {
            bar(kind, part, b, figure, around);
          }
        }
        bar += length;
      }
    }
    notes.addAll(around);
  }

  private void bar(int kind, int part, int bar, int[] figure, List<Played> around) {
    int chord = chords.get(bar);
    double on = bar * BAR;
    switch (kind) {
      case 0 -> {}
      case 1 -> {
        for (int beat = 0; beat < 4; beat += 2) {
          around.add(tone(part, chord - 7, on + 4 * beat, 8));
        }
      }
      case 2 -> {
        for (int third = 0; third < 3; third++) {
          around.add(tone(part, chord + 2 * third, on, BAR));
        }
      }
      case 3, 4 -> {
        for (int eighth = 0; eighth < 8; eighth++) {
          around.add(tone(part, chord + 2 * figure[eighth], on + 2 * eighth, 2));
        }
      }
      default -> {
        int step = chord;
        for (double at = 0; at < BAR; ) {
          double length = Math.min(BAR - at, new int[] {1, 2, 2, 4, 4, 6}[random.nextInt(6)]);
          around.add(tone(part, step, on + at, length));
          step += random.nextInt(-2, 3);
          at += length;
        }
      }
    }
  }

  private Played tone(int part, int step, double on, double length) {
    int pitch = new Tone(0, 1, step, 0).pitch(key, minor) + 12 * octaves[part];
    return new Played(part, Math.max(24, Math.min(108, pitch)), on, on + 0.97 * length);
  }

  /** Lines with a motif's rhythm over another contour, where a part rests. */
  private void decoys(int bars) {
    for (ComposedMotif motif : motifs.values()) {
      int part = random.nextInt(parts);
      int bar = random.nextInt(bars);
      if (isFree(part, bar * BAR, bar * BAR + motif.length())) {
        ComposedMotif other = motif.stepped(i -> (i * 5 + 3) % 7 - 3);
        other.notes().forEach(n -> add(part, n.pitch(key, minor), bar * BAR + n.on(), n.length()));
      }
    }
  }
}
