import { ambientPressureFields, answerAmbientPressure, calculatorLink } from '../../calculators/index.ts';
import { addressWith } from '../../device/fragment.ts';
import { siteAddress } from '../../device/site-address.ts';
import AnswerRows from './calculator/AnswerRows.tsx';
import AnswerSection from './calculator/AnswerSection.tsx';
import CalculatorFrame from './calculator/CalculatorFrame.tsx';
import ChoiceField from './calculator/ChoiceField.tsx';
import TextField from './calculator/TextField.tsx';
import { useCalculator } from './calculator/use-calculator.ts';

export default function AmbientPressure() {
  const calculator = useCalculator({
    slug: 'ambient-pressure',
    fields: ambientPressureFields,
    answer: answerAmbientPressure,
    link: calculatorLink(ambientPressureFields),
  });
  const { from, otherPlace, reading } = calculator.form;
  const compares = reading.trim() !== '';
  const asksHeight = from !== 'barometer' || (compares && otherPlace === 'altitude');
  return (
    <CalculatorFrame calculator={calculator}>
      <div>
        <ChoiceField
          calculator={calculator}
          field="from"
          label="What you know of this place"
          why="A barometer that shows its own place is best. The weather report gives the pressure of the sea, not of a place in the hills."
          options={[
            ['altitude', 'its height'],
            ['setting', 'its height and the sea-level setting (QNH)'],
            ['barometer', 'a barometer that shows the pressure of this place'],
          ]}
        />
        {from !== 'barometer' && (
          <TextField
            calculator={calculator}
            field="altitude"
            label="Height above the sea"
            why="In m or ft, from a map."
          />
        )}
        {from === 'setting' && (
          <TextField
            calculator={calculator}
            field="setting"
            label="Sea-level setting"
            why="Of the nearest airfield, in hPa or inHg. hPa if no unit is typed."
          />
        )}
        {from === 'barometer' && (
          <TextField
            calculator={calculator}
            field="barometer"
            label="Barometer"
            why="In any unit; hPa if none is typed."
          />
        )}
        <TextField
          calculator={calculator}
          field="reading"
          label="A reading taken elsewhere"
          why="A depression, in any unit; mmHg if none is typed. Leave it empty if you have none."
        />
        {compares && (
          <ChoiceField
            calculator={calculator}
            field="otherPlace"
            label="What you know of that place"
            options={[
              ['altitude', 'its height'],
              ['pressure', 'its ambient pressure'],
            ]}
          />
        )}
        {compares && otherPlace === 'altitude' && (
          <TextField
            calculator={calculator}
            field="otherAltitude"
            label="Height of that place"
            why="In m or ft, from a map."
          />
        )}
        {compares && otherPlace === 'pressure' && (
          <TextField
            calculator={calculator}
            field="otherPressure"
            label="Ambient pressure of that place"
            why="In any unit; hPa if none is typed."
          />
        )}
        {asksHeight && (
          <ChoiceField
            calculator={calculator}
            field="altitudeIs"
            label="Heights are"
            why="At 3000 m the two differ by less than 2 m: at an engine it makes no difference."
            options={[
              ['geometric', 'as a map gives them (geometric)'],
              ['geopotential', 'as tables of the atmosphere and altimeters give them (geopotential)'],
            ]}
          />
        )}
      </div>
      <AnswerSection calculator={calculator} lead={({ verdict }) => verdict}>
        {(answer) => (
          <>
            <p>{answer.weather}</p>
            <AnswerRows calculator={calculator} caption="This place" lines={answer.place} />
            {answer.carried.length > 0 && (
              <AnswerRows
                calculator={calculator}
                caption="The reading from elsewhere would be here"
                lines={answer.carried}
              />
            )}
            {answer.carriedWords.map((words) => (
              <p key={words}>{words}</p>
            ))}
            <p class="actions">
              <a
                class="button first"
                href={addressWith(siteAddress('/unit-converter/'), answer.converterLink)}
              >
                Convert readings under this pressure
              </a>
            </p>
            <AnswerRows
              calculator={calculator}
              caption="The ambient pressure in every unit"
              lines={answer.ambient}
            />
          </>
        )}
      </AnswerSection>
    </CalculatorFrame>
  );
}
