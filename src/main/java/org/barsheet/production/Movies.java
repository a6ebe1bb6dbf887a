package org.barsheet.production;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.exposure.FileNames;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.movie.Ffmpeg;
import org.barsheet.movie.FlashVerdict;
import org.barsheet.movie.GuideVideo;
import org.barsheet.movie.Movie;
import org.barsheet.movie.MovieOrder;
import org.barsheet.movie.MovieSound;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Recording;
import org.barsheet.production.publish.OutputFolder;
import org.barsheet.sound.BankGuide;
import org.barsheet.sound.SoundPart;
import org.barsheet.timing.SoundLayout;

/** Draws a film as a movie, as far as that is asked for. */
final class Movies {

  private final FilmSheet film;
  private final String name;
  private final OutputFolder out;
  private final MovieAsk ask;
  private final Progress progress;
  private final Optional<Ffmpeg> ffmpeg;
  private final FrameSpan frames;

  /**
   * What is asked for of a film.
   *
   * @param ffmpeg where it is needed
   * @throws InputException if a place is none
   */
  Movies(
      FilmSheet film,
      String name,
      OutputFolder out,
      MovieAsk ask,
      Optional<Ffmpeg> ffmpeg,
      Progress progress) {
    this.film = film;
    this.name = name;
    this.out = out;
    this.ask = ask;
    this.progress = progress;
    this.ffmpeg = ffmpeg;
    this.frames = MovieSpan.of(film, ask);
  }

  /** Where it goes, seen from the folder of the sheets. */
  List<String> paths() {
    List<String> paths = new ArrayList<>();
    if (ask.movie()) {
      paths.addAll(List.of(movieFile(), FileNames.aboutMovie(name)));
    }
    if (ask.guideVideos()) {
      film.plan().performers().forEach(performer -> paths.add(guideFile(performer)));
    }
    return paths;
  }

  /** Beside the performer's call sheet. */
  private static String guideFile(Performer performer) {
    return "calls/" + FileNames.guideVideo(performer);
  }

  private String movieFile() {
    return ask.click() ? FileNames.movieWithClick(name) : FileNames.movie(name);
  }

  /**
   * Writes everything that is asked for, to be published.
   *
   * @param bank the guide played with a sound bank, where one was named
   * @return what there is to tell, in sentences
   */
  List<String> write(Optional<BankGuide> bank) {
    List<String> notes = new ArrayList<>();
    if (ask.movie()) {
      notes.add(MovieWords.flashing(film, writeMovie(bank)));
    }
    if (ask.guideVideos()) {
      notes.addAll(writeGuideVideos(bank));
    }
    return notes;
  }

  private List<String> writeGuideVideos(Optional<BankGuide> bank) {
    SoundPart part = SoundPart.of(film, GuideVideo.frames(film));
    progress.step("playing the guide");
    MovieSound sound =
        beginning(name + "-guide-click.part", stream -> part.writeGuideWithClick(bank, stream));
    List<String> notes = new ArrayList<>();
    for (Performer performer : film.plan().performers()) {
      GuideVideo video = new GuideVideo(film, performer);
      MovieProgress shown =
          new MovieProgress(progress, "drawing the guide video of " + performer.name());
      byFfmpeg(
          guideFile(performer),
          file -> {
            FlashVerdict worst =
                video.write(ffmpeg.orElseThrow(), file, sound, part.length(), shown);
            if (worst.isOver()) {
              notes.add(performer.name() + ": " + MovieWords.flashing(film, worst));
            }
          });
    }
    return notes;
  }

  private Movie movie() {
    int width = ask.width().orElse(Movie.usualWidth(film.plan().film()));
    MovieOrder order = new MovieOrder(frames, width, !ask.clean());
    return new Movie(film, order, new MovieMaterial(film, out.folder()), ffmpeg);
  }

  private FlashVerdict writeMovie(Optional<BankGuide> bank) {
    Movie movie = movie();
    List<MovieSound> sounds = sounds(bank);
    long samples = SoundPart.of(film, frames).length();
    List<FlashVerdict> worst = new ArrayList<>();
    MovieProgress shown = new MovieProgress(progress, "drawing the movie");
    byFfmpeg(
        movieFile(), file -> worst.add(movie.write(file, sounds, samples, ask.click(), shown)));
    String text = MovieWords.about(film, movieFile(), movie.size(), frames, ask, worst.get(0));
    out.write(
        FileNames.aboutMovie(name), stream -> stream.write(text.getBytes(StandardCharsets.UTF_8)));
    return worst.get(0);
  }

  /** Has a file made by ffmpeg, or tells what it said last. */
  private void byFfmpeg(String path, OutputFolder.Making making) {
    out.make(
        path,
        file -> {
          try {
            making.make(file);
          } catch (IOException stopped) {
            progress.step("ending");
            throw new InputException(
                Problem.ofFile(
                    out.folder().resolve(path).toString(),
                    String.valueOf(stopped.getMessage()),
                    "check that the disk has room and that this ffmpeg writes H.264 (libx264)"));
          }
        });
  }

  /** The production's recording or our guide; with the click that as a second track. */
  private List<MovieSound> sounds(Optional<BankGuide> bank) {
    SoundPart part = SoundPart.of(film, frames);
    List<MovieSound> sounds = new ArrayList<>();
    progress.step("playing the sound");
    Optional<Recording> recording = film.plan().music().recording();
    sounds.add(
        recording
            .map(this::recorded)
            .orElseGet(
                () -> beginning(name + "-guide.part", stream -> part.writeGuide(bank, stream))));
    if (ask.click()) {
      sounds.add(beginning(name + "-click.part", part::writeClick));
    }
    return sounds;
  }

  /** A sound that begins with the movie. */
  private MovieSound beginning(String path, HandoffFile.Content content) {
    return new MovieSound(out.meanwhile(path, content), 0);
  }

  private MovieSound recorded(Recording recording) {
    FrameRate rate = film.plan().film().rate();
    Seconds before = rate.startOf(frames.start()).minus(film.timing().clock().startOf(recording));
    return new MovieSound(recording.file(), SoundLayout.samples(before));
  }

  /**
   * Writes single frames as PNG.
   *
   * @param folder that is their own
   */
  void writeFrames(OutputFolder folder) {
    MovieProgress shown = new MovieProgress(progress, "drawing frames");
    try {
      movie().draw((image, frame) -> folder.write(frameFile(frame), png(image)), shown);
    } catch (IOException refused) {
      throw new InputException(
          Problem.ofFile(
              folder.folder().toString(),
              String.valueOf(refused.getMessage()),
              "check that the disk has room"));
    }
  }

  /** {@code lamplighters-quay-000123.png}. */
  private String frameFile(long frame) {
    return name + "-" + String.format(Locale.ROOT, "%06d", frame) + ".png";
  }

  private static HandoffFile.Content png(BufferedImage image) {
    return stream -> ImageIO.write(image, "png", stream);
  }
}
