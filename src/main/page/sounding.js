/** The score as a source of time: notes are laid out a little ahead on the audio clock. */

import { setSource, silence } from "./clock.js";
import { film, indexAt, onFilm, startOf } from "./film.js";
import { notes, UNITS } from "./music.js";
import { makeOrchestra, makeTake, playClick, playNote } from "./orchestra.js";
import { announce } from "./page.js";
import { timbreOf } from "./timbres.js";

/** Seconds from the call to play to the first sound. */
const START_DELAY = 0.06;

/** Seconds of music laid out ahead; more in a page that is not looked at, whose timers are slow. */
const AHEAD = 1;
const AHEAD_UNSEEN = 2.5;

export const sounding = { context: null, orchestra: null, take: null, click: false, volume: 1, muted: new Set(), solo: new Set() };

/** Every felt beat with its time from film frame 0 and whether it is a downbeat. */
export const clicks = [];

onFilm(() => clicks.splice(0, clicks.length,
  ...film.bars.flatMap((bar) => bar.clicks.map((start, beat) => ({ start, downbeat: beat === 0 })))));

export const filmSeconds = (time) => time / UNITS;

/** Sets the players up where they are not yet, and wakes the audio clock. */
sounding.open = function () {
  if (!this.context) {
    this.context = new AudioContext({ latencyHint: "interactive" });
    this.orchestra = makeOrchestra(this.context);
    this.levels();
  }
  this.context.resume().catch(() => {});
};

/** Begins at a film time; every start has players of its own, so that a stop silences all at once. */
sounding.start = function (seconds, speed) {
  this.open();
  this.speed = speed;
  this.from = seconds;
  this.began = this.context.currentTime + START_DELAY;
  this.asked = performance.now();
  this.take = makeTake(this.orchestra);
  this.nextNote = indexAfter(notes, seconds);
  this.nextClick = indexAfter(clicks, seconds);
  this.pickUp(seconds);
  this.layOut();
  this.timer = window.setInterval(() => this.layOut(), 40);
};

/** The first of a list that begins at or after a film time. */
export function indexAfter(list, seconds) {
  const time = Math.round(seconds * UNITS) - 1;
  const at = indexAt(list, startOf, time);
  return list.length > 0 && list[at].start < time ? at + 1 : at;
}

/** Notes that sustain and sound already are begun anew. */
sounding.pickUp = function (seconds) {
  for (let i = 0; i < this.nextNote; i++) {
    const note = notes[i];
    const rest = filmSeconds(note.start + note.length) - seconds;
    const part = film.parts[note.part];
    if (rest > 0.1 && !part.drums && timbreOf(part).decay === 0) {
      playNote(this.take, note, this.began, rest / this.speed);
    }
  }
};

/** Context time of a film time. */
sounding.at = function (seconds) {
  return this.began + (seconds - this.from) / this.speed;
};

export const lookAhead = () => (document.hidden ? AHEAD_UNSEEN : AHEAD);

sounding.layOut = function () {
  const until = this.context.currentTime + lookAhead();
  for (; this.nextNote < notes.length; this.nextNote++) {
    const note = notes[this.nextNote];
    const when = this.at(filmSeconds(note.start));
    if (when > until) {
      break;
    }
    playNote(this.take, note, Math.max(when, this.context.currentTime), filmSeconds(note.length) / this.speed);
  }
  for (; this.nextClick < clicks.length; this.nextClick++) {
    const { start, downbeat } = clicks[this.nextClick];
    const when = this.at(filmSeconds(start));
    if (when > until) {
      break;
    }
    playClick(this.take, Math.max(when, this.context.currentTime), downbeat);
  }
};

sounding.stop = function () {
  window.clearInterval(this.timer);
  hush(this.take);
  this.take = null;
};

/** Silences all that was laid out for a take, where there is one. */
export function hush(take) {
  if (take) {
    const all = [...take.parts, take.click];
    all.forEach((gain) => gain.gain.setTargetAtTime(0, take.context.currentTime, 0.008));
    window.setTimeout(() => all.forEach((gain) => gain.disconnect()), 120);
  }
}

/**
 * The film time that is heard now: the audio clock less the time the sound is on its way to the ear.
 * Where no sound comes out at all, the page goes on without.
 */
sounding.seconds = function () {
  const heard = this.context.currentTime - (this.context.outputLatency || 0);
  if (this.context.currentTime <= this.began - START_DELAY && performance.now() - this.asked > 1500) {
    announce("This browser can't play sound; the film plays silently.");
    setSource(silence);
    return silence.seconds();
  }
  return this.from + Math.max(0, heard - this.began) * this.speed;
};

/** Whether a part is heard. */
export const isHeard = (part) => (sounding.solo.size > 0 ? sounding.solo.has(part) : !sounding.muted.has(part));

/** Sets what is heard, at once. */
sounding.levels = function () {
  if (this.orchestra) {
    const now = this.context.currentTime;
    this.orchestra.seats.forEach((gain, part) => gain.gain.setTargetAtTime(isHeard(part) ? 1 : 0, now, 0.005));
    this.orchestra.loudness.gain.setTargetAtTime(this.volume, now, 0.005);
    this.orchestra.clickSeat.gain.setTargetAtTime(this.click ? 1 : 0, now, 0.005);
  }
};

/**
 * Renders a stretch of the score without a room, for checks from outside.
 * @param {number} from film time in seconds
 * @param {number} to the same
 * @param {number} part whose notes are played; -1 for the click
 * @returns {Promise<Float32Array>} at 48000 samples a second
 */
export async function rendered(from, to, part) {
  const context = new OfflineAudioContext(1, Math.ceil((to - from) * 48000), 48000);
  const take = makeTake(makeOrchestra(context, true));
  const within = ({ start }) => filmSeconds(start) >= from && filmSeconds(start) < to;
  if (part < 0) {
    clicks.filter(within).forEach((click) => playClick(take, filmSeconds(click.start) - from, click.downbeat));
  } else {
    notes.filter((note) => note.part === part && within(note))
      .forEach((note) => playNote(take, note, filmSeconds(note.start) - from, filmSeconds(note.length)));
  }
  return (await context.startRendering()).getChannelData(0);
}
