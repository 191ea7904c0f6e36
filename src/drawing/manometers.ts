/** Line drawings of the three manometers, with the difference of the levels and the catch pots. */
import { box, line } from './line-figure.ts';
import type { Callout, FigurePath, LineFigure } from './line-figure.ts';

export type ManometerKind = 'u-tube' | 'well' | 'inclined';
/** Whether the second side goes to another carburettor or stands open to the air. */
export type ManometerSides = 'difference' | 'depression';

const top = 24;

/** A catch pot on the way from a tube's end at (`fromX`, `fromY`) to an engine at `toX`: in and out at its top. */
function catchPot(fromX: number, fromY: number, potX: number, toX: number): FigurePath[] {
  const away = Math.sign(toX - fromX);
  const near = potX - 10 * away;
  const far = potX + 10 * away;
  return [
    { d: box(potX - 20, 54, potX + 20, 104) },
    { d: `M${fromX} ${fromY}V${top}H${near}V70` },
    { d: `M${far} 54V${top}H${toX}` },
  ];
}

/** An upright measure with an arrow at both ends, between two levels that are carried over by dashed lines. */
const measure = (x: number, high: number, low: number): FigurePath => ({
  d: `M${x} ${high}V${low}M${x - 4} ${high + 9}L${x} ${high}L${x + 4} ${high + 9}M${x - 4} ${low - 9}L${x} ${low}L${x + 4} ${low - 9}`,
});

/** Lines that fill an upright tube with liquid. */
const liquid = (left: number, right: number, from: number, to: number): FigurePath => ({
  d: Array.from({ length: Math.floor((to - from) / 8) }, (_, k) =>
    line(left + 2, from + 8 * (k + 1), right - 2, from + 8 * (k + 1)),
  ).join(''),
  thin: true,
});

const engine = (x: number): Callout => ({
  letter: 'A',
  x,
  y: 18,
  words: 'to a take-off of the engine, at its highest place',
});
const pot = (x: number): Callout => ({
  letter: 'B',
  x,
  y: 94,
  words: 'catch pot, in and out at the top: it holds twice all the liquid',
});
const level = (x: number, y: number): Callout => ({
  letter: 'h',
  x,
  y,
  words: 'difference of the levels, measured upright; the side that is pulled more stands higher',
});

function uTube(sides: ManometerSides): LineFigure {
  const open = sides === 'depression';
  return {
    viewBox: '0 0 440 216',
    title: `A U-tube, half full. Its left leg goes by way of a catch pot to the engine and its level stands higher. Its right leg ${open ? 'is open to the air' : 'goes by way of a second catch pot to another carburettor'}. The difference of the two levels is marked h.`,
    paths: [
      { d: 'M180 40V164A40 40 0 0 0 260 164V40M196 40V164A24 24 0 0 0 244 164V40' },
      { d: 'M180 84H196M244 146H260' },
      liquid(180, 196, 84, 164),
      liquid(244, 260, 146, 164),
      { d: 'M188 164A32 32 0 0 0 252 164', thin: true },
      { d: 'M196 84H232M208 146H244', dash: true },
      measure(220, 84, 146),
      ...catchPot(188, 40, 100, 24),
      ...(open ? [] : catchPot(252, 40, 340, 416)),
    ],
    circles: [],
    callouts: [engine(14), pot(95), level(226, 120), ...(open ? [air(248, 30)] : [])],
    labels: [],
  };
}

const air = (x: number, y: number): Callout => ({ letter: 'C', x, y, words: 'open to the air' });

const well = (left: number): FigurePath[] => [
  { d: `M${left} 158V118H${left + 90}V196H${left}V176` },
  { d: `M${left} 146H${left + 90}` },
  {
    d: `M${left + 6} 154H${left + 84}M${left + 6} 166H${left + 84}M${left + 6} 178H${left + 84}`,
    thin: true,
  },
];

/** What leaves the lid of the well: a line to another carburettor, or a short open end. */
const lid = (x: number, sides: ManometerSides): FigurePath[] =>
  sides === 'depression' ? [{ d: line(x, 118, x, 96) }] : catchPot(x, 118, x + 80, x + 150);

const wellWords: Omit<Callout, 'x' | 'y'> = {
  letter: 'D',
  words: 'well: wide, so that its own level hardly falls',
};

function upright(sides: ManometerSides): LineFigure {
  const open = sides === 'depression';
  return {
    viewBox: '0 0 480 216',
    title: `A wide well with an upright tube out of its foot. The tube goes by way of a catch pot to the engine. The well ${open ? 'is open to the air' : 'goes by way of a second catch pot to another carburettor'}. The difference between the level in the tube and that in the well is marked h.`,
    paths: [
      { d: 'M180 40V176H256M196 40V158H256' },
      { d: 'M180 76H196' },
      liquid(180, 196, 76, 166),
      ...well(256),
      { d: 'M196 76H236M208 146H256', dash: true },
      measure(222, 76, 146),
      ...catchPot(188, 40, 100, 24),
      ...lid(301, sides),
    ],
    circles: [],
    callouts: [
      engine(14),
      pot(95),
      level(228, 114),
      ...(open ? [air(296, 88)] : []),
      { ...wellWords, x: 352, y: 152 },
    ],
    labels: [],
  };
}

function inclined(sides: ManometerSides): LineFigure {
  const open = sides === 'depression';
  return {
    viewBox: '0 0 480 216',
    title: `A wide well with a tube that leans out of its foot. The upper end of the tube goes by way of a catch pot to the engine. The well ${open ? 'is open to the air' : 'goes by way of a second catch pot to another carburettor'}. What is read is the way of the level along the tube; the upright difference is marked h.`,
    paths: [
      { d: 'M256 176 112 94M256 158 121 81' },
      { d: 'M166 107 158 120' },
      { d: 'M170 117 254 165', thin: true },
      ...well(256),
      { d: 'M143 113H84M256 146H84', dash: true },
      measure(92, 113, 146),
      ...catchPot(116, 88, 60, 20),
      ...lid(301, sides),
    ],
    circles: [],
    callouts: [
      engine(14),
      pot(55),
      level(74, 134),
      { letter: 'L', x: 205, y: 118, words: 'what is read: the way of the level along the tube' },
      ...(open ? [air(296, 88)] : []),
      { ...wellWords, x: 352, y: 152 },
    ],
    labels: [],
  };
}

const drawings = { 'u-tube': uTube, well: upright, inclined };

/** The drawing of a manometer. */
export const manometerDrawing = (kind: ManometerKind, sides: ManometerSides): LineFigure =>
  drawings[kind](sides);
