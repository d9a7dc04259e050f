import { bedVerdict, type CoverKey, type Step, stepFor } from '../../../rules/index.ts';
import { type AskedNight, hardinessThere } from './asked-night.ts';
import type { Judged } from './judged.ts';

/** The least that helps a crop as it lies on the asked night. */
export function stepOf(one: Judged, night: AskedNight, shed: readonly CoverKey[] = []): Step {
  const { hardeningIndex } = one;
  const learned = hardinessThere(night, one.crop, hardeningIndex);
  const verdictUnder = (keys: readonly CoverKey[]) => {
    const bed = night.under({ covers: keys });
    return bed.kind === 'unsound'
      ? undefined
      : bedVerdict([{ crop: one.crop, hardeningIndex, ...(learned && { learned }) }], keys, bed, night.windMPerS);
  };
  const now = verdictUnder(one.covers);
  return now === undefined ? { kind: 'nothing' } : stepFor(now, shed, verdictUnder);
}
