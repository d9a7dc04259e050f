import type { SaidSky } from './understood.ts';

/** What people say of the night's sky and wind. */
export const SKY_WORDS: readonly { readonly sky: SaidSky; readonly phrases: string }[] = [
  {
    sky: { cloud: 'clear' },
    phrases:
      'clear, clear sky, clear skies, clear night, starry, cloudless, no cloud, no clouds, not a cloud, starlit, clearing, clearing up, clearing out, clears, clears up, clears out, will clear, skies clear, sky clears, clouds break, clouds break up, clouds breaking, clouding over, clouds over, no cloud cover, without clouds, crystal clear, stars out, clear out, clear as a bell, clear and cold',
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
      'calm, no wind, windless, no breeze, still night, still air, calm night, wind still, dead calm, without wind, light and variable, light variable, light and variable winds, variable winds, nearly calm, almost calm, next to no wind, no wind at all, not a breath, not a breath of wind, going calm, goes calm, turning calm, wind dies, wind dies down, winds die down, wind drops, wind drops off, wind dying down, wind dying, winds diminish, wind lets up, wind quits, little wind, not windy, little or no wind, very little wind, calm winds, winds calm, hardly any wind',
  },
  { sky: { wind: 'light' }, phrases: 'light wind, light winds, light air, light airs, soft breeze, hint of a breeze' },
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
      'windy, wind, winds, gusty, gusts, gale, gales, blowing, strong wind, strong winds, high wind, high winds, howling, blustery, very windy, gusting, blowing hard, storm, stormy, wind chill, howling wind, stiff breeze, stiff wind, brisk wind, brisk winds, fresh wind, windstorm, howling gale, lots of wind',
  },
  {
    sky: { snow: true },
    phrases:
      'snow, snowing, snowy, snowfall, snowstorm, snow storm, blizzard, snows, snow coming, flurries, fresh snow, new snow, snowed, wet snow, heavy snow, snow load, the snow',
  },
];
