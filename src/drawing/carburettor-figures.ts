/** Line drawings of a carburettor and its intake: where air leaks in, where fuel stands, what feeds the idle, what moves. */
import { box, line, threadLines } from './line-figure.ts';
import type { FigurePath, LineFigure } from './line-figure.ts';

/* --- Air leaks ------------------------------------------------------------------------------------------- */

/** An arrow of air from `x`, `y` downwards (or up, if `dy` is negative) to the place where it gets in. */
const inward = (x: number, y: number, dy: number): FigurePath => {
  const back = Math.sign(dy) * 7;
  return { d: `${line(x, y, x, y + dy)}M${x - 5} ${y + dy - back}L${x} ${y + dy}L${x + 5} ${y + dy - back}` };
};

const airLeaks: LineFigure = {
  viewBox: '0 0 420 218',
  title:
    'An intake from left to right: carburettor with its throttle plate, rubber with two clips, joint, cylinder head with the intake valve. Arrows show where air gets in behind the throttle: at the spindle, at the rubber and its clips, at the take-off and its cap, at the hose of a diaphragm, at the joint to the head.',
  paths: [
    { d: 'M18 70H150M18 140H150' },
    { d: 'M30 56V70M30 154V140M18 56H134V70M18 154H134V140', detail: true },
    { d: 'M109 101 86 73M113 97 90 69M117 113 140 141M121 109 144 137' },
    {
      d: 'M134 64H196C204 64 204 66 212 66H262V76M134 64V70M134 146H196C204 146 204 144 212 144H262V134M134 146V140',
    },
    { d: 'M150 70H262M150 140H262', detail: true },
    { d: `${box(152, 58, 164, 152)}${box(238, 60, 250, 150)}` },
    { d: 'M262 50V76M262 134V160M270 50V76M270 134V160M270 50H262M270 160H262' },
    { d: 'M270 70H330C372 70 386 92 386 132M270 140H318C332 140 336 146 336 160' },
    { d: 'M322 166H404L396 156H366V120H358V156H332Z' },
    { d: 'M196 64V42H210V66' },
    { d: 'M190 42V28H216V42Z' },
    { d: 'M196 146V172H210V144M203 172C203 198 172 198 150 198' },
    inward(115, 26, 54),
    inward(226, 26, 36),
    { d: 'M162 35H184M177 30 184 35 177 40' },
    inward(266, 14, 32),
    { d: 'M230 208 206 186M217 187 206 186 208 197' },
    { d: 'M100 88 78 100M150 198H134', thin: true, detail: true },
  ],
  circles: [{ cx: 115, cy: 105, r: 9 }],
  callouts: [
    { letter: 'A', x: 110, y: 22, words: 'worn spindle of the throttle' },
    { letter: 'B', x: 221, y: 22, words: 'rubber: cracked, hardened or not home; clip loose' },
    { letter: 'C', x: 148, y: 40, words: 'take-off: cap missing or split, screw without its washer' },
    { letter: 'D', x: 274, y: 12, words: 'joint to the head: gasket, O-ring or a warped flange' },
    {
      letter: 'E',
      x: 234,
      y: 216,
      words: 'hose to a fuel tap, a boost tank or a control: split, or its diaphragm torn',
    },
    { letter: 'F', x: 62, y: 106, words: 'throttle: only air that passes here obeys the screws' },
  ],
  labels: [],
};

/* --- Float bowl ------------------------------------------------------------------------------------------ */

const floatBowl: LineFigure = {
  viewBox: '0 0 400 226',
  title:
    'A float bowl in section. Fuel comes in through a needle valve that the float shuts as it rises. From the bowl one tube leads up to the nozzle in the bore and a shorter one to the pilot passage. A middle line shows the right level; dashed lines above and below it show a level that is too high and one that is too low.',
  paths: [
    { d: 'M20 22H380M20 66H196M220 66H292M306 66H380' },
    { d: 'M60 84V196H340V84M60 84H84M104 84H196M220 84H292M306 84H340' },
    { d: 'M84 84V66M104 84V66' },
    { d: 'M84 98V84M104 84V98M84 98H90M98 98H104' },
    { d: 'M90 110V102L94 96L98 102V110Z' },
    { d: 'M20 74H84', detail: true },
    { d: 'M112 104H94M112 104L130 120' },
    { d: 'M126 116H178a8 8 0 0 1 8 8V156a8 8 0 0 1 -8 8H126a8 8 0 0 1 -8 -8V124a8 8 0 0 1 8 -8Z' },
    { d: 'M196 66V176H220V66M196 44V66M220 44V66' },
    { d: 'M202 176V184H214V176M292 66V150H306V66M296 150V158H302V150' },
    { d: 'M62 132H118M186 132H196M220 132H292M306 132H338' },
    { d: 'M62 120H110M222 120H290M308 120H338M62 146H116M222 146H290M308 146H338', dash: true },
    { d: 'M322 84V44H336V84', detail: true },
    {
      d: 'M94 92 70 48M152 140 152 206M338 132H354M208 190V208M299 160V208M336 54H352',
      thin: true,
      detail: true,
    },
  ],
  circles: [{ cx: 112, cy: 104, r: 3, filled: true }],
  callouts: [
    { letter: 'A', x: 60, y: 46, words: 'needle valve: the float shuts it as the fuel rises' },
    { letter: 'B', x: 147, y: 222, words: 'float' },
    { letter: 'C', x: 358, y: 137, words: 'level of the manual; dashed: too high (rich) and too low (lean)' },
    { letter: 'D', x: 203, y: 222, words: 'main jet, and above it the nozzle in the bore' },
    { letter: 'E', x: 294, y: 222, words: 'pilot jet, which feeds the idle' },
    { letter: 'F', x: 356, y: 59, words: 'vent of the bowl: a blocked one stops the fuel' },
  ],
  labels: [],
};

/* --- Pilot circuit --------------------------------------------------------------------------------------- */

const pilotCircuit: LineFigure = {
  viewBox: '0 0 420 216',
  title:
    'The bore of a carburettor with its throttle plate nearly shut, air from the left. Under the bore a channel leads from the pilot jet to two places: a hole behind the plate, with a mixture screw in it, and small progression holes at the edge of the plate. Air is let into the channel from the mouth.',
  paths: [
    { d: 'M20 24H400' },
    { d: 'M20 92H60M72 92H206M212 92H222M228 92H236M242 92H276M288 92H400' },
    { d: 'M217 56 186 28M223 50 192 22M233 68 258 92M239 62 268 90' },
    { d: 'M60 92V112H112M72 92V100H112' },
    { d: 'M112 100H206M212 100H222M228 100H236M242 100H276M112 112H134M152 112H288V92M276 100V92' },
    { d: 'M206 100V92M212 100V92M222 100V92M228 100V92M236 100V92M242 100V92', detail: true },
    { d: 'M134 112V170H152V112M139 170V180H147V170' },
    { d: 'M100 190V152H134M152 152H190V190' },
    { d: 'M100 160H134M152 160H190', dash: true },
    { d: 'M282 96 276 112V150H288V112ZM274 150H290V162H274ZM282 152V160' },
    { d: threadLines(276, 288, 122, 148), detail: true },
    { d: 'M34 46H80M72 40 80 46 72 52', detail: true },
    { d: 'M66 86V76M224 116V112M282 84V72M147 184 158 200M290 156H306M252 76H330', thin: true, detail: true },
  ],
  circles: [{ cx: 228, cy: 59, r: 8 }],
  callouts: [
    { letter: 'A', x: 62, y: 72, words: 'air jet: air that breaks up the fuel' },
    { letter: 'B', x: 162, y: 210, words: 'pilot jet; dashed: the fuel in the bowl' },
    { letter: 'C', x: 219, y: 131, words: 'progression holes: they feed as the plate begins to open' },
    { letter: 'D', x: 277, y: 68, words: 'pilot outlet, behind the plate: it feeds the idle' },
    { letter: 'E', x: 310, y: 161, words: 'mixture screw' },
    { letter: 'F', x: 334, y: 81, words: 'throttle plate, nearly shut' },
  ],
  labels: [],
};

/* --- Slide ----------------------------------------------------------------------------------------------- */

const slideAndNeedle: LineFigure = {
  viewBox: '0 0 360 272',
  title:
    'A slide carburettor in section. The cable comes in at the top through its adjuster, a spring pushes the slide down onto the stop screw, and a needle under the slide hangs in the needle jet. The slide runs between two guides that wear.',
  paths: [
    { d: 'M180 8V58' },
    { d: 'M173 12V44H187V12M173 16H187' },
    { d: `${box(166, 36, 194, 44)}${box(120, 50, 240, 62)}` },
    { d: 'M180 62V116', detail: true },
    { d: 'M150 66L210 74L150 82L210 90L150 98L210 106L150 112' },
    { d: 'M132 62V146M228 62V146' },
    { d: 'M138 112H222V202H192L138 194ZM150 112V104M210 112V104' },
    { d: 'M20 146H132M228 146H340' },
    { d: 'M20 222H106M131 222H168M192 222H340' },
    { d: 'M168 222V250H192V222' },
    { d: 'M177 122V200L180 246L183 200V122' },
    { d: 'M170 124H190M170 130H190', detail: true },
    { d: 'M139 196 130 199 97 239M139 196 138 206 107 247' },
    { d: 'M92 235 112 251 106 259 86 243Z', detail: true },
    {
      d: 'M187 26H256M210 90H256M222 160H256M172 127 112 166M192 240H256M92 252 78 258M132 100H108',
      thin: true,
      detail: true,
    },
  ],
  circles: [{ cx: 180, cy: 112, r: 4, filled: true, detail: true }],
  callouts: [
    { letter: 'A', x: 260, y: 31, words: 'cable with its adjuster: it needs play when the grip is shut' },
    { letter: 'B', x: 260, y: 95, words: 'return spring' },
    { letter: 'C', x: 260, y: 165, words: 'slide, with its cut-away towards the mouth' },
    { letter: 'D', x: 98, y: 174, words: 'needle and its clip: the same groove in every carburettor' },
    { letter: 'E', x: 260, y: 245, words: 'needle jet' },
    { letter: 'F', x: 64, y: 266, words: 'stop screw: the slide must come to rest on it' },
    { letter: 'G', x: 94, y: 105, words: 'guide: wear here makes the slide rattle and stick' },
  ],
  labels: [],
};

export const carburettorFigures = { airLeaks, floatBowl, pilotCircuit, slideAndNeedle } satisfies Record<
  string,
  LineFigure
>;
