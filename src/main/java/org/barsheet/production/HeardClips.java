package org.barsheet.production;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.barsheet.clips.ClipFacts;
import org.barsheet.clock.Seconds;
import org.barsheet.input.InputException;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Recording;
import org.barsheet.received.ClipStarts;
import org.barsheet.received.HeardPlace;
import org.barsheet.received.ReceivedClip;
import org.barsheet.recording.ClickLeak;
import org.barsheet.recording.ClosePlacement;
import org.barsheet.recording.OnsetBands;
import org.barsheet.recording.Placement;
import org.barsheet.recording.Sound;
import org.barsheet.recording.SoundReader;
import org.barsheet.sound.GuideSound;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/**
 * Listens to the performers' clips: where each lies in the recording, or else in the guide. What
 * was heard is kept with the sheets, so that it is listened to once.
 */
final class HeardClips {

  /** What was heard since the program began, for whoever asks again before sheets are made. */
  private static final Map<String, HeardPlace> HEARD = new ConcurrentHashMap<>();

  private final TimingSheet timing;
  private final Plan plan;
  private final KeptPlaces kept;
  private final Progress progress;
  private final Map<String, Reference> references = new HashMap<>();

  /**
   * What clips are looked for in.
   *
   * @param startsAt when its sound begins, from the music's start
   * @param name what people call it
   */
  private record Reference(Sound sound, OnsetBands onsets, Seconds startsAt, String name) {}

  private HeardClips(TimingSheet timing, KeptPlaces kept, Progress progress) {
    this.timing = timing;
    this.plan = timing.plan();
    this.kept = kept;
    this.progress = progress;
  }

  /**
   * The clips with the places they were heard at.
   *
   * @param plan as it says where they are
   */
  static List<ReceivedClip> of(
      Plan plan, TimingSheet timing, List<ReceivedClip> clips, KeptPlaces kept, Progress progress) {
    HeardClips heard = new HeardClips(timing, kept, progress);
    List<ReceivedClip> all = new ArrayList<>();
    for (ReceivedClip clip : clips) {
      all.add(
          Clips.fileOf(plan, clip)
              .filter(file -> clip.facts().filter(ClipFacts::sounding).isPresent())
              .map(file -> heard.heard(clip, file))
              .orElse(clip));
    }
    return List.copyOf(all);
  }

  /** A film whose performers' clips are tied to the music by the best that is known. */
  static TimingSheet tied(TimingSheet timing, List<ReceivedClip> clips) {
    return timing.with(
        timing.plan().performers().stream()
            .map(
                performer ->
                    clips.stream()
                        .filter(clip -> clip.performer().name().equals(performer.name()))
                        .findFirst()
                        .map(clip -> ClipStarts.tied(performer, clip, timing))
                        .orElse(performer))
            .toList());
  }

  private ReceivedClip heard(ReceivedClip clip, Path file) {
    String key = Samples.of(file) + " in " + inWhat(clip.performer().part());
    Optional<HeardPlace> known = kept.at(key).or(() -> Optional.ofNullable(HEARD.get(key)));
    if (known.isPresent()) {
      kept.keep(key, known.get());
      return clip.heardAt(known.get());
    }
    try {
      HeardPlace place = listen(file, clip.performer().part());
      HEARD.put(key, place);
      kept.keep(key, place);
      return clip.heardAt(place);
    } catch (InputException silentOrWithoutFfmpeg) {
      return clip;
    }
  }

  private HeardPlace listen(Path file, String part) {
    progress.step("listening to " + file.getFileName());
    Sound sound = SoundReader.read(file);
    Reference in = reference(part);
    Placement rough = Placement.of(OnsetBands.byPitch(sound), in.onsets());
    ClosePlacement close = ClosePlacement.of(sound, in.sound(), rough);
    Optional<ClickLeak> leak =
        rough.isSure() ? ClickLeak.in(sound, clicks(in), close) : Optional.empty();
    double start = leak.map(ClickLeak::start).orElse(close.start());
    long samples = Math.round(start * SoundLayout.SAMPLE_RATE);
    Seconds inMusic = in.startsAt().plus(Seconds.of(samples, SoundLayout.SAMPLE_RATE));
    return HeardPlace.rounded(
        Seconds.of(SoundLayout.samples(inMusic), SoundLayout.SAMPLE_RATE),
        leak.map(ClickLeak::drift).orElse(close.drift()),
        close.confidence(),
        leak.isPresent() ? ClickLeak.WITHIN_MILLISECONDS : 3_000 * close.error(),
        leak.isPresent() ? "the click in it" : in.name());
  }

  /** When clicks sound, in seconds of what clips are looked for in. */
  private double[] clicks(Reference in) {
    Seconds begins = musicStart().plus(in.startsAt());
    return SoundLayout.of(timing).clicks().stream()
        .mapToDouble(click -> click.at().minus(begins).toDouble())
        .toArray();
  }

  private Optional<Recording> recording() {
    return plan.music().recording().filter(recording -> Files.isRegularFile(recording.file()));
  }

  /** What decides where a clip is found, besides the clip. */
  private String inWhat(String part) {
    return recording()
        .map(mix -> Samples.of(mix.file()) + " from " + startOf(mix))
        .orElseGet(
            () ->
                Samples.of(plan.music().score())
                    + " by "
                    + Samples.of(part + " " + plan.music().tempo() + " " + plan.film()));
  }

  /** From the music's start. */
  private Seconds startOf(Recording recording) {
    return timing.clock().startOf(recording).minus(musicStart());
  }

  private Seconds musicStart() {
    return timing.clock().rate().startOf(timing.clock().musicStartFrame());
  }

  private Reference reference(String part) {
    return references.computeIfAbsent(
        recording().isPresent() ? "" : part,
        key -> recording().map(this::ofRecording).orElseGet(() -> ofGuide(key)));
  }

  private Reference ofRecording(Recording recording) {
    Sound sound = SoundReader.read(recording.file());
    return new Reference(sound, OnsetBands.byPitch(sound), startOf(recording), "the recording");
  }

  private Reference ofGuide(String part) {
    Seconds head = Seconds.of(SoundLayout.of(timing).headSeconds());
    Sound sound = GuideSound.of(timing, part);
    return new Reference(
        sound,
        OnsetBands.byPitch(sound),
        Seconds.ZERO.minus(head).minus(musicStart()),
        "the guide");
  }
}
