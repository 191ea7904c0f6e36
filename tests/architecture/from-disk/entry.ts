import { h, render } from 'preact';
import BenchSession from '../../../src/components/islands/BenchSession.tsx';
import UnitConverter from '../../../src/components/islands/UnitConverter.tsx';

for (const [place, island] of [
  ['#bench-session', BenchSession],
  ['#unit-converter', UnitConverter],
] as const) {
  const element = document.querySelector(place);
  if (element) render(h(island, {}), element);
}
