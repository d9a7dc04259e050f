import { bedNight, type CoverKey, ordinaryNight, windowHigh } from '../../../rules/index.ts';
import type { ComparedRow, Comparison } from './comparison.ts';

/** A thermometer in the light of a tunnel or frame reads so much differently by where and how it hangs. [K] */
const THERMOMETER_K = 4;
const CLEAR_DAY_RANGE_K = 12;

interface SunnyDay {
  readonly covers: readonly CoverKey[];
  readonly date: string;
  readonly latitudeDeg: number;
  /** Outside, on a clear calm day. [°C] */
  readonly highC: number;
}

/** Shut covers in the sun, read with an unshielded thermometer among the leaves. */
export function dayRiseComparison(): Comparison {
  return {
    quantity: 'Rise in shut covers in the sun',
    unit: 'K',
    source: 'garden diary 2010, Acta Horticulturae 187, Maryland, Guttormsen',
    standing: 'read',
    tolerance: '4 K: where and how a thermometer hangs in the sun',
    rows: [
      row(
        'glass frame in January (diary of 2010; place not told, 40° N taken)',
        { covers: ['cold-frame'], date: '2025-01-20', latitudeDeg: 40, highC: 2 },
        [14, 18],
      ),
      row(
        'perforated film laid on, largest in early spring (Acta Horticulturae 187)',
        { covers: ['low-tunnel-perforated'], date: '2025-04-01', latitudeDeg: 51, highC: 12 },
        [8, 8],
      ),
      row(
        'high tunnel shut with 80 °F outside, 120 °F inside (Maryland R005)',
        { covers: ['high-tunnel'], date: '2025-04-20', latitudeDeg: 39, highC: 26.7 },
        [22.2, 22.2],
      ),
      row(
        'high tunnel shut near freezing outside, 90 °F inside (Maryland R004)',
        { covers: ['high-tunnel'], date: '2025-03-15', latitudeDeg: 39, highC: 4 },
        [28, 32],
        SMALL_IN_STRONG_SUN,
      ),
      row(
        'film tunnel in April, 40 °C (Guttormsen R007)',
        { covers: ['low-tunnel'], date: '2025-04-20', latitudeDeg: 60, highC: 18 },
        [22, 22],
        SMALL_IN_STRONG_SUN,
      ),
    ],
    leftOut: [
      {
        id: 'tunnel within a tunnel, 73 °F at nine (Purdue R006)',
        reason: 'Neither date nor sky is told, and its outside is a tunnel.',
      },
    ],
  };
}

const SMALL_IN_STRONG_SUN =
  'A round figure to warn with, without day or thermometer. The computed rise does run some kelvin small in strong spring sun: open a little before it says.';

function row(id: string, day: SunnyDay, theirs: readonly [number, number], excuse?: string): ComparedRow {
  return { id, ours: riseK(day), theirs, tolerance: THERMOMETER_K, ...(excuse !== undefined && { excuse }) };
}

function riseK({ covers, date, latitudeDeg, highC }: SunnyDay): number {
  const ordinary = ordinaryNight(highC - CLEAR_DAY_RANGE_K, {
    date: new Date(`${date}T12:00Z`),
    site: { latitudeDeg },
    wind: 'calm',
  });
  const night = bedNight({ ...ordinary, bed: { covers } });
  if (night.kind !== 'night') throw new Error(night.problem);
  const lastMs = night.run.timesMs[night.run.timesMs.length - 1] ?? Number.NaN;
  return windowHigh(night.run, 'thermometerC', ordinary.window.to, new Date(lastMs)).valueC - highC;
}
