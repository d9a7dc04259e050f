import {
  added,
  type Errors,
  emptyTally,
  type GardenKind,
  liveGarden,
  type Study,
  type Tally,
} from './learning/simulation.ts';
import type { Row } from './row.ts';

const NIGHTS = 60;

/** Published uncertainty of each cover's gain, one standard deviation; the inputs' own from draws of the model. */
export const KINDS: readonly GardenKind[] = [
  kind('row cover on hoops', ['row-cover-medium', 'hoops'], 0.7, 1.1),
  kind('low tunnel', ['low-tunnel'], 1.2, 1.2),
  kind('cold frame', ['cold-frame'], 2, 0.9),
  kind('row cover in low tunnel', ['low-tunnel', 'row-cover-medium', 'hoops'], 1.5, 1.2),
  kind('high tunnel', ['high-tunnel'], 2, 1.2),
  kind('row cover in high tunnel', ['high-tunnel', 'row-cover-heavy', 'hoops'], 2.5, 1.4),
];

export const AS_PUBLISHED: Study = { name: 'as published', gardens: 500, formSdK: beyondInputs, hollowK: 0 };
const STUDIES: readonly Study[] = [
  AS_PUBLISHED,
  { name: "as the model's inputs", gardens: 120, formSdK: () => 0, hollowK: 0 },
  {
    name: 'as published, hollows',
    gardens: 120,
    formSdK: beyondInputs,
    hollowK: 3,
  },
];

function kind(name: string, covers: GardenKind['covers'], publishedSdK: number, inputsSdK: number): GardenKind {
  return { name, covers, publishedSdK, inputsSdK };
}

function beyondInputs({ publishedSdK, inputsSdK }: GardenKind): number {
  return Math.sqrt(Math.max(0, publishedSdK ** 2 - inputsSdK ** 2));
}

/**
 * Does learning from a thermometer help, and does the range hold what it says? Invented gardens on invented nights: the true
 * night is computed with all inputs off by their uncertainty, some of it lasting. Thermometers are off by half a kelvin, one
 * reading in fifty is misread, half of the gardens have no thermometer outside. Errors are root mean squares over the nights
 * from the eleventh on; a ratio is the error after ten readings over that before.
 */
export function benchLearning(): readonly Row[] {
  return STUDIES.flatMap((study) => {
    const groups = KINDS.map((each, index) => {
      const tally = emptyTally();
      for (let garden = index; garden < study.gardens; garden += KINDS.length) {
        liveGarden(study, each, 1 + garden, NIGHTS, tally);
      }
      return { name: `${study.name}, ${each.name}`, tally };
    });
    const all = groups.reduce((sum, { tally }) => added(sum, tally), emptyTally());
    return [...wholeRows(`${study.gardens} gardens ${study.name}`, all), ...groups.flatMap(shortRows)];
  });
}

function wholeRows(name: string, tally: Tally): Row[] {
  return [
    ...errorRows(`${name}: weather known`, tally.givenWeather),
    ...errorRows(`${name}: low outside known`, tally.givenOutside),
    ...errorRows(`${name}: from the forecast`, tally.fromForecast),
    percent(`${name}: in the 80 % range, by the book`, tally.bookInside, tally),
    percent(`${name}: in the 80 % range, learned`, tally.learnedInside, tally),
    percent(`${name}: leaf in the 80 % range, learned`, tally.leafInside, tally),
    mean(`${name}: spread told, by the book`, tally.bookSdK, tally),
    mean(`${name}: spread told, learned`, tally.learnedSdK, tally),
  ];
}

function shortRows({ name, tally }: { readonly name: string; readonly tally: Tally }): Row[] {
  return [
    ...errorRows(`${name}: low outside known`, tally.givenOutside),
    percent(`${name}: in the 80 % range, learned`, tally.learnedInside, tally),
  ];
}

function errorRows(name: string, { nights, bookK2, tenK2, allK2 }: Errors): Row[] {
  const rmse = (sumK2: number) => Math.sqrt(sumK2 / nights);
  const row = (when: string, sumK2: number) => ({ name: `${name}, ${when}`, value: rmse(sumK2), unit: 'K' });
  return [
    row('by the book', bookK2),
    { ...row('10 readings', tenK2), ratio: rmse(tenK2) / rmse(bookK2) },
    { ...row('all readings before', allK2), ratio: rmse(allK2) / rmse(bookK2) },
  ];
}

function percent(name: string, count: number, { fromForecast }: Tally): Row {
  return { name, value: (100 * count) / fromForecast.nights, unit: '%' };
}

function mean(name: string, sumK: number, { fromForecast }: Tally): Row {
  return { name, value: sumK / fromForecast.nights, unit: 'K' };
}
