import {
  formatExact,
  formatTrimmed,
  regularNuts,
  screwAdvanceMm,
  thinNuts,
  threadsPerInchOfPitchMm,
  threadTables,
  type ScrewThread,
  type ThreadSystem,
} from '../../calculators/index.ts';
import type { SourceId } from '../sources.ts';
import { noFigure, type DataTable } from './data-table.ts';

const quarter = 1 / 4;
/** A minute of a clock face. */
const minute = 1 / 60;

const millimetres = (value: number): string => formatTrimmed(value, 3);

const cellsOf = ({ name, diameterMm, pitchMm }: ScrewThread): string[] => [
  name.replace('x', ' × '),
  millimetres(diameterMm),
  formatTrimmed(threadsPerInchOfPitchMm(pitchMm), 1),
  millimetres(screwAdvanceMm(pitchMm, 1)),
  millimetres(screwAdvanceMm(pitchMm, quarter)),
  millimetres(screwAdvanceMm(pitchMm, minute)),
];

function tableOf(system: ThreadSystem): DataTable {
  const found = threadTables.find((table) => table.system === system);
  if (found === undefined) throw new Error(`no threads of ${system}`);
  const { heading, flankAngleDegrees, threads, source } = found;
  return {
    caption: `${heading}, flanks at ${formatExact(flankAngleDegrees)}°: pitch and travel of a screw with one start.`,
    columns: [
      { heading: 'thread', words: true },
      { heading: 'diameter', unit: 'mm' },
      { heading: 'per inch' },
      { heading: 'one turn (the pitch)', unit: 'mm' },
      { heading: 'quarter turn', unit: 'mm' },
      { heading: 'clock minute', unit: 'mm' },
    ],
    rows: threads.map((thread) => ({ cells: cellsOf(thread), sources: [source as SourceId] })),
  };
}

export const threadsIsoCoarse = tableOf('iso-coarse');
export const threadsIsoFine = tableOf('iso-fine');
export const threadsUnc = tableOf('unc');
export const threadsUnf = tableOf('unf');
export const threadsBa = tableOf('ba');
export const threadsBsf = tableOf('bsf');
export const threadsBsw = tableOf('bsw');

export const lockNuts: DataTable = {
  caption: 'Hexagon nuts: the height that the standards allow, and the spanner that fits.',
  columns: [
    { heading: 'size', words: true },
    { heading: 'thin, lowest', unit: 'mm' },
    { heading: 'thin, tallest', unit: 'mm' },
    { heading: 'regular, lowest', unit: 'mm' },
    { heading: 'regular, tallest', unit: 'mm' },
    { heading: 'spanner', unit: 'mm' },
  ],
  rows: regularNuts.map(({ size, heightMinMm, heightMaxMm, acrossFlatsMm }) => {
    const thin = thinNuts.find((nut) => nut.size === size);
    return {
      cells: [
        size,
        thin === undefined ? noFigure : formatExact(thin.heightMinMm),
        thin === undefined ? noFigure : formatExact(thin.heightMaxMm),
        formatExact(heightMinMm),
        formatExact(heightMaxMm),
        formatExact(acrossFlatsMm),
      ],
      sources: ['iso4035', 'iso4032'],
    };
  }),
};
