// The signs of the host, asked for when the pane is seen.
import { useEffect, useState } from 'preact/hooks';
import type { SheetPort } from '../sheet/port';
import { FILE_SIGNS, type Signs } from '../sheet/signs';

export function useSigns(port: SheetPort | undefined, isSeen: boolean): Signs {
  const [signs, setSigns] = useState(FILE_SIGNS);
  useEffect(() => {
    // Without an answer they are those of a file.
    if (isSeen) port?.signs?.().then(setSigns, (thrown: unknown) => console.warn(thrown));
  }, [port, isSeen]);
  return signs;
}
