package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Damages a workbook by chance, as disks, half copies and other programs do. */
final class DamagedBook {

  private final Random random;

  DamagedBook(Random random) {
    this.random = random;
  }

  /** A workbook with one kind of damage. */
  byte[] of(byte[] whole) throws IOException {
    return switch (random.nextInt(8)) {
      case 0 -> bytesChanged(whole);
      case 1 -> Arrays.copyOf(whole, random.nextInt(whole.length));
      case 2 -> bytesLeftOut(whole);
      case 3 -> entries(whole, this::cutShort);
      case 4 -> entries(whole, this::textNumberChanged);
      case 5 -> entries(whole, this::markupChanged);
      case 6 -> entries(whole, this::numberChanged);
      default -> entryLeftOut(whole);
    };
  }

  private byte[] bytesChanged(byte[] whole) {
    byte[] damaged = whole.clone();
    for (int i = random.nextInt(10); i >= 0; i--) {
      damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
    }
    return damaged;
  }

  private byte[] bytesLeftOut(byte[] whole) {
    int from = random.nextInt(whole.length);
    int to = Math.min(whole.length, from + 1 + random.nextInt(200));
    byte[] damaged = Arrays.copyOf(whole, whole.length - (to - from));
    System.arraycopy(whole, to, damaged, from, whole.length - to);
    return damaged;
  }

  private interface Part {
    byte[] damaged(String name, byte[] content);
  }

  /** The archive packed anew, each entry damaged or not: as an archive it is whole. */
  private byte[] entries(byte[] whole, Part part) throws IOException {
    Map<String, byte[]> parts = unpacked(whole);
    List<String> names = new ArrayList<>(parts.keySet());
    String one = names.get(random.nextInt(names.size()));
    parts.computeIfPresent(one, part::damaged);
    for (String sheet : names) {
      if (sheet.contains("worksheets/sheet") && random.nextInt(3) == 0) {
        parts.computeIfPresent(sheet, part::damaged);
      }
    }
    return packed(parts);
  }

  private byte[] entryLeftOut(byte[] whole) throws IOException {
    Map<String, byte[]> parts = unpacked(whole);
    List<String> names = new ArrayList<>(parts.keySet());
    parts.remove(names.get(random.nextInt(names.size())));
    return packed(parts);
  }

  private byte[] cutShort(String name, byte[] content) {
    return Arrays.copyOf(content, random.nextInt(content.length + 1));
  }

  /** Cells of texts hold numbers of shared strings (ECMA-376 part 1, 18.3.1.96). */
  private byte[] textNumberChanged(String name, byte[] content) {
    String number = random.nextBoolean() ? "9999999" : "-" + random.nextInt(100);
    return new String(content, UTF_8)
        .replaceFirst("(t=\"s\"[^>]*>)<v>\\d+</v>", "$1<v>" + number + "</v>")
        .getBytes(UTF_8);
  }

  private byte[] markupChanged(String name, byte[] content) {
    byte[] damaged = content.clone();
    for (int i = random.nextInt(5); i >= 0 && damaged.length > 0; i--) {
      damaged[random.nextInt(damaged.length)] = (byte) "<>&\"/0Z ".charAt(random.nextInt(8));
    }
    return damaged;
  }

  private byte[] numberChanged(String name, byte[] content) {
    String text = new String(content, UTF_8);
    List<Integer> digits = new ArrayList<>();
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= '0' && text.charAt(i) <= '9') {
        digits.add(i);
      }
    }
    if (digits.isEmpty()) {
      return content;
    }
    int at = digits.get(random.nextInt(digits.size()));
    String number = List.of("", "99999999999", "-1", "x", "1e9").get(random.nextInt(5));
    return (text.substring(0, at) + number + text.substring(at + 1)).getBytes(UTF_8);
  }

  private static Map<String, byte[]> unpacked(byte[] book) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(book))) {
      for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
        parts.put(entry.getName(), from.readAllBytes());
      }
    }
    return parts;
  }

  private static byte[] packed(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream to = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        to.putNextEntry(new ZipEntry(part.getKey()));
        to.write(part.getValue());
      }
    }
    return bytes.toByteArray();
  }
}
