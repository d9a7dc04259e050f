import { stackWords, type UnsoundOrder } from '../../rules/index.ts';
import { shortCover } from './night-words.ts';
import type { Reader } from './reader.ts';

/** Why covers cannot lie as named, and the order that can. */
export function orderSentence(unsound: UnsoundOrder, reader: Reader): string {
  const names = unsound.between.map((key) => shortCover(key, reader));
  const [outer = 'that', inner = 'that'] = names;
  const expected =
    unsound.expectedOrder === undefined
      ? ''
      : ` From the outside in it would be: ${stackWords(unsound.expectedOrder, reader.dialect)}.`;
  return `${problemWords(unsound, outer, inner)}${expected}`;
}

function problemWords({ problem }: UnsoundOrder, outer: string, inner: string): string {
  switch (problem) {
    case 'too-many':
      return 'That is more covers than I can reckon with on one bed; name at most eight.';
    case 'snow-under-cover':
      return `Snow lies outermost: it cannot lie under ${inner === 'snow' ? outer : inner}.`;
    case 'over-high-tunnel':
      return `Nothing but snow goes over a high tunnel; the ${outer} belongs inside it.`;
    case 'mat-inside':
      return `A ${inner} is laid on top of ${outer}, not under it.`;
    case 'litter-outside':
      return `Loose ${outer} lies on the crop or the soil, so ${inner} cannot lie under it.`;
    case 'frame-with-low-tunnel':
      return 'A cold frame and a low tunnel do not fit over the same bed.';
    case 'twice':
      return `More than one ${outer} does not fit over one bed.`;
    case 'hoops-outside':
      return 'Hoops hold up what lies over them: name them after the cover that they carry.';
  }
}
