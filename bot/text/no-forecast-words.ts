import { roughAge } from '../ground/times.ts';
import { temperature } from '../ground/units.ts';
import type { Reader } from './reader.ts';

/** The best that can be told of a night without a forecast. */
export type LastKnown =
  | { readonly kind: 'old-forecast'; readonly lowC: number; readonly ageMs: number }
  | { readonly kind: 'coldest-lately'; readonly lowC: number }
  | { readonly kind: 'nothing' };

/** What to go by when no forecast can be had. */
export function lastKnownLine(last: LastKnown, reader: Reader): string {
  switch (last.kind) {
    case 'old-forecast':
      return `The last one I had, ${roughAge(last.ageMs)} old, said an outside low of about ${temperature(last.lowC, reader.units)}. Cover as for a colder night than that.`;
    case 'coldest-lately':
      return `The coldest of the last two weeks was about ${temperature(last.lowC, reader.units)}: cover as for that night.`;
    case 'nothing':
      return 'Cover as for the coldest night you have had lately.';
  }
}
