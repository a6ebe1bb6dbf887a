/** Plays notes into a Web Audio context, live or offline. */

import { film } from "./film.js";
import { notes } from "./music.js";
import { hertzOf, shorter, timbreOf } from "./timbres.js";

const EDGE_SHARE = 0.4;
const WIDTH = 0.6;

/** Numbers between -1 and 1, the same ones every time. */
function sameNoise(length, seed) {
  let state = seed;
  return Float32Array.from({ length }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2147483648 - 1;
  });
}

/** As it is up to 0.7; above that ever flatter, always below 1. */
function bending() {
  return Float32Array.from({ length: 2049 }, (_, i) => {
    const value = (i - 1024) / 341.33;
    const size = Math.abs(value);
    const above = (size - 0.7) / 0.3;
    return size <= 0.7 ? value : Math.sign(value) * (0.7 + (0.3 * above) / (1 + above));
  });
}

/** Root of the sum of squares of all notes that sound at once, at its greatest. */
function loudestMoment() {
  const changes = notes.flatMap(({ start, length, velocity }) => {
    const power = (velocity / 127) ** 3;
    return [[start, power], [start + length, -power]];
  });
  changes.sort((one, other) => one[0] - other[0] || one[1] - other[1]);
  let power = 0;
  let most = 0;
  for (const [, change] of changes) {
    power += change;
    most = Math.max(most, power);
  }
  return Math.sqrt(most);
}

/** How strongly a note is played, so that the loudest moment stays mostly below the bend. */
const STRENGTH = Math.min(0.4, 0.5 / Math.max(0.5, loudestMoment()));

/**
 * Sets the players up.
 * @param {BaseAudioContext} context
 * @param {boolean} dry without a room, for measuring
 */
export function makeOrchestra(context, dry = false) {
  const bend = context.createWaveShaper();
  bend.curve = bending();
  const third = context.createGain();
  third.gain.value = 1 / 3;
  const loudness = context.createGain();
  third.connect(bend).connect(loudness).connect(context.destination);
  const all = context.createGain();
  all.connect(third);
  if (!dry) {
    addRoom(context, all, third);
  }
  const seats = film.parts.map((part, index) => seat(context, all, index));
  const clickSeat = context.createGain();
  clickSeat.connect(third);
  return { context, seats, clickSeat, loudness, waves: new Map(), noise: noiseBuffer(context) };
}

/** What is played from one start to the next stop: it can be silenced as a whole. */
export function makeTake(orchestra) {
  const into = (node) => {
    const gain = orchestra.context.createGain();
    gain.connect(node);
    return gain;
  };
  return { ...orchestra, parts: orchestra.seats.map(into), click: into(orchestra.clickSeat) };
}

/** A small room: noise that dies away, the same every time. */
function addRoom(context, from, to) {
  const length = Math.round(1.3 * context.sampleRate);
  const answer = context.createBuffer(2, length, context.sampleRate);
  [7, 11].forEach((seed, channel) => {
    const samples = sameNoise(length, seed).map((value, i) => value * Math.exp((-5 * i) / length) * (1 - i / length));
    answer.copyToChannel(samples, channel);
  });
  const convolver = context.createConvolver();
  convolver.buffer = answer;
  const share = context.createGain();
  share.gain.value = 0.2;
  from.connect(convolver).connect(share).connect(to);
}

/** A part's place: from left to right in the order of the parts. */
function seat(context, all, index) {
  const gain = context.createGain();
  const many = film.parts.length;
  const pan = context.createStereoPanner();
  pan.pan.value = many === 1 ? 0 : WIDTH * ((2 * index) / (many - 1) - 1);
  gain.connect(pan).connect(all);
  return gain;
}

function wave(take, partials) {
  if (!take.waves.has(partials)) {
    const imag = Float32Array.from([0, ...partials]);
    take.waves.set(partials, take.context.createPeriodicWave(new Float32Array(imag.length), imag));
  }
  return take.waves.get(partials);
}

/**
 * Plays a note.
 * @param {number} when context time of its beginning
 * @param {number} seconds how long it sounds
 */
export function playNote(take, note, when, seconds) {
  const part = film.parts[note.part];
  const loud = STRENGTH * (note.velocity / 127) ** 1.5;
  if (part.drums) {
    playStroke(take, note, when, loud);
    return;
  }
  const sound = timbreOf(part);
  const { context } = take;
  const swell = context.createGain();
  const end = when + Math.max(seconds, sound.attack);
  const last = end + 7 * sound.release;
  swell.gain.setValueAtTime(0, when);
  swell.gain.linearRampToValueAtTime(loud, when + sound.attack);
  swell.gain.setValueAtTime(loud, end);
  swell.gain.setTargetAtTime(0, end, sound.release);
  swell.connect(take.parts[note.part]);
  const hertz = hertzOf(note.pitch);
  const over = last - when;
  playPartials(take, swell, sound.body, hertz, 1 - EDGE_SHARE, sound.decay * shorter(note.pitch), when, over);
  playPartials(take, swell, sound.edge, hertz * sound.ratio, EDGE_SHARE, sound.edgeDecay * shorter(note.pitch), when, over);
}

function playPartials(take, into, partials, hertz, share, decay, when, seconds) {
  const { context } = take;
  const tone = context.createOscillator();
  const fade = context.createGain();
  tone.setPeriodicWave(wave(take, partials));
  tone.frequency.value = Math.min(hertz, 16000);
  fade.gain.setValueAtTime(share, when);
  if (decay > 0) {
    fade.gain.setTargetAtTime(0, when, decay);
  }
  tone.connect(fade).connect(into);
  tone.start(when);
  tone.stop(when + (decay > 0 ? Math.min(seconds, 9 * decay) : seconds));
}

/** How strokes of General MIDI percussion keys sound: hertz, seconds of tone, seconds of noise. */
function strokeOf(key) {
  if (key <= 36) {
    return [52, 0.16, 0.005];
  }
  if (key <= 40) {
    return [190, 0.07, 0.09];
  }
  if ([42, 44, 54, 69, 70, 82].includes(key)) {
    return [8000, 0.008, 0.03];
  }
  return [46, 49, 51, 52, 53, 55, 57, 59].includes(key) ? [6000, 0.01, 0.4] : [90 + 14 * (key - 41), 0.18, 0.012];
}

function playStroke(take, note, when, loud) {
  const { context } = take;
  const [hertz, toneSeconds, noiseSeconds] = strokeOf(note.pitch);
  const tone = context.createOscillator();
  tone.frequency.value = Math.max(20, hertz);
  dyingAway(take, tone, note.part, when, 0.8 * loud, toneSeconds);
  const noise = context.createBufferSource();
  noise.buffer = take.noise;
  noise.loop = true;
  dyingAway(take, noise, note.part, when, 0.35 * loud, noiseSeconds);
}

function noiseBuffer(context) {
  const buffer = context.createBuffer(1, context.sampleRate, context.sampleRate);
  buffer.copyToChannel(sameNoise(context.sampleRate, 5), 0);
  return buffer;
}

function dyingAway(take, sound, part, when, loud, seconds) {
  const fade = take.context.createGain();
  fade.gain.setValueAtTime(loud, when);
  fade.gain.setTargetAtTime(0, when, seconds);
  sound.connect(fade).connect(take.parts[part]);
  sound.start(when);
  sound.stop(when + 8 * seconds);
}

/** A click: a short cosine, loudest at once; downbeats are higher and louder. */
export function playClick(take, when, downbeat) {
  const { context } = take;
  const length = Math.round(context.sampleRate / 25);
  const buffer = context.createBuffer(1, length, context.sampleRate);
  const samples = buffer.getChannelData(0);
  const hertz = downbeat ? 1760 : 1175;
  for (let i = 0; i < length; i++) {
    const time = i / context.sampleRate;
    samples[i] = (downbeat ? 0.7 : 0.5) * Math.exp(-time / 0.006) * (1 - i / length) * Math.cos(2 * Math.PI * hertz * time);
  }
  const source = context.createBufferSource();
  source.buffer = buffer;
  source.connect(take.click);
  source.start(when);
}
