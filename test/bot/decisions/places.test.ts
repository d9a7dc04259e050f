import { describe, expect, test } from 'vitest';
import { answerText } from '../../../bot/commands/ask/ask.ts';
import type { GardenBed } from '../../../bot/outlook/garden.ts';
import { namedNight } from '../../../bot/outlook/named-night.ts';
import { nightOutlook } from '../../../bot/outlook/night-outlook.ts';
import { drawn } from '../../../bot/talk/plain-text.ts';
import type { CropId, Exposure } from '../../../rules/index.ts';
import {
  bed,
  days,
  gardenOf,
  type InventedSpell,
  inventedForecast,
  nightsC,
  nightsF,
  noonOf,
} from './invented-week.ts';

/** Decisions of common practice about two places or two kinds of a crop, written down before the program was asked. */
const NOW = new Date('2027-01-18T12:00:00Z');
const asked = (question: string, locale = 'en-US') => {
  const { judged, reply } = answerText(question, { locale, now: NOW });
  return { words: drawn(reply, 10_000), of: (crop: CropId) => judged.find((one) => one.crop.id === crop)?.verdict };
};

function nightAt(spell: InventedSpell, exposure: Exposure, ...beds: GardenBed[]) {
  const garden = { ...gardenOf(spell, beds), exposure };
  const night = namedNight('tonight', noonOf(spell), garden);
  if (night === undefined) throw new Error('the sun sets there');
  const [worst] = nightOutlook(garden, inventedForecast(spell), night.span, noonOf(spell)).beds;
  if (worst === undefined) throw new Error('there is a bed');
  return worst.verdict;
}

describe('two places', () => {
  const may = { latitudeDeg: 43, today: '2027-05-17', past: days(7, 18, 6), ahead: nightsF([36, 40], 25) };

  test('on a clear still night of 36 °F tomatoes in the hollow are worse off than on the open hill', () => {
    const hollow = nightAt(may, 'hollow', bed('Plot', ['tomato']));
    const hill = nightAt(may, 'open', bed('Garden', ['tomato']));
    expect(hollow.worst.organLowC).toBeLessThan(hill.worst.organLowC - 0.5);
    expect(hollow.worst.odds.winterkill).toBeGreaterThan(hill.worst.odds.winterkill);
    expect(hollow.worst.verdict).not.toBe('holds');
  });

  test('under cloud and wind hollow and hill are alike', () => {
    const grey = { ...may, ahead: nightsF([36, 40], 10, { cloudFraction: 1, wind10MPerS: 5 }) };
    const [hollow, hill] = (['hollow', 'open'] as const).map((exposure) =>
      nightAt(grey, exposure, bed('Plot', ['tomato'])),
    );
    expect(Math.abs((hollow?.worst.organLowC ?? 99) - (hill?.worst.organLowC ?? 0))).toBeLessThan(1);
  });

  test('potatoes just up at 57° N in May: 1 °C and clear is no safe night', () => {
    const spell = { latitudeDeg: 57, today: '2027-05-17', past: days(7, 13, 4), ahead: nightsC([1, 4], 10), lowAtH: 4 };
    expect(nightAt(spell, 'open', bed('Croft', ['potato'])).worst.verdict).not.toBe('holds');
  });

  test('−6 °C is not the same after weeks of frost and after mild nights', () => {
    const ottawa = { latitudeDeg: 45, today: '2027-01-18', past: days(14, -4, -12), ahead: nightsC([-6, -6]) };
    const devon = { latitudeDeg: 50.5, today: '2027-01-18', past: days(14, 12, 7), ahead: nightsC([-6, 0], 12) };
    const [hard, soft] = [ottawa, devon].map((spell) => nightAt(spell, 'open', bed('Spinach', ['spinach'])).worst);
    expect(hard?.planting.hardeningIndex).toBeGreaterThan(0.9);
    expect(soft?.planting.hardeningIndex).toBeLessThan(0.7);
    expect(soft?.odds.noMark).toBeLessThan(hard?.odds.noMark ?? 0);
    expect(soft?.verdict).not.toBe('holds');
  });
});

describe('two kinds', () => {
  test('autumn leeks are lost before winter leeks, and both are told', () => {
    expect(asked('will my leeks survive 10F?').words).toMatch(
      /autumn types lost near 12 °F outside; winter types lost near 5 °F/,
    );
  });

  test('coloured chard goes before green chard', () => {
    expect(asked('rainbow chard at 18F?').words).toMatch(/multi-coloured type lost near 22 °F outside; green types/);
  });

  test('savoyed spinach is the hardier', () => {
    expect(asked('will spinach survive 8F under row cover?').words).toMatch(/Kinds of it.*savoy/);
  });

  test('hardneck garlic keeps its tops where softneck suffers a bit', () => {
    expect(asked('will garlic survive 14F?').words).toMatch(/hardneck tops in good shape.*softneck tops/);
  });

  test('lacinato kale is the tenderer beside curly kale', () => {
    const { of } = asked('curly kale and lacinato kale at 10F?');
    expect(of('tuscan-kale')?.odds.winterkill).toBeGreaterThan(of('kale')?.odds.winterkill ?? 1);
  });

  test('savoy cabbage outlasts other cabbage', () => {
    const { of } = asked('savoy cabbage and cabbage at -8C?', 'en-GB');
    expect(of('savoy-cabbage')?.odds.noMark).toBeGreaterThan(of('cabbage')?.odds.noMark ?? 1);
  });

  test('autumn-sown broad beans hold where spring-sown ones just set out may burn', () => {
    const spell = {
      latitudeDeg: 52,
      today: '2027-03-15',
      past: nightsC([0, 1, -1, 0, -2, 1, 0], 8),
      ahead: nightsC([-5, 0]),
    };
    const odds = (stage: 'growing' | 'just-set-out') =>
      nightAt(spell, 'open', bed('Beans', [{ cropId: 'fava-bean', stage }])).worst.odds;
    expect(odds('just-set-out').noMark).toBeLessThan(odds('growing').noMark);
    expect(odds('growing').winterkill).toBeLessThan(0.2);
  });

  test('a crop whose kinds no source tells apart says nothing of kinds', () => {
    expect(asked('will tomatoes survive 30F?').words).not.toMatch(/Kinds/);
  });
});
