import { fourStrokeCycleDegrees, revolutionsPerCycle } from '../firing-frequency.ts';
import { motoringFrictionBar } from '../motoring-friction.ts';
import { hydrogenPerCarbon, nitrogenPerOxygen, richestAirRatio, waterGas } from '../rich-exhaust.ts';
import { millimetresPerInch } from '../thread-pitch.ts';
import { triangleHeight } from '../thread-profile.ts';
import { minimumEngagementDiameters } from '../thread-travel-budget-form.ts';
import { describeConstants } from './constant.ts';
import type { ConstantGroup } from './constant.ts';

export const engineConstants: ConstantGroup = {
  title: 'Engines and threads',
  constants: describeConstants(
    {
      fourStrokeCycleDegrees,
      revolutionsPerCycle,
      motoringFrictionBar,
      hydrogenPerCarbon,
      nitrogenPerOxygen,
      waterGas,
      richestAirRatio,
      millimetresPerInch,
      triangleHeight,
      minimumEngagementDiameters,
    },
    {
      fourStrokeCycleDegrees: ['°', 'crank angle of the four strokes', 'exact', 'heywood'],
      revolutionsPerCycle: ['1', 'revolutions of the four strokes', 'exact', 'heywood'],
      motoringFrictionBar: ['bar per (1000 rpm) to the power', 'mean pressure to motor an engine', 'measured', 'heywood'],
      hydrogenPerCarbon: ['1', 'hydrogen to carbon in petrol', 'measured', 'heywood'],
      nitrogenPerOxygen: ['1', 'nitrogen to oxygen in air', 'measured', 'heywood'],
      waterGas: ['1', 'balance of the water gas, as it freezes in the cylinder', 'measured', 'spindt'],
      richestAirRatio: ['1', 'least air, over what the fuel needs, for which the balance holds', 'from memory'],
      millimetresPerInch: ['mm', 'inch', 'exact', 'sp811'],
      triangleHeight: ['pitches', 'height of the triangle of 60° that a thread is cut from', 'exact', 'iso-68'],
      minimumEngagementDiameters: ['diameters', 'least engagement of a screw in light alloy', 'common practice', 'practice'],
    },
  ),
}; // prettier-ignore
