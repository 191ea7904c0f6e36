declare module 'js-quantities' {
  type Quantity = { to(unit: string): Quantity; readonly scalar: number };
  export default function Qty(text: string): Quantity;
}
