import { useState } from 'preact/hooks';
import {
  computeGaugeTrial,
  describeGaugeTrial,
  describeProblem,
  formatPressure,
  type GaugeTrialTyped,
  type SetUpAnswers,
} from '../../../calculators/index.ts';
import { siteAddress } from '../../../device/site-address.ts';
import { Field, type Wrong } from './Field.tsx';

const questions = {
  swing: {
    label: 'Lowest and highest in ten seconds',
    why: 'One carburettor, needle damped until it just still moves. Two figures, parted by a semicolon: 228; 234.',
  },
  repeats: {
    label: 'The same carburettor five times',
    why: 'Bring the speed back before each. 230; 235; 230; 230; 225.',
  },
  locking: {
    label: 'Before and after nipping the nut, three times',
    why: 'Hold the screw, nip, read again. Before; after; before; after; before; after. Leave it empty if not tried.',
  },
} as const;

/** The two-minute test in the set-up: the person's own readings give step, swing and slip. */
export function GaugeTrialForm({
  unit,
  onTake,
}: {
  unit: string;
  onTake: (measured: Pick<SetUpAnswers, 'resolution' | 'flutter' | 'lockShift'>) => void;
}) {
  const [typed, setTyped] = useState<GaugeTrialTyped>({ swing: '', repeats: '', locking: '' });
  const [wrong, setWrong] = useState<Wrong | null>(null);
  const [said, setSaid] = useState('');

  const take = (): void => {
    const trial = computeGaugeTrial(typed, unit);
    setSaid('');
    if (!trial.ok) {
      const field = 'field' in trial.problem ? (trial.problem.field ?? 'swing') : 'swing';
      setWrong({
        field,
        words: describeProblem(trial.problem, { formatPressure: (pascals) => formatPressure(pascals, unit) }),
      });
      document.getElementById(`trial-${field}`)?.focus();
      return;
    }
    setWrong(null);
    const measured = describeGaugeTrial(trial.value, unit);
    onTake(measured);
    setSaid(
      trial.value.raised
        ? `Taken over. Your readings scatter more than needle and scale explain, so the swing is told as ${measured.flutter}.`
        : 'Taken over into the answers.',
    );
  };

  return (
    <details class="question">
      <summary>Measure step, swing and slip in two minutes</summary>
      <p class="why">
        Warm engine, at the speed that you will work at. Read{' '}
        <a href={siteAddress('/safety/')}>the safety page</a> before you start it.
      </p>
      {(['swing', 'repeats', 'locking'] as const).map((field) => (
        <Field
          key={field}
          id={`trial-${field}`}
          long
          {...questions[field]}
          value={typed[field]}
          wrong={wrong?.field === field ? wrong.words : undefined}
          onInput={(value) => setTyped({ ...typed, [field]: value })}
        />
      ))}
      <p class="actions">
        <button class="button" type="button" onClick={take}>
          Take these over
        </button>
      </p>
      <p class="aside" role="status">
        {said}
      </p>
    </details>
  );
}
