import type { ComponentChildren } from 'preact';
import type { Announced, Calculator } from './use-calculator.ts';

interface Props<Field extends string> {
  readonly calculator: Calculator<Announced, Field>;
  readonly children: ComponentChildren;
}

/** The form of a calculator: what is asked on the left, what is answered on the right, one below the other on a phone. */
export default function CalculatorFrame<Field extends string>({ calculator, children }: Props<Field>) {
  return (
    <form class="calculator" ref={calculator.formRef} onSubmit={(event) => event.preventDefault()}>
      {calculator.notices.length > 0 && (
        <div class="errors across" role="alert">
          {calculator.notices.map((notice) => (
            <p key={notice}>{notice}</p>
          ))}
        </div>
      )}
      {calculator.kept && (
        <p class="aside across">
          These are your entries of an earlier visit. They are kept on this device alone.
        </p>
      )}
      {children}
    </form>
  );
}
