/**
 * Our plain look. A paper card of its own, so that it reads the same on light and dark screens; blue and vermilion that
 * colour-blind eyes tell apart (Okabe & Ito 2008), and every line also differs by weight or dash.
 */
export const LOOK = {
  paper: '#fbf9f4',
  edge: '#c9c3b4',
  ink: '#20303a',
  quiet: '#55636b',
  grid: '#e2ddd0',
  leaf: '#0072b2',
  band: '#bcd9ea',
  limit: '#b34700',
  night: '#f0ece1',
} as const;

/** Drawn twice as large as a phone shows it. */
export const WIDTH = 800;
export const HEIGHT = 640;
export const TITLE_SIZE = 32;
export const TEXT_SIZE = 26;
export const MARGIN = 22;
/** Where curves are drawn. */
export const FRAME = { left: 76, right: 690, top: 182, bottom: 578 } as const;
