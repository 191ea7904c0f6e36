import { useMemo } from 'preact/hooks';
import { qrModules } from '../../../device/qr-code.ts';
import { qrPath } from '../../../drawing/qr-path.ts';

/** A code of an address. It is dark on light in every colour scheme: cameras do not read it otherwise. */
export function QrCode({ address, label }: { readonly address: string; readonly label: string }) {
  const drawing = useMemo(() => qrPath(qrModules(address)), [address]);
  return (
    <svg class="qr" viewBox={drawing.viewBox} shape-rendering="crispEdges" role="img" aria-label={label}>
      <path class="mark" d={drawing.path} />
    </svg>
  );
}
