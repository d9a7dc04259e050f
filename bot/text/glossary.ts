import { COVER_KEYS, COVERS, CROPS } from '../../rules/index.ts';
import type { Section } from '../talk/reply.ts';
import { cropWord, type Reader } from './reader.ts';

/** A word that I use, by the ways people write it, and what it means. */
export interface GlossaryEntry {
  readonly word: string;
  readonly also?: readonly string[];
  readonly meaning: string;
}

/** The words of the answers, as the trade uses them (common practice). */
export const GLOSSARY: readonly GlossaryEntry[] = [
  {
    word: 'holds',
    also: ['hold'],
    meaning: 'The crop should come through with no damage that you can see: the chance of a mark is at most 1 in 5.',
  },
  {
    word: 'on the edge',
    meaning: 'Damage is possible but not likely: the chance of a mark lies between 1 in 5 and even. Cover if you can.',
  },
  {
    word: 'leaf burn',
    also: ['leafburn', 'burn', 'burnt', 'frost burn', 'scorch'],
    meaning:
      'Frost is likely to mark the leaves: glassy, then brown or limp patches. The plant usually lives and grows on; marked leaves keep badly, so use them first.',
  },
  {
    word: 'winterkill',
    also: ['winter kill', 'winterkilled', 'killed'],
    meaning: 'More than half of the plants are likely to die. Cover better, or harvest before the night.',
  },
  {
    word: 'mark',
    also: ['first mark', 'marks', 'no mark'],
    meaning: 'The first damage that you can see on a leaf, fruit or root.',
  },
  {
    word: 'hardened',
    also: ['hardened off', 'hardening', 'hardy', 'grown cold', 'harden'],
    meaning:
      'Grown outside through weeks of cool nights, so that the plant stands more frost. A week or two of warmth, or a start indoors, undoes it. The same crop not hardened can be hurt several degrees earlier.',
  },
  {
    word: 'row cover',
    also: ['fleece', 'frost cloth', 'frost blanket', 'floating row cover', 'rowcover'],
    meaning:
      'Light woven or spunbonded fabric laid on the plants or on hoops, by weight: light about 0.55 oz/yd² (19 g/m²), medium 0.9 (30), heavy 1.5 (50).',
  },
  {
    word: 'low tunnel',
    also: ['hoop tunnel', 'caterpillar'],
    meaning: 'Clear plastic film on hoops about knee high, its edges weighed down.',
  },
  {
    word: 'high tunnel',
    also: ['polytunnel', 'hoophouse', 'hoop house'],
    meaning: 'An unheated house of plastic film that you can walk in.',
  },
  {
    word: 'cold frame',
    also: ['coldframe', 'frame'],
    meaning: 'A low box without heating under a lid of glass, twin-wall sheet or film.',
  },
  { word: 'light', also: ['lights', 'sash'], meaning: 'The glazed lid of a cold frame.' },
  { word: 'hoops', also: ['hoop'], meaning: 'Bent wire or pipe that holds a cover off the leaves.' },
  {
    word: 'vent',
    also: ['venting', 'prop', 'ventilate'],
    meaning: 'To open a frame or tunnel by day, so that it does not get too hot: from about 75 °F (24 °C) inside.',
  },
  {
    word: 'shutting time',
    also: ['shut by'],
    meaning: 'About two hours before sunset: covers shut by then keep the sun’s heat for the night.',
  },
  {
    word: 'frost hollow',
    also: ['hollow', 'frost pocket'],
    meaning: 'Low ground into which cold air drains at night. It can be several degrees colder than a slope close by.',
  },
  {
    word: 'radiation frost',
    meaning: 'Frost of a clear, calm night, when leaves lose heat to the sky and get colder than the air.',
  },
  {
    word: 'hard freeze',
    also: ['killing frost', 'freeze'],
    meaning:
      'In US public warnings, a low of 28 °F (−2 °C) or colder for some hours: it ends tender crops without a good cover.',
  },
  {
    word: 'leaf low',
    meaning:
      'The lowest temperature that I expect at the leaf itself. The forecast is for air at head height; down at the bed under a clear sky it is colder.',
  },
  {
    word: 'ten-hour day',
    also: ['ten hour day', 'ten hours'],
    meaning: 'A day with ten hours of light. While days are shorter, most crops hardly grow.',
  },
  {
    word: 'mulch',
    also: ['straw mulch'],
    meaning: 'Straw, leaves or the like laid on the soil or over the plants.',
  },
];

/** Every cover that can be named. */
export function coverSections({ dialect }: Reader): readonly Section[] {
  const names = COVER_KEYS.map((key) => COVERS[key][dialect]);
  return [{ lines: [`${names.join(', ')}.`, 'Lay one over the other in words: "a quilt over a low tunnel".'] }];
}

/** Every crop of the table. */
export function cropSections(reader: Reader): readonly Section[] {
  const names = CROPS.map((crop) => cropWord(crop, reader)).sort();
  return [{ lines: [`${names.join(', ')}.`, 'Many also go by other names and varieties; just try.'] }];
}
