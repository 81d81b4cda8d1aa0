// What the pages show beside the English of cells, or in its place where only they say it.
export * from './accepts';
export * from './cautions';
export * from './joint';
export * from './reasons';
