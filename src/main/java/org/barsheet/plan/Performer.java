package org.barsheet.plan;

import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;

/**
 * Somebody filmed at home, known by an alias.
 *
 * @param name alias, unique in the plan
 * @param part name of the part they play, or "" where they do not play
 * @param clip file name they deliver, or ""
 * @param clipRate its frame rate, where known
 * @param clap the clap that ties clip and music, where known
 * @param clipStart when the clip that came begins, from the music's start, where that was told
 * @param clipWidth of the clip's video in pixels, 0 where not known
 * @param clipHeight of the clip's video in pixels, 0 where not known
 * @param clothes colors noted, RRGGBB
 * @param behind what is behind them in their clip, or ""
 * @param where its place in the plan, for messages
 */
public record Performer(
    String name,
    String part,
    String clip,
    Optional<FrameRate> clipRate,
    Optional<Clap> clap,
    Optional<Seconds> clipStart,
    int clipWidth,
    int clipHeight,
    List<String> clothes,
    String behind,
    Where where) {

  public Performer {
    clothes = List.copyOf(clothes);
  }

  /** What ties the clip to the music: its beginning, where that was told, else the clap. */
  public Optional<Clap> tie() {
    return clipStart.map(start -> new Clap(start, 0)).or(() -> clap);
  }

  /** The performer with what was told about the clip that came. */
  public Performer with(SentClip came) {
    return new Performer(
        name,
        part,
        String.valueOf(came.file().getFileName()),
        came.rate().or(() -> clipRate),
        clap,
        came.start().or(() -> clipStart),
        clipWidth,
        clipHeight,
        clothes,
        behind,
        where);
  }

  /** The performer with a file of sound instead, which no clap of the video's frames ties. */
  public Performer withSoundApart(String file) {
    return new Performer(
        name,
        part,
        file,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0,
        0,
        clothes,
        behind,
        where);
  }

  /** The performer whose clip begins at a time from the music's start. */
  public Performer startingAt(Seconds start) {
    return new Performer(
        name,
        part,
        clip,
        clipRate,
        clap,
        Optional.of(start),
        clipWidth,
        clipHeight,
        clothes,
        behind,
        where);
  }

  /**
   * One clap, heard and seen.
   *
   * @param at from the music's start, negative before it
   * @param clipFrame frame of the clip that shows it, from 0
   */
  public record Clap(Seconds at, long clipFrame) {}
}
