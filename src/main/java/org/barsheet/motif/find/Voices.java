package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.NoteField;
import org.barsheet.notation.WrittenNote;

/** Tells which parts play a return, which of them leads, and what sounds above it. */
final class Voices {

  private static final int QUARTERS_HELD_OVER = 4;

  private final NoteField field;
  private final int ticksPerQuarter;

  Voices(NoteField field, int ticksPerQuarter) {
    this.field = field;
    this.ticksPerQuarter = ticksPerQuarter;
  }

  /** The parts of a return, the leading one first, then its unisons and its doublings. */
  List<Voice> of(Hit hit) {
    List<Voice> voices = new ArrayList<>();
    add(hit.lead(), 0, voices);
    for (Chain doubling : hit.doublings()) {
      if (Certainties.of(doubling).filter(c -> c == Certainty.CERTAIN).isPresent()) {
        add(doubling, distance(hit.lead(), doubling), voices);
      }
    }
    return voices;
  }

  /** The part that leads a chain. */
  int leading(Chain chain) {
    return parts(chain).get(0);
  }

  private void add(Chain chain, int distance, List<Voice> voices) {
    for (int part : parts(chain)) {
      if (voices.stream().noneMatch(voice -> voice.part() == part)) {
        voices.add(new Voice(part, distance));
      }
    }
  }

  /** Semitones from one chain to another, at the first note that both have; 0 if there is none. */
  private int distance(Chain lead, Chain doubling) {
    int most = Math.min(lead.notes().size(), doubling.notes().size());
    for (int i = 0; i < most; i++) {
      if (lead.notes().has(i) && doubling.notes().has(i)) {
        return field.pitch(doubling.notes().get(i)) - field.pitch(lead.notes().get(i));
      }
    }
    return 0;
  }

  /** The parts that play at least half of a chain; if none does, all, the busiest first. */
  private List<Integer> parts(Chain chain) {
    Map<Integer, Integer> counts = new TreeMap<>();
    for (int i = 0; i < chain.notes().size(); i++) {
      if (chain.notes().has(i)) {
        for (int part : distinctParts(chain.notes().get(i))) {
          counts.merge(part, 1, Integer::sum);
        }
      }
    }
    List<Map.Entry<Integer, Integer>> ordered = new ArrayList<>(counts.entrySet());
    ordered.sort(Comparator.comparingInt((Map.Entry<Integer, Integer> e) -> -e.getValue()));
    int half = (chain.notes().present() + 1) / 2;
    int least = Math.min(half, ordered.get(0).getValue() >= half ? half : 1);
    return ordered.stream().filter(e -> e.getValue() >= least).map(Map.Entry::getKey).toList();
  }

  private Set<Integer> distinctParts(int note) {
    Set<Integer> parts = new TreeSet<>();
    for (WrittenNote source : field.sources(note)) {
      parts.add(source.played().part());
    }
    return parts;
  }

  /**
   * The part that sounds above most of a return and highest; −1 where the return is on top.
   *
   * @param playing parts that play the return and so do not count
   */
  int above(Chain chain, List<Integer> playing) {
    Map<Integer, Integer> covered = new HashMap<>();
    Map<Integer, Integer> highest = new TreeMap<>();
    for (int i = 0; i < chain.notes().size(); i++) {
      if (chain.notes().has(i)) {
        for (Map.Entry<Integer, Integer> other : over(chain.notes().get(i)).entrySet()) {
          covered.merge(other.getKey(), 1, Integer::sum);
          highest.merge(other.getKey(), other.getValue(), Math::max);
        }
      }
    }
    int best = -1;
    int top = -1;
    for (Map.Entry<Integer, Integer> other : highest.entrySet()) {
      boolean mostly = 2 * covered.getOrDefault(other.getKey(), 0) > chain.notes().present();
      if (mostly && other.getValue() > top && !playing.contains(other.getKey())) {
        best = other.getKey();
        top = other.getValue();
      }
    }
    return best;
  }

  /** Parts that sound above a note while it lasts, each with its highest pitch. */
  private Map<Integer, Integer> over(int note) {
    Map<Integer, Integer> above = new TreeMap<>();
    long on = field.onTick(note);
    long off = on + Math.max(1, field.length(note));
    int onset = field.onsetFrom(on - (long) QUARTERS_HELD_OVER * ticksPerQuarter);
    for (; onset < field.onsets() && field.onset(onset) < off; onset++) {
      for (int n = field.firstNoteAt(onset); n < field.firstNoteAt(onset + 1); n++) {
        if (field.pitch(n) > field.pitch(note) && field.onTick(n) + field.length(n) > on) {
          for (int part : distinctParts(n)) {
            above.merge(part, field.pitch(n), Math::max);
          }
        }
      }
    }
    return above;
  }
}
