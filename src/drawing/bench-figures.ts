/** Line drawings of the things that are handled at the bench: the gauge line, the lock nut, the thread. */
import { box, line } from './line-figure.ts';
import type { FigurePath, LineFigure } from './line-figure.ts';

const takeOffY = [34, 80, 126, 172] as const;

/** A needle valve across a horizontal line: two cones, point to point, and a stem with a knob. */
const tap = (x: number, y: number): FigurePath[] => [
  { d: `M${x - 16} ${y - 10}V${y + 10}L${x + 16} ${y - 10}V${y + 10}Z` },
  { d: `M${x} ${y}V${y - 26}M${x - 11} ${y - 26}H${x + 11}` },
];

const gaugeLine: LineFigure = {
  viewBox: '0 0 400 216',
  title:
    'Four intakes, each with a take-off and a hose to one selector. From the selector one line goes through a damping tap, past a branch with a vent valve, to the gauge. The selector joins carburettor 2 to the gauge; the other three ports are shut.',
  paths: [
    ...takeOffY.flatMap((y): FigurePath[] => [
      { d: `M16 ${y - 14}H52M16 ${y + 14}H52` },
      { d: `M34 ${y - 14}V${y - 20}` },
    ]),
    { d: 'M34 14H96C122 14 128 60 137 76' },
    { d: 'M34 60H84C112 60 116 88 127 94' },
    { d: 'M34 106H84C104 106 112 108 127 107' },
    { d: 'M34 152H84C116 152 122 136 137 124' },
    { d: 'M157 100H184M127 94L157 100' },
    { d: 'M184 100H214M246 100H344V92' },
    ...tap(230, 100),
    { d: 'M290 100V128M280 128H300V152H280ZM290 152V166M290 140H268M268 133V147' },
    { d: line(344, 58, 362, 40) },
    { d: 'M319 71L314 75M326 36L322 31M362 36L366 31M369 71L374 75', detail: true },
    { d: 'M70 14V30M157 126V146M230 124V112M300 146H310M376 58H384', thin: true, detail: true },
  ],
  circles: [
    { cx: 157, cy: 100, r: 30 },
    { cx: 344, cy: 58, r: 34 },
    { cx: 344, cy: 58, r: 3, filled: true },
    { cx: 157, cy: 100, r: 4, filled: true },
  ],
  callouts: [
    { letter: 'A', x: 65, y: 43, words: 'take-off and hose; all hoses the same length and bore' },
    { letter: 'B', x: 153, y: 160, words: 'selector: one carburettor to the gauge, the others shut' },
    { letter: 'C', x: 225, y: 138, words: 'damping tap: nearly shut, so that the needle just still moves' },
    { letter: 'D', x: 314, y: 151, words: 'vent valve: opened between two readings' },
    { letter: 'E', x: 387, y: 63, words: 'gauge' },
  ],
  labels: takeOffY.map((y, index) => ({ text: String(index + 1), x: 2, y: y + 5 })),
};

const screwAndNut: LineFigure = {
  viewBox: '0 0 420 196',
  title:
    'A throttle lever with its plate, seen from the side. An adjusting screw comes down through a lug and rests on the lever. A spanner is on the lock nut. As the nut turns, the screw turns with it and the lever moves to the dashed place.',
  paths: [
    { d: 'M16 48H176M16 160H176' },
    { d: 'M86.5 95.5 72.5 51 79.5 49 93.5 94M105.5 112.5 119.5 157 112.5 159 98.5 114' },
    { d: 'M106 101 281 158a11 11 0 0 1-7 21L101 113' },
    { d: 'M101 114 268 184a10 10 0 0 0 14-5', dash: true },
    { d: 'M267 28V154L274 160 281 154V28' },
    { d: 'M267 40 281 46M267 52 281 58M267 116 281 122M267 128 281 134M267 140 281 146', detail: true },
    { d: 'M262 10H286V28H262ZM274 10V18' },
    { d: 'M248 64H300V86H248ZM265 64V86M283 64V86' },
    { d: 'M236 86H372V108H236ZM372 70V124' },
    { d: 'M236 50C224 34 238 18 252 26M244 19 252 26 245 33' },
    { d: 'M372 78 384 70M372 92 384 84M372 106 384 98M372 120 384 112', thin: true },
    { d: 'M286 20H308M300 76H322M340 108V128M196 132V116M64 70 74 70', thin: true, detail: true },
  ],
  circles: [
    { cx: 96, cy: 104, r: 10 },
    { cx: 96, cy: 104, r: 3 },
  ],
  callouts: [
    { letter: 'A', x: 313, y: 25, words: 'adjusting screw' },
    { letter: 'B', x: 327, y: 81, words: 'lock nut' },
    { letter: 'C', x: 336, y: 143, words: 'lug on the carburettor body' },
    { letter: 'D', x: 191, y: 111, words: 'lever of the throttle spindle; dashed: where the slip puts it' },
    { letter: 'E', x: 50, y: 75, words: 'throttle plate' },
  ],
  labels: [],
};

const threadTravel: LineFigure = {
  viewBox: '0 0 420 150',
  title:
    'An adjusting screw through a tapped lug, with its lock nut. Between head and nut is the thread that can still go in. Behind the lug is the thread that can still come out before too little is left in the lug.',
  paths: [
    { d: box(30, 66, 62, 114) },
    { d: 'M30 90H44', detail: true },
    { d: 'M62 78H176M62 102H176M280 78H344L356 84V96L344 102H280' },
    { d: 'M176 60H200V120H176ZM176 78H200M176 102H200' },
    { d: 'M200 54H280V138H200Z' },
    { d: 'M200 78H280M200 102H280', dash: true },
    {
      d: [72, 84, 96, 108, 120, 132, 144, 156].map((x) => line(x, 78, x + 8, 102)).join(''),
      detail: true,
    },
    { d: [288, 300, 312, 324].map((x) => line(x, 78, x + 8, 102)).join(''), detail: true },
    { d: 'M62 56V26M176 56V26M280 50V26M356 76V26', thin: true, detail: true },
    { d: 'M64 34H174M72 30L64 34L72 38M166 30L174 34L166 38', thin: true },
    { d: 'M282 34H354M290 30L282 34L290 38M346 30L354 34L346 38', thin: true },
    { d: 'M188 120V132M222 54V40', thin: true, detail: true },
  ],
  circles: [],
  callouts: [
    { letter: 'A', x: 114, y: 24, words: 'thread that can still go in: turns left one way' },
    {
      letter: 'B',
      x: 313,
      y: 24,
      words: 'thread that can still come out before the screw leaves the lug: turns left the other way',
    },
    { letter: 'C', x: 183, y: 146, words: 'lock nut' },
    { letter: 'D', x: 217, y: 36, words: 'tapped lug; dashed: the thread that holds the screw' },
  ],
  labels: [],
};

export const benchFigures = { gaugeLine, screwAndNut, threadTravel } satisfies Record<string, LineFigure>;
