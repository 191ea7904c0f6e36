/**
 * The five generations of linkage as line drawings: what is fixed, and what each screw moves.
 * Mechanisms, not products: parts are drawn where they can be seen, not where a maker puts them.
 */
import type { Generation } from '../calculators/index.ts';
import { box, line, threadLines } from './line-figure.ts';
import type { FigureCircle, FigurePath, Label, LineFigure } from './line-figure.ts';

const viewBox = '0 0 360 240';

const numbered = (xs: readonly number[], y: number): Label[] =>
  xs.map((x, index) => ({ text: String(index + 1), x: x - 4, y }));

/* --- One cable and one stop screw each ------------------------------------------------------------------ */

const cabledX = [112, 264] as const;

const cabledCarburettor = (x: number): FigurePath[] => [
  // Chamber and bore; the bore is open where the stop screw comes in.
  { d: `M${x - 31} 104V162A36 36 0 0 0 ${x - 31.6} 197.3M${x - 28.2} 202.4A36 36 0 0 0 ${x + 31} 162V104` },
  { d: box(x - 24, 126, x + 24, 195) }, // slide
  { d: box(x - 36, 94, x + 36, 104) }, // cap
  { d: `M${x - 7} 80V62H${x + 7}V80M${x - 7} 90V94M${x + 7} 90V94` }, // adjuster of the cable
  { d: box(x - 14, 80, x + 14, 90) }, // its lock nut
  { d: threadLines(x - 7, x + 7, 64, 80), detail: true },
  { d: line(x, 104, x, 126), detail: true }, // inner cable, into the slide
  // Stop screw: its point is under the edge of the slide.
  { d: `M${x - 24} 196L${x - 35} 198L${x - 66} 214M${x - 61} 223L${x - 31} 207L${x - 24} 196` },
  { d: `M${x - 69} 206L${x - 59} 226L${x - 67} 230L${x - 77} 210Z` },
];

const separateCables: LineFigure = {
  viewBox,
  title:
    'Two carburettors, each with its own cable from one twist grip. On top of each is a cable adjuster with a lock nut. Below each is a stop screw that holds the slide up at idle.',
  paths: [
    { d: box(138, 6, 222, 26) },
    { d: 'M152 6V26M166 6V26M180 6V26M194 6V26M208 6V26', detail: true },
    { d: 'M168 26C168 48 112 30 112 62M192 26C192 48 264 30 264 62' },
    ...cabledX.flatMap(cabledCarburettor),
    { d: 'M248 40L292 28M280 85H306M288 150H314M204 221L222 228', thin: true, detail: true },
  ],
  circles: cabledX.map((cx) => ({ cx, cy: 136, r: 4, filled: true, detail: true })),
  callouts: [
    { letter: 'A', x: 296, y: 31, words: 'cable from the twist grip, one for each carburettor' },
    { letter: 'B', x: 310, y: 90, words: 'cable adjuster with its lock nut: when this slide begins to lift' },
    { letter: 'C', x: 318, y: 155, words: 'slide, the throttle of this carburettor' },
    { letter: 'D', x: 226, y: 234, words: 'stop screw: how far this slide stays open at idle' },
  ],
  labels: numbered(cabledX, 234),
};

/* --- Ganged slides on one shaft -------------------------------------------------------------------------- */

const gangedX = [45, 135, 225, 315] as const;

/** One carburettor of a ganged set, with an adjuster or with a plain link that nothing can change. */
const gangedCarburettor = (x: number, footY: number, adjuster: boolean): FigurePath[] => [
  { d: `M${x - 24} 132V177A28 28 0 1 0 ${x + 24} 177V132` }, // chamber and bore
  { d: box(x - 18, 156, x + 18, footY) }, // slide
  { d: box(x - 11, 44, x + 11, 72) }, // arm on the shaft
  ...(adjuster
    ? [
        { d: `M${x - 5} 72V84M${x + 5} 72V84M${x - 5} 97V156M${x + 5} 97V156` },
        { d: box(x - 14, 84, x + 14, 97) },
        { d: threadLines(x - 5, x + 5, 99, 130), detail: true as const },
      ]
    : [{ d: `M${x - 9} 72V156M${x + 9} 72V156` }]),
];

/** Shaft, pulley with the cable, and the idle-speed screw that the pulley comes to rest on. */
const shaftAndPulley: FigurePath[] = [
  { d: 'M34 52H8V64H34M56 52H124M56 64H124M146 52H171M146 64H171' },
  { d: 'M189 52H214M189 64H214M236 52H304M236 64H304M326 52H352V64H326' },
  { d: box(171, 30, 189, 84) },
  { d: 'M180 30V4' },
  { d: 'M174 120V94L180 85L186 94V120' },
  { d: box(164, 120, 196, 131) },
];

const gangedPaths = (footY: readonly number[], fixed?: number): FigurePath[] => [
  ...gangedX.flatMap((x, index) => gangedCarburettor(x, footY[index] ?? 0, index + 1 !== fixed)),
  ...shaftAndPulley,
];

const allAdjustable: LineFigure = {
  viewBox,
  title:
    'Four carburettors on one shaft, which one cable turns. Between the shaft and each of the four slides is an adjuster with a lock nut. One idle-speed screw holds the whole shaft.',
  paths: [
    ...gangedPaths([203, 210, 210, 215]),
    { d: 'M8 210H352', dash: true, detail: true },
    { d: 'M180 14L204 14M258 52L266 30M329 90H338M174 107H164M333 170L346 162', thin: true, detail: true },
  ],
  circles: [],
  callouts: [
    { letter: 'A', x: 208, y: 19, words: 'the one cable, on the pulley of the shaft' },
    { letter: 'B', x: 264, y: 26, words: 'shaft: it moves all four slides by the same amount' },
    {
      letter: 'C',
      x: 342,
      y: 95,
      words: 'adjuster and lock nut, one on every carburettor: moves this slide alone',
    },
    { letter: 'D', x: 151, y: 112, words: 'idle-speed screw: moves all four together' },
    {
      letter: 'E',
      x: 349,
      y: 164,
      words: 'slide; dashed: the level of the two that are closest, here 2 and 3',
    },
  ],
  labels: numbered(gangedX, 239),
};

const fixedCircles: FigureCircle[] = [86, 144].map((cy) => ({ cx: 135, cy, r: 4, filled: true }));

const fixedReference: LineFigure = {
  viewBox,
  title:
    'Four carburettors on one shaft. Carburettors 1, 3 and 4 have an adjuster with a lock nut. Carburettor 2 hangs on a plain link with two pins and has no adjuster: it is the reference, and the other three are brought to its level.',
  paths: [
    ...gangedPaths([203, 210, 215, 206], 2),
    { d: 'M8 210H352', dash: true, detail: true },
    { d: 'M126 114L102 114M329 90H338M174 107H164', thin: true, detail: true },
  ],
  circles: fixedCircles,
  callouts: [
    {
      letter: 'A',
      x: 90,
      y: 119,
      words: 'plain link: this carburettor has no adjuster, so it is the reference',
    },
    { letter: 'B', x: 342, y: 95, words: 'adjuster and lock nut: brings this slide to the reference' },
    { letter: 'C', x: 151, y: 112, words: 'idle-speed screw: moves all four, the reference with them' },
    { letter: 'D', x: 2, y: 205, words: 'dashed: the level of the reference' },
  ],
  labels: numbered(gangedX, 239),
};

/* --- Screws between neighbours -------------------------------------------------------------------------- */

/** Bore and throttle plate seen from the mouth: the plate is an ellipse, the gaps above and below it are open. */
const butterfly = (x: number): FigurePath[] => [
  { d: `M${x - 26} 132a26 26 0 1 0 52 0a26 26 0 1 0 -52 0` },
  { d: `M${x - 26} 132a26 18 0 1 0 52 0a26 18 0 1 0 -52 0` },
];

/** Between two spindles: a tab on the left one, a screw with its nut in the tab of the right one. */
const coupling = (x: number): FigurePath[] => [
  { d: `M${x - 19} 132H${x - 17}M${x + 17} 132H${x + 19}` },
  { d: `M${x + 17} 142V70H${x - 10}V78H${x + 9}V142Z` },
  { d: box(x - 9, 59, x + 9, 70) },
  { d: `M${x - 5} 59V38H${x + 5}V59M${x - 5} 78V94H${x + 5}V78` },
  { d: line(x, 38, x, 46), detail: true }, // slot
];

const leftLever = (x: number, footY: number): FigurePath => ({
  d: `M${x - 17} ${footY}V94H${x + 6}V102H${x - 9}V${footY}Z`,
});

const pairedScrews: LineFigure = {
  viewBox,
  title:
    'Four throttles on four short spindles. Between neighbours a tab of one spindle rests on a screw in a tab of the next. Screw A moves carburettor 1 alone, screw B moves 3 and 4 together, screw C moves 4 alone. The cable pulls the lever of spindle 2.',
  paths: [
    ...gangedX.flatMap(butterfly),
    ...[90, 180, 270].flatMap(coupling),
    leftLever(90, 142),
    leftLever(180, 178),
    leftLever(270, 142),
    { d: 'M167 171V236' },
    { d: 'M19 184V191H71V184M289 184V191H341V184M199 214V221H341V214', dash: true, detail: true },
    { d: 'M167 214L152 214', thin: true, detail: true },
  ],
  circles: [{ cx: 167, cy: 170, r: 3, filled: true }],
  callouts: [
    { letter: 'A', x: 85, y: 30, words: 'screw between 1 and 2: moves 1 alone (dashed bracket)' },
    { letter: 'B', x: 175, y: 30, words: 'screw between the pairs: moves 3 and 4 together' },
    { letter: 'C', x: 265, y: 30, words: 'screw between 3 and 4: moves 4 alone' },
    { letter: 'D', x: 138, y: 219, words: 'cable, on the lever of spindle 2' },
  ],
  labels: [
    ...numbered(gangedX, 137),
    { text: 'A', x: 40, y: 208 },
    { text: 'C', x: 310, y: 208 },
    { text: 'B', x: 265, y: 238 },
  ],
};

/* --- Bypass screws -------------------------------------------------------------------------------------- */

const bodyX = [78, 238] as const;

/** A throttle body in section, air from above: plate on its spindle, bypass on the right, taper screw in it. */
const throttleBody = (x: number, taperY: number): FigurePath[] => [
  { d: `M${x - 32} 24V226` },
  {
    d: `M${x + 32} 24V80H${x + 54}M${x + 64} 80H${x + 68}V114L${x + 63} 120L${x + 68} 126V188H${x + 32}V226`,
  },
  { d: `M${x + 32} 172H${x + 50}V126L${x + 55} 120L${x + 50} 114V96H${x + 32}Z` },
  {
    d: `M${x - 6} 131L${x - 31} 138L${x - 30} 143L${x - 5} 136M${x + 5} 128L${x + 30} 121L${x + 31} 126L${x + 6} 133`,
  },
  { d: `M${x + 54} 44V${taperY}L${x + 59} ${taperY + 28}L${x + 64} ${taperY}V44` },
  { d: box(x + 50, 34, x + 68, 44) },
  { d: `M${x + 59} 34V39`, detail: true },
  { d: threadLines(x + 54, x + 64, 48, 82), detail: true },
];

const bypassScrews: LineFigure = {
  viewBox,
  title:
    'Two throttle bodies in section, air from above. The plates sit on one spindle and move together. Beside each plate is a bypass with a taper screw in it. The screw of body 1 is seated, the screw of body 2 is partly open and lets air past its plate.',
  paths: [
    ...throttleBody(78, 114),
    ...throttleBody(238, 98),
    { d: 'M112 132H127M147 132H206M272 132H287M307 132H340', dash: true },
    ...bodyX.map((x): FigurePath => ({ d: `M${x} 22V58M${x - 7} 50L${x} 58L${x + 7} 50` })),
    { d: 'M147 39L158 33M307 39L318 33M306 180H318M330 132V124', thin: true, detail: true },
  ],
  circles: bodyX.map((cx) => ({ cx, cy: 132, r: 6 })),
  callouts: [
    { letter: 'A', x: 162, y: 38, words: 'bypass screw of 1, seated: often the one to leave alone' },
    { letter: 'B', x: 322, y: 38, words: 'bypass screw of 2, partly open' },
    { letter: 'C', x: 322, y: 185, words: 'bypass: air that goes round the plate' },
    {
      letter: 'D',
      x: 325,
      y: 119,
      words: 'one spindle: the plates move together and stay as the factory set them',
    },
  ],
  labels: numbered(bodyX, 239),
};

export const linkageDrawings: Readonly<Record<Generation, LineFigure>> = {
  'separate-cables': separateCables,
  'all-adjustable': allAdjustable,
  'fixed-reference': fixedReference,
  'paired-screws': pairedScrews,
  'bypass-screws': bypassScrews,
};
