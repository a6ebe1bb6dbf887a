package org.barsheet.calls;

import java.util.List;

/** What a performer who films at home is told about safety: general, never a permission. */
final class CallCautions {

  static final List<String> AT_HOME =
      List.of(
          "Let lamps cool before you touch or move them. Lay or hang nothing on a hot lamp; keep"
              + " lamps away from curtains, paper, children and pets.",
          "Use no damaged plug or cord and don't overload an outlet. Tape cords down where people"
              + " walk; leave a light on where it's dark.",
          "Keep doors and exits clear. Set camera and lamps where nobody can tip them over; don't"
              + " climb to hang a cloth when you're alone.",
          "Keep headphones at a level you could listen to for an hour. Rest when you're tired.",
          "The rules of your building and place, and the advice of a licensed electrician, come"
              + " before this page: it's a plan, not a permit.");

  static final List<String> CHILDREN =
      List.of(
          "If you're a child, a parent or guardian must read this page first, agree in writing, be"
              + " there while you film, and keep the recording safe. Hours, breaks, licenses and"
              + " chaperones are set by law and differ by place and age: check the local law and"
              + " whether a license is needed.");

  private CallCautions() {}
}
