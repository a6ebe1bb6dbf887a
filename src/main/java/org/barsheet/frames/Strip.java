package org.barsheet.frames;

import java.util.List;

/**
 * What stands in words beside a frame.
 *
 * @param timecode its label
 * @param frame from the film's first frame, from 0; negative before it
 * @param panel whose shot it belongs to
 * @param inShot frame of the shot, from 1
 * @param place {@code bar 12 beat 3}, {@code before the music} or {@code after the music}
 * @param landings what lands on this very frame: {@code bakers-lamp fully open}
 */
public record Strip(
    String timecode, long frame, String panel, long inShot, String place, List<String> landings) {

  public Strip {
    landings = List.copyOf(landings);
  }
}
