package org.barsheet.plan;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.motif.MotifNote;

/**
 * A motif as the plan asks for it.
 *
 * @param name unique in the plan
 * @param shapes the motif itself first, then further shapes of it ({@code also}); at least one
 * @param accent the note that a reveal lands on
 * @param match how near a return must be
 * @param forms forms looked for besides as given; iterates in the order of {@link Form}
 * @param where its place in the plan, for messages
 */
public record MotifRequest(
    String name, List<Shape> shapes, Accent accent, Match match, Set<Form> forms, Where where) {

  public MotifRequest {
    shapes = List.copyOf(shapes);
    EnumSet<Form> inOrder = EnumSet.noneOf(Form.class);
    inOrder.addAll(forms);
    forms = Collections.unmodifiableSet(inOrder);
  }

  /** The same motif with its shapes given in another way. */
  public MotifRequest with(List<Shape> others) {
    return new MotifRequest(name, others, accent, match, forms, where);
  }

  /** How a shape is given. */
  public sealed interface Shape {}

  /**
   * Written out in note grammar.
   *
   * @param notes in order of onset
   */
  public record Written(List<MotifNote> notes) implements Shape {
    public Written {
      notes = List.copyOf(notes);
    }
  }

  /**
   * Heard in the score.
   *
   * @param place where it begins: a bar, a mark or a timecode
   * @param length how long it is, one amount
   * @param part name of the part that plays it
   * @param where its place in the plan
   */
  public record HeardAt(Place place, Length length, String part, Where where) implements Shape {}
}
