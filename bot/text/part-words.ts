import { type Crop, knownOfKind, type NightVerdict, spokenOdds, type Verdict } from '../../rules/index.ts';
import { cropWord, type Reader } from './reader.ts';

const HARM: Readonly<Record<Verdict, string | undefined>> = {
  holds: undefined,
  'on the edge': 'may burn',
  'leaf burn': 'will likely burn',
  winterkill: 'will likely die',
};

/** "The tops will likely burn (odds of a mark 2 in 3); the root keeps." Nothing where both parts fare alike. */
export function otherPartLines(crop: Crop, verdict: NightVerdict, otherPart: NightVerdict | undefined): string[] {
  if (crop.other === undefined || otherPart === undefined || otherPart.verdict === verdict.verdict) return [];
  const harm = HARM[otherPart.verdict];
  const { name } = crop.other;
  if (harm === undefined) return [`The ${name} come through.`];
  const chance = `odds of a mark ${spokenOdds(1 - otherPart.odds.noMark)}`;
  const keeps = verdict.verdict === 'holds' ? `; the ${crop.organ} keeps` : '';
  return [`The ${name} ${harm} (${chance})${keeps}.`];
}

/** "Little is known about shungiku: no source speaks of it, so I judged it like bok choy." Nothing for a crop that sources speak of. */
export function littleKnownLines(crop: Crop, reader: Reader): string[] {
  if (crop.isKnown) return [];
  const like = knownOfKind(crop.id);
  const judged = like === undefined ? 'I judged it by its kind' : `I judged it like ${cropWord(like, reader)}`;
  return [`Little is known about ${cropWord(crop, reader)}: no source speaks of it, so ${judged}.`];
}
