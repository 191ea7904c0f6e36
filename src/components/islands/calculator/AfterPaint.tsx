import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';

/** What is not read first: made and drawn anew only once the rest has been painted, so that a key need not wait for it. */
export default function AfterPaint({ draw }: { readonly draw: () => ComponentChildren }) {
  const [painted, setPainted] = useState(() => draw);
  // A function of its own comes with each drawing of what stands around.
  useEffect(() => setPainted(() => draw), [draw]);
  const drawn = useMemo(painted, [painted]);
  return <>{drawn}</>;
}
