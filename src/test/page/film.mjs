/**
 * Lays a small film down where the page's modules look for it, as the page's own file does: ten
 * seconds at 29.97 drop-frame, the first photograph on 01:00:00;00, three bars of four beats from
 * frame 30 on, a lamp that opens and closes again. Import it before any module of the page.
 */
const bar = (number, time, start) =>
  ({ number, time, start, frames: 60, meter: "4/4", beats: [0, 15, 30, 45].map((into) => start + into), clicks: [] });

const reveal = (way, exposures) =>
  ({ opening: 0, movement: 0, way, shown: 2, photographs: exposures.length / 3, exposures, firstGap: exposures[0], lands: exposures.at(-3) });

const shot = (panel, start, end, reveals = []) => ({ panel, action: "Dusk " + panel, start, end, reveals, open: [] });

const film = {
  name: "quay",
  title: "Quay",
  rate: { numerator: 30000, denominator: 1001, nominal: 30, dropFrame: true },
  firstLabel: 107892,
  length: 300,
  musicStart: 30,
  bars: [bar(1, 1, 30), bar(2, 1, 90), bar(2, 2, 150)],
  parts: [{ name: "Flute" }, { name: "Drums", drums: true }],
  // Time since the note before, length, part, pitch, velocity; the unit is 1/100000 s.
  notes: [100100, 50050, 0, 72, 90, 0, 5000, 1, 38, 90, 200200, 50050, 0, 60, 90],
  motifs: [{ letter: "A" }],
  cues: [
    { kind: "return", motif: 0, number: 1, frame: 30, accent: 45, end: 60, onsets: [100100], pitches: [72] },
    { kind: "bar", number: 0, frame: 90, accent: 90, shot: 1 },
    { kind: "bar", number: 0, frame: 150, accent: 150 },
    { kind: "mark", number: 0, frame: 210, accent: 210 },
  ],
  artwork: { width: 24, height: 13.5 },
  openings: [{ name: "corner-lamp", rect: [2, 3, 4, 2], kind: "flap", side: "left", full: 90, share: 1 }],
  movements: [{ name: "lamp", unit: "deg", amounts: [0, 30, 90], sets: ["0.0", "30.0", "89.5"], holds: ["", ", putty", ", thread"] }],
  shots: [
    shot("1", 0, 90),
    shot("2", 90, 210, [reveal("opens", [100, 2, 1, 102, 98, 2]), reveal("closes", [180, 2, 1, 182, 28, 0])]),
    shot("3", 210, 300),
  ],
  appearances: [],
  performers: [],
  findings: [],
  inputs: [],
};

const said = { textContent: "" };

globalThis.document = { getElementById: (id) => ({ film: { textContent: JSON.stringify(film) }, said })[id] };
