import { createRequire } from 'node:module';
import { pngFrom } from './png.ts';

const FONT_PACKAGE = '@expo-google-fonts/atkinson-hyperlegible';
/** Family name inside the font files: letters made to be told apart at small sizes. */
export const FONT_FAMILY = 'Atkinson Hyperlegible';

const require = createRequire(import.meta.url);
const fontFiles = [
  require.resolve(`${FONT_PACKAGE}/400Regular/AtkinsonHyperlegible_400Regular.ttf`),
  require.resolve(`${FONT_PACKAGE}/700Bold/AtkinsonHyperlegible_700Bold.ttf`),
];

/** Most pictures kept at once; a club looks at the same night again and again. */
const KEPT = 64;
const kept = new Map<string, Promise<Uint8Array>>();

/** The drawing as PNG, made off the event loop with the font that the package carries. The latest drawings are kept. */
export function pngOf(svg: string): Promise<Uint8Array> {
  const known = kept.get(svg);
  if (known !== undefined) return known;
  const made = rendered(svg);
  kept.set(svg, made);
  made.catch(() => kept.delete(svg));
  const oldest = kept.keys().next().value;
  if (kept.size > KEPT && oldest !== undefined) kept.delete(oldest);
  return made;
}

async function rendered(svg: string): Promise<Uint8Array> {
  // Some megabytes, from the first picture on.
  const { renderAsync } = await import('@resvg/resvg-js');
  const image = await renderAsync(svg, {
    font: { fontFiles, loadSystemFonts: false, defaultFontFamily: FONT_FAMILY },
  });
  return pngFrom({ rgba: image.pixels, width: image.width, height: image.height });
}
