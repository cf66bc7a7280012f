// Writes src/test/resources/org/fretgloss/pitch/tonal.json, the table that TonalTest compares with. In this folder:
//   npm install --no-save tonal@6.4.2 && node make-table.mjs > ../resources/org/fretgloss/pitch/tonal.json
import { Chord, ChordType, Interval, Scale, ScaleType } from "tonal";

const TONICS = ["C", "A", "E", "F#", "Bb", "Eb"];

// MusicXML kind-value -> the library's name or symbol for it.
const KINDS = {
  "major": "major", "minor": "minor", "augmented": "augmented", "diminished": "diminished",
  "dominant": "dominant seventh", "major-seventh": "major seventh", "minor-seventh": "minor seventh",
  "diminished-seventh": "diminished seventh", "augmented-seventh": "7#5", "half-diminished": "half-diminished",
  "major-minor": "minor/major seventh", "major-sixth": "sixth", "minor-sixth": "minor sixth",
  "dominant-ninth": "dominant ninth", "major-ninth": "major ninth", "minor-ninth": "minor ninth",
  "dominant-11th": "eleventh", "minor-11th": "minor eleventh", "dominant-13th": "dominant thirteenth",
  "major-13th": "major thirteenth", "minor-13th": "minor thirteenth", "suspended-second": "suspended second",
  "suspended-fourth": "suspended fourth", "power": "fifth",
};

// Symbols that both read, beyond the kinds.
const SYMBOLS = ["", "m", "m7", "maj7", "M7", "7", "9", "6", "69", "m6", "m69", "add9", "madd9", "m7b5", "mM7",
  "dim", "dim7", "aug", "7#9", "7b9", "7b5", "7#5", "7b5#9", "7b13", "7#11", "maj7#11", "maj9", "m9", "sus4", "sus2",
  "7sus4", "9sus4", "5", "maj7#5"];

const SCALES = ["minor pentatonic", "major pentatonic", "blues", "major blues", "major", "natural minor", "dorian",
  "mixolydian", "harmonic minor", "melodic minor", "phrygian", "phrygian dominant", "lydian", "locrian",
  "lydian dominant", "altered", "harmonic major", "double harmonic major", "hungarian minor", "whole tone",
  "diminished", "dominant diminished", "chromatic"];
const ALIASES = { "natural minor": "aeolian" };

const PITCHES = ["E2", "Ab2", "A2", "C3", "C#3", "Db3", "Eb3", "D#4", "F4", "F#4", "Bb4", "B#4"];

const chord = (name, type, intervals) => ({ name, type, intervals,
  notes: Object.fromEntries(TONICS.map(tonic => [tonic, Chord.getChord(type, tonic).notes])) });

const scale = name => {
  const type = ALIASES[name] ?? name;
  return { name, type, intervals: ScaleType.get(type).intervals,
    notes: Object.fromEntries(TONICS.map(tonic => [tonic, Scale.get(`${tonic} ${type}`).notes])) };
};

const lines = entries => `[\n${entries.map(entry => JSON.stringify(entry)).join(",\n")}\n]`;

console.log(`{
"source": "npm package tonal 6.4.2, https://github.com/tonaljs/tonal",
"licence": "MIT, Copyright (c) 2015 danigb",
"kinds": ${lines(Object.entries(KINDS).map(([kind, type]) => chord(kind, type, ChordType.get(type).intervals)))},
"symbols": ${lines(SYMBOLS.map(symbol => chord(symbol, symbol, ChordType.get(symbol).intervals)))},
"scales": ${lines(SCALES.map(scale))},
"distances": ${lines(PITCHES.flatMap(from => PITCHES.map(to => ({ from, to, interval: Interval.distance(from, to) }))))}
}`);
