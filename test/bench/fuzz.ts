import fc from 'fast-check';
import { cropVocabulary } from '../../bot/language/crop-vocabulary.ts';
import { understand } from '../../bot/language/understand.ts';
import { Club, HOME, posterWith } from '../bot/commands/club.ts';
import { RunningBot, Surroundings } from '../bot/running.ts';
import { csvProperty, forecastBodyProperty } from '../security/hostile-files.ts';
import { optionsProperty, typedLineProperty } from '../security/hostile-options.ts';
import { bytesProperty, signedProperty, unsignedProperty } from '../security/hostile-requests.ts';
import { hostileText } from '../security/hostile-words.ts';
import type { Row } from './row.ts';

/** A hundred thousand in all. */
const CASES = {
  bytes: 10_000,
  unsigned: 15_000,
  signed: 10_000,
  options: 15_000,
  lines: 15_000,
  questions: 15_000,
  bodies: 10_000,
  files: 10_000,
};

type Property = fc.IRawProperty<never> | fc.IRawProperty<unknown[]>;

/** The properties of `test/security/`, at length. A case that breaks one ends the bench with the case. */
export async function benchFuzz(): Promise<readonly Row[]> {
  return [...(await doorRows()), ...(await deskRows())];
}

async function doorRows(): Promise<readonly Row[]> {
  const around = await Surroundings.open();
  const bot = new RunningBot(await around.settings('signed HTTP'));
  await bot.ready();
  const doorUrl = around.double.doorUrl ?? '';
  const typed = () => {
    around.double.forget();
    return around.double.type({ command: 'check', options: { crop: 'kale', low: '14F' } }).interaction;
  };
  const rows = [
    await row('bytes at the HTTP door', bytesProperty(doorUrl), CASES.bytes),
    await row('unsigned requests', unsignedProperty(doorUrl), CASES.unsigned),
    await row('signed requests gone wrong', signedProperty(around.double, typed), CASES.signed),
  ];
  await bot.stop();
  await around.close();
  return rows;
}

async function deskRows(): Promise<readonly Row[]> {
  const club = await Club.open();
  club.with({ poster: posterWith([]) });
  await club.say(HOME);
  const vocabulary = cropVocabulary();
  const question = fc.property(hostileText, (text) => {
    understand(text, { vocabulary, locale: 'en-US', hasPlace: true, hasBeds: true });
  });
  const errors = () => club.logged.filter((line) => line.includes('"level":50')).join('');
  const rows = [
    await row('options of every command', optionsProperty(club.services, errors), CASES.options),
    await row('lines at the terminal', typedLineProperty(), CASES.lines),
    await row('questions in words', question, CASES.questions),
    await row('bodies of forecast services', forecastBodyProperty(), CASES.bodies),
    await row('files of loggers', csvProperty(), CASES.files),
  ];
  await club.close();
  if (errors() !== '') throw new Error(errors());
  return rows;
}

async function row(name: string, property: Property, numRuns: number): Promise<Row> {
  const begun = performance.now();
  const outcome = await fc.check(property as fc.IRawProperty<unknown>, { numRuns });
  if (outcome.failed) throw new Error(`${name}: ${fc.defaultReportMessage(outcome)}`);
  return { name: `${name}: ${outcome.numRuns} cases`, value: (performance.now() - begun) / 1000, unit: 's' };
}
