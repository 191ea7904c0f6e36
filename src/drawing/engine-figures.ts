/** Line drawings of what has to be right in the engine before its intakes are balanced: valve, spark, compression. */
import { box, line } from './line-figure.ts';
import type { FigurePath, LineFigure } from './line-figure.ts';

/* --- Valve clearance ------------------------------------------------------------------------------------- */

/** Seat, guide and spring of a valve, with its stem about `x`. */
const valveSeat = (x: number): FigurePath[] => [
  { d: `M${x - 78} 176H${x - 34}L${x - 26} 164H${x - 46}V140` },
  { d: `M${x + 78} 176H${x + 34}L${x + 26} 164H${x + 46}V140` },
  { d: `M${x - 14} 140V112H${x - 5}V140ZM${x + 14} 140V112H${x + 5}V140Z`, detail: true },
  { d: `M${x - 16} 112L${x + 16} 107L${x - 16} 102L${x + 16} 97L${x - 16} 92` },
];

/** The valve itself: its head at `faceY`, the end of its stem at `topY`, and the retainer of the spring. */
const valve = (x: number, faceY: number, topY: number): FigurePath[] => [
  {
    d: `M${x - 33} ${faceY + 5}H${x + 33}L${x + 34} ${faceY}L${x + 26} ${faceY - 12}H${x + 5}V${topY}H${x - 5}V${faceY - 12}H${x - 26}L${x - 34} ${faceY}Z`,
  },
  { d: box(x - 18, 84, x + 18, 92) },
];

/** A cam with its nose away from the valve, so that its round back faces the stem. */
const cam = (x: number): FigurePath => ({
  d: `M${x - 26} 42A26 26 0 1 0 ${x + 26} 42L${x + 9} 10A10 10 0 0 0 ${x - 9} 10Z`,
});

const valveClearance: LineFigure = {
  viewBox: '0 0 420 216',
  title:
    'Two valves in section, each under a cam that is turned away. On the left there is a gap between cam and stem, and the valve is shut on its seat. On the right the gap is gone: the cam holds the valve a little off its seat, and gas passes on both sides of it.',
  paths: [
    ...valveSeat(110),
    ...valve(110, 176, 76),
    cam(110),
    ...valveSeat(310),
    ...valve(310, 182, 68),
    cam(310),
    { d: 'M273 152 268 186M264 178 268 186 275 181M347 152 352 186M356 178 352 186 345 181' },
    { d: 'M134 24H152M118 72H152M78 172 62 196M340 72H362M352 190 366 198', thin: true, detail: true },
  ],
  circles: [
    { cx: 110, cy: 42, r: 3, filled: true },
    { cx: 310, cy: 42, r: 3, filled: true },
  ],
  callouts: [
    { letter: 'A', x: 156, y: 29, words: 'cam, its nose turned away: the valve should be shut' },
    { letter: 'B', x: 156, y: 77, words: 'clearance: the gap that the feeler gauge measures' },
    { letter: 'C', x: 52, y: 210, words: 'valve shut on its seat' },
    { letter: 'D', x: 366, y: 77, words: 'no clearance left: the cam holds the valve open' },
    { letter: 'E', x: 370, y: 206, words: 'gas passes the seat, and burns it' },
  ],
  labels: [],
};

/* --- Spark ----------------------------------------------------------------------------------------------- */

const winding = (left: number, y: number, turns: number, height: number): string =>
  `M${left} ${y}${Array.from({ length: turns }, (_, k) => `l4 ${k % 2 === 0 ? -height : height}`).join('')}`;

const sparkPath: LineFigure = {
  viewBox: '0 0 420 190',
  title:
    'The way of the spark from left to right: a rotor with a mark passes a trigger, the trigger switches the coil, a lead carries the high voltage to the cap on the plug, and the spark jumps the gap in the cylinder.',
  paths: [
    { d: 'M46 62V72' },
    { d: box(94, 84, 112, 112) },
    { d: 'M112 98H140V66H156' },
    { d: box(156, 40, 222, 100) },
    { d: winding(165, 62, 12, 8), detail: true },
    { d: winding(165, 88, 12, 12), detail: true },
    { d: 'M222 58C262 58 268 18 310 18C330 18 334 26 334 36' },
    { d: 'M320 36H348V62H320Z' },
    { d: 'M326 62V84H342V62M322 84H346V98H322ZM328 98V122H340V98' },
    { d: 'M334 122V128M340 122V136H331' },
    { d: 'M276 106H328M340 106H396M276 106V182M396 106V182' },
    { d: 'M276 156H396' },
    {
      d: 'M46 62 60 44M103 112V132M200 100V120M270 40 262 26M348 48H364M342 132H366',
      thin: true,
      detail: true,
    },
  ],
  circles: [
    { cx: 46, cy: 98, r: 36 },
    { cx: 46, cy: 98, r: 4, filled: true },
  ],
  callouts: [
    { letter: 'A', x: 62, y: 42, words: 'timing mark on the rotor: when the spark comes' },
    { letter: 'B', x: 98, y: 147, words: 'trigger: breaker points or a pick-up' },
    { letter: 'C', x: 196, y: 136, words: 'ignition coil; often one for two cylinders' },
    { letter: 'D', x: 252, y: 22, words: 'lead to the plug' },
    { letter: 'E', x: 368, y: 53, words: 'plug cap, often with a resistor in it' },
    { letter: 'F', x: 370, y: 137, words: 'gap of the plug, inside the cylinder' },
  ],
  labels: [],
};

/* --- Compression ----------------------------------------------------------------------------------------- */

const smallValve = (x: number): FigurePath => ({
  d: `M${x - 20} 82H${x + 20}L${x + 14} 74H${x + 3}V46H${x - 3}V74H${x - 14}Z`,
});

const escape = (x: number, y: number, dx: number, dy: number): string => {
  const [endX, endY] = [x + dx, y + dy];
  const across =
    dx === 0
      ? `M${endX - 5} ${endY - Math.sign(dy) * 7}L${endX} ${endY}L${endX + 5} ${endY - Math.sign(dy) * 7}`
      : '';
  const along =
    dx === 0
      ? ''
      : `M${endX - Math.sign(dx) * 7} ${endY - 5}L${endX} ${endY}L${endX - Math.sign(dx) * 7} ${endY + 5}`;
  return `${line(x, y, endX, endY)}${across}${along}`;
};

const compressionTest: LineFigure = {
  viewBox: '0 0 360 226',
  title:
    'A cylinder in section with a gauge screwed into the plug hole. Both valves are shut and the piston is near the top. Arrows show the three ways by which pressure is lost: past a valve, past the gasket of the head, past the rings.',
  paths: [
    { d: 'M96 206V90M244 206V90' },
    { d: 'M80 206V90H96M260 206V90H244' },
    { d: 'M80 82H114M154 82H164M176 82H186M226 82H260' },
    smallValve(134),
    smallValve(206),
    { d: box(99, 124, 241, 186) },
    { d: 'M99 134H241M99 142H241M99 150H241', detail: true },
    { d: 'M164 82V62H176V82' },
    { d: 'M170 62C170 30 236 20 276 32' },
    { d: line(304, 40, 320, 24) },
    { d: escape(134, 70, 0, -40) },
    { d: escape(236, 86, 44, 0) },
    { d: escape(97.5, 156, 0, 48) },
    { d: 'M316 64 330 74M122 42H106M284 92H296M92 172H66M240 142H284', thin: true, detail: true },
  ],
  circles: [
    { cx: 304, cy: 40, r: 28 },
    { cx: 304, cy: 40, r: 3, filled: true },
  ],
  callouts: [
    { letter: 'A', x: 334, y: 82, words: 'compression gauge, in the hole of the plug' },
    { letter: 'B', x: 92, y: 47, words: 'past a valve that does not seat' },
    { letter: 'C', x: 300, y: 97, words: 'past the gasket of the head' },
    { letter: 'D', x: 52, y: 177, words: 'past the rings, into the crankcase' },
    { letter: 'E', x: 288, y: 147, words: 'rings: oil on them seals them for a moment' },
  ],
  labels: [],
};

export const engineFigures = { valveClearance, sparkPath, compressionTest } satisfies Record<
  string,
  LineFigure
>;
