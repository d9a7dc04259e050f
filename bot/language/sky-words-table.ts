import type { SaidSky } from './understood.ts';

/** What people say of the night's sky and wind. */
export const SKY_WORDS: readonly { readonly sky: SaidSky; readonly phrases: string }[] = [
  {
    sky: { cloud: 'clear' },
    phrases:
      'clear, clear sky, clear skies, clear night, starry, cloudless, no cloud, no clouds, not a cloud, starlit, clear as a bell, clear and cold',
  },
  {
    sky: { cloud: 'half' },
    phrases:
      'partly cloudy, part cloudy, half cloudy, some cloud, some clouds, partly clear, mostly clear, broken cloud, scattered cloud, scattered clouds, a few clouds, patchy cloud, half cloud, partial cloud, partly sunny, mostly cloudy',
  },
  {
    sky: { cloud: 'overcast' },
    phrases:
      'overcast, cloudy, cloud cover, clouded over, full cloud, grey skies, gray skies, cloudy sky, cloudy skies, solid cloud, low cloud, fog, foggy, thick cloud',
  },
  {
    sky: { wind: 'calm' },
    phrases:
      'calm, no wind, windless, no breeze, still night, still air, calm night, wind still, dead calm, without wind, light winds, little wind, light wind, not windy, calm winds, winds calm, hardly any wind',
  },
  {
    sky: { cloud: 'clear', wind: 'calm' },
    phrases:
      'clear still night, clear calm night, clear and calm, clear and still, calm and clear, still and clear, clear calm, clear still, radiation frost night',
  },
  {
    sky: { wind: 'breezy' },
    phrases:
      'breezy, breeze, light breeze, slight breeze, some wind, a bit of wind, a little wind, bit windy, a bit windy, gentle breeze, moderate wind, slightly windy, somewhat windy, a bit breezy',
  },
  {
    sky: { wind: 'windy' },
    phrases:
      'windy, wind, winds, gusty, gusts, gale, gales, blowing, strong wind, strong winds, high wind, high winds, howling, blustery, very windy, gusting, blowing hard, storm, stormy, wind chill, howling wind, windstorm, howling gale, lots of wind',
  },
  {
    sky: { snow: true },
    phrases:
      'snow, snowing, snowy, snowfall, snowstorm, snow storm, blizzard, snows, snow coming, flurries, fresh snow, new snow, snowed, wet snow, heavy snow, snow load, the snow',
  },
];
