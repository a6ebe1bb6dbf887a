package org.barsheet.calls;

import java.util.List;

/** What a performer who films at home is told about safety: general, never a permission. */
final class CallCautions {

  static final List<String> AT_HOME =
      List.of(
          "Let lamps cool before you move them. Nothing lies on a hot lamp or hangs from it; keep"
              + " them away from curtains, paper and people.",
          "Look at plugs and leads before you use them. Unroll extension leads, do not overload a"
              + " socket, tape cables down where people walk.",
          "Nothing blocks a door or a way out: no screen, no stand, no cable.",
          "Set stands firmly or weight them. Mark or light the way through a dark room.",
          "Keep headphones at a level you could listen to for an hour.",
          "Rest when you are tired. Do not work alone at night with hot lamps.",
          "The rules of the place where you film, and the advice of licensed trades, come before"
              + " this page: it is a plan, not a permission.");

  static final List<String> CHILDREN =
      List.of(
          "If you are a child, a parent or guardian reads this page first, agrees in writing, is"
              + " there while you film, and keeps the recording safe.",
          "Working hours, breaks, licenses and chaperones for children are set by law and differ"
              + " by place and age: check the local law and whether a license is needed.");

  private CallCautions() {}
}
