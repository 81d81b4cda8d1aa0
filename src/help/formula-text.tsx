// A formula as a reader types it: where his decimal sign is a comma, arguments are parted by semicolons. The page shows one of both.
import type { JSX } from 'preact';
import { FILE_SIGNS, inSigns, type Signs } from '../sheet/signs';

const COMMA: Signs = { decimal: ',' };

export const FormulaText = ({ text }: { readonly text: string }): JSX.Element => {
  const other = inSigns(text, COMMA);
  if (other === text) return <>{text}</>;
  return (
    <>
      <span data-decimal={FILE_SIGNS.decimal}>{text}</span>
      <span data-decimal={COMMA.decimal}>{other}</span>
    </>
  );
};
