package org.barsheet.movie;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.barsheet.clock.FrameRate;
import org.barsheet.frames.SeenOpening;
import org.barsheet.plan.Opening;

/** The performers' clips that are seen at a time, each read frame by frame beside the film. */
final class ClipShelf implements AutoCloseable {

  /** More programs at a time would slow all of them down. */
  private static final int MOST = 8;

  private final Optional<Ffmpeg> ffmpeg;
  private final Material material;
  private final Map<String, ClipStream> open = new LinkedHashMap<>();
  private final Set<String> used = new HashSet<>();
  private final Set<String> ended = new HashSet<>();

  ClipShelf(Optional<Ffmpeg> ffmpeg, Material material) {
    this.ffmpeg = ffmpeg;
    this.material = material;
  }

  /**
   * What of a clip fills its opening on the film frame that is drawn now; empty where it has not
   * come, where rate or clap are not known, and beyond its ends.
   *
   * @param scale pixels of the movie to one square
   */
  Optional<BufferedImage> frame(SeenOpening.Insert insert, Opening opening, double scale) {
    String key = insert.performer().name() + "\n" + opening.name();
    used.add(key);
    if (insert.clipFrame().isEmpty() || ended.contains(key)) {
      return Optional.empty();
    }
    long frame = insert.clipFrame().getAsLong();
    if (frame < 0) {
      return Optional.empty();
    }
    if (!open.containsKey(key) && open.size() < MOST) {
      begin(insert, opening, scale).ifPresent(stream -> open.put(key, stream));
    }
    Optional<BufferedImage> image =
        Optional.ofNullable(open.get(key)).flatMap(stream -> stream.frame(frame));
    if (image.isEmpty()) {
      ended.add(key);
    }
    return image;
  }

  private Optional<ClipStream> begin(SeenOpening.Insert insert, Opening opening, double scale) {
    Optional<Path> file = material.clip(insert.performer());
    Optional<FrameRate> rate = insert.performer().clipRate();
    if (ffmpeg.isEmpty() || file.isEmpty() || rate.isEmpty()) {
      return Optional.empty();
    }
    try {
      long frame = insert.clipFrame().orElseThrow();
      return Optional.of(
          ClipStream.of(ffmpeg.get(), file.get(), rate.get(), frame, opening.rect(), scale));
    } catch (IOException doesNotStart) {
      return Optional.empty();
    }
  }

  /** Lets go of clips that the image just drawn did not show. */
  void endOfFrame() {
    open.entrySet()
        .removeIf(
            each -> {
              boolean gone = !used.contains(each.getKey());
              if (gone) {
                each.getValue().close();
              }
              return gone;
            });
    ended.retainAll(used);
    used.clear();
  }

  @Override
  public void close() {
    open.values().forEach(ClipStream::close);
    open.clear();
  }
}
