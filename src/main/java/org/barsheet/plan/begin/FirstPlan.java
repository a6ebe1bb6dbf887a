package org.barsheet.plan.begin;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.plan.Length;
import org.barsheet.plan.Place;

/**
 * What is known when a plan is begun from nothing but a score.
 *
 * @param title of the film
 * @param score name of the MIDI file, as the plan will name it
 * @param film settings of the film that are given, by key ({@code frame-rate}), as written in a
 *     plan
 * @param motifs figures to begin with
 * @param panels one for each section of the music
 * @param parts names of the score's parts, offered where one has to be named
 */
public record FirstPlan(
    String title,
    String score,
    Map<String, String> film,
    List<FirstMotif> motifs,
    List<FirstPanel> panels,
    List<String> parts) {

  public FirstPlan {
    film = Collections.unmodifiableMap(new LinkedHashMap<>(film));
    motifs = List.copyOf(motifs);
    panels = List.copyOf(panels);
    parts = List.copyOf(parts);
  }

  /**
   * A motif to begin with: heard at a place, or with its notes written out.
   *
   * @param name as places will call it
   * @param place where it is heard ({@code bar 9}), or ""
   * @param length how long it is there ({@code 5 beats}), or ""
   * @param part who plays it there, or ""
   * @param notes in note grammar, or ""
   * @param remark what a person should know of it ("heard 14 times"), or ""
   */
  public record FirstMotif(
      String name, String place, String length, String part, String notes, String remark) {

    public static FirstMotif heardAt(
        String name, Place place, Length length, String part, String remark) {
      return new FirstMotif(name, place.toString(), length.toString(), part, "", remark);
    }

    public static FirstMotif written(String name, String notes, String remark) {
      return new FirstMotif(name, "", "", "", notes, remark);
    }
  }

  /**
   * A panel to begin with.
   *
   * @param name its number
   * @param action what is seen; "" is left for the director
   * @param cue where it sits, in place grammar, or ""
   * @param length how long it is asked to be, in length grammar, or ""
   */
  public record FirstPanel(String name, String action, String cue, String length) {}
}
