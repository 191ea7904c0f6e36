/** Line drawings of gauges that are compared, of the thread of an adjuster, and of where things stand. */
import { line, threadLines } from './line-figure.ts';
import type { FigurePath, LineFigure } from './line-figure.ts';

/** A round gauge with its pipe below: a ring, a needle and three marks. */
const needle = (x: number, y: number): FigurePath[] => [
  { d: line(x, y, x + 16, y - 16) },
  {
    d: `M${x - 25} ${y + 6}L${x - 30} ${y + 8}M${x} ${y - 26}V${y - 31}M${x + 25} ${y + 6}L${x + 30} ${y + 8}`,
    detail: true,
  },
];

/** A tap across an upright line: two cones, point to point, and a stem with a knob to the right. */
const tap = (x: number, y: number): FigurePath => ({
  d: `M${x - 10} ${y - 16}H${x + 10}L${x - 10} ${y + 16}H${x + 10}ZM${x} ${y}H${x + 24}M${x + 24} ${y - 10}V${y + 10}`,
});

const gauges = [200, 320] as const;

const twoGauges: LineFigure = {
  viewBox: '0 0 400 216',
  title:
    'Two gauges on one take-off. The hose from the intake divides in a T-piece; each branch has its own damping tap and leads to its own gauge, so that both are pulled by the same air at the same moment.',
  paths: [
    { d: 'M16 160H72M16 192H72' },
    { d: 'M44 160V150C44 138 60 138 84 138H190' },
    { d: 'M190 128H210V148H190Z' },
    { d: 'M210 138H320V122M200 128V122' },
    tap(200, 106),
    tap(320, 106),
    { d: 'M200 90V84M320 90V84' },
    ...gauges.flatMap((x) => needle(x, 50)),
    { d: 'M62 138V124M200 148V170M224 106H240M234 50H250', thin: true, detail: true },
  ],
  circles: [
    ...gauges.map((cx) => ({ cx, cy: 50, r: 34 })),
    ...gauges.map((cx) => ({ cx, cy: 50, r: 3, filled: true as const })),
  ],
  callouts: [
    { letter: 'A', x: 57, y: 118, words: 'one take-off, and one hose from it' },
    { letter: 'B', x: 195, y: 186, words: 'T-piece: the branches behind it are equally long' },
    {
      letter: 'C',
      x: 244,
      y: 111,
      words: 'a damping tap for each gauge, set so that both needles just still move',
    },
    { letter: 'D', x: 254, y: 55, words: 'the gauges to be compared' },
  ],
  labels: [],
};

/** From one crest to the next, in the units of the drawing. */
const crest = 6;

const threadInHole: LineFigure = {
  viewBox: '0 0 420 226',
  title:
    'An adjusting screw, cut open along its axis, in a tapped lug with a lock nut above it. Marked are the pitch from one crest to the next, the height of the nut, the length of thread that the lug holds, and the thread that shows beyond it. A dashed outline shows the screw a few turns further in.',
  paths: [
    { d: 'M162 20H258V44H162ZM196 20V30H224V20' },
    { d: 'M192 44V190L198 198H222L228 190V44' },
    { d: threadLines(192, 228, 44, 96), detail: true },
    { d: threadLines(192, 228, 154, 190), detail: true },
    { d: 'M164 72H192M228 72H256V96H228M164 72V96H192' },
    { d: 'M100 96H192M228 96H330V154H228M100 96V154H192' },
    { d: threadLines(192, 228, 96, 154), dash: true },
    { d: 'M192 198L198 216H222L228 198', dash: true },
    {
      d: Array.from({ length: 8 }, (_, k) => line(106 + k * 9, 154, 124 + k * 9, 96)).join(''),
      thin: true,
      detail: true,
    },
    { d: 'M342 96H360M342 154H360M352 96V154M348 105L352 96L356 105M348 145L352 154L356 145', thin: true },
    { d: 'M268 72H286M278 72V96M274 80L278 72L282 80M274 88L278 96L282 88', thin: true },
    { d: 'M236 160H296M236 190H296M286 160V190M282 168L286 160L290 168M282 182L286 190L290 182', thin: true },
    { d: `M150 ${54}H186M150 ${54 + crest}H186M156 40V${54}M156 ${54 + crest}V74`, thin: true },
  ],
  circles: [],
  callouts: [
    { letter: 'P', x: 138, y: 62, words: 'pitch: what one turn goes' },
    { letter: 'h', x: 290, y: 89, words: 'height of the lock nut' },
    { letter: 'e', x: 364, y: 130, words: 'engagement: the thread that holds' },
    { letter: 'ℓ', x: 300, y: 180, words: 'thread that shows beyond the lug' },
    { letter: 'A', x: 232, y: 214, words: 'dashed: the tip after a few turns in' },
  ],
  labels: [],
};

const whereThingsStand: LineFigure = {
  viewBox: '0 0 440 236',
  title:
    'A machine on its main stand, seen from above, outdoors. A large fan blows on the engine from the front. The exhaust leaves to the rear, away from the person, who kneels at the side. An auxiliary tank hangs on the other side, ahead of the engine and clear of the pipe. An extinguisher stands within reach. No wall is near.',
  paths: [
    {
      d: 'M150 112C150 100 176 100 196 104H300C330 100 348 108 348 118C348 128 330 136 300 132H196C176 136 150 136 150 112',
    },
    { d: 'M196 92H250V144H196Z' },
    { d: 'M348 112H392V124H348' },
    { d: 'M100 112H150V124H100C92 124 92 112 100 112' },
    { d: 'M150 84C140 84 134 92 140 100M150 152C140 152 134 144 140 136M146 100V136' },
    { d: 'M30 84H48V152H30Z' },
    { d: 'M30 92L48 108M30 118L48 102M30 144L48 128M30 118L48 134', detail: true },
    { d: 'M58 100H84M76 94L84 100L76 106M58 136H84M76 130L84 136L76 142' },
    { d: 'M250 96H330L420 72M250 88H328L416 64' },
    { d: 'M420 72L416 64M424 62L436 58M420 52L432 46', detail: true },
    { d: 'M170 56H192V80H170ZM181 80V94H204V100' },
    { d: 'M206 176C206 164 238 164 238 176V190H206Z' },
    { d: 'M290 184H306V212H290ZM294 184V178H302V184M302 180H310' },
    { d: 'M39 84V66M181 56V42M400 74V92M306 198H324M238 186H252M150 152V170', thin: true, detail: true },
  ],
  circles: [{ cx: 222, cy: 160, r: 9 }],
  callouts: [
    { letter: 'A', x: 34, y: 60, words: 'fan, in front of the engine' },
    {
      letter: 'B',
      x: 176,
      y: 36,
      words: 'auxiliary tank, higher than the carburettors and clear of the pipe',
    },
    { letter: 'C', x: 395, y: 108, words: 'exhaust, away from the person and from every door and window' },
    { letter: 'D', x: 328, y: 203, words: 'extinguisher for liquid fires, within reach' },
    { letter: 'E', x: 256, y: 191, words: 'the person: sleeves tight, never behind the machine' },
    { letter: 'F', x: 145, y: 186, words: 'handlebars, with the switch that stops the engine' },
  ],
  labels: [],
};

export const instrumentFigures = {
  twoGauges,
  threadInHole,
  whereThingsStand,
} satisfies Record<string, LineFigure>;
