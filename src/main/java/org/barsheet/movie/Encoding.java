package org.barsheet.movie;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.clock.FrameRate;
import org.barsheet.recording.FfmpegProgram;

/**
 * How ffmpeg is told to write a movie: H.264 from raw frames, and sound with it. With the same
 * ffmpeg the same frames give the same bytes.
 *
 * @param rate of the film, exact
 * @param width of the frame in pixels
 * @param height of the frame in pixels
 * @param title kept in the file
 * @param timecode of the first frame, or "" to keep none
 * @param sounds tracks of sound, possibly none
 * @param samples of sound, so many at 48 kHz
 * @param plain whether sound is kept sample for sample, rather than as AAC
 * @param effort x264's preset: how much time it takes to make the file small
 * @param quality x264's constant rate factor, less is better
 */
record Encoding(
    FrameRate rate,
    int width,
    int height,
    String title,
    String timecode,
    List<MovieSound> sounds,
    long samples,
    boolean plain,
    String effort,
    int quality) {

  private static final int KEY_FRAME_SECONDS = 2;

  Encoding {
    sounds = List.copyOf(sounds);
  }

  /** The arguments, with frames read from standard input. */
  List<String> arguments(Path movie) {
    List<String> all = new ArrayList<>(List.of("-f", "rawvideo", "-pix_fmt", "bgr0"));
    all.addAll(List.of("-s", width + "x" + height, "-framerate", rate.exactName(), "-i", "pipe:0"));
    for (MovieSound sound : sounds) {
      all.addAll(List.of("-vn", "-sn", "-dn", "-i", FfmpegProgram.named(sound.file())));
    }
    all.addAll(List.of("-map", "0:v:0"));
    soundTracks(all);
    all.addAll(image());
    all.addAll(List.of("-map_metadata", "-1", "-metadata", "title=" + title));
    all.addAll(List.of("-fflags", "+bitexact", "-flags:v", "+bitexact", "-flags:a", "+bitexact"));
    if (!timecode.isEmpty()) {
      all.addAll(List.of("-timecode", timecode));
    }
    all.addAll(List.of("-movflags", "+faststart", "-f", plain ? "mov" : "mp4"));
    all.add(FfmpegProgram.named(movie));
    return all;
  }

  private void soundTracks(List<String> all) {
    if (sounds.isEmpty()) {
      return;
    }
    List<String> filters = new ArrayList<>();
    for (int i = 0; i < sounds.size(); i++) {
      filters.add(String.format(Locale.ROOT, "[%d:a:0]%s[s%d]", i + 1, cut(sounds.get(i)), i));
    }
    all.addAll(List.of("-filter_complex", String.join(";", filters)));
    for (int i = 0; i < sounds.size(); i++) {
      all.addAll(List.of("-map", "[s" + i + "]"));
    }
    all.addAll(plain ? List.of("-c:a", "pcm_s16le") : List.of("-c:a", "aac", "-b:a", "128k"));
  }

  /** Exactly the samples of the movie: what comes before is left out, what lacks is silence. */
  private String cut(MovieSound sound) {
    String begins =
        sound.skip() >= 0
            ? "atrim=start_sample=" + sound.skip() + ",asetpts=N/SR/TB"
            : "adelay=delays=" + -sound.skip() + "S:all=1";
    return "aresample=48000," + begins + ",apad,atrim=end_sample=" + samples;
  }

  /** HD's colors (ITU-R BT.709), named in the file, so that no player has to guess. */
  private List<String> image() {
    List<String> image = new ArrayList<>();
    image.addAll(List.of("-vf", "scale=out_color_matrix=bt709:out_range=tv,format=yuv420p"));
    image.addAll(List.of("-colorspace", "bt709", "-color_primaries", "bt709"));
    image.addAll(List.of("-color_trc", "bt709", "-color_range", "tv"));
    image.addAll(List.of("-c:v", "libx264", "-preset", effort, "-crf", "" + quality));
    image.addAll(List.of("-g", "" + KEY_FRAME_SECONDS * rate.nominal()));
    return image;
  }
}
