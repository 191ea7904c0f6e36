import {
  answerExhaustGasInARoom,
  calculatorLink,
  exhaustGasInARoomFields,
  notKnown,
  runOutdoors,
} from '../../calculators/index.ts';
import AnswerRows from './calculator/AnswerRows.tsx';
import AnswerSection from './calculator/AnswerSection.tsx';
import CalculatorFrame from './calculator/CalculatorFrame.tsx';
import Warnings from './calculator/Warnings.tsx';
import { useCalculator } from './calculator/use-calculator.ts';
import LimitTable from './exhaust-gas-in-a-room/LimitTable.tsx';
import NotKnown from './exhaust-gas-in-a-room/NotKnown.tsx';
import Questions from './exhaust-gas-in-a-room/Questions.tsx';
import TimePlot from './exhaust-gas-in-a-room/TimePlot.tsx';

export default function ExhaustGasInARoom() {
  const calculator = useCalculator({
    slug: 'exhaust-gas-in-a-room',
    fields: exhaustGasInARoomFields,
    answer: answerExhaustGasInARoom,
    link: calculatorLink(exhaustGasInARoomFields),
  });
  const { answer: words, stale } = calculator;
  return (
    <CalculatorFrame calculator={calculator}>
      <Questions calculator={calculator} />
      <div class="alongside">
        <AnswerSection calculator={calculator} lead={({ lead }) => lead}>
          {({ lines }) => (
            <>
              <Warnings lines={[runOutdoors]} />
              <AnswerRows
                calculator={calculator}
                caption="One well-mixed room, one steady source. Tap a figure to copy it."
                lines={lines}
              />
              <NotKnown lines={notKnown.air} />
            </>
          )}
        </AnswerSection>
      </div>
      {words !== null && (
        <div class={stale ? 'across flow gas-panels stale' : 'across flow gas-panels'}>
          <section class="flow" aria-label="The air against time">
            <h2>The air against time</h2>
            <figure class="figure">
              <TimePlot
                input={{
                  times: words.answer.times,
                  curves: [{ name: 'carbon monoxide', values: words.answer.ppm }],
                  levels: words.levels,
                  scale: words.answer.given.scale,
                  mark: words.answer.given.mark,
                }}
                label={words.airPlot}
                unit="ppm"
              />
              <figcaption>{words.airPlot}</figcaption>
            </figure>
            <NotKnown lines={notKnown.plot} />
          </section>
          <section class="flow" aria-label="Carboxyhaemoglobin against time">
            <h2>What gets into the blood</h2>
            <p>{words.bloodLead}</p>
            <figure class="figure">
              <TimePlot
                input={{
                  times: words.answer.times,
                  curves: [
                    { name: 'light work', values: words.answer.percent['light work'] },
                    { name: 'at rest', values: words.answer.percent.rest },
                  ],
                  levels: [],
                  scale: 'linear',
                  mark: words.answer.given.mark,
                }}
                label={words.bloodPlot}
                unit="% carboxyhaemoglobin"
              />
              <figcaption>{words.bloodPlot}</figcaption>
            </figure>
            <table class="table loose">
              <caption>{words.bloodCaption}</caption>
              <thead>
                <tr>
                  <th scope="col">after</th>
                  <th scope="col" class="num">
                    air
                  </th>
                  <th scope="col" class="num">
                    at rest
                  </th>
                  <th scope="col" class="num">
                    light work
                  </th>
                </tr>
              </thead>
              <tbody>
                {words.blood.map((line) => (
                  <tr key={line.after} data-blood={line.after}>
                    <th scope="row">{line.after}</th>
                    <td class="num">{line.ppm}</td>
                    <td class="num">{line.rest}</td>
                    <td class="num">{line.lightWork}</td>
                  </tr>
                ))}
              </tbody>
            </table>
            <NotKnown lines={notKnown.blood} />
          </section>
          <section class="flow across" aria-label="Published limits">
            <h2>Published limits</h2>
            <p class="text">{words.alarm}</p>
            <LimitTable lines={words.limits} />
            <NotKnown lines={notKnown.limits} />
          </section>
        </div>
      )}
    </CalculatorFrame>
  );
}
