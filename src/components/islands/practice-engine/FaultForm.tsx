import { useState } from 'preact/hooks';
import { describeNaming, faultWords, practiceFaults } from '../../../calculators/index.ts';
import type { NamedFault, PracticeFault } from '../../../calculators/index.ts';

interface Props {
  readonly fault: PracticeFault | null;
  readonly onNamed: (named: NamedFault) => void;
}

const choices: readonly NamedFault[] = ['none', ...practiceFaults];

/** What is wrong? A choice that is checked. */
export function FaultForm({ fault, onNamed }: Props) {
  const [chosen, setChosen] = useState<NamedFault | ''>('');
  const [sentence, setSentence] = useState('');
  const check = (): void => {
    if (chosen === '') return;
    setSentence(describeNaming(chosen, fault).sentence);
    onNamed(chosen);
  };
  return (
    <section aria-labelledby="wrong-title">
      <h2 id="wrong-title">What is wrong?</h2>
      <p class="fault-choice">
        <select
          class="write"
          aria-labelledby="wrong-title"
          value={chosen}
          onChange={(event) => setChosen(choices.find((each) => each === event.currentTarget.value) ?? '')}
        >
          <option value="">not known yet</option>
          {choices.map((each) => (
            <option key={each} value={each}>
              {faultWords[each].name}
            </option>
          ))}
        </select>
        <button type="button" class="button" disabled={chosen === ''} onClick={check}>
          Check it
        </button>
      </p>
      <p role="status">{sentence}</p>
    </section>
  );
}
