package org.barsheet.demo.drawing;

import java.awt.Color;

/** The hour and weather a panel plays in: what is laid over every sheet of paper, and how much. */
enum Light {
  FOG(new Color(0xD8D9D2), 0.50, 0xC9CFCB, 0xD6D8D0, 0xE2E1D7),
  DUSK(new Color(0x3A4A78), 0.16, 0x3D5C86, 0x7C93A0, 0xD9B47A),
  NIGHT(new Color(0x142850), 0.38, 0x142850, 0x1E3866, 0x2E4F80),
  STORM(new Color(0x1B2230), 0.55, 0x1A2130, 0x27303F, 0x39434F),
  BRIGHT(new Color(0x142850), 0.20, 0x142850, 0x24437A, 0x3D6490);

  private final Color veil;
  private final double share;

  /** The three sheets of the sky, from the top. */
  final int highSky;

  final int middleSky;
  final int lowSky;

  Light(Color veil, double share, int highSky, int middleSky, int lowSky) {
    this.veil = veil;
    this.share = share;
    this.highSky = highSky;
    this.middleSky = middleSky;
    this.lowSky = lowSky;
  }

  /** A paper's color as it looks in this light. */
  Color on(int paper) {
    return mix(new Color(paper), veil, share);
  }

  static Color mix(Color from, Color to, double share) {
    return new Color(
        part(from.getRed(), to.getRed(), share),
        part(from.getGreen(), to.getGreen(), share),
        part(from.getBlue(), to.getBlue(), share));
  }

  private static int part(int from, int to, double share) {
    return (int) Math.round(from + (to - from) * share);
  }
}
