import {
  answerExhaustGasInARoom,
  exhaustGasInARoomFields,
  formatDuration,
  formatExact,
  initialForm,
  limitPpm,
  type ExhaustGasAnswer,
} from '../../calculators/index.ts';

/** Air changes an hour, invented: little, much, and more than a wide-open door can be trusted for. */
const airChanges = ['0.5', '5', '20'] as const;

const answers = airChanges.map((changes): ExhaustGasAnswer => {
  const form = { ...initialForm(exhaustGasInARoomFields), airChanges: changes };
  const answered = answerExhaustGasInARoom(form);
  if (!answered.ok) throw new Error('the example of the room has a problem');
  return answered.answer.answer;
});

const form = initialForm(exhaustGasInARoomFields);
const [shut, , gale] = answers;
if (shut === undefined || gale === undefined) throw new Error('three rooms are drawn');

const passed = (answer: ExhaustGasAnswer, id: string) => {
  const found = answer.limits.find(({ limit }) => limit.id === id);
  if (found?.airMinutes == null) throw new Error(`“${id}” is not passed`);
  return { value: `${formatExact(found.ppm)}\u00a0ppm`, after: formatDuration(found.airMinutes) };
};

/** Drawn across, named by who published it; the ceiling at work lies too low on this scale to be drawn. */
const levels = ['niosh-idlh'].map((id) => {
  const found = shut.limits.find(({ limit }) => limit.id === id);
  if (found === undefined) throw new Error(`no limit “${id}”`);
  return {
    name: `${formatExact(limitPpm(found.limit, 1))}\u00a0ppm, ${found.limit.body}`,
    value: found.ppm,
  };
});

export const exhaust = {
  room: `${form.length.replace(/\D+$/u, '')} × ${form.width.replace(/\D+$/u, '')} × ${form.height}`,
  engine: form.displacement.replace('cm3', 'cm³'),
  speed: form.speed,
  running: `${form.running}\u00a0minutes`,
  changes: airChanges.map((each) => `${each} changes of air an hour`),
  ceiling: passed(shut, 'niosh-ceiling'),
  danger: passed(shut, 'niosh-idlh'),
  galeCeiling: passed(gale, 'niosh-ceiling'),
  input: {
    times: shut.times,
    curves: answers.map(({ ppm }, place) => ({ name: `${airChanges[place]} an hour`, values: ppm })),
    levels,
    scale: 'linear',
    mark: 'point',
  },
} as const;
