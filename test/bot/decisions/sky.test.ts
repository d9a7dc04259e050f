import { describe, expect, it } from 'vitest';
import { decided, itDecides } from './decision.ts';

describe('sky and wind are read as people say them, the colder end where they change (common practice)', () => {
  itDecides([
    { ask: 'its NOT cloudy tonight, 35', month: 10, says: [/frost on the leaves/, /clear sky/] },
    { ask: 'winds light and variable, low 35, clear', month: 5, says: [/still air/, /frost on the leaves/] },
    {
      ask: 'wind 3 mph 33 clear. is that enough wind to stop frost?',
      month: 5,
      says: [/At 33 °F/, /does not keep frost off/, /wind 3 mph/],
    },
    {
      ask: '4 mph wind and clear, 36 F for my basil',
      month: 9,
      says: [/at 36 °F/, /wind 4 mph/],
      verdict: ['winterkill', 'leaf burn', 'on the edge'],
    },
    {
      ask: '34 but overcast all night, tomatoes',
      month: 5,
      says: [/overcast sky/, /clears before dawn/],
      verdict: ['holds'],
    },
    { ask: 'cloudy till 3am then clearing, 35', month: 5, says: [/clear sky/, /frost on the leaves/] },
    {
      ask: 'Windy now 25 mph but forecast calm after midnight, 33 low',
      month: 4,
      says: [/At 33 °F/, /still air/, /frost on the leaves/],
    },
    {
      ask: 'wind chill of 5, low of 20, will kale be ok?',
      says: [/at 20 °F/, /Plants feel the air/, /Not used: wind chill/],
      verdict: ['holds', 'on the edge'],
    },
    {
      ask: 'Low 2 C, dew point -7, clear and still. Frost?',
      locale: 'en-GB',
      month: 5,
      says: [/At 2 °C/, /frost on the leaves/, /Not used: dew point/],
    },
    { ask: 'partly cloudy 34 F', month: 5, says: [/half clear sky/, /Patchy cloud cannot be relied on/] },
  ]);

  it('keeps 20 and 40 mph apart, and tells what is laid on to be held down', () => {
    const text = decided({ ask: 'lettuce at 22F with wind 20 mph', says: [] }).text;
    expect(text).toMatch(/Weigh its edges down/);
    expect(decided({ ask: 'spinach under row cover at 22F, 40 mph gusts', says: [] }).cautions).toContain('wind');
  });
});
