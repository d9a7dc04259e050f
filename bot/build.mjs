// Makes the program ready to run: `npm start` and its like call this first. Plain JavaScript that any Node can read, so
// that an old one gets a sentence.
import { existsSync } from 'node:fs';

const OLDEST = [20, 18, 1];
const BUILT = new URL('../dist/bot/main.js', import.meta.url);
const COMPILER = new URL('../node_modules/typescript/lib/tsc.js', import.meta.url);

/** @param {string} sentence */
function end(sentence) {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}

/** @param {string} version */
function isOld(version) {
  const parts = version.split('.').map(Number);
  const at = OLDEST.findIndex((least, index) => parts[index] !== least);
  return at >= 0 && parts[at] < OLDEST[at];
}

if (isOld(process.versions.node)) {
  end(
    `Eiderdown needs Node ${OLDEST.join('.')} or newer, and this is ${process.versions.node}. Get one at https://nodejs.org.`,
  );
}
if (existsSync(COMPILER)) {
  // A stale build cannot be started: the compiler looks what has changed, and ends this process.
  process.argv.splice(2, process.argv.length, '-b', 'bot');
  await import(COMPILER.href);
} else if (!existsSync(BUILT)) {
  end(
    'Eiderdown is not built yet. Run "npm ci && npm run build" once; after that, "npm prune --omit=dev" may take the compiler away.',
  );
}
