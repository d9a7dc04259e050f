import { saidBack } from '../../text/phrases.ts';
import { type Read, read, unread } from './read.ts';

/** How long one of each unit is, by the ways people write it. [m] */
const METRES: readonly (readonly [metres: number, ...names: string[]])[] = [
  [1, 'm', 'meter', 'meters', 'metre', 'metres'],
  [0.01, 'cm', 'centimeter', 'centimeters', 'centimetre', 'centimetres'],
  [0.001, 'mm'],
  [0.3048, 'ft', 'foot', 'feet', "'", '′', '’'],
  [0.0254, 'in', 'inch', 'inches', '"', '″', '”', "''"],
];

/** Nobody measures a bed more finely than by the millimetre. */
const PER_METRE = 1000;

export type LengthUnit = 'm' | 'cm' | 'ft' | 'in';

/**
 * A length in one unit: "12 in", "1.2 m", "4'".
 *
 * @param usual - The unit of a bare number.
 * @returns Metres.
 */
export function typedLengthM(text: string, usual: LengthUnit): Read<number> {
  const plain = text.trim().replaceAll('−', '-').toLowerCase();
  const number = /^[+-]?\d+(?:[.,]\d+)?/.exec(plain)?.[0];
  if (number === undefined)
    return unread(`I cannot read "${saidBack(text)}" as a length; write it like 12 in or 30 cm.`);
  const unit = plain.slice(number.length).replace(/\.$/, '').trim() || usual;
  const metres = METRES.find(([, ...names]) => names.includes(unit))?.[0];
  if (metres === undefined) return unread(`I do not know the unit "${saidBack(unit, 20)}"; write m, cm, ft or in.`);
  const lengthM = Number(number.replace(',', '.')) * metres;
  return read(Math.round(lengthM * PER_METRE) / PER_METRE);
}

/**
 * Two lengths: "4 x 8 ft", "1.2 m by 2.4 m". A unit said once serves for both.
 *
 * @param usual - The unit of bare numbers.
 * @returns Metres, as typed.
 */
export function typedSizeM(text: string, usual: LengthUnit): Read<readonly [number, number]> {
  const [first, second, ...more] = text.toLowerCase().split(/×|x|\*|\bby\b/);
  if (first === undefined || second === undefined || more.length > 0) {
    return unread(`I cannot read "${saidBack(text)}" as a size; write two lengths, such as 4 x 8 ft or 1.2 x 2.4 m.`);
  }
  const unit = second.replace(/[\d.,\s]/g, '');
  const hasUnit = /[^\d.,\s]/.test(first);
  const one = typedLengthM(hasUnit ? first : `${first.trim()}${unit}`, usual);
  const other = typedLengthM(second, usual);
  if (!one.ok) return one;
  return other.ok ? read([one.value, other.value]) : other;
}
