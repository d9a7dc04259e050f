import { bareNights, outsideAtC } from '../../../rules/crops/closing-check.ts';
import type { Crop } from '../../../rules/crops/crop.ts';
import { CROPS, knownOfKind } from '../../../rules/crops/crops.ts';
import { coldestLowC, ordinaryNights } from '../../../rules/night/coldest-low.ts';
import { nightVerdict } from '../../../rules/verdict/night-verdict.ts';
import {
  bandOf,
  groupOf,
  inSample,
  type JudgedOutcome,
  type OutcomeTally,
  outOfSample,
  talliesBy,
  tally,
} from './outcomes.ts';

const HEAD = [
  '| what | no harm | false alarms | watched | of these false | on the edge | harm | misses | alive | called lost |',
  '|---|---|---|---|---|---|---|---|---|---|',
];

/** The verdicts against what growers and services saw, as Markdown. */
export function outcomesMarkdown(): string {
  const samples: readonly (readonly [string, readonly JudgedOutcome[]])[] = [
    ['Each source left out once', outOfSample()],
    ['Fitted with it', inSample()],
  ];
  return samples
    .flatMap(([title, all]) => [
      `### ${title}`,
      '',
      ...HEAD,
      line('all', tally(all)),
      ...talliesBy(all, bandOf).map(([name, one]) => line(name, one)),
      ...talliesBy(all, groupOf).map(([name, one]) => line(name, one)),
      '',
    ])
    .join('\n');
}

function line(name: string, one: OutcomeTally): string {
  const share = (part: number, whole: number) =>
    whole === 0 ? '–' : `${part} (${Math.round((100 * part) / whole)} %)`;
  const { harmless, observed, harmed, alive } = one;
  const cells = [
    harmless,
    share(one.falseAlarms, harmless),
    observed,
    share(one.observedFalseAlarms, observed),
    share(one.onTheEdge, harmless),
    harmed,
    share(one.misses, harmed),
    alive,
    share(one.calledLost, alive),
  ];
  return `| ${name} | ${cells.join(' | ')} |`;
}

/** Every crop, hardened, bare on an ordinary night: outside lows down to which it holds and at which half is lost. */
export function cropsMarkdown(): string {
  const nights = bareNights();
  const bare = ordinaryNights({ covers: [] });
  return [
    '| crop | part | holds to | first mark near | half lost near | the other part | rests on |',
    '|---|---|---|---|---|---|---|',
    ...CROPS.map((crop) => {
      const holds = coldestLowC((night) => {
        const { leafLowC, surfaceLowC, spread } = night;
        return (
          nightVerdict({ crop, hardeningIndex: crop.hardens ? 1 : 0, leafLowC, surfaceLowC, sdK: spread.sdK })
            .verdict === 'holds'
        );
      }, bare);
      const outside = (limitC: number, judgedBy: Crop['judgedBy']) => both(outsideAtC(nights, limitC, judgedBy));
      const { firstMarkC, lt50C } = crop.hardened;
      const cells = [
        crop.name.american,
        crop.judgedBy === 'surface' ? `${crop.organ} in the soil` : crop.organ,
        holds.kind === 'low' ? both(holds.lowC) : 'no frost',
        outside(firstMarkC, crop.judgedBy),
        outside(lt50C, crop.judgedBy),
        crop.other === undefined
          ? ''
          : `${crop.other.name}: first mark near ${outside(crop.other.hardened.firstMarkC, crop.other.judgedBy)}`,
        crop.isKnown ? 'statements' : `its kind (${knownOfKind(crop.id)?.name.american ?? 'none known'})`,
      ];
      return `| ${cells.join(' | ')} |`;
    }),
  ].join('\n');
}

function both(lowC: number): string {
  return `${Math.round(lowC * 1.8 + 32)} °F (${lowC.toFixed(0)} °C)`;
}
