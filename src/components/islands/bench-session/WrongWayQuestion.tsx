import { opposite, reversedTurn, type WrongWay } from '../../../calculators/index.ts';
import type { StoredSession } from '../../../device/stored-session.ts';
import type { BenchActions } from './use-bench.ts';

/** A reading went against the turn before it: which of the ways that this happens was it? */
export function WrongWayQuestion({
  session: { head, events },
  wrongWay,
  actions,
  onBelieve,
}: {
  session: StoredSession;
  wrongWay: WrongWay;
  actions: BenchActions;
  onBelieve: () => void;
}) {
  const reverse = (): void => {
    const event = events[wrongWay.turnEvent];
    if (event?.kind === 'turn') actions.correct(wrongWay.turnEvent, reversedTurn(event));
  };
  const opensOtherWay = (): void => {
    const opens = head.setUp.opens.map((direction, j) =>
      j + 1 === wrongWay.screw && direction !== 'unknown' ? opposite(direction) : direction,
    );
    reverse();
    actions.changeHead({ setUp: { ...head.setUp, opens } });
  };
  return (
    <p class="actions">
      <button class="button first" type="button" onClick={opensOtherWay}>
        The screw opens the other way
      </button>
      <button class="button" type="button" onClick={reverse}>
        I turned it the other way
      </button>
      <a class="button" href="#log-title">
        It was another screw or carburettor
      </a>
      <button class="button" type="button" onClick={onBelieve}>
        It is right as recorded
      </button>
    </p>
  );
}
