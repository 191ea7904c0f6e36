/** Loaded when a table is asked for. */
export { sessionsCsv } from '../../../calculators/index.ts';
