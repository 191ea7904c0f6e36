import type { ComponentChildren } from 'preact';

/** A small form that opens in its place: one action to take it, one to leave it. */
export function PanelForm({
  label,
  verb,
  onTake,
  onLeave,
  children,
}: {
  label: string;
  verb: string;
  onTake: () => void;
  onLeave: () => void;
  children: ComponentChildren;
}) {
  return (
    <form
      class="panel"
      aria-label={label}
      onSubmit={(event) => {
        event.preventDefault();
        onTake();
      }}
    >
      {children}
      <p class="actions">
        <button class="button first" type="submit">
          {verb}
        </button>
        <button class="button" type="button" onClick={onLeave}>
          Leave it
        </button>
      </p>
    </form>
  );
}
