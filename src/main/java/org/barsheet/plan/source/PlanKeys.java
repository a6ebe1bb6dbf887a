package org.barsheet.plan.source;

import java.util.List;

/** Every key a plan may have, with what it means: the one list that readers and writers share. */
public final class PlanKeys {

  public static final List<PlanKey> ROOT =
      List.of(
          key("title", "The film's title.", "Lamplighters' Quay"),
          key("score", "The MIDI file, seen from the plan's folder.", "lamplighters-quay.mid"),
          key("clips", "The folder of the performers' recordings, or a table of them.", "clips"),
          key("contact", "Whom performers ask, and how.", "Ida at the boathouse, 555 0134"),
          key("deliver", "Where performers send their recordings, and by when.", ""),
          key("film", "Settings of the film as a whole.", ""),
          key("music", "How to find tempo and bars.", ""),
          key("motifs", "Short figures that panels use as cues.", ""),
          key("artwork", "The artwork: its paper, squares and models.", ""),
          key("camera", "The camera that photographs it.", ""),
          key("shoot", "How fast you work.", ""),
          key("hand", "What the animator's hand can set.", ""),
          key("tolerances", "From how much on a photograph is told to be wrong.", ""),
          key("openings", "The places in the artwork that open.", ""),
          key("performers", "Who is filmed at home, by alias.", ""),
          key("panels", "The storyboard in story order, or the name of a table.", ""));

  public static final List<PlanKey> FILM =
      List.of(
          key("frame-rate", "Frames per second; 29.97df and 59.94df count drop-frame.", "24"),
          key("first-frame", "Timecode of the film's first frame.", "01:00:00:00"),
          key("music-starts", "From the first frame to the music's start.", "0 s"),
          key(
              "music-from",
              "What counts as that start: start of file or first note.",
              "start of file"),
          key("shown", "How long a photograph is shown: on ones, on twos …", "on twos"),
          key("lead", "Frames a reveal lands before its accent; less than 0: after.", "0 f"),
          key("closed-hold", "Frames the closed photograph holds before a movement.", "12 f"),
          key("tail", "From the end of the last bar to the end of the film.", "0 s"),
          key("frame-size", "The frame in pixels.", "1920x1080"),
          key("paper", "What the sheets are printed on: A4 or letter.", "A4"),
          key("pop", "How long before the first frame a one-frame pop sounds, or none.", "2 s"));

  public static final List<PlanKey> MUSIC =
      List.of(
          key(
              "tempo",
              "Where tempo and bars come from: auto, written (the file) or played (the notes).",
              "auto"),
          key("first-bar", "Printed number of the first full bar.", "1"),
          key("pickup", "Whether the piece begins with a pickup: auto, yes or no.", "auto"),
          key("played-order", "Printed bar numbers in the order played.", "1-16, 9-15, 17-40"),
          key("pins", "Bars that begin at known seconds of the file or recording.", ""),
          key("meter", "The bars you count, if the file doesn't tell.", "6/8"),
          key("bpm", "The beat you hear, if the file doesn't tell.", "96"),
          key("felt-beat", "Length of the felt beat as a share of a whole note.", "3/8"),
          key("recording", "The production's own sound file, played by the page.", "mix.wav"),
          key(
              "recording-starts",
              "When its first sample plays: 0.5 s from the music's start, or a timecode.",
              "0 s"));

  public static final List<PlanKey> PIN =
      List.of(
          key("bar", "Printed bar number.", "33"),
          key("at", "Seconds from the recording's first sample.", "61.04 s"));

  public static final List<PlanKey> MOTIF =
      List.of(
          key("heard-at", "Where it is heard: place, length and part.", ""),
          key("notes", "Its notes, written out.", "A3/4 C4/8 E4/8 D4/2"),
          key("also", "Further shapes of it: where they are heard.", ""),
          key("accent", "The note a reveal lands on: first, last or note 3.", "first"),
          key("match", "How alike a return must be: exact, transposed, tonal or free.", "tonal"),
          key("forms", "Forms looked for besides as given.", "inverted; augmented"));

  public static final List<PlanKey> HEARD_AT =
      List.of(
          key("place", "Where it begins: a bar, a mark or a timecode.", "bar 3"),
          key("length", "How long it is.", "1 bar"),
          key("part", "The part that plays it, as named in the MIDI file.", "Celesta"));

  public static final List<PlanKey> ALSO =
      List.of(
          HEARD_AT.get(0),
          HEARD_AT.get(1),
          HEARD_AT.get(2),
          key("notes", "The shape's notes, written out.", "A3/4 C4/8 E4/8 D4/2"));

  public static final List<PlanKey> ARTWORK =
      List.of(
          key("square", "Side of one square of the graph paper.", "1 in"),
          key("squares", "Squares across and down.", "24x13.5"),
          key("palette", "Its colors.", "#28786E; #C8963C"),
          key("smallest-workable", "The smallest opening a hand can work.", "40 mm"),
          key("models", "What is put under the camera.", ""));

  public static final List<PlanKey> MODEL =
      List.of(
          key("enlarged", "How many times larger than in the artwork.", "3"),
          key("backing", "Color behind its openings.", "green"),
          key("light", "A word for how it is lit.", "night"));

  public static final List<PlanKey> CAMERA =
      List.of(
          key("lens", "Focal length.", "50 mm"),
          key("sensor", "Width of the sensor.", "36 mm"),
          key("pixels", "Its photographs in pixels.", "6000x4000"));

  public static final List<PlanKey> SHOOT =
      List.of(
          key("photographs-per-hour", "Photographs you take in an hour.", "30"),
          key("minutes-per-setup", "Minutes to set up model, light and camera.", "45"),
          key("starts", "First day, year-month-day.", "2026-03-02"),
          key("hours-per-day", "Working hours a day.", "6"));

  public static final List<PlanKey> HAND =
      List.of(
          key("angle", "The smallest angle it can set.", "0.5 deg"),
          key("step", "The smallest step it can set.", "0.5 mm"),
          key("light", "The smallest change of light it can set.", "1 %"),
          key("largest-step", "The most an edge may travel between two photographs.", "6 mm"));

  public static final List<PlanKey> TOLERANCES =
      List.of(
          key("camera", "How far still things may be elsewhere in the film's frame.", "0.25 px"),
          key("light", "How much brighter or darker they may be.", "0.03 stops"),
          key("color", "How much red or blue may change against green.", "0.03 stops"),
          key("step", "How far off the plan a free edge may be, of its hole.", "1.5 %"),
          key("shadow", "How much darker or brighter a part of it may be.", "0.08 stops"),
          key("focus", "How much of the first photograph's detail must be left.", "70 %"),
          key("clipped", "How much of what is still may be clipped.", "1 %"),
          key("backing", "How much darker or brighter a part of the backing may be.", "1 stop"),
          key("spill", "How much of the backing's color the paper beside it may take.", "15 %"));

  public static final List<PlanKey> OPENING =
      List.of(
          key("left", "Squares from the artwork's left edge.", "3"),
          key("top", "Squares from its top edge.", "7"),
          key("width", "Its width in squares.", "2"),
          key("height", "Its height in squares.", "4"),
          key("model", "The model photographed for it.", "small-lamp"),
          key("hinge", "The edge a flap turns about: left, right, top or bottom.", "left"),
          key("to", "How far the flap opens.", "90 deg"),
          key("slides", "Where a shutter slides: left, right, top or bottom.", "left"),
          key("by", "How far it slides; its own size where not given.", "40 mm"),
          key("lifts", "How high a piece is lifted off.", "30 mm"),
          key("brightens", "How far a lamp brightens.", "100 %"),
          key("iris", "How far a hole grows from its middle.", "100 %"),
          key("values", "A value for each photograph.", "0.5; 1; 2"),
          key("unit", "What those values count.", "mm"),
          key("held-by", "What holds it while it's open.", "putty up to 25 mm"));

  public static final List<PlanKey> PERFORMER =
      List.of(
          key("part", "The part they play, as named in the MIDI file.", "Cello"),
          key("clip", "The file they deliver.", "cello.mov"),
          key("clip-rate", "Its frame rate.", "29.97"),
          key("clip-size", "Its width and height in pixels.", "1080x1920"),
          key("clap", "The clap that ties clip and music.", ""),
          key("clothes", "Colors they wear.", "#28786E"),
          key(
              "behind",
              "What is behind them, if not the backing: a color, or words.",
              "a bare brick wall"));

  public static final List<PlanKey> DELIVER =
      List.of(
          key("to", "Where recordings are sent.", "harbor@quay.example"),
          key("deadline", "The last day for it, year-month-day.", "2026-02-13"),
          key("sound", "Whether the film uses the performers' sound: yes or no.", "yes"));

  public static final List<PlanKey> CLIP =
      List.of(
          key("file", "The recording that came, seen from the plan's folder.", "clips/cello.mov"),
          key("rate", "The frame rate the sender gives, instead of clip-rate.", "29.97"),
          key("start", "When it begins, from the music's start, or a timecode.", "-10 s"),
          key("note", "Anything else the sender told you.", "second take"));

  public static final List<PlanKey> CLAP =
      List.of(
          key("at", "When, from the music's start; less than 0: before it.", "-5 s"),
          key("clip-frame", "The clip's frame that shows it, from 0.", "143"));

  public static final List<PlanKey> PANEL =
      List.of(
          key("panel", "Its number in the storyboard.", "7"),
          key("action", "What is seen.", "The baker's lamp"),
          key(
              "cue",
              "Where it goes: glimmer 3, glimmer in Oboe near bar 33, bar 12, mark Chorus, a timecode.",
              "glimmer 3"),
          key("cut", "Where its shot begins: auto, on cue, 1 beat before, bar 12.", "auto"),
          key("length", "How long it is: 4 bars, 2..4 bars, at least 8 bars, 2.5 s.", "4 bars"),
          key("field", "What the camera sees, in squares.", "left 1 top 4.6 width 6"),
          key("drawing", "Its drawing, seen from the plan's folder.", "panels/07.png"),
          key("reveals", "Movements in it.", ""),
          key("appears", "Performers seen in it.", ""),
          key("locked", "yes when it must not move anymore.", "no"));

  public static final List<PlanKey> FIELD =
      List.of(
          key("left", "Squares from the artwork's left edge.", "1"),
          key("top", "Squares from its top edge.", "4.6"),
          key("width", "Its width in squares.", "6"),
          key("height", "Height in squares; follows from the frame size.", "3.375"),
          key("from", "The field at the shot's first frame.", "whole"),
          key("to", "The field at its last frame.", "left 1 top 4.6 width 6"),
          key("slow", "Where a moving camera is slow: start, end, both or none.", "none"));

  public static final List<PlanKey> REVEAL =
      List.of(
          key("opening", "The opening that moves.", "lamp-1"),
          key("moves", "Whether it opens or closes.", "opens"),
          key("photographs", "How many photographs move; the closed one isn't counted.", "30"),
          key("shown", "How long each is shown: on ones, on twos …", "on twos"),
          key("slow", "Where the movement is slow: start, end, both or none.", "none"),
          key("even-in", "What grows evenly: angle or opening.", "angle"),
          key(
              "lands",
              "What the accent frame shows: fully open, half open, first gap.",
              "fully open"),
          key("lands-on", "The moment it lands on: accent, notes or a place.", "accent"),
          key(
              "cycle",
              "Photographs repeated once it has landed: 25-30, 25-30 to and fro.",
              "25-30"),
          key("photographed", "yes once its photographs are taken and must not change.", "no"));

  public static final List<PlanKey> APPEARS =
      List.of(
          key("performer", "Who is seen.", "cello"), key("opening", "In which opening.", "lamp-1"));

  private PlanKeys() {}

  private static PlanKey key(String name, String note, String example) {
    return new PlanKey(name, note, example);
  }
}
