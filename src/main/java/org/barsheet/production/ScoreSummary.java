package org.barsheet.production;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.barsheet.clock.Seconds;
import org.barsheet.pulse.Music;
import org.barsheet.score.Bar;
import org.barsheet.score.BarBeat;
import org.barsheet.score.Mark;
import org.barsheet.score.Meter;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;
import org.barsheet.suggestions.Suggestion;

/**
 * What is in a score file, in figures a person asks for.
 *
 * @param file the file
 * @param music the score with the tempo and bars that would be followed
 * @param parts every part with its number of notes
 * @param firstOnset from tick 0; 0 s in a silent score
 * @param lastOnset from tick 0; 0 s in a silent score
 * @param length from tick 0 to the end of the last note
 * @param meters every meter with the bar from which it holds
 * @param marks every mark with its place and time
 * @param downbeats the first three downbeats of full bars, for a person to confirm by ear
 * @param suggestions motifs nobody named yet, the most telling first
 */
public record ScoreSummary(
    Path file,
    Music music,
    List<PartSize> parts,
    Seconds firstOnset,
    Seconds lastOnset,
    Seconds length,
    List<MeterFrom> meters,
    List<MarkAt> marks,
    List<BarAt> downbeats,
    List<Suggestion> suggestions) {

  /** A part and how many notes it has. */
  public record PartSize(Part part, long notes) {}

  /** A meter and the first bar it holds in. */
  public record MeterFrom(Meter meter, int bar) {}

  /** A mark, its place in bars, and its time from tick 0. */
  public record MarkAt(Mark mark, BarBeat place, Seconds at) {}

  /** A bar and the time of its first beat from tick 0. */
  public record BarAt(Bar bar, Seconds at) {}

  static ScoreSummary of(Path file, Music music, List<Suggestion> suggestions) {
    Score score = music.score();
    List<Note> notes = score.notes();
    List<List<Note>> byPart = score.notesByPart();
    return new ScoreSummary(
        file,
        music,
        score.parts().stream()
            .map(part -> new PartSize(part, byPart.get(part.index()).size()))
            .toList(),
        notes.isEmpty() ? Seconds.ZERO : time(music, notes.get(0).onTick()),
        notes.isEmpty() ? Seconds.ZERO : time(music, notes.get(notes.size() - 1).onTick()),
        time(music, score.endTick()),
        meters(music.bars().bars()),
        score.marks().stream()
            .map(
                mark ->
                    new MarkAt(mark, music.bars().locate(mark.tick()), time(music, mark.tick())))
            .toList(),
        music.bars().bars().stream()
            .filter(bar -> bar.number() > 0)
            .limit(3)
            .map(bar -> new BarAt(bar, time(music, bar.startTick())))
            .toList(),
        suggestions);
  }

  private static Seconds time(Music music, long tick) {
    return music.tempo().secondsAt(tick);
  }

  private static List<MeterFrom> meters(List<Bar> bars) {
    List<MeterFrom> meters = new ArrayList<>();
    for (Bar bar : bars) {
      if (meters.isEmpty() || !meters.get(meters.size() - 1).meter().equals(bar.meter())) {
        meters.add(new MeterFrom(bar.meter(), bar.number()));
      }
    }
    return List.copyOf(meters);
  }
}
