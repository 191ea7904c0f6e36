import * as practice from '../practice/constants.ts';
import { describeConstants } from './constant.ts';
import type { ConstantGroup } from './constant.ts';

/** What the invented engines have in common. */
export const practiceConstants: ConstantGroup = {
  title: 'Practice engine, invented',
  constants: describeConstants(practice, {
    petrolHeatJPerKg: ['J/kg', 'heat of petrol', 'measured', 'heywood'],
    intakeK: ['K', 'air in the intake', 'from memory'],
    wallShare: ['1', 'share of the heat that goes into the walls', 'measured', 'heywood'],
    metalJPerKM3: ['J/(K·m³)', 'heat that metal and oil take, by displacement', 'from memory'],
    stillAirWPerKM3: ['W/(K·m³)', 'what standing air takes off the fins, by displacement', 'from memory'],
    fanWPerKM3: ['W/(K·m³)', 'what a fan adds', 'from memory'],
    coldFriction: ['1', 'friction of a cold engine on top of the warm one’s', 'from memory'],
    coldFrictionFadesOverK: ['K', 'warmth over which that fades', 'from memory'],
    coldK: ['K', 'a cold engine', 'from memory'],
    warmK: ['K', 'warm enough to be set', 'from memory'],
    tooHotK: ['K', 'too hot to go on', 'from memory'],
    stallRpm: ['rpm', 'speed below which it stops', 'from memory'],
    startRpm: ['rpm', 'speed that the starter gives it', 'from memory'],
    openLineSeconds: ['s', 'time constant of the open line', 'from memory'],
    needleSeconds: ['s', 'time constant of the needle', 'from memory'],
    ventSeconds: ['s', 'time constant of the vented line', 'from memory'],
    tachometerSeconds: ['s', 'lag of the tachometer', 'from memory'],
    stepSeconds: ['s', 'step of the integration', 'from memory'],
    watchSeconds: ['s', 'how long the eye watches the needle', 'from memory'],
    watchSamples: ['1', 'looks in that time', 'from memory'],
  }),
}; // prettier-ignore
