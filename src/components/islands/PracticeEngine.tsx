import { useEffect, useState } from 'preact/hooks';
import {
  answerPracticeEngine,
  calculatorLink,
  inventEngine,
  practiceEngineFields,
  pressureUnits,
  startRun,
} from '../../calculators/index.ts';
import type { DescribedExercise, LessonId, PracticeRun } from '../../calculators/index.ts';
import { decimalMark } from '../../device/decimal-mark.ts';
import { readReachedLessons } from '../../device/reached-lessons.ts';
import { readSetting, writeSetting } from '../../device/settings.ts';
import { later } from './arriving/Later.tsx';
import { useCalculator } from './calculator/use-calculator.ts';
import { SetUpView } from './practice-engine/SetUpView.tsx';
import type { WaysToWork } from './practice-engine/WayQuestions.tsx';

const EngineView = later(async () => (await import('./practice-engine/EngineView.tsx')).EngineView);
const ReviewView = later(async () => (await import('./practice-engine/ReviewView.tsx')).ReviewView);

/** An exercise that was begun, as it stands; `number` tells one beginning from the next. */
type Begun = {
  readonly number: number;
  readonly described: DescribedExercise;
  readonly run: PracticeRun;
  readonly truth: boolean;
};

/** From the choice of an exercise to the engine and to the truth about it. */
export default function PracticeEngine() {
  const calculator = useCalculator({
    slug: 'practice-engine',
    fields: practiceEngineFields,
    answer: answerPracticeEngine,
    link: calculatorLink(practiceEngineFields),
  });
  const [begun, setBegun] = useState<Begun | null>(null);
  const [unit, setUnit] = useState('mmHg');
  const [mark, setMark] = useState<'point' | 'comma'>('point');
  const [ways, setWays] = useState<WaysToWork>({ inWords: false, beside: false });
  const [reached, setReached] = useState<readonly LessonId[]>([]);

  useEffect(() => {
    setMark(decimalMark());
    setUnit(pressureUnits.find(({ id }) => id === readSetting('practice-unit'))?.id ?? 'mmHg');
    setWays({
      inWords: readSetting('practice-in-words') === 'yes',
      beside: readSetting('practice-beside') === 'yes',
    });
    const leave = (): void => setBegun(null);
    addEventListener('hashchange', leave);
    return () => removeEventListener('hashchange', leave);
  }, []);
  useEffect(() => {
    if (begun === null) setReached(readReachedLessons());
  }, [begun]);

  const figures = { unit, mark };
  const begin = (described: DescribedExercise): void => {
    const engine = inventEngine(described.exercise);
    if (!engine.ok) throw new Error(`no engine: ${engine.problem.kind}`); // the form has been checked
    const run = startRun(described.exercise, engine.value);
    setBegun((before) => ({ number: (before?.number ?? 0) + 1, described, run, truth: false }));
    scrollTo(0, 0);
  };
  const beginLesson = (lesson: LessonId): void => {
    const form = { ...calculator.form, lesson };
    calculator.change({ lesson });
    const answer = answerPracticeEngine(form);
    if (answer.ok) begin(answer.answer);
  };
  const keepWays = (chosen: WaysToWork): void => {
    setWays(chosen);
    writeSetting('practice-in-words', chosen.inWords ? 'yes' : 'no');
    writeSetting('practice-beside', chosen.beside ? 'yes' : 'no');
  };
  const leave = (): void => {
    setBegun(null);
    scrollTo(0, 0);
  };

  if (begun === null)
    return (
      <SetUpView
        calculator={calculator}
        reached={reached}
        unit={unit}
        ways={ways}
        onUnit={(chosen) => {
          setUnit(chosen);
          writeSetting('practice-unit', chosen);
        }}
        onWays={keepWays}
        onBeginLesson={beginLesson}
        onBegin={begin}
      />
    );
  const { described, run } = begun;
  if (begun.truth)
    return (
      <ReviewView
        described={described}
        run={run}
        figures={figures}
        onBack={() => setBegun({ ...begun, truth: false })}
        onAgain={() => begin(described)}
        onLeave={leave}
      />
    );
  return (
    <EngineView
      key={begun.number}
      described={described}
      first={run}
      figures={figures}
      ways={ways}
      onWays={keepWays}
      onTruth={(now) => {
        setBegun({ ...begun, run: now, truth: true });
        scrollTo(0, 0);
      }}
      onLeave={leave}
    />
  );
}
