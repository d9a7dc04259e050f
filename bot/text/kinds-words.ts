import { type Crop, type CropKind, cropKinds } from '../../rules/index.ts';
import { temperature } from '../ground/units.ts';
import type { Reader } from './reader.ts';

/** "Kinds of it differ, bare and hardened: autumn types lost near 12 °F outside; winter types lost near 5 °F."; else empty. */
export function kindsLines(crop: Crop, reader: Reader): string[] {
  const kinds = cropKinds(crop.id);
  if (kinds.length === 0) return [];
  const told = kinds.map((kind) => `${kind.words} ${effectWords(kind, reader)}`);
  return [`Kinds of it, bare and hardened, as growers report them: ${told.join('; ')}.`];
}

const EFFECTS = { kill: 'lost', lt50: 'half lost', 'first-damage': 'marked' } as const;

function effectWords({ effect, outsideC, colder }: CropKind, { units }: Reader): string {
  const at = `${temperature(outsideC, units)} outside`;
  return colder ? `below ${at}` : `${EFFECTS[effect]} near ${at}`;
}
