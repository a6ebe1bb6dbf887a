package org.barsheet.calls;

import java.util.List;

/** What a performer who films at home is told about safety: general, never a permission. */
final class CallCautions {

  static final List<String> AT_HOME =
      List.of(
          "Let lamps cool before you move them. Lay or hang nothing on a hot lamp; keep"
              + " lamps away from curtains, paper and people.",
          "Check plugs and cords before you use them. Unroll extension cords, don't overload an"
              + " outlet, tape cables down where people walk.",
          "Keep doors and exits clear: no screen, no stand, no cable.",
          "Set stands firmly or weight them. Mark or light the way through a dark room.",
          "Keep headphones at a level you could listen to for an hour.",
          "Rest when you're tired. Don't work alone at night with hot lamps.",
          "The rules of the place where you film and the advice of licensed trades come before"
              + " this page: it's a plan, not a permit.");

  static final List<String> CHILDREN =
      List.of(
          "If you're a child, a parent or guardian must read this page first, agree in writing, be"
              + " there while you film, and keep the recording safe.",
          "Working hours, breaks, licenses and chaperones for children are set by law and differ"
              + " by place and age: check the local law and whether a license is needed.");

  private CallCautions() {}
}
