package org.barsheet.photographs;

import org.barsheet.pixels.Reduced;
import org.barsheet.pixels.SmallJpeg;

/** A small copy of a photograph, a JPEG at most 480 pixels wide. */
public final class Small {

  private final byte[] jpeg;

  private Small(byte[] jpeg) {
    this.jpeg = jpeg;
  }

  static Small of(Reduced image) {
    return new Small(SmallJpeg.of(image));
  }

  /** Its file's bytes. */
  public byte[] jpeg() {
    return jpeg.clone();
  }
}
