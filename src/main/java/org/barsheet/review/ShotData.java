package org.barsheet.review;

import java.util.HashMap;
import java.util.Map;
import org.barsheet.align.Alternative;
import org.barsheet.artwork.Framing;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Exposure;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.frames.FilmFrames;
import org.barsheet.frames.ShotView;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.timing.Shot;

/** The shots with their reveals, what stands open in them, and who is seen. */
final class ShotData {

  private final FilmFrames frames;
  private final FilmSheet sheet;
  private final PageDrawings drawings;
  private final PageJson json;
  private final Map<String, Integer> openings = new HashMap<>();
  private final Map<String, Integer> movements = new HashMap<>();
  private final Map<String, Integer> performers = new HashMap<>();
  private final Map<String, Integer> cues = new HashMap<>();

  ShotData(FilmFrames frames, PageDrawings drawings, PageJson json) {
    this.frames = frames;
    this.sheet = frames.film();
    this.drawings = drawings;
    this.json = json;
    sheet.plan().workshop().openings().forEach(o -> openings.put(o.name(), openings.size()));
    sheet.movements().forEach(m -> movements.put(m.name(), movements.size()));
    sheet.plan().performers().forEach(p -> performers.put(p.name(), performers.size()));
    sheet.timing().cues().forEach(c -> cues.put(c.id(), cues.size()));
  }

  void write() {
    json.objects("shots", sheet.timing().shots(), this::shot);
    json.objects("performers", sheet.plan().performers(), this::performer);
    json.objects("appearances", sheet.appearances(), this::appearance);
  }

  /** In bars, for the film's first shot perhaps before them. */
  private String place(Shot shot) {
    long musicStart = sheet.timing().clock().musicStartFrame();
    return shot.frames().start() < musicStart ? "before the music" : shot.startsAt().toString();
  }

  private void shot(Shot shot) {
    json.text("panel", shot.panel().name()).text("action", shot.panel().action());
    json.number("cue", cues.getOrDefault(shot.cue().id(), -1));
    json.number("start", shot.frames().start()).number("end", shot.frames().endExclusive());
    json.text("place", place(shot)).text("asked", shot.asked());
    json.text("got", shot.got()).text("reason", shot.reason());
    json.maybe(shot.alternative(), this::alternative);
    json.yes("locked", shot.panel().locked());
    json.maybe(Framing.of(sheet.timing(), shot), framing -> field(shot, framing));
    json.maybe(drawings.indexOf(shot), index -> json.number("drawing", index));
    json.maybe(drawings.leftOut(shot), words -> json.text("leftOut", words));
    json.objects("reveals", sheet.revealsOf(shot), this::reveal);
    stillIn(frames.view(shot));
  }

  /** What stays the same throughout a shot: the drawing behind, and what does not move. */
  private void stillIn(ShotView view) {
    json.maybe(view.whole().flatMap(drawings::indexOf), index -> json.number("whole", index));
    json.yes("undrawn", view.nothingDrawn());
    json.list(
        "open",
        view.standing().entrySet(),
        open -> json.list(() -> json.item(index(open.getKey())).decimal(open.getValue())));
    json.list(
        "asDrawn",
        sheet.plan().workshop().openings().stream()
            .map(Opening::name)
            .filter(view.asDrawn()::contains)
            .toList(),
        name -> json.item(index(name)));
  }

  private int index(String opening) {
    return openings.getOrDefault(opening, -1);
  }

  private void alternative(Alternative alternative) {
    json.text("alternative", alternative.sentence()).yes("free", alternative.isFreeChoice());
  }

  /** The field: four numbers on the shot's first frame, and where it moves, on every frame. */
  private void field(Shot shot, Framing framing) {
    ArtworkData.rect(json, "from", framing.field().from());
    if (!framing.field().isMoving()) {
      return;
    }
    json.list(
        "fields",
        () -> {
          for (long frame = shot.frames().start(); frame < shot.frames().endExclusive(); frame++) {
            ArtworkData.rect(json, framing.fieldAt(frame));
          }
        });
  }

  private void reveal(PlannedReveal reveal) {
    json.number("opening", openings.getOrDefault(reveal.opening().name(), -1));
    json.number("movement", movements.getOrDefault(reveal.movement(), -1));
    json.text("way", PageWords.word(reveal.reveal().way()));
    json.number("photographs", reveal.photographs()).number("shown", reveal.framesPerPhotograph());
    json.number("accent", reveal.accentFrame()).number("lands", reveal.landsFrame());
    json.text("landing", reveal.landing());
    json.number("firstGap", reveal.firstGapFrame());
    json.maybe(reveal.squeeze(), squeeze -> json.text("squeeze", squeeze.sentence()));
    json.list("exposures", reveal.exposures(), this::exposure);
  }

  /** Three numbers an exposure: its first frame, how many frames, which photograph. */
  private void exposure(Exposure exposure) {
    json.item(exposure.frames().start()).item(exposure.frames().length());
    json.item(exposure.photograph().number());
  }

  private void performer(Performer performer) {
    json.text("name", performer.name()).text("part", performer.part());
    json.text("clip", performer.clip());
  }

  private void appearance(Appearance appearance) {
    Opening opening = appearance.opening();
    json.number("shot", appearance.shot());
    json.number("performer", performers.getOrDefault(appearance.performer().name(), -1));
    json.number("opening", openings.getOrDefault(opening.name(), -1));
    json.number("start", appearance.frames().start());
    json.number("end", appearance.frames().endExclusive());
    json.number("sounding", Math.round(100 * appearance.sounding()));
    appearance
        .clipFrameAt(sheet.timing().clock(), appearance.frames().start())
        .ifPresent(frame -> json.number("clipFrame", frame));
  }
}
