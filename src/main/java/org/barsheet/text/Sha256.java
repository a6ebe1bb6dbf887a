package org.barsheet.text;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;

/** Checksums by SHA-256 (FIPS 180-4). */
public final class Sha256 {

  private Sha256() {}

  /** A digest that has read nothing yet. */
  public static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }

  /** The checksum of bytes: 64 lower-case hexadecimal digits. */
  public static String hex(byte[] bytes) {
    return HexFormat.of().formatHex(digest().digest(bytes));
  }

  /** The same of a text in UTF-8. */
  public static String hex(String text) {
    return hex(text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * The source expression of a content security policy that admits an inline text (CSP level 3).
   */
  public static String policySource(String inline) {
    byte[] sha = digest().digest(inline.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(sha);
  }
}
