import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { accuracyLine, errorOf, isWithin } from './accuracy/comparison.ts';
import { parts } from './accuracy/comparisons.ts';
import { tableIn, withTable } from './accuracy/page.ts';
import { asMarkdown, rowsPerSource } from './accuracy/print.ts';

const PARTS = parts();
const ALL = PARTS.flatMap(({ comparisons }) => comparisons);
const PAGE = readFileSync(new URL('README.md', import.meta.url), 'utf8');

describe.each(ALL.map((comparison) => [`${comparison.quantity}: ${comparison.source}`, comparison] as const))(
  '%s',
  (_name, { rows, leftOut = [], tolerance }) => {
    test('is met within its tolerance in every row, or the row says why not', () => {
      expect(tolerance).not.toBe('');
      const failing = rows.filter((row) => !isWithin(row) && row.excuse === undefined);
      expect(failing.map((row) => `${row.id}: ${errorOf(row)}`)).toEqual([]);
    });

    test('has no excuse that is out of date, too short or wider than it says', () => {
      for (const row of rows.filter(({ excuse }) => excuse !== undefined)) {
        expect([row.id, isWithin(row)]).toEqual([row.id, false]);
        expect(row.excuse?.length).toBeGreaterThan(20);
        expect(Math.abs(errorOf(row))).toBeLessThanOrEqual(row.excusedWithin ?? Number.POSITIVE_INFINITY);
      }
      for (const { id, reason } of leftOut) expect([id, reason.length > 5]).toEqual([id, true]);
    });

    test('names every row once', () => {
      const ids = [...rows, ...leftOut].map(({ id }) => id);
      expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    });
  },
);

test('no row of a source drops out or slips in unseen', () => {
  expect(rowsPerSource(ALL)).toEqual(ROWS_PER_SOURCE);
});

test('no error is other than a number', () => {
  for (const line of ALL.map(accuracyLine)) {
    for (const figure of [line.bias, line.meanAbsoluteError, line.worst]) expect(Number.isFinite(figure)).toBe(true);
    expect(line.within + line.excused).toBe(line.compared);
  }
});

describe('the accuracy page', () => {
  test('has the table that the program prints', () => {
    expect(tableIn(PAGE)).toBe(asMarkdown(PARTS));
  });

  test('is renewed between its markers and nowhere else', () => {
    const renewed = withTable(PAGE, 'new');
    expect(tableIn(renewed)).toBe('new');
    expect(withTable(renewed, tableIn(PAGE))).toBe(PAGE);
  });
});

/** Rows per line, compared and left out. */
const ROWS_PER_SOURCE: Readonly<Record<string, number>> = {
  'Measured low under perforated film on the crop — Oregon State University 1988 — read': 5,
  'Measured low under spunbonded on the crop — Oregon State University 1988 — read': 10,
  'Measured low under a cold frame — garden weblogs 2008, 2011 — read': 1,
  'Measured low under two film tunnels and jugs — garden weblog 2011 — read': 1,
  'Trials without a pair of lows under covers of ours — abstracts, logs, talks — read': 22,
  'Measured low in a wooden frame, frost nights of a spring — ColdFrameTemperature, Minnesota 2018 (CC0) — read': 8,
  'Measured low under covers on hard nights, outside −5 °C or colder — pairs of farms, weblogs and extension, 2004–2022; the frame of 2018 — read': 16,
  'Gain of a high tunnel over three winters of frost nights — Savage 1980; Red Lodge log; NOAA daily records — read': 8,
  'Air and leaf near the ground, dry and perforated film — Leuning, Savage, Sugiyama, Oregon, Guttormsen, NC State — read': 18,
  'Share of the gain left in wind, and after a sunless day — NC State 2011 and extension: about half — memory': 8,
  'Snow on a tunnel, cover on the leaf — textbooks and growers — memory': 3,
  'Rise in shut covers in the sun — garden diary 2010, Acta Horticulturae 187, Maryland, Guttormsen — read': 6,
  'No alarm where no harm was seen — growers and services, each source left out once — read': 112,
  'Not "holds" where harm was seen — growers and services, each source left out once — read': 71,
  'Not "winterkill" where the plant lived — growers and services, each source left out once — read': 40,
  'Nights much colder than forecast, hard site — our comparison: coarse ensemble, Innsbruck 2000–2016 — read': 4,
  'Mean error of a forecast low — the same; Baars & Mass 2005; growth with lead — memory': 3,
  'Lows within 2 K of the forecast — MET Norway, usual hit rate — read': 1,
  'Air hour by hour between low and high — NOAA hourly normals, Seattle, November to March — read': 120,
  'Position of the sun, 2000 to 2050 — Astronomy Engine 2.1 — library': 200,
  'Height of the sun above 20° — SunCalc 2.0 — library': 55,
  'Declination, for seasons — Astronomy Engine 2.1 — library': 200,
  'Sunrise and sunset — Astronomy Engine 2.1 — library': 400,
  'Sunrise and sunset — SunCalc 2.0 — library': 400,
  'Length of the day — SunCalc 2.0 — library': 200,
  'Clear-day radiation at 40° N — ASHRAE clear-day tables — memory': 4,
  'Clear-day radiation, Belgium in July — FAO paper 56, example 18 — read': 1,
  'Vapour pressure over water, 0 to 60 °C — PsychroLib (ASHRAE 2017) — library': 200,
  'Dew point above freezing — PsychroLib (ASHRAE 2017) — library': 200,
  'Pressure and vapour — FAO paper 56, examples 2–5, 17, 20 — read': 7,
  'Pressure and vapour — FAO paper 56, tables 2.2 and 2.3 — memory': 8,
  'Dew point from humidity — FAO frost handbook — memory': 6,
  'Sun above the air, day length — FAO paper 56, examples 8 and 9 — read': 3,
  'Sun above the air, day length — FAO paper 56, tables 2.6 and 2.7 — memory': 15,
  'Heat of a black body — FAO paper 56, table 2.8 — memory': 5,
  'Night longwave: constant, emission, net loss — FAO frost handbook — memory': 4,
  'First and last day under ten hours — Spencer 1971 and standard refraction — formula': 9,
  'Freezing point of picked produce — FAO frost handbook, from USDA — memory': 6,
  'Methods that we do not use — FAO paper 56 and frost handbook — read': 11,
  'Wind chill, never applied to a leaf — US and Canadian tables of 2001 — read': 40,
  'First and last day under ten hours — garden weblogs R015–R020 — read': 6,
  'Leaf low of a bare bed — second model in a general ODE solver (odex) — library': 8,
  'Leaf low under one cover — second model in a general ODE solver (odex) — library': 16,
  'Gain under a cover — trials — read': 8,
  'Gain under a cover — growers and farms — read': 7,
  'Gain under a cover — handbooks and extension — read': 8,
  'Gain under a cover — trade and web — read': 8,
  'Gain under a cover — extension, trade and textbooks — memory': 22,
  'Measured low under straw — Purdue Extension 2018 — read': 1,
  'Light through covers — measured and trade — read': 27,
  'Longwave through covers — Hanson 1963, Kalfas 1988 — read': 3,
  'Resistance of panes, air films included — extension and trade charts — read': 6,
  'Light and longwave of covers — textbooks and makers — memory': 10,
  'Verdict not contradicted — journals — read': 26,
  'Verdict not contradicted — stations and extension — read': 99,
  'Verdict not contradicted — growers’ lists — read': 48,
  'Verdict not contradicted — gardeners’ logs — read': 26,
  'Verdict not contradicted — trade — read': 20,
  'Outside low that kills half of a bare crop — growers’ winter-kill lists — read': 86,
  'Frames: size, shutting time, 75 °F, walls, little opening in deep winter — common practice, no source — no source': 15,
  'Lettuce at 12 and 15 °F, tender and hardened plants — common practice, no source — no source': 14,
  'Days longer than the packet, sown 1 to 15 September — extension consensus R062 — memory': 12,
  'Times the packet’s days, sown 1 to 15 November — extension consensus R062 — memory': 12,
  'Hardening and softening — Fennell & Li, Tamura, Sasaki (abstracts) R022–R031 — read': 9,
};
