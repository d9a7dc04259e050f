import type { CoverKey } from '../../rules/index.ts';
import { nightChart } from '../charts/night-chart.ts';
import { writtenPicture } from '../charts/picture-file.ts';
import { curvePicture } from '../charts/pictures.ts';
import type { NightOrWeek } from '../commands/tonight/night-option.ts';
import { weekWithPicture } from '../commands/tonight/own-week.ts';
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
import { namedNight } from '../outlook/named-night.ts';
import { type NightOutlook, nightOutlook } from '../outlook/night-outlook.ts';
import { weekOutlook } from '../outlook/week-outlook.ts';
import { drawn } from '../talk/plain-text.ts';
import type { Picture, Reply } from '../talk/reply.ts';
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
  const reply = await replyFor(options.night, garden, { forecast, official, reader, now });
  const { chartFile } = options;
  process.stdout.write(`${drawn(reply, 80)}\n`);
  const problem = chartFile && reply.picture && (await writtenPicture(chartFile, reply.picture.png));
  if (problem) throw new PlainProblem(problem);
}

interface Telling extends Pick<Weather, 'forecast' | 'official' | 'now'> {
  readonly reader: Reader;
}

const NO_NIGHT = 'The sun does not set there then, so there is no night to warn of.';

async function replyFor(asked: NightOrWeek, garden: Garden, telling: Telling): Promise<Reply> {
  const { forecast, official, reader, now } = telling;
  if (asked === 'week') {
    const week = weekOutlook(garden, forecast, now);
    if (week === undefined) throw new PlainProblem(NO_NIGHT);
    return weekWithPicture({ week, official, reader, now });
  }
  const night = namedNight(asked, now, garden);
  if (night === undefined) throw new PlainProblem(NO_NIGHT);
  const outlook = nightOutlook(garden, forecast, night.span, now);
  const reply = outlookReply({ outlook, official, reader, now, nightWords: night.words });
  const picture = await chartOf(outlook, reader);
  return { ...reply, ...(picture && { picture }) };
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
    const asked = options.night === 'week' ? 'tonight' : options.night;
    const zoned = { latitudeDeg, longitudeDeg, timeZone: timeZoneOf(latitudeDeg, longitudeDeg) };
    const night = namedNight(asked, now, zoned)?.span;
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
