export * from './air/humidity.ts';
export * from './air/pressure.ts';
export * from './cautions/cautions.ts';
export * from './covers/cover-key.ts';
export * from './night/night-input.ts';
export * from './sun/radiation.ts';
export * from './sun/solar-position.ts';
export * from './sun/sunrise-sunset.ts';
