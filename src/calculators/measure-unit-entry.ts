import type { MeasureScale, MeasureUnit } from './measure-unit.ts';

export const siBrochure = 'The International System of Units, BIPM, 9th edition, 2019';
export const sp811 = 'Thompson and Taylor, NIST Special Publication 811, 2008, appendix B';

/** An entry of a table of units; `aliases` part with commas. Every unit here is exact by definition. */
export const unitEntry = (
  id: string,
  name: string,
  scale: number | MeasureScale,
  composition: string,
  aliases: string,
  source = siBrochure,
  symbol = id,
): MeasureUnit => ({
  id,
  symbol,
  name,
  aliases: aliases.split(', '),
  scale: typeof scale === 'number' ? { kind: 'proportional', factor: scale } : scale,
  exactness: 'exact',
  composition,
  source,
});
