import { degrees, temperature, type UnitSystem } from '../../ground/units.ts';
import { cropVocabulary } from '../../language/crop-vocabulary.ts';
import { spansOf } from '../../language/spans.ts';
import { readTemperature } from '../../language/temperature.ts';
import type { Understood } from '../../language/understood.ts';
import { saidBack } from '../../text/phrases.ts';
import { COLDEST_ASKED_C, WARMEST_ASKED_C } from '../ask/asked-night.ts';
import { type Read, read, unread } from './read.ts';

export type TypedLow = Required<Pick<Understood, 'lowC' | 'temperature' | 'assumptions'>>;

/** An outside low: "14", "14F", "-10 C", "minus ten"; a bare number is in the reader's units where that makes sense. */
export function typedLow(text: string, units: UnitSystem): Read<TypedLow> {
  const spans = spansOf(text, cropVocabulary());
  const { temperature: said, lowC, assumptions } = readTemperature(spans, units === 'us' ? 'F' : 'C');
  if (said === undefined) {
    const example = units === 'us' ? '14 °F or −10 °C' : '−10 °C or 14 °F';
    return unread(`I cannot read "${saidBack(text)}" as a temperature; write it like ${example}.`);
  }
  if (lowC === undefined || lowC < COLDEST_ASKED_C || lowC > WARMEST_ASKED_C) {
    const range = `${degrees(COLDEST_ASKED_C, units)} and ${temperature(WARMEST_ASKED_C, units)}`;
    return unread(`"${saidBack(text)}" is outside what I can reckon with: name a low between ${range}.`);
  }
  return read({ temperature: said, lowC, assumptions });
}
