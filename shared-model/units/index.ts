export type { Celsius, Grams, Litres, Megapascals, Mm, Mm2, Mm3, Mm4, Newtons, Nm, Quantity } from './quantity'
export { celsius, grams, litres, megapascals, mm, mm2, mm3, mm4, newtons, nm } from './quantity'
