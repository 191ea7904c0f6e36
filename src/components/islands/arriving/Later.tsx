import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** A view whose code comes when it is first shown; `load` fetches it. */
export function later<Props extends object>(load: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  let View: ComponentType<Props> | null = null;
  return function Later(props: Props) {
    const [state, setState] = useState<'waits' | 'arrived' | 'failed'>(View ? 'arrived' : 'waits');
    const fetchView = async (): Promise<void> => {
      setState('waits');
      try {
        View = await load();
        setState('arrived');
      } catch {
        setState('failed');
      }
    };
    useEffect(() => {
      if (!View) void fetchView();
    }, []);
    if (View) return <View {...props} />;
    if (state === 'waits')
      return (
        <p class="aside" role="status">
          One moment.
        </p>
      );
    return (
      <div class="errors" role="alert">
        <p>This part of the page did not arrive. Try once more, or load the page again.</p>
        <p class="actions">
          <button class="button" type="button" onClick={() => void fetchView()}>
            Try once more
          </button>
        </p>
      </div>
    );
  };
}
