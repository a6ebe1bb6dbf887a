import { film, shotAt } from "./film.js";

/**
 * The film's clock. It holds a whole frame while it stands, and follows what sounds while it plays:
 * the frame shown is always the one that the sound has reached.
 */
export const clock = {
  frame: 0,
  playing: false,
  speed: 1,
  /** A run of frames played again and again, or null. */
  loop: null,
  /** What gives the time while playing: `start(seconds, speed)`, `stop()`, `seconds()`. */
  source: null,
  listeners: [],
};

/** A source without sound. */
export const silence = {
  start(seconds, speed) {
    this.from = seconds;
    this.speed = speed;
    this.began = performance.now();
  },
  stop() {},
  seconds() {
    return this.from + ((performance.now() - this.began) / 1000) * this.speed;
  },
};
clock.source = silence;

/** A hair's breadth of a frame: a time that is a whole frame but for rounding is that frame. */
const HAIR = 1e-6;

/** The frame that is shown at a film time in seconds. */
export const frameAtSeconds = (seconds) => Math.floor(seconds * film.fps + HAIR);

/** The film time at which a frame begins, in seconds. */
export const secondsAtFrame = (frame) => (frame * film.rate.denominator) / film.rate.numerator;

/** Calls `told(frame)` whenever another frame is shown, or playing begins or ends. */
export function onFrame(told) {
  clock.listeners.push(told);
}

export function show(frame) {
  clock.frame = Math.max(0, Math.min(film.last, frame));
  clock.listeners.forEach((told) => told(clock.frame));
}

/** Goes to a frame; playing goes on from there. */
export function seek(frame) {
  const to = Math.max(0, Math.min(film.last, Math.round(frame)));
  if (clock.loop && (to < clock.loop.start || to >= clock.loop.end)) {
    clock.loop = null;
  }
  if (clock.playing) {
    clock.source.stop();
    clock.source.start(secondsAtFrame(to), clock.speed);
  }
  show(to);
}

/** Plays on from the frame shown; from the beginning where the film has ended. */
export function play() {
  if (clock.playing) {
    return;
  }
  clock.playing = true;
  const from = clock.frame >= film.last ? 0 : clock.frame;
  clock.source.start(secondsAtFrame(from), clock.speed);
  show(from);
  window.requestAnimationFrame(follow);
}

/** Stops on the frame shown. */
export function pause() {
  if (clock.playing) {
    clock.playing = false;
    clock.source.stop();
    show(clock.frame);
  }
}

function follow() {
  if (!clock.playing) {
    return;
  }
  const frame = frameAtSeconds(clock.source.seconds());
  if (clock.loop && frame >= clock.loop.end) {
    seek(clock.loop.start);
  } else if (frame > film.last) {
    show(film.last);
    pause();
  } else if (frame !== clock.frame) {
    show(frame);
  }
  window.requestAnimationFrame(follow);
}

/** Steps while standing still. */
export function step(frames) {
  pause();
  seek(clock.frame + frames);
}

/** Another speed, without losing the place. */
export function setSpeed(speed) {
  clock.speed = speed;
  seek(clock.frame);
}

/** Another source of time, without losing the place. */
export function setSource(source) {
  if (clock.playing) {
    clock.source.stop();
    source.start(secondsAtFrame(clock.frame), clock.speed);
  }
  clock.source = source;
  show(clock.frame);
}

/** Plays the shot again and again, or no longer. */
export function toggleLoop() {
  const shot = shotAt(clock.frame);
  clock.loop = clock.loop ? null : { start: shot.start, end: shot.end };
  show(clock.frame);
}
