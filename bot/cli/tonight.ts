import { type CoverKey, nightFrom } from '../../rules/index.ts';
import { nightChart } from '../charts/night-chart.ts';
import { writtenPicture } from '../charts/picture-file.ts';
import { curvePicture } from '../charts/pictures.ts';
import { typedCovers } from '../commands/typed/covers.ts';
import { processConfig } from '../config.ts';
import { forecastDesk } from '../forecast/choose.ts';
import type { HourlyForecast, OfficialWarnings } from '../forecast/forecast.ts';
import { refuseElsewhere } from '../forecast/saved-desk.ts';
import { savedFile } from '../forecast/saved-file.ts';
import { systemClock } from '../ground/clock.ts';
import { PlainProblem } from '../ground/errors.ts';
import { machineLocale } from '../ground/locale.ts';
import { timeZoneOf } from '../ground/time-zone.ts';
import type { Garden } from '../outlook/garden.ts';
import { type NightOutlook, nightOutlook } from '../outlook/night-outlook.ts';
import { drawn } from '../talk/plain-text.ts';
import type { Picture } from '../talk/reply.ts';
import { outlookReply } from '../text/outlook-reply.ts';
import { type Reader, readerOf } from '../text/reader.ts';
import { runProgram } from './run-program.ts';
import { type TonightOptions, tonightOptions } from './tonight-options.ts';
import { typedBed } from './typed-bed.ts';

/** A night's warning for beds named on the command line, from a live or a saved forecast. */
async function main(words: readonly string[]): Promise<undefined> {
  const options = tonightOptions(words);
  const reader = readerOf(machineLocale(), options.units);
  const beds = options.beds.map((text) => typedBed(text, reader));
  const shed = options.shed.flatMap((text) => spareCovers(text, reader));
  const { forecast, official, now, place } = await weatherFor(options);
  const garden: Garden = {
    name: 'Your garden',
    ...place,
    ...(options.heightM !== undefined && { elevationM: options.heightM }),
    exposure: options.exposure,
    timeZone: forecast.timeZone ?? timeZoneOf(place.latitudeDeg, place.longitudeDeg),
    beds,
    shed,
  };
  const outlook = outlookOf(garden, forecast, now);
  const reply = outlookReply({ outlook, official, reader, now, nightWords: 'tonight' });
  const { chartFile } = options;
  const picture = await chartOf(outlook, reader);
  process.stdout.write(`${drawn({ ...reply, ...(picture && { picture }) }, 80)}\n`);
  const problem = chartFile && picture && (await writtenPicture(chartFile, picture.png));
  if (problem) throw new PlainProblem(problem);
}

/** The curve of the most urgent bed. */
async function chartOf(outlook: NightOutlook, reader: Reader): Promise<Picture | undefined> {
  const [first] = outlook.beds;
  return first && (await curvePicture(nightChart(outlook, first, reader)));
}

function spareCovers(text: string, reader: Reader): readonly CoverKey[] {
  const covers = typedCovers(text, reader);
  if (!covers.ok) throw new PlainProblem(covers.problem);
  return covers.value;
}

function outlookOf(garden: Garden, forecast: HourlyForecast, now: Date): NightOutlook {
  const night = nightFrom(now, garden.latitudeDeg, garden.longitudeDeg);
  if (night === undefined) throw new PlainProblem('The sun does not set there now, so there is no night to warn of.');
  return nightOutlook(garden, forecast, night, now);
}

interface Weather {
  readonly forecast: HourlyForecast;
  readonly official: OfficialWarnings;
  readonly now: Date;
  readonly place: { readonly latitudeDeg: number; readonly longitudeDeg: number };
}

async function weatherFor(options: TonightOptions): Promise<Weather> {
  return options.forecastFile === undefined ? liveWeather(options) : savedWeather(options, options.forecastFile);
}

/** The clock stands at the file's own time, unless told otherwise. */
async function savedWeather(options: TonightOptions, file: string): Promise<Weather> {
  const forecast = await savedFile(file);
  const { latitudeDeg = forecast.place?.latitudeDeg, longitudeDeg = forecast.place?.longitudeDeg } = options;
  if (latitudeDeg === undefined || longitudeDeg === undefined) {
    throw new PlainProblem('The file does not say where it is for: add --lat and --lon.');
  }
  refuseElsewhere(forecast.place, { latitudeDeg, longitudeDeg });
  return {
    forecast,
    official: { kind: 'not-covered' },
    now: options.at ?? forecast.fetchedAt,
    place: { latitudeDeg, longitudeDeg },
  };
}

async function liveWeather(options: TonightOptions): Promise<Weather> {
  const config = processConfig();
  const { latitudeDeg = 0, longitudeDeg = 0, heightM } = options;
  if (config.FORECAST_CONTACT === undefined) {
    throw new PlainProblem(
      'Set FORECAST_CONTACT to your e-mail or web address: the forecast services refuse requests without one. Or read a saved forecast with --forecast FILE.',
    );
  }
  const order = options.service === undefined ? config.FORECAST_ORDER : [options.service];
  const desk = forecastDesk({
    bases: { nws: config.NWS_BASE, metno: config.METNO_BASE, openmeteo: config.OPENMETEO_BASE },
    contact: config.FORECAST_CONTACT,
    ...(order !== undefined && { order }),
  });
  try {
    const now = options.at ?? systemClock.now();
    const place = { latitudeDeg, longitudeDeg, ...(heightM !== undefined && { elevationM: heightM }) };
    const night = nightFrom(now, latitudeDeg, longitudeDeg);
    const [forecast, official] = await Promise.all([
      desk.forecastFor(place, now, { compare: true, ...(night && { night }) }),
      desk.warningsFor(place, now),
    ]);
    return { forecast, official, now, place: { latitudeDeg, longitudeDeg } };
  } finally {
    await desk.close();
  }
}

await runProgram(main);
