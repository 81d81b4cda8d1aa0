// The library ships without types; this is the part in use.
declare module 'js-quantities' {
  interface Quantity {
    readonly scalar: number;
    to(unit: string): Quantity;
  }
  export default function Qty(value: number, unit: string): Quantity;
}
