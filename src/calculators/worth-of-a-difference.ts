import { depressionOf, depressionPa } from './quantities.ts';
