import { answerBalanceAnalyser, balanceAnalyserFields, calculatorLink } from '../../calculators/index.ts';
import { addressWith } from '../../device/fragment.ts';
import { siteAddress } from '../../device/site-address.ts';
import AnswerRows from './calculator/AnswerRows.tsx';
import AnswerSection from './calculator/AnswerSection.tsx';
import CalculatorFrame from './calculator/CalculatorFrame.tsx';
import { useCalculator } from './calculator/use-calculator.ts';
import Warnings from './calculator/Warnings.tsx';
import BalancePlot from './balance-analyser/BalancePlot.tsx';
import GaugeQuestions from './balance-analyser/GaugeQuestions.tsx';
import SetQuestions from './balance-analyser/SetQuestions.tsx';

export default function BalanceAnalyser() {
  const calculator = useCalculator({
    slug: 'balance-analyser',
    fields: balanceAnalyserFields,
    answer: answerBalanceAnalyser,
    link: calculatorLink(balanceAnalyserFields),
  });
  return (
    <CalculatorFrame calculator={calculator}>
      <div>
        <SetQuestions calculator={calculator} />
      </div>
      <AnswerSection calculator={calculator} lead={({ sentence }) => sentence}>
        {(answer) => (
          <>
            <p>
              <strong>{answer.advice}</strong>
            </p>
            <Warnings lines={answer.warnings} />
            <BalancePlot answer={answer} />
            <AnswerRows
              calculator={calculator}
              caption={`Which way each screw goes. Every ± holds with ${answer.confidence}.`}
              lines={answer.screws}
            />
            <AnswerRows
              calculator={calculator}
              caption="The set. Tap a figure to copy it."
              lines={answer.set}
            />
            <AnswerRows
              calculator={calculator}
              caption="Each carburettor, and how far it is open beside what it is matched to."
              lines={answer.carburettors}
            />
            <p class="actions">
              <a class="button first" href={addressWith(siteAddress('/bench-session/'), answer.bench)}>
                Go on in the bench session
              </a>
            </p>
          </>
        )}
      </AnswerSection>
      <div class="further">
        <GaugeQuestions calculator={calculator} />
      </div>
    </CalculatorFrame>
  );
}
