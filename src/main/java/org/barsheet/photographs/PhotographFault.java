package org.barsheet.photographs;

import java.util.List;

/**
 * Something wrong with photographs of a sequence.
 *
 * @param kind what is wrong
 * @param photographs permanent names of those that it is wrong with, in order
 * @param sentence what is so, without a closing full stop
 * @param remedy what to do
 */
public record PhotographFault(
    FaultKind kind, List<String> photographs, String sentence, String remedy) {

  public PhotographFault {
    photographs = List.copyOf(photographs);
  }
}
