import { describe, expect, it } from 'vitest'
import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  feetFromMm,
  grams,
  gramsFromOunces,
  gramsFromPounds,
  inchesFromMm,
  litres,
  litresFromUsGallons,
  MM3_PER_CUBIC_INCH,
  megapascalsFromPsi,
  mmFromFeet,
  mmFromInches,
  ouncesFromGrams,
  poundsFromGrams,
  psiFromMegapascals,
  showMass,
  showVolume,
  usFluidOuncesFromLitres,
  usGallonsFromLitres
} from '../../shared-model/units'

describe('NIST Handbook 44, Appendix C: exact conversions', () => {
  it('an inch is 25.4 mm and a foot 304.8 mm', () => {
    expect(mmFromInches(1)).toBe(25.4)
    expect(mmFromFeet(1)).toBe(304.8)
    expect(inchesFromMm(25.4)).toBe(1)
    expect(feetFromMm(304.8)).toBe(1)
  })

  it('a cubic inch is 16.387064 mL, a US gallon 231 of them or 3.785411784 L, a fluid ounce 1/128 of that', () => {
    expect(MM3_PER_CUBIC_INCH).toBe(16387.064)
    expect((231 * MM3_PER_CUBIC_INCH) / 1e6).toBeCloseTo(3.785411784, 12)
    expect(litresFromUsGallons(1)).toBe(3.785411784)
    expect(usGallonsFromLitres(3.785411784)).toBe(1)
    expect(usFluidOuncesFromLitres(3.785411784)).toBe(128)
  })

  it('a pound is 453.59237 g and an ounce 28.349523125 g', () => {
    expect(gramsFromPounds(1)).toBe(453.59237)
    expect(poundsFromGrams(453.59237)).toBe(1)
    expect(gramsFromOunces(1)).toBe(28.349523125)
    expect(ouncesFromGrams(28.349523125)).toBe(1)
  })

  it('32 F is 0 C and 212 F is 100 C', () => {
    expect(celsiusFromFahrenheit(32)).toBe(0)
    expect(celsiusFromFahrenheit(212)).toBe(100)
    expect(fahrenheitFromCelsius(100)).toBe(212)
  })

  it('1000 psi is 6.894757 MPa, as printed to seven figures', () => {
    expect(megapascalsFromPsi(1000)).toBeCloseTo(6.894757, 6)
    expect(psiFromMegapascals(megapascalsFromPsi(400_000))).toBeCloseTo(400_000, 6)
  })
})

describe('volume and mass in the units of the user', () => {
  const metric = { units: 'mm', decimalMark: ',' } as const
  const customary = { units: 'in', decimalMark: '.' } as const
  it('shows litres or millilitres, US gallons or fluid ounces', () => {
    expect(showVolume(litres(3.785411784), metric)).toBe('3,79 L')
    expect(showVolume(litres(0.25), metric)).toBe('250 mL')
    expect(showVolume(litres(3.785411784), customary)).toBe('1 US gal')
    expect(showVolume(litres(0.5), customary)).toBe('16.9 US fl oz')
  })
  it('shows kilograms or grams, pounds or ounces', () => {
    expect(showMass(grams(1500), metric)).toBe('1,5 kg')
    expect(showMass(grams(42), metric)).toBe('42 g')
    expect(showMass(grams(907.18474), customary)).toBe('2 lb')
    expect(showMass(grams(28.349523125), customary)).toBe('1 oz')
  })
})
