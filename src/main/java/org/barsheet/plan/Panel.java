package org.barsheet.plan;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A drawing of the storyboard and what happens in it.
 *
 * @param name as the storyboard numbers it ("7", "1.10", "12A"), unique in the plan
 * @param action what is seen
 * @param cue where in the music it sits
 * @param cut where its shot begins
 * @param length how long it is asked to be, where asked
 * @param field what the camera sees, where given
 * @param drawing its drawing, resolved against the plan's folder, where given
 * @param reveals movements in it, in the order written
 * @param appears performers seen in it
 * @param locked whether it must not move any more
 * @param where its place in the plan, for messages
 */
public record Panel(
    String name,
    String action,
    Place cue,
    Cut cut,
    Optional<Length> length,
    Optional<Field> field,
    Optional<Path> drawing,
    List<Reveal> reveals,
    List<Appears> appears,
    boolean locked,
    Where where) {

  public Panel {
    reveals = List.copyOf(reveals);
    appears = List.copyOf(appears);
  }

  /** The same panel on another cue and with other reveals. */
  public Panel with(Place other, List<Reveal> others) {
    return new Panel(
        name, action, other, cut, length, field, drawing, others, appears, locked, where);
  }

  /** Where a panel's shot begins. */
  public sealed interface Cut {}

  /** Early enough for the panel's reveals, on a beat; at the cue's first frame if it has none. */
  public record AutoCut() implements Cut {}

  /** On the cue's first frame. */
  public record OnCue() implements Cut {}

  /**
   * So long before the cue's first note (negative amounts do not occur).
   *
   * @param before one amount
   */
  public record Before(Length before) implements Cut {}

  /**
   * At a place of its own.
   *
   * @param place a bar, a mark or a timecode
   */
  public record AtPlace(Place place) implements Cut {}

  /**
   * A performer seen in an opening.
   *
   * @param performer name of the performer
   * @param opening name of the opening
   */
  public record Appears(String performer, String opening) {}
}
