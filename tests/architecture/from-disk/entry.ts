import { h, render } from 'preact';
import AmbientPressure from '../../../src/components/islands/AmbientPressure.tsx';
import BalanceAnalyser from '../../../src/components/islands/BalanceAnalyser.tsx';
import BenchSession from '../../../src/components/islands/BenchSession.tsx';
import ExhaustGasInARoom from '../../../src/components/islands/ExhaustGasInARoom.tsx';
import FlutterAndRepeats from '../../../src/components/islands/FlutterAndRepeats.tsx';
import GaugeComparison from '../../../src/components/islands/GaugeComparison.tsx';
import LiquidColumn from '../../../src/components/islands/LiquidColumn.tsx';
import PracticeEngine from '../../../src/components/islands/PracticeEngine.tsx';
import ThreadTravelBudget from '../../../src/components/islands/ThreadTravelBudget.tsx';
import UnitConverter from '../../../src/components/islands/UnitConverter.tsx';

for (const [place, island] of [
  ['#ambient-pressure', AmbientPressure],
  ['#balance-analyser', BalanceAnalyser],
  ['#bench-session', BenchSession],
  ['#exhaust-gas-in-a-room', ExhaustGasInARoom],
  ['#flutter-and-repeats', FlutterAndRepeats],
  ['#gauge-comparison', GaugeComparison],
  ['#liquid-column', LiquidColumn],
  ['#practice-engine', PracticeEngine],
  ['#thread-travel-budget', ThreadTravelBudget],
  ['#unit-converter', UnitConverter],
] as const) {
  const element = document.querySelector(place);
  if (element) render(h(island, {}), element);
}
