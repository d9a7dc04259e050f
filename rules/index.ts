export * from './cautions/cautions.ts';
export * from './covers/cover-key.ts';
export * from './night/night-input.ts';
