import type { AnswerLine } from './answer-line.ts';
import { whoCarboxyhaemoglobinPercent } from './carbon-monoxide-limits.ts';
import { cfkConstants } from './coburn-forster-kane-constants.ts';
import { runOutdoors } from './exhaust-gas-cautions.ts';
import type { ExhaustGasAnswer } from './exhaust-gas-in-a-room.ts';
import { alarmWords, limitLevels, limitLine } from './exhaust-gas-limit-words.ts';
import type { Level, LimitLine } from './exhaust-gas-limit-words.ts';
import { formatDuration } from './format-duration.ts';
import { formatExact, formatSignificant } from './format-number.ts';
import type { NumberStyle } from './format-number.ts';

export type BloodLine = {
  readonly after: string;
  readonly ppm: string;
  readonly rest: string;
  readonly lightWork: string;
};

export type ExhaustGasWords = {
  readonly lead: string;
  readonly bloodLead: string;
  readonly announcement: string;
  readonly lines: readonly AnswerLine[];
  readonly limits: readonly LimitLine[];
  readonly alarm: string;
  readonly blood: readonly BloodLine[];
  readonly bloodCaption: string;
  /** What a plot shows, for those who do not see it. */
  readonly airPlot: string;
  readonly bloodPlot: string;
  /** Limits that the plot of the air draws across. */
  readonly levels: readonly Level[];
  /** What the plots are drawn from. */
  readonly answer: ExhaustGasAnswer;
};

const activityWords = { rest: 'at rest', 'light work': 'at light work' } as const;

/** The answer in words and digits. Rounding happens here, once. */
export function describeExhaustGasInARoom(answer: ExhaustGasAnswer): ExhaustGasWords {
  const { given, finalPpm, times, percent, limits } = answer;
  const style: NumberStyle = { mark: given.mark };
  const figure = (value: number, digits: number): string =>
    value === 0 ? '0' : formatSignificant(value, digits, style);
  const ppm = (value: number): string => `${figure(value, 2)}\u00a0ppm`;
  const share = (value: number): string => `${figure(value, 2)}\u00a0%`;
  const last = (values: readonly number[]): number => values[values.length - 1]!;

  const time = formatDuration(given.runningMinutes);
  const lead = leadOf(answer, time, ppm);
  const bloodLead = `After ${time} ${activityWords[given.activity]} the equation gives ${share(last(percent[given.activity]))} carboxyhaemoglobin in a standard man who does not smoke. The WHO guidelines of 2000 are made so that ${formatExact(whoCarboxyhaemoglobinPercent, style)}\u00a0% is not passed.`;
  return {
    lead,
    bloodLead,
    announcement: `${lead} ${bloodLead} ${runOutdoors}`,
    lines: linesOf(answer, time, figure),
    limits: limits.map((passed) => limitLine(passed, ppm, style)),
    alarm: alarmWords(answer, ppm),
    blood: [1, 2, 3, 4].map((quarter) => {
      const at = ((times.length - 1) * quarter) / 4;
      return {
        after: formatDuration(times[at]!),
        ppm: ppm(answer.ppm[at]!),
        rest: share(percent.rest[at]!),
        lightWork: share(percent['light work'][at]!),
      };
    }),
    bloodCaption: `Carboxyhaemoglobin by the nonlinear equation of Coburn, Forster and Kane, from ${share(cfkConstants.startOfNonSmoker.value)} at the start.`,
    airPlot: `Concentration against time, from ${ppm(given.initialPpm)} at the start to ${ppm(finalPpm)} after ${time}, with published limits as lines. The tables give the figures.`,
    bloodPlot: `Carboxyhaemoglobin against time: after ${time} ${share(last(percent.rest))} at rest, ${share(last(percent['light work']))} at light work. The table gives the figures.`,
    levels: limitLevels(limits, ppm),
    answer,
  };
}

/** The end, and the highest ceiling that is passed on the way; or what it does not mean that none is. */
function leadOf({ limits, finalPpm, given }: ExhaustGasAnswer, time: string, ppm: (value: number) => string) {
  const end = `After ${time} this sum has ${ppm(finalPpm)} of carbon monoxide in the air of the room.`;
  const [worst] = limits
    .flatMap(({ limit, ppm: level, airMinutes }) =>
      limit.averagingMinutes === null && airMinutes !== null && airMinutes <= given.runningMinutes
        ? [{ limit, level, airMinutes }]
        : [],
    )
    .toSorted((a, b) => b.level - a.level);
  if (worst === undefined) return `${end} That is no permission: it does not know where your head is.`;
  const { limit, level, airMinutes } = worst;
  const when = airMinutes === 0 ? 'from the start' : `within ${formatDuration(airMinutes)}`;
  return `${end} It is past ${ppm(level)} ${when}: ${limit.meaning} (${limit.body}).`;
}

function linesOf(
  answer: ExhaustGasAnswer,
  time: string,
  figure: (value: number, digits: number) => string,
): readonly AnswerLine[] {
  const line = (id: string, label: string, value: number, unit: string, digits: number, note?: string) => ({
    id,
    label,
    text: `${figure(value, digits)}\u00a0${unit}`.trim(),
    copied: `${figure(value, digits)} ${unit}`.trim(),
    ...(note !== undefined && { note }),
  });
  const { engine, steadyPpm, afterwards } = answer;
  return [
    line('final', `In the air after ${time}`, answer.finalPpm, 'ppm', 2),
    line('mass', 'The same by mass', answer.finalMgPerM3, 'mg/m³', 2),
    line('source', 'Carbon monoxide given off', answer.carbonMonoxideLPerMin, 'L/min', 3),
    ...(engine === null
      ? []
      : [
          line('exhaust', 'Dry exhaust of the engine', engine.exhaustLPerMin, 'L/min', 3),
          line('mixture', 'Its mixture, λ', engine.airRatio, '', 2, 'air over what the fuel needs'),
        ]),
    line('room', 'Air in the room', answer.given.volumeM3, 'm³', 3),
    line('rise', 'First rise', answer.air.ratePpmPerMin, 'ppm/min', 2),
    ...(steadyPpm === null
      ? []
      : [line('steady', 'Where it would end', steadyPpm, 'ppm', 2, 'if the engine ran on')]),
    line('afterwards', 'An hour after the engine stops', afterwards.ppm, 'ppm', 2, 'nothing opened'),
  ];
}
