/**
 * A recording as a source of time: the plan's own, loaded from where the plan says it lies beside
 * the page, or one from the viewer's disk. It is never sent anywhere.
 */

import { secondsAtFrame, silence } from "./clock.js";
import { film } from "./film.js";
import { UNITS } from "./music.js";

export const recording = { sound: null, name: "", planned: false, starts: 0, running: false, volume: 1, known: () => {}, refused: () => {} };

/** Takes a file that the viewer has chosen; it begins where the music does until told otherwise. */
recording.take = function (file) {
  this.planned = false;
  this.starts = secondsAtFrame(film.musicStart);
  this.load(URL.createObjectURL(file), file.name);
};

/** Takes the recording that the plan names. */
recording.takePlanned = function () {
  this.planned = true;
  this.starts = film.recording.starts / UNITS;
  this.load(film.recording.address, film.recording.file);
};

/** Loads a sound; the one before falls silent. */
recording.load = function (address, name) {
  this.leave();
  const sound = new Audio();
  sound.preload = "auto";
  sound.addEventListener("error", () => this.refuse(sound));
  sound.addEventListener("durationchange", () => this.known());
  sound.volume = this.volume;
  this.sound = sound;
  this.name = name;
  sound.src = address;
};

/** How loud it is, from 0 to 1. */
recording.setVolume = function (volume) {
  this.volume = volume;
  if (this.sound) {
    this.sound.volume = volume;
  }
};

recording.leave = function () {
  if (this.sound) {
    this.stop();
    URL.revokeObjectURL(this.sound.src);
    this.sound = null;
  }
};

/** Lets a sound go that cannot be played, and says so. */
recording.refuse = function (sound) {
  if (sound === this.sound) {
    const words = this.planned
      ? this.name + " doesn't play: it isn't where the plan says (" + decodeURIComponent(film.recording.address)
        + ", seen from this page), or this browser can't play its format. Choose it from your disk."
      : this.name + " doesn't play: this browser can't play its format. Use WAV or MP3.";
    this.leave();
    this.refused(words);
  }
};

recording.start = function (seconds, speed) {
  silence.start(seconds, speed);
  this.sound.playbackRate = speed;
  this.running = false;
  this.begin(seconds);
};

/** Before its first sample and after its last the film goes on without it. */
recording.begin = function (seconds) {
  const { sound } = this;
  const into = seconds - this.starts;
  if (into >= 0 && !(into >= sound.duration)) {
    this.running = true;
    sound.currentTime = into;
    sound.play().catch((stopped) => {
      if (stopped.name !== "AbortError") {
        this.refuse(sound);
      }
    });
  }
};

recording.stop = function () {
  this.running = false;
  this.sound?.pause();
};

/** The film time that sounds now; a frame never runs ahead of a sound that is still loading. */
recording.seconds = function () {
  if (this.running && !this.sound.ended) {
    const seconds = this.starts + this.sound.currentTime;
    silence.start(seconds, this.sound.playbackRate);
    return seconds;
  }
  const seconds = silence.seconds();
  if (this.sound && !this.running && seconds >= this.starts && !this.sound.ended) {
    this.begin(seconds);
  }
  return seconds;
};
