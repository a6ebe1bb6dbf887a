package org.barsheet.workbook;

import java.io.IOException;
import java.io.OutputStream;
import org.barsheet.workbook.typed.CarriedOver;

/** A workbook as a file holds it, and what was carried over into it. */
public final class FinishedWorkbook {

  private final byte[] bytes;
  private final CarriedOver carried;

  FinishedWorkbook(byte[] bytes, CarriedOver carried) {
    this.bytes = bytes;
    this.carried = carried;
  }

  public CarriedOver carried() {
    return carried;
  }

  /** Writes it out. */
  public void writeTo(OutputStream out) throws IOException {
    out.write(bytes);
  }

  public byte[] bytes() {
    return bytes.clone();
  }
}
