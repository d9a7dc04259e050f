import type { Span } from '../span.ts';
import type { SaidExposure, SaidMeasures, SaidSnow, Unit } from '../understood.ts';
import { readAtHand } from './at-hand.ts';
import { readFelt } from './felt.ts';
import { readMeasures } from './measures.ts';
import { readExposure, readUnused } from './place-words.ts';
import { readSnow } from './snow.ts';
import { silenced, spanText } from './span-text.ts';
import { readWind } from './wind.ts';

/** What a question tells of the night and the place in figures. */
export interface Conditions {
  readonly windMPerS?: number;
  readonly gustMPerS?: number;
  readonly snow?: SaidSnow;
  readonly measures?: SaidMeasures;
  readonly exposure?: SaidExposure;
  /** Told, but without a part in the answer; in words to say back. */
  readonly unused: readonly string[];
  /** The question for whoever looks for a low in it: figures of wind, snow and wind chill say nothing. */
  readonly forLow: readonly Span[];
  /** The words that name what lies in the shed. */
  readonly forShed?: readonly Span[];
  readonly hasAnother: boolean;
  /** Something besides the low is told of the night or the place. */
  readonly tells: boolean;
  /** The question for whoever looks for covers: snow in the path is none. */
  readonly forCovers: readonly Span[];
}

export function readConditions(spans: readonly Span[], preferred: Unit): Conditions {
  const read = spanText(spans);
  const wind = readWind(read, preferred);
  const { snow, at: depths, elsewhere } = readSnow(read);
  const felt = readFelt(read);
  const { measures, at: counts } = readMeasures(read);
  const exposure = readExposure(read);
  const hand = readAtHand(read);
  const inHand = new Set(hand.at);
  const { windMPerS, gustMPerS } = wind;
  return {
    ...(windMPerS !== undefined && { windMPerS }),
    ...(gustMPerS !== undefined && { gustMPerS }),
    ...(snow && { snow }),
    ...(measures && { measures }),
    ...(exposure && { exposure }),
    unused: [...felt.said, ...readUnused(read)],
    forLow: silenced(spans, new Set([...wind.at, ...depths, ...felt.at, ...counts])),
    forCovers: silenced(spans, new Set([...elsewhere, ...hand.at])),
    ...(hand.at.length > 0 && { forShed: spans.filter((_, at) => inHand.has(at)) }),
    hasAnother: hand.another,
    tells: wind.at.length + felt.at.length > 0 || snow !== undefined || exposure !== undefined,
  };
}
