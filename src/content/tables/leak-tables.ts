import {
  formatFixed,
  inUnit,
  inventEngine,
  leakAtSpeeds,
  leakExample,
  pressureUnit,
} from '../../calculators/index.ts';
import { valueOf } from '../value-of.ts';
import type { DataTable } from './data-table.ts';

const unit = pressureUnit('mmHg');
const shown = (pressurePa: number): string => formatFixed(inUnit(pressurePa, unit), 0);

export const airLeakAtSpeeds: DataTable = {
  caption:
    'A level set of four with an air leak at one cylinder, on an invented engine: depressions at three speeds.',
  columns: [
    { heading: 'speed', unit: 'rpm' },
    { heading: 'the leaking one', unit: unit.symbol },
    { heading: 'the other three', unit: unit.symbol },
    { heading: 'apart', unit: unit.symbol },
  ],
  rows: leakAtSpeeds(
    valueOf(inventEngine(leakExample.exercise)),
    leakExample.leakOfIdleOpening,
    leakExample.speedsRpm,
  ).map(({ rpm, leakingPa, soundPa, apartPa }) => ({
    cells: [formatFixed(rpm, 0), shown(leakingPa), shown(soundPa), shown(apartPa)],
    sources: ['simulation'],
  })),
};
