import type { ExhaustGasInARoomField, ExhaustGasWords } from '../../../calculators/index.ts';
import ChoiceField from '../calculator/ChoiceField.tsx';
import TextField from '../calculator/TextField.tsx';
import type { Calculator } from '../calculator/use-calculator.ts';

interface Props {
  readonly calculator: Calculator<ExhaustGasWords, ExhaustGasInARoomField>;
}

/** What the sum asks; fields that its choices do not need are not shown, and keep what was typed. */
export default function Questions({ calculator }: Props) {
  const { form } = calculator;
  return (
    <div>
      <ChoiceField
        calculator={calculator}
        field="roomAs"
        label="Room"
        options={[
          ['sides', 'Length, width and height'],
          ['volume', 'Volume'],
        ]}
      />
      {form.roomAs === 'volume' ? (
        <TextField calculator={calculator} field="volume" label="Volume" why="Without a unit: m³." />
      ) : (
        <div class="pairs">
          <TextField calculator={calculator} field="length" label="Length" why="Without a unit: m." />
          <TextField calculator={calculator} field="width" label="Width" />
          <TextField calculator={calculator} field="height" label="Height" />
        </div>
      )}
      <TextField
        calculator={calculator}
        field="airChanges"
        label="Air changes an hour"
        why="How often the air of the room is replaced. 0 is a sealed room; 0.5 is invented for this garage. Nobody knows the figure of a room without measuring it."
        digits
      />
      <ChoiceField
        calculator={calculator}
        field="sourceAs"
        label="Source"
        options={[
          ['engine', 'A running engine'],
          ['flow', 'Carbon monoxide in litres a minute'],
        ]}
      />
      {form.sourceAs === 'flow' ? (
        <TextField
          calculator={calculator}
          field="flow"
          label="Carbon monoxide"
          why="Of the pure gas. Without a unit: L/min. An engine of 5 horsepower under load gave 23 L/min (Earnest and others, 1997)."
        />
      ) : (
        <>
          <div class="pairs">
            <TextField
              calculator={calculator}
              field="displacement"
              label="Displacement"
              why="All cylinders. Without a unit: cm³."
            />
            <TextField calculator={calculator} field="speed" label="Speed" why="Without a unit: rpm." />
          </div>
          <ChoiceField
            calculator={calculator}
            field="cycle"
            label="Cycle"
            options={[
              ['four-stroke', 'Four-stroke'],
              ['two-stroke', 'Two-stroke'],
            ]}
          />
          <TextField
            calculator={calculator}
            field="filling"
            label="Filling"
            why="Air that goes in, in per cent of the displacement (volumetric efficiency). About 30 behind a nearly closed throttle: from memory. 80 to 100 with the throttle open."
            digits
            unit="%"
          />
          <TextField
            calculator={calculator}
            field="carbonMonoxide"
            label="Carbon monoxide in the exhaust"
            why="By volume, as an analyser shows it. Old carburettor engines idle at a few per cent; 4.5 and 6 have been limits of a road test (United Kingdom, 1995). Rich or choked: more."
            digits
            unit="%"
          />
        </>
      )}
      <TextField
        calculator={calculator}
        field="running"
        label="Running time"
        why="How long the engine runs, or has run."
        digits
        unit="min"
      />
      <TextField
        calculator={calculator}
        field="initial"
        label="In the air at the start"
        digits
        unit="ppm"
        why="0 in clean air; more if the engine ran before."
      />
      <TextField
        calculator={calculator}
        field="temperature"
        label="Temperature of the room"
        why="Turns mg/m³ into ppm. Without a unit: °C."
      />
      <ChoiceField
        calculator={calculator}
        field="activity"
        label="Somebody who breathes it"
        options={[
          ['light work', 'At light work'],
          ['rest', 'At rest'],
        ]}
      />
      <ChoiceField
        calculator={calculator}
        field="scale"
        label="Scale of the plot"
        options={[
          ['logarithmic', 'Logarithmic: each line ten times the last'],
          ['linear', 'Linear'],
        ]}
      />
    </div>
  );
}
