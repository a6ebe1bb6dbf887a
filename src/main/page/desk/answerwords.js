/** What a finding's own words ask to be written into the plan. */

/** `write bpm: 144 under music`, as questions about the tempo end. */
const WRITE = /\b(?:write|say|add) ([a-z-]+): ([^;,()[\]]+?) under ([a-z]+)/g;

/** `write pins: [{bar: 17, at: 0.28 s}] under music`. */
const PIN = /\bwrite pins: \[\{bar: (\S+), at: ([0-9.]+ s)\}\] under music/;

/** `no panel uses 6 certain returns of glimmer (bars 31, …)`, as returns without a panel are told. */
const UNUSED = /^no panel uses \d+ certain returns? of (.+) \(bars? /;

/** The motif that has returns no panel uses, or nothing. */
export const unusedMotif = (sentence) => sentence.match(UNUSED)?.[1];

/**
 * The answers that a finding names, each with its words and edits of the plan.
 * @param {{sentence: string, remedy: string}} finding
 * @param {object} tree the plan as typed: pins are added to those it has
 */
export function answersIn({ sentence, remedy }, tree) {
  const words = sentence + "; " + remedy;
  const values = [...words.matchAll(WRITE)].map(([, key, value, section]) =>
    ({ words: key + ": " + value, edits: [{ put: [section, key], value }] }));
  const [, bar, at] = words.match(PIN) ?? [];
  const known = tree?.music?.pins ?? [];
  const pins = Array.isArray(known) ? known : [known];
  return bar ? [...values, { words: "bar " + bar + " at " + at, edits: [{ put: ["music", "pins"], value: [...pins, { bar, at }] }] }] : values;
}
