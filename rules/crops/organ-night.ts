import type { CoverKey } from '../covers/cover-key.ts';
import { bedNight } from '../night/bed-night.ts';
import { ordinaryNight } from '../night/ordinary-night.ts';
import type { Crop } from './crop.ts';

/** What the night model makes of an outside low. */
export interface OrganNight {
  readonly leafLowC: number;
  readonly surfaceLowC: number;
  /** The model's own doubt in them. [K] */
  readonly sdK: number;
}

const KNOWN = new Map<string, OrganNight>();

/**
 * The bed on the ordinary night: clear, 2 m s⁻¹. The one place where an outside low becomes the temperature of an organ.
 *
 * @param outsideC - Outside low at 2 m. [°C, −45…25]
 * @param covers - From outside to inside; none for a bare bed.
 * @throws RangeError when `outsideC` is out of range or the covers cannot lie so.
 */
export function organNight(outsideC: number, covers: readonly CoverKey[] = []): OrganNight {
  const key = `${outsideC} ${covers.join()}`;
  const known = KNOWN.get(key);
  if (known !== undefined) return known;
  const ordinary = ordinaryNight(outsideC);
  const night = bedNight({ ...ordinary, soil: ordinary.soilUnder(covers), bed: { covers } });
  if (night.kind === 'unsound') throw new RangeError(`covers ${covers.join()} cannot lie so`);
  const { leafLowC, surfaceLowC, spread } = night;
  const found = { leafLowC, surfaceLowC, sdK: spread.sdK };
  KNOWN.set(key, found);
  return found;
}

/** The low that judges an organ. [°C] */
export function organLowC(night: Pick<OrganNight, 'leafLowC' | 'surfaceLowC'>, judgedBy: Crop['judgedBy']): number {
  return judgedBy === 'surface' ? night.surfaceLowC : night.leafLowC;
}
