import { answerFlutterAndRepeats, flutterAndRepeatsFields, initialForm } from '../../calculators/index.ts';
import { flutterFigure } from '../tables/gauge-tables.ts';

/** Invented: the working speed, and a tap that is shut a little further than in the example of the calculator. */
const changed = { rpm: '2000', damping: '0.6 s' } as const;
const idle = { ...changed, rpm: '1000' } as const;
const form = { ...initialForm(flutterAndRepeatsFields), ...changed };
const answered = answerFlutterAndRepeats(form);
if (!answered.ok) throw new Error('the example of the flutter has a problem');

export const flutter = {
  speed: `${changed.rpm}\u00a0rpm`,
  idle: `${idle.rpm}\u00a0rpm`,
  settles: changed.damping,
  swing: `${form.flutter}\u00a0${form.unit}`,
  intake: flutterFigure(changed, 'intake'),
  engine: flutterFigure(changed, 'firing'),
  cylinders: form.cylinders,
  share: flutterFigure(changed, 'share'),
  left: flutterFigure(changed, 'left'),
  idleShare: flutterFigure(idle, 'share'),
  idleLeft: flutterFigure(idle, 'left'),
  wait90: flutterFigure(changed, 'wait-90'),
  wait99: flutterFigure(changed, 'wait-99'),
  wait999: flutterFigure(changed, 'wait-99.9'),
  /** For the drawing. */
  drawn: answered.answer,
} as const;
