/*
 * What all practice engines have in common. Each figure says where it comes from; an invented engine needs no
 * better ones, and no real engine was measured.
 */

/** Lower heating value of petrol, J/kg: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), appendix D, from memory. */
export const petrolHeatJPerKg = 44e6;

/** Temperature of the air in the intake, K: 40 °C, warmed by the ports; from memory. */
export const intakeK = 313.15;

/** Share of the fuel's heat that goes into the walls: Heywood (1988), figure 12-4, about a third at low load; from memory. */
export const wallShare = 0.3;

/** Heat that metal and oil take, J/K for each m³ of displacement: some 60 kg of alloy and oil a litre; from memory. */
export const metalJPerKM3 = 65e6;

/** Heat that standing air takes off the fins, W/K for each m³ of displacement, and what a fan adds; from memory. */
export const stillAirWPerKM3 = 60e3;
export const fanWPerKM3 = 50e3;

/** Friction of a cold engine: the warm one's, and so much of it again at 20 °C, which fades with the warmth; from memory. */
export const coldFriction = 0.6;
export const coldFrictionFadesOverK = 25;
export const coldK = 293.15;

/** Warm enough to be set, and too hot to go on, K (80 °C and 160 °C of the metal); common practice has no figure, from memory. */
export const warmK = 353.15;
export const tooHotK = 433.15;

/** Below this speed an engine stops; from memory. */
export const stallRpm = 350;
/** Speed to which the starter brings it; from memory. */
export const startRpm = 1100;

/** Time constants in seconds of the open line and of the needle itself; from memory. */
export const openLineSeconds = 0.006;
export const needleSeconds = 0.03;
export const ventSeconds = 0.05;

/** A tachometer follows with such a lag, seconds; from memory. */
export const tachometerSeconds = 0.25;

/** One step of the integration, seconds: a third of the fastest time constant. */
export const stepSeconds = 0.002;
/** The eye watches the needle for a second. */
export const watchSeconds = 1;
export const watchSamples = 50;
