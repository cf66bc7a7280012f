// Opens every annotated fixture with an independent engraving library (verovio, npm, LGPL-3.0) and looks for each text
// of ours in the SVG. It draws no lyrics under tablature, so a score with nothing but a TAB staff must only load.
// Usage: node check.mjs [FOLDER FOR PICTURES]; the distribution must be built.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import createVerovioModule from 'verovio/wasm';
import { LOG_OFF, VerovioToolkit, enableLog } from 'verovio/esm';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../../../..');
const command = path.join(root, 'annotator/target/fretgloss/bin/fretgloss');
const fixtures = path.join(root, 'fixtures');
const pictures = process.argv[2];
const work = fs.mkdtempSync(path.join(os.tmpdir(), 'fretgloss-engraver-'));
const module = await createVerovioModule();
enableLog(LOG_OFF, module);
const engraver = new VerovioToolkit(module);
engraver.setOptions({ breaks: 'auto', pageHeight: 60000, adjustPageHeight: true, svgViewBox: true });

const unescapeXml = (text) =>
  text.replace(/&#x([0-9a-f]+);/gi, (_, hex) => String.fromCodePoint(parseInt(hex, 16)))
    .replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&quot;/g, '"').replace(/&amp;/g, '&');
const lyricTexts = (xml) =>
  [...xml.matchAll(/<lyric [^>]*name="fretgloss:[^>]*>\s*<syllabic>single<\/syllabic>\s*<text>([^<]*)<\/text>/g)]
    .map((match) => unescapeXml(match[1]));
// Word joiners and no-break spaces are the engraver's own business.
const plain = (text) => text.replace(/[\s\u00a0]+/g, ' ').trim();
const drawnTexts = (svg) => {
  const drawn = new Map();
  // A number that a text begins with is drawn as a label of its own, to the left of the rest.
  const verse = /(?:<g[^>]*class="label"[^>]*>((?:(?!<\/g>)[\s\S])*)<\/g>\s*)?<g[^>]*class="verse"[^>]*>\s*(?:<title[^>]*>[^<]*<\/title>\s*)?<g[^>]*class="syl"[^>]*>([\s\S]*?)<\/g>/g;
  for (const [, label = '', syllable] of svg.matchAll(verse)) {
    const text = plain(unescapeXml(`${label} ${syllable}`.replace(/<[^>]*>/g, '')));
    drawn.set(text, (drawn.get(text) ?? 0) + 1);
  }
  return drawn;
};

let failed = 0;
let passed = 0;
for (const name of fs.readdirSync(fixtures).sort()) {
  const score = path.join(fixtures, name, 'score.musicxml');
  const expected = path.join(fixtures, name, 'expected.json');
  if (!fs.existsSync(score) || !fs.existsSync(expected)) continue;
  const { options } = JSON.parse(fs.readFileSync(expected, 'utf8'));
  const annotated = path.join(work, `${name}.musicxml`);
  execFileSync(command, ['annotate', '--quiet', ...options, score, '-o', annotated], { stdio: 'inherit' });
  const xml = fs.readFileSync(annotated, 'utf8');
  const written = lyricTexts(xml).map(plain);
  if (!engraver.loadData(xml)) {
    console.log(`${name}: does not load`);
    failed++;
    continue;
  }
  let svg = '';
  for (let page = 1; page <= engraver.getPageCount(); page++) {
    const picture = engraver.renderToSVG(page);
    svg += picture;
    if (pictures) fs.writeFileSync(path.join(pictures, `${name}-${page}.svg`), picture);
  }
  const solo = xml.match(/<part [^>]*>[\s\S]*?<\/part>/g).find((part) => part.includes('name="fretgloss:'));
  const onlyTab = !/<sign>(G|F|C)<\/sign>/.test(solo);
  const drawn = drawnTexts(svg);
  const missing = onlyTab ? [] : written.filter((text) => {
    const left = drawn.get(text) ?? 0;
    drawn.set(text, left - 1);
    return left < 1;
  });
  console.log(`${name}: loads, ${written.length} texts written, ` +
    (onlyTab ? 'TAB staff alone, not drawn' : `${written.length - missing.length} drawn`));
  if (written.length === 0 || missing.length > 0) {
    console.log(`  missing: ${missing.join(' | ')}`);
    failed++;
  } else {
    passed++;
  }
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);
