import type { BalanceAnalyserField, DescribedBalance } from '../../../calculators/index.ts';
import type { Calculator } from '../calculator/use-calculator.ts';

export interface QuestionsProps {
  readonly calculator: Calculator<DescribedBalance, BalanceAnalyserField>;
}
