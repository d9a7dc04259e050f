import { describe, expect, test } from 'vitest';
import { comparedFrames, comparedStacks, madeUpNight } from '../../../bot/outlook/comparison.ts';
import { frameLines, nightLines, stackLine, stacksHeadline } from '../../../bot/text/comparison-words.ts';
import { readerOf } from '../../../bot/text/reader.ts';
import { type CoverKey, type CropId, cropById } from '../../../rules/index.ts';
import { gardenBed, PLAIN_GARDEN } from '../outlook/day-garden.ts';

const NOW = new Date('2026-01-20T15:00:00Z');
const READER = readerOf('en-US');
const reference = madeUpNight(undefined, NOW);
const cold = madeUpNight(PLAIN_GARDEN, NOW, -10);
const mild = madeUpNight(PLAIN_GARDEN, NOW, -5);

function compared(stacks: readonly (readonly CoverKey[])[], crops: readonly CropId[], nights = [reference]) {
  const plantings = crops.flatMap((id) => {
    const crop = cropById(id);
    return crop === undefined ? [] : [{ crop, hardeningIndex: 1 }];
  });
  return comparedStacks(stacks, gardenBed('Row', [], []), plantings, nights);
}

describe('covers side by side', () => {
  test('begin with which is warmest, and by how much', () => {
    const headline = stacksHeadline(compared([['low-tunnel'], ['quilt', 'low-tunnel']], []), reference, READER);
    expect(headline).toMatch(
      /^On the reference night quilt over low tunnel keeps the leaf warmest, \d+ °F ahead of low tunnel\.$/,
    );
  });

  test('are told to be equal where the model cannot tell them apart', () => {
    const headline = stacksHeadline(compared([['low-tunnel'], ['low-tunnel', 'hoops']], []), reference, READER);
    expect(headline).toContain('as good as equal');
  });

  test('say it in one word when all crops hold', () => {
    const [best] = compared([['quilt', 'cold-frame']], ['kale', 'spinach', 'leek']);
    if (best === undefined) throw new Error('it can lie so');
    const line = stackLine(best, [reference], READER);
    expect(line).toMatch(/^Quilt over cold frame: leaf low \d+ °F\. All crops hold\./);
  });

  test('name what is hurt first with its odds, and what holds once', () => {
    const [stack] = compared([['row-cover']], ['kale', 'tomato', 'spinach'], [mild]);
    if (stack === undefined) throw new Error('it can lie so');
    expect(stackLine(stack, [mild], READER)).toMatch(
      /Tomato winterkill \(odds .+\); (kale and spinach|spinach and kale) hold\./,
    );
  });

  test('give each night its name and its low', () => {
    expect(nightLines([reference, cold], READER)).toEqual([
      'Reference night: outside low 25 °F, clear and calm, the first of winter.',
      'That night: outside low 14 °F, clear, light wind, soil of the season.',
    ]);
  });
});

test('frames tell first how it is, then each change, alike ones together', () => {
  const frames = comparedFrames(gardenBed('Frame', ['cold-frame'], []), PLAIN_GARDEN, new Date('2026-12-21T12:00Z'), [
    reference,
  ]);
  const lines = frameLines({ frames, nights: [reference], reader: READER });
  expect(lines[0]).toMatch(/^As it is: leaf low \d+ °F\.$/);
  expect(lines.length).toBeLessThan(frames.length);
  expect(lines.at(-1)).toMatch(/^A quilt laid on the light for the night: \d+ °F warmer\.$/);
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(220);
});
