package org.barsheet.revision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.pulse.Music;
import org.barsheet.score.Bar;
import org.barsheet.score.Note;
import org.barsheet.score.Part;

/** One version of a score: what each bar holds, part by part. */
final class ScoreVersion {

  private final Music music;
  private final List<Map<String, List<HeldNote>>> holds = new ArrayList<>();

  private ScoreVersion(Music music) {
    this.music = music;
    bars().forEach(bar -> holds.add(new LinkedHashMap<>()));
  }

  /**
   * A version under names of our own.
   *
   * @param names what a part is called here, from its name in the score
   */
  static ScoreVersion of(Music music, UnaryOperator<String> names) {
    ScoreVersion version = new ScoreVersion(music);
    for (Note note : music.score().notes()) {
      Bar bar = music.bars().barAt(note.onTick());
      Part part = music.score().parts().get(note.part());
      version
          .holds
          .get(bar.index())
          .computeIfAbsent(names.apply(part.name()), name -> new ArrayList<>())
          .add(version.held(note, bar, part.drums()));
    }
    version.holds.forEach(bar -> bar.values().forEach(notes -> notes.sort(HeldNote.ORDER)));
    return version;
  }

  private HeldNote held(Note note, Bar bar, boolean drum) {
    BigFraction at = quarters(note.onTick() - bar.startTick());
    return new HeldNote(at, note.pitch(), quarters(note.lengthTicks()), drum);
  }

  private BigFraction quarters(long ticks) {
    return BigFraction.of(ticks, music.score().ticksPerQuarter());
  }

  List<Bar> bars() {
    return music.bars().bars();
  }

  /** The notes of a bar by part; a part that rests is left out. */
  Map<String, List<HeldNote>> holds(int bar) {
    return holds.get(bar);
  }

  /** A bar's notes and its written length. */
  List<Object> content(int bar) {
    return List.of(quarters(bars().get(bar).lengthTicks()), holds.get(bar));
  }

  /** How fast a bar goes by. */
  Pace pace(int index) {
    Bar bar = bars().get(index);
    BigFraction beats = quarters(bar.lengthTicks()).divide(bar.meter().feltBeatQuarters());
    return Pace.of(
        beats,
        music.tempo().secondsAt(bar.endTick()).minus(music.tempo().secondsAt(bar.startTick())));
  }
}
