package org.barsheet.demo;

/** How loud a phrase is played, as a MIDI velocity. */
enum Dynamic {
  PPP(24),
  PP(34),
  P(46),
  MP(58),
  MF(72),
  F(88),
  FF(104);

  final int velocity;

  Dynamic(int velocity) {
    this.velocity = velocity;
  }
}
