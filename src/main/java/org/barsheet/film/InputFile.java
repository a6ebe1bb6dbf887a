package org.barsheet.film;

/**
 * A file the film sheet was made from.
 *
 * @param role "plan", "score" or "panels", the table of panels where they stand in a file of their
 *     own
 * @param name file name without folders
 * @param sha256 its SHA-256, 64 lower-case hexadecimal digits
 */
public record InputFile(String role, String name, String sha256) {

  /** The first eight digits, for headings. */
  public String version() {
    return sha256.substring(0, 8);
  }
}
