import { useRef } from 'preact/hooks';
import { accuracyClasses, gaugeNumbers } from '../../../calculators/index.ts';
import type { GaugeDescribed, GaugeField } from '../../../calculators/index.ts';
import ChoiceField from '../calculator/ChoiceField.tsx';
import TextField from '../calculator/TextField.tsx';
import type { Calculator } from '../calculator/use-calculator.ts';

interface Props {
  readonly calculator: Calculator<GaugeDescribed, GaugeField>;
  readonly isSwap: boolean;
}

const classOptions = [
  ['none', 'not known'],
  ...accuracyClasses.map((accuracyClass) => [String(accuracyClass), String(accuracyClass)] as const),
] as const;

/** What is asked of each gauge: its readings, unless two are exchanged, and what its dial says. */
export default function GaugeQuestions({ calculator, isSwap }: Props) {
  const { form } = calculator;
  // Opened where something in it has to be put right, and left open after.
  const opened = useRef(false);
  const gauges = isSwap
    ? gaugeNumbers.slice(0, 2)
    : gaugeNumbers.slice(0, gaugeNumbers.findIndex((each) => each === form.gauges) + 1);
  if (gauges.some((gauge) => calculator.problemOf(`span${gauge}`) !== undefined)) opened.current = true;
  return (
    <>
      {isSwap ? (
        <TextField
          calculator={calculator}
          field="swap"
          label={form.way === 'abba' ? 'Readings in the order A, B, B, A' : 'Readings in the order A, B, A'}
          why="A is gauge 1, B is gauge 2, both in turn on the same take-off. Several runs may follow one another."
          lines={2}
        />
      ) : (
        gauges.map((gauge) => (
          <TextField
            key={gauge}
            calculator={calculator}
            field={`readings${gauge}`}
            label={`Readings of gauge ${gauge}`}
            {...(gauge === '1' && { why: 'Parted by semicolons. In the same order for every gauge.' })}
          />
        ))
      )}
      <details open={opened.current}>
        <summary>Class and scale of each gauge</summary>
        <p class="aside">
          The class stands on the dial as a figure: so many per cent of the span. The span is the whole scale,
          as -1..0 bar or 760 mmHg.
        </p>
        {gauges.map((gauge) => (
          <div key={gauge} class="pairs">
            <ChoiceField
              calculator={calculator}
              field={`class${gauge}`}
              label={`Class of gauge ${gauge}`}
              options={classOptions}
              as="select"
            />
            <TextField calculator={calculator} field={`span${gauge}`} label={`Scale of gauge ${gauge}`} />
          </div>
        ))}
      </details>
    </>
  );
}
