/** The sound of each family of instruments: a body and an edge, two sets of partials. */

const fading = (count, steepness) => Array.from({ length: count }, (_, i) => (i + 1) ** -steepness);
const oddFading = (count, steepness) => fading(count, steepness).map((s, i) => (i % 2 === 0 ? s : 0.15 * s));
const cents = (above) => 2 ** (above / 1200);

/**
 * @param {number[]} body strengths of partials, the fundamental first
 * @param {number[]} edge the same of the edge
 * @param {number} ratio pitch of the edge against the body's
 * @param {number} attack seconds to full strength
 * @param {number} decay seconds in which the body falls to 1/e at C4; 0 where it sustains
 * @param {number} edgeDecay the same of the edge
 * @param {number} release seconds in which both fall to 1/e after the note's end
 */
const timbre = (body, edge, ratio, attack, decay, edgeDecay, release) =>
  ({ body, edge, ratio, attack, decay, edgeDecay, release });

const PIANO = timbre(fading(12, 1.7), fading(16, 1), 1, 0.003, 1.6, 0.35, 0.15);
const BELL = timbre(fading(1, 1), fading(2, 2), 4, 0.002, 1.1, 0.22, 0.35);
const ORGAN = timbre([1, 0.7, 0.4, 0.35, 0, 0.2, 0, 0.15], fading(3, 1), cents(2), 0.015, 0, 0.08, 0.08);
const PLUCK = timbre(fading(10, 1.4), fading(16, 0.8), 1, 0.002, 0.7, 0.12, 0.2);
const BASS = timbre(fading(8, 1.9), fading(10, 1.1), 1, 0.004, 2.2, 0.2, 0.1);
const STRINGS = timbre(fading(14, 1.3), fading(14, 1.2), cents(7), 0.06, 0, 0, 0.16);
const VOICES = timbre(fading(6, 1.9), fading(8, 1.5), cents(9), 0.09, 0, 0, 0.2);
const BRASS = timbre(fading(14, 1.1), fading(14, 0.7), 1, 0.03, 0, 0.25, 0.1);
const REED = timbre(oddFading(13, 1.1), fading(12, 1), 1, 0.025, 0, 0.15, 0.08);
const PIPE = timbre(fading(5, 2.2), fading(3, 1.5), cents(4), 0.045, 0, 0.1, 0.1);
const PAD = timbre(fading(8, 1.6), fading(8, 1.4), cents(10), 0.2, 0, 0, 0.4);

/** One for each family of General MIDI programs (RP-003), eight programs to a family. */
const FAMILIES = [PIANO, BELL, ORGAN, PLUCK, BASS, STRINGS, STRINGS, BRASS, REED, PIPE, ORGAN, PAD, PAD, PLUCK, BELL, PAD];

/** The timbre of a part: pizzicato and harp are plucked, timpani ring low, 52 to 54 are voices. */
export function timbreOf(part) {
  const program = part.program;
  if (program === 45 || program === 46) {
    return PLUCK;
  }
  if (program >= 52 && program <= 54) {
    return VOICES;
  }
  return program === 47 ? BASS : FAMILIES[program >> 3];
}

/** An octave up a note dies away in 0.7 of the time. */
export const shorter = (pitch) => 0.7 ** ((pitch - 60) / 12);

export const hertzOf = (pitch) => 440 * 2 ** ((pitch - 69) / 12);
