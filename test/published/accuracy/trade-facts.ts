import {
  type BedNight,
  bedNight,
  type CoverKey,
  CROPS,
  type CropId,
  commonFrame,
  cropById,
  MS_PER_H,
  type NightSky,
  nightFrom,
  nightVerdict,
  OPENING_LIMIT_C,
  ordinaryNight,
  VERDICTS,
  type WallKey,
} from '../../../rules/index.ts';
import { REFERENCE_FRAME, referenceLows } from '../../rules/covers/reference-night.ts';
import type { ComparedRow, Comparison } from './comparison.ts';
import type { WinterNight } from './winters.ts';

/** Facts of the trade, told among growers; no source is known of any of them. */

const M_PER_FT = 0.3048;
const M_PER_IN = 0.0254;
const HEAVY: readonly CoverKey[] = ['row-cover-heavy', 'hoops'];
const WARM_SEASON: readonly CropId[] = ['tomato', 'pepper', 'cucumber', 'basil', 'green-bean', 'zucchini'];
/** Lettuce in good order: nothing worse than on the edge. */
const IN_GOOD_ORDER = [0, VERDICTS.indexOf('on the edge')] as const;
const AGREES = 1;

const c = (degF: number) => ((degF - 32) * 5) / 9;

export function tradeFactComparisons(frameNights: readonly WinterNight[]): readonly Comparison[] {
  const line = { unit: '–', source: 'common practice, no source', standing: 'no source' } as const;
  return [
    {
      ...line,
      quantity: 'Frames: size, shutting time, 75 °F, walls, little opening in deep winter',
      tolerance: 'the figure as said, to its last digit',
      rows: [...frameRows(), ...wallRows(), ...openingRows(frameNights)],
    },
    {
      ...line,
      quantity: 'Lettuce at 12 and 15 °F, tender and hardened plants',
      tolerance: 'the verdict that the saying implies',
      rows: [...lettuceRows(), ...warmSeasonRows(), ...hardenedRows()],
    },
  ];
}

function frameRows(): readonly ComparedRow[] {
  const frame = commonFrame(42);
  const sunset = nightFrom(new Date('2025-12-01T18:00Z'), 42, -75);
  const shutBeforeH = ((sunset?.sunset.getTime() ?? 0) - (sunset?.shutBy.getTime() ?? 0)) / MS_PER_H;
  return [
    figure('days are kept under 75 °F', (OPENING_LIMIT_C * 9) / 5 + 32, 75, 0.5),
    figure('frames are shut two hours before sunset', shutBeforeH, 2, 0.01),
    figure('a frame is 4 ft deep', frame.depthM / M_PER_FT, 4, 0.05),
    { ...figure('it is 8 to 12 ft long', frame.lengthM / M_PER_FT, 8, 0.05), theirs: [8, 12] },
    figure('12 in high at the back', frame.backM / M_PER_IN, 12, 0.05),
    figure('8 in high at the front', frame.frontM / M_PER_IN, 8, 0.05),
    figure('its long side runs east to west, so its light faces south', frame.facingDeg, 180, 0),
    figure('and north in the southern hemisphere', commonFrame(-42).facingDeg, 0, 0),
  ];
}

function wallRows(): readonly ComparedRow[] {
  const leafC = (walls: WallKey) =>
    referenceLows(['cold-frame'], { stack: { frame: { ...REFERENCE_FRAME, walls } } }).leafC;
  const metalC = leafC('metal');
  return (['straw-bale', 'wood', 'log'] as const).map((walls) => ({
    id: `${walls} walls hold heat better than metal [K]`,
    ours: leafC(walls) - metalC,
    theirs: [0.1, Number.POSITIVE_INFINITY] as const,
    tolerance: 0,
  }));
}

/** Days of real winters on which a shut glass frame would pass the limit. */
function openingRows(frameNights: readonly WinterNight[]): readonly ComparedRow[] {
  const isDeepWinter = ({ at }: WinterNight) => {
    const day = at.toISOString().slice(5, 10);
    return day >= '11-15' || day <= '02-01';
  };
  return ['New York', 'Seattle'].flatMap((place) => {
    const here = frameNights.filter((night) => night.place === place);
    const deep = openedShare(here.filter(isDeepWinter));
    const rest = openedShare(here.filter((night) => !isDeepWinter(night)));
    return [
      {
        id: `little opening from mid November to the start of February, ${place}: share of days`,
        ours: deep,
        theirs: [0, 0.2] as const,
        tolerance: 0,
      },
      {
        id: `far more in the rest of October to April, ${place}: share of days`,
        ours: rest,
        theirs: [2 * deep, 1] as const,
        tolerance: 0,
      },
    ];
  });
}

function openedShare(nights: readonly WinterNight[]): number {
  return nights.filter(({ thermometerHighC }) => thermometerHighC > OPENING_LIMIT_C).length / nights.length;
}

function lettuceRows(): readonly ComparedRow[] {
  const cold = c(15);
  const underBlanket = (sky: NightSky) => nightUnder(cold, HEAVY, sky);
  const thaws = underBlanket('clear').thawAt;
  const sunrise = nightFrom(underBlanket('clear').leafLowAt, 40, -75)?.sunrise;
  return [
    lettuceRow('under a frost blanket at an outside low of 15 °F, overcast', underBlanket('overcast')),
    lettuceRow('under a frost blanket at an outside low of 15 °F, half clouded', underBlanket('half'), CLEAR_EXCUSE),
    lettuceRow('under a frost blanket at an outside low of 15 °F, clear', underBlanket('clear'), CLEAR_EXCUSE),
    lettuceRow('in a frame, 12 °F outside, overcast', nightUnder(c(12), ['cold-frame'], 'overcast')),
    lettuceRow('in a frame, 12 °F outside, clear', nightUnder(c(12), ['cold-frame'], 'clear')),
    lettuceRow('in a frame under a quilt, 12 °F outside, clear', nightUnder(c(12), ['quilt', 'cold-frame'], 'clear')),
    figure(
      'leaves frozen under a blanket at 15 °F thaw within 4 hours of sunrise [h]',
      ((thaws?.getTime() ?? Number.NaN) - (sunrise?.getTime() ?? Number.NaN)) / MS_PER_H,
      2,
      2,
    ),
  ];
}

const CLEAR_EXCUSE =
  'The saying names neither the sky nor the kind of lettuce. Clear, the leaf falls to about 17 °F: we say burnt, not lost, which winter kinds may escape. Erring here costs one more cover.';

function lettuceRow(id: string, night: BedNight, excuse?: string): ComparedRow {
  return {
    id: `lettuce grown cold is in good order: ${id} [verdict]`,
    ours: VERDICTS.indexOf(verdictOn('lettuce', night, 1)),
    theirs: IN_GOOD_ORDER,
    tolerance: 0,
    ...(excuse !== undefined && { excuse }),
  };
}

function warmSeasonRows(): readonly ComparedRow[] {
  const night = nightUnder(c(15), HEAVY, 'overcast');
  return WARM_SEASON.map((cropId) => ({
    id: `${cropId} on the same night is lost, even overcast`,
    ours: verdictOn(cropId, night, 0) === 'winterkill' ? AGREES : 0,
    theirs: AGREES,
    tolerance: 0,
  }));
}

function hardenedRows(): readonly ComparedRow[] {
  const hardening = CROPS.filter(({ hardens }) => hardens);
  const better = hardening.filter(({ hardened, unhardened }) => hardened.lt50C < unhardened.lt50C);
  return [
    {
      id: 'plants grown colder take frost better: share of the crops that harden',
      ours: better.length / hardening.length,
      theirs: [0.95, 1],
      tolerance: 0,
    },
  ];
}

function figure(id: string, ours: number, theirs: number, tolerance: number): ComparedRow {
  return { id, ours, theirs, tolerance };
}

function nightUnder(lowC: number, covers: readonly CoverKey[], sky: NightSky): BedNight {
  const night = bedNight({ ...ordinaryNight(lowC, { sky }), bed: { covers } });
  if (night.kind !== 'night') throw new Error(night.problem);
  return night;
}

function verdictOn(cropId: CropId, night: BedNight, hardeningIndex: number) {
  const crop = cropById(cropId);
  if (crop === undefined) throw new Error(`${cropId} is no crop of ours`);
  const { leafLowC, surfaceLowC, spread } = night;
  return nightVerdict({ crop, hardeningIndex, leafLowC, surfaceLowC, sdK: spread.sdK }).verdict;
}
