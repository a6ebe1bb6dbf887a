package org.barsheet.handoff;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Timecode;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.text.Ascii;
import org.barsheet.timing.Shot;

/**
 * The shots as edit decision lists (SMPTE ST 258:2004): cuts on one photograph track, out points
 * exclusive. Each shot is a reel of its own that counts from 00:00:00:00. A list holds at most 999
 * events, so a longer film is split.
 */
final class EditDecisionList {

  /** Event numbers have three digits. */
  static final int MOST_EVENTS = 999;

  private static final int LINE = 76;
  private static final int MOST_TITLE = 70;
  private static final String LINE_END = "\r\n";

  private final FilmSheet sheet;
  private final Film film;
  private final List<Shot> shots;
  private final List<String> reels;
  private final String title;

  private EditDecisionList(FilmSheet sheet) {
    this.sheet = sheet;
    this.film = sheet.plan().film();
    this.shots = sheet.timing().shots();
    this.title = Ascii.line(sheet.plan().title());
    this.reels = reels(shots);
  }

  /** The lists in order; one for up to 999 shots. */
  static List<byte[]> lists(FilmSheet sheet) {
    EditDecisionList whole = new EditDecisionList(sheet);
    List<byte[]> lists = new ArrayList<>();
    for (int first = 0; first < Math.max(1, whole.shots.size()); first += MOST_EVENTS) {
      String text = whole.list(first, Math.min(whole.shots.size(), first + MOST_EVENTS));
      lists.add(text.getBytes(StandardCharsets.US_ASCII));
    }
    return lists;
  }

  private String list(int from, int to) {
    FrameRate rate = film.rate();
    StringBuilder text = new StringBuilder();
    String heading = title.substring(0, Math.min(MOST_TITLE, title.length())).strip();
    text.append("TITLE: ").append(heading).append(LINE_END);
    text.append("FCM: ").append(rate.dropFrame() ? "DROP FRAME" : "NON-DROP FRAME");
    text.append(LINE_END);
    comment(text, FilmWords.counting(film) + "; each reel counts from " + label(0));
    for (int i = from; i < to; i++) {
      event(text, i - from + 1, shots.get(i), reels.get(i));
    }
    return text.toString();
  }

  private void event(StringBuilder text, int number, Shot shot, String reel) {
    text.append(String.format(Locale.ROOT, "%03d  %-8s V     C        ", number, reel));
    text.append(label(0)).append(' ').append(label(shot.frames().length())).append(' ');
    text.append(film.timecode(shot.frames().start())).append(' ');
    text.append(film.timecode(shot.frames().endExclusive())).append(LINE_END);
    comment(text, "panel " + shot.panel().name() + ": " + shot.panel().action());
    comment(text, CueWords.line(film, shot.cue()));
    CueWords.accent(film, shot.cue()).ifPresent(accent -> comment(text, accent));
    for (PlannedReveal reveal : sheet.revealsOf(shot)) {
      comment(text, CueWords.landing(film, reveal));
    }
  }

  private Timecode label(long frame) {
    return Timecode.ofFrame(film.rate(), frame);
  }

  /** Lines that begin with a star, broken between words where they grow long. */
  private static void comment(StringBuilder text, String words) {
    StringBuilder line = new StringBuilder("*");
    for (String word : Ascii.line(words).split(" +", -1)) {
      if (line.length() > 1 && line.length() + 1 + word.length() > LINE) {
        text.append(line).append(LINE_END);
        line.setLength(1);
      }
      line.append(' ').append(word, 0, Math.min(word.length(), LINE - 2));
    }
    text.append(line).append(LINE_END);
  }

  /** A reel is at most eight letters and digits: P and the panel's name, else S and a number. */
  private static List<String> reels(List<Shot> shots) {
    Set<String> taken = new HashSet<>();
    List<String> reels = new ArrayList<>();
    for (Shot shot : shots) {
      String byName = "P" + shot.panel().name().toUpperCase(Locale.ROOT);
      boolean legal = byName.matches("P[0-9A-Z]{1,7}") && taken.add(byName);
      reels.add(legal ? byName : String.format(Locale.ROOT, "S%04d", shot.index() + 1));
    }
    return reels;
  }
}
