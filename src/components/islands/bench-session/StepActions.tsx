import { useEffect, useRef } from 'preact/hooks';
import type { BenchStep } from '../../../calculators/index.ts';
import { siteAddress } from '../../../device/site-address.ts';

/** What can be pressed where the step is neither a reading nor a turn. */
export function StepActions({
  step,
  onRound,
  onSign,
  onRead,
  onEnd,
}: {
  step: BenchStep;
  onRound: () => void;
  onSign: () => void;
  onRead: () => void;
  onEnd: () => void;
}) {
  const actions = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    // The field that had the focus is gone: the keyboard goes on at the first action.
    if (document.activeElement === document.body)
      actions.current?.querySelector<HTMLElement>('.first')?.focus({ preventScroll: true });
  }, [step.kind]);
  const readOnce = (
    <button class="button" type="button" onClick={onRead}>
      Read once more
    </button>
  );
  switch (step.kind) {
    case 'read':
    case 'turn':
      return null;
    case 'done':
      return (
        <p class="actions" ref={actions}>
          <button class="button first" type="button" onClick={onRound}>
            Start the sign-off round
          </button>
          {readOnce}
        </p>
      );
    case 'sign-off':
      return (
        <p class="actions" ref={actions}>
          <button class="button first" type="button" onClick={onSign}>
            Sign off
          </button>
          {readOnce}
        </p>
      );
    case 'stop':
      return (
        <p class="actions" ref={actions}>
          <a
            class="button first"
            href={siteAddress(
              step.reason === 'thread'
                ? '/running-out-of-thread/#centre-it-again'
                : '/when-it-will-not-balance/',
            )}
          >
            {step.reason === 'thread' ? 'Show how to re-centre the screws' : 'Show what else it can be'}
          </a>
          {readOnce}
          <button class="button" type="button" onClick={onEnd}>
            End the session
          </button>
        </p>
      );
  }
}
