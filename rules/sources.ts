/** One published source, cited once. `standing` says how the figures from it may be used. */
export interface Source {
  readonly title: string;
  /** READ: the figure stood in a stored copy of the document. MEMORY: remembered, to be checked. JUDGEMENT: ours. */
  readonly standing: 'READ' | 'MEMORY' | 'JUDGEMENT';
}

/** Every source of a number in `rules/`, by key. Add a block per folder; keep each block sorted. */
export const SOURCES = {
  'common-practice': { title: 'Common practice among growers, no source', standing: 'JUDGEMENT' },
  judgement: { title: 'Judgement of the developers', standing: 'JUDGEMENT' },
  // cautions
  'caution-electric': {
    title: 'Safety-agency consensus on electric heat near covers, from memory',
    standing: 'MEMORY',
  },
  'caution-frozen-leaves': {
    title: 'Extension consensus: do not pick, touch or uncover while frozen',
    standing: 'MEMORY',
  },
  'caution-fuel': {
    title: 'Safety-agency consensus on unvented fuel heat, carbon monoxide and fire',
    standing: 'MEMORY',
  },
  'caution-nitrate': {
    title: 'Regulation (EU) 1258/2011 limits for leafy greens; Neely et al., HortScience (abstract) on light',
    standing: 'MEMORY',
  },
  'caution-paint-timber-glass': { title: 'US EPA guidance on lead paint and CCA-treated timber', standing: 'MEMORY' },
  'caution-potato': { title: 'Extension consensus on frozen and greened tubers', standing: 'MEMORY' },
  'caution-rhubarb': { title: 'University of Illinois Extension 2009, 2012', standing: 'READ' },
  'snow-load': { title: 'Extension consensus on clearing hoops; densities from general physics', standing: 'MEMORY' },
  'wind-anchor': {
    title: 'Extension consensus, 35 mph (30–45); NC State University, ASHS 2011 abstract (flapping)',
    standing: 'MEMORY',
  },
  // air
  'standard-atmosphere': { title: 'Standard atmosphere, ISO 2533, from memory', standing: 'MEMORY' },
  'vanthoor-2011': {
    title: 'Vanthoor et al. 2011, Biosyst. Eng. 110:363, values as listed in an open re-implementation',
    standing: 'READ',
  },
  'wmo-magnus': { title: 'World Meteorological Organization, Guide to Instruments, Magnus form', standing: 'MEMORY' },
  // season
  'autumn-slowdown': { title: 'Extension consensus: 10 to 21 days longer from autumn sowings', standing: 'MEMORY' },
  'lettuce-light': {
    title: 'Greenhouse lettuce guides: daily light of 17 mol m⁻² for full growth, from memory',
    standing: 'MEMORY',
  },
  'photon-yield': {
    title: 'Plant physiology: about 2 mol of photosynthetic photons per MJ of sunlight',
    standing: 'MEMORY',
  },
  'ten-hour-rule': { title: 'Grower-educator usage: growth nearly stops under ten hours of day', standing: 'READ' },
  // sun
  'almanac-sun': { title: 'Astronomical Almanac, low-precision formulas for the Sun', standing: 'MEMORY' },
  'erbs-1982': { title: 'Erbs, Klein & Duffie 1982, Solar Energy 28:293', standing: 'MEMORY' },
  'fao-56': { title: 'FAO Irrigation & Drainage Paper 56 (Allen et al. 1998)', standing: 'READ' },
  'haurwitz-1945': { title: 'Haurwitz 1945, J. Meteorology 2:154, as coded in open solar libraries', standing: 'READ' },
  'kasten-czeplak-1980': { title: 'Kasten & Czeplak 1980, Solar Energy 24:177', standing: 'MEMORY' },
  'noaa-solar': {
    title: 'NOAA Global Monitoring Division, General Solar Position Calculations',
    standing: 'READ',
  },
  'spencer-1971': { title: 'Spencer 1971, Search 2:172', standing: 'MEMORY' },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
