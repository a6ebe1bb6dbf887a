package org.barsheet.shooting;

import java.util.List;

/**
 * One row of the work from the top down: what to do to the paper, and what to photograph then.
 *
 * @param fresh openings whose flap is cut afresh first: it stands further open than is wanted now,
 *     and paper rarely closes cleanly
 * @param toOpen openings that a hand opens further first, and how far, without photographing it
 * @param take what is photographed then
 */
public record Step(List<String> fresh, List<Setup.Standing> toOpen, Take take) {

  public Step {
    fresh = List.copyOf(fresh);
    toOpen = List.copyOf(toOpen);
  }
}
