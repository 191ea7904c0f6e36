import { seeSawShares, slipOfANut, worthOfDifferences } from './bench-tables.ts';
import { alarmPointsTable, carbonMonoxideLimitsTable } from './carbon-monoxide-tables.ts';
import type { DataTable } from './data-table.ts';
import { accuracyClassErrors, readingsForADifference, swingAfterDamping } from './gauge-tables.ts';
import { airLeakAtSpeeds } from './leak-tables.ts';
import { gaugeLiquidDensities } from './liquid-tables.ts';
import { depressionLimit, usualReadings } from './pressure-tables.ts';
import {
  lockNuts,
  threadsBa,
  threadsBsf,
  threadsBsw,
  threadsIsoCoarse,
  threadsIsoFine,
  threadsUnc,
  threadsUnf,
} from './thread-tables.ts';

/** Every table of the handbook that is offered as a file, by the name of the file. */
export const dataTables = {
  'see-saw-shares': seeSawShares,
  'slip-of-a-nut': slipOfANut,
  'worth-of-differences': worthOfDifferences,
  'usual-readings': usualReadings,
  'depression-limit-by-altitude': depressionLimit,
  'gauge-liquids': gaugeLiquidDensities,
  'accuracy-classes': accuracyClassErrors,
  'readings-for-a-difference': readingsForADifference,
  'swing-after-damping': swingAfterDamping,
  'air-leak-at-speeds': airLeakAtSpeeds,
  'threads-iso-coarse': threadsIsoCoarse,
  'threads-iso-fine': threadsIsoFine,
  'threads-unc': threadsUnc,
  'threads-unf': threadsUnf,
  'threads-ba': threadsBa,
  'threads-bsf': threadsBsf,
  'threads-bsw': threadsBsw,
  'lock-nuts': lockNuts,
  'carbon-monoxide-limits': carbonMonoxideLimitsTable,
  'carbon-monoxide-alarms': alarmPointsTable,
} as const satisfies Record<string, DataTable>;

export type TableName = keyof typeof dataTables;
