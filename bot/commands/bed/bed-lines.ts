import { COVER_KEYS, type CoverKey, cropById, SOIL_KINDS, SOILS, stackWords } from '../../../rules/index.ts';
import type { Planting } from '../../store/port/beds.ts';
import type { Section } from '../../talk/reply.ts';
import { capitalised, list } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { dateWords } from '../../text/season-words.ts';
import { MULCH_WORDS, STAGE_WORDS } from './bed-options.ts';
import { frameWords, hasFrame } from './frame.ts';
import type { OwnBed } from './own-beds.ts';

/** A bed told back: what grows in it, what lies over it, what it stands in. */
export function bedSection(bed: OwnBed, reader: Reader): Section {
  return { title: bed.label, lines: bedLines(bed, reader) };
}

export function bedLines(bed: OwnBed, reader: Reader): string[] {
  const covers = knownCovers(bed.covers);
  return [
    plantingsLine(bed.plantings, reader),
    `Covers: ${stackWords(covers, reader.dialect)}.`,
    ...(hasFrame(covers) ? [frameWords(bed.frame, bed.site.latitudeDeg, reader)] : []),
    groundLine(bed, reader),
  ];
}

function plantingsLine(plantings: readonly Planting[], reader: Reader): string {
  if (plantings.length === 0) return 'Nothing grows in it yet: /bed plant.';
  return `${capitalised(list(plantings.map((planting) => plantingWords(planting, reader))))}.`;
}

/** "spinach (grown, hardened, sown Aug 20)". */
export function plantingWords({ crop, stage, hardened, sown, setOut }: Planting, reader: Reader): string {
  const known = cropById(crop);
  const name = known === undefined ? crop : cropWord(known, reader);
  const state = hardened === undefined ? [] : [hardened ? 'hardened' : 'grown warm'];
  const days = [
    ...(sown === undefined ? [] : [`sown ${dateWords(sown, reader)}`]),
    ...(setOut === undefined ? [] : [`set out ${dateWords(setOut, reader)}`]),
  ];
  const isSaid = stage === 'just-set-out' && setOut !== undefined;
  return `${name} (${[...(isSaid ? [] : [STAGE_WORDS[stage]]), ...state, ...days].join(', ')})`;
}

function groundLine({ soil, mulch }: OwnBed, { dialect }: Reader): string {
  const kind = SOIL_KINDS.find((key) => key === soil) ?? 'moist';
  const on = mulch === 'straw' || mulch === 'plastic' ? `, ${MULCH_WORDS[mulch]}` : '';
  return `${capitalised(SOILS[kind][dialect])}${on}.`;
}

function knownCovers(covers: readonly string[]): readonly CoverKey[] {
  return covers.flatMap((cover) => COVER_KEYS.find((key) => key === cover) ?? []);
}
